// One CSV row a panel, a true line of demarcation, or a painted patch (column `kind`).
#include <QByteArray>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <opencv2/imgproc.hpp>

#include "bench/support/rows.h"
#include "card/calibration.h"
#include "card/card_layout.h"
#include "colour/colour.h"
#include "intake/intake.h"
#include "render/write_photo.h"
#include "shots.h"

namespace bench {

namespace {

// A found line belongs to a true one when it lies this near: the wanted place is within 2 mm, the nearest two true
// lines are 20 mm apart.
constexpr double same_line_mm = 6;

void print_panel(uint64_t seed, const render::CardPicture& card) {
    render::TonePanelOptions options;
    options.panel.light = static_cast<render::PanelLight>(seed % 4);
    options.panel.hair_colour = static_cast<int>(seed / 4 % render::hair_colours);
    const render::TonePanel panel = render::tone_panel(seed * 7919 + 3, seed * 104729 + 77, card, options);
    render::Rng rng(seed * 13 + 1);
    const ToneShot shot =
        measure_panel(panel, {.aside_mm = rng.normal(0, 1.5), .along_mm = rng.normal(0, 0.3), .seed = seed});
    const std::vector<double> errors = zone_errors(shot);
    const auto& scene = panel.panel.scene;
    const auto common = [&](const char* kind) {
        std::printf("%s,%llu,%d,%d,%.3f,%.3f,%.1f", kind, static_cast<unsigned long long>(seed), scene.hair_colour,
                    static_cast<int>(options.panel.light), scene.hair.gloss, panel.plan.drift.x,
                    scene.camera.px_per_mm);
    };
    const auto& found = shot.got.lines;
    int not_true = 0;
    for (const auto& line : found)
        not_true += std::none_of(shot.truth.lines.begin(), shot.truth.lines.end(), [&](const render::ToneLine& t) {
            return std::abs(t.at_mm - line.at_mm) <= same_line_mm;
        });
    common("panel");
    std::printf(",%s", shot.error.c_str());
    for (const double e : errors) std::printf(",%s", std::isnan(e) ? "" : fixed(e, 4).c_str());
    std::printf("%s%s,%zu,%d,%.2f", reading_cells(shot, "tone_spread", shot.truth.spread).c_str(),
                reading_cells(shot, "tone_level", level_truth(shot)).c_str(), shot.truth.lines.size(), not_true,
                shot.measure_ms);
    std::printf(",,,,,,,,,\n");
    for (const render::ToneLine& line : shot.truth.lines) {
        common("line");
        std::printf(",%s,,,,,,,,,,,,,,,,,%.4f,%.4f,%.4f", shot.error.c_str(), line.step, line.at_mm, line.width_mm);
        const auto nearest = std::min_element(found.begin(), found.end(), [&](const auto& a, const auto& b) {
            return std::abs(a.at_mm - line.at_mm) < std::abs(b.at_mm - line.at_mm);
        });
        if (nearest != found.end() && std::abs(nearest->at_mm - line.at_mm) <= same_line_mm)
            std::printf(",%.4f,%.4f,%.4f,%.4f,%.4f,%.4f\n", nearest->step, nearest->step_low, nearest->step_high,
                        nearest->at_mm, nearest->at_low, nearest->at_high);
        else
            std::printf(",,,,,,\n");
    }
    std::fflush(stdout);
}

// The card alone: flat paint beside it, corrected by its curve, gains and gradient.
void print_patches(uint64_t seed, const render::CardPicture& card) {
    const auto light = static_cast<render::PanelLight>(seed % 4);
    const render::PatchShot shot = render::patch_shot(seed, card, light);
    const auto bytes = render::jpeg_of(shot.shot, 88, shot.display_p3, {});
    const auto decoded = kempt::intake::decode(
        QByteArray(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())));
    if (!decoded) return;
    const auto calibration = kempt::card::calibrate(decoded->photo);
    if (!calibration.light) return;
    const cv::Mat linear = kempt::card::LightMap(decoded->photo, calibration).linear(decoded->photo.pixels);
    for (size_t k = 0; k < shot.lab.size(); ++k) {
        std::vector<cv::Point> area;
        cv::Point2d middle;
        for (const render::V2& p : shot.area_px[k]) {
            area.emplace_back(cvRound(p.x), cvRound(p.y));
            middle += cv::Point2d(p.x, p.y) * 0.25;
        }
        cv::Mat mask(linear.size(), CV_8U, cv::Scalar(0));
        cv::fillConvexPoly(mask, area, 255);
        const cv::Scalar mean = cv::mean(linear, mask);
        const cv::Point2d off = kempt::card::mm_from_px(calibration, middle) -
                                cv::Point2d(kempt::card::card_width_mm / 2, kempt::card::card_height_mm / 2);
        const cv::Vec2d slope = calibration.light->gradient_direction * (calibration.light->gradient_per_cm / 10);
        const double even = std::exp(-(off.x * slope[0] + off.y * slope[1]));
        const double error =
            kempt::colour::ciede2000(kempt::colour::lab_from_linear_srgb(cv::Vec3d(mean[0], mean[1], mean[2]) * even),
                                     {shot.lab[k].x, shot.lab[k].y, shot.lab[k].z});
        // Skin in the first six, then hair.
        std::printf("%s,%llu,%d,%d,,,,,%.4f,,,,,,,,,,,,,,,,,,,,,,,,\n", k < 6 ? "skin_paint" : "hair_paint",
                    static_cast<unsigned long long>(seed), k < 6 ? -1 : static_cast<int>(k) % render::hair_colours,
                    static_cast<int>(light), error);
    }
    std::fflush(stdout);
}

}  // namespace

void print_rows(uint64_t first, uint64_t count) {
    const render::CardPicture card = render::printed_card();
    std::printf("kind,seed,hair,light,gloss,drift,px_per_mm,error,root_de,mid_de,end_de");
    for (const char* name : {"tone_spread", "tone_level"})
        std::printf(",%s_true,%s,%s_low,%s_high,%s_refused", name, name, name, name, name);
    std::printf(",lines,false_lines,ms,step_true,at_true,width_true,step,step_low,step_high,at,at_low,at_high\n");
    for (uint64_t seed = first; seed < first + count; ++seed) {
        print_panel(seed, card);
        if (seed % 5 < 2) print_patches(seed, card);
    }
}

}  // namespace bench
