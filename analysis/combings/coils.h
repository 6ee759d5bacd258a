// Strands that lie apart from each other: lines that touch are one strand, mixed up at its own turns. It is followed
// once more from a stretch of it that is sure, and what so runs over the lines from end to end takes their place.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/chains.h"
#include "combings/work.h"

namespace kempt::combings {

// Curls alone are followed again. `shadows` takes the lines that lie beside such a way all along.
[[nodiscard]] std::vector<Chain> retraced_coils(std::vector<Chain> chains, const Bends& usual, double px_per_mm,
                                                const Darkness& darkness, std::vector<Chain>& shadows, Work& work);

}  // namespace kempt::combings
