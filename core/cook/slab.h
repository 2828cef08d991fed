#pragma once

/// Heat conduction through a slab of one or more layers.
///
/// The slab lies between z = 0 (the face that is down when it is laid) and z = its thickness.
/// In space quadratic finite elements, finer towards the faces: what a turn does to a face is a
/// thin layer at first. An element is two cells with a node between, which is eliminated from its
/// equation, so a step costs one sweep over the ends of elements. In time TR-BDF2, which is
/// L-stable: what a turn does to a face dies out instead of ringing on, whatever the step.
/// Evaporation clamps a wet face near boiling by a film that acts only above the boiling point;
/// which faces boil is found by Newton's iteration on that kink.
///
/// Sources: R. E. Bank et al., "Transient simulation of silicon devices and circuits", IEEE Trans.
/// Electron Devices 32 (1985), for TR-BDF2; G. Strang, G. J. Fix, "An Analysis of the Finite
/// Element Method" (1973), for the elements. Accuracy is measured by tests/reference and
/// bench_cook.

#include <array>
#include <cmath>
#include <optional>
#include <span>
#include <vector>

#include "base/time.h"
#include "cook/material.h"

namespace cinder::cook {

struct Layer {
    Length thickness;
    Material material;
};

/// Water leaving a wet face: above `boiling` the face loses `film` times its excess. The value of
/// the film hardly matters (2000 or 20000 W/m²K move a 60 mm roast by 20 s in an hour); 2000 is the
/// one the checks use.
struct Evaporation {
    FilmCoefficient film{2000};
    Temperature boiling = Temperature::fromCelsius(100);
};

/// What a face sees: heat in = radiant + film · (surroundings - face) - evaporation.
struct Side {
    FilmCoefficient film;
    Temperature surroundings;
    HeatFlux radiant{};
    std::optional<Evaporation> evaporation{};
};

/// `cells` over the whole thickness, no step longer than `longestStep`. After the sides change,
/// steps begin with `firstStep` and every second one is 1.6 times longer, which follows the jump of
/// the face as it sinks in; `firstStep` zero makes all steps alike.
struct Resolution {
    int cells = 60;
    Duration longestStep = std::chrono::seconds(10);
    Duration firstStep = std::chrono::seconds(1);
    /// How much shorter the elements at the faces of a layer are than the mean one, 0 to below 1.
    double grading = 0.6;

    /// For forecasts of many pieces: 0.05 °C everywhere from the first minute on, at a Biot number
    /// of 10 and less below (bench_cook prints it).
    static Resolution quick() { return {24, std::chrono::seconds(60), std::chrono::seconds(3)}; }
    /// For checks.
    static Resolution fine() {
        return {120, std::chrono::seconds(5), std::chrono::milliseconds(500)};
    }
};

class Slab {
  public:
    /// A slab at one temperature throughout. Errors: `NotPositive` for a thickness; `OutOfRange`
    /// for no layer, fewer than 4 or more than 2000 cells, or a step of less than a millisecond.
    [[nodiscard]] static Result<Slab, CookError> make(std::span<const Layer> layers,
                                                      Temperature start,
                                                      Resolution resolution = {});

    /// Lets `lasting` pass with these sides; the last step ends exactly there. `watch(seconds)` is
    /// called after each step with the seconds since the call began and returns whether to go on;
    /// returns the seconds that passed.
    template <class Watch>
    double advance(const Side& down, const Side& up, Duration lasting, Watch&& watch);
    void advance(const Side& down, const Side& up, Duration lasting) {
        advance(down, up, lasting, [](double) { return true; });
    }

    /// Undoes the last step and repeats it shorter, `seconds` long. Only after `advance` stopped.
    void retakeStep(double seconds);
    [[nodiscard]] double lastStepSeconds() const { return stepSeconds_; }

    [[nodiscard]] Length thickness() const;
    /// At `depth` above z = 0, by the parabola of the element; beyond the faces the face counts.
    [[nodiscard]] Temperature at(Length depth) const;
    [[nodiscard]] Temperature middle() const;
    /// Weighted by heat capacity: where the slab would level out if it lost nothing.
    [[nodiscard]] Temperature mean() const;
    /// The lowest temperature inside, by the parabola of the element.
    [[nodiscard]] Temperature coldest() const;

    /// Degrees Celsius, unrounded, for the numerics of this folder.
    [[nodiscard]] std::span<const double> nodesCelsius() const { return now_; }
    [[nodiscard]] std::span<const double> nodesMetres() const { return z_; }
    [[nodiscard]] double celsiusAt(double metres) const;
    [[nodiscard]] double coldestCelsius() const;

  private:
    struct Element {
        double conduction = 0;  ///< conductivity / (3 · length), W/m²K
        double capacity = 0;    ///< heat capacity · length / 30, J/m²K
    };
    /// One elimination of capacity + weight · conduction, per element and per end of elements.
    struct Factors {
        bool ready = false;
        std::vector<double> middle;   // 1 / diagonal of the node between
        std::vector<double> toEnds;   // what the node between hands to either end
        std::vector<double> link;     // from end to end
        std::vector<double> inverse;  // 1 / diagonal of an end
    };
    /// A face in plain numbers: gain - loss · T.
    struct Face {
        double gain = 0, loss = 0, wetGain = 0, wetLoss = 0, boiling = 0;
        bool canBoil = false;
    };

    /// Each size twice, because a size costs an elimination; then the next one, none longer than
    /// `longest`.
    struct Steps {
        int count = 0;
        double first = 0, longest = 0;  ///< s

        /// The size after step `i`, from 0, of this `size`.
        [[nodiscard]] double next(int i, double size) const {
            return i % 2 == 0 ? size : std::min(size * 1.6, longest);
        }
    };

    [[nodiscard]] Steps stepsFor(double total) const;
    static Face plain(const Side& side);
    void setSides(const Side& down, const Side& up);
    void step(double seconds);
    void solveStage(double weight, std::vector<double>& into);
    void refreshProperties(std::span<const double> celsius);
    void addHeat(std::span<const double> celsius, double weight, std::vector<double>& into) const;
    void addCapacity(std::span<const double> celsius, std::vector<double>& into) const;
    void solve(const Factors& factors, std::vector<double>& right);
    [[nodiscard]] double quadratic(std::size_t element, double metres) const;
    void factor(double weight, unsigned wet, Factors& into) const;
    [[nodiscard]] double faceFlux(const Face& face, double celsius) const;

    Resolution resolution_;
    std::vector<Material> materials_;
    std::vector<std::size_t> materialOf_;  // per element
    std::vector<double> z_;                // per node, m
    std::vector<double> now_, before_, between_, rhs_, known_;
    std::vector<Element> elements_;
    std::vector<double> ends_;  // of elements, while an equation is solved
    bool constant_ = true;
    Face down_, up_;
    std::array<Factors, 4> factors_;  // by which faces boil: bit 0 down, bit 1 up
    unsigned wet_ = 0;
    double factoredFor_ = 0;
    double stepSeconds_ = 0;
};

template <class Watch>
double Slab::advance(const Side& down, const Side& up, Duration lasting, Watch&& watch) {
    setSides(down, up);
    const double total = std::chrono::duration<double>(lasting).count();
    if (!(total > 0)) return 0;
    const Steps steps = stepsFor(total);
    double size = steps.first;
    double passed = 0;
    for (int i = 0; i < steps.count; ++i) {
        step(size);
        passed += stepSeconds_;
        if (!watch(passed)) return passed;
        size = steps.next(i, size);
    }
    return passed;
}

}  // namespace cinder::cook
