// Lengths of which some are least ones, against a published example.
#include "combings/censored.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

using namespace kempt::combings;

namespace {

// Weeks in remission of 21 patients on 6-mercaptopurine, 12 of them still in it when last seen (E. J. Freireich et al.,
// Blood 21, 1963; data and product-limit estimates as textbooks of survival analysis print them, from memory).
const std::vector<SeenLength> remission = {{6, 0},  {6, 0},  {6, 0},  {6, 1},  {7, 0},  {9, 1},  {10, 0},
                                           {10, 1}, {11, 1}, {13, 0}, {16, 0}, {17, 1}, {19, 1}, {20, 1},
                                           {22, 0}, {23, 0}, {25, 1}, {32, 1}, {32, 1}, {34, 1}, {35, 1}};

double longer_than(double weeks) {
    const auto share = share_longer(remission);
    double found = 1;
    for (size_t i = 0; i < remission.size(); ++i)
        if (remission[i].mm <= weeks) found = share[i];
    return found;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(censored)

BOOST_AUTO_TEST_CASE(the_product_limit_estimate_of_the_remission_times_is_the_published_one) {
    const double published[][2] = {{6, 0.857},  {7, 0.807},  {10, 0.753}, {13, 0.690},
                                   {16, 0.627}, {22, 0.538}, {23, 0.448}, {35, 0.448}};
    for (const auto& [weeks, share] : published)
        BOOST_TEST(longer_than(weeks) == share, boost::test_tools::tolerance(0.001));
    BOOST_TEST(std::abs(length_at(remission, 0.5) - 23) < 0.1);  // published: 23 weeks
}

BOOST_AUTO_TEST_CASE(whole_lengths_alone_have_their_plain_median) {
    BOOST_TEST(length_at({{3, 0}, {5, 0}, {11, 0}}, 0.5) == 5);
    BOOST_TEST(length_at({{3, 0}, {5, 0}, {11, 0}, {12, 0}}, 0.5) == 8);
    BOOST_TEST(length_at({{7, 0}}, 0.5) == 7);
    BOOST_TEST(length_at({{3, 0}, {5, 0}}, 0) == 3);
    BOOST_TEST(length_at({{3, 0}, {5, 0}}, 0.99) == 5);
}

BOOST_AUTO_TEST_CASE(a_least_length_moves_the_median_up_by_its_chance) {
    // 10, 20+, 30, 40: of the share of 3/4 beyond 10, 30 and 40 take half each, so that the steps are 1/4, 3/8, 3/8.
    BOOST_TEST(length_at({{10, 0}, {20, 1}, {30, 0}, {40, 0}}, 0.4375) == 30, boost::test_tools::tolerance(1e-9));
    double last = 0;
    for (const double chance : {0.0, 0.3, 0.6, 1.0}) {
        const double now = length_at({{10, 0}, {20, chance}, {30, 0}, {40, 0}}, 0.5);
        BOOST_TEST(now > last);
        last = now;
    }
}

BOOST_AUTO_TEST_CASE(where_half_were_never_seen_to_end_there_is_no_median) {
    BOOST_TEST(std::isinf(length_at({{10, 0}, {20, 1}, {30, 1}}, 0.5)));
    BOOST_TEST(std::isfinite(length_at({{10, 0}, {20, 1}, {30, 1}}, 0.2)));
}

BOOST_AUTO_TEST_SUITE_END()
