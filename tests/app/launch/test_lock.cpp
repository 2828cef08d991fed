#include <catch2/catch.hpp>

#include <filesystem>
#include <memory>

#include "../../folder.h"
#include "files/folder_lock.h"

using cinder::platform::FolderLock;

TEST_CASE("a folder is held by one at a time, and free again when that one is gone") {
    namespace fs = std::filesystem;
    const samples::Folder own;
    const fs::path& folder = own.path();
    auto first = std::make_unique<FolderLock>(folder);
    CHECK_FALSE(first->isTaken());
    CHECK(FolderLock(folder).isTaken());
    CHECK(fs::is_empty(folder));

    first.reset();
    CHECK_FALSE(FolderLock(folder).isTaken());
}

TEST_CASE("a folder that is not there is held by nobody") {
    CHECK_FALSE(FolderLock("/nonexistent/journal").isTaken());
}
