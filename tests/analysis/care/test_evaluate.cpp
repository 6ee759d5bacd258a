// How findings come out: order, places, waits, cautions.
#include <boost/test/unit_test.hpp>
#include <functional>

#include "people.h"

using namespace kempt::care;
using namespace people;

BOOST_AUTO_TEST_SUITE(evaluation)

BOOST_AUTO_TEST_CASE(nothing_known_gives_questions_not_silence) {
    ClientState state;
    state.today = today;
    Plan plan;
    plan.services.emplace_back().kind = Kind::hydroxide;
    const Advice advice = advise(*built_in_rules(), state, plan);
    BOOST_CHECK(!advice.stopped);
    BOOST_CHECK_GT(questions_of(advice).size(), 20);
    for (const char* rule : {"hydroxide-on-thioglycolate", "hydroxide-overlap", "scalp-grade-sore", "breakage-heavy",
                             "elasticity-failed", "straightening-after-colour", "strand-test-failed"})
        BOOST_CHECK_MESSAGE(find(advice, rule, FindingSort::check_first), rule);
    // Questions of stops come before those of cautions and notes.
    bool lighter = false;
    for (const Finding& finding : advice.findings) {
        BOOST_CHECK(!(lighter && finding.level == RuleLevel::stop));
        lighter = lighter || finding.level != RuleLevel::stop;
    }
}

BOOST_AUTO_TEST_CASE(cautions_are_there_with_every_plan_and_without_one) {
    const Rules& rules = *built_in_rules();
    BOOST_CHECK_EQUAL(advise(rules, sound(), {}).always.size(), rules.always.size());
    BOOST_CHECK_EQUAL(advise(rules, {}, {}).always.size(), rules.always.size());
    Plan plan;
    plan.services.push_back(prepared(Kind::moisture));
    const Advice advice = advise(rules, sound(), plan);
    BOOST_CHECK(advice.findings.empty());  // nothing speaks against it, and yet:
    BOOST_REQUIRE_EQUAL(advice.always.size(), rules.always.size());
    BOOST_CHECK(!advice.always[0].source.empty());
}

BOOST_AUTO_TEST_CASE(one_finding_a_rule_names_all_its_places) {
    ClientState state = sound();
    state.history.services = {past(Kind::hydroxide, 300)};
    Plan plan;
    plan.services = {prepared(Kind::thioglycolate_perm), prepared(Kind::thioglycolate_straightener)};
    const Advice advice = advise(*built_in_rules(), state, plan);
    const Finding* finding = find(advice, "thioglycolate-on-hydroxide");
    BOOST_REQUIRE(finding);
    // 300 days of 280 -+ 50 um: new growth of 55 to 113 mm, so the roots are untouched, mid-shaft and ends are not.
    BOOST_CHECK_EQUAL(finding->where.size(), 4);
    for (const Place& place : finding->where) BOOST_CHECK(place.part != Part::roots);
    BOOST_CHECK(advice.findings[0].level == RuleLevel::stop);
}

BOOST_AUTO_TEST_CASE(where_overlap_may_or_may_not_be_the_line_is_asked_for) {
    ClientState state = sound();
    state.history.services = {past(Kind::thioglycolate_straightener, 60)};
    Plan plan;
    plan.services = {prepared(Kind::hydroxide)};
    plan.services[0].to_mm = 15;  // new growth in 60 days: 10.9 to 22.7 mm
    const Advice perhaps = advise(*built_in_rules(), state, plan);
    BOOST_CHECK(!find(perhaps, "hydroxide-on-thioglycolate"));
    BOOST_CHECK(find(perhaps, "hydroxide-on-thioglycolate", FindingSort::check_first));
    plan.services[0].to_mm = 10;
    const Advice clear = advise(*built_in_rules(), state, plan);
    BOOST_CHECK(!find(clear, "hydroxide-on-thioglycolate", FindingSort::check_first));
    // The line measured today settles it.
    plan.services[0].to_mm = 15;
    state.history.services[0].line_mm = GrowthRange{17, 16, 18};
    state.history.services[0].line_day = today;
    BOOST_CHECK(!find(advise(*built_in_rules(), state, plan), "hydroxide-on-thioglycolate", FindingSort::check_first));
    state.history.services[0].line_mm = GrowthRange{12, 11, 13};
    BOOST_CHECK(find(advise(*built_in_rules(), state, plan), "hydroxide-on-thioglycolate"));
}

BOOST_AUTO_TEST_CASE(what_cannot_be_is_refused_by_name) {
    const auto told = [](const std::function<void(ClientState&, PlannedService&)>& spoil) {
        ClientState state = sound();
        state.history.services = {past(Kind::hydroxide, 60)};
        Plan plan;
        plan.services = {prepared(Kind::hydroxide)};
        spoil(state, plan.services[0]);
        const auto advice = evaluate(*built_in_rules(), state, plan);
        return advice ? std::string() : advice.error().what;
    };
    BOOST_CHECK_EQUAL(told([](auto&, auto&) {}), "");
    BOOST_CHECK_EQUAL(told([](auto& s, auto&) { s.age_years = -1; }), "The age is no number from 0 on that can be.");
    BOOST_CHECK_EQUAL(told([](auto& s, auto&) { s.grades[0].value = 5; }), "A grade is not 0 to 4.");
    BOOST_CHECK_EQUAL(told([](auto& s, auto&) { s.grades[0].quality = "mood"; }), "A grade is of no known quality.");
    BOOST_CHECK_EQUAL(told([](auto&, auto& p) { p.from_mm = 300; }),
                      "hydroxide straightener is planned beyond the end of the hair.");
    BOOST_CHECK_EQUAL(told([](auto&, auto& p) { p.to_mm = std::nan(""); }),
                      "hydroxide straightener: the end is no number from 0 on that can be.");
    BOOST_CHECK_EQUAL(told([](auto& s, auto&) {
                          s.history.services[0].from_mm = 20;
                          s.history.services[0].to_mm = 10;
                      }),
                      "hydroxide straightener ends before it begins.");
    BOOST_CHECK_EQUAL(told([](auto& s, auto&) {
                          s.own_rate = GrowthRate{100, 60, ""};
                      }),
                      "The growth rate is not above zero or too uncertain.");
}

BOOST_AUTO_TEST_CASE(a_wait_ends_on_its_day) {
    ClientState state = sound();
    state.history.services = {past(Kind::hydroxide, 5)};
    Plan plan;
    plan.services = {prepared(Kind::permanent)};
    const Advice advice = advise(*built_in_rules(), state, plan);
    const Finding* finding = find(advice, "colour-after-straightening");
    BOOST_REQUIRE(finding && finding->wait_until);
    BOOST_CHECK_EQUAL(*finding->wait_until, today - 5 + 14);
    state.today = *finding->wait_until;
    BOOST_CHECK(!find(advise(*built_in_rules(), state, plan), "colour-after-straightening"));
}

BOOST_AUTO_TEST_CASE(a_head_sections_grade_of_the_strand_counts_for_every_part) {
    ClientState state = sound();
    set_grade(state, "elasticity", "crown", 0);
    Plan plan;
    plan.services = {prepared(Kind::lightening)};
    BOOST_CHECK(find(advise(*built_in_rules(), state, plan), "elasticity-failed", FindingSort::speaks_against));
}

BOOST_AUTO_TEST_CASE(a_part_grade_goes_before_the_whole_heads) {
    ClientState state = sound();
    set_grade(state, "elasticity", "", 1);
    set_grade(state, "elasticity", "roots", 3);
    Plan plan;
    plan.services = {prepared(Kind::hydroxide)};
    const Advice advice = advise(*built_in_rules(), state, plan);
    const Finding* finding = find(advice, "elasticity-failed");
    BOOST_REQUIRE(finding);
    BOOST_CHECK_EQUAL(finding->where.size(), 2);  // mid-shaft and ends
}

BOOST_AUTO_TEST_CASE(five_graded_sections_are_the_whole_scalp_fewer_are_not) {
    ClientState state = sound();
    std::erase_if(state.grades, [](const Graded& g) { return g.quality == "scalp"; });
    Plan plan;
    plan.services = {prepared(Kind::semi_permanent)};
    for (const char* name : {"front hairline", "left temple", "right temple", "crown"})
        set_grade(state, "scalp", name, 4);
    BOOST_CHECK(find(advise(*built_in_rules(), state, plan), "scalp-grade-sore", FindingSort::check_first));
    set_grade(state, "scalp", "nape", 4);
    BOOST_CHECK(!find(advise(*built_in_rules(), state, plan), "scalp-grade-sore", FindingSort::check_first));
}

BOOST_AUTO_TEST_SUITE_END()
