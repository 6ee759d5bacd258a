// Colour against lcms2, an independent implementation.
#include <lcms2.h>

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

#include "colour/colour.h"

using namespace kempt::colour;

BOOST_AUTO_TEST_CASE(ciede2000_agrees_with_lcms2_on_10000_random_pairs) {
    std::mt19937 random(2005);
    std::uniform_real_distribution<double> lightness(0, 100), chroma(-100, 100), near(-3, 3);
    double worst = 0;
    for (int i = 0; i < 10000; ++i) {
        const Lab one{lightness(random), chroma(random), chroma(random)};
        // Half of the pairs lie close together, as hair colours do.
        const Lab two = i % 2 == 0 ? Lab{lightness(random), chroma(random), chroma(random)}
                                   : Lab{one.L + near(random), one.a + near(random), one.b + near(random)};
        const cmsCIELab first{one.L, one.a, one.b}, second{two.L, two.a, two.b};
        const double theirs = cmsCIE2000DeltaE(&first, &second, 1, 1, 1);
        worst = std::max(worst, std::abs(ciede2000(one, two) - theirs));
    }
    BOOST_TEST(worst < 1e-6);
}

BOOST_AUTO_TEST_CASE(lab_agrees_with_lcms2_under_the_same_white) {
    const cmsCIEXYZ white{0.95047, 1.0, 1.08883};
    // 7-digit XYZ of the sRGB primaries (IEC 61966-2-1 as commonly printed); tolerance from those digits.
    const cv::Matx33d xyz_from_rgb(0.4124564, 0.3575761, 0.1804375, 0.2126729, 0.7151522, 0.0721750, 0.0193339,
                                   0.1191920, 0.9503041);
    std::mt19937 random(15);
    std::uniform_real_distribution<double> light(0.001, 1);
    for (int i = 0; i < 2000; ++i) {
        const cv::Vec3d rgb(light(random), light(random), light(random));
        const cv::Vec3d xyz = xyz_from_rgb * rgb;
        const cmsCIEXYZ in{xyz[0], xyz[1], xyz[2]};
        cmsCIELab theirs;
        cmsXYZ2Lab(&white, &theirs, &in);
        const Lab ours = lab_from_linear_srgb(rgb);
        BOOST_TEST(std::hypot(std::hypot(ours.L - theirs.L, ours.a - theirs.a), ours.b - theirs.b) < 2e-3);
    }
}
