#pragma once

/// Heat conduction through a slab of one or more layers.
///
/// The slab lies between z = 0 (the face that is down when it is laid) and z = its thickness.
/// Finite volumes on nodes, half a volume at each face and one node on every border between layers;
/// in time TR-BDF2, which is L-stable: what a turn does to a face dies out instead of ringing on,
/// whatever the step. Evaporation clamps a wet face near boiling by a film that acts only above the
/// boiling point; which faces boil is found by Newton's iteration on that kink.
///
/// Sources: R. E. Bank et al., "Transient simulation of silicon devices and circuits", IEEE Trans.
/// Electron Devices 32 (1985), for TR-BDF2; S. V. Patankar, "Numerical Heat Transfer and Fluid
/// Flow" (1980), for the finite volumes. Accuracy is measured by tests/reference and bench_cook.

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

/// `cells` over the whole thickness, no step longer than `longestStep`. With `fineStart` the first
/// step after the sides change is split 1/8, 1/8, 1/4, 1/2, which follows the jump of the face.
struct Resolution {
    int cells = 60;
    Duration longestStep = std::chrono::seconds(10);
    bool fineStart = false;

    /// For forecasts of many pieces: the pull time of a 60 mm roast is off by about 4 s.
    static Resolution quick() { return {30, std::chrono::seconds(30), false}; }
    /// For checks: 0.05 °C everywhere from the first minute on.
    static Resolution fine() { return {120, std::chrono::seconds(5), true}; }
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
    /// At `depth` above z = 0, linear between nodes; beyond the faces the face counts.
    [[nodiscard]] Temperature at(Length depth) const;
    [[nodiscard]] Temperature middle() const;
    /// Weighted by heat capacity: where the slab would level out if it lost nothing.
    [[nodiscard]] Temperature mean() const;
    /// The lowest temperature inside, by a parabola through the lowest node.
    [[nodiscard]] Temperature coldest() const;

    /// Degrees Celsius, unrounded, for the numerics of this folder.
    [[nodiscard]] std::span<const double> nodesCelsius() const { return now_; }
    [[nodiscard]] std::span<const double> nodesMetres() const { return z_; }
    [[nodiscard]] double celsiusAt(double metres) const;
    [[nodiscard]] double coldestCelsius() const;

  private:
    struct Factors {
        bool ready = false;
        std::vector<double> forward, inverse, backward;
    };
    /// A face in plain numbers: gain - loss · T.
    struct Face {
        double gain = 0, loss = 0, wetGain = 0, wetLoss = 0, boiling = 0;
        bool canBoil = false;
    };

    static Face plain(const Side& side);
    void setSides(const Side& down, const Side& up);
    void step(double seconds);
    void solveStage(double weight, std::vector<double>& into);
    void refreshProperties(std::span<const double> celsius);
    void factor(double weight, unsigned wet, Factors& into) const;
    [[nodiscard]] double faceFlux(const Face& face, double celsius) const;

    Resolution resolution_;
    std::vector<Material> materials_;
    std::vector<std::size_t> materialOf_;  // per interval
    std::vector<double> z_;                // per node, m
    std::vector<double> now_, before_, between_, rhs_, known_;
    std::vector<double> capacity_;     // per node, J/m²K
    std::vector<double> conductance_;  // per interval, W/m²K
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
    const double longest = std::chrono::duration<double>(resolution_.longestStep).count();
    const int steps = static_cast<int>(std::ceil(total / longest - 1e-9));
    const double size = total / steps;
    double passed = 0;
    for (int i = 0; i < steps; ++i) {
        const bool split = i == 0 && resolution_.fineStart;
        for (const double share : {0.125, 0.125, 0.25, 0.5}) {
            step(split ? share * size : size);
            passed += stepSeconds_;
            if (!watch(passed)) return passed;
            if (!split) break;
        }
    }
    return passed;
}

}  // namespace cinder::cook
