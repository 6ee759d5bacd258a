// How each group of readings is measured: the region that the gate looks at, what it asks of the photo, the call.
#pragma once

#include "work/measure_photo.h"

namespace kempt::work {

// Marks of the analysis from marks of the book.
[[nodiscard]] edges::EdgeMarks edge_marks_from(const Marks& marks);
[[nodiscard]] std::vector<cv::Point2d> points_from(const QVector<QPointF>& points);

// Part of the photo that the group's readings use, photo pixels; empty: the whole photo.
[[nodiscard]] std::vector<cv::Point2d> region_of(ReadingGroup group, const Marks& marks,
                                                 const card::Calibration& calibration);
// Where its scale counts: the middle of its marks.
[[nodiscard]] cv::Point2d place_of(ReadingGroup group, const Marks& marks, const card::Calibration& calibration);
// What the group asks of a photo.
[[nodiscard]] card::GateLimits limits_of(ReadingGroup group, const MeasureOptions& options);

// Measures one group into `result` (which has the calibration): readings, refusals, what lies behind them. A refusal of
// the whole group becomes one of each of its readings. Errors: invalid marks, cancelled.
[[nodiscard]] Status measure_group(ReadingGroup group, const OpenPhoto& photo, const Marks& marks,
                                   const MeasureOptions& options, MeasureResult& result, const Progress& progress);
// The group's readings, refusals and what lies behind them, as an earlier measurement gave them.
void take_over_group(ReadingGroup group, const MeasureResult& earlier, MeasureResult& result);
// The comb-out's readings from strands that were traced before, with the corrections of these marks.
void correct_again(const combings::CombingsReadings& traced, const Marks& marks, MeasureResult& result);
// Every reading of the group refused for one reason.
void refuse_group(MeasureResult& result, ReadingGroup group, const std::string& code, const std::string& text);

}  // namespace kempt::work
