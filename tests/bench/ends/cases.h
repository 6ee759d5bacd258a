// Photos of ends on the gauge sheet with their truth, for bench and tests.
#pragma once

#include <cstdint>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "render/hem.h"

namespace bench {

// Width of a cut end as a share of the strand's: cut, not broken off thin.
inline constexpr double strand_taper = 0.85;

struct EndsOptions {
    int hair_colour = -1;  // -1: any
    kempt::card::Ground ground = kempt::card::Ground::white;
    int view = -1;         // 0 close with the card, 1 the whole sheet without; -1: one in four is the whole sheet
    double px_per_mm = 0;  // 0: 10-15 close, 8.3-9.3 the whole sheet
    double tilt_max_deg = 12;
    double phone_strength = 0.7;
};

struct EndsCase {
    render::SheetScene scene;
    render::HemHair hair;
    render::HemLie lie;
    int view = 0;
};
// person: hair, paper, cut. day: how it was laid down. shot: light, phone, camera.
[[nodiscard]] EndsCase ends_case(uint64_t person, uint64_t day, uint64_t shot, const EndsOptions& options = {});

struct EndsShot {
    render::Shot photo;
    render::HemTruth truth;
    std::vector<cv::Point2d> region_px;
    std::vector<float> cover;
};
[[nodiscard]] EndsShot take_ends(const EndsCase& scene, uint64_t hand);

}  // namespace bench
