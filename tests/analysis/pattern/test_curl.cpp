#include <boost/test/unit_test.hpp>

#include "pattern/pattern.h"

using namespace kempt;

BOOST_AUTO_TEST_SUITE(curl)

BOOST_AUTO_TEST_CASE(each_step_of_the_scale_is_twice_as_wide_as_the_one_before) {
    pattern::Curl before = pattern::curl_of(0.5);
    BOOST_TEST((before == pattern::Curl::very_tight));
    std::vector<double> steps;
    for (double mm = 0.5; mm < 300; mm += 0.01)
        if (const pattern::Curl now = pattern::curl_of(mm); now != before) steps.push_back(mm), before = now;
    BOOST_REQUIRE_EQUAL(steps.size(), 5u);
    for (std::size_t i = 1; i < steps.size(); ++i)
        BOOST_TEST(steps[i] / steps[i - 1] == 2.0, boost::test_tools::tolerance(0.01));
    BOOST_TEST((before == pattern::Curl::straight));
}

BOOST_AUTO_TEST_CASE(words_are_plain_and_each_its_own) {
    std::vector<std::string> words;
    for (const double mm : {3.0, 9.0, 18.0, 36.0, 70.0, 200.0}) words.push_back(pattern::word_of(pattern::curl_of(mm)));
    for (std::size_t i = 0; i < words.size(); ++i) {
        BOOST_TEST(words[i].find_first_of("0123456789") == std::string::npos);
        for (std::size_t k = 0; k < i; ++k) BOOST_TEST(words[i] != words[k]);
    }
}

BOOST_AUTO_TEST_CASE(stretch_comes_with_the_interval_of_both_lengths) {
    const Quantity rest{"strand_length", 100, "mm", 99, 101}, pulled{"strand_length", 130, "mm", 128.7, 131.3};
    const auto found = pattern::stretch(rest, pulled);
    BOOST_REQUIRE(found.ok());
    BOOST_TEST(found->value == 30.0, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(found->unit == "%");
    // 1 % of each length: sqrt 2 % of the ratio 1.3, 1.84 points.
    BOOST_TEST(found->high - found->value == 1.85, boost::test_tools::tolerance(0.02));
    BOOST_TEST(found->value - found->low == 1.83, boost::test_tools::tolerance(0.02));
}

// Common practice, no source: sound hair stretches by about 20 % dry and up to 50 % wet. Such stretches stay well
// apart from each other at the 2 % wanted of lengths.
BOOST_AUTO_TEST_CASE(common_stretches_are_told_apart) {
    const auto of = [](double from, double to) {
        return pattern::stretch({"strand_length", from, "mm", from * 0.98, from * 1.02},
                                {"strand_length", to, "mm", to * 0.98, to * 1.02});
    };
    const auto dry = of(120, 144), wet = of(120, 180), none = of(120, 121);
    BOOST_TEST(dry->high < wet->low);
    BOOST_TEST(dry->low > 15);
    BOOST_TEST(none->low < 0);
}

BOOST_AUTO_TEST_CASE(a_length_that_is_not_positive_gives_no_stretch) {
    const Quantity good{"strand_length", 100, "mm", 99, 101}, none{"strand_length", 0, "mm", 0, 0};
    BOOST_TEST(pattern::stretch(none, good).error().code == "length-not-positive");
    BOOST_TEST(!pattern::stretch(good, none).ok());
}

BOOST_AUTO_TEST_SUITE_END()
