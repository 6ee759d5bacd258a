// Conditions: what they may say, and that what nobody knows stays unknown.
#include <boost/test/unit_test.hpp>

#include "care/expression.h"
#include "people.h"

using namespace kempt::care;

namespace {

struct Asked {
    ClientState state = people::sound();
    Plan plan;
    Outcome operator()(const std::string& text) const {
        const auto expression = Expression::parse(text);
        BOOST_REQUIRE_MESSAGE(expression.ok(), text << (expression ? "" : expression.error().what));
        Context context;
        context.state = &state;
        context.plan = &plan;
        return expression->evaluate(context);
    }
};

std::string problem(const std::string& text) {
    const auto expression = Expression::parse(text);
    return expression ? "" : expression.error().what;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(expression)

BOOST_AUTO_TEST_CASE(and_or_not_follow_kleene) {
    // Kleene 1938: yes, no, unknown; every pair.
    const char* words[] = {"pregnant_or_breastfeeding", "takes_medication", "dye_reaction"};  // yes, no, unknown
    Asked ask;
    ask.state.answers.pregnant_or_breastfeeding = true;
    ask.state.answers.takes_medication = false;
    ask.state.answers.dye_reaction.reset();
    const Truth y = Truth::yes, n = Truth::no, u = Truth::unknown;
    const Truth both[3][3] = {{y, n, u}, {n, n, n}, {u, n, u}}, either[3][3] = {{y, y, y}, {y, n, u}, {y, u, u}};
    const Truth negated[3] = {n, y, u};
    for (int i = 0; i < 3; ++i) {
        BOOST_CHECK(ask(std::string("not ") + words[i]).truth == negated[i]);
        for (int j = 0; j < 3; ++j) {
            BOOST_CHECK(ask(std::string(words[i]) + " and " + words[j]).truth == both[i][j]);
            BOOST_CHECK(ask(std::string(words[i]) + " or " + words[j]).truth == either[i][j]);
        }
    }
}

BOOST_AUTO_TEST_CASE(and_binds_before_or_and_brackets_before_both) {
    Asked ask;  // age 34, comb_count 10
    BOOST_CHECK(ask("age_years > 30 or comb_count > 20 and age_years < 20").truth == Truth::yes);
    BOOST_CHECK(ask("(age_years > 30 or comb_count > 20) and age_years < 20").truth == Truth::no);
    BOOST_CHECK(ask("not age_years > 40 and comb_count = 10").truth == Truth::yes);
    BOOST_CHECK(ask("texture = \"medium\" and texture != \"fine\"").truth == Truth::yes);
}

BOOST_AUTO_TEST_CASE(only_facts_that_matter_are_asked) {
    Asked ask;
    ask.state.age_years.reset();
    ask.state.comb_count.reset();
    const Outcome open = ask("age_years < 18 and comb_count > 5 and age_years > 2");
    BOOST_CHECK(open.truth == Truth::unknown);
    BOOST_REQUIRE_EQUAL(open.unknown.size(), 2);
    BOOST_CHECK_EQUAL(open.unknown[0].fact->name, "age_years");
    BOOST_CHECK(ask("age_years < 18 and dye_reaction").truth == Truth::no);
    BOOST_CHECK(ask("age_years < 18 or not dye_reaction").truth == Truth::yes);
}

BOOST_AUTO_TEST_CASE(an_interval_over_the_limit_is_unknown) {
    Asked ask;
    ask.state.own_rate = GrowthRate{300, 10, "invented"};
    PlannedService retouch = people::prepared(Kind::hydroxide);
    ask.state.history.services = {people::past(Kind::hydroxide, 40)};  // 12 mm, 11.2 to 12.8
    ask.plan.services = {retouch};
    const auto truth = [&](const std::string& text) {
        Context context;
        context.state = &ask.state;
        context.plan = &ask.plan;
        context.service = ask.plan.services.data();
        context.scope = Scope::service;
        return Expression::parse(text)->evaluate(context).truth;
    };
    BOOST_CHECK(truth("new_growth_mm < 12") == Truth::unknown);
    BOOST_CHECK(truth("new_growth_mm < 11") == Truth::no);
    BOOST_CHECK(truth("new_growth_mm < 13") == Truth::yes);
    BOOST_CHECK(truth("new_growth_mm >= 13") == Truth::no);
}

BOOST_AUTO_TEST_CASE(what_never_was_is_a_no_not_a_question) {
    Asked ask;
    BOOST_CHECK(ask("days_since(hydroxide) < 14").truth == Truth::no);
    BOOST_CHECK(ask("days_since(hydroxide) >= 14").truth == Truth::no);
    BOOST_CHECK(ask("ever(hydroxide)").truth == Truth::no);
    ask.state.history.complete_since.reset();
    BOOST_CHECK(ask("days_since(hydroxide) < 14").truth == Truth::unknown);
    BOOST_CHECK(ask("ever(hydroxide)").truth == Truth::unknown);
    // Complete for 100 days: none in that time, and before that perhaps one, perhaps none.
    ask.state.history.complete_since = people::today - 100;
    BOOST_CHECK(ask("days_since(hydroxide) < 14").truth == Truth::no);
    BOOST_CHECK(ask("days_since(hydroxide) >= 100").truth == Truth::unknown);
}

BOOST_AUTO_TEST_CASE(mistakes_are_told_with_their_place) {
    BOOST_CHECK_EQUAL(problem("pregnat"), "unknown fact 'pregnat' (at character 1).");
    BOOST_CHECK_EQUAL(problem("had(hydroxyde)"), "unknown family 'hydroxyde' (at character 5).");
    BOOST_CHECK_EQUAL(problem("had and scalp_pain"), "'had' needs a family in brackets (at character 5).");
    BOOST_CHECK_EQUAL(problem("scalp_pain(hydroxide)"), "'scalp_pain' takes no family (at character 11).");
    BOOST_CHECK_EQUAL(problem("age_years"), "'age_years' must be compared (at character 10).");
    BOOST_CHECK_EQUAL(problem("age_years < old"), "'old' is no number (at character 13).");
    BOOST_CHECK_EQUAL(problem("texture = \"silky\""), "'silky' is no word of 'texture' (at character 11).");
    BOOST_CHECK_EQUAL(problem("texture < \"fine\""), "a word is only = or != (at character 11).");
    BOOST_CHECK_EQUAL(problem("(scalp_pain"), "')' is missing (at character 12).");
    BOOST_CHECK_EQUAL(problem("scalp_pain scalp_pain"), "'scalp_pain' was not expected (at character 12).");
    BOOST_CHECK_EQUAL(problem("scalp_pain and"), "a fact is missing (at character 15).");
    BOOST_CHECK_EQUAL(problem("texture = \"fine"), "a quote is not closed (at character 11).");
    BOOST_CHECK_EQUAL(problem(""), "a fact is missing (at character 1).");
    BOOST_CHECK(!problem(std::string(100, '(') + "scalp_pain" + std::string(100, ')')).empty());
    BOOST_CHECK(!problem("not " + std::string(3, '\xff')).empty());
}

BOOST_AUTO_TEST_SUITE_END()
