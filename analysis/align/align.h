// Laying one visit's photo over another's: card scale, then anchors, then the skin beside the edge line that both show,
// never the hair that changes and never the card. Carries marks from the earlier photo to the later one.
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
    const Photo* photo = nullptr;                    // of the earlier and later side both
    const card::Calibration* calibration = nullptr;  // with the card found: its plane is the frame
    std::vector<cv::Point2d> edge_line_px;           // needed on the earlier side unless anchors are given
    cv::Point2d hair_side_px;                        // with the edge line
    std::vector<cv::Point2d> anchors_px;             // two or more on both sides, in the same order: they decide
};

struct AlignOptions {
    double search_mm = 20;  // how far the card may lie elsewhere on the head, seen from the line
    // And how far it may be turned, from the same way as before or from lying upside down or across.
    double search_deg = 12;
    double most_residual_mm = 1.0;  // above: refused. A line drawn anew by hand lies about 0.3 mm off
    // By anchors: two of them say nothing of the head's bend between them, but somebody has looked.
    double most_anchor_residual_mm = 2.5;
};

struct Alignment {
    SkinMap later_mm_from_earlier_mm;  // between the two cards' planes
    double residual_mm = 0;  // estimated 95 % limit of the error at the edge line, mean over the line (of the anchors
                             // where there is no line)
    std::string by;          // "anchors", "skin"
    double skin_share = 0;   // of the skin beside the line that found its counterpart, 0..1; 0 by anchors
};

// The skin is taken from 1 mm outside the earlier photo's edge line outward, with everything that is not of its colour
// or that stands out like a hair left out; the later photo needs no line. Both are brought into their cards' planes.
// Errors: invalid ("no-line": no edge line and no anchors on the earlier side; "anchors-disagree"), refused
// ("no-card": no card in one; "too-little-skin"; "residual-too-large"), cancelled.
[[nodiscard]] Result<Alignment> align(const Side& earlier, const Side& later, const AlignOptions& options = {},
                                      const Progress& progress = {});

// Pixels of the later photo for pixels of the earlier one. Not held to the photo.
[[nodiscard]] std::vector<cv::Point2d> carry(const Alignment& alignment, const card::Calibration& earlier,
                                             const card::Calibration& later, const std::vector<cv::Point2d>& points_px);

}  // namespace kempt::align
