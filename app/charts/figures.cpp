#include "charts/figures.h"

#include <algorithm>
#include <cmath>

namespace kempt::charts {
namespace {

constexpr double days_a_month = 365.25 / 12;

QString number(double value, int decimals, const QLocale& locale) {
    const double scale = std::pow(10, decimals);
    const double rounded = std::round(value * scale) / scale;
    const QString text = locale.toString(std::abs(rounded), 'f', decimals);
    return rounded < 0 ? QChar(0x2212) + text : text;
}

}  // namespace

int bearable_decimals(double half_width) {
    if (!(half_width > 0) || !std::isfinite(half_width)) return 1;
    const double power = std::floor(std::log10(half_width));
    const int extra = half_width / std::pow(10, power) < 2 ? 1 : 0;
    return std::clamp(static_cast<int>(-power) + extra, 0, 4);
}

QString with_unit(double value, int decimals, const QString& unit, const QLocale& locale) {
    const QString text = number(value, decimals, locale);
    const QString words = unit_for_people(unit);
    return words.isEmpty() ? text : text + QChar(QChar::Nbsp) + words;
}

QString difference(double value, int decimals, const QString& unit, const QLocale& locale) {
    if (unit != QStringLiteral("%")) return with_unit(value, decimals, unit, locale);
    const QString text = number(value, decimals, locale);
    return text + QChar(QChar::Nbsp) +
           (text == QStringLiteral("1") ? QStringLiteral("point") : QStringLiteral("points"));
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

QString forecast_in_words(const ForecastRange& range, const QLocale& locale) {
    const auto month = [&](const QDate& date) { return locale.toString(date, QStringLiteral("MMMM yyyy")); };
    if (!range.earliest && !range.middle && !range.latest) return QStringLiteral("not within five years");
    if (range.earliest && range.latest) {
        const QDate first = *range.earliest, last = *range.latest;
        if (first.year() == last.year() && first.month() == last.month()) return month(last);
        const QString start =
            first.year() == last.year() ? locale.toString(first, QStringLiteral("MMMM")) : month(first);
        return start + QStringLiteral(" to ") + month(last);
    }
    if (range.latest) return QStringLiteral("by ") + month(*range.latest);
    const QDate start = range.earliest ? *range.earliest : *range.middle;
    return month(start) + QStringLiteral(" at the earliest, no latest date");
}

QString trend_in_words(const TrendLine& trend, const QString& unit, const QLocale& locale) {
    const double slope = trend.per_day * days_a_month;
    const bool known = trend.per_day_low && trend.per_day_high;
    const double low = trend.per_day_low.value_or(0) * days_a_month;
    const double high = trend.per_day_high.value_or(0) * days_a_month;
    const int decimals = bearable_decimals(known && high > low ? (high - low) / 2 : std::abs(slope) / 5);
    QString text = slope < 0 ? QStringLiteral("down ") : QStringLiteral("up ");
    text += difference(std::abs(slope), decimals, unit, locale) + QStringLiteral(" a month");
    if (known)
        text += QStringLiteral(" (95 %: %1 to %2)").arg(number(low, decimals, locale), number(high, decimals, locale));
    return text;
}

}  // namespace kempt::charts
