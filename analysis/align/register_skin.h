// The core of the skin's way: two grounds with their skin's weights in, the map between them and its uncertainty out.
// Knows nothing of cards and photos.
#pragma once

#include "align/ground.h"
#include "align/skin_map.h"
#include "core/progress.h"
#include "core/result.h"

namespace kempt::align {

// Skin that belongs together has an evidence of this at least. 54 pairs of different people (rendered) reached 62 at
// most after the same search, made textures 60; of 109 pairs of one person all but three (plain skin, or relief under
// light from opposite sides: 26-64) lay above 83.
inline constexpr double least_evidence = 75;

struct RegisterOptions {
    double search_mm = 20, search_deg = 12;
    // Where the search begins: the earlier plane turned and then shifted about the middle of the line.
    double base_turn_rad = 0;
    cv::Vec2d base_shift_mm{0, 0};
    double least_evidence = align::least_evidence;
};

struct Registered {
    Fit fit;
    std::vector<Tie> ties;    // of the last round
    int looked_for = 0;       // patches of the earlier photo with enough skin
    double relief = 0;        // by how much the finest texture contradicts the rest, in standard uncertainties
    double skin_share = 0;    // of them, how many found their counterpart where the others say
    double standing_out = 0;  // of the guess that was taken, among all turns and shifts (coarse_search.h)
    double skin_mm2 = 0;      // seen in both, by the map
    double correlation = 0;   // over all of it
    double strength = 0;      // times the square root of its independent places
    // How much speaks for it: how the first guess stood out, times the strength that the last round reached.
    [[nodiscard]] double evidence() const { return standing_out * strength; }
};

// Weights say where skin is; the later one may also contain hair and background. line_mm: where the answer counts, in
// the earlier plane. Coarse search over turn and shift, then patches and a robust fit in three rounds from coarse to
// fine. Errors: refused ("too-little-skin": less than needed is bare or textured, or what was found again does not
// agree), cancelled.
[[nodiscard]] Result<Registered> register_skin(const Ground& earlier, const Ground& later,
                                               const std::vector<cv::Point2d>& line_mm, const RegisterOptions& options,
                                               const Progress& progress = {});

}  // namespace kempt::align
