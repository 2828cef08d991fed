#include "network/key_file.h"

#include <algorithm>
#include <utility>

#include <QByteArray>
#include <QFile>
#include <QList>
#include <QSaveFile>
#include <QString>

namespace cinder::platform {

namespace {

constexpr const char* kHeading = "cinderbell crew 1";
/// No sound file is as long.
constexpr qint64 kMostBytes = 512;

QString name(const std::filesystem::path& file) {
    return QString::fromStdString(file.string());
}

bool save(const QString& path, const QByteArray& text) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return false;
    // Before there is anything to read in it.
    if (!file.setPermissions(QFile::ReadOwner | QFile::WriteOwner)) return false;
    return file.write(text) == text.size() && file.commit();
}

}  // namespace

KeyFile::KeyFile(std::filesystem::path file) : file_(std::move(file)) {}

std::optional<Membership> KeyFile::read() const {
    QFile file(name(file_));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    const QList<QByteArray> lines = file.read(kMostBytes).split('\n');
    if (lines.size() != 5 || lines[0] != kHeading || !lines[4].isEmpty()) return std::nullopt;
    Membership found{lines[1].toStdString(), {}};
    const QByteArray key = QByteArray::fromHex(lines[2]);
    if (!sync::isCode(found.code) || key.size() != static_cast<qsizetype>(found.key.size()))
        return std::nullopt;
    std::copy(key.begin(), key.end(), found.key.begin());
    if (sync::crewMark(found.key) != lines[3].toStdString()) return std::nullopt;
    return found;
}

bool KeyFile::write(const Membership& membership) const {
    const QByteArray key(reinterpret_cast<const char*>(membership.key.data()),
                         static_cast<qsizetype>(membership.key.size()));
    const QByteArray text = QByteArray(kHeading) + '\n' +
                            QByteArray::fromStdString(membership.code) + '\n' + key.toHex() + '\n' +
                            QByteArray::fromStdString(sync::crewMark(membership.key)) + '\n';
    if (save(name(file_), text)) return true;
    // Or the app would be back in the crew it left when it is opened again.
    remove();
    return false;
}

void KeyFile::remove() const {
    QFile::remove(name(file_));
}

}  // namespace cinder::platform
