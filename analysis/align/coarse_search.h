// First guesses of turn and shift between two textures: correlation over all shifts, for many turns.
#pragma once

#include "align/texture.h"

namespace kempt::align {

// later_mm = R(turn_rad) (p - middle_mm) + middle_mm + shift_mm.
struct Guess {
    double turn_rad = 0;
    cv::Vec2d shift_mm;
    double strength = 0;  // how far it stands out from all other shifts, in standard deviations
};

struct SearchOptions {
    double shift_mm = 20, turn_deg = 12, turn_step_deg = 0.75;
    int guesses = 6;
    double base_turn_rad = 0;  // about which turns and shifts are tried
    cv::Vec2d base_shift_mm{0, 0};
};

// The strongest guesses, at least 3 mm or 4 degrees from each other, best first. middle_mm: of the earlier skin.
// Correlation of two masked pictures by Fourier transform (Padfield 2012, IEEE Trans Image Process 21:2706), where unit
// variance everywhere saves its local sums.
[[nodiscard]] std::vector<Guess> search(const Texture& earlier, const Texture& later, cv::Point2d middle_mm,
                                        const SearchOptions& options);

}  // namespace kempt::align
