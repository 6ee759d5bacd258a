// Figures as the chart's own sentences write them; private to this room.
#pragma once

#include <QString>

#include "charts/chart_data.h"

namespace kempt::charts {

// As many decimals as a half width can bear: one significant digit of it, two when that would be a 1.
[[nodiscard]] int bearable_decimals(double half_width);
// "41 %", "3.2 mm", "12 per cm", "0.4".
[[nodiscard]] QString with_unit(double value, int decimals, const QString& unit, const speech::Speech& say);
// "4 points" for %, else with_unit.
[[nodiscard]] QString difference(double value, int decimals, const QString& unit, const speech::Speech& say);
// Half width that stands behind the data: the noise band, else the widest interval, else 1 % of the value.
[[nodiscard]] double half_width_of(const ChartData& data);
// "March to July 2027", "March 2027 at the earliest, no latest date", "not within five years".
[[nodiscard]] QString forecast_in_words(const ForecastRange& range, const speech::Speech& say);
// "up 1.3 points a month (95 %: 0.4 to 2.1)".
[[nodiscard]] QString trend_in_words(const TrendLine& trend, const QString& unit, const speech::Speech& say);

}  // namespace kempt::charts
