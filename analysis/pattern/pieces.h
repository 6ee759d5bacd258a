// Traced lines that belong to one strand: the pattern is measured on strands that do not touch each other, so lines
// whose ends meet another line are pieces of the same one.
#pragma once

#include <vector>

#include "combings/trace.h"
#include "pattern/pattern.h"

namespace kempt::pattern {

struct Course {
    // Where it bends far more sharply than elsewhere, 2 mm apart or more: a hair's own bends are wider than 4 mm in
    // radius unless it is curly all along.
    std::vector<double> kinks_mm;
    double swings_per_mm = 0;  // how often it changes from bending left to bending right
};
// shape_of, and where the tracer may have gone astray.
[[nodiscard]] Result<Shape> shape_and_course(const std::vector<cv::Point2d>& path_mm, double noise_mm, Course* course);

enum class Followed {
    whole,   // one line from end to end, without a guess and inside the field
    nearly,  // one such line that guesses at its own crossings, wavers, kinks, lies along another or bridges a gap, or
             // has a little more beside it
    unsure   // several lines, torn off, out of the field, or mixed up with another strand
};
struct Whole {                       // a strand
    std::vector<Shape> pieces;       // that tell how it bends: of its lines, or of their parts between kinks
    std::vector<std::size_t> lines;  // of Traced::strands, longest first
    Followed followed = Followed::unsure;
    bool guessed = false;   // at one of its own crossings or more
    bool cut_off = false;   // a line of it runs out of the field, as creases do
    double arc_mm = 0;      // of the one line, or the lines' sum
    double wave_ratio = 0;  // of the longest line; 0: cannot be told
    // 2 / mean curvature over its pieces and its SD as a share; 0 without pieces.
    [[nodiscard]] double curve_diameter_mm() const;
    [[nodiscard]] double curve_diameter_sd() const;
};
// Longest first. Creases and other lines that are no hair are left out, but for those inside the field that are about
// as long as the strands: they may be strands too faint to follow, and are unsure and without pieces.
[[nodiscard]] std::vector<Whole> wholes_of(const combings::Traced& traced);

}  // namespace kempt::pattern
