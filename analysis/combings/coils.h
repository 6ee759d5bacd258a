// Curls that were mixed up at their own turns are followed once more from a stretch that is sure, and what so runs over
// the lines from end to end takes their place.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/chains.h"
#include "combings/work.h"

namespace kempt::combings {

// apart: strands lie apart from each other, so lines that touch are one strand, and the new way must run over all of
// them. Else it must run over two lines or more and leave the others whole. Curls alone are followed again. `shadows`
// takes the lines that lie beside such a way all along.
[[nodiscard]] std::vector<Chain> retraced_coils(std::vector<Chain> chains, bool apart, const Bends& usual,
                                                double px_per_mm, const Darkness& darkness, std::vector<Chain>& shadows,
                                                Work& work);

}  // namespace kempt::combings
