#pragma once

/// A search on a thread of its own, one at a time, whose answer comes back to the thread that
/// asked. The search works on copies and looks at a flag that asks it to end; who stops it, starts
/// another or goes away hears nothing of it any more.

#include <atomic>
#include <functional>
#include <list>
#include <memory>
#include <type_traits>
#include <utility>

#include <QObject>
#include <QThread>

namespace cinder::face {

class SearchThread final : public QObject {
  public:
    /// Waits for the end of every search; nobody hears their answers.
    ~SearchThread() override;

    /// Stops what runs and begins `work`, a function of the flag that asks it to end. What it
    /// returns is handed to `whenDone` out of the event loop of the thread that asked.
    template <class Work, class WhenDone>
    void start(Work work, WhenDone whenDone) {
        begin([work = std::move(work), whenDone = std::move(whenDone)](const Stop& stop) {
            auto answer =
                std::make_shared<std::invoke_result_t<const Work&, const Stop&>>(work(stop));
            return [whenDone, answer] { whenDone(std::move(*answer)); };
        });
    }
    /// Asks the search to end.
    void stop();
    /// Waits for the answer, and for that of a search which the answer begins; for pictures and
    /// tests.
    void settle();
    [[nodiscard]] bool isBusy() const { return heard_ != nullptr; }

  private:
    using Stop = std::atomic<bool>;
    using Answer = std::function<void()>;
    struct Search {
        std::unique_ptr<QThread> thread;
        Stop isStopped{false};
    };
    void begin(std::function<Answer(const Stop&)> work);
    void end(const Search& search, const Answer& answer);

    std::list<Search> searches_;  ///< until their answers are here, heard or not
    Search* heard_ = nullptr;     ///< whose answer is waited for
};

}  // namespace cinder::face
