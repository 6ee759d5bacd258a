// Colours of root, mid and end with their uncertainty, and the readings made of them.
#pragma once

#include <array>
#include <optional>

#include "tone/strand_fit.h"
#include "tone/tone.h"

namespace kempt::tone {

struct Zones {
    std::array<cv::Vec3d, 3> lab;        // root, mid, end
    std::array<bool, 3> told;            // false: a highlight hides it, or too few of its rows could be seen
    std::array<double, 3> highlight_sd;  // CIEDE2000 that the split of body and highlight leaves open
    std::array<bool, 3> seen;            // enough rows
    cv::Matx<double, 9, 9> open;         // covariance of L, a, b of root, mid, end that the split leaves
    cv::Matx<double, 9, 9> covariance;   // with what the model does not know
};

// body: Lab of each row with the highlight taken out. doubt: 1; more where the card's light is only roughly known.
[[nodiscard]] Zones zones_of(const StrandModel& model, const StrandFit& fit, const std::vector<cv::Vec3d>& body,
                             double zone_share, double doubt);
// Largest CIEDE2000 between the three, with its 95 % interval; empty when a highlight leaves it open. What a highlight
// hides of all three alike does not hide their differences.
[[nodiscard]] std::optional<Quantity> spread_of(const Zones& zones);
// Level of the mid-shaft.
[[nodiscard]] Quantity level_of(const Zones& zones);

}  // namespace kempt::tone
