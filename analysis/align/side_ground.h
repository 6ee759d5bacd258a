// A photo's skin as ground: log light in its card's plane with weights that leave out card, hair and other colours.
#pragma once

#include "align/ground.h"
#include "align/skin.h"

namespace kempt::align {

// The box of card-plane millimetres that a photo shows.
[[nodiscard]] cv::Rect2d seen_mm(const Photo& photo, const card::Calibration& calibration);

// Of the earlier photo: bare skin beside the line; `colour` is learned from it.
[[nodiscard]] Ground earlier_skin(const Photo& photo, const card::Calibration& calibration, const cv::Rect2d& area_mm,
                                  const LineSide& line, SkinColour& colour);
// Of the later one: all that may be skin of that colour.
[[nodiscard]] Ground later_skin(const Photo& photo, const card::Calibration& calibration, const cv::Rect2d& area_mm,
                                const SkinColour& colour);

}  // namespace kempt::align
