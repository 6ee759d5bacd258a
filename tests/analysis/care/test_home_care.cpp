// Home care: the right sentences, in her minutes.
#include <boost/test/unit_test.hpp>

#include "care/home_care.h"
#include "people.h"

using namespace kempt::care;
using namespace people;

namespace {

bool has(const std::vector<Tip>& tips, const char* id) {
    return std::any_of(tips.begin(), tips.end(), [&](const Tip& tip) { return tip.id == id; });
}

}  // namespace

BOOST_AUTO_TEST_SUITE(home)

BOOST_AUTO_TEST_CASE(sound_hair_and_mild_habits_need_little) {
    BOOST_CHECK(home_care(*built_in_home_care(), sound()).tips.empty());
    BOOST_CHECK(home_care(*built_in_home_care(), sound()).questions.empty());
}

BOOST_AUTO_TEST_CASE(every_tip_can_be_reached) {
    ClientState worn = sound();
    for (const char* quality : {"breakage", "porosity", "elasticity", "edges", "scalp"})
        set_grade(worn, quality, "", 1);
    worn.history.services = {past(Kind::hydroxide, 5), past(Kind::lightening, 300)};
    DailyLife& daily = worn.daily;
    daily.heat = {{"iron", 220, 4, true}};
    daily.swims_a_week = 2;
    daily.washes_a_week = 5;
    daily.style_weeks = 12;
    daily.minutes_a_day.reset();
    for (auto* fact :
         {&daily.hard_water, &daily.covers_hair, &daily.tight_headwear, &daily.tight_styles, &daily.style_hurts})
        *fact = true;
    daily.covers_at_night = false;
    HomeCareOptions all;
    all.most_tips = 100;
    const HomeCarePlan plan = home_care(*built_in_home_care(), worn, all);
    for (const Tip& tip : built_in_home_care()->tips) BOOST_CHECK_MESSAGE(has(plan.tips, tip.id.c_str()), tip.id);
    const HomeCarePlan page = home_care(*built_in_home_care(), worn);
    BOOST_CHECK_EQUAL(page.tips.size(), 8);
    BOOST_CHECK_EQUAL(page.tips.size() + page.left_out.size(), plan.tips.size());
    for (const Tip& tip : page.tips)
        for (const Tip& left : page.left_out) BOOST_CHECK_LE(tip.priority, left.priority);
}

BOOST_AUTO_TEST_CASE(her_minutes_are_kept) {
    ClientState state = sound();
    for (const char* quality : {"breakage", "porosity", "elasticity"}) set_grade(state, quality, "", 2);
    state.daily.minutes_a_day = 60;
    const HomeCarePlan rich = home_care(*built_in_home_care(), state);
    BOOST_CHECK(has(rich.tips, "moisture-mask") && has(rich.tips, "protein-in-turn"));
    state.daily.minutes_a_day = 3;  // 21 a week
    const HomeCarePlan poor = home_care(*built_in_home_care(), state);
    BOOST_CHECK_LE(poor.minutes_a_week, 21);
    BOOST_CHECK(has(poor.tips, "condition-every-wash") && has(poor.tips, "detangle-from-the-ends"));
    BOOST_CHECK(has(poor.left_out, "moisture-mask"));
}

BOOST_AUTO_TEST_CASE(what_nobody_knows_is_asked_and_not_printed) {
    ClientState state;
    state.today = today;
    const HomeCarePlan plan = home_care(*built_in_home_care(), state);
    BOOST_CHECK(plan.tips.empty());
    BOOST_CHECK_GT(plan.questions.size(), 8);
}

BOOST_AUTO_TEST_CASE(a_tip_with_a_mistake_is_refused) {
    const std::string tip =
        "[tip one]\ngroup = wash\npriority = 1\nminutes_a_week = 3\nwhen = hard_water\n"
        "say = Rinse well.\nsource = common-practice\n";
    BOOST_CHECK(load_home_care(tip));
    const auto broken = [&](const std::string& from, const std::string& to) {
        std::string text = tip;
        text.replace(text.find(from), from.size(), to);
        const auto read = load_home_care(text);
        return read ? std::string() : read.error().what;
    };
    BOOST_CHECK_EQUAL(broken("= wash", "= sing"), "Line 2 of the rules: 'group' is missing or unknown.");
    BOOST_CHECK_EQUAL(broken("= 1", "= 10"), "Line 3 of the rules: 'priority' is no number in its range.");
    BOOST_CHECK_EQUAL(broken("hard_water", "service(dye)"),
                      "Line 5 of the rules: a tip cannot ask about a planned service.");
    BOOST_CHECK_EQUAL(broken("common-practice", "hearsay"), "Line 7 of the rules: unknown source 'hearsay'.");
    BOOST_CHECK_EQUAL(broken("Rinse well.", "Safe and sound."), "Line 6 of the rules: nothing is called safe.");
}

BOOST_AUTO_TEST_SUITE_END()
