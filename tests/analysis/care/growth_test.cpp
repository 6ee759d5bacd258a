// New growth against the published rates, and the range of weeks against drawing lengths and rates at random.
#include "care/growth.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

using namespace kempt;
using namespace kempt::care;

namespace {

double rounded_tenth(double mm) {
    return std::round(mm * 10) / 10;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(growth)

BOOST_AUTO_TEST_CASE(published_rates_give_every_cell_of_the_table_of_new_growth) {
    // Rate x days / 1000, rounded to a tenth of a millimetre; rates of Loussouarn 2001 and 2005, computed apart.
    const struct {
        double um_per_day;
        double mm[6];
    } rows[] = {{256, {7.2, 10.8, 14.3, 17.9, 21.5, 28.7}},
                {280, {7.8, 11.8, 15.7, 19.6, 23.5, 31.4}},
                {367, {10.3, 15.4, 20.6, 25.7, 30.8, 41.1}},
                {396, {11.1, 16.6, 22.2, 27.7, 33.3, 44.4}},
                {411, {11.5, 17.3, 23.0, 28.8, 34.5, 46.0}}};
    const double weeks[6] = {4, 6, 8, 10, 12, 16};
    for (const auto& row : rows) {
        const auto& published = published_rates();
        const auto found = std::find_if(published.begin(), published.end(),
                                        [&](const PublishedRate& rate) { return rate.um_per_day == row.um_per_day; });
        BOOST_REQUIRE(found != published.end());
        const GrowthRate rate{found->um_per_day, found->sd_um_per_day, found->study};
        for (int k = 0; k < 6; ++k) {
            const auto mm = growth_of_weeks(weeks[k], rate);
            BOOST_REQUIRE(mm.ok());
            BOOST_TEST(rounded_tenth(mm->value) == row.mm[k], boost::test_tools::tolerance(1e-9));
            // and back
            const auto back = weeks_of_growth(*mm, rate);
            BOOST_REQUIRE(back.ok());
            BOOST_TEST(back->value == weeks[k], boost::test_tools::tolerance(1e-9));
            BOOST_TEST((back->low < weeks[k] && weeks[k] < back->high));
        }
    }
}

BOOST_AUTO_TEST_CASE(published_rates_agree_with_the_millimetres_a_month_of_the_same_rows) {
    // 30.44 days a month: 7.8, 12.1, 8.5, 11.2, 12.5 mm, computed apart.
    const double mm_a_month[] = {7.8, 12.1, 8.5, 11.2, 12.5}, sd[] = {1.3, 1.7, 1.5, 1.7, 1.6};
    BOOST_REQUIRE_EQUAL(published_rates().size(), 5U);
    for (size_t i = 0; i < 5; ++i) {
        BOOST_TEST(rounded_tenth(published_rates()[i].um_per_day * 30.44 / 1000) == mm_a_month[i],
                   boost::test_tools::tolerance(1e-9));
        BOOST_TEST(rounded_tenth(published_rates()[i].sd_um_per_day * 30.44 / 1000) == sd[i],
                   boost::test_tools::tolerance(1e-9));
    }
}

BOOST_AUTO_TEST_CASE(an_unknown_group_is_expected_between_the_groups_with_a_wider_range) {
    const GrowthRate any = expected_rate(HairGroup::unknown);
    BOOST_TEST(any.um_per_day == (280 + 367 + 411) / 3.0, boost::test_tools::tolerance(1e-9));
    for (const HairGroup group : {HairGroup::african, HairGroup::asian, HairGroup::caucasian})
        BOOST_TEST(any.sd_um_per_day > expected_rate(group).sd_um_per_day);
    // The mixture's SD, from its parts: mean of the variances and the variance of the means.
    std::mt19937 random(3);
    std::normal_distribution<double> normal;
    double sum = 0, squares = 0;
    constexpr int n = 300000;
    const double means[] = {280, 367, 411}, sds[] = {50, 56, 53};
    for (int i = 0; i < n; ++i) {
        const double rate = means[i % 3] + sds[i % 3] * normal(random);
        sum += rate, squares += rate * rate;
    }
    const double mean = sum / n;
    BOOST_TEST(any.sd_um_per_day == std::sqrt(squares / n - mean * mean), boost::test_tools::tolerance(0.01));
}

BOOST_AUTO_TEST_CASE(weeks_hold_95_of_100_heads_drawn_at_random) {
    std::mt19937 random(11);
    std::normal_distribution<double> normal;
    for (const HairGroup group : {HairGroup::african, HairGroup::asian, HairGroup::unknown})
        for (const double half_mm : {0.5, 4.0}) {
            const GrowthRate rate = expected_rate(group);
            const auto weeks = weeks_of_growth({15, 15 - half_mm, 15 + half_mm}, rate);
            BOOST_REQUIRE(weeks.ok());
            std::vector<double> drawn;
            for (int i = 0; i < 200000; ++i) {
                const double mm = 15 + half_mm / 1.959964 * normal(random),
                             um = rate.um_per_day + rate.sd_um_per_day * normal(random);
                drawn.push_back(mm * 1000 / um / 7);
            }
            std::sort(drawn.begin(), drawn.end());
            BOOST_TEST(weeks->low == drawn[5000], boost::test_tools::tolerance(0.02));
            BOOST_TEST(weeks->high == drawn[195000], boost::test_tools::tolerance(0.02));
        }
}

BOOST_AUTO_TEST_CASE(a_client_s_own_rate_narrows_the_weeks) {
    // 11.8 mm (to half a millimetre) six weeks after the relaxer: 281 um/day.
    const auto own = own_rate({11.8, 11.3, 12.3}, 6, HairGroup::african);
    BOOST_REQUIRE(own.ok());
    BOOST_TEST(own->um_per_day == 11800 / 42.0, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(own->sd_um_per_day == 500 / 1.959964 / 42, boost::test_tools::tolerance(1e-4));
    const GrowthRate expected = expected_rate(HairGroup::african), both = with_own_rates(expected, {*own});
    BOOST_TEST(both.um_per_day > 280);
    BOOST_TEST(both.um_per_day < own->um_per_day);
    BOOST_TEST(both.sd_um_per_day < expected.sd_um_per_day);
    BOOST_TEST(both.sd_um_per_day >= 0.05 * both.um_per_day);
    const auto broad = weeks_of_growth({20, 19, 21}, expected), narrow = weeks_of_growth({20, 19, 21}, both);
    BOOST_TEST((narrow->high - narrow->low < broad->high - broad->low));
    // Without one of her own nothing changes.
    BOOST_TEST(with_own_rates(expected, {}).um_per_day == expected.um_per_day);
    BOOST_TEST(with_own_rates(expected, {}).sd_um_per_day == expected.sd_um_per_day);
}

BOOST_AUTO_TEST_CASE(a_rate_that_no_head_has_is_refused) {
    BOOST_TEST(plausible_rates(HairGroup::african).least == 150);  // Loussouarn 2001, range over 38 people
    BOOST_TEST(plausible_rates(HairGroup::african).most == 363);
    for (const HairGroup group : {HairGroup::african, HairGroup::asian, HairGroup::caucasian, HairGroup::unknown})
        BOOST_TEST(plausible_rates(group).holds(expected_rate(group).um_per_day));
    BOOST_TEST(plausible_rates(HairGroup::unknown).holds(150));
    BOOST_TEST(plausible_rates(HairGroup::unknown).holds(plausible_rates(HairGroup::asian).most));
    // 40 mm in six weeks is 952 um/day, 2 mm is 48.
    for (const double mm : {40.0, 2.0}) {
        const auto own = own_rate({mm, mm - 0.5, mm + 0.5}, 6, HairGroup::unknown);
        BOOST_REQUIRE(!own.ok());
        BOOST_TEST(own.error().code == "rate-implausible");
    }
    // What its uncertainty may explain is not refused.
    BOOST_TEST(own_rate({6, 0, 12}, 6, HairGroup::african).ok());
}

BOOST_AUTO_TEST_CASE(nonsense_is_answered_with_its_code) {
    const GrowthRate rate = expected_rate(HairGroup::asian);
    BOOST_TEST(weeks_of_growth({-1, -2, 0}, rate).error().code == "growth-invalid");
    BOOST_TEST(weeks_of_growth({5, 6, 7}, rate).error().code == "growth-invalid");
    BOOST_TEST(weeks_of_growth({std::nan(""), 0, 1}, rate).error().code == "growth-invalid");
    BOOST_TEST(weeks_of_growth({5, 4, 6}, {0, 0, ""}).error().code == "rate-invalid");
    BOOST_TEST(weeks_of_growth({5, 4, 6}, {100, 60, ""}).error().code == "rate-invalid");
    BOOST_TEST(growth_of_weeks(-1, rate).error().code == "weeks-invalid");
    BOOST_TEST(growth_of_weeks(8, {300, -1, ""}).error().code == "rate-invalid");
    BOOST_TEST(own_rate({5, 4, 6}, 2, HairGroup::asian).error().code == "weeks-invalid");
    const auto none = weeks_of_growth({0, 0, 0}, rate);
    BOOST_REQUIRE(none.ok());
    BOOST_TEST(none->value == 0);
    BOOST_TEST(none->high == 0);
}

BOOST_AUTO_TEST_SUITE_END()
