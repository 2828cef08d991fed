/// The measure that the pictures of the face are compared with. Reference values: the primaries of
/// sRGB in L*a*b* by the formulas of CIE 15:2004 and IEC 61966-2-1, white D65: red 53.24, 80.09,
/// 67.20; green 87.73, -86.18, 83.18; blue 32.30, 79.19, -107.86 (from memory; published widely).

#include <catch2/catch.hpp>

#include <QColor>
#include <QPainter>

#include "likeness.h"

using namespace cinder::face;

namespace {

QImage board(int shiftPixels, const QColor& mark) {
    QImage picture(400, 240, QImage::Format_RGB32);
    picture.fill(QColor(243, 235, 220));
    QPainter painter(&picture);
    painter.fillRect(40 + shiftPixels, 60, 120, 48, mark);
    return picture;
}

double between(const QImage& one, const QImage& other) {
    return unlikeness(reduced(one), reduced(other));
}

}  // namespace

TEST_CASE("the primaries stand where the published formulas put them") {
    const Lab red = labOf(qRgb(255, 0, 0)), green = labOf(qRgb(0, 255, 0)),
              blue = labOf(qRgb(0, 0, 255)), white = labOf(qRgb(255, 255, 255));
    CHECK(red.l == Approx(53.24).margin(0.05));
    CHECK(red.a == Approx(80.09).margin(0.1));
    CHECK(red.b == Approx(67.20).margin(0.1));
    CHECK(green.l == Approx(87.73).margin(0.05));
    CHECK(green.a == Approx(-86.18).margin(0.1));
    CHECK(green.b == Approx(83.18).margin(0.1));
    CHECK(blue.l == Approx(32.30).margin(0.05));
    CHECK(blue.a == Approx(79.19).margin(0.1));
    CHECK(blue.b == Approx(-107.86).margin(0.1));
    CHECK(white.l == Approx(100).margin(0.01));
    CHECK(difference(white, labOf(qRgb(0, 0, 0))) == Approx(100).margin(0.05));
}

TEST_CASE("a picture is like itself, and unlike one of another size") {
    const QImage one = board(0, Qt::black);
    CHECK(between(one, one) == 0);
    CHECK(between(one, one.copy(0, 0, 200, 240)) == 1);
}

TEST_CASE("a plate that moved or changed colour is told from one that did not") {
    const QImage one = board(0, QColor(132, 39, 7));
    CHECK(between(one, board(12, QColor(132, 39, 7))) > 0.01);
    CHECK(between(one, board(0, QColor(14, 74, 90))) > 0.05);
    CHECK(between(one, board(0, QColor(133, 40, 8))) == 0);
}
