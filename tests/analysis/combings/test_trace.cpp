// Strands that are not of our own renderer: curves drawn by OpenCV, whose number and lengths are known in closed form
// or by fine chords; what no photo may do to the time it takes.
#include "combings/trace.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "combings/combings.h"
#include "on_sheet.h"

using namespace kempt;
using namespace kempt::combings;

namespace {

constexpr double px_per_mm = 11;
constexpr int side_px = 1000;

// The photo shows the middle of a Letter sheet, without tilt.
card::Calibration middle_of_sheet() {
    return part_of_sheet(px_per_mm, {60, 90});
}

struct Drawn {
    cv::Mat1b paper = cv::Mat1b(4 * side_px, 4 * side_px, static_cast<uchar>(222));
    std::vector<double> lengths_mm;
    // Points in px of the photo; thickness in quarters of a pixel.
    void strand(const std::vector<cv::Point2d>& path, int thickness, int code) {
        std::vector<cv::Point> fine;
        double length = 0;
        for (size_t i = 0; i < path.size(); ++i) {
            fine.emplace_back(cvRound(16 * (4 * path[i].x + 1.5)), cvRound(16 * (4 * path[i].y + 1.5)));
            if (i > 0) length += cv::norm(path[i] - path[i - 1]);
        }
        cv::polylines(paper, fine, false, cv::Scalar(code), thickness, cv::LINE_AA, 4);
        lengths_mm.push_back(length / px_per_mm);
    }
    [[nodiscard]] Photo photo(uint64_t seed) const {
        cv::Mat small, colour;
        cv::resize(paper, small, {}, 0.25, 0.25, cv::INTER_AREA);
        cv::GaussianBlur(small, small, {}, 0.6);
        cv::Mat noise(small.size(), CV_16SC1);
        cv::RNG rng(seed);
        rng.fill(noise, cv::RNG::NORMAL, 0, 2);
        small.convertTo(small, CV_16SC1);
        small += noise;
        small.convertTo(small, CV_8UC1);
        cv::cvtColor(small, colour, cv::COLOR_GRAY2RGB);
        return photo_of_codes(colour);
    }
};

// A sine over a straight axis.
std::vector<cv::Point2d> wave(cv::Point2d from, double degrees, double axis_px, double amplitude, double long_px,
                              double phase) {
    std::vector<cv::Point2d> path;
    const double a = degrees * CV_PI / 180, c = std::cos(a), s = std::sin(a);
    for (double u = 0; u <= axis_px; u += 1) {
        const double v = amplitude * (std::sin(phase + 2 * CV_PI * u / long_px) - std::sin(phase));
        path.emplace_back(from.x + u * c - v * s, from.y + u * s + v * c);
    }
    return path;
}

std::vector<cv::Point2d> arc(cv::Point2d centre, double radius, double from_degrees, double to_degrees) {
    std::vector<cv::Point2d> path;
    for (double a = from_degrees; a <= to_degrees; a += 0.2)
        path.emplace_back(centre.x + radius * std::cos(a * CV_PI / 180), centre.y + radius * std::sin(a * CV_PI / 180));
    return path;
}

Drawn crossing_strands() {
    Drawn drawn;
    cv::RNG rng(11);
    for (int i = 0; i < 9; ++i)  // from left to right
        drawn.strand(wave({60.0 + 8 * i, 130.0 + 85 * i}, rng.uniform(-9.0, 9.0), rng.uniform(600.0, 820.0),
                          rng.uniform(4.0, 14.0), rng.uniform(260.0, 420.0), rng.uniform(0.0, 6.0)),
                     3, 70);
    for (int i = 0; i < 7; ++i)  // downwards
        drawn.strand(arc({-700.0 + 115 * i, 480}, 900, -24 + 1.5 * i, 20 - 1.2 * i), 3, 90);
    for (int i = 0; i < 4; ++i)  // short ones
        drawn.strand(wave({170.0 + 190 * i, 60}, 80 - 45 * (i % 2), 140 + 60 * i, 0, 100, 0), 3, 80);
    return drawn;
}

}  // namespace

BOOST_AUTO_TEST_CASE(strands_drawn_by_another_program_are_counted_and_measured) {
    const Drawn drawn = crossing_strands();
    const auto read = measure_combings(drawn.photo(5), middle_of_sheet());
    BOOST_REQUIRE(read);
    std::vector<double> truth = drawn.lengths_mm;
    std::sort(truth.rbegin(), truth.rend());
    BOOST_REQUIRE(read->strands.size() == truth.size());
    for (size_t i = 0; i < truth.size(); ++i)
        BOOST_TEST(read->strands[i].length_mm == truth[i], boost::test_tools::tolerance(0.015));
    BOOST_REQUIRE(read->readings.size() == 3);
    const double median = 0.5 * (truth[9] + truth[10]);
    BOOST_TEST(read->readings[0].value == 20);
    BOOST_TEST(read->readings[1].value == median, boost::test_tools::tolerance(0.01));
    BOOST_TEST(read->readings[1].low <= median);
    BOOST_TEST(read->readings[1].high >= median);
}

BOOST_AUTO_TEST_CASE(bare_paper_with_noise_shows_no_strand) {
    const auto read = measure_combings(Drawn().photo(9), middle_of_sheet());
    BOOST_REQUIRE(read);
    BOOST_TEST(read->strands.empty());
    BOOST_REQUIRE(read->refused.size() == 3);
    BOOST_TEST(read->refused[0].code == "no-strands");
}

BOOST_AUTO_TEST_CASE(strands_on_the_blue_sheet_are_sent_to_the_white_one) {
    card::Calibration calibration = middle_of_sheet();
    calibration.sheet->ground = card::Ground::blue;
    const auto read = measure_combings(crossing_strands().photo(5), calibration);
    BOOST_REQUIRE(!read);
    BOOST_TEST(read.error().code == "sheet-blue");
    BOOST_TEST(!read.error().remedy.empty());
}

BOOST_AUTO_TEST_CASE(a_photo_of_thousands_of_crossings_ends_within_its_work) {
    Drawn mat;
    cv::RNG rng(3);
    for (int i = 0; i < 130; ++i)
        mat.strand(wave({rng.uniform(0.0, 900.0), rng.uniform(0.0, 900.0)}, rng.uniform(0.0, 360.0), 300, 20, 90, 0), 3,
                   60);
    const Photo photo = mat.photo(1);
    const auto enough = trace_strands(photo, middle_of_sheet());
    BOOST_REQUIRE(enough);
    BOOST_TEST(enough->work <= TraceOptions().most_work);
    // Every loop counts: whatever the limit, it is kept to.
    for (const int64_t parts : {2, 10, 100, 10'000}) {
        TraceOptions options;
        options.most_work = enough->work / parts;
        const auto few = trace_strands(photo, middle_of_sheet(), {}, options);
        BOOST_REQUIRE(!few);
        BOOST_TEST((few.error().kind == ErrorKind::refused));
        BOOST_TEST(few.error().code == "too-tangled");
    }
    // A mat through which no paper is seen is refused at once.
    for (int i = 0; i < 1400; ++i)
        mat.strand(wave({rng.uniform(0.0, 900.0), rng.uniform(0.0, 900.0)}, rng.uniform(0.0, 360.0), 300, 20, 90, 0), 3,
                   60);
    const auto none = measure_combings(mat.photo(1), middle_of_sheet());
    BOOST_REQUIRE(!none);
    BOOST_TEST(none.error().code == "too-tangled");
}

BOOST_AUTO_TEST_CASE(work_is_stopped_wherever_it_asks) {
    const Photo photo = crossing_strands().photo(2);
    int asked = 0;
    const auto whole = trace_strands(photo, middle_of_sheet(), {}, {}, [&](double, std::string_view) {
        ++asked;
        return Go::on;
    });
    BOOST_REQUIRE(whole);
    BOOST_REQUIRE(asked >= 4);
    for (int stop = 1; stop <= asked; ++stop) {
        int now = 0;
        const auto read = trace_strands(photo, middle_of_sheet(), {}, {},
                                        [&](double, std::string_view) { return ++now >= stop ? Go::stop : Go::on; });
        BOOST_REQUIRE(!read);
        BOOST_TEST((read.error().kind == ErrorKind::cancelled));
        BOOST_TEST(now <= stop + 1);
    }
}
