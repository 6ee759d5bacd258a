#include "charts/chart_data.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "charts/figures.h"

namespace kempt::charts {

QString unit_for_people(const QString& unit) {
    if (unit == QStringLiteral("-") || unit == QStringLiteral("count") || unit == QStringLiteral("level")) return {};
    if (unit == QStringLiteral("dE00")) return QStringLiteral("ΔE");
    if (unit == QStringLiteral("1/cm")) return QStringLiteral("per cm");
    if (unit == QStringLiteral("1/in")) return QStringLiteral("per in");
    if (unit == QStringLiteral("1/mm")) return QStringLiteral("per mm");
    if (unit == QStringLiteral("mm/mm2")) return QStringLiteral("mm/mm²");
    if (unit == QStringLiteral("in/in2")) return QStringLiteral("in/in²");
    return unit;
}

QString in_words(const ChartData& data) {
    const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    const auto day = [&](const QDate& date) { return locale.toString(date, QStringLiteral("d MMMM yyyy")); };
    QString text = data.title.isEmpty() ? data.value_name : data.title + QStringLiteral(", ") + data.value_name;
    QVector<Point> points;
    std::copy_if(data.points.begin(), data.points.end(), std::back_inserter(points),
                 [](const Point& point) { return point.date.isValid() && std::isfinite(point.value); });
    if (points.isEmpty()) return text + QStringLiteral(": no readings yet.");
    std::stable_sort(points.begin(), points.end(), [](const Point& a, const Point& b) { return a.date < b.date; });

    const int decimals = bearable_decimals(half_width_of(data));
    const auto value = [&](double number) { return with_unit(number, decimals, data.unit, locale); };
    const Point &first = points.first(), &last = points.last();
    if (points.size() == 1)
        text += QStringLiteral(": one visit, %1, %2.").arg(day(first.date), value(first.value));
    else
        text += QStringLiteral(": %1 visits, %2 on %3, %4 on %5.")
                    .arg(QString::number(points.size()), value(first.value), day(first.date), value(last.value),
                         day(last.date));
    const auto excluded = std::count_if(points.begin(), points.end(), [](const Point& p) { return !p.comparable; });
    if (excluded > 0) text += QStringLiteral(" Not comparable: %1.").arg(excluded);
    if (data.noise)
        text +=
            QStringLiteral(" Changes of less than %1 cannot be told from chance.")
                .arg(difference(data.noise->half_width, bearable_decimals(data.noise->half_width), data.unit, locale));
    if (data.trend) text += QStringLiteral(" Trend: %1.").arg(trend_in_words(*data.trend, data.unit, locale));
    if (data.target) text += QStringLiteral(" Target: %1.").arg(value(*data.target));
    if (data.target && data.forecast)
        text += QStringLiteral(" Target foreseen: %1.").arg(forecast_in_words(*data.forecast, locale));
    for (const ServiceMark& service : data.services)
        text += QStringLiteral(" %1: %2.").arg(day(service.date), service.label);
    return text;
}

}  // namespace kempt::charts
