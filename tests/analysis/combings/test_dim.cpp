// A strand below the paper's noise is marked; noise alone, folds, shadows and what has a mark already are not. Pictures
// are drawn here, by sums that the search does not know.
#include "combings/dim.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "combings/combings.h"
#include "combings/summary.h"
#include "on_sheet.h"

using namespace kempt;
using namespace kempt::combings;

namespace {

constexpr int side_px = 1300;
constexpr double px_per_mm = 11;

card::Calibration middle_of_sheet() {
    return part_of_sheet(px_per_mm, {45, 80});
}

// Paper of code 200 with a noise of 3 codes a pixel.
cv::Mat1f noisy_paper(uint64_t seed) {
    cv::Mat1f out(side_px, side_px);
    cv::RNG rng(seed);
    rng.fill(out, cv::RNG::NORMAL, 200, 3);
    return out;
}

// A line of SD 0.9 px, darker by so many codes at its middle.
void line(cv::Mat1f& paper, const Way& way, double codes) {
    for (int y = 0; y < paper.rows; ++y)
        for (int x = 0; x < paper.cols; ++x) {
            double least = 1e9;
            const cv::Point2f p(static_cast<float>(x), static_cast<float>(y));
            for (size_t i = 1; i < way.size(); ++i) {
                const cv::Point2f d = way[i] - way[i - 1];
                const double t = std::clamp((p - way[i - 1]).dot(d) / d.dot(d), 0.f, 1.f);
                least = std::min(least, cv::norm(p - way[i - 1] - d * t));
            }
            if (least < 5) paper(y, x) -= static_cast<float>(codes * std::exp(-0.5 * least * least / 0.81));
        }
}

std::vector<Way> found(const cv::Mat1f& paper, const std::vector<Way>& strands, const std::vector<Way>& marked) {
    const Photo photo = photo_of_grey(paper);
    const Field field(middle_of_sheet(), {}, 2);
    const Darkness darkness(photo, field);
    const Progress nobody;
    Work work(nobody, 100'000'000);
    return dim_ways(darkness, field, strands, marked, {0.8 * px_per_mm, 1.6 * px_per_mm, 8 * px_per_mm}, work);
}

double length(const Way& way) {
    double out = 0;
    for (size_t i = 1; i < way.size(); ++i) out += cv::norm(way[i] - way[i - 1]);
    return out;
}

// A point each 2 px, as traced ones have.
Way traced(const Way& way) {
    Way out;
    for (size_t i = 1; i < way.size(); ++i)
        for (int k = 0; k < 100; ++k) out.push_back(way[i - 1] + (way[i] - way[i - 1]) * (static_cast<float>(k) / 100));
    return out;
}

const Way bent = {{300, 400}, {500, 460}, {700, 540}, {900, 640}};  // 59 mm

}  // namespace

BOOST_AUTO_TEST_SUITE(dim)

BOOST_AUTO_TEST_CASE(a_strand_as_dark_as_the_noise_is_marked_over_half_of_its_length) {
    cv::Mat1f paper = noisy_paper(1);
    line(paper, bent, 3);
    double marked = 0, points = 0, aside = 0;
    for (const Way& way : found(paper, {}, {})) {
        marked += length(way);
        for (const cv::Point2f& p : way) {
            double least = 1e9;
            for (size_t i = 1; i < bent.size(); ++i) {
                const cv::Point2f d = bent[i] - bent[i - 1];
                const float t = std::clamp((p - bent[i - 1]).dot(d) / d.dot(d), 0.f, 1.f);
                least = std::min(least, cv::norm(p - bent[i - 1] - d * t));
            }
            ++points, aside += least > 12;
        }
    }
    BOOST_TEST(marked > 0.5 * length(bent));
    BOOST_TEST(aside < 0.25 * points);  // ends may run on into noise by a sum's length
}

BOOST_AUTO_TEST_CASE(noise_alone_is_not_marked) {
    for (const uint64_t seed : {2, 3, 4}) BOOST_TEST(found(noisy_paper(seed), {}, {}).empty());
}

BOOST_AUTO_TEST_CASE(a_dark_line_beside_one_as_bright_is_a_fold) {
    cv::Mat1f paper = noisy_paper(5);
    Way beside = bent;
    for (cv::Point2f& p : beside) p += cv::Point2f(-2, 7);
    line(paper, bent, 4);
    BOOST_TEST(!found(paper, {}, {}).empty());
    line(paper, beside, -4);
    BOOST_TEST(found(paper, {}, {}).empty());
}

BOOST_AUTO_TEST_CASE(what_runs_along_a_strand_is_its_shadow_and_what_is_marked_gets_no_second_mark) {
    cv::Mat1f paper = noisy_paper(6);
    line(paper, bent, 4);
    Way beside = bent;
    for (cv::Point2f& p : beside) p += cv::Point2f(-4, 12);
    BOOST_TEST(!found(paper, {}, {}).empty());
    BOOST_TEST(found(paper, {traced(beside)}, {}).empty());
    BOOST_TEST(!found(paper, {}, {traced(beside)}).empty());
    BOOST_TEST(found(paper, {}, {traced(bent)}).empty());
}

BOOST_AUTO_TEST_CASE(near_the_noise_the_count_stands_with_a_wider_interval_and_a_loose_median_is_refused) {
    CombingsReadings photo;
    for (int i = 0; i < 20; ++i) {
        Strand strand;
        strand.length_mm = 20 + 10 * i;
        photo.strands.push_back(strand);
    }
    summarise(photo);
    BOOST_REQUIRE(photo.readings.size() == 3);
    const Quantity clear = photo.readings[0];
    photo.near_noise = {"", "too-faint", "Take the photo in more light."};
    summarise(photo);
    BOOST_REQUIRE(photo.readings.size() == 3);  // a median that nothing speaks against
    BOOST_TEST(photo.readings[0].value == clear.value);
    BOOST_TEST(photo.readings[0].low < clear.low);
    BOOST_TEST(photo.readings[0].high > clear.high);
    for (size_t i = 0; i < photo.strands.size(); ++i)
        photo.strands[i].doubtful = true, photo.strands[i].torn_ends = i % 2;
    summarise(photo);
    BOOST_REQUIRE(photo.readings.size() == 2);
    BOOST_TEST(photo.readings[0].name == "strands");
    BOOST_TEST(photo.readings[1].name == "short_share");
    BOOST_REQUIRE(photo.refused.size() == 1);
    BOOST_TEST(photo.refused[0].name == "strand_median");
    BOOST_TEST(photo.refused[0].code == "too-faint");
}

BOOST_AUTO_TEST_SUITE_END()
