// Theil-Sen, Mann-Kendall and the forecast against published worked examples.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>
#include <random>

#include "change/change.h"
#include "reference/read_csv.h"

using namespace kempt::change;
using kempt::reference::read_csv;

namespace {

bool close(double value, double expected, double tolerance) {
    return std::abs(value - expected) <= tolerance;
}

}  // namespace

BOOST_AUTO_TEST_CASE(sen_1968_worked_example) {
    // J Am Stat Assoc 63:1379-1389: slope 4. The interval as SciPy and R 'deming' correct it, 26/7 to 35/8, are the 4th
    // and 18th of 21 slopes. Printed as 93 %, they hold 1 - 2 * 76 / 5040 = 97.0 % by the exact count; the 93 %
    // interval of Hollander & Wolfe (1999, section 9.3, from memory) is one rank inside: 15/4 to 46/11.
    const auto table = read_csv("sen_1968.csv");
    const auto trend = theil_sen(table.column("t"), table.column("y"), 1 - 2 * 76.0 / 5040);
    BOOST_REQUIRE(trend.has_value());
    BOOST_TEST(trend->slope == 4);
    BOOST_TEST(trend->intercept == 4);
    BOOST_TEST(close(trend->slope_low, 26.0 / 7, 1e-12));
    BOOST_TEST(close(trend->slope_high, 35.0 / 8, 1e-12));
    const auto at_93 = theil_sen(table.column("t"), table.column("y"), 0.93);
    BOOST_TEST(close(at_93->slope_low, 15.0 / 4, 1e-12));
    BOOST_TEST(close(at_93->slope_high, 46.0 / 11, 1e-12));
    BOOST_TEST(trend->S == 21);
    BOOST_TEST(close(trend->p, 0.000396825, 1e-9));
    BOOST_TEST(close(trend->var_S, 44.3333, 1e-4));
    BOOST_TEST(close(trend->z, 3.003757, 1e-6));
    BOOST_TEST(trend->interval_known);
}

BOOST_AUTO_TEST_CASE(epa_2009_example_17_6_sulfate) {
    // EPA 530/R-09-007 example 17-6 with ties; tau, z, p, slope, intercept and interval as the EnvStats package
    // documents them.
    const auto table = read_csv("epa_sulfate.csv");
    const auto trend = theil_sen(table.column("date"), table.column("sulfate"));
    BOOST_REQUIRE(trend.has_value());
    BOOST_TEST(trend->S == 194);
    BOOST_TEST(close(trend->var_S, 1428, 1e-9));
    BOOST_TEST(close(trend->tau, 0.7667984, 5e-8));
    BOOST_TEST(close(trend->z, 5.107322, 5e-7));
    BOOST_TEST(close(trend->p, 3.267574e-07, 1e-12));
    BOOST_TEST(close(trend->slope, 26.6666667, 5e-7));
    BOOST_TEST(close(trend->intercept, -1909.3333, 5e-4));
    BOOST_TEST(close(trend->slope_low, 20.00000, 5e-6));
    BOOST_TEST(close(trend->slope_high, 35.71182, 5e-6));
}

BOOST_AUTO_TEST_CASE(nile_flow_1871_to_1970) {
    // Data: Cobb 1978; expected figures computed with R 4.2.2 from the documented formulas, interpolated ranks.
    const auto table = read_csv("nile.csv");
    const auto trend = theil_sen(table.column("year"), table.column("flow"));
    BOOST_REQUIRE(trend.has_value());
    BOOST_TEST(trend->S == -1387);
    BOOST_TEST(close(trend->var_S, 112728.3333, 1e-4));
    BOOST_TEST(close(trend->z, -4.128067, 5e-7));
    BOOST_TEST(close(trend->p, 3.65826e-05, 5e-11));
    BOOST_TEST(close(trend->slope, -2.6, 1e-9));
    BOOST_TEST(close(trend->slope_low, -3.627926, 1e-6));
    BOOST_TEST(close(trend->slope_high, -1.428444, 1e-6));
}

BOOST_AUTO_TEST_CASE(five_values_take_the_exact_probability) {
    // 5, 6, 11, 8, 10: one-sided exact p 0.117 (EPA QA/G-9 style example, from memory), two-sided 28/120.
    const auto trend = theil_sen({1, 2, 3, 4, 5}, {5, 6, 11, 8, 10});
    BOOST_REQUIRE(trend.has_value());
    BOOST_TEST(trend->S == 6);
    BOOST_TEST(close(trend->p, 28.0 / 120, 1e-12));
    BOOST_TEST(trend->slope == 1.125);
    BOOST_TEST(trend->intercept == 4.625);
    BOOST_TEST(trend->interval_known);
}

BOOST_AUTO_TEST_CASE(four_visits_give_a_line_but_no_95_percent_interval) {
    const auto trend = theil_sen({0, 30, 61, 92}, {40, 44, 47, 52});
    BOOST_REQUIRE(trend.has_value());
    BOOST_TEST(!trend->interval_known);
    BOOST_TEST(trend->slope_low < trend->slope);
    BOOST_TEST(trend->slope_high > trend->slope);
    BOOST_TEST(close(trend->p, 2.0 / 24, 1e-12));
}

BOOST_AUTO_TEST_CASE(input_that_has_no_slope_gives_none) {
    BOOST_TEST(!theil_sen({1}, {2}).has_value());
    BOOST_TEST(!theil_sen({1, 1}, {2, 3}).has_value());
    BOOST_TEST(!theil_sen({1, 2}, {2}).has_value());
    BOOST_TEST(!theil_sen({1, 2}, {2, std::nan("")}).has_value());
    BOOST_TEST(!theil_sen({1, 2, 3}, {2, 3, 4}, 1.5).has_value());
    const auto flat = theil_sen({1, 2, 3, 4}, {7, 7, 7, 7});
    BOOST_REQUIRE(flat.has_value());
    BOOST_TEST(flat->slope == 0);
    BOOST_TEST(flat->p == 1);
    BOOST_TEST(!flat->interval_known);
}

BOOST_AUTO_TEST_CASE(order_of_the_visits_does_not_matter) {
    const auto table = read_csv("sen_1968.csv");
    auto t = table.column("t"), y = table.column("y");
    const auto before = theil_sen(t, y);
    std::reverse(t.begin(), t.end());
    std::reverse(y.begin(), y.end());
    const auto after = theil_sen(t, y);
    BOOST_TEST(before->slope == after->slope);
    BOOST_TEST(before->S == after->S);
    BOOST_TEST(before->slope_low == after->slope_low);
}

BOOST_AUTO_TEST_CASE(slope_intervals_hold_the_true_slope_as_often_as_they_say) {
    std::mt19937 random(1968);
    std::normal_distribution<double> noise(0, 2);
    for (const int n : {5, 6, 8, 10, 14}) {
        const int rounds = 2000;
        int held = 0;
        for (int round = 0; round < rounds; ++round) {
            std::vector<double> t, y;
            for (int i = 0; i < n; ++i) {
                t.push_back(28 * i);
                y.push_back(40 + 0.05 * t.back() + noise(random));
            }
            const auto trend = theil_sen(t, y);
            BOOST_REQUIRE(trend->interval_known);
            held += trend->slope_low <= 0.05 && 0.05 <= trend->slope_high;
        }
        // Three Monte Carlo standard errors below 95 %.
        BOOST_TEST(held >= (0.95 - 3 * std::sqrt(0.95 * 0.05 / rounds)) * rounds, "n " << n << ": " << held);
    }
}

BOOST_AUTO_TEST_CASE(forecast_is_a_range_between_the_steepest_and_the_flattest_slope) {
    Trend trend;
    trend.slope = 0.1;
    trend.slope_low = 0.05;
    trend.slope_high = 0.2;
    const Forecast forecast_up = forecast(trend, 100, 50, 60);
    BOOST_TEST(close(forecast_up.earliest.value(), 150, 1e-9));
    BOOST_TEST(close(forecast_up.middle.value(), 200, 1e-9));
    BOOST_TEST(close(forecast_up.latest.value(), 300, 1e-9));
    // A falling reading (bare length) towards a lower target.
    trend.slope = -0.1;
    trend.slope_low = -0.2;
    trend.slope_high = -0.05;
    const Forecast forecast_down = forecast(trend, 100, 20, 10);
    BOOST_TEST(close(forecast_down.earliest.value(), 150, 1e-9));
    BOOST_TEST(close(forecast_down.latest.value(), 300, 1e-9));
}

BOOST_AUTO_TEST_CASE(forecast_never_names_a_date_beyond_five_years) {
    Trend trend;
    trend.slope = 0.01;
    trend.slope_low = -0.01;
    trend.slope_high = 0.03;
    const Forecast slow = forecast(trend, 0, 50, 70);
    BOOST_TEST(slow.earliest.has_value());  // 667 days
    BOOST_TEST(!slow.middle.has_value());   // 2000 days
    BOOST_TEST(!slow.latest.has_value());   // leads away
    const Forecast away = forecast({-0.1, -0.2, -0.05}, 0, 50, 70);
    BOOST_TEST(!away.earliest.has_value());
    BOOST_TEST(!away.middle.has_value());
    BOOST_TEST(forecast(trend, 5, 70, 70).middle.value() == 5);
    const Forecast flat = forecast(Trend{}, 0, 50, 70);
    BOOST_TEST(!flat.middle.has_value());
}
