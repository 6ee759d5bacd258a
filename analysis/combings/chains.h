// Lines and the joins between them, strung to whole strands.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/joins.h"

namespace kempt::combings {

struct Chain {
    std::vector<cv::Point2f> at;  // from end to end, about a pixel apart, bridges included
    std::vector<float> strength;  // of the ridge; below 0 on a bridge
    LineEnd end[2];               // first and last
    int doubts = 0;               // joins that could have been made otherwise
    double blank_px = 0;          // paper bridged
    double shared_px = 0;         // of its way along another strand
    std::vector<cv::Point2f> doubtful_at;
};
[[nodiscard]] std::vector<Chain> chains_of(const std::vector<Line>& lines, const std::vector<LineEnd>& ends,
                                           const std::vector<Join>& joins);

// Ends 2 c and 2 c + 1 of chains, for join_ends().
[[nodiscard]] std::vector<LineEnd> ends_of(const std::vector<Chain>& chains);
// Chains strung together by joins of those ends.
[[nodiscard]] std::vector<Chain> joined(std::vector<Chain> chains, const std::vector<Join>& joins);

// Without those that lie on others from end to end, or nearly so: a piece between two crossings through which the joins
// of both strands go already.
[[nodiscard]] std::vector<Chain> without_covered(std::vector<Chain> chains, cv::Size photo, Work& work);

}  // namespace kempt::combings
