// Follows a strand on from an end where the ridge was lost: at a crossing, where it is faint, beside another strand. It
// keeps the direction and bend, leans to the darkest way where nothing else is near, and goes on while the paper under
// it is more likely hair than bare (a sequential probability ratio, Wald 1945).
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/chains.h"
#include "combings/work.h"

namespace kempt::combings {

// Joins ends that are reached from each other, and lengthens those that go on by themselves.
// paper_sd: SD of the darkness of bare paper over a few pixels.
[[nodiscard]] std::vector<Chain> follow_ends(std::vector<Chain> chains, const Bends& usual, float paper_sd,
                                             const Darkness& darkness, Work& work);

}  // namespace kempt::combings
