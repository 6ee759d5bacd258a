// How the later photo of a pair is laid over the earlier one.
#pragma once

#include "work/compare_pictures.h"
#include "work/line_up.h"

namespace kempt::work {

struct Laying {
    Rigid earlier_from_later;           // millimetres of the two scales' planes
    QString by;                         // "skin", "anchors", "edge line", "marks"
    std::optional<double> residual_mm;  // 95 % limit at the edge line, with what a rigid laying leaves of a round head
    double rms_mm = 0;                  // between the two edge lines as they are then laid
    QString refused;                    // why skin and anchors could not lay them, a sentence; empty: they did

    [[nodiscard]] QString told() const;  // a sentence for the viewer
};

// Cards, then anchors or skin; anchors alone where the scale comes from two points; else the edge lines; without edge
// lines in both, the marks (stand_of). A mirrored side is laid by the lines: its skin is another. Both sides need a
// photo and a scale. Errors: cancelled.
[[nodiscard]] Result<Laying> lay_pair(const PairSide& before, const PairSide& after, const Progress& progress = {});

[[nodiscard]] std::vector<cv::Point2d> pair_mm(const QVector<QPointF>& px, const card::Calibration& calibration);
[[nodiscard]] bool has_scale(const PairSide& side);
[[nodiscard]] bool has_line(const PairSide& side);
[[nodiscard]] MarkedLine line_of(const PairSide& side);

// What a photo without an edge line is stood by: the region with its hair above, the strand from root to end, the
// middle of the photo.
struct Stand {
    std::vector<cv::Point2d> shown_mm;  // what the picture shows
    cv::Point2d at_mm;                  // laid on the other photo's
    cv::Point2d along_mm{1, 0};         // unit: turned to the other photo's
    QString what;                       // "region", "strand", "photo"
};
[[nodiscard]] Stand stand_of(const PairSide& side);
// A pixel in the midst of the marks.
[[nodiscard]] cv::Point2d middle_px(const PairSide& side);

}  // namespace kempt::work
