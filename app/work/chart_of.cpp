#include "work/chart_of.h"

#include <algorithm>
#include <cmath>

#include "domain/words.h"

namespace kempt::work {

namespace {

double median(std::vector<double> values) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

QString capitalised(QString words) {
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

}  // namespace

Pivot pivot_of(const Series& series) {
    std::vector<double> days, values;
    for (const VisitPoint& point : series.visits) {
        if (!point.in_trend) continue;
        days.push_back(static_cast<double>(series.trend_origin.daysTo(point.date)));
        values.push_back(*point.mean);
    }
    return {median(days), median(values)};
}

charts::ChartData chart_of(const Series& series, const QVector<Service>& services, LengthUnit length) {
    const UnitConversion to = conversion_of(series.unit, length);
    charts::ChartData data;
    data.title = capitalised(word_of(series.view));
    data.value_name = title_of_reading(series.reading);
    data.unit = to.unit;
    for (const VisitPoint& visit : series.visits) {
        if (!visit.mean) continue;
        charts::Point point;
        point.date = visit.date;
        point.value = *visit.mean * to.factor;
        point.low = visit.low * to.factor;
        point.high = visit.high * to.factor;
        for (const ShotValue& shot : visit.shots) point.shots.append(shot.value * to.factor);
        point.comparable = visit.in_trend;
        data.points.append(point);
    }
    if (const PairVerdict* pair = series.first_to_last(); pair && pair->judgement.smallest_detectable > 0) {
        const auto first = std::find_if(series.visits.begin(), series.visits.end(),
                                        [&](const VisitPoint& point) { return point.visit == pair->from; });
        data.noise = {*first->mean * to.factor, pair->judgement.smallest_detectable * to.factor, true};
    }
    for (const Service& service : services)
        if (service.done) data.services.append({service.date, service.kind});
    if (series.trend) {
        const Pivot pivot = pivot_of(series);
        charts::TrendLine line;
        line.pivot_date = series.trend_origin.addDays(static_cast<qint64>(std::floor(pivot.day)));
        // The pivot's day is a whole one, so the value is moved along the line by what was cut off.
        line.pivot_value = (pivot.value - series.trend->slope * (pivot.day - std::floor(pivot.day))) * to.factor;
        line.per_day = series.trend->slope * to.factor;
        if (series.trend->interval_known) {
            line.per_day_low = series.trend->slope_low * to.factor;
            line.per_day_high = series.trend->slope_high * to.factor;
        }
        data.trend = line;
    }
    if (series.target) {
        data.target = series.target->target.value * to.factor;
        if (series.target->earliest)
            data.forecast = {series.target->earliest, series.target->middle, series.target->latest};
    }
    return data;
}

}  // namespace kempt::work
