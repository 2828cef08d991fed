/// Devices that meet by chance, touch by chance and lose each other by chance: whatever happened,
/// once all have met in peace all have all.

#include "base/rng.h"
#include "crew.h"

using namespace samples;

namespace {

constexpr std::uint32_t kTablets = 4;

class Day {
  public:
    explicit Day(std::uint64_t seed) : rng_(seed) {
        for (std::uint32_t i = 0; i < kTablets; ++i)
            tablets_.push_back(&crew_.add(at(static_cast<int>(rng_.below(120)))));
        crew_.delay = Duration{rng_.below(50)};
    }

    void goBy(int moments) {
        for (int i = 0; i < moments; ++i) {
            const std::uint32_t what = rng_.below(40);
            if (what < 8) touch(any());
            if (what == 8 || what == 9) meet(any(), any());
            if (what == 10 && !links_.empty())
                lose(rng_.below(static_cast<std::uint32_t>(links_.size())));
            if (what == 11) any().clock.advance(std::chrono::hours{1});
            if (what == 12) setClocksRight();
            if (what == 13) fillDisk(any());
            if (what > 13)
                for (int steps = 0; steps < 3; ++steps)
                    crew_.step();
            if (i % 20 == 19) beat();
        }
    }
    /// All clocks right, all disks with room, each with the first.
    void comeToPeace() {
        while (!links_.empty())
            lose(0);
        setClocksRight();
        for (Tablet* tablet : tablets_)
            tablet->store->takingFails.reset();
        for (std::uint32_t i = 1; i < kTablets; ++i)
            links_.push_back(&crew_.connect(*tablets_.front(), *tablets_[i]));
        crew_.run();
        crew_.beat();
    }
    void check() const {
        for (const Link* link : links_) {
            CHECK(link->a.standing() == Standing::UpToDate);
            CHECK(link->b.standing() == Standing::UpToDate);
        }
        for (const Tablet* tablet : tablets_) {
            checkSame(*tablets_.front(), *tablet);
            checkEachOnce(*tablet);
            CHECK(tablet->arrived.size() == static_cast<std::size_t>(touches_) - tablet->touches);
        }
    }

  private:
    Tablet& any() { return *tablets_[rng_.below(kTablets)]; }

    void touch(Tablet& tablet) {
        const EventId events[] = {kOrchard, kBarn, kLake};
        const EventId& event = events[rng_.below(3)];
        if (rng_.below(10) == 0) {
            // Long, so that two do not go into one message.
            const Body picture = Unknown{"picture", std::string(140'000, 'x')};
            Crew::note(tablet, event, {picture, picture});
            touches_ += 2;
        } else {
            Crew::touch(tablet, event, ++touches_);
        }
    }
    void meet(Tablet& a, Tablet& b) {
        if (&a != &b) links_.push_back(&crew_.connect(a, b));
    }
    void lose(std::uint32_t which) {
        crew_.cut(*links_[which]);
        links_.erase(links_.begin() + which);
    }
    void setClocksRight() {
        for (Tablet* tablet : tablets_)
            tablet->clock.setWall(tablets_.front()->clock.wall());
    }
    void fillDisk(Tablet& tablet) {
        if (tablet.store->takingFails)
            tablet.store->takingFails.reset();
        else
            tablet.store->takingFails = StoreError::Why::DiskFull;
    }
    void beat() {
        for (Tablet* tablet : tablets_)
            for (Exchange* exchange : tablet->exchanges)
                exchange->beat();
    }

    Rng rng_;
    Crew crew_;
    std::vector<Tablet*> tablets_;
    std::vector<Link*> links_;
    int touches_ = 0;
};

}  // namespace

TEST_CASE("however devices met, lost each other and filled up, in the end all have all, once") {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        INFO("seed " << seed);
        Day day(seed);
        day.goBy(300);
        day.comeToPeace();
        day.check();
    }
}
