#pragma once

/// Sheets as files in one folder, where a person finds them again.

#include <QString>

#include "models/devices.h"

namespace cinder::platform {

class PaperFolder final : public face::Printer {
  public:
    /// Made when the first sheet is written.
    explicit PaperFolder(QString folder) : folder_(std::move(folder)) {}

    [[nodiscard]] Written writePdf(const report::Document& document, bool isLetter,
                                   const QString& name) override;
    [[nodiscard]] Written writeText(const std::string& text, const QString& name) override;

  private:
    /// The file is whole or it is not there: what stood there before stays until then.
    [[nodiscard]] Written write(const QByteArray& bytes, const QString& name) const;

    QString folder_;
};

}  // namespace cinder::platform
