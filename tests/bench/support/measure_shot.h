// A rendered shot through calibration, gate and edge readings, in memory.
#pragma once

#include <map>
#include <string>

#include "card/calibration.h"
#include "card/gate.h"
#include "colour/colour.h"
#include "edges/edges.h"
#include "render/close_up.h"

namespace bench {

struct Measured {
    kempt::card::Calibration calibration;
    kempt::card::GateReport gate;
    std::map<std::string, kempt::Quantity> readings;
    std::map<std::string, std::string> refused;  // name to code
    std::string error;
};

// Through a real JPEG when quality > 0. marks_noise_mm: how unsteadily the line is drawn.
Measured measure(const render::Scene& scene, render::Shot& shot, int quality, double marks_noise_mm, uint64_t seed);

}  // namespace bench
