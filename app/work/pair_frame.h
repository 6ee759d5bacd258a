// What the pictures of a pair or of a time strip show, and at which scale.
#pragma once

#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "work/compare_pictures.h"
#include "work/lay_pair.h"

namespace kempt::work {

// Display millimetres = turn(earlier millimetres); the picture is area_mm of them.
struct Frame {
    Rigid display_from_earlier;  // turned so that the earlier photo stands as it was taken
    cv::Rect2d area_mm;          // in display millimetres
    double px_per_mm = 0;
    [[nodiscard]] cv::Size size() const {
        return {std::max(1, static_cast<int>(std::lround(area_mm.width * px_per_mm))),
                std::max(1, static_cast<int>(std::lround(area_mm.height * px_per_mm)))};
    }
    // Picture pixels from earlier millimetres, for a picture drawn `times` finer.
    [[nodiscard]] cv::Matx33d px_from_earlier(int times) const;
};

// About both edge lines with their band and margin, or about both stands (lay_pair.h) where there are no lines, as far
// as both photos reach.
[[nodiscard]] Frame frame_for(const PairSide& before, const PairSide& after, const Laying& laid,
                              const AlignOptions& options);
// About the marks of one photo, as far as that photo reaches.
[[nodiscard]] Frame frame_of(const PairSide& one, const AlignOptions& options);

// Millimetres of one side's plane as picture pixels.
[[nodiscard]] QPolygonF polygon_in(const std::vector<cv::Point2d>& mm, const Rigid& earlier_from_mm,
                                   const cv::Matx33d& px_from_earlier);

}  // namespace kempt::work
