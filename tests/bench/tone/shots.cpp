#include "shots.h"

#include <QByteArray>
#include <chrono>
#include <cmath>
#include <cstdio>

#include "bench/support/rows.h"
#include "card/calibration.h"
#include "colour/colour.h"
#include "intake/intake.h"
#include "render/write_photo.h"
#include "tone/level.h"

namespace bench {

namespace {
constexpr int jpeg_quality = 88;

kempt::colour::Lab as_lab(render::V3 v) {
    return {v.x, v.y, v.z};
}

std::vector<cv::Point2d> drawn(const render::ToneTruth& truth, const Hand& hand, double px_per_mm) {
    render::Rng rng(hand.seed);
    std::vector<cv::Point2d> all, line;
    for (const render::V2& p : truth.line_px) all.emplace_back(p.x, p.y);
    for (size_t i = 0; i < all.size(); i += 3) line.push_back(all[i]);
    if ((all.size() - 1) % 3 != 0) line.push_back(all.back());
    for (size_t i = 0; i < line.size(); ++i) {
        const cv::Point2d course = line[std::min(i + 1, line.size() - 1)] - line[i ? i - 1 : 0];
        const cv::Point2d along = course * (1 / std::max(1e-9, std::hypot(course.x, course.y)));
        const double aside = (hand.aside_mm + rng.normal(0, hand.jitter_mm)) * px_per_mm;
        line[i] += cv::Point2d(-along.y, along.x) * aside;
        if (i == 0) line[i] += along * (hand.along_mm * px_per_mm);
    }
    return line;
}
}  // namespace

ToneShot measure_panel(const render::TonePanel& panel, const Hand& hand) {
    ToneShot out;
    const render::PanelShot shot = render::take(panel.panel);
    out.truth = render::tone_truth(panel, shot.truth);
    const auto bytes = render::jpeg_of(shot.shot, jpeg_quality, panel.panel.scene.phone.display_p3, {});
    const auto decoded = kempt::intake::decode(
        QByteArray(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())));
    if (!decoded) {
        out.error = decoded.error().code;
        return out;
    }
    const auto calibration = kempt::card::calibrate(decoded->photo);
    const auto line = drawn(out.truth, hand, shot.truth.px_per_mm);
    const auto start = std::chrono::steady_clock::now();
    auto got = kempt::tone::measure_tone(decoded->photo, calibration, line);
    out.measure_ms = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
    if (got)
        out.got = std::move(*got);
    else
        out.error = got.error().code;
    return out;
}

std::vector<double> zone_errors(const ToneShot& shot) {
    const std::optional<kempt::colour::Lab>* got[3] = {&shot.got.root, &shot.got.mid, &shot.got.end};
    const render::V3 truth[3] = {shot.truth.root, shot.truth.mid, shot.truth.end};
    std::vector<double> errors;
    for (int z = 0; z < 3; ++z)
        errors.push_back(*got[z] ? kempt::colour::ciede2000(**got[z], as_lab(truth[z])) : std::nan(""));
    return errors;
}

double level_truth(const ToneShot& shot) {
    return kempt::tone::level_of_lightness(shot.truth.mid.x);
}

std::string reading_cells(const ToneShot& shot, const std::string& name, double truth) {
    std::string cells = "," + fixed(truth, 4);
    for (const auto& q : shot.got.readings)
        if (q.name == name)
            return cells + "," + fixed(q.value, 4) + "," + fixed(q.low, 4) + "," + fixed(q.high, 4) + ",";
    std::string code = shot.error.empty() ? "none" : shot.error;
    for (const auto& r : shot.got.refused)
        if (r.name == name) code = r.code;
    return cells + ",,,," + code;
}

}  // namespace bench
