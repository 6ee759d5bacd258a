// Quantiles and exact distributions against published tables.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "change/change.h"

using namespace kempt::change;

BOOST_AUTO_TEST_CASE(student_t_quantiles_give_the_table_values) {
    const double infinite = std::numeric_limits<double>::infinity();
    // Two-sided 5 % and one-sided 5 % points (Fisher & Yates; NIST/SEMATECH e-Handbook 1.3.6.7.2), to the digits
    // printed there; df 16 as Bland & Altman 1986 need it, to seven digits.
    const double table[][4] = {{0.975, 1, 12.706, 5e-4}, {0.975, 2, 4.303, 5e-4},          {0.975, 3, 3.182, 5e-4},
                               {0.975, 4, 2.776, 5e-4},  {0.975, 5, 2.571, 5e-4},          {0.975, 8, 2.306, 5e-4},
                               {0.975, 10, 2.228, 5e-4}, {0.975, 16, 2.119905, 5e-7},      {0.975, 30, 2.042, 5e-4},
                               {0.975, 60, 2.000, 5e-4}, {0.975, 100, 1.984, 5e-4},        {0.95, 1, 6.314, 5e-4},
                               {0.95, 7, 1.895, 5e-4},   {0.95, 20, 1.725, 5e-4},          {0.995, 5, 4.032, 5e-4},
                               {0.999, 10, 4.144, 5e-4}, {0.975, infinite, 1.959964, 5e-7}};
    for (const auto& [p, df, t, tolerance] : table) {
        BOOST_TEST(std::abs(student_t_quantile(p, df) - t) < tolerance, "p " << p << " df " << df);
        BOOST_TEST(std::abs(student_t_quantile(1 - p, df) + t) < tolerance);
    }
}

BOOST_AUTO_TEST_CASE(student_t_quantiles_equal_the_closed_forms_of_1_2_and_4_degrees) {
    const double pi = 3.14159265358979323846;
    for (const double p : {0.5001, 0.6, 0.75, 0.9, 0.975, 0.999, 0.99999}) {
        const double one = std::tan(pi * (p - 0.5));
        BOOST_TEST(std::abs(student_t_quantile(p, 1) / one - 1) < 1e-9);
        const double alpha = 4 * p * (1 - p);
        const double two = 2 * (p - 0.5) * std::sqrt(2 / alpha);
        BOOST_TEST(std::abs(student_t_quantile(p, 2) / two - 1) < 1e-9);
        const double q = std::cos(std::acos(std::sqrt(alpha)) / 3) / std::sqrt(alpha);
        BOOST_TEST(std::abs(student_t_quantile(p, 4) / (2 * std::sqrt(q - 1)) - 1) < 1e-8);
    }
}

BOOST_AUTO_TEST_CASE(student_t_goes_over_into_the_normal_without_a_step) {
    for (const double p : {0.9, 0.975, 0.9995}) {
        BOOST_TEST(std::abs(student_t_quantile(p, 99999) - student_t_quantile(p, 100001)) < 1e-8);
        BOOST_TEST(student_t_quantile(p, 1e9) >= normal_quantile(p));
        double before = std::numeric_limits<double>::infinity();
        for (const double df : {0.3, 1.0, 2.5, 7.7, 29.0, 300.0, 1e4, 1e6}) {
            BOOST_TEST(student_t_quantile(p, df) < before);
            before = student_t_quantile(p, df);
        }
    }
}

BOOST_AUTO_TEST_CASE(arguments_outside_the_range_give_no_number) {
    BOOST_TEST(std::isnan(student_t_quantile(1.1, 5)));
    BOOST_TEST(std::isnan(student_t_quantile(0.9, 0)));
    BOOST_TEST(std::isnan(student_t_quantile(std::nan(""), 5)));
    BOOST_TEST(std::isnan(normal_quantile(-0.1)));
    BOOST_TEST(std::isinf(student_t_quantile(1, 5)));
    BOOST_TEST(student_t_quantile(0.5, 5) == 0);
}

BOOST_AUTO_TEST_CASE(normal_quantiles_give_the_table_values_and_come_back) {
    // Abramowitz & Stegun, table 26.5, to the digits printed.
    const double table[][2] = {{0.5, 0},           {0.9, 1.28155157},  {0.95, 1.64485363}, {0.975, 1.95996398},
                               {0.99, 2.32634787}, {0.995, 2.57582930}};
    for (const auto& [p, z] : table) BOOST_TEST(std::abs(normal_quantile(p) - z) < 6e-9);
    for (double p = 1e-12; p < 1; p = p < 0.01 ? p * 10 : p + 0.01)
        BOOST_TEST(std::abs(normal_cdf(normal_quantile(p)) / p - 1) < 1e-10);
}

BOOST_AUTO_TEST_CASE(f_tail_gives_the_published_p_values) {
    // Shrout & Fleiss 1979 data: F(5,18) = 1.79468, p 0.16477; F(5,15) = 11.02725, p 0.00013457 (psych package).
    BOOST_TEST(std::abs(f_upper_tail(1.79468, 5, 18) - 0.16477) < 1e-5);
    BOOST_TEST(std::abs(f_upper_tail(11.02725, 5, 15) - 0.00013457) < 1e-8);
    // F(1, df) is t squared.
    BOOST_TEST(std::abs(f_upper_tail(2.119905 * 2.119905, 1, 16) - 0.05) < 1e-6);
    BOOST_TEST(f_upper_tail(0, 3, 4) == 1);
}

BOOST_AUTO_TEST_CASE(mann_kendall_small_samples_give_the_exact_probabilities) {
    // Kendall 1975, appendix table 1 (one-sided P(S >= s)): n = 4, s = 4: 0.167, 6: 0.042; n = 5, s = 6: 0.117,
    // 8: 0.042, 10: 0.0083; n = 8, s = 16: 0.031; n = 10, s = 21: 0.036.
    const double table[][4] = {{4, 4, 0.167, 5e-4},   {4, 6, 0.042, 5e-4},  {5, 6, 0.117, 5e-4},  {5, 8, 0.042, 5e-4},
                               {5, 10, 0.0083, 5e-5}, {8, 16, 0.031, 5e-4}, {10, 21, 0.036, 5e-4}};
    for (const auto& [n, s, one_sided, tolerance] : table)
        BOOST_TEST(std::abs(mann_kendall_exact_p(int(s), int(n)) / 2 - one_sided) < tolerance, "n " << n << " S " << s);
    BOOST_TEST(std::abs(mann_kendall_exact_p(21, 7) - 2.0 / 5040) < 1e-15);
    BOOST_TEST(mann_kendall_exact_p(-6, 5) == mann_kendall_exact_p(6, 5));
    BOOST_TEST(mann_kendall_exact_p(0, 5) == 1);
    BOOST_TEST(std::isnan(mann_kendall_exact_p(3, 11)));
}

BOOST_AUTO_TEST_CASE(exact_slope_ranks_hold_the_confidence_asked_for) {
    // From the same table: four visits cannot give 95 %, five give the extreme slopes, six the second ones.
    BOOST_TEST(exact_slope_rank(3, 0.95) == 0);
    BOOST_TEST(exact_slope_rank(4, 0.95) == 0);
    BOOST_TEST(exact_slope_rank(4, 11.0 / 12) == 1);
    BOOST_TEST(exact_slope_rank(5, 0.95) == 1);
    BOOST_TEST(exact_slope_rank(6, 0.95) == 2);
    BOOST_TEST(exact_slope_rank(7, 0.93) == 5);
}
