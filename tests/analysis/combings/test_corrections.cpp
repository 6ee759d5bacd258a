// What a person corrects among traced strands, and the readings that follow. The figures are worked by hand.
#include "combings/corrections.h"

#include <boost/test/unit_test.hpp>

#include "combings/summary.h"

using namespace kempt;
using namespace kempt::combings;

namespace {

// Ten pixels a millimetre, no tilt.
card::Calibration ten_px_per_mm() {
    card::Calibration calibration;
    calibration.sheet_found = true;
    calibration.px_per_mm = 10;
    calibration.mm_from_px = cv::Matx33d(0.1, 0, 0, 0, 0.1, 0, 0, 0, 1);
    calibration.sheet.emplace();
    calibration.sheet->mm_from_px = calibration.mm_from_px;
    calibration.sheet->px_per_mm = 10;
    return calibration;
}

// A straight one along a row, with a point each millimetre.
Strand along(double y, double from, double to) {
    Strand strand;
    const double step = from < to ? 10 : -10;
    for (double x = from; (to - x) * step >= 0; x += step) strand.path_px.emplace_back(x, y);
    strand.length_mm = std::abs(to - from) / 10;
    strand.length_low = strand.length_mm - 1;
    strand.length_high = strand.length_mm + 1;
    return strand;
}

const Quantity& reading(const CombingsReadings& found, const std::string& name) {
    for (const Quantity& q : found.readings)
        if (q.name == name) return q;
    BOOST_REQUIRE_MESSAGE(false, name + " is missing");
    return found.readings.front();
}

// 100 mm, 60 mm, 40 mm, 30 mm.
CombingsReadings four() {
    CombingsReadings found;
    found.strands = {along(100, 0, 1000), along(200, 0, 600), along(300, 0, 400), along(300, 450, 750)};
    found.unresolved_px = {{{5, 5}, {9, 9}}};
    summarise(found);
    return found;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(corrections)

BOOST_AUTO_TEST_CASE(a_strand_that_is_no_hair_leaves_the_readings) {
    const CombingsReadings traced = four();
    BOOST_TEST(reading(traced, "strands").value == 4);
    BOOST_TEST(reading(traced, "short_share").value == 50);
    Corrections by_hand;
    by_hand.not_hair_px = {{205, 308}};  // 0.8 mm beside the third
    const CombingsReadings now = corrected(traced, by_hand, ten_px_per_mm());
    BOOST_TEST(reading(now, "strands").value == 3);
    BOOST_TEST(reading(now, "strand_median").value == 60);
    BOOST_TEST(reading(now, "short_share").value == 100.0 / 3, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(now.unresolved_px.size() == 1);  // what could not be made out stays marked
}

BOOST_AUTO_TEST_CASE(two_parts_of_one_hair_are_one_with_the_gap_between_them) {
    const CombingsReadings traced = four();
    Corrections by_hand;
    by_hand.joined_px = {{{{100, 300}, {700, 300}}}};
    const CombingsReadings now = corrected(traced, by_hand, ten_px_per_mm());
    BOOST_TEST(reading(now, "strands").value == 3);
    BOOST_TEST(reading(now, "short_share").value == 0);  // 40 and 30 mm were one of 75 mm
    BOOST_REQUIRE(now.strands.size() == 3);
    const Strand& joined = now.strands[1];
    BOOST_TEST(joined.length_mm == 75, boost::test_tools::tolerance(1e-9));  // with the gap of 5 mm
    BOOST_TEST(joined.length_low == 73, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(joined.length_high == 77, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(joined.path_px.front().x == 0);
    BOOST_TEST(joined.path_px.back().x == 750);
}

BOOST_AUTO_TEST_CASE(parts_are_turned_so_that_the_nearest_ends_meet_whichever_way_they_were_traced) {
    for (const bool turn_one : {false, true})
        for (const bool turn_other : {false, true}) {
            std::vector<Strand> strands = {along(300, 0, 400), along(300, 450, 750)};
            if (turn_one) std::reverse(strands[0].path_px.begin(), strands[0].path_px.end());
            if (turn_other) std::reverse(strands[1].path_px.begin(), strands[1].path_px.end());
            Corrections by_hand;
            by_hand.joined_px = {{{{100, 300}, {700, 300}}}};
            const auto now = corrected(strands, by_hand, ten_px_per_mm());
            BOOST_REQUIRE(now.size() == 1);
            BOOST_TEST(now[0].length_mm == 75, boost::test_tools::tolerance(1e-9));
            const double ends[] = {now[0].path_px.front().x, now[0].path_px.back().x};
            BOOST_TEST(std::min(ends[0], ends[1]) == 0);
            BOOST_TEST(std::max(ends[0], ends[1]) == 750);
        }
}

BOOST_AUTO_TEST_CASE(three_parts_are_joined_by_two_joins_in_any_order) {
    const std::vector<Strand> strands = {along(300, 0, 200), along(300, 210, 400), along(300, 410, 600)};
    for (const auto& joins :
         {std::vector<std::array<cv::Point2d, 2>>{{{{100, 300}, {300, 300}}}, {{{300, 300}, {500, 300}}}},
          std::vector<std::array<cv::Point2d, 2>>{{{{500, 300}, {300, 300}}}, {{{100, 300}, {300, 300}}}}}) {
        Corrections by_hand;
        by_hand.joined_px = joins;
        by_hand.joined_px.push_back({{{100, 300}, {500, 300}}});  // once more: they are one already
        const auto now = corrected(strands, by_hand, ten_px_per_mm());
        BOOST_REQUIRE(now.size() == 1);
        BOOST_TEST(now[0].length_mm == 60, boost::test_tools::tolerance(1e-9));
    }
}

BOOST_AUTO_TEST_CASE(what_is_joined_to_something_that_is_no_hair_is_none) {
    Corrections by_hand;
    by_hand.joined_px = {{{{100, 300}, {700, 300}}}};
    by_hand.not_hair_px = {{700, 300}};
    BOOST_TEST(corrected(four().strands, by_hand, ten_px_per_mm()).size() == 2);
}

BOOST_AUTO_TEST_CASE(a_strand_that_she_says_is_whole_is_counted_for_itself_and_is_as_long_as_it_looks) {
    CombingsReadings traced = four();
    for (const size_t s : {2, 3}) {
        traced.strands[s].torn_ends = 1;
        traced.strands[s].torn[1] = 0.95;
    }
    summarise(traced);
    BOOST_TEST(traced.parts == 1);
    BOOST_TEST(reading(traced, "strands").value == 3);
    Corrections by_hand;
    by_hand.whole_px = {{100, 300}, {700, 300}};
    const CombingsReadings now = corrected(traced, by_hand, ten_px_per_mm());
    BOOST_TEST(now.parts == 0);
    BOOST_TEST(reading(now, "strands").value == 4);
    BOOST_TEST(reading(now, "short_share").value == 50);
    for (const Strand& strand : now.strands) BOOST_TEST(!(perhaps_longer(strand) || looks_torn(strand)));
    // A point beside every strand says nothing; of two that are joined it speaks for both.
    by_hand.whole_px = {{500, 120}};
    BOOST_TEST(corrected(traced, by_hand, ten_px_per_mm()).parts == 1);
    by_hand.whole_px = {{700, 300}};
    by_hand.joined_px = {{{{100, 300}, {700, 300}}}};
    const CombingsReadings one = corrected(traced, by_hand, ten_px_per_mm());
    BOOST_TEST(reading(one, "strands").value == 3);
    BOOST_TEST(!perhaps_longer(one.strands[1]));
    // The point may lie on the way between the parts: 2.5 mm from either.
    by_hand.whole_px = {{425, 300}};
    BOOST_TEST(!perhaps_longer(corrected(traced, by_hand, ten_px_per_mm()).strands[1]));
    by_hand.whole_px = {{700, 300}};
    // What runs out of the sheet goes on there, whatever its other end is.
    traced.strands[3].cut_off = true;
    by_hand.joined_px.clear();
    const CombingsReadings cut = corrected(traced, by_hand, ten_px_per_mm());
    BOOST_TEST(cut.strands[3].cut_off);
    BOOST_TEST(perhaps_longer(cut.strands[3]));
}

// Of 80 strands ten ends look torn, by a chance of 0.8 each: of the eight to be expected four are so by nature, as of
// any 80 strands, and the other four make two.
BOOST_AUTO_TEST_CASE(saying_which_ends_are_so_by_nature_leaves_those_that_are_torn_in_the_count) {
    CombingsReadings traced;
    for (int i = 0; i < 80; ++i) {
        traced.strands.push_back(along(30.0 + 20 * i, 0, 1000));
        if (i < 10) traced.strands.back().torn[0] = 0.8;
    }
    summarise(traced);
    BOOST_TEST(reading(traced, "strands").value == 78);
    Corrections by_hand;
    for (int i = 0; i < 4; ++i) by_hand.whole_px.emplace_back(500, 30 + 20 * i);
    BOOST_TEST(reading(corrected(traced, by_hand, ten_px_per_mm()), "strands").value == 78);
    for (int i = 4; i < 10; ++i) by_hand.whole_px.emplace_back(500, 30 + 20 * i);
    BOOST_TEST(reading(corrected(traced, by_hand, ten_px_per_mm()), "strands").value == 80);
}

BOOST_AUTO_TEST_CASE(a_point_beside_every_strand_changes_nothing_and_a_doubt_stays_a_doubt) {
    CombingsReadings traced = four();
    traced.strands[2].doubtful = true;
    traced.strands[0].torn_ends = 2;
    traced.strands[3].cut_off = true;
    summarise(traced);
    Corrections by_hand;
    by_hand.not_hair_px = {{500, 120}};  // 2 mm off
    by_hand.joined_px = {{{{100, 300}, {500, 150}}}};
    BOOST_TEST(corrected(traced.strands, by_hand, ten_px_per_mm()).size() == 4);
    by_hand.joined_px = {{{{100, 300}, {700, 300}}}};
    const auto now = corrected(traced, by_hand, ten_px_per_mm());
    BOOST_TEST(now.strands[1].doubtful);
    BOOST_TEST(now.strands[1].cut_off);
    BOOST_TEST(reading(now, "strands").high > 3);
}

BOOST_AUTO_TEST_CASE(a_strand_that_may_go_on_counts_as_a_least_length_until_its_parts_are_joined) {
    CombingsReadings traced = four();
    BOOST_TEST(reading(traced, "strand_median").value == 50);   // of 30, 40, 60 and 100 mm
    traced.strands[2].torn[1] = traced.strands[3].torn[0] = 1;  // where the two of 40 and 30 mm face each other
    summarise(traced);
    BOOST_TEST(reading(traced, "strand_median").value > 70);  // half of what ended is 60, half 100
    Corrections by_hand;
    by_hand.joined_px = {{{{100, 300}, {700, 300}}}};
    const auto now = corrected(traced, by_hand, ten_px_per_mm());
    BOOST_TEST(reading(now, "strand_median").value == 75, boost::test_tools::tolerance(1e-9));  // 60, 75 and 100 mm
    for (const Strand& s : now.strands) BOOST_TEST(s.torn[0] + s.torn[1] == 0);
}

BOOST_AUTO_TEST_CASE(two_parts_of_a_strand_count_as_one_before_they_are_joined_and_after) {
    CombingsReadings traced = four();
    BOOST_TEST(traced.parts == 0);
    BOOST_TEST(reading(traced, "strands").value == 4);
    BOOST_TEST(reading(traced, "short_share").value == 50);  // 30 and 40 mm
    traced.strands[2].torn[1] = traced.strands[3].torn[0] = 1;
    summarise(traced);
    BOOST_TEST(traced.parts == 1);
    BOOST_TEST(reading(traced, "strands").value == 3);
    BOOST_TEST(reading(traced, "short_share").value < 10);
    Corrections by_hand;
    by_hand.joined_px = {{{{100, 300}, {700, 300}}}};
    const auto now = corrected(traced, by_hand, ten_px_per_mm());
    BOOST_TEST(now.parts == 0);
    BOOST_TEST(reading(now, "strands").value == 3);
    BOOST_TEST(reading(now, "short_share").value == 0);
    // Where all are short no more than all of them are, those cut off by the sheet's rim among them.
    for (Strand& s : traced.strands) s.length_mm = 20, s.cut_off = true;
    summarise(traced);
    BOOST_TEST(traced.parts == 1);
    BOOST_TEST(reading(traced, "short_share").value == 100);
    for (Strand& s : traced.strands) s.cut_off = false;
    // One end alone may lie on another's way by nature; and where every end looks torn a strand is still left.
    traced.strands[3].torn[0] = 0;
    summarise(traced);
    BOOST_TEST(traced.parts == 0);
    for (Strand& s : traced.strands) s.torn[0] = s.torn[1] = 1;
    traced.strands.resize(1);
    summarise(traced);
    BOOST_TEST(reading(traced, "strands").value == 1);
}

BOOST_AUTO_TEST_CASE(of_strands_that_all_run_off_the_sheet_there_is_no_median) {
    CombingsReadings traced = four();
    for (Strand& s : traced.strands) s.cut_off = true;
    summarise(traced);
    BOOST_TEST(reading(traced, "strands").value == 4);
    BOOST_REQUIRE(traced.refused.size() == 1);
    BOOST_TEST(traced.refused[0].name == "strand_median");
}

BOOST_AUTO_TEST_CASE(where_most_strands_look_torn_nothing_is_told_until_their_parts_are_joined) {
    CombingsReadings traced;
    for (int k = 0; k < 7; ++k) {  // halves of one strand, torn where they face each other
        traced.strands.push_back(along(100 + 30 * k, 0, 400));
        traced.strands.push_back(along(100 + 30 * k, 420, 900));
        traced.strands.back().torn_ends = traced.strands[traced.strands.size() - 2].torn_ends = 1;
    }
    summarise(traced);
    BOOST_TEST(traced.readings.empty());
    BOOST_REQUIRE(traced.refused.size() == 3);
    BOOST_TEST(traced.refused[0].code == "strands-torn");
    Corrections by_hand;
    for (int k = 0; k < 7; ++k) {
        by_hand.joined_px.push_back({{{200, 100.0 + 30 * k}, {600, 100.0 + 30 * k}}});
        const auto now = corrected(traced, by_hand, ten_px_per_mm());
        const int left = 14 - 2 * (k + 1), counted = 14 - (k + 1);  // torn ends, strands
        const bool told = left < 12 || left <= 0.6 * counted;
        BOOST_TEST(now.readings.empty() != told);
        if (told) BOOST_TEST(reading(now, "strands").value == counted);
    }
}

BOOST_AUTO_TEST_CASE(with_every_strand_taken_out_the_readings_are_refused) {
    Corrections by_hand;
    by_hand.not_hair_px = {{500, 100}, {300, 200}, {200, 300}, {600, 300}};
    const auto now = corrected(four(), by_hand, ten_px_per_mm());
    BOOST_TEST(now.readings.empty());
    BOOST_TEST(now.refused.size() == 3);
}

BOOST_AUTO_TEST_SUITE_END()
