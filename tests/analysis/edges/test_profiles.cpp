// Figures read off maps whose answer is plain arithmetic.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "edges/profiles.h"

namespace {

using namespace kempt::edges;

BandMaps maps_of(double cell_mm, int rows, int columns, float value) {
    BandMaps maps;
    maps.cell_mm = cell_mm;
    maps.from_mm = -2;
    maps.cover = cv::Mat(rows, columns, CV_32F, cv::Scalar(value));
    maps.valid = cv::Mat(rows, columns, CV_8UC1, cv::Scalar(255));
    maps.cross_edge = maps.cover.clone();
    maps.cross_mean = maps.cover.clone();
    return maps;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(profiles)

BOOST_AUTO_TEST_CASE(mean_takes_part_rows_by_their_share) {
    BandMaps maps = maps_of(0.1, 240, 100, 0);
    maps.cover.rowRange(20, 25).setTo(1);  // 0 to 0.5 mm
    BOOST_CHECK_CLOSE(mean_of(maps.cover, maps, 0, 10), 0.05, 1e-4);
    BOOST_CHECK_CLOSE(mean_of(maps.cover, maps, 0.45, 0.55), 0.5, 1e-3);
}

BOOST_AUTO_TEST_CASE(hidden_cells_do_not_count) {
    BandMaps maps = maps_of(0.1, 240, 100, 0.25f);
    maps.cover.colRange(0, 50).setTo(0.75);
    maps.valid.colRange(0, 50).setTo(0);
    BOOST_CHECK_CLOSE(mean_of(maps.cover, maps, 0, 10), 0.25, 1e-4);
    BOOST_CHECK_CLOSE(valid_share(maps, 0, 10), 0.5, 1e-4);
}

BOOST_AUTO_TEST_CASE(fill_depth_of_a_straight_ramp_is_where_the_ramp_says) {
    std::vector<double> ramp;
    for (int i = 0; i < 80; ++i) ramp.push_back(std::min(1.0, (i + 0.5) * 0.25 / 8));  // full at 8 mm
    BOOST_REQUIRE(fill_depth(ramp, 0.25, 0.5));
    BOOST_CHECK_SMALL(*fill_depth(ramp, 0.25, 0.5) - 4.0, 0.02);
    BOOST_CHECK(!fill_depth(std::vector<double>(80, 0.1), 0.25, 0.5));
    BOOST_CHECK_EQUAL(*fill_depth(std::vector<double>(80, 0.9), 0.25, 0.45), 0.0);
}

BOOST_AUTO_TEST_CASE(bare_length_counts_columns_under_a_fifth) {
    BandMaps maps = maps_of(0.1, 240, 600, 0.5f);  // 60 mm of line
    maps.cover.colRange(100, 250).setTo(0.1);      // 15 mm bare, less the 1 mm window's reach at both ends
    maps.cover.colRange(400, 500).setTo(0.25);     // thin, not bare
    const EdgeOptions options;
    BOOST_CHECK_SMALL(bare_length(maps, options, options.bare_share).mm - 15.0, 1.05);
    BOOST_CHECK_SMALL(bare_length(maps, options, 0.3).mm - 25.0, 1.2);
}

BOOST_AUTO_TEST_CASE(hidden_columns_are_neither_bare_nor_covered) {
    BandMaps maps = maps_of(0.1, 240, 600, 0.5f);
    maps.valid.colRange(500, 600).setTo(0);  // 10 mm of line out of sight
    const EdgeOptions options;
    const BareLength bare = bare_length(maps, options, options.bare_share);
    BOOST_CHECK_EQUAL(bare.mm, 0);
    BOOST_CHECK_SMALL(bare.unseen_mm - 10, 0.6);
    BOOST_CHECK(std::isnan(cover_along(maps, 10, 0.5).back()));
}

BOOST_AUTO_TEST_CASE(along_and_depth_profiles_have_their_steps) {
    BandMaps maps = maps_of(0.1, 240, 600, 0.5f);
    BOOST_CHECK_EQUAL(cover_by_depth(maps, 20, 0.25).size(), 80u);
    BOOST_CHECK_EQUAL(cover_along(maps, 10, 0.5).size(), 120u);
}

BOOST_AUTO_TEST_SUITE_END()
