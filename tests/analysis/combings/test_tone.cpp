// Which end suits which by the strength of its ridge, and the grid that everything near is found by.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <utility>
#include <vector>

#include "combings/cells.h"
#include "combings/ends.h"

namespace {

using kempt::combings::LineEnd;

LineEnd end_with(double strength, double sd, float sign = 1) {
    LineEnd end;
    end.tone = static_cast<float>(std::log(strength)), end.tone_sd = static_cast<float>(sd);
    end.peak = static_cast<float>(strength), end.sign = sign;
    return end;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(tone)

BOOST_AUTO_TEST_CASE(ends_of_one_strength_suit_each_other_and_the_cost_is_that_of_a_normal_value) {
    BOOST_TEST(tone_cost(end_with(0.05, 0), end_with(0.05, 0)) == 0);
    // Half the square of the distance in standard deviations: 0.24 is two of 0.12.
    const LineEnd one = end_with(0.05, 0), other = end_with(0.05 * std::exp(0.24), 0);
    BOOST_TEST(tone_cost(one, other) == 2, boost::test_tools::tolerance(1e-4));
    BOOST_TEST(tone_cost(other, one) == tone_cost(one, other));
    BOOST_TEST(tone_cost(one, end_with(0.5, 0)) == 8);  // never more: a strand may pass through glare
}

BOOST_AUTO_TEST_CASE(what_is_badly_known_tells_less) {
    const LineEnd one = end_with(0.05, 0), far = end_with(0.07, 0), unsure = end_with(0.07, 0.3);
    BOOST_TEST(tone_cost(one, unsure) < 0.3 * tone_cost(one, far));
    // Dark against mirrored light, and ways that were only followed: the darkness alone, which tells little.
    BOOST_TEST(tone_cost(one, end_with(0.07, 0, -1)) < 0.3 * tone_cost(one, far));
    BOOST_TEST(tone_cost(one, end_with(0.07, -1)) < 0.3 * tone_cost(one, far));
}

BOOST_AUTO_TEST_CASE(cells_give_back_what_was_put_in_order_also_empty_ones) {
    const std::vector<std::pair<size_t, int>> put{{2, 7}, {0, 1}, {2, 8}, {4, 3}, {0, 2}};
    const kempt::combings::Cells<int> cells(5, [&](const auto& take) {
        for (const auto& [cell, item] : put) take(cell, item);
    });
    const std::vector<std::vector<int>> wanted{{1, 2}, {}, {7, 8}, {}, {3}};
    for (size_t c = 0; c < wanted.size(); ++c) {
        const std::vector<int> found(cells.begin(c), cells.end(c));
        BOOST_TEST(found == wanted[c], boost::test_tools::per_element());
    }
}

BOOST_AUTO_TEST_CASE(a_roomy_vector_keeps_what_it_holds_as_it_grows_past_a_large_page) {
    kempt::combings::Roomy<int> grown;
    constexpr int count = 3 << 20;  // 12 MB
    for (int i = 0; i < count; ++i) grown.push_back(i);
    bool same = grown.size() == count;
    for (int i = 0; i < count; ++i) same = same && grown[static_cast<size_t>(i)] == i;
    BOOST_TEST(same);
}

BOOST_AUTO_TEST_SUITE_END()
