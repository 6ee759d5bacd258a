// The record moves outward with growth.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "care/history.h"
#include "people.h"

using namespace kempt::care;
using people::past;
using people::today;

namespace {

// 300 um a day, SD 10: in 100 days 30 mm, 95 % range 28.04 to 31.96 (300 -+ 1.96 x 10, times 100 days).
const GrowthRate steady{300, 10, "invented"};

ClientState client(std::vector<PastService> services, Day complete_since = whole_life) {
    ClientState state;
    state.today = today;
    state.own_rate = steady;
    state.history = {std::move(services), complete_since};
    return state;
}

Truth at(const std::vector<Passed>& passed, std::size_t service) {
    for (const Passed& one : passed)
        if (one.service == service) return one.truth;
    return Truth::no;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(history)

BOOST_AUTO_TEST_CASE(a_service_moves_outward_and_its_edges_blur_with_the_rate) {
    const ChemicalHistory record{{past(Kind::hydroxide, 100, 0, 50)}, whole_life};
    const auto carried = carry(record, today, steady);
    BOOST_REQUIRE_EQUAL(carried.size(), 1);
    BOOST_CHECK_CLOSE(carried[0].moved_mm.value, 30, 1e-6);
    BOOST_CHECK_CLOSE(carried[0].surely.from_mm, 31.96, 0.01);
    BOOST_CHECK_CLOSE(carried[0].surely.to_mm, 78.04, 0.01);
    BOOST_CHECK_CLOSE(carried[0].perhaps.from_mm, 28.04, 0.01);
    BOOST_CHECK_CLOSE(carried[0].perhaps.to_mm, 81.96, 0.01);
    const auto through = [&](double mm) { return at(what_has_this_hair_been_through(record, mm, today, steady), 0); };
    BOOST_CHECK(through(20) == Truth::no);
    BOOST_CHECK(through(30) == Truth::unknown);
    BOOST_CHECK(through(50) == Truth::yes);
    BOOST_CHECK(through(80) == Truth::unknown);
    BOOST_CHECK(through(90) == Truth::no);
}

BOOST_AUTO_TEST_CASE(a_centimetre_remembers_every_service_newest_first) {
    const ChemicalHistory record{
        {past(Kind::lightening, 300), past(Kind::hydroxide, 200), past(Kind::protein, 10), past(Kind::permanent, -5)},
        whole_life};
    const auto passed = what_has_this_hair_been_through(record, 150, today, steady);
    BOOST_REQUIRE_EQUAL(passed.size(), 3);  // what lies ahead does not count
    BOOST_CHECK_EQUAL(passed[0].service, 2);
    BOOST_CHECK_EQUAL(passed[1].service, 1);
    BOOST_CHECK_EQUAL(passed[2].service, 0);
    BOOST_CHECK(at(what_has_this_hair_been_through(record, 10, today, steady), 1) == Truth::no);
}

BOOST_AUTO_TEST_CASE(hair_that_was_cut_off_takes_its_history_along) {
    PastService cut = past(Kind::cut, 50);
    cut.to_mm = 60;  // left; today 60 + 15 mm, 74.0 to 76.0
    const ChemicalHistory record{{past(Kind::thioglycolate_perm, 200, 30, 200), cut}, whole_life};
    BOOST_CHECK(what_has_this_hair_been_through(record, 80, today, steady).empty());
    // The perm would begin at 90 mm now: all of it is gone.
    ClientState state = client(record.services);
    BOOST_CHECK(has_been_through(state, *find_family("perm"), {0, 1e9}) == Truth::no);
    BOOST_CHECK(!last_of(state, *find_family("perm")));
    state.history.services[0].from_mm = 0;
    BOOST_CHECK(has_been_through(state, *find_family("perm"), {0, 1e9}) == Truth::yes);
}

// Planned for a day that has passed, and nobody has said whether it was done.
BOOST_AUTO_TEST_CASE(what_was_perhaps_done_is_nowhere_sure_and_nowhere_forgotten) {
    const Family &texture = *find_family("texture"), &colour = *find_family("colour");
    PastService perhaps = past(Kind::hydroxide, 10);
    perhaps.unsure = true;
    PastService cut = past(Kind::cut, 10, 0, 100);
    cut.unsure = true;
    ClientState state = client({past(Kind::lightening, 300), perhaps, cut});
    BOOST_CHECK(has_been_through(state, texture, {20, 200}) == Truth::unknown);
    BOOST_CHECK(has_been_through(state, texture, {0, 2}) == Truth::no);  // grown since
    const DaysSince since = days_since(state, texture, {0, 300});
    BOOST_CHECK(!since.absent && since.may_be_absent);
    BOOST_CHECK_EQUAL(since.low, 10);
    BOOST_CHECK(std::isinf(since.high));
    BOOST_CHECK(last_at_roots(state, texture) == nullptr);
    // The lightened ends that the cut perhaps took away are still there: a stop may hang on them.
    BOOST_CHECK(has_been_through(state, colour, {150, 200}) == Truth::yes);
    state.history.services[1].unsure = state.history.services[2].unsure = false;
    BOOST_CHECK(has_been_through(state, texture, {20, 90}) == Truth::yes);
    BOOST_CHECK(has_been_through(state, colour, {150, 200}) == Truth::no);
}

BOOST_AUTO_TEST_CASE(a_cut_of_one_section_shortens_no_other) {
    PastService cut = past(Kind::cut, 50);
    cut.to_mm = 60;
    cut.sections = {"nape"};
    const ClientState state = client({past(Kind::thioglycolate_perm, 200, 30, 200), cut});
    BOOST_CHECK(has_been_through(state, *find_family("perm"), {0, 1e9}) == Truth::yes);
}

BOOST_AUTO_TEST_CASE(a_measured_line_goes_before_the_rate) {
    PastService service = past(Kind::hydroxide, 100);
    service.line_mm = GrowthRange{20, 19.5, 20.5};
    service.line_day = today - 10;
    const GrowthRange grown = new_growth_since(service, today, steady);
    BOOST_CHECK_CLOSE(grown.value, 23, 1e-6);  // 20 and ten days of 0.3 mm
    BOOST_CHECK_CLOSE(grown.low, 19.5 + 10 * 0.2804, 0.01);
    BOOST_CHECK_CLOSE(grown.high, 20.5 + 10 * 0.3196, 0.01);
}

BOOST_AUTO_TEST_CASE(where_the_record_does_not_reach_back_nobody_knows) {
    const Family& hydroxide = *find_family("hydroxide");
    // Complete for 100 days: of the first 28 mm all is known, of older hair nothing.
    ClientState state = client({}, today - 100);
    BOOST_CHECK(has_been_through(state, hydroxide, {0, 25}) == Truth::no);
    BOOST_CHECK(has_been_through(state, hydroxide, {0, 60}) == Truth::unknown);
    const DaysSince since = days_since(state, hydroxide, {0, 300});
    BOOST_CHECK(!since.absent && since.may_be_absent);
    BOOST_CHECK_EQUAL(since.low, 100);  // an unrecorded one can only lie before
    state.history.complete_since.reset();
    BOOST_CHECK_EQUAL(days_since(state, hydroxide, {0, 300}).low, 0);
    state.history.complete_since = whole_life;
    BOOST_CHECK(days_since(state, hydroxide, {0, 300}).absent);
}

BOOST_AUTO_TEST_CASE(days_count_from_the_last_service_on_that_hair) {
    const ClientState state = client({past(Kind::hydroxide, 400), past(Kind::hydroxide, 20, 0, 10)});
    const Family& hydroxide = *find_family("hydroxide");
    BOOST_CHECK_EQUAL(days_since(state, hydroxide, {0, 300}).high, 20);
    BOOST_CHECK_EQUAL(days_since(state, hydroxide, {200, 300}).high, 400);
}

BOOST_AUTO_TEST_CASE(sections_of_the_head_keep_their_own_history) {
    ClientState state = client({past(Kind::lightening, 10)});
    state.history.services[0].sections = {"crown"};
    const Family& lightening = *find_family("lightening");
    BOOST_CHECK(has_been_through(state, lightening, {0, 300}, {"nape"}) == Truth::no);
    BOOST_CHECK(has_been_through(state, lightening, {0, 300}, {"nape", "crown"}) == Truth::yes);
    BOOST_CHECK(has_been_through(state, lightening, {0, 300}) == Truth::yes);
}

BOOST_AUTO_TEST_CASE(parts_of_a_strand_meet_without_a_gap) {
    for (const double length : {20.0, 80.0, 150.0, 200.0, 600.0}) {
        const Span roots = span_of(Part::roots, length), mid = span_of(Part::mid_shaft, length),
                   ends = span_of(Part::ends, length);
        BOOST_CHECK_EQUAL(roots.from_mm, 0);
        BOOST_CHECK_EQUAL(roots.to_mm, mid.from_mm);
        BOOST_CHECK_EQUAL(mid.to_mm, ends.from_mm);
        BOOST_CHECK_EQUAL(ends.to_mm, length);
        BOOST_CHECK_LE(roots.to_mm, 20);
        BOOST_CHECK_LE(ends.to_mm - ends.from_mm, 50.0001);
    }
}

// Common practice: the line that new growth is measured to is that of the last colour that stays, or straightener, put
// on at the scalp.
BOOST_AUTO_TEST_CASE(a_retouch_grows_away_from_what_stays_and_began_at_the_roots) {
    PastService lengths_only = past(Kind::permanent, 10);
    lengths_only.from_mm = 50;
    const ClientState state =
        client({past(Kind::permanent, 100), lengths_only, past(Kind::gloss, 5), past(Kind::hydroxide, 200)});
    for (const Kind planned : {Kind::permanent, Kind::lightening, Kind::demi_permanent, Kind::henna}) {
        BOOST_REQUIRE(grown_from(planned, state));
        BOOST_CHECK_EQUAL(grown_from(planned, state)->day, today - 100);
    }
    BOOST_CHECK(grown_from(Kind::gloss, state)->kind == Kind::gloss);
    BOOST_CHECK(grown_from(Kind::hydroxide_lye, state)->kind == Kind::hydroxide);
    BOOST_CHECK(grown_from(Kind::protein, state) == nullptr);
    BOOST_CHECK(grown_from(Kind::permanent, client({lengths_only, past(Kind::semi_permanent, 30)})) == nullptr);
}

BOOST_AUTO_TEST_SUITE_END()
