#pragma once

/// One function for each kind of block of a document.

#include "print/page.h"

namespace cinder::platform {

void setTitle(Pages& pages, const report::Document& document);
void setBlock(Pages& pages, const report::Block& block);

/// Rows of a table, with its head on every page.
void setTable(Pages& pages, const report::Table& table);

}  // namespace cinder::platform
