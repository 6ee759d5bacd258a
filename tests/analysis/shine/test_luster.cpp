// Closed-form luster against the worked profiles of the project's fact sheet (appendix A8, computed there in R and
// Python from the formulas of Stamm et al. 1977 and Reich and Robbins 1993 as quoted by McMullen and Jachowicz 2003, J
// Cosmet Sci 54:335-351, eq. 2 and 3).
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "shine/profile_luster.h"

namespace {

using kempt::shine::CurveLuster;
using kempt::shine::luster_of;

// base + amp exp(-x^2 / (2 sigma^2)), x = -40..40 in steps of 0.01.
std::vector<double> bell(double base, double amp, double sigma) {
    std::vector<double> curve;
    for (int i = -4000; i <= 4000; ++i) {
        const double x = 0.01 * i;
        curve.push_back(base + amp * std::exp(-x * x / (2 * sigma * sigma)));
    }
    return curve;
}

struct Worked {
    const char* name;
    double base, amp, sigma, whole, line, width, stamm, stamm_excess, luster_excess, guiolet;
};
constexpr Worked worked[] = {
    {"medium", 20, 100, 6, 3103.9770, 1600.0000, 14.128920, 0.484532, -0.063846, 0.066529, 0.939986},
    {"sharp and dark", 10, 200, 4, 2805.3026, 800.0000, 9.419280, 0.714826, 0.601058, 0.266117, 2.506628},
    {"broad and light", 40, 60, 10, 4703.8817, 3201.6102, 23.548200, 0.319368, -1.131180, 0.019926, 0.469224}};

}  // namespace

BOOST_AUTO_TEST_SUITE(profile_luster)

BOOST_AUTO_TEST_CASE(worked_profiles_are_met_in_both_readings_of_the_formula) {
    for (const Worked& w : worked) BOOST_TEST_CONTEXT(w.name) {
            const CurveLuster got = luster_of(bell(w.base, w.amp, w.sigma), 0.01);
            BOOST_CHECK_CLOSE(got.whole, w.whole, 1e-4);
            BOOST_CHECK_CLOSE(got.line, w.line, 1e-4);
            BOOST_CHECK_CLOSE(got.stamm, w.stamm, 1e-3);
            BOOST_CHECK_CLOSE(got.stamm_excess, w.stamm_excess, 1e-2);
            // The sheet's width is that of the bell; over the line that joins the ends it is a little less where the
            // bell has not died down at +-40 (broad and light: by 0.05 %).
            BOOST_CHECK_CLOSE(got.width, w.width, 0.06);
            BOOST_CHECK_CLOSE(got.luster_excess, w.luster_excess, 0.06);
            // With the whole area S / (D W) is the excess form and 1 / W.
            BOOST_CHECK_CLOSE(got.luster, w.luster_excess + 1 / w.width, 0.06);
            BOOST_CHECK_CLOSE(got.luster, w.whole / (w.line * w.width), 0.06);
            BOOST_CHECK_CLOSE(got.whole / got.line - 1, w.guiolet, 1e-2);
            BOOST_CHECK_SMALL(got.peak_at - 40, 1e-9);
        }
}

BOOST_AUTO_TEST_CASE(a_coarse_curve_says_nearly_the_same) {
    std::vector<double> coarse;
    const auto fine = bell(20, 100, 6);
    for (size_t i = 0; i < fine.size(); i += 50) coarse.push_back(fine[i]);
    BOOST_CHECK_CLOSE(luster_of(coarse, 0.5).stamm, worked[0].stamm, 0.01);
    BOOST_CHECK_CLOSE(luster_of(coarse, 0.5).width, worked[0].width, 0.2);
}

BOOST_AUTO_TEST_CASE(darker_hair_of_the_same_gloss_scores_higher) {
    // McMullen and Jachowicz 2003: the index rises with pigmentation.
    double before_stamm = 0, before_luster = 0;
    for (const double base : {40.0, 20.0, 10.0, 5.0}) {
        const CurveLuster got = luster_of(bell(base, 60, 6), 0.01);
        BOOST_CHECK_GT(got.stamm, before_stamm);
        BOOST_CHECK_GT(got.luster, before_luster);
        before_stamm = got.stamm, before_luster = got.luster;
    }
}

BOOST_AUTO_TEST_CASE(exposure_moves_luster_and_hardly_contrast) {
    // The published trend (same paper): from 1/13 s over 1/6 s to 1/3 s the Reich and Robbins value fell from 0.67 over
    // 0.54 to 0.37 while Stamm's stayed at 0.72, 0.72, 0.67. Their camera's codes stop at a white: with each doubling
    // of the exposure the top of the peak is cut and the half height sinks, which widens it. Light that is only scaled
    // changes nothing.
    const auto codes = [](double exposure) {
        std::vector<double> curve = bell(4, 60, 4);
        for (double& v : curve) v = std::min(100.0, exposure * v);
        return luster_of(curve, 0.01);
    };
    const CurveLuster quarter = codes(1), half = codes(2), full = codes(4);
    BOOST_CHECK_GT(quarter.luster, 1.05 * half.luster);
    BOOST_CHECK_GT(half.luster, 1.15 * full.luster);
    BOOST_CHECK_LT((quarter.stamm - full.stamm) / quarter.stamm, 0.5 * (quarter.luster - full.luster) / quarter.luster);
    const CurveLuster one = luster_of(bell(20, 100, 6), 0.01), brighter = luster_of(bell(40, 200, 6), 0.01);
    BOOST_CHECK_CLOSE(one.luster, brighter.luster, 1e-9);
    BOOST_CHECK_CLOSE(one.stamm, brighter.stamm, 1e-9);
}

BOOST_AUTO_TEST_CASE(curves_without_a_highlight_give_nothing_and_no_nonsense) {
    for (const std::vector<double>& flat : {std::vector<double>(100, 5.0), std::vector<double>(100, 0.0),
                                            std::vector<double>{}, std::vector<double>{1, 2}}) {
        const CurveLuster got = luster_of(flat, 0.5);
        BOOST_CHECK_EQUAL(got.width, 0);
        BOOST_CHECK_EQUAL(got.stamm, 0);
        BOOST_CHECK_EQUAL(got.luster, 0);
    }
    std::vector<double> slope;
    for (int i = 0; i < 100; ++i) slope.push_back(i);
    BOOST_CHECK_SMALL(luster_of(slope, 1).stamm, 1e-9);
}

BOOST_AUTO_TEST_SUITE_END()
