// Photos of strands on the sheet, rendered small: what is read and what is refused.
#include <boost/test/unit_test.hpp>

#include "bench/pattern/cases.h"
#include "pattern/pattern.h"

using namespace kempt;

namespace {

struct Taken {
    Photo photo;
    card::Calibration calibration;
    bench::PatternShot shot;
};

// Medium coils of dark brown hair, the sheet at 9 px/mm.
Taken take(double px_per_mm, bool with_strands, double apart_mm = 4) {
    render::SheetOptions sheet;
    sheet.hair_colour = 1;
    sheet.px_per_mm = px_per_mm;
    sheet.tilt_max_deg = 4;
    sheet.quarter_turns = false;
    sheet.creases = 0;
    sheet.lint = 0.3;
    bench::PatternCase scene;
    scene.scene = render::sheet_scene(3, 4, sheet);
    render::Rng rng(5);
    render::LooseOptions options;
    options.count = with_strands ? 4 : 0;
    options.length_mm = 90;
    options.short_share = 0;
    options.shape = render::Shape::coiled;
    options.curl_mm = 16;
    scene.strands = render::loose_strands(rng, scene.scene.hair, options);
    render::Lie where = render::free_lie(scene.scene);
    where.apart_mm = apart_mm;
    if (apart_mm == 0) where.to = {where.from.x + 30, where.from.y + 30};  // one on the other
    Taken out;
    const render::Coat coat = render::throw_down(rng, scene.strands, where);
    out.shot.shot = render::take_sheet(scene.scene, coat);
    for (const auto& path : out.shot.shot.strands_mm) out.shot.strands.push_back(bench::true_shape(path));
    const render::Shot& shot = out.shot.shot.photo;
    out.photo.pixels = cv::Mat(shot.height, shot.width, CV_8UC3, const_cast<uint8_t*>(shot.rgb.data())).clone();
    for (auto& channel : out.photo.colour.linear) {
        channel.resize(256);
        for (int i = 0; i < 256; ++i) {  // IEC 61966-2-1
            const double v = i / 255.0;
            channel[static_cast<std::size_t>(i)] =
                static_cast<float>(v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4));
        }
    }
    out.calibration = card::calibrate(out.photo);
    return out;
}

const Quantity* find(const pattern::PatternReadings& from, const char* name) {
    for (const Quantity& q : from.readings)
        if (q.name == name) return &q;
    return nullptr;
}

double median(std::vector<double> v) {
    std::sort(v.begin(), v.end());
    return 0.5 * (v[(v.size() - 1) / 2] + v[v.size() / 2]);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(measure)

BOOST_AUTO_TEST_CASE(coils_on_the_sheet_read_as_they_were_drawn) {
    const Taken t = take(9, true);
    const auto read = pattern::measure_pattern(t.photo, t.calibration);
    BOOST_REQUIRE_MESSAGE(read.ok(), (read.ok() ? "" : read.error().what));
    std::vector<double> diameters, ratios, lengths;
    for (const bench::TrueShape& s : t.shot.strands) {
        diameters.push_back(s.curve_diameter_mm);
        ratios.push_back(s.wave_ratio);
        lengths.push_back(s.arc_mm);
    }
    const std::vector<std::pair<const char*, double>> truth = {
        {"curve_diameter", median(diameters)}, {"wave_ratio", median(ratios)}, {"strand_length", median(lengths)}};
    for (const auto& [name, value] : truth) {
        const Quantity* q = find(read.value(), name);
        BOOST_REQUIRE_MESSAGE(q, name << " is missing");
        BOOST_TEST_CONTEXT(name << " " << q->value << " [" << q->low << ", " << q->high << "], true " << value) {
            BOOST_TEST(q->value == value, boost::test_tools::tolerance(0.05));
            BOOST_TEST(q->low < q->value);
            BOOST_TEST(q->high > q->value);
        }
    }
    BOOST_TEST((pattern::curl_of(find(read.value(), "curve_diameter")->value) == pattern::Curl::medium));
    BOOST_TEST(read->strands.size() >= t.shot.strands.size());
    BOOST_TEST(read->strands.size() == read->shapes.size());
}

BOOST_AUTO_TEST_CASE(an_empty_sheet_has_no_pattern) {
    const Taken t = take(9, false);
    const auto read = pattern::measure_pattern(t.photo, t.calibration);
    BOOST_REQUIRE(read.ok());
    BOOST_TEST(read->readings.empty());
    BOOST_REQUIRE_EQUAL(read->refused.size(), 3u);
    for (const Refusal& refusal : read->refused) BOOST_TEST(refusal.code == "no-strand");
}

BOOST_AUTO_TEST_CASE(strands_that_lie_on_each_other_give_no_lengths) {
    const Taken t = take(9, true, 0);
    const auto read = pattern::measure_pattern(t.photo, t.calibration);
    BOOST_REQUIRE(read.ok());
    BOOST_TEST(!find(read.value(), "strand_length"));
    BOOST_TEST(!find(read.value(), "wave_ratio"));
    BOOST_REQUIRE(!read->refused.empty());
    for (const Refusal& refusal : read->refused) BOOST_TEST(refusal.code == "strands-doubtful");
}

BOOST_AUTO_TEST_CASE(a_photo_without_the_sheet_or_too_coarse_is_refused) {
    Photo none = take(9, false).photo;
    none.pixels.setTo(cv::Scalar(200, 190, 180));
    const auto missing = pattern::measure_pattern(none, card::calibrate(none));
    BOOST_REQUIRE(!missing.ok());
    BOOST_TEST((missing.error().kind == ErrorKind::refused));
    const Taken t = take(6, true);
    const auto coarse = pattern::measure_pattern(t.photo, t.calibration);
    BOOST_REQUIRE(!coarse.ok());
    BOOST_TEST(coarse.error().code == "too-coarse");
}

BOOST_AUTO_TEST_SUITE_END()
