#include "print/paper_folder.h"

#include <QDir>
#include <QSaveFile>

#include "print/pdf.h"

namespace cinder::platform {

face::Printer::Written PaperFolder::write(const QByteArray& bytes, const QString& name) const {
    const QString path = QDir(folder_).filePath(name);
    QDir().mkpath(folder_);
    QSaveFile file(path);
    const bool isOpen = file.open(QIODevice::WriteOnly);
    if (isOpen && file.write(bytes) == bytes.size() && file.commit()) return {path, {}};
    return {path, file.errorString()};
}

face::Printer::Written PaperFolder::writePdf(const report::Document& document, bool isLetter,
                                             const QString& name) {
    return write(pdf(document, isLetter ? Paper::Letter : Paper::A4), name);
}

face::Printer::Written PaperFolder::writeText(const std::string& text, const QString& name) {
    return write(QByteArray::fromStdString(text), name);
}

}  // namespace cinder::platform
