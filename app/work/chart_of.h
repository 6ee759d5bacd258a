// A series as chart data, for the window, the report and the demo.
#pragma once

#include "charts/chart_data.h"
#include "domain/measure_units.h"
#include "work/progress_of.h"

namespace kempt::work {

// Points, noise band about the first comparable visit, services, target, trend and forecast; in inches when asked for.
[[nodiscard]] charts::ChartData chart_of(const Series& series, const QVector<Service>& services,
                                         LengthUnit length = LengthUnit::millimetres);

// Median day (from series.trend_origin) and median value of the points in the trend: the pivot of a Theil-Sen line.
struct Pivot {
    double day = 0, value = 0;
};
[[nodiscard]] Pivot pivot_of(const Series& series);

}  // namespace kempt::work
