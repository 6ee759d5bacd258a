#include "charts/chart_data.h"

#include <algorithm>
#include <cmath>

#include "charts/figures.h"

namespace kempt::charts {

QString unit_for_people(const QString& unit, const speech::Speech& say) {
    if (unit == QStringLiteral("-") || unit == QStringLiteral("count") || unit == QStringLiteral("level")) return {};
    if (unit == QStringLiteral("dE00")) return QStringLiteral("ΔE");
    if (unit == QStringLiteral("in")) return say("in");
    if (unit == QStringLiteral("1/cm")) return say("per cm");
    if (unit == QStringLiteral("1/in")) return say("per in");
    if (unit == QStringLiteral("1/mm")) return say("per mm");
    if (unit == QStringLiteral("mm/mm2")) return QStringLiteral("mm/mm²");
    if (unit == QStringLiteral("in/in2")) return QStringLiteral("in/in²");
    return unit;
}

QString in_words(const ChartData& data, const speech::Speech& say) {
    const auto day = [&](const QDate& date) { return say.date(date, QStringLiteral("d MMMM yyyy")); };
    const QString name = say(data.value_name);
    QString text = data.title.isEmpty() ? name : say(data.title) + QStringLiteral(", ") + name;
    QVector<Point> points;
    std::copy_if(data.points.begin(), data.points.end(), std::back_inserter(points),
                 [](const Point& point) { return point.date.isValid() && std::isfinite(point.value); });
    if (points.isEmpty()) return say("%1: no readings yet.").arg(text);
    std::stable_sort(points.begin(), points.end(), [](const Point& a, const Point& b) { return a.date < b.date; });

    const int decimals = bearable_decimals(half_width_of(data));
    const auto value = [&](double number) { return with_unit(number, decimals, data.unit, say); };
    const Point &first = points.first(), &last = points.last();
    if (points.size() == 1)
        text = say("%1: one visit, %2, %3.").arg(text, day(first.date), value(first.value));
    else
        text = say("%1: %2 visits, %3 on %4, %5 on %6.")
                   .arg(text, QString::number(points.size()), value(first.value), day(first.date), value(last.value),
                        day(last.date));
    const auto add = [&text](const QString& sentence) { text += u' ' + sentence; };
    const auto excluded = std::count_if(points.begin(), points.end(), [](const Point& p) { return !p.comparable; });
    if (excluded > 0) add(say("Not comparable: %1.").arg(excluded));
    if (data.noise)
        add(say("Changes of less than %1 cannot be told from chance.")
                .arg(difference(data.noise->half_width, bearable_decimals(data.noise->half_width), data.unit, say)));
    if (data.trend) add(say("Trend: %1.").arg(trend_in_words(*data.trend, data.unit, say)));
    if (data.target) add(say("Target: %1.").arg(value(*data.target)));
    if (data.target && data.forecast) add(say("Target foreseen: %1.").arg(forecast_in_words(*data.forecast, say)));
    for (const ServiceMark& service : data.services)
        add(QStringLiteral("%1: %2.").arg(day(service.date), say(service.label)));
    return text;
}

}  // namespace kempt::charts
