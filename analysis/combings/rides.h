// Strands that run into each other at a small angle share one line for some millimetres before they part again. A loose
// end that runs into a strand and another that leaves it further on belong together along that strand.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/chains.h"
#include "combings/work.h"

namespace kempt::combings {

struct RideOptions {
    double longest_px = 300;
    double most_cost = 14;  // of a ride: two torn ends cost 20
    double torn_cost = 20;
};
// Joins loose ends along shared lines, and decides at each which of the two strands goes which way.
[[nodiscard]] std::vector<Chain> join_along(std::vector<Chain> chains, const Bends& usual, const Darkness& darkness,
                                            Work& work, const RideOptions& options = {});

}  // namespace kempt::combings
