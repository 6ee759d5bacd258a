// A photo's bytes through intake, calibration, gate and edge readings, in memory.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "card/calibration.h"
#include "card/gate.h"
#include "edges/edges.h"
#include "render/close_up.h"

namespace bench {

struct Measured {
    kempt::card::Calibration calibration;
    kempt::card::GateReport gate;
    std::map<std::string, kempt::Quantity> readings;
    std::map<std::string, std::string> refused;  // name to code
    std::string error;
    double contrast = 0;
};

Measured measure(const std::vector<uint8_t>& jpeg, const kempt::edges::EdgeMarks& marks);

// The truth's edge line as a hand would draw it: a slow drift and a jitter at each click (SD noise_mm and half of it),
// a click every 4 mm; noise_mm 0 gives the line itself.
kempt::edges::EdgeMarks drawn(const render::Shot& shot, double px_per_mm, double noise_mm, uint64_t seed);

}  // namespace bench
