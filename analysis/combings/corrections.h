// What a person corrects among traced strands: one that is no hair, two that are one, one that is a hair of its own.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "combings/combings.h"

namespace kempt::combings {

struct Corrections {
    std::vector<cv::Point2d> not_hair_px;               // a point on each strand that is no hair
    std::vector<std::array<cv::Point2d, 2>> joined_px;  // a point on each of two strands that are one
    std::vector<cv::Point2d> whole_px;  // a point on each strand that is a hair of its own, however its ends look
    [[nodiscard]] bool none() const { return not_hair_px.empty() && joined_px.empty() && whole_px.empty(); }
};

// How far a point may lie from the strand that it means, mm: points are stored on the path of the strand, and a path
// traced anew by a later method lies within a hair's breadth or two of it.
inline constexpr double correction_reach_mm = 1.5;

// The strands as corrected, longest first. A point means the strand that it lies nearest to, among the strands as they
// were traced; without one within reach it changes nothing. Strands are joined at the two ends that lie nearest to each
// other, and the way between them counts; what is joined to something that is no hair is no hair either. What is
// said to be whole is counted for itself with both its ends, all of it where it was joined; what runs out of the sheet
// stays cut off.
[[nodiscard]] std::vector<Strand> corrected(const std::vector<Strand>& strands, const Corrections& corrections,
                                            const card::Calibration& calibration);

// The whole comb-out as corrected: strands, and the readings from them.
[[nodiscard]] CombingsReadings corrected(const CombingsReadings& traced, const Corrections& corrections,
                                         const card::Calibration& calibration, const CombingsOptions& options = {});

}  // namespace kempt::combings
