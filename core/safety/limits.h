#pragma once

/// The published limits as data, each with its section and edition, and what a local authority asks
/// beyond them. A local limit can only be stricter; a looser one is refused with its field named.
///
/// Local codes and the licensed food protection manager decide; these are the federal model's
/// figures where nothing stricter is named.

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/result.h"
#include "base/time.h"
#include "safety/reading.h"

namespace cinder::safety {

inline constexpr std::string_view kFoodCode = "FDA Food Code 2022";
/// Said wherever a limit is shown.
inline constexpr std::string_view kWhoDecides =
    "Local codes and the licensed food protection manager decide.";

/// Which side of the figure is right; the figure itself always is.
enum class Sense : std::uint8_t { AtLeast, AtMost };

enum class Degree : std::uint8_t {
    ColdHold,
    HotHold,
    HotHoldRoast,
    ShellEggAir,
    ReceiveCold,
    ReceiveHot,
    CookPoultry,
    CookGround,
    CookIntact,
    CookPlant,
    CookMicrowave,
    Reheat,
    ReheatPacked,
    CoolStart,
    CoolMiddle,
    CoolEnd,
    TimeStartHot,
    TimeStartCold,
    TimeStartFresh,
    TimeWarmest,
};

struct DegreeLimit {
    Degree degree = Degree::ColdHold;
    std::string_view field;  ///< "hotHold"; what a local rule calls it
    Sense sense = Sense::AtMost;
    double fahrenheit = 0;  ///< as printed
    double celsius = 0;     ///< as printed; not a conversion
    std::string_view section;
    std::string_view edition;
};

enum class Span : std::uint8_t {
    CookIntactHold,
    CookGroundHold,
    MicrowaveStand,
    ReheatHold,
    ReheatWithin,
    CoolMiddleWithin,
    CoolEndWithin,
    CoolAmbientWithin,
    TimeControl,
    TimeControlLong,
    FirstHeating,
    HandWash,
    HandRub,
    ChlorineContact,
    SanitizerContact,
    HoldEvery,
    HoldGap,
};

struct SpanLimit {
    Span span = Span::TimeControl;
    std::string_view field;
    Sense sense = Sense::AtMost;
    Duration length{0};
    std::string_view section;
    std::string_view edition;
};

[[nodiscard]] std::span<const DegreeLimit> publishedDegrees();
[[nodiscard]] std::span<const SpanLimit> publishedSpans();
[[nodiscard]] const DegreeLimit& published(Degree degree);
[[nodiscard]] const SpanLimit& published(Span span);

/// Whether the record holds what it is told against this limit. The others are there to be read: no
/// air around eggs, no microwave oven and no washing of hands is ever told, and no cooling of
/// room-warm things is begun on the site.
[[nodiscard]] bool isJudged(Degree degree);
[[nodiscard]] bool isJudged(Span span);

/// A lower temperature that cooks as well when it is kept longer.
struct CookRow {
    double fahrenheit = 0;
    double celsius = 0;
    Duration hold{0};  ///< 0 where published as less than a second
    friend bool operator==(const CookRow&, const CookRow&) = default;
};
/// Of 3-401.11(A)(2), for ground, injected and mechanically tenderized meat and pooled eggs.
[[nodiscard]] std::span<const CookRow> groundRows();
/// The chart of 3-401.11(B), for whole meat roasts of beef, pork and lamb.
[[nodiscard]] std::span<const CookRow> roastRows();
/// The first row `reading` satisfies when it was kept for `held`; null when it satisfies none.
[[nodiscard]] const CookRow* rowMet(std::span<const CookRow> rows, const Reading& reading,
                                    Duration held);

// --- local rules ---------------------------------------------------------------------------------

/// One limit a local authority sets, by its field: a temperature or a span of time.
struct LocalLimit {
    std::string field;
    std::variant<Reading, Duration> value;
    friend bool operator==(const LocalLimit&, const LocalLimit&) = default;
};

struct LocalRules {
    std::string authority;  ///< whose rule it is, as the user writes it
    std::vector<LocalLimit> limits;
    friend bool operator==(const LocalRules&, const LocalRules&) = default;
};

struct LimitFault {
    enum class Why : std::uint8_t {
        NoAuthority,   ///< nobody is named whose rule it is
        UnknownField,  ///< no published limit has this name
        WrongKind,     ///< a span where a temperature belongs, or the other way round
        Looser,        ///< less strict than the published limit
        OutOfRange,    ///< no kitchen has such a value
    };
    Why why = Why::Looser;
    std::string field;
    std::string given;
    std::string remedy;  ///< what would be right, in words
};
/// One English sentence that names the field and the remedy.
[[nodiscard]] std::string describe(const LimitFault& fault);

/// The limits of one event: the published ones, made stricter where a local authority says so.
class Limits {
  public:
    Limits() = default;
    /// Errors: the first field that cannot be taken; then none is.
    [[nodiscard]] static Result<Limits, LimitFault> with(LocalRules rules);

    /// The figure in force on a scale.
    [[nodiscard]] Temperature figure(Degree degree, Scale scale) const;
    /// Nothing above `kHottestFood` is taken for a reading of hot food, whoever wrote it.
    [[nodiscard]] bool meets(Degree degree, const Reading& reading) const;
    [[nodiscard]] Duration length(Span span) const;
    [[nodiscard]] bool isLocal(Degree degree) const;
    [[nodiscard]] bool isLocal(Span span) const;
    /// "" while no authority is named.
    [[nodiscard]] const std::string& authority() const { return rules_.authority; }
    [[nodiscard]] const LocalRules& rules() const { return rules_; }
    friend bool operator==(const Limits&, const Limits&) = default;

  private:
    LocalRules rules_;
};

}  // namespace cinder::safety
