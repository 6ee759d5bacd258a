// docs/care-rules.md is what the data says. KEMPT_WRITE_CARE_RULES=1 writes it anew.
#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <fstream>
#include <iterator>

#include "care/rules_document.h"

using namespace kempt::care;

BOOST_AUTO_TEST_SUITE(document)

BOOST_AUTO_TEST_CASE(the_page_of_the_rules_is_up_to_date) {
    const char* path = "docs/care-rules.md";
    const std::string made = rules_document(*built_in_rules(), *built_in_home_care());
    if (std::getenv("KEMPT_WRITE_CARE_RULES")) {
        std::ofstream out(path, std::ios::binary);
        out << made;
        BOOST_REQUIRE(out.good());
    }
    std::ifstream in(path, std::ios::binary);
    const std::string kept{std::istreambuf_iterator<char>(in), {}};
    BOOST_CHECK_MESSAGE(kept == made, "docs/care-rules.md is out of date: write it with KEMPT_WRITE_CARE_RULES=1");
}

BOOST_AUTO_TEST_CASE(every_rule_stands_in_a_row_with_its_source) {
    const std::string made = rules_document(*built_in_rules(), *built_in_home_care());
    for (const Rule& rule : built_in_rules()->rules) {
        const auto at = made.find("| `" + rule.id + "` |");
        BOOST_REQUIRE_MESSAGE(at != std::string::npos, rule.id);
        const std::string row = made.substr(at, made.find('\n', at) - at);
        BOOST_CHECK_MESSAGE(row.find("| " + rule.source + " |") != std::string::npos, rule.id);
    }
    // Nothing is called safe; two authorities have the word in their names.
    std::string plain = made;
    for (const std::string name : {"Safety and Health", "safety agency"})
        for (auto at = plain.find(name); at != std::string::npos; at = plain.find(name)) plain.erase(at, name.size());
    BOOST_CHECK(!promises_safety(plain));
}

BOOST_AUTO_TEST_SUITE_END()
