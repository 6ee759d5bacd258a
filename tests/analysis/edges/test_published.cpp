// The demo's invented heads stay within what has been published of real ones.
#include <boost/test/unit_test.hpp>
#include <fstream>
#include <iterator>
#include <string>

namespace {

// A number of a flat JSON file.
double number(const std::string& file, const std::string& name) {
    std::ifstream in("sample-images/" + file);
    const std::string text{std::istreambuf_iterator<char>(in), {}};
    const auto at = text.find("\"" + name + "\": ");
    BOOST_REQUIRE_MESSAGE(at != std::string::npos, file << " has no " << name);
    return std::stod(text.substr(at + name.size() + 4));
}

// Loussouarn, El Rawadi & Genain 2005, Int J Dermatol 44(S1):6-9 (quoted in a hair-science textbook chapter): hairs per
// cm2, mean +- SD: African 161 +- 50, Caucasian 226 +- 73.
constexpr double african_mean = 161, african_sd = 50, caucasian_mean = 226, caucasian_sd = 73;

}  // namespace

BOOST_AUTO_TEST_SUITE(published)

BOOST_AUTO_TEST_CASE(thinned_edges_start_below_the_published_range_and_end_inside_it) {
    const double first = number("imani/01-left-temple-1.truth.json", "roots_per_cm2"),
                 last = number("imani/06-left-temple-1.truth.json", "roots_per_cm2");
    BOOST_CHECK_LT(first, african_mean - 2 * african_sd);
    BOOST_CHECK_GT(last, african_mean - 2 * african_sd);
    BOOST_CHECK_LT(last, african_mean + 2 * african_sd);
}

BOOST_AUTO_TEST_CASE(no_demo_head_is_denser_than_published_ones) {
    for (const char* file : {"imani/06-right-temple-1", "imani/06-nape-2", "freya/04-front-1", "noor/01-tilted"})
        BOOST_CHECK_LT(number(std::string(file) + ".truth.json", "roots_per_cm2"), caucasian_mean + 2 * caucasian_sd);
}

// A straight strand that leaves the scalp before 5 mm crosses the 5 mm line about once: strands per cm of line are
// bounded by the roots in the half centimetre before it (and a little more for strays).
BOOST_AUTO_TEST_CASE(straight_strands_at_the_line_agree_with_the_roots_before_it) {
    const double roots = number("freya/01-front-1.truth.json", "roots_per_cm2"),
                 strands = number("freya/01-front-1.truth.json", "edge_strands");
    BOOST_CHECK_LT(strands, 1.3 * roots * 0.5);
    BOOST_CHECK_GT(strands, 0.15 * roots * 0.5);
}

BOOST_AUTO_TEST_SUITE_END()
