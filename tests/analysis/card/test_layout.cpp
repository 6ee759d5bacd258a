#include <boost/test/unit_test.hpp>

#include "card/card_layout.h"
#include "card/markers.h"
#include "colour/colour.h"

using namespace kempt;

BOOST_AUTO_TEST_SUITE(layout)

BOOST_AUTO_TEST_CASE(patches_lie_between_the_markers_with_paper_around_them) {
    const auto& patches = card::card_patches();
    BOOST_REQUIRE_EQUAL(patches.size(), 12u);
    for (const card::Patch& patch : patches) {
        BOOST_CHECK_GE(patch.area_mm.x, 15);
        BOOST_CHECK_LE(patch.area_mm.br().x, 69);
        BOOST_CHECK_GE(patch.area_mm.y, 4);
        BOOST_CHECK_LE(patch.area_mm.br().y, card::card_height_mm - 4);
        for (const card::Patch& other : patches)
            if (&other != &patch) BOOST_CHECK((patch.area_mm & other.area_mm).area() == 0);
    }
}

BOOST_AUTO_TEST_CASE(second_row_is_the_first_reversed) {
    const auto& patches = card::card_patches();
    for (size_t i = 0; i < 6; ++i) {
        BOOST_CHECK_EQUAL(patches[i].reflectance, patches[11 - i].reflectance);
        BOOST_CHECK_EQUAL(patches[i].area_mm.x, patches[6 + i].area_mm.x);
    }
}

// CIE 15: L* = 116 (Y / Yn)^(1/3) - 16.
BOOST_AUTO_TEST_CASE(reflectances_are_even_in_lightness_from_0_03_to_0_9) {
    const auto& patches = card::card_patches();
    std::vector<double> lightness;
    for (size_t i = 0; i < 6; ++i) lightness.push_back(116 * std::cbrt(patches[i].reflectance) - 16);
    BOOST_CHECK_CLOSE(patches[0].reflectance, 0.03, 1);
    BOOST_CHECK_CLOSE(patches[5].reflectance, 0.9, 1);
    for (size_t i = 1; i < 6; ++i) BOOST_CHECK_CLOSE(lightness[i] - lightness[i - 1], 15.2, 0.01);
}

// The published first code of DICT_4X4_50 (OpenCV, predefined_dictionaries.hpp): bytes 181, 50 = 10110101 00110010.
BOOST_AUTO_TEST_CASE(marker_0_has_the_dictionarys_bits_inside_a_black_border) {
    const auto cells = card::marker_cells(0);
    const std::array<const char*, 4> bits{"1011", "0101", "0011", "0010"};
    for (size_t y = 0; y < 6; ++y)
        for (size_t x = 0; x < 6; ++x) {
            const bool border = y == 0 || x == 0 || y == 5 || x == 5;
            BOOST_CHECK_EQUAL(cells[y][x], !border && bits[y - 1][x - 1] == '1');
        }
}

BOOST_AUTO_TEST_CASE(drawn_card_has_its_greys_where_the_layout_says) {
    for (const double scale : {7.3, 20.0}) {
        const cv::Mat picture = card::draw(card::Kind::card, card::Paper::a4, scale);
        BOOST_CHECK_EQUAL(picture.cols, cvRound(84 * scale));
        BOOST_CHECK_EQUAL(picture.rows, cvRound(30 * scale));
        for (const card::Patch& patch : card::card_patches()) {
            const cv::Point2d middle = (patch.area_mm.tl() + patch.area_mm.br()) / 2 * scale;
            const double light = colour::linear_from_srgb(picture.at<uchar>(cv::Point(middle)) / 255.0);
            BOOST_CHECK_SMALL(light - patch.reflectance, 0.004);  // half a code at the light end
        }
        BOOST_CHECK_EQUAL(picture.at<uchar>(2, 2), 255);
    }
}

BOOST_AUTO_TEST_CASE(pixels_on_an_edge_hold_the_covered_share_of_light) {
    // At 7 px/mm the left marker's edge (3 mm) falls on pixel 21 exactly; at 7.1 it covers 0.7 of pixel 21 from 21.3
    // on.
    const cv::Mat picture = card::draw(card::Kind::card, card::Paper::a4, 7.1);
    const double light = colour::linear_from_srgb(picture.at<uchar>(cvRound(8 * 7.1), 21) / 255.0);
    BOOST_CHECK_SMALL(light - 0.3, 0.005);
}

BOOST_AUTO_TEST_CASE(finder_reads_its_own_drawing_of_card_and_sheets) {
    for (const card::Paper paper : {card::Paper::letter, card::Paper::a4}) {
        BOOST_CHECK_EQUAL(card::detect(card::draw(card::Kind::card, paper, 8)).size(), 4u);
        BOOST_CHECK_EQUAL(card::detect(card::draw(card::Kind::sheet, paper, 4)).size(), 4u);
        // The blue keeps a cell of white (3.3 mm) around every marker and lies on the page.
        const cv::Rect2d blue = card::blue_area_mm(paper);
        const double reach = card::sheet_marker_mm / 2 + card::sheet_marker_mm / 6;
        for (const cv::Point2d& c : card::sheet_marker_centres_mm(paper))
            BOOST_CHECK((blue & cv::Rect2d(c.x - reach, c.y - reach, 2 * reach, 2 * reach)).empty());
        BOOST_CHECK((blue & cv::Rect2d({}, card::paper_size_mm(paper))) == blue);
        cv::Mat green;
        cv::extractChannel(card::draw(card::Kind::sheet, paper, 4, card::Ground::blue), green, 1);
        const auto found = card::detect(green);
        BOOST_CHECK_EQUAL(found.size(), 4u);
        for (const auto& marker : found) BOOST_CHECK(marker.id >= 8 && marker.id <= 11);
    }
    // Design: centres 15 mm from each edge of the page.
    const auto centres = card::sheet_marker_centres_mm(card::Paper::a4);
    BOOST_CHECK_EQUAL(centres[2].x, 195);
    BOOST_CHECK_EQUAL(centres[2].y, 282);
}

BOOST_AUTO_TEST_SUITE_END()
