// Axes: round steps, no more ticks than asked for, the data always inside.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

#include "charts/ticks.h"

using namespace kempt::charts;

namespace {

const kempt::speech::Speech british;

bool round_step(double step) {
    const double mantissa = step / std::pow(10, std::floor(std::log10(step) + 1e-9));
    for (const double nice : {1.0, 2.0, 2.5, 5.0})
        if (std::abs(mantissa - nice) < 1e-6) return true;
    return false;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_percentage_axis_has_round_ticks) {
    const ValueAxis axis = value_axis(37.2, 61.8, 7, 0, 100);
    BOOST_TEST(axis.step == 5);
    BOOST_TEST(axis.low == 35);
    BOOST_TEST(axis.high == 65);
    BOOST_TEST(axis.decimals == 0);
    const ValueAxis full = value_axis(2, 99, 6, 0, 100);
    BOOST_TEST(full.low == 0);
    BOOST_TEST(full.high == 100);
}

BOOST_AUTO_TEST_CASE(any_range_is_covered_by_round_steps_and_few_ticks) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> exponent(-4, 5), part(-1, 1);
    for (int i = 0; i < 5000; ++i) {
        const double scale = std::pow(10, exponent(random));
        const double a = part(random) * scale, b = part(random) * scale;
        const int most = 3 + i % 8;
        const ValueAxis axis = value_axis(std::min(a, b), std::max(a, b), most);
        BOOST_TEST(axis.ticks.size() <= most);
        BOOST_TEST(axis.ticks.size() >= 2);
        BOOST_TEST(round_step(axis.step), axis.step);
        BOOST_TEST(axis.low <= std::min(a, b) + 1e-6 * axis.step);
        BOOST_TEST(axis.high >= std::max(a, b) - 1e-6 * axis.step);
    }
}

BOOST_AUTO_TEST_CASE(labels_carry_as_many_decimals_as_the_step_needs) {
    BOOST_TEST(value_axis(0.11, 0.19, 6).decimals == 2);
    BOOST_TEST(value_axis(0, 1, 5).decimals == 2);  // steps of 0.25
    BOOST_TEST(value_axis(0, 9, 6).decimals == 0);
    BOOST_TEST(value_axis(2.1, 3.9, 5).decimals == 1);
}

BOOST_AUTO_TEST_CASE(a_flat_or_broken_range_still_gives_an_axis) {
    for (const double value : {0.0, 41.0, -3.5, 1e-9, 1e9}) {
        const ValueAxis axis = value_axis(value, value, 5);
        BOOST_TEST(axis.low < value + 1e-12);
        BOOST_TEST(axis.high > value - 1e-12);
        BOOST_TEST(axis.low < axis.high);
        BOOST_TEST(axis.ticks.size() >= 2);
    }
    const ValueAxis broken = value_axis(std::nan(""), 3, 5);
    BOOST_TEST(broken.low < broken.high);
    BOOST_TEST(value_axis(120, 130, 5, 0, 100).low < value_axis(120, 130, 5, 0, 100).high);
    BOOST_TEST(value_axis(0, 3, 5, 0).low == 0);
}

BOOST_AUTO_TEST_CASE(date_ticks_lie_on_the_calendar) {
    const auto months = date_ticks({2025, 11, 4}, {2026, 3, 30}, 8, british);
    BOOST_REQUIRE(months.size() == 4);
    BOOST_TEST((months[0].date == QDate(2025, 12, 1)));
    BOOST_TEST(months[0].label.toStdString() == "Dec 2025");
    BOOST_TEST(months[1].label.toStdString() == "Jan 2026");
    BOOST_TEST(months[2].label.toStdString() == "Feb");
    const auto days = date_ticks({2026, 3, 1}, {2026, 3, 6}, 8, british);
    BOOST_REQUIRE(days.size() == 6);
    BOOST_TEST(days[1].label.toStdString() == "2 Mar");
    const auto weeks = date_ticks({2026, 3, 1}, {2026, 4, 6}, 8, british);
    for (const DateTick& tick : weeks) BOOST_TEST(tick.date.dayOfWeek() == 1);
    const auto years = date_ticks({2021, 3, 1}, {2030, 4, 6}, 10, british);
    for (const DateTick& tick : years) {
        BOOST_TEST((tick.date.month() == 1 && tick.date.day() == 1));
        BOOST_TEST(tick.label.toStdString() == std::to_string(tick.date.year()));
    }
}

BOOST_AUTO_TEST_CASE(date_ticks_never_exceed_what_was_asked_and_stay_inside) {
    for (int length = 0; length < 9000; length += 1 + length / 7)
        for (int most = 2; most <= 12; ++most) {
            const QDate from = QDate(2024, 2, 27).addDays(length % 31), to = from.addDays(length);
            const auto ticks = date_ticks(from, to, most, british);
            BOOST_TEST(ticks.size() >= 1);
            BOOST_TEST(ticks.size() <= most);
            for (int i = 0; i < ticks.size(); ++i) {
                BOOST_TEST((ticks[i].date >= from && ticks[i].date <= to));
                if (i > 0) BOOST_TEST((ticks[i].date > ticks[i - 1].date));
            }
        }
    BOOST_TEST(date_ticks({2026, 3, 6}, {2026, 3, 1}, 5, british).isEmpty());
}
