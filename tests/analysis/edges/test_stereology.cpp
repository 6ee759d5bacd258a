// L_A = (pi/2) N_L (Steinhaus 1930; Underwood 1970, from memory) on fields of lines whose length is known.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>
#include <vector>

#include "edges/stereology.h"

namespace {

struct Segment {
    double x0, y0, x1, y1;
};

// Crossings per length of parallel test lines at an angle, 1 apart, over a 100 x 100 field, counted one by one.
double crossings_per_length(const std::vector<Segment>& field, double angle) {
    const double nx = -std::sin(angle), ny = std::cos(angle);
    double crossings = 0;
    for (const Segment& s : field) {
        const double a = s.x0 * nx + s.y0 * ny, b = s.x1 * nx + s.y1 * ny;
        crossings += std::abs(std::floor(a) - std::floor(b));
    }
    return crossings / (100.0 * 100.0);
}

double estimate(const std::vector<Segment>& field) {
    std::array<double, kempt::edges::test_directions> n{};
    for (size_t k = 0; k < n.size(); ++k) n[k] = crossings_per_length(field, static_cast<double>(k) * CV_PI / 6);
    return kempt::edges::length_per_area(n);
}

std::vector<Segment> isotropic(std::mt19937& random, int count, double length) {
    std::uniform_real_distribution<double> place(0, 100), turn(0, CV_PI);
    std::vector<Segment> field;
    for (int i = 0; i < count; ++i) {
        const double x = place(random), y = place(random), a = turn(random);
        field.push_back({x, y, x + length * std::cos(a), y + length * std::sin(a)});
    }
    return field;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(stereology)

// reference.md section 6: 20 000 segments of 0.3 in a 100 x 100 field, true L_A 0.6.
BOOST_AUTO_TEST_CASE(isotropic_field_of_known_length_is_recovered) {
    std::mt19937 random(11);
    BOOST_CHECK_CLOSE(estimate(isotropic(random, 20000, 0.3)), 0.6, 2.0);
}

// reference.md section 6: one direction alone reads parallel fibres 57 % too long; six directions stay within 2.3 %.
BOOST_AUTO_TEST_CASE(parallel_fibres_are_read_right_at_any_angle_only_by_many_directions) {
    for (const double degrees : {0.0, 7.0, 15.0, 22.5, 45.0, 80.0, 90.0}) {
        std::vector<Segment> fence;
        const double a = degrees * CV_PI / 180, spacing = 0.5;
        for (double offset = -200; offset < 200; offset += spacing)
            for (double t = -20; t < 120; t += 1)  // pieces whose middle lies in the field
            {
                const double x = offset * -std::sin(a) + (t + 0.5) * std::cos(a),
                             y = offset * std::cos(a) + (t + 0.5) * std::sin(a);
                if (x < 0 || y < 0 || x >= 100 || y >= 100) continue;
                fence.push_back({x - 0.5 * std::cos(a) + 1e-7, y - 0.5 * std::sin(a) + 1e-7,
                                 x + 0.5 * std::cos(a) + 1e-7, y + 0.5 * std::sin(a) + 1e-7});
            }
        const double truth = static_cast<double>(fence.size()) / 10000.0;
        BOOST_TEST_CONTEXT("fence at " << degrees << " degrees") BOOST_CHECK_CLOSE(estimate(fence), truth, 3.5);
    }
    std::array<double, kempt::edges::test_directions> across{};
    across.fill(1.0);  // every line at right angles to fibres 1 apart
    BOOST_CHECK_CLOSE(kempt::edges::length_per_area(across), CV_PI / 2, 1e-9);
}

BOOST_AUTO_TEST_SUITE_END()
