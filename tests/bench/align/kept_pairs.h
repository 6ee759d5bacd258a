// What a rendered pair of visits leaves for the measurement, fresh or from a folder.
#pragma once

#include <opencv2/core.hpp>

#include "bench/align/visits.h"

namespace bench {

struct KeptPair {
    std::vector<uint8_t> earlier, later;            // JPEG
    std::string what;                               // skin,hair,px_per_mm,light,change,shift_mm,turn_deg
    std::vector<cv::Point2d> earlier_px, later_px;  // the same places of the edge line, every millimetre
    std::vector<cv::Point2d> drawn_px;              // the earlier line as a hand draws it (SD 0.3 mm)
    cv::Point2d earlier_hair, later_hair;
};

[[nodiscard]] KeptPair fresh_pair(uint64_t seed, const render::CardPicture& card);
// Rendered only when FOLDER/SEED.txt is not there.
[[nodiscard]] KeptPair kept_pair(uint64_t seed, const std::string& folder, const render::CardPicture& card);

}  // namespace bench
