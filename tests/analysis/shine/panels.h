// Small rendered panels for the tests of this folder: 45 x 75 mm of hair with the card beside them.
#pragma once

#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "colour/colour.h"
#include "render/panel.h"
#include "render/write_photo.h"
#include "shine/profile_luster.h"
#include "shine/shine.h"

namespace panels {

struct Case {
    kempt::Photo photo;
    kempt::card::Calibration calibration;
    std::vector<cv::Point2d> region_px;
    render::PanelTruth truth;
};

inline render::Panel small_panel(uint64_t seed, int hair, double gloss) {
    static const render::CardPicture card = render::printed_card();
    render::PanelOptions options;
    options.hair_colour = hair;
    options.gloss = gloss;
    options.roughness_deg = 6;
    options.radius_mm = 75;
    options.length_mm = 78;
    options.region_half_mm = 16;
    options.px_per_mm = 9;
    options.tilt_max_deg = 6;
    options.phone_strength = 0.3;
    options.least_key_share = 0.6;
    options.card_place = render::CardPlace::left;
    render::Panel panel = render::panel(seed, seed + 1, card, options);
    panel.tilt_noise_deg = 2;
    panel.gaps = 0.08;
    panel.streaks_per_cm2 = 1;
    panel.scene.phone.display_p3 = false;
    panel.scene.phone.exposure = 0.75;
    panel.scene.light.key = render::unit({0.2, -0.05, 1});
    render::mark_region(panel, 3.2);
    return panel;
}

inline Case taken(const render::Panel& panel) {
    const render::PanelShot shot = render::take(panel);
    Case out;
    out.photo.pixels =
        cv::Mat(shot.shot.height, shot.shot.width, CV_8UC3, const_cast<uint8_t*>(shot.shot.rgb.data())).clone();
    out.photo.colour = kempt::colour::srgb_encoding();
    out.calibration = kempt::card::calibrate(out.photo);
    for (const auto& p : shot.truth.region_px) out.region_px.emplace_back(p.x, p.y);
    out.truth = shot.truth;
    return out;
}

inline const kempt::Quantity* find(const kempt::shine::ShineReadings& all, const std::string& name) {
    for (const auto& q : all.readings)
        if (q.name == name) return &q;
    return nullptr;
}
inline std::string refusal(const kempt::shine::ShineReadings& all, const std::string& name) {
    for (const auto& r : all.refused)
        if (r.name == name) return r.code;
    return "";
}

}  // namespace panels
