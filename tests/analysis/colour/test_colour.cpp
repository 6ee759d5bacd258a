// Colour against published tables: the transfer function, Lab, CIEDE2000, Display P3 and the typology angle.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

#include "colour/colour.h"
#include "reference/read_csv.h"

using namespace kempt::colour;
using kempt::reference::read_csv;

namespace {

double apart(const cv::Vec3d& one, const cv::Vec3d& two) {
    return cv::norm(one - two);
}

cv::Vec3d lab_vector(const Lab& lab) {
    return {lab.L, lab.a, lab.b};
}

Lab lab_of_codes(double r, double g, double b) {
    return lab_from_linear_srgb({linear_from_srgb(r / 255), linear_from_srgb(g / 255), linear_from_srgb(b / 255)});
}

}  // namespace

BOOST_AUTO_TEST_CASE(transfer_function_gives_the_values_of_iec_61966_2_1) {
    // IEC 61966-2-1, decode of n/255; tolerance: the last digit given.
    const double decoded[][2] = {{1, 0.00030353},   {10, 0.00303527},  {11, 0.00334654},  {50, 0.03189603},
                                 {64, 0.05126946},  {100, 0.12743768}, {128, 0.21586050}, {180, 0.45641102},
                                 {200, 0.57758044}, {254, 0.99110210}};
    for (const auto& [code, light] : decoded) BOOST_TEST(std::abs(linear_from_srgb(code / 255) - light) < 6e-9);
    BOOST_TEST(std::abs(linear_from_srgb(0.5) - 0.21404114) < 6e-9);
    BOOST_TEST(std::abs(srgb_from_linear(0.5) - 0.73535698) < 6e-9);
    BOOST_TEST(std::abs(srgb_from_linear(0.18) - 0.46135613) < 6e-9);
    BOOST_TEST(linear_from_srgb(0) == 0);
    BOOST_TEST(std::abs(linear_from_srgb(1) - 1) < 1e-15);
}

BOOST_AUTO_TEST_CASE(transfer_function_comes_back_from_a_round_trip_also_outside_0_to_1) {
    for (int i = -500; i <= 1500; ++i) {
        const double code = i / 1000.0;
        // 1e-7 where the two printed thresholds of the standard do not meet exactly.
        BOOST_TEST(std::abs(srgb_from_linear(linear_from_srgb(code)) - code) < 2e-7);
    }
    for (int i = 1; i <= 1500; ++i) BOOST_TEST(linear_from_srgb(i / 1000.0) > linear_from_srgb((i - 1) / 1000.0));
}

BOOST_AUTO_TEST_CASE(encodings_hold_the_curve_for_every_code) {
    for (const bool sixteen : {false, true}) {
        const auto encoding = srgb_encoding(sixteen);
        const size_t codes = sixteen ? 65536 : 256;
        for (const auto& table : encoding.linear) {
            BOOST_REQUIRE(table.size() == codes);
            for (size_t code = 0; code < codes; code += sixteen ? 257 : 1)
                BOOST_TEST(std::abs(double(table[code]) - linear_from_srgb(double(code) / double(codes - 1))) < 1e-7);
        }
        BOOST_TEST(cv::norm(encoding.srgb_from_device - cv::Matx33f::eye()) == 0);
    }
}

BOOST_AUTO_TEST_CASE(lab_of_srgb_colours_agrees_with_the_table) {
    const auto table = read_csv("srgb_lab.csv");
    BOOST_REQUIRE(table.rows.size() == 25);
    for (const auto& row : table.rows) {
        const Lab lab = lab_of_codes(row[0], row[1], row[2]);
        BOOST_TEST(apart(lab_vector(lab), {row[3], row[4], row[5]}) < 2e-3);
    }
}

BOOST_AUTO_TEST_CASE(greys_have_no_colour) {
    for (int code = 0; code <= 255; ++code) {
        const Lab lab = lab_of_codes(code, code, code);
        BOOST_TEST(std::abs(lab.a) < 1e-9);
        BOOST_TEST(std::abs(lab.b) < 1e-9);
    }
}

BOOST_AUTO_TEST_CASE(lab_comes_back_from_a_round_trip) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> light(-0.1, 1.2);
    for (int i = 0; i < 2000; ++i) {
        const cv::Vec3d rgb(light(random), light(random), light(random));
        BOOST_TEST(apart(linear_srgb_from_lab(lab_from_linear_srgb(rgb)), rgb) < 1e-12);
    }
}

BOOST_AUTO_TEST_CASE(ciede2000_gives_the_34_published_pairs_both_ways) {
    const auto table = read_csv("ciede2000_pairs.csv");
    BOOST_REQUIRE(table.rows.size() == 34);
    for (const auto& row : table.rows) {
        const Lab one{row[1], row[2], row[3]}, two{row[4], row[5], row[6]};
        BOOST_TEST(std::abs(ciede2000(one, two) - row[7]) < 5.1e-5, "pair " << row[0]);
        BOOST_TEST(std::abs(ciede2000(two, one) - row[7]) < 5.1e-5, "pair " << row[0] << " swapped");
    }
}

BOOST_AUTO_TEST_CASE(ciede2000_of_two_dark_browns_agrees_with_a_published_value) {
    // 3.533443206559 for sRGB (55,44,33) and (66,55,44): test of a general Java colour library, recomputed;
    // tolerance 2e-3 for its 7-digit matrix.
    BOOST_TEST(std::abs(ciede2000(lab_of_codes(55, 44, 33), lab_of_codes(66, 55, 44)) - 3.533443206559) < 2e-3);
}

BOOST_AUTO_TEST_CASE(p3_matrix_follows_from_the_published_primaries) {
    const auto encoding = display_p3_encoding();
    const cv::Matx33d matrix(encoding.srgb_from_device);
    // SMPTE EG 432-1 primaries to IEC 61966-2-1 primaries, both with D65: the matrix as CSS Color 4 implies it
    // (from memory; five decimals).
    const cv::Matx33d expected(1.22494, -0.22494, 0, -0.04206, 1.04206, 0, -0.01964, -0.07864, 1.09827);
    for (int i = 0; i < 9; ++i) BOOST_TEST(std::abs(matrix.val[i] - expected.val[i]) < 1e-4);
    // White stays white, to single precision.
    BOOST_TEST(apart(matrix * cv::Vec3d(1, 1, 1), {1, 1, 1}) < 1e-6);
    // The chromaticity of each P3 primary, taken back through Lab's XYZ, is the published one.
    const double xy[3][2] = {{0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060}};
    for (int c = 0; c < 3; ++c) {
        cv::Vec3d device(0, 0, 0);
        device[c] = 1;
        const Lab lab = lab_from_linear_srgb(matrix * device);
        const auto from = [](double f) {
            return f > 6.0 / 29 ? f * f * f : 3 * (6.0 / 29) * (6.0 / 29) * (f - 4.0 / 29);
        };
        const double fy = (lab.L + 16) / 116;
        const double X = 0.95047 * from(fy + lab.a / 500), Y = from(fy), Z = 1.08883 * from(fy - lab.b / 200);
        BOOST_TEST(std::abs(X / (X + Y + Z) - xy[c][0]) < 1e-5);
        BOOST_TEST(std::abs(Y / (X + Y + Z) - xy[c][1]) < 1e-5);
    }
}

BOOST_AUTO_TEST_CASE(typology_angle_gives_the_examples_of_each_class) {
    // Chardon et al. 1991; (L, b) -> degrees, two decimals.
    const double examples[][3] = {{70, 15, 53.13}, {65, 18, 39.81}, {55, 20, 14.04}, {45, 20, -14.04}, {30, 8, -68.20}};
    for (const auto& [L, b, angle] : examples) BOOST_TEST(std::abs(typology_angle({L, 10, b}) - angle) < 0.0051);
    // No colour or a bluish cast: the angle stays in -90..90.
    BOOST_TEST(std::abs(typology_angle({70, 0, 0}) - 90) < 1e-9);
    BOOST_TEST(std::abs(typology_angle({30, 0, -5}) + 90) < 1e-9);
    BOOST_TEST(typology_angle({50, 0, 0}) == 0);
}
