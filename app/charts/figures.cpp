#include "charts/figures.h"

#include <algorithm>
#include <cmath>

namespace kempt::charts {
namespace {

constexpr double days_a_month = 365.25 / 12;

QString number(double value, int decimals, const speech::Speech& say) {
    const double scale = std::pow(10, decimals);
    const double rounded = std::round(value * scale) / scale;
    const QString text = say.locale().toString(std::abs(rounded), 'f', decimals);
    return rounded < 0 ? QChar(0x2212) + text : text;
}

}  // namespace

int bearable_decimals(double half_width) {
    if (!(half_width > 0) || !std::isfinite(half_width)) return 1;
    const double power = std::floor(std::log10(half_width));
    const int extra = half_width / std::pow(10, power) < 2 ? 1 : 0;
    return std::clamp(static_cast<int>(-power) + extra, 0, 4);
}

QString with_unit(double value, int decimals, const QString& unit, const speech::Speech& say) {
    const QString text = number(value, decimals, say);
    const QString words = unit_for_people(unit, say);
    return words.isEmpty() ? text : text + QChar(QChar::Nbsp) + words;
}

QString difference(double value, int decimals, const QString& unit, const speech::Speech& say) {
    if (unit != QStringLiteral("%")) return with_unit(value, decimals, unit, say);
    const QString text = number(value, decimals, say);
    return (text == QStringLiteral("1") ? say("%1 point") : say("%1 points"))
        .arg(text)
        .replace(text + u' ', text + QChar(QChar::Nbsp));
}

double half_width_of(const ChartData& data) {
    if (data.noise && data.noise->half_width > 0) return data.noise->half_width;
    double half = 0, largest = 0;
    for (const Point& point : data.points) {
        half = std::max(half, (point.high - point.low) / 2);
        largest = std::max(largest, std::abs(point.value));
    }
    return half > 0 ? half : largest / 100;
}

QString forecast_in_words(const ForecastRange& range, const speech::Speech& say) {
    const auto month = [&](const QDate& date) { return say.date(date, QStringLiteral("MMMM yyyy")); };
    if (!range.earliest && !range.middle && !range.latest) return say("not within five years");
    if (range.earliest && range.latest) {
        const QDate first = *range.earliest, last = *range.latest;
        if (first.year() == last.year() && first.month() == last.month()) return month(last);
        const QString start = first.year() == last.year() ? say.date(first, QStringLiteral("MMMM")) : month(first);
        return say("%1 to %2").arg(start, month(last));
    }
    if (range.latest) return say("by %1").arg(month(*range.latest));
    return say("%1 at the earliest, no latest date").arg(month(range.earliest ? *range.earliest : *range.middle));
}

QString trend_in_words(const TrendLine& trend, const QString& unit, const speech::Speech& say) {
    const double slope = trend.per_day * days_a_month;
    const bool known = trend.per_day_low && trend.per_day_high;
    const double low = trend.per_day_low.value_or(0) * days_a_month;
    const double high = trend.per_day_high.value_or(0) * days_a_month;
    const int decimals = bearable_decimals(known && high > low ? (high - low) / 2 : std::abs(slope) / 5);
    const QString pace = (slope < 0 ? say("down %1 a month") : say("up %1 a month"))
                             .arg(difference(std::abs(slope), decimals, unit, say));
    if (!known) return pace;
    return say("%1 (95 %: %2 to %3)").arg(pace, number(low, decimals, say), number(high, decimals, say));
}

}  // namespace kempt::charts
