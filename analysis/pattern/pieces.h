// Traced lines that belong to one strand: the pattern is measured on strands that do not touch each other, so lines
// whose ends meet another line are pieces of the same one.
#pragma once

#include <vector>

#include "combings/trace.h"
#include "pattern/pattern.h"

namespace kempt::pattern {

struct Piece {
    std::size_t line = 0;  // of Traced::strands
    Shape shape;
};
struct Whole {                  // a strand, or what is known of it
    std::vector<Piece> pieces;  // longest first; those that have a shape
    double length_mm = 0;       // of all its lines
    double chord_mm = 0;        // between the two ends of lines that lie farthest apart
    double guessed_mm = 0;  // of the length: bridged paper, ways shared with another line, lines too short for a shape
    bool clear = false;     // one line from end to end, without a guess and inside the field
    bool cut_off = false;
    // 2 / mean curvature over its pieces and its SD as a share; 0 without pieces.
    [[nodiscard]] double curve_diameter_mm() const;
    [[nodiscard]] double curve_diameter_sd() const;
};
// Longest first. Lines whose points scatter several times as much as those of the other lines are left out of the
// pieces: creases of the paper, and noise.
[[nodiscard]] std::vector<Whole> wholes_of(const combings::Traced& traced);

}  // namespace kempt::pattern
