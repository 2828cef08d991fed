#include "likeness.h"

#include <cmath>

#include <QColor>

namespace cinder::face {

namespace {

constexpr int kBlock = 6;
// Twice what is just seen, and a little for eight bits to the channel.
constexpr double kClear = 5;

double linear(int channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double cubeRoot(double t) {
    constexpr double kEdge = 216.0 / 24389.0;
    return t > kEdge ? std::cbrt(t) : (24389.0 / 27.0 * t + 16) / 116;
}

}  // namespace

Lab labOf(QRgb colour) {
    const double r = linear(qRed(colour)), g = linear(qGreen(colour)), b = linear(qBlue(colour));
    const double x = (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505;
    const double y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
    const double z = (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.0890;
    const double fx = cubeRoot(x), fy = cubeRoot(y), fz = cubeRoot(z);
    return {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
}

double difference(const Lab& one, const Lab& other) {
    return std::hypot(one.l - other.l, one.a - other.a, one.b - other.b);
}

QImage reduced(const QImage& picture) {
    return picture
        .scaled(picture.width() / kBlock, picture.height() / kBlock, Qt::IgnoreAspectRatio,
                Qt::SmoothTransformation)
        .convertToFormat(QImage::Format_RGB888);
}

double unlikeness(const QImage& reducedOne, const QImage& reducedOther) {
    if (reducedOne.size() != reducedOther.size() || reducedOne.isNull()) return 1;
    int clear = 0;
    for (int y = 0; y < reducedOne.height(); ++y)
        for (int x = 0; x < reducedOne.width(); ++x) {
            const QRgb one = reducedOne.pixel(x, y), other = reducedOther.pixel(x, y);
            if (one != other && difference(labOf(one), labOf(other)) > kClear) ++clear;
        }
    return double(clear) / (double(reducedOne.width()) * reducedOne.height());
}

}  // namespace cinder::face
