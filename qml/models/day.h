#pragma once

/// The open day, as the boards see it: finished words to read, touches to make.

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "door.h"
#include "fire.h"
#include "planned_touch.h"
#include "row_maker.h"
#include "run_sheet.h"
#include "wick.h"

namespace cinder::face {

/// The few lines that stand alone on a board. Compared whole, so that nothing is told twice.
struct Headline {
    Q_GADGET
    QML_VALUE_TYPE(headline)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString bellLarge MEMBER bellLarge)
    Q_PROPERTY(QString bellCaption MEMBER bellCaption)
    Q_PROPERTY(QString serveClock MEMBER serveClock)
    Q_PROPERTY(QString promised MEMBER promised)
    Q_PROPERTY(QString fromBell MEMBER fromBell)
    Q_PROPERTY(QString ready MEMBER ready)
    Q_PROPERTY(QString spare MEMBER spare)
    Q_PROPERTY(QString readyMark MEMBER readyMark)
    Q_PROPERTY(QString weakest MEMBER weakest)
    Q_PROPERTY(QString weakestSlack MEMBER weakestSlack)
    Q_PROPERTY(QString weakestLatest MEMBER weakestLatest)
    /// "86 %", and what goes with it; empty while it is not known.
    Q_PROPERTY(QString chance MEMBER chance)
    Q_PROPERTY(QString chanceReady MEMBER chanceReady)
    Q_PROPERTY(QString chanceEarlier MEMBER chanceEarlier)
    Q_PROPERTY(QString rehearsal MEMBER rehearsal)
    Q_PROPERTY(QString buffetProgress MEMBER buffetProgress)
    Q_PROPERTY(QString undo MEMBER undo)
    Q_PROPERTY(QString deference MEMBER deference)
    /// The board a call comes from, empty while nothing rings; and whether it is for the holder.
    Q_PROPERTY(QString callBoard MEMBER callBoard)
    Q_PROPERTY(QString callText MEMBER callText)
    Q_PROPERTY(QString callKey MEMBER callKey)
    Q_PROPERTY(bool isCallMine MEMBER isCallMine)
    Q_PROPERTY(bool isPastBell MEMBER isPastBell)
    Q_PROPERTY(bool isLate MEMBER isLate)
    /// The crew should be there by now, and not everything is out.
    Q_PROPERTY(bool isUnderWay MEMBER isUnderWay)
    Q_PROPERTY(bool isRehearsal MEMBER isRehearsal)
    Q_PROPERTY(bool isReadOnly MEMBER isReadOnly)
    Q_PROPERTY(int speed MEMBER speed)
    Q_PROPERTY(double buffetDone MEMBER buffetDone)

  public:
    QString name, bellLarge, bellCaption, serveClock, promised, fromBell, ready, spare, readyMark;
    QString weakest, weakestSlack, weakestLatest, rehearsal, buffetProgress, undo, deference;
    QString callBoard, callText, callKey, chance, chanceReady, chanceEarlier;
    bool isCallMine = false;
    bool isPastBell = false, isLate = false, isUnderWay = false, isRehearsal = false,
         isReadOnly = false;
    int speed = 1;
    double buffetDone = 0;
    friend bool operator==(const Headline&, const Headline&) = default;
};

class Day : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Given by the face")
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY isOpenChanged)
    Q_PROPERTY(cinder::face::Headline line READ line NOTIFY lineChanged)
    Q_PROPERTY(QString bellSeconds READ bellSeconds NOTIFY secondPassed)
    Q_PROPERTY(QString wallClock READ wallClock NOTIFY secondPassed)
    Q_PROPERTY(QString undoLeft READ undoLeft NOTIFY secondPassed)
    /// Turns over at every beat while something rings, for the full-board flash.
    Q_PROPERTY(bool isFlashOn READ isFlashOn NOTIFY flashed)
    /// Why the last touch was not taken; empty again after the next that was.
    Q_PROPERTY(QString refusal READ refusal NOTIFY refusalChanged)
    /// "Battery 14 %"; empty unless it drains and is low.
    Q_PROPERTY(QString battery READ battery NOTIFY batteryChanged)
    /// The rest of the day is being planned again.
    Q_PROPERTY(bool isPlanning READ isPlanning NOTIFY planningChanged)
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY personChanged)
    Q_PROPERTY(cinder::face::Wick* wick READ wick CONSTANT)
    Q_PROPERTY(cinder::face::RunSheet* runSheet READ runSheet CONSTANT)
    Q_PROPERTY(cinder::face::Fire* fire READ fire CONSTANT)
    Q_PROPERTY(cinder::face::RowList* grate READ grate CONSTANT)
    Q_PROPERTY(cinder::face::RowList* coals READ coals CONSTANT)
    Q_PROPERTY(cinder::face::RowList* rests READ rests CONSTANT)
    Q_PROPERTY(cinder::face::RowList* nextAtFire READ nextAtFire CONSTANT)
    Q_PROPERTY(cinder::face::RowList* between READ between CONSTANT)
    Q_PROPERTY(cinder::face::RowList* buffet READ buffet CONSTANT)
    Q_PROPERTY(cinder::face::RowList* all READ all CONSTANT)
    /// What begins next, whoever does it.
    Q_PROPERTY(cinder::face::RowList* ahead READ ahead CONSTANT)
    Q_PROPERTY(cinder::face::RowList* strike READ strike CONSTANT)
    Q_PROPERTY(cinder::face::RowList* people READ people CONSTANT)
    Q_PROPERTY(cinder::face::RowList* ringing READ ringing CONSTANT)
    Q_PROPERTY(cinder::face::RowList* notices READ notices CONSTANT)

  public:
    /// Both must outlive this.
    Day(Door& door, Settings& settings, QObject* parent = nullptr);

    /// Looks again; called by the pulse, and after every touch.
    void beat();
    /// Everything anew: language or units changed.
    void retell();
    /// Said once as a quiet notice.
    void tellMute(bool isMute);
    void tellBattery(std::optional<int> percentLeft);
    /// What is wrong with the other devices of the crew, and what to do; empty: nothing.
    void tellDevices(const QString& words);

    [[nodiscard]] const std::shared_ptr<const app::Snapshot>& snapshot() const { return seen_; }
    [[nodiscard]] bool isOpen() const { return seen_ != nullptr; }
    [[nodiscard]] const Headline& line() const { return line_; }
    [[nodiscard]] QString bellSeconds() const { return bellSeconds_; }
    [[nodiscard]] QString wallClock() const { return wallClock_; }
    [[nodiscard]] QString undoLeft() const { return undoLeft_; }
    [[nodiscard]] bool isFlashOn() const { return isFlashOn_; }
    [[nodiscard]] QString battery() const { return battery_; }
    [[nodiscard]] QString refusal() const { return refusal_; }
    [[nodiscard]] bool isPlanning() const { return search_.isBusy(); }
    [[nodiscard]] QString person() const { return person_; }
    void setPerson(const QString& person);

    [[nodiscard]] Wick* wick() { return &wick_; }
    [[nodiscard]] RunSheet* runSheet() { return &runSheet_; }
    [[nodiscard]] Fire* fire() { return &fire_; }
    [[nodiscard]] RowList* grate() { return &grate_; }
    [[nodiscard]] RowList* coals() { return &coals_; }
    [[nodiscard]] RowList* rests() { return &rests_; }
    [[nodiscard]] RowList* nextAtFire() { return &nextAtFire_; }
    [[nodiscard]] RowList* between() { return &between_; }
    [[nodiscard]] RowList* buffet() { return &buffet_; }
    [[nodiscard]] RowList* all() { return &all_; }
    [[nodiscard]] RowList* ahead() { return &ahead_; }
    [[nodiscard]] RowList* strike() { return &strike_; }
    [[nodiscard]] RowList* people() { return &people_; }
    [[nodiscard]] RowList* ringing() { return &ringing_; }
    [[nodiscard]] RowList* notices() { return &notices_; }

    // --- touches ---
    Q_INVOKABLE void start(const QString& task);
    Q_INVOKABLE void finish(const QString& task);
    Q_INVOKABLE void skip(const QString& task);
    Q_INVOKABLE void turn(const QString& task);
    Q_INVOKABLE void tick(const QString& task, int line);
    Q_INVOKABLE void moveServe(int minutes);
    Q_INVOKABLE void acknowledge(const QString& alarm);
    /// What the alarm calls for: "turn", "finish" or "start".
    Q_INVOKABLE void act(const QString& deed, const QString& task);
    /// Goes to what a call of the record or of the line asks for, and silences it.
    Q_INVOKABLE void follow(const QString& alarm);
    /// Why a touch elsewhere was not taken.
    void refuse(const QString& why);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void replan();
    /// What was left out is to be done after all.
    Q_INVOKABLE void bringBack(const QString& task);
    /// The device's clock was set and is right now: every countdown goes by it from here on.
    Q_INVOKABLE void followClock();
    Q_INVOKABLE void rehearse(int speed);
    Q_INVOKABLE void setSpeed(int speed);
    Q_INVOKABLE void dropRefusal();

    /// Carries out a touch of another page that waits for a plan; `whenDone` after its outcome is
    /// shown.
    void plan(SearchThread& thread, Ask ask, std::function<void()> whenDone);
    /// Waits for the plan that is searched; for pictures and tests.
    void settle() { search_.settle(); }
    /// What became of a touch on another page: shown as those on the boards are. True when it was
    /// taken.
    bool take(const Taken& taken);

  Q_SIGNALS:
    /// Something was touched, taken or not.
    void touched();
    void isOpenChanged();
    /// The day was looked at again, after every beat and every touch.
    void looked();
    /// A call leads to the record: to this dish, pan 0 for whichever there is.
    void recordAsked(const QString& dish, int pan);
    /// A call leads to the guest line.
    void serveAsked();
    void lineChanged();
    void secondPassed();
    void flashed();
    void refusalChanged();
    void batteryChanged();
    void planningChanged();
    void personChanged();

  private:
    /// One vessel of the line stands in its place.
    void place(int line);
    /// Plans the rest of the day, unless that is being done.
    void planRest(Ask ask);
    void showLists();
    void showSeconds();
    [[nodiscard]] Headline headline() const;
    [[nodiscard]] std::vector<NoticeRow> noticeRows() const;

    Door& door_;
    Settings& settings_;
    Words words_;
    RowMaker maker_{words_};
    std::shared_ptr<const app::Snapshot> seen_;
    Headline line_;
    QString bellSeconds_, wallClock_, undoLeft_, refusal_, person_;
    bool isFlashOn_ = false;
    bool isMute_ = false;
    QString battery_, devices_;
    Wick wick_;
    RunSheet runSheet_;
    Fire fire_;
    ListOf<TaskRow> grate_, coals_, rests_, nextAtFire_, between_, buffet_, all_, ahead_, strike_;
    ListOf<PersonRow> people_;
    ListOf<AlarmRow> ringing_;
    ListOf<NoticeRow> notices_;
    SearchThread search_;  ///< last: nothing answers into what is gone
};

}  // namespace cinder::face
