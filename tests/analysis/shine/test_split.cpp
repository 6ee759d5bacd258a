// The light along the fibres taken apart, on profiles written down by formula.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <functional>
#include <numeric>
#include <random>

#include "shine/profile_luster.h"
#include "shine/split.h"

namespace {

using namespace kempt::shine;

constexpr double length_mm = 90, step_mm = 0.125;

struct Parts {
    std::function<cv::Vec3d(double)> body;
    std::function<double(double)> surface = [](double) { return 0.0; };
    std::function<cv::Vec3d(double)> second = [](double) { return cv::Vec3d(); };
};

// Eight lanes with a little unevenness of their own, 2 % and steady over a centimetre.
Profile profile(const Parts& parts, double unevenness = 0.02) {
    Profile out;
    out.step_mm = step_mm;
    std::mt19937 random(7);
    std::normal_distribution<double> normal;
    const int n = static_cast<int>(length_mm / step_mm);
    for (int k = 0; k < 8; ++k) {
        Lane lane;
        double drift = 0;
        for (int i = 0; i < n; ++i) {
            const double y = (i + 0.5) * step_mm;
            drift = 0.985 * drift + std::sqrt(1 - 0.985 * 0.985) * unevenness * normal(random);
            const double s = parts.surface(y);
            lane.light.push_back((parts.body(y) + parts.second(y)) * (1 + drift) + cv::Vec3d(s, s, s));
        }
        out.lanes.push_back(lane);
    }
    out.light.assign(static_cast<size_t>(n), {});
    for (const Lane& lane : out.lanes)
        for (size_t i = 0; i < lane.light.size(); ++i) out.light[i] += lane.light[i] * 0.125;
    return out;
}

double gauss(double y, double at, double sd) {
    return std::exp(-0.5 * (y - at) * (y - at) / (sd * sd));
}

double area(const std::vector<double>& v, double step) {
    return step * std::accumulate(v.begin(), v.end(), 0.0);
}

// Full width at half height of the surface light.
double width(const Split& s) {
    return luster_of(s.surface, s.step_mm).width;
}

// What a JPEG of quality 85 leaves of the colours: Cb and Cr (ITU-T T.871) in whole steps of 5/8 of a code.
cv::Vec3d on_the_stairs(const cv::Vec3d& light) {
    constexpr double step = 0.625, power = 2.2;
    cv::Vec3d code;
    for (int c = 0; c < 3; ++c) code[c] = 255 * std::pow(light[c], 1 / power);
    const double y = 0.299 * code[0] + 0.587 * code[1] + 0.114 * code[2],
                 blue = step * std::round((code[2] - y) / 1.772 / step),
                 red = step * std::round((code[0] - y) / 1.402 / step);
    const cv::Vec3d kept(y + 1.402 * red, y - 0.344136 * blue - 0.714136 * red, y + 1.772 * blue);
    cv::Vec3d out;
    for (int c = 0; c < 3; ++c) out[c] = std::pow(kept[c] / 255, power);
    return out;
}

const cv::Vec3d brown{0.10, 0.06, 0.035}, black{0.011, 0.010, 0.009}, red{0.24, 0.085, 0.035}, blonde{0.50, 0.36, 0.19},
    grey{0.36, 0.35, 0.34};

}  // namespace

BOOST_AUTO_TEST_SUITE(light_taken_apart)

BOOST_AUTO_TEST_CASE(a_white_bell_over_hair_of_any_colour_is_found_with_height_width_and_area) {
    struct Kind {
        const char* name;
        cv::Vec3d body;
        double height;
    };
    for (const Kind& kind : {Kind{"black", black, 0.08}, Kind{"brown", brown, 0.06}, Kind{"red", red, 0.06},
                             Kind{"blonde", blonde, 0.10}, Kind{"grey", grey, 0.15}})
        BOOST_TEST_CONTEXT(kind.name) {
            Parts parts;
            parts.body = [&](double y) { return kind.body * std::exp(-0.05 * std::pow(2 * y / length_mm - 1, 2)); };
            parts.surface = [&](double y) { return kind.height * gauss(y, 42, 11); };
            const Split got = split(profile(parts));
            BOOST_REQUIRE(got.fitted);
            BOOST_CHECK_CLOSE(got.peak, kind.height, 8);
            BOOST_CHECK_CLOSE(width(got), 2.3548 * 11, 5);
            BOOST_CHECK_SMALL(got.crest_mm - 42, 0.7);
            BOOST_CHECK_CLOSE(area(got.surface, got.step_mm), kind.height * 11 * std::sqrt(2 * 3.14159265), 10);
        }
}

BOOST_AUTO_TEST_CASE(a_second_coloured_highlight_widens_the_first_by_little) {
    // As strong as the first, in the hair's own colour, two and a half spreads towards the roots and nearly twice as
    // wide (TRT of Marschner et al. 2003, table 1).
    for (const cv::Vec3d& body : {brown, red, blonde}) {
        Parts parts;
        parts.body = [&](double) { return body; };
        const double height = 0.4 * body[1];
        const cv::Vec3d tint(std::pow(body[0], 1.5), std::pow(body[1], 1.5), std::pow(body[2], 1.5));
        parts.surface = [=](double y) { return height * gauss(y, 50, 10); };
        parts.second = [=](double y) { return tint * (height / tint[1] * gauss(y, 26, 18)); };
        const Split got = split(profile(parts));
        BOOST_REQUIRE(got.fitted);
        BOOST_CHECK_CLOSE(width(got), 23.548, 10);
        BOOST_CHECK_CLOSE(got.peak, height, 15);
        // Read as one peak over a straight line it is wider by a third.
        std::vector<double> total;
        for (size_t i = 0; i < got.total.size(); ++i) total.push_back(got.total[i]);
        BOOST_CHECK_GT(luster_of(total, got.step_mm).width, 1.25 * 23.548);
    }
}

BOOST_AUTO_TEST_CASE(lobes_that_are_no_bells_keep_their_width) {
    // Flat-topped and lopsided ones, and a cosine's power as in simple models of gloss.
    const std::vector<std::function<double(double)>> lobes{
        [](double y) { return std::exp(-std::pow(std::abs(y - 45) / 16, 2.6)); },
        [](double y) { return gauss(y, 45, y < 45 ? 10 : 13); },
        [](double y) { return std::pow(std::max(0.0, std::cos((y - 45) / 60)), 14); }};
    for (size_t k = 0; k < lobes.size(); ++k) BOOST_TEST_CONTEXT("lobe " << k) {
            Parts parts;
            parts.body = [](double) { return brown; };
            parts.surface = [&](double y) { return 0.06 * lobes[k](y); };
            std::vector<double> truth;
            for (double y = 0; y <= length_mm; y += 0.1) truth.push_back(lobes[k](y));
            BOOST_CHECK_CLOSE(width(split(profile(parts))), luster_of(truth, 0.1).width, 10);
        }
}

BOOST_AUTO_TEST_CASE(hair_that_lightens_to_the_ends_is_not_taken_for_shine) {
    Parts parts;
    parts.body = [](double y) { return brown * (1 + 0.5 * y / length_mm); };
    parts.surface = [](double y) { return 0.04 * gauss(y, 40, 10); };
    const Split got = split(profile(parts));
    BOOST_CHECK_CLOSE(got.peak, 0.04, 10);
    BOOST_CHECK_CLOSE(got.body.back() / got.body.front(), 1.5, 6);
}

BOOST_AUTO_TEST_CASE(without_a_highlight_the_height_does_not_rise_over_its_doubt) {
    for (const cv::Vec3d& body : {black, brown, grey}) {
        Parts parts;
        parts.body = [&](double) { return body; };
        const Split got = split(profile(parts));
        BOOST_CHECK_LT(got.peak, 0.1 * luster_of(got.total, got.step_mm).whole / length_mm);
        BOOST_CHECK_LT(got.peak, 3 * got.peak_sd);
    }
}

BOOST_AUTO_TEST_CASE(steps_in_a_jpegs_colours_hardly_move_the_width_on_grey_hair) {
    double off = 0;
    int count = 0;
    for (const double warmth : {0.02, 0.05, 0.08, 0.11})
        for (const double height : {0.08, 0.12, 0.16, 0.2}) {
            Parts parts;
            parts.body = [&](double y) {
                return cv::Vec3d(0.36 * (1 + warmth / 2), 0.36, 0.36 * (1 - warmth)) *
                       std::exp(-0.05 * std::pow(2 * y / length_mm - 1, 2));
            };
            parts.surface = [&](double y) { return height * gauss(y, 44, 13.8); };
            Profile stairs = profile(parts, 0.005);
            for (Lane& lane : stairs.lanes)
                for (cv::Vec3d& light : lane.light) light = on_the_stairs(light);
            for (cv::Vec3d& light : stairs.light) light = on_the_stairs(light);
            off += std::abs(std::log(width(split(stairs)) / (2.3548 * 13.8)));
            ++count;
        }
    BOOST_TEST_MESSAGE("mean error of the width " << off / count);
    BOOST_CHECK_LT(off / count, 0.02);
}

BOOST_AUTO_TEST_CASE(lanes_that_are_lighter_all_along_say_nothing_of_the_curve) {
    Parts parts;
    parts.body = [](double) { return grey; };
    parts.surface = [](double y) { return 0.1 * gauss(y, 45, 11); };
    const auto log_width = [](const Split& s) { return std::vector<double>{std::log(width(s))}; };
    const Profile even = profile(parts, 0.01);
    Profile streaked = even;
    double lighter = -0.07;
    for (Lane& lane : streaked.lanes) {
        for (cv::Vec3d& light : lane.light) light += cv::Vec3d(lighter, lighter, lighter);
        lighter += 0.02;
    }
    BOOST_CHECK_CLOSE(split(streaked).uncertainty(log_width)[0], split(even).uncertainty(log_width)[0], 5);
}

BOOST_AUTO_TEST_CASE(uneven_hair_makes_the_doubt_larger) {
    Parts parts;
    parts.body = [](double) { return grey; };
    parts.surface = [](double y) { return 0.1 * gauss(y, 45, 11); };
    const auto log_width = [](const Split& s) { return std::vector<double>{std::log(width(s))}; };
    const Split smooth = split(profile(parts, 0.01)), uneven = split(profile(parts, 0.08));
    BOOST_CHECK_GT(uneven.uncertainty(log_width)[0], 1.5 * smooth.uncertainty(log_width)[0]);
    BOOST_CHECK_GT(smooth.uncertainty(log_width)[0], 0);
}

BOOST_AUTO_TEST_CASE(too_few_rows_are_not_fitted) {
    Profile few;
    few.step_mm = 0.125;
    few.light.assign(10, {0.1, 0.1, 0.1});
    BOOST_CHECK(!split(few).fitted);
}

BOOST_AUTO_TEST_SUITE_END()
