#include "search_thread.h"

#include <QCoreApplication>
#include <QEvent>

namespace cinder::face {

SearchThread::~SearchThread() {
    for (Search& search : searches_)
        search.isStopped = true;
    for (const Search& search : searches_)
        search.thread->wait();
}

void SearchThread::begin(std::function<Answer(const Stop&)> work) {
    stop();
    Search& search = searches_.emplace_back();
    heard_ = &search;
    search.thread.reset(QThread::create([this, &search, work = std::move(work)] {
        auto answer = work(search.isStopped);
        QMetaObject::invokeMethod(
            this, [this, &search, answer = std::move(answer)] { end(search, answer); });
    }));
    search.thread->start();
}

void SearchThread::end(const Search& search, const Answer& answer) {
    // The answer of a search that was stopped comes all the same.
    const bool isHeard = heard_ == &search;
    search.thread->wait();
    searches_.remove_if([&](const Search& one) { return &one == &search; });
    if (!isHeard) return;
    heard_ = nullptr;
    answer();
}

void SearchThread::stop() {
    if (heard_ != nullptr) heard_->isStopped = true;
    heard_ = nullptr;
}

void SearchThread::settle() {
    while (!searches_.empty()) {
        searches_.front().thread->wait();
        QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
    }
}

}  // namespace cinder::face
