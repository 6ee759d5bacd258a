// Two chains that lie on each other along a stretch, each ending on the other's way, are one strand that was followed
// from both sides; a chain all of whose way lies beside a clearer one is that one's shadow or was traced twice.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/chains.h"
#include "combings/work.h"

namespace kempt::combings {

struct OverlapOptions {
    double same_px = 4;       // apart, on one line
    double beside_px = 11;    // apart, a strand and its shadow
    double longest_px = 500;  // of a stretch that ends on both sides
};

// `covered` takes the chains that lie beside others all their way.
[[nodiscard]] std::vector<Chain> join_overlaps(std::vector<Chain> chains, cv::Size photo, const OverlapOptions& options,
                                               std::vector<Chain>& covered, Work& work);

}  // namespace kempt::combings
