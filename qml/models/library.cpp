#include "library.h"

#include <QDir>
#include <QFile>

namespace cinder::face {

namespace {

/// Every document of a folder of the program, by name.
std::vector<std::string> documentsIn(const QString& folder) {
    std::vector<std::string> documents;
    const QDir there(folder);
    for (const QString& name :
         there.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        QFile file(there.filePath(name));
        if (file.open(QIODevice::ReadOnly)) documents.push_back(file.readAll().toStdString());
    }
    return documents;
}

}  // namespace

Library shippedLibrary() {
    return {[] { return documentsIn(QStringLiteral(":/library/templates")); },
            [] { return documentsIn(QStringLiteral(":/library/methods")); }};
}

}  // namespace cinder::face
