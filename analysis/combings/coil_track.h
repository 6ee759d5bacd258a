// Follows one strand through its own turns. A curl laid on paper goes round and moves on at once: its course is the sum
// of a circle and an advance (a trochoid), both of which change slowly. Place, phase, radius and advance are kept in an
// extended Kalman filter (Kalman 1960, J Basic Eng 82:35-45); where turns lie in each other the way is what it
// foretells.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/darkness.h"
#include "combings/work.h"

namespace kempt::combings {

// At a place of the strand: it goes on by radius_px * (cos, sin)(phase) + advance_px for each radian of the phase,
// which grows (hand 1: from x towards y) or falls (hand -1).
struct CoilState {
    cv::Point2d at, advance_px;
    double phase = 0, radius_px = 0, hand = 1;
    [[nodiscard]] cv::Point2d velocity() const;  // px for each radian
    [[nodiscard]] CoilState back() const;        // the same place, travelled the other way
};
// About a pixel along the way; the radians it took.
double step_on(CoilState& state);

struct CoilTrack {
    std::vector<cv::Point2f> at;     // a pixel apart, from end to end
    std::vector<cv::Point2f> blind;  // middles of the stretches of 6 px and more on which nothing was seen by itself
    bool ended[2] = {false, false};  // on paper; else it ran on along itself, or too far
    double rode_px = 0;              // along other parts of itself
};
// sign: of the strand's darkness. longest_px: no strand is longer.
[[nodiscard]] CoilTrack track_coil(const CoilState& start, double sign, double longest_px, const Darkness& darkness,
                                   Work& work);

}  // namespace kempt::combings
