// How far the edge itself has moved between two photos that are laid over each other by skin or anchors.
#pragma once

#include <vector>

#include "work/line_up.h"

namespace kempt::work {

struct EdgeShift {
    // At even steps of the earlier line: how far the later line stands outside it, towards bare skin (positive: the
    // edge has come forward), where the later line runs beside it.
    std::vector<double> at_mm;         // along the earlier line
    std::vector<double> forward_mm;    // as many
    double mean_mm = 0;                // over those places
    double most_mm = 0, least_mm = 0;  // the farthest forward and the farthest back
};

// Distance to the nearest point of the later line; the sign by the hair's side of the earlier one. Places beyond the
// ends of the later line are left out; with none left `at_mm` is empty.
[[nodiscard]] EdgeShift edge_shift(const MarkedLine& earlier, const MarkedLine& later, const Rigid& earlier_from_later);

}  // namespace kempt::work
