// The mean light of the lane every step along the strand, as a whole and by strips beside each other.
#pragma once

#include <array>
#include <vector>

#include "tone/lane.h"
#include "tone/strand_model.h"

namespace kempt::tone {

// Sums of light over what is seen of a row, and the cells that it was summed over, for strips of even width.
struct StripRow {
    static constexpr size_t strips = 5;
    std::array<cv::Vec3d, strips> light;
    std::array<double, strips> cells{};
};

// Rows that could not be seen, by reason.
struct Lost {
    int outside = 0, under_card = 0, burnt = 0, black = 0, all = 0;
};

struct LaneRows {
    Rows rows;
    std::vector<StripRow> strips;  // one a row
    Lost lost;
};

[[nodiscard]] LaneRows rows_of(const Lane& lane, double step_mm);

}  // namespace kempt::tone
