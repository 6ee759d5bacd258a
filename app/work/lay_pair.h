// How the later photo of a pair is laid over the earlier one.
#pragma once

#include "work/compare_pictures.h"
#include "work/line_up.h"

namespace kempt::work {

struct Laying {
    Rigid earlier_from_later;           // millimetres of the two scales' planes
    QString by;                         // "skin", "anchors", "edge line"
    std::optional<double> residual_mm;  // 95 % limit at the edge line, with what a rigid laying leaves of a round head
    double rms_mm = 0;                  // between the two edge lines as they are then laid

    [[nodiscard]] QString told() const;  // a sentence for the viewer
};

// Cards, then anchors or skin; anchors alone where the scale comes from two points; else the edge lines. Both sides
// need a photo, a scale and an edge line. Errors: cancelled.
[[nodiscard]] Result<Laying> lay_pair(const PairSide& before, const PairSide& after, const Progress& progress = {});

[[nodiscard]] std::vector<cv::Point2d> pair_mm(const QVector<QPointF>& px, const card::Calibration& calibration);
[[nodiscard]] bool has_scale(const PairSide& side);
[[nodiscard]] MarkedLine line_of(const PairSide& side);

}  // namespace kempt::work
