#include "eyes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <unordered_map>

namespace cinder::face {

namespace {

using Matrix = std::array<std::array<double, 3>, 3>;

constexpr Matrix kUsual{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
constexpr Matrix kProtan{{{0.152286, 1.052583, -0.204868},
                          {0.114503, 0.786281, 0.099216},
                          {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix kDeutan{{{0.367322, 0.860646, -0.227968},
                          {0.280085, 0.672501, 0.047413},
                          {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix kTritan{{{1.255528, -0.076749, -0.178779},
                          {-0.078411, 0.930809, 0.147602},
                          {0.004733, 0.691367, 0.303900}}};

const Matrix& matrixOf(Eyes eyes) {
    switch (eyes) {
        case Eyes::Protan:
            return kProtan;
        case Eyes::Deutan:
            return kDeutan;
        case Eyes::Tritan:
            return kTritan;
        case Eyes::Usual:
            break;
    }
    return kUsual;
}

double linear(int channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

int encoded(double light) {
    const double c = std::clamp(light, 0.0, 1.0);
    const double shown = c <= 0.0031308 ? 12.92 * c : 1.055 * std::pow(c, 1 / 2.4) - 0.055;
    return static_cast<int>(std::lround(255 * shown));
}

}  // namespace

QRgb seenBy(Eyes eyes, QRgb colour) {
    const Matrix& matrix = matrixOf(eyes);
    const std::array<double, 3> light{linear(qRed(colour)), linear(qGreen(colour)),
                                      linear(qBlue(colour))};
    std::array<int, 3> shown{};
    for (std::size_t row = 0; row < 3; ++row)
        shown[row] = encoded(matrix[row][0] * light[0] + matrix[row][1] * light[1] +
                             matrix[row][2] * light[2]);
    return qRgb(shown[0], shown[1], shown[2]);
}

QImage seenBy(Eyes eyes, const QImage& picture) {
    QImage seen = picture.convertToFormat(QImage::Format_RGB32);
    // A screen has few colours; the powers are taken once for each.
    std::unordered_map<QRgb, QRgb> known;
    for (int y = 0; y < seen.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(seen.scanLine(y));
        for (int x = 0; x < seen.width(); ++x) {
            const auto [found, isNew] = known.try_emplace(line[x], 0);
            if (isNew) found->second = seenBy(eyes, line[x]);
            line[x] = found->second;
        }
    }
    return seen;
}

}  // namespace cinder::face
