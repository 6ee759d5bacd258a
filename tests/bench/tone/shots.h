// Photos of tone panels as the program gets them, measured.
#pragma once

#include <string>
#include <vector>

#include "render/panel_tone.h"
#include "tone/tone.h"

namespace bench {

struct ToneShot {
    render::ToneTruth truth;
    kempt::tone::ToneReadings got;
    std::string error;
    double measure_ms = 0;
};

// How a hand draws the strand line again: the whole line shifted sideways, its first point along the hair, and a jitter
// at each click (a click every 15 mm).
struct Hand {
    double aside_mm = 0, along_mm = 0, jitter_mm = 0.4;
    uint64_t seed = 1;
};
[[nodiscard]] ToneShot measure_panel(const render::TonePanel& panel, const Hand& hand);

// CIEDE2000 of the readings' zones to the truth; NaN where the zone was not told.
[[nodiscard]] std::vector<double> zone_errors(const ToneShot& shot);

// One reading's cells: truth, value, low, high, code of the refusal, each after a comma.
[[nodiscard]] std::string reading_cells(const ToneShot& shot, const std::string& name, double truth);
[[nodiscard]] double level_truth(const ToneShot& shot);

void print_rows(uint64_t first, uint64_t count);
void print_pairs(uint64_t first, uint64_t count);
int print_table(const std::string& rows, const std::string& pairs);

}  // namespace bench
