#include "files/event_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include "event/json.h"

namespace cinder::platform {

/// Only the last part of a name counts: no file outside the folder is read or written.
QString EventFolder::pathOf(const std::string& name) const {
    return QDir(folder_).filePath(QFileInfo(QString::fromStdString(name)).fileName());
}

std::vector<std::string> EventFolder::names() const {
    std::vector<std::string> names;
    for (const QString& name :
         QDir(folder_).entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Time))
        names.push_back(name.toStdString());
    return names;
}

std::optional<std::string> EventFolder::read(const std::string& name) const {
    QFile file(pathOf(name));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    // One byte more than a document may have, so that what is too large is seen to be.
    return file.read(static_cast<qint64>(event::kMostBytes) + 1).toStdString();
}

std::optional<std::string> EventFolder::write(const std::string& name, const std::string& bytes) {
    if (!QDir().mkpath(folder_)) return std::nullopt;
    // The old file stays whole until the new one is.
    QSaveFile file(pathOf(name));
    if (!file.open(QIODevice::WriteOnly)) return std::nullopt;
    if (file.write(QByteArray::fromStdString(bytes)) != static_cast<qint64>(bytes.size()) ||
        !file.commit())
        return std::nullopt;
    return file.fileName().toStdString();
}

}  // namespace cinder::platform
