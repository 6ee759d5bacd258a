// Strands far fainter than the photo's others: no single piece of them is clearer than what noise makes, but pieces
// that follow each other along a smooth way are. They are marked, not counted.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/chains.h"
#include "combings/work.h"

namespace kempt::combings {

// `lines`: dark and bright ones that are no clearer than noise. `chains`: the strands; what lies beside them is their
// shadow or a rim. The bright lines tell what chance strings together: a way is taken that scores more than all of
// theirs. Gives ways of least_px or more.
[[nodiscard]] std::vector<std::vector<cv::Point2f>> faint_ways(const std::vector<Line>& lines,
                                                               const std::vector<Chain>& chains,
                                                               const Darkness& darkness, double least_px,
                                                               double beside_px, Work& work);

}  // namespace kempt::combings
