// The band follows the marked line in millimetres, whatever the camera's place.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "colour/colour.h"
#include "edges/band.h"

namespace {

using namespace kempt;

Photo grey(int width, int height) {
    Photo photo;
    photo.pixels = cv::Mat(height, width, CV_8UC3, cv::Scalar(128, 128, 128));
    photo.colour = colour::srgb_encoding();
    return photo;
}

card::Calibration plane(double px_per_mm) {
    auto result = card::calibrate_two_points({0, 0}, {100 * px_per_mm, 0}, 100);
    BOOST_REQUIRE(result);
    return *result;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(band)

BOOST_AUTO_TEST_CASE(places_in_the_band_are_millimetres_from_the_line) {
    const Photo photo = grey(1200, 900);
    const auto calibration = plane(16);
    const auto line = edges::straighten(photo, calibration, {{100, 200}, {1000, 200}}, {500, 600});
    BOOST_REQUIRE(line);
    BOOST_CHECK_CLOSE(line->length_mm, 900 / 16.0, 1e-6);
    const cv::Point2d p = edges::px_of(calibration, *line, 10, 5);
    BOOST_CHECK_SMALL(p.x - (100 + 160), 0.5);
    BOOST_CHECK_SMALL(p.y - (200 + 80), 1e-6);
}

BOOST_AUTO_TEST_CASE(hair_side_decides_which_way_is_inward) {
    const Photo photo = grey(1200, 900);
    const auto calibration = plane(16);
    const auto down = edges::straighten(photo, calibration, {{100, 450}, {1000, 450}}, {500, 800});
    const auto up = edges::straighten(photo, calibration, {{1000, 450}, {100, 450}}, {500, 100});
    BOOST_REQUIRE(down && up);
    BOOST_CHECK_GT(down->inward_mm[10].y, 0.99);
    BOOST_CHECK_LT(up->inward_mm[10].y, -0.99);
}

BOOST_AUTO_TEST_CASE(lines_that_cannot_be_measured_are_refused_by_name) {
    const Photo photo = grey(1200, 900);
    const auto calibration = plane(16);
    auto code = [&](std::vector<cv::Point2d> line, cv::Point2d hair) {
        const auto result = edges::straighten(photo, calibration, line, hair);
        return result ? std::string("fine") : result.error().code;
    };
    BOOST_CHECK_EQUAL(code({{100, 100}}, {500, 500}), "line-too-short");
    BOOST_CHECK_EQUAL(code({{100, 100}, {180, 100}}, {500, 500}), "line-too-short");  // 5 mm
    BOOST_CHECK_EQUAL(code({{100, 100}, {1500, 100}}, {500, 500}), "line-outside");
    BOOST_CHECK_EQUAL(code({{100, 100}, {std::nan(""), 100}}, {500, 500}), "line-outside");
    BOOST_CHECK_EQUAL(code({{100, 100}, {600, 400}, {600, 100}, {100, 400}}, {500, 800}), "line-crosses");
    BOOST_CHECK_EQUAL(code({{100, 100}, {900, 100}}, {500, 101}), "hair-side-unclear");
}

BOOST_AUTO_TEST_CASE(what_the_card_covers_is_not_scalp) {
    const Photo photo = grey(1200, 900);
    auto calibration = plane(16);
    calibration.card_found = true;
    calibration.card_corners_px = {{{300, 260}, {600, 260}, {600, 500}, {300, 500}}};
    const auto line = edges::straighten(photo, calibration, {{100, 200}, {1000, 200}}, {500, 600});
    BOOST_REQUIRE(line);
    const card::LightMap light(photo, calibration);
    const auto piece = edges::cut(photo, light, calibration, *line, 0, static_cast<int>(line->at_mm.size()), 0, 160);
    const double hidden = 1 - cv::countNonZero(piece.valid) / static_cast<double>(piece.valid.total());
    BOOST_CHECK_CLOSE(hidden, 300.0 / 900 * (160 - 60) / 160, 4.0);
}

BOOST_AUTO_TEST_SUITE_END()
