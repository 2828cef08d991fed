#pragma once

/// Event files in a folder that people reach with any file browser.

#include <QString>

#include "devices.h"

namespace cinder::platform {

class EventFolder final : public face::EventFiles {
  public:
    /// The folder is made when the first file is written.
    explicit EventFolder(QString folder) : folder_(std::move(folder)) {}

    [[nodiscard]] std::vector<std::string> names() const override;
    [[nodiscard]] std::optional<std::string> read(const std::string& name) const override;
    [[nodiscard]] std::optional<std::string> write(const std::string& name,
                                                   const std::string& bytes) override;

  private:
    [[nodiscard]] QString pathOf(const std::string& name) const;

    QString folder_;
};

}  // namespace cinder::platform
