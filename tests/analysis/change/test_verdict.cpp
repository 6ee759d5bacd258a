// Verdicts and the sentences that explain them.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "change/change.h"

using namespace kempt::change;

namespace {

VisitValue visit(std::vector<double> shots, std::string unit = "%") {
    return {std::move(shots), {}, std::move(unit)};
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_rise_beyond_the_smallest_change_is_an_improvement_and_says_so) {
    const auto judgement = judge("edge_coverage", visit({40.6, 41.4}), visit({49.7, 50.3}), {1.7, 8});
    BOOST_TEST((judgement.verdict == Verdict::improved));
    BOOST_TEST(std::abs(judgement.difference - 9) < 1e-9);
    BOOST_TEST(std::abs(judgement.smallest_detectable - 3.92) < 0.01);
    BOOST_TEST(
        judgement.reason ==
        "Edge coverage rose by 9 points, from 41 to 50 %; the smallest change these shots can show is 4 points.");
}

BOOST_AUTO_TEST_CASE(direction_follows_the_reading) {
    BOOST_TEST((judge("edge_coverage", visit({50}), visit({40}), {1.2, 8}).verdict == Verdict::worse));
    const auto filled = judge("fill_depth", visit({6.3, 6.3}, "mm"), visit({4.2, 4.2}, "mm"), {0.5, 8});
    BOOST_TEST((filled.verdict == Verdict::improved));
    BOOST_TEST(filled.reason ==
               "Fill depth fell by 2.1 mm, from 6.3 to 4.2 mm; the smallest change these shots can show is 1.2 mm.");
    BOOST_TEST((judge("bare_length", visit({10}, "mm"), visit({20}, "mm"), {1.5, 8}).verdict == Verdict::worse));
}

BOOST_AUTO_TEST_CASE(a_change_within_chance_is_no_detectable_change_with_its_figures) {
    const auto judgement = judge("edge_coverage", visit({41, 41}), visit({43, 43}), {1.7, 8});
    BOOST_TEST((judgement.verdict == Verdict::no_detectable_change));
    BOOST_TEST(
        judgement.reason ==
        "Edge coverage went from 41 to 43 %, up 2 points; that is within the 4 points that these shots cannot tell "
        "from chance.");
    const auto still = judge("edge_strands", visit({12.1}, "1/cm"), visit({12.1}, "1/cm"), {0.9, 8});
    BOOST_TEST(still.reason ==
               "Strands at the edge stayed at 12 per cm; the smallest change these shots can show is 3 per cm.");
}

BOOST_AUTO_TEST_CASE(printed_figures_agree_with_each_other_and_with_the_verdict) {
    const auto number_after = [](const std::string& text, const std::string& words) {
        const size_t at = text.find(words);
        BOOST_REQUIRE_MESSAGE(at != std::string::npos, text);
        return std::stod(text.substr(at + words.size()));
    };
    for (int i = 0; i < 4000; ++i) {
        const double to = 41.234 + i * 0.0037;
        const auto judgement = judge("edge_coverage", visit({41.234, 41.234}), visit({to, to}), {1.7, 8});
        const std::string& text = judgement.reason;
        if (judgement.verdict == Verdict::improved) {
            const double by = number_after(text, "rose by "), from = number_after(text, "from "),
                         until = number_after(text, " to "), smallest = number_after(text, "can show is ");
            BOOST_TEST(std::abs(until - from - by) < 1e-9, text);
            BOOST_TEST(by > smallest, text);
        } else if (text.find("went from") != std::string::npos) {
            const double by = number_after(text, ", up "), smallest = number_after(text, "within the ");
            BOOST_TEST(by <= smallest, text);
        }
    }
}

BOOST_AUTO_TEST_CASE(visits_that_differ_in_state_are_not_comparable_and_the_reason_says_which) {
    VisitValue wet = visit({45});
    wet.not_comparable = {"hair was wet", "the light differed"};
    const auto judgement = judge("edge_coverage", visit({41}), wet, {1.2, 8});
    BOOST_TEST((judgement.verdict == Verdict::not_comparable));
    BOOST_TEST(judgement.reason ==
               "These visits cannot be compared. Later visit: hair was wet and the light differed.");
}

BOOST_AUTO_TEST_CASE(missing_values_units_and_spread_give_a_reason_instead_of_a_verdict) {
    const auto missing = judge("edge_coverage", visit({}), visit({45}), {1.2, 8});
    BOOST_TEST((missing.verdict == Verdict::not_comparable));
    BOOST_TEST(missing.reason == "Edge coverage was not measured at the earlier visit.");
    const auto units = judge("edge_coverage", visit({41}), visit({45}, "mm"), {1.2, 8});
    BOOST_TEST((units.verdict == Verdict::not_comparable));
    const auto unknown = judge("edge_coverage", visit({41}), visit({45}), {});
    BOOST_TEST((unknown.verdict == Verdict::not_comparable));
    BOOST_TEST(unknown.reason.find("two or three shots") != std::string::npos);
    const auto all_alike = judge("edge_coverage", visit({41, 41}), visit({45, 45}), {0, 2});
    BOOST_TEST((all_alike.verdict == Verdict::not_comparable));
    const auto not_finite = judge("edge_coverage", visit({std::nan("")}), visit({45}), {1.2, 8});
    BOOST_TEST((not_finite.verdict == Verdict::not_comparable));
}

BOOST_AUTO_TEST_CASE(sentences_take_another_unit_and_name_while_the_figures_stay_in_the_readings_own) {
    const auto inches = judge("fill_depth", visit({6.3, 6.3}, "mm"), visit({4.2, 4.2}, "mm"), {0.5, 8},
                              {"Depth of the thin zone", "in", 1 / 25.4, {}});
    BOOST_TEST(std::abs(inches.difference + 2.1) < 1e-9);
    BOOST_TEST(std::abs(inches.said + 0.08 * 25.4) < 1e-9);
    BOOST_TEST(std::abs(inches.said_smallest - 0.05 * 25.4) < 1e-9);  // both as the sentence prints them
    BOOST_TEST(std::abs(inches.said_step - 0.01 * 25.4) < 1e-9);
    BOOST_TEST(inches.reason ==
               "Depth of the thin zone fell by 0.08 in, from 0.25 to 0.17 in; the smallest change these shots can "
               "show is 0.05 in.");
    const auto counts =
        judge("edge_strands", visit({12.1}, "1/cm"), visit({12.1}, "1/cm"), {0.9, 8}, {"", "1/in", 2.54, {}});
    BOOST_TEST(counts.reason.find("at 31 per in") != std::string::npos, counts.reason);
}

BOOST_AUTO_TEST_CASE(reasons_between_two_visits_and_shared_reasons_are_said_once) {
    const auto differ =
        judge("edge_coverage", visit({41}), visit({45}), {1.2, 8}, {"", "", 1, {"The hair was wet once."}});
    BOOST_TEST((differ.verdict == Verdict::not_comparable));
    BOOST_TEST(differ.reason == "These visits cannot be compared. The hair was wet once.");
    VisitValue none = visit({});
    none.not_comparable = {"No shot gives this reading.", "Shot 1: too coarse."};
    BOOST_TEST(judge("edge_coverage", none, none, {1.2, 8}).reason ==
               "These visits cannot be compared. Both visits: No shot gives this reading. Shot 1: too coarse.");
}

BOOST_AUTO_TEST_CASE(share_of_the_way_runs_from_baseline_to_target_in_either_direction) {
    BOOST_TEST(share_of_way(40, 50, 60).value() == 0.5);
    BOOST_TEST(share_of_way(20, 5, 10).value() == 1.5);
    BOOST_TEST(share_of_way(40, 30, 60).value() == -0.5);
    BOOST_TEST(!share_of_way(40, 50, 40).has_value());
    BOOST_TEST(!share_of_way(40, std::nan(""), 60).has_value());
}

BOOST_AUTO_TEST_CASE(a_reading_without_a_better_side_changes_and_is_not_called_better_or_worse) {
    for (const char* reading : {"curve_diameter", "wave_ratio", "strand_length", "tone_level"}) {
        const auto up = judge(reading, visit({10, 10}, "mm"), visit({20, 20}, "mm"), {1, 8});
        const auto down = judge(reading, visit({20, 20}, "mm"), visit({10, 10}, "mm"), {1, 8});
        const auto same = judge(reading, visit({10, 10}, "mm"), visit({11, 11}, "mm"), {1, 8});
        BOOST_TEST((up.verdict == Verdict::changed));
        BOOST_TEST((down.verdict == Verdict::changed));
        BOOST_TEST((same.verdict == Verdict::no_detectable_change));
        BOOST_TEST(up.reason.find(" rose by 10 mm") != std::string::npos, up.reason);
    }
}
