// Weighted kappa against published tables.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "change/change.h"

using namespace kempt::change;

namespace {

using Table = std::vector<std::vector<double>>;

Table weights(size_t k, double power) {
    Table table(k, std::vector<double>(k));
    for (size_t i = 0; i < k; ++i)
        for (size_t j = 0; j < k; ++j)
            table[i][j] = power == 0 ? double(i != j) : std::pow(std::abs(double(i) - double(j)), power);
    return table;
}

void check(const Kappa& kappa, double expected, double standard_error) {
    BOOST_TEST(std::abs(kappa.kappa - expected) < 6e-9);
    if (standard_error > 0) BOOST_TEST(std::abs(kappa.standard_error - standard_error) < 6e-7);
}

}  // namespace

BOOST_AUTO_TEST_CASE(cohen_1968_table_1) {
    // Psychol Bull 70:213-220: .492 and .348; eight digits and standard errors computed from the table.
    const Table counts{{88, 14, 18}, {10, 40, 10}, {2, 6, 12}};
    check(weighted_kappa(counts, weights(3, 0)), 0.49152542, 0.051002);
    check(weighted_kappa(counts, {{0, 1, 3}, {1, 0, 6}, {3, 6, 0}}), 0.34782609, 0.075504);
    check(weighted_kappa(counts, weights(3, 1)), 0.47368421, 0);
    check(weighted_kappa(counts, weights(3, 2)), 0.45454545, 0);
}

BOOST_AUTO_TEST_CASE(fleiss_cohen_and_everitt_1969) {
    // Psychol Bull 72:323-327: .429 and .507.
    const Table counts{{106, 10, 4}, {22, 28, 10}, {2, 12, 6}};
    check(weighted_kappa(counts, weights(3, 0)), 0.42857143, 0.053711);
    check(weighted_kappa(counts, {{0, 1, 0.5556}, {1, 0, 0.3333}, {0.5556, 0.3333, 0}}), 0.50706996, 0.056994);
    check(weighted_kappa(counts, weights(3, 1)), 0.49230769, 0.050719);
    check(weighted_kappa(counts, weights(3, 2)), 0.56666667, 0.055666);
}

BOOST_AUTO_TEST_CASE(landis_and_koch_1977) {
    // Biometrics 33:159-174, diagnoses in two cities; kappas and standard errors by the R package vcd.
    const Table winnipeg{{38, 5, 0, 1}, {33, 11, 3, 0}, {10, 14, 5, 6}, {3, 7, 3, 10}};
    check(weighted_kappa(winnipeg, weights(4, 0)), 0.20794246, 0.05045537);
    check(weighted_kappa(winnipeg, weights(4, 1)), 0.37973055, 0.05166683);
    check(weighted_kappa(winnipeg, weights(4, 2)), 0.52457646, 0.06005510);
    const Table new_orleans{{5, 3, 0, 0}, {3, 11, 4, 0}, {2, 13, 3, 4}, {1, 2, 4, 14}};
    check(weighted_kappa(new_orleans, weights(4, 0)), 0.29651657, 0.07850387);
    check(weighted_kappa(new_orleans, weights(4, 1)), 0.47727273, 0.07303099);
    check(weighted_kappa(new_orleans, weights(4, 2)), 0.62558140, 0.07873187);
}

BOOST_AUTO_TEST_CASE(nine_point_ratings_of_the_psych_documentation) {
    const int first[] = {1, 2, 3, 4, 5, 6, 7, 8, 9}, second[] = {1, 3, 1, 6, 1, 5, 5, 6, 7};
    Table counts(9, std::vector<double>(9, 0));
    for (size_t i = 0; i < 9; ++i) ++counts[size_t(first[i] - 1)][size_t(second[i] - 1)];
    BOOST_TEST(std::abs(weighted_kappa(counts, weights(9, 0)).kappa) < 0.005);
    BOOST_TEST(std::abs(weighted_kappa(counts, weights(9, 2)).kappa - 0.677966) < 6e-7);
    BOOST_TEST(std::abs(weighted_kappa(counts, weights(9, 1)).kappa - 0.394958) < 6e-7);
}

BOOST_AUTO_TEST_CASE(grades_given_twice_are_weighed_by_steps_apart) {
    const auto same = grade_agreement({{0, 0}, {1, 1}, {4, 4}});
    BOOST_REQUIRE(same.has_value());
    BOOST_TEST(same->kappa == 1);
    const auto near_miss = grade_agreement({{0, 1}, {1, 1}, {2, 3}, {4, 4}, {0, 0}});
    const auto far_miss = grade_agreement({{0, 4}, {1, 1}, {2, 0}, {4, 4}, {0, 0}});
    BOOST_TEST(near_miss->kappa > far_miss->kappa);
    BOOST_TEST(!grade_agreement({}).has_value());
    BOOST_TEST(!grade_agreement({{2, 2}}).has_value());
    BOOST_TEST(!grade_agreement({{2, 2}, {2, 2}}).has_value());
    BOOST_TEST(!grade_agreement({{2, 5}, {2, 2}}).has_value());
    BOOST_TEST(std::isnan(weighted_kappa({{1, 2}}, {{0, 1}}).kappa));
}
