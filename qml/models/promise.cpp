#include "promise.h"

#include "settings.h"

namespace cinder::face {

namespace {

Duration toDuration(plan::HalfMinutes amount) {
    return std::chrono::seconds{30} * amount.count();
}

}  // namespace

Promise::Promise(Door& door, Settings& settings, QObject* parent)
    : QObject(parent), door_(door), words_(settings), waysOut_(door, settings, this) {
    connect(&settings, &Settings::changed, this, [this] { tell(); });
}

void Promise::reckon() {
    // The answer follows the plan that is being made.
    if (isPlanning()) return;
    taking_.clear();
    auto event = door_.described();
    if (!event) return search_.stop();
    // The answer for another event is none for this one.
    if (event->id != asking_) {
        found_.reset();
        refusal_.clear();
        tell();
    }
    asking_ = event->id;
    search_.start(
        [event = *std::move(event)](const std::atomic<bool>& stop) {
            plan::Search search;
            search.stop = &stop;
            return app::reckonPromise(event, search);
        },
        [this](Result<app::Promise, app::Refusal> found) {
            found_ = std::move(found);
            refusal_.clear();
            tell();
        });
    Q_EMIT changed();
}

Door::Asked Promise::askToTake(const QString& key) const {
    const auto& promise = **found_;
    if (door_.described() != promise.event)
        return fail(app::Refusal{app::Refusal::Why::Overtaken, {}, {}, {}, {}});
    const auto document = app::accepted(promise, key.toULongLong());
    if (!document) return fail(document.error());
    return door_.askToRedescribe(*document);
}

void Promise::accept(const QString& key) {
    if (!found_ || !found_->has_value() || search_.isBusy()) return;
    taking_ = key;
    carryOut(
        search_, door_, [this, key] { return askToTake(key); },
        [this](const Taken& taken) {
            refusal_ = taken ? QString() : Words::refusal(taken.error());
            if (taken) Q_EMIT accepted();
            tell();
            // What is shown is the answer for another event than the one that is open now.
            const auto event = door_.described();
            if (event != found_->value().event) reckon();
        });
    tell();
}

void Promise::stopPlanning() {
    if (!isPlanning()) return;
    search_.stop();
    tell();
}

void Promise::retell() {
    tell();
    waysOut_.retell();
}

void Promise::tell() {
    std::vector<OptionRow> rows, shorter;
    std::vector<QueueBar> queue;
    line_ = {};
    answer_.clear();
    latest_.clear();
    bound_.clear();
    weakest_.clear();
    asked_.clear();
    const auto objection = door_.objectionToEdit();
    locked_ = objection ? Words::refusal(*objection) : QString();
    if (found_ && found_->has_value()) {
        const auto& promise = **found_;
        words_.setPlace(promise.event.serve.offset, promise.event.serve.at);
        tellAnswer();
        for (std::size_t i = 0; i < promise.explanation.remedies.size(); ++i)
            rows.push_back(option(promise.explanation.remedies[i], i));
        line_ = promiseLine(promise, words_);
        queue = queueBars(promise.line.flow);
        shorter = shorterLine(promise, words_);
    } else if (found_) {
        isKept_ = false;
        refusal_ = Words::refusal(found_->error());
    }
    options_.show(std::move(rows));
    queue_.show(std::move(queue));
    shorter_.show(std::move(shorter));
    Q_EMIT changed();
}

void Promise::tellAnswer() {
    const auto& promise = **found_;
    const auto& plan = promise.explanation.plan;
    const Instant bell = promise.event.serve.at;
    const Duration missing = toDuration(promise.explanation.missing);
    const auto guests = event::headCount(promise.event.guests);
    asked_ = (guests == 1 ? tr("1 guest") : tr("%1 guests").arg(guests)) + QStringLiteral(" · ") +
             tr("serve at %1").arg(words_.clock(bell));
    if (promise.event.site.arrival)
        asked_ += QStringLiteral(" · ") +
                  tr("arrive at %1").arg(words_.clock(promise.event.site.arrival->at));
    isKept_ = missing <= Duration::zero();
    if (!promise.event.site.arrival)
        answer_ = tr("It can be done.");
    else if (isKept_)
        answer_ = tr("It can be done, with %1 to spare.").arg(Words::spareSpan(-missing));
    else
        answer_ = tr("Not like this: %1 too short.").arg(Words::span(missing));
    latest_ = tr("The crew may come as late as %1.")
                  .arg(words_.clockAndBell(bell + toDuration(plan.latestArrival)));
    const Duration gap = toDuration(plan.arrivalBound - plan.latestArrival);
    if (gap <= Duration::zero())
        bound_ = tr("Proven: no plan lets them come later.");
    else
        bound_ = tr("No plan lets them come more than %1 later.").arg(Words::span(gap));
    if (const auto& weakest = promise.explanation.weakest) {
        const auto task = static_cast<std::size_t>(*weakest);
        weakest_ =
            tr("Weakest link: %1, %2.")
                .arg(words_.name(promise.problem.tasks[task].name),
                     Words::slack(std::max(Duration::zero(), promise.explanation.slack.at(task))));
    }
}

OptionRow Promise::option(const plan::Remedy& remedy, std::size_t number) const {
    using Kind = plan::Remedy::Kind;
    const auto& promise = **found_;
    const auto dishName = [&]() -> QString {
        for (const auto& dish : promise.event.menu)
            if (remedy.dish && dish.id == *remedy.dish) return words_.name(dish.name);
        return {};
    };
    OptionRow row;
    row.key = QString::number(number);
    row.isEnough = remedy.isEnough;
    row.isBeingPlanned = isPlanning() && row.key == taking_;
    const Duration time = toDuration(remedy.time);
    switch (remedy.kind) {
        case Kind::EarlierArrival:
            row.text = tr("Come %1 earlier").arg(Words::span(time));
            if (promise.event.site.arrival)
                row.text += tr(", at %1").arg(words_.clock(promise.event.site.arrival->at - time));
            break;
        case Kind::LaterServe:
            row.text = tr("Serve %1 later, at %2")
                           .arg(Words::span(time), words_.clock(promise.event.serve.at + time));
            break;
        case Kind::PrepareAhead:
            row.text = tr("Prepare before leaving: %1").arg(dishName());
            break;
        case Kind::DropDish:
            row.text = tr("Leave out: %1").arg(dishName());
            break;
        case Kind::MoreOfResource: {
            const auto& resource =
                promise.problem.resources[static_cast<std::size_t>(*remedy.resource)];
            row.text = tr("%1 more of: %2").arg(remedy.units).arg(words_.name(resource.name));
            break;
        }
        case Kind::OnePersonMore: {
            QStringList skills;
            for (const auto skill : remedy.skills)
                skills << words_.name(promise.problem.skills[static_cast<std::size_t>(skill)].name);
            row.text = tr("One person more: %1").arg(skills.join(QStringLiteral(", ")));
            break;
        }
    }
    const QString gain = Words::spareSpan(toDuration(remedy.gain));
    row.note = remedy.isEnough ? tr("enough; gains %1").arg(gain)
                               : tr("not enough alone; gains %1").arg(gain);
    return row;
}

}  // namespace cinder::face
