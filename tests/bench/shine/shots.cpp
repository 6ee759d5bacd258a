#include "bench/shine/shots.h"

#include <algorithm>
#include <chrono>
#include <cmath>

#include <QByteArray>

#include "intake/intake.h"
#include "render/write_photo.h"
#include "shine/profile_luster.h"

namespace bench {

ShineTruth truth_of(const render::Panel& panel, const render::PanelTruth& truth) {
    // The region's rows at even steps of the card's plane.
    std::vector<double> at, total, surface;
    for (size_t i = 0; i < truth.s_mm.size(); ++i) {
        if (truth.s_mm[i] < panel.region_from_mm || truth.s_mm[i] > panel.region_to_mm) continue;
        at.push_back(truth.plane_mm[i]), total.push_back(truth.total[i]), surface.push_back(truth.surface[i]);
    }
    constexpr double step = 0.25;
    std::vector<double> even_total, even_surface;
    size_t k = 0;
    for (double x = at.front(); x <= at.back(); x += step) {
        while (k + 2 < at.size() && at[k + 1] < x) ++k;
        const double t = (x - at[k]) / (at[k + 1] - at[k]);
        even_total.push_back(total[k] + t * (total[k + 1] - total[k]));
        even_surface.push_back(surface[k] + t * (surface[k + 1] - surface[k]));
    }
    // Body at the ends: mean over a twentieth of the length, as single rows carry the chance of single fibres.
    const size_t n = even_total.size(), rim = std::max<size_t>(1, n / 20);
    double first = 0, last = 0;
    for (size_t i = 0; i < rim; ++i) {
        first += (even_total[i] - even_surface[i]) / static_cast<double>(rim);
        last += (even_total[n - 1 - i] - even_surface[n - 1 - i]) / static_cast<double>(rim);
    }
    std::vector<double> curve(n);
    for (size_t i = 0; i < n; ++i)
        curve[i] = even_surface[i] + first + (last - first) * static_cast<double>(i) / static_cast<double>(n - 1);
    const auto figures = kempt::shine::luster_of(curve, step);
    const auto crest =
        static_cast<size_t>(std::max_element(even_surface.begin(), even_surface.end()) - even_surface.begin());
    const double rise = even_surface[crest] / std::max(1e-6, even_total[crest] - even_surface[crest]);
    // What ruffled fibres throw about evenly is surface light too, but no highlight: it lies under the line that joins
    // the ends, as the body does.
    const double all = kempt::shine::luster_of(even_total, step).whole;
    const double strength = all > 0 ? (figures.whole - figures.line) / all : 0;
    return {figures.stamm, figures.width, figures.luster, truth.alignment, strength, rise};
}

double true_value(const ShineTruth& truth, int reading) {
    return reading == 0   ? truth.contrast
           : reading == 1 ? truth.width_mm
           : reading == 2 ? truth.luster
                          : truth.alignment;
}

render::Panel usable_panel(uint64_t person_seed, uint64_t shot_seed, const render::CardPicture& card,
                           render::PanelOptions options) {
    render::Rng person(person_seed + 17);
    options.least_key_share = 0.5;
    options.region_half_mm = person.uniform(18, 28);
    render::Panel panel = render::panel(person_seed, shot_seed, card, options);
    panel.gaps = person.log_uniform(0.03, 0.2);
    return panel;
}

ShineShot photograph_and_measure(const render::Panel& panel, double hand_mm, uint64_t hand_seed) {
    ShineShot out;
    const render::PanelShot taken = render::take(panel);
    out.panel = taken.truth;
    out.truth = truth_of(panel, taken.truth);
    const auto jpeg = render::jpeg_of(taken.shot, 85, panel.scene.phone.display_p3, {});
    const auto decoded = kempt::intake::decode(
        QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
    if (!decoded) {
        out.error = decoded.error().code;
        return out;
    }
    const auto calibration = kempt::card::calibrate(decoded->photo);
    render::Rng hand(hand_seed);
    std::vector<cv::Point2d> region;
    for (const auto& p : taken.truth.region_px)
        region.emplace_back(p.x + hand.normal(0, hand_mm) * taken.truth.px_per_mm,
                            p.y + hand.normal(0, hand_mm) * taken.truth.px_per_mm);
    const auto start = std::chrono::steady_clock::now();
    const auto result = kempt::shine::measure_shine(decoded->photo, calibration, region);
    out.milliseconds = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
    if (!result) {
        out.error = result.error().code;
        return out;
    }
    for (const auto& q : result->readings) out.readings[q.name] = q;
    for (const auto& r : result->refused) out.refused[r.name] = r.code;
    out.light = result->light;
    return out;
}

}  // namespace bench
