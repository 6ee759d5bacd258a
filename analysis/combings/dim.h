// Strands so dim that no point of them is clearer than the paper's noise: found by summing light along straight pieces
// in all directions, as an eye does. They are marked, not counted.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/darkness.h"
#include "combings/field.h"
#include "combings/work.h"

namespace kempt::combings {

using Way = std::vector<cv::Point2f>;  // pixels, from end to end

struct DimOptions {
    double beside_px = 9;   // from what is marked already: not looked at
    double shadow_px = 18;  // what runs so near along a strand is its shadow
    double least_px = 90;   // shorter ways are dust and grain
};

// `strands`: traced. `marked`: what else has a mark. Gives ways with a point each 2 px or so; none where it was
// stopped.
[[nodiscard]] std::vector<Way> dim_ways(const Darkness& darkness, const Field& field, const std::vector<Way>& strands,
                                        const std::vector<Way>& marked, const DimOptions& options, Work& work);

}  // namespace kempt::combings
