// The rule file: what it must hold, and how mistakes in it are told.
#include <boost/test/unit_test.hpp>
#include <random>
#include <set>

#include "care/home_care.h"
#include "care/rules.h"

using namespace kempt::care;

namespace {

const std::string head =
    "[source book]\ncite = A book of 1999\nread = text\n[caution hands]\nsay = Wear gloves always.\n"
    "source = common-practice\n";  // 6 lines
const std::string rule =
    "[rule wound]\nlevel = stop\nscope = service\nwhen = service(dye) and scalp_wound\n"
    "reason = There is a wound.\nremedy = Wait for it to heal.\nsource = book\n";

std::string problem(const std::string& text) {
    const auto rules = load_rules(text);
    return rules ? "" : rules.error().what;
}

std::string with(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    BOOST_REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(rules)

BOOST_AUTO_TEST_CASE(kempts_own_rules_load) {
    const auto& own = built_in_rules();
    BOOST_REQUIRE_MESSAGE(own.ok(), (own ? std::string() : own.error().sentence()));
    BOOST_CHECK_GE(own->rules.size(), 50);
    std::set<std::string> levels;
    for (const Rule& one : own->rules) {
        BOOST_CHECK(!one.source.empty());
        BOOST_CHECK_EQUAL(one.published, one.source.find(common_practice) != 0);
        levels.insert(std::string(word_of(one.level)));
    }
    BOOST_CHECK_EQUAL(levels.size(), 3);
    BOOST_CHECK(own->find("wet-iron") && !own->find("no-such-rule"));
    const auto& home = built_in_home_care();
    BOOST_REQUIRE_MESSAGE(home.ok(), (home ? std::string() : home.error().sentence()));
    BOOST_CHECK_GE(home->tips.size(), 15);
}

BOOST_AUTO_TEST_CASE(a_wait_is_the_one_that_the_condition_names) {
    for (const Rule& one : built_in_rules()->rules) {
        if (!one.wait_days) continue;
        const std::string said =
            "days_since(" + std::string(one.wait_after->name) + ") < " + std::to_string(*one.wait_days);
        BOOST_CHECK_MESSAGE(one.condition.find(said) != std::string::npos, one.id);
    }
}

// Cautions that every answer carries (design 6).
BOOST_AUTO_TEST_CASE(the_usual_cautions_are_there) {
    std::string all;
    for (const Caution& caution : built_in_rules()->always) all += caution.text;
    for (const char* word :
         {"professionals", "maker's directions", "strand test", "patch test", "burns", "licensing", "doctor"})
        BOOST_CHECK_MESSAGE(all.find(word) != std::string::npos, word);
}

BOOST_AUTO_TEST_CASE(a_good_file_loads_with_its_long_lines_joined) {
    const auto rules = load_rules(head + "# a remark\n\n" + with(rule, "a wound.", "a\n    wound."));
    BOOST_REQUIRE(rules);
    BOOST_REQUIRE_EQUAL(rules->rules.size(), 1);
    BOOST_CHECK_EQUAL(rules->rules[0].reason, "There is a wound.");
    BOOST_CHECK_EQUAL(rules->rules[0].source, "A book of 1999");
    BOOST_CHECK_EQUAL(rules->rules[0].line, 9);
    const auto both = load_rules(head + with(rule, "= book", "= book, common-practice"));
    BOOST_REQUIRE(both);
    BOOST_CHECK_EQUAL(both->rules[0].source, "A book of 1999; the rest common practice, no source");
}

BOOST_AUTO_TEST_CASE(mistakes_are_told_with_their_line) {
    const auto told = [&](const std::string& from, const std::string& to) {
        return problem(head + with(rule, from, to));
    };
    BOOST_CHECK_EQUAL(told("scalp_wound", "scalp_hole"),
                      "Line 10 of the rules: condition: unknown fact 'scalp_hole' (at character 18).");
    BOOST_CHECK_EQUAL(told("= stop", "= halt"), "Line 8 of the rules: 'halt' is no level.");
    BOOST_CHECK_EQUAL(told("= service\n", "= head\n"), "Line 9 of the rules: 'head' is no scope.");
    BOOST_CHECK_EQUAL(told("scope = service", "scope = client"),
                      "Line 10 of the rules: the condition needs a planned service, the scope is client.");
    BOOST_CHECK_EQUAL(told("= book", "= bock"), "Line 13 of the rules: unknown source 'bock'.");
    BOOST_CHECK_EQUAL(told("source = book\n", ""), "Line 7 of the rules: 'source' is missing.");
    BOOST_CHECK_EQUAL(told("= book", "="), "Line 13 of the rules: 'source' is empty.");
    BOOST_CHECK_EQUAL(told("remedy = Wait for it to heal.", "remedy = Wait"),
                      "Line 12 of the rules: 'remedy' is a full sentence with its full stop.");
    BOOST_CHECK_EQUAL(told("Wait for it to heal.", "Otherwise this is safe."),
                      "Line 12 of the rules: nothing is called safe.");
    BOOST_CHECK_EQUAL(told("remedy", "cure"), "Line 12 of the rules: unknown key 'cure' in a rule.");
    BOOST_CHECK_EQUAL(told("source = book", "source = book\nchoose = moonlight"),
                      "Line 14 of the rules: unknown kind of service 'moonlight'.");
    BOOST_CHECK_EQUAL(told("source = book", "source = book\nwait_days = 3"),
                      "Line 7 of the rules: wait_days and wait_after belong together.");
    BOOST_CHECK_EQUAL(told("source = book", "source = book\nwait_days = 3.5\nwait_after = dye"),
                      "Line 14 of the rules: wait_days is a whole number of days, 1 to 3650.");
    BOOST_CHECK_EQUAL(problem(head + rule + rule), "Line 14 of the rules: 'wound' is there twice.");
    BOOST_CHECK_EQUAL(problem(head + rule + "[poem one]\n"), "Line 14 of the rules: unknown sort of record 'poem'.");
    BOOST_CHECK_EQUAL(problem(head + with(rule, "= book", "= common-practice")),
                      "Line 1 of the rules: no rule uses source 'book'.");
    BOOST_CHECK_EQUAL(problem(head + rule + "level = stop\nlevel = note\n"),
                      "Line 14 of the rules: 'level' is there twice.");
    BOOST_CHECK_EQUAL(problem("level = stop\n"), "Line 1 of the rules: a line outside a record.");
    BOOST_CHECK_EQUAL(problem(head + rule + "\tx\n"), "Line 14 of the rules: a tab or control character.");
    BOOST_CHECK_EQUAL(problem(head), "Line 1 of the rules: there is no rule.");
    BOOST_CHECK_EQUAL(problem(rule), "Line 7 of the rules: unknown source 'book'.");
    BOOST_CHECK(!problem(std::string(2 << 20, 'x')).empty());
}

BOOST_AUTO_TEST_CASE(promises_are_found_in_any_dress) {
    for (const char* text : {"This is safe.", "Safely done.", "a harmless dye", "for your safety", "SAFER than that"})
        BOOST_CHECK_MESSAGE(promises_safety(text), text);
    for (const char* text : {"Read the safety data sheet.", "unsafe is no promise", "Rinse off."})
        BOOST_CHECK_MESSAGE(!promises_safety(text), text);
}

// A record file cut off or overwritten anywhere gives rules or an error, never a crash.
BOOST_AUTO_TEST_CASE(broken_files_end_in_an_error_value) {
    std::mt19937_64 engine(7);
    const std::string text = head + rule;
    for (int i = 0; i < 3000; ++i) {
        std::string broken = text.substr(0, engine() % text.size());
        for (int k = 0; k < 3 && !broken.empty(); ++k) broken[engine() % broken.size()] = static_cast<char>(engine());
        const auto rules = load_rules(broken);
        if (!rules) BOOST_CHECK_EQUAL(rules.error().code, "rules-invalid");
    }
}

BOOST_AUTO_TEST_SUITE_END()
