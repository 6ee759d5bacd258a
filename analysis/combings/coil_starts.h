// Where a strand that is mixed up at its own turns can be followed from once more, and how it goes on from there.
#pragma once

#include <vector>

#include "combings/chains.h"
#include "combings/coil_track.h"
#include "combings/near_points.h"

namespace kempt::combings {

struct CoilStart {
    size_t chain = 0;
    CoilState state;
};
// group: chains of one strand. First turns that a chain runs through as a coil does, the truest first; then stretches
// on which a chain is by itself, each with several guesses of how fast the coil advances along its axis.
// usual_curvature: of the photo's strands, 1/px.
[[nodiscard]] std::vector<CoilStart> coil_starts(const std::vector<Chain>& chains, const std::vector<size_t>& group,
                                                 const ChainPoints& points, double usual_curvature);

// The turns alone, of chains of several strands.
[[nodiscard]] std::vector<CoilStart> coil_turns(const std::vector<Chain>& chains, const std::vector<size_t>& group);

}  // namespace kempt::combings
