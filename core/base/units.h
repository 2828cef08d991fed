#pragma once

/// Strong units.
///
/// A quantity is a whole count of a small unit, so that two devices that exchange it agree bit for
/// bit, and its type says what it measures, so that a mass cannot be added to a length. The unit is
/// named where a number goes in and where it comes out: `Mass::fromGrams(500).kilograms()`.
///
/// A temperature is a point on a scale, not an amount: two temperatures cannot be added, and their
/// difference is another type.

#include <cmath>
#include <compare>
#include <cstdint>

namespace cinder {

namespace detail {

/// What every additive quantity can do; `Self` names the unit.
template <class Self>
class Additive {
  public:
    constexpr Additive() = default;

    friend constexpr Self operator+(Self a, Self b) { return Self(a.count_ + b.count_); }
    friend constexpr Self operator-(Self a, Self b) { return Self(a.count_ - b.count_); }
    friend constexpr Self operator*(Self a, std::int64_t n) { return Self(a.count_ * n); }
    friend constexpr Self operator*(std::int64_t n, Self a) { return Self(a.count_ * n); }
    /// How many `b` make an `a`, as a ratio.
    friend constexpr double operator/(Self a, Self b) {
        return static_cast<double>(a.count_) / static_cast<double>(b.count_);
    }
    constexpr Self& operator+=(Self other) {
        count_ += other.count_;
        return static_cast<Self&>(*this);
    }
    friend constexpr auto operator<=>(const Additive&, const Additive&) = default;

  protected:
    constexpr explicit Additive(std::int64_t count) : count_(count) {}
    static constexpr std::int64_t rounded(double value) {
        return static_cast<std::int64_t>(value < 0 ? value - 0.5 : value + 0.5);
    }
    std::int64_t count_ = 0;
};

}  // namespace detail

/// Counted in grams.
class Mass : public detail::Additive<Mass> {
  public:
    constexpr Mass() = default;
    static constexpr Mass fromGrams(std::int64_t grams) { return Mass(grams); }
    static constexpr Mass fromKilograms(double kg) { return Mass(rounded(kg * 1000.0)); }
    /// Avoirdupois pound, 0.45359237 kg exactly (NIST SP 811, appendix B).
    static constexpr Mass fromPounds(double lb) { return Mass(rounded(lb * 453.59237)); }
    constexpr std::int64_t grams() const { return count_; }
    constexpr double kilograms() const { return static_cast<double>(count_) / 1000.0; }
    constexpr double pounds() const { return static_cast<double>(count_) / 453.59237; }

  private:
    using Additive::Additive;
    friend class detail::Additive<Mass>;
};

/// Counted in micrometres.
class Length : public detail::Additive<Length> {
  public:
    constexpr Length() = default;
    static constexpr Length fromMillimetres(double mm) { return Length(rounded(mm * 1000.0)); }
    static constexpr Length fromMetres(double m) { return Length(rounded(m * 1e6)); }
    /// International inch, 25.4 mm exactly.
    static constexpr Length fromInches(double in) { return Length(rounded(in * 25400.0)); }
    constexpr double millimetres() const { return static_cast<double>(count_) / 1000.0; }
    constexpr double metres() const { return static_cast<double>(count_) / 1e6; }
    constexpr double inches() const { return static_cast<double>(count_) / 25400.0; }

  private:
    using Additive::Additive;
    friend class detail::Additive<Length>;
};

/// Counted in square millimetres.
class Area : public detail::Additive<Area> {
  public:
    constexpr Area() = default;
    static constexpr Area fromSquareMillimetres(std::int64_t mm2) { return Area(mm2); }
    static constexpr Area ofRectangle(Length a, Length b) {
        return Area(rounded(a.millimetres() * b.millimetres()));
    }
    constexpr std::int64_t squareMillimetres() const { return count_; }
    constexpr double squareMetres() const { return static_cast<double>(count_) / 1e6; }

  private:
    using Additive::Additive;
    friend class detail::Additive<Area>;
};

/// Counted in millilitres.
class Volume : public detail::Additive<Volume> {
  public:
    constexpr Volume() = default;
    static constexpr Volume fromMillilitres(std::int64_t ml) { return Volume(ml); }
    static constexpr Volume fromLitres(double l) { return Volume(rounded(l * 1000.0)); }
    constexpr std::int64_t millilitres() const { return count_; }
    constexpr double litres() const { return static_cast<double>(count_) / 1000.0; }

  private:
    using Additive::Additive;
    friend class detail::Additive<Volume>;
};

/// An amount of warming or cooling, counted in thousandths of a kelvin.
class TemperatureDelta : public detail::Additive<TemperatureDelta> {
  public:
    constexpr TemperatureDelta() = default;
    static constexpr TemperatureDelta fromKelvin(double k) {
        return TemperatureDelta(rounded(k * 1000.0));
    }
    constexpr double kelvin() const { return static_cast<double>(count_) / 1000.0; }

  private:
    using Additive::Additive;
    friend class detail::Additive<TemperatureDelta>;
};

/// A point on the temperature scale, counted in thousandths of a degree Celsius.
class Temperature {
  public:
    constexpr Temperature() = default;
    static constexpr Temperature fromCelsius(double c) {
        return Temperature(TemperatureDelta::fromKelvin(c));
    }
    static constexpr Temperature fromFahrenheit(double f) { return fromCelsius((f - 32.0) / 1.8); }
    constexpr double celsius() const { return aboveFreezing_.kelvin(); }
    constexpr double fahrenheit() const { return celsius() * 1.8 + 32.0; }

    friend constexpr TemperatureDelta operator-(Temperature a, Temperature b) {
        return a.aboveFreezing_ - b.aboveFreezing_;
    }
    friend constexpr Temperature operator+(Temperature t, TemperatureDelta d) {
        return Temperature(t.aboveFreezing_ + d);
    }
    friend constexpr auto operator<=>(const Temperature&, const Temperature&) = default;

  private:
    constexpr explicit Temperature(TemperatureDelta d) : aboveFreezing_(d) {}
    TemperatureDelta aboveFreezing_;
};

}  // namespace cinder
