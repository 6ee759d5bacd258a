// Photos of single strands laid on the gauge sheet, with the true shape of each.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "render/sheet.h"

namespace bench {

inline constexpr int pattern_classes = 6;
extern const char* const pattern_names[pattern_classes];  // straight .. very tight, by how the hair grows

struct PatternCase {
    render::SheetScene scene;
    std::vector<render::LooseStrand> strands;  // apart from each other when laid down
    int pattern = 0;
};
// person: hair, its pattern and the strands. shot: light, phone, camera. loosened: coils this much wider and its
// square more drawn out, waves this much flatter, strands a sixth of the excess longer. hair_colour, pattern below 0:
// any.
[[nodiscard]] PatternCase pattern_case(uint64_t person, uint64_t shot, int hair_colour = -1, int pattern = -1,
                                       double loosened = 1);

struct TrueShape {
    double curve_diameter_mm = 0, wave_ratio = 0, arc_mm = 0;
};
// Of a polyline without noise: total turning and length. A polyline's corners turn as much as the curve does.
[[nodiscard]] TrueShape true_shape(const std::vector<render::V2>& path_mm);

struct PatternShot {
    render::SheetShot shot;
    std::vector<TrueShape> strands;
    TrueShape median;  // of each figure
};
// Of the strands that lie there, those that nobody can follow in the photo: over 2 mm or more a part of the strand runs
// along another (within 20 degrees) at less than 2.5 px, where two lines look like one: a hair is a pixel wide and its
// picture two, and lines are told apart from the width of their picture on (Rayleigh's rule, from memory).
[[nodiscard]] int merged_strands(const render::SheetShot& shot);

// lie: how the strands fall.
[[nodiscard]] PatternShot take_pattern(const PatternCase& scene, uint64_t lie);

}  // namespace bench
