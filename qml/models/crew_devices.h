#pragma once

/// The other devices of the crew, as the page about them shows them: the code that joins them, who
/// is in reach and what is still on its way; and one line for the boards when something of it is
/// wrong.

#include <functional>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "devices.h"
#include "row_list.h"
#include "rows.h"
#include "words.h"

namespace cinder::face {

class Day;

class CrewDevicesView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    /// False where this device knows of no others: then nothing of this is shown.
    Q_PROPERTY(bool isThere READ isThere CONSTANT)
    /// "none" while nothing is joined, "enter" while the code is typed, "code" while it is shown,
    /// "joined".
    Q_PROPERTY(QString page READ page NOTIFY told)
    Q_PROPERTY(QString title READ title NOTIFY told)
    Q_PROPERTY(QString note READ note NOTIFY told)
    /// The code of the crew, and the one that is typed, in four groups of four; a dash for each
    /// digit that is still to come.
    Q_PROPERTY(QList<QString> code READ code NOTIFY told)
    Q_PROPERTY(QList<QString> typed READ typed NOTIFY told)
    /// The group that the next digit goes to; -1 when there are sixteen.
    Q_PROPERTY(int group READ group NOTIFY told)
    /// Why the last touch came to nothing, and the remedy; empty again after the next.
    Q_PROPERTY(QString problem READ problem NOTIFY told)
    /// What keeps this device from the others, and the remedy; empty when nothing does.
    Q_PROPERTY(QString trouble READ trouble NOTIFY told)
    Q_PROPERTY(cinder::face::RowList* rows READ rows CONSTANT)

  public:
    /// `devices` may be null; all that is handed over must outlive this. `now` by the device's own
    /// clock.
    CrewDevicesView(CrewDevices* devices, const Day& day, const Settings& settings,
                    std::function<Instant()> now, QObject* parent = nullptr);

    [[nodiscard]] bool isThere() const { return devices_ != nullptr; }
    [[nodiscard]] QString page() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] QList<QString> code() const;
    [[nodiscard]] QList<QString> typed() const;
    [[nodiscard]] int group() const;
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString trouble() const;
    [[nodiscard]] RowList* rows() { return &rows_; }

    /// Looks again at the other devices: something about them changed.
    void look();
    /// The same in the language that is spoken now.
    void retell() { tell(); }
    /// Tells the others who holds this device: the person, or the board while nobody is named.
    void tellHolder();
    /// What the crew must know of its devices in the middle of a day, and what to do; else empty.
    [[nodiscard]] QString notice() const;

    /// This device makes a code, and shows it.
    Q_INVOKABLE void begin();
    /// The code of another device is to be typed; what was typed before still stands.
    Q_INVOKABLE void ask();
    /// "0" to "9"; with the sixteenth, when they are a code, this device joins.
    Q_INVOKABLE void press(const QString& key);
    Q_INVOKABLE void erase();
    Q_INVOKABLE void showCode();
    /// Back from the code, typed or shown.
    Q_INVOKABLE void close();
    Q_INVOKABLE void leave();
    /// This board is worked with here: "lead", "fire" or "buffet".
    Q_INVOKABLE void takeUp(const QString& board);

  Q_SIGNALS:
    void told();

  private:
    enum class Problem : std::uint8_t { None, WrongDigit, NoRoom };
    void tell();
    [[nodiscard]] DeviceRow row(const CrewDevices::Other& other) const;
    [[nodiscard]] QString standing(const CrewDevices::Other& other) const;
    /// On the wall of the event, or of this device while none is open; with the day when it is
    /// over.
    [[nodiscard]] QString momentOf(Instant at) const;
    [[nodiscard]] bool isDayOn(Instant now) const;
    [[nodiscard]] QString awayNotice(Instant now) const;

    CrewDevices* devices_;
    const Day& day_;
    Words words_;
    std::function<Instant()> now_;
    // As the devices said last.
    std::vector<CrewDevices::Other> others_;
    bool isJoined_ = false;
    std::string code_;
    CrewDevices::Trouble trouble_ = CrewDevices::Trouble::None;
    bool isEntering_ = false;
    bool isCodeShown_ = false;
    std::string typed_;
    Problem problem_ = Problem::None;
    QString board_;
    ListOf<DeviceRow> rows_;
};

}  // namespace cinder::face
