// Strands that lie apart from each other: lines that touch are one strand, mixed up at its own turns. It is followed
// once more from a clear stretch of it, and what goes from end to end over the lines takes their place.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/chains.h"
#include "combings/work.h"

namespace kempt::combings {

// Tightly curled hair alone is followed again: where the usual curve diameter of the lines is below `widest_mm`.
[[nodiscard]] std::vector<Chain> retraced_coils(std::vector<Chain> chains, const Bends& usual, double px_per_mm,
                                                const Darkness& darkness, Work& work);

}  // namespace kempt::combings
