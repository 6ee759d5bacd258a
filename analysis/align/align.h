// Laying one visit's photo over another's: card scale, then anchors, then the skin and background that both show, never
// the hair that changes. Carries marks from the earlier photo to the later one.
#pragma once

#include <opencv2/core.hpp>
#include <string>
#include <vector>

#include "align/skin_map.h"
#include "card/calibration.h"
#include "core/photo.h"
#include "core/progress.h"
#include "core/result.h"

namespace kempt::align {

struct Side {
    const Photo* photo = nullptr;
    const card::Calibration* calibration = nullptr;
    std::vector<cv::Point2d> edge_line_px;  // needed on the earlier side
    cv::Point2d hair_side_px;
    std::vector<cv::Point2d> anchors_px;  // two or more on both sides, in the same order: they decide
};

struct AlignOptions {
    double search_mm = 20;          // how far the card may lie elsewhere on the head
    double search_deg = 12;         // and how far it may be turned
    double most_residual_mm = 1.0;  // above: refused
};

struct Alignment {
    SkinMap later_mm_from_earlier_mm;  // between the two cards' planes
    double residual_mm = 0;            // estimated 95 % limit of the error at the edge line
    std::string by;                    // "anchors", "skin"
    double skin_share = 0;             // of the skin beside the line that found its counterpart, 0..1; 0 by anchors
};

// Errors: invalid (no edge line and no anchors on the earlier side), refused (no card in one; "too-little-skin",
// "residual-too-large"), cancelled.
[[nodiscard]] Result<Alignment> align(const Side& earlier, const Side& later, const AlignOptions& options = {},
                                      const Progress& progress = {});

// Pixels of the later photo for pixels of the earlier one.
[[nodiscard]] std::vector<cv::Point2d> carry(const Alignment& alignment, const card::Calibration& earlier,
                                             const card::Calibration& later, const std::vector<cv::Point2d>& points_px);

}  // namespace kempt::align
