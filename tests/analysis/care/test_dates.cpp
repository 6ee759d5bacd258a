// Next dates as ranges.
#include <boost/test/unit_test.hpp>

#include "care/dates.h"
#include "people.h"

using namespace kempt::care;
using namespace people;

namespace {

const DateRange* of(const std::vector<DateRange>& dates, DateSort sort) {
    for (const DateRange& date : dates)
        if (date.sort == sort) return &date;
    return nullptr;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(dates)

// 12 mm at 280 -+ 50 um/day (Loussouarn, El Rawadi & Genain 2005) take 42.9 days, 31.7 to 65.9 at 1.96 SD; a retouch is
// not before 8 weeks, so only slow growth moves it.
BOOST_AUTO_TEST_CASE(retouch_waits_for_both_growth_and_weeks) {
    ClientState state = sound();
    state.history.services = {past(Kind::hydroxide, 10)};
    const auto dates = next_dates(state, {}, {});
    const DateRange* retouch = of(dates, DateSort::retouch);
    BOOST_REQUIRE(retouch && retouch->expected);
    BOOST_CHECK_EQUAL(retouch->from, today - 10 + 56);
    BOOST_CHECK_EQUAL(*retouch->expected, today - 10 + 56);
    BOOST_CHECK_EQUAL(retouch->to, today - 10 + 66);
    BOOST_CHECK(retouch->source.find("Loussouarn") != std::string::npos);
    // A measured line: 4 mm today, 8 more at the same rate: 28.6 days, 19.6 to 47.1 with the line's own 0.5 mm.
    state.history.services[0].line_mm = GrowthRange{4, 3.5, 4.5};
    state.history.services[0].line_day = today;
    const auto days = days_of_growth(state.history.services[0], 12, rate_of(state));
    BOOST_REQUIRE(days);
    BOOST_CHECK_EQUAL(days->expected, today + 29);
    BOOST_CHECK_GE(days->first, today + 18);
    BOOST_CHECK_LE(days->first, today + 22);
    BOOST_CHECK_GE(days->last, today + 43);
    BOOST_CHECK_LE(days->last, today + 49);
}

// 90 mm after 300 days: 12 mm were passed after 12/90 of them, not on the day of the tape.
BOOST_AUTO_TEST_CASE(a_line_that_was_measured_late_still_tells_when_a_retouch_was_due) {
    ClientState state = sound();
    state.history.services = {past(Kind::hydroxide, 300)};
    PastService& service = state.history.services[0];
    service.line_mm = GrowthRange{90, 88, 92};
    service.line_day = today;
    const auto days = days_of_growth(service, 12, rate_of(state));
    BOOST_REQUIRE(days);
    BOOST_CHECK_EQUAL(days->first, today - 300 + 39);
    BOOST_CHECK_EQUAL(days->expected, today - 300 + 40);
    BOOST_CHECK_EQUAL(days->last, today - 300 + 41);
    // Just beyond, and perhaps not yet.
    service.line_mm = GrowthRange{12.5, 11, 14};
    const auto near = days_of_growth(service, 12, rate_of(state));
    BOOST_REQUIRE(near);
    BOOST_CHECK_EQUAL(near->expected, today - 300 + 288);
    BOOST_CHECK_GT(near->last, today);
    BOOST_CHECK((near->first < near->expected && near->expected < near->last));
}

BOOST_AUTO_TEST_CASE(no_retouch_of_hair_that_was_cut_off_or_never_straightened) {
    ClientState state = sound();
    BOOST_CHECK(!of(next_dates(state, {}, {}), DateSort::retouch));
    state.history.services = {past(Kind::hydroxide, 700)};
    BOOST_CHECK(of(next_dates(state, {}, {}), DateSort::retouch));
    state.length_mm = 60;  // new growth of 700 days is 127 mm at the least
    BOOST_CHECK(!of(next_dates(state, {}, {}), DateSort::retouch));
}

// Common practice: 8-12 weeks, 6-8 for straightened or weak hair, 12-16 for natural hair without heat.
BOOST_AUTO_TEST_CASE(trim_comes_sooner_for_weak_hair_and_later_for_sound_hair) {
    ClientState state = sound();
    BOOST_CHECK(!of(next_dates(state, {}, {}), DateSort::trim));
    state.history.services = {past(Kind::cut, 7)};
    const auto weeks = [&] {
        const auto dates = next_dates(state, {}, {});
        const DateRange* trim = of(dates, DateSort::trim);
        BOOST_REQUIRE(trim);
        return std::pair((trim->from - today + 7) / 7, (trim->to - today + 7) / 7);
    };
    BOOST_CHECK(weeks() == std::pair(12, 16));
    state.daily.heat = {{"iron", 150, 1, false}};
    BOOST_CHECK(weeks() == std::pair(8, 12));
    set_grade(state, "breakage", "ends", 2);
    BOOST_CHECK(weeks() == std::pair(6, 8));
    set_grade(state, "breakage", "ends", 4);
    state.history.services.push_back(past(Kind::hydroxide, 100));
    BOOST_CHECK(weeks() == std::pair(6, 8));
}

BOOST_AUTO_TEST_CASE(photographs_when_the_first_centimetre_has_grown_anew) {
    ClientState state = sound();
    const auto dates = next_dates(state, today, {});
    const DateRange* photographs = of(dates, DateSort::photographs);
    BOOST_REQUIRE(photographs && photographs->expected);
    BOOST_CHECK_EQUAL(*photographs->expected, today + 36);  // 10 mm / 0.28 mm a day
    BOOST_CHECK_EQUAL(photographs->from, today + 28);       // fast growth: 26.5 days, but four weeks at the least
    BOOST_CHECK_EQUAL(photographs->to, today + 55);         // slow growth: 54.9 days
    state.group = HairGroup::asian;                         // 411 um/day: 24 days
    BOOST_CHECK_EQUAL(*of(next_dates(state, today, {}), DateSort::photographs)->expected, today + 28);
}

// 48 hours: FDA's consumer pages on hair dyes.
BOOST_AUTO_TEST_CASE(patch_test_two_days_to_a_week_before_the_dye) {
    const auto dates = next_dates(sound(), {}, today + 30);
    const DateRange* test = of(dates, DateSort::patch_test);
    BOOST_REQUIRE(test);
    BOOST_CHECK_EQUAL(test->from, today + 23);
    BOOST_CHECK_EQUAL(test->to, today + 28);
}

BOOST_AUTO_TEST_SUITE_END()
