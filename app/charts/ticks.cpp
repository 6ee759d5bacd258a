#include "charts/ticks.h"

#include <algorithm>
#include <cmath>

namespace kempt::charts {
namespace {

constexpr double multiples[] = {1, 2, 2.5, 5};

// Rounding allowance when asking on which tick a value lies.
constexpr double slack = 1e-9;

ValueAxis axis_of_step(double low, double high, double step) {
    ValueAxis axis;
    axis.step = step;
    axis.low = std::floor(low / step + slack) * step;
    axis.high = std::ceil(high / step - slack) * step;
    return axis;
}

int decimals_of(double step) {
    for (int decimals = 0; decimals < 12; ++decimals) {
        const double scaled = step * std::pow(10, decimals);
        if (std::abs(scaled - std::round(scaled)) < slack * scaled) return decimals;
    }
    return 12;
}

void add_ticks(ValueAxis& axis) {
    const auto first = static_cast<qint64>(std::ceil(axis.low / axis.step - slack));
    const auto last = static_cast<qint64>(std::floor(axis.high / axis.step + slack));
    for (qint64 i = first; i <= last; ++i) axis.ticks.append(static_cast<double>(i) * axis.step);
}

enum class Unit { days, months };
struct DateStep {
    Unit unit;
    int count;
};
constexpr DateStep date_steps[] = {{Unit::days, 1},    {Unit::days, 2},    {Unit::days, 7},    {Unit::days, 14},
                                   {Unit::months, 1},  {Unit::months, 2},  {Unit::months, 3},  {Unit::months, 6},
                                   {Unit::months, 12}, {Unit::months, 24}, {Unit::months, 60}, {Unit::months, 120},
                                   {Unit::months, 600}};

// First tick at or after a date: Mondays for weeks, firsts of months that are multiples of the step.
QDate first_tick(const QDate& from, const DateStep& step) {
    if (step.unit == Unit::days) {
        if (step.count == 7 || step.count == 14) return from.addDays((8 - from.dayOfWeek()) % 7);
        return from;
    }
    int months = from.year() * 12 + from.month() - 1;
    if (from.day() > 1) ++months;
    months = (months + step.count - 1) / step.count * step.count;
    return {months / 12, months % 12 + 1, 1};
}

QDate next_tick(const QDate& date, const DateStep& step) {
    return step.unit == Unit::days ? date.addDays(step.count) : date.addMonths(step.count);
}

// The year is said once, and again where it changes.
QString label_of(const QDate& date, const DateStep& step, bool with_year, const speech::Speech& say) {
    if (step.unit == Unit::months && step.count >= 12) return QString::number(date.year());
    const QString format = step.unit == Unit::days ? QStringLiteral("d MMM") : QStringLiteral("MMM");
    return say.date(date, with_year ? format + QStringLiteral(" yyyy") : format);
}

}  // namespace

ValueAxis value_axis(double low, double high, int most, std::optional<double> floor_at,
                     std::optional<double> ceiling_at) {
    if (!std::isfinite(low) || !std::isfinite(high)) low = 0, high = 1;
    if (low > high) std::swap(low, high);
    most = std::max(most, 3);  // a range about zero needs three
    // A range that is no wider than rounding is opened, so that a flat series lies in the middle.
    if (high - low <= 1e-9 * std::max(std::abs(low), std::abs(high)) || high == low) {
        const double half = low == 0 ? 0.5 : std::abs(low) * 0.1;
        low -= half;
        high += half;
    }
    if (floor_at) low = std::max(low, *floor_at);
    if (ceiling_at) high = std::min(high, *ceiling_at);
    if (!(high > low)) {  // all of it lay outside: show the allowed range's end
        low = floor_at.value_or(high - 1);
        high = std::max(ceiling_at.value_or(low + 1), low + 1e-6);
    }

    ValueAxis axis;
    double power = std::pow(10, std::floor(std::log10((high - low) / most)) - 1);
    for (bool found = false; !found; power *= 10)
        for (const double multiple : multiples) {
            axis = axis_of_step(low, high, multiple * power);
            found = std::round((axis.high - axis.low) / axis.step) + 1 <= most;
            if (found) break;
        }
    if (floor_at) axis.low = std::max(axis.low, *floor_at);
    if (ceiling_at) axis.high = std::min(axis.high, *ceiling_at);
    axis.decimals = decimals_of(axis.step);
    add_ticks(axis);
    return axis;
}

QVector<DateTick> date_ticks(const QDate& from, const QDate& to, int most, const speech::Speech& say) {
    QVector<DateTick> ticks;
    if (!from.isValid() || !to.isValid() || from > to) return ticks;
    most = std::max(most, 2);
    for (const DateStep& step : date_steps) {
        ticks.clear();
        int year = 0;
        for (QDate date = first_tick(from, step); date.isValid() && date <= to && ticks.size() <= most;
             date = next_tick(date, step)) {
            ticks.append({date, label_of(date, step, date.year() != year, say)});
            year = date.year();
        }
        if (ticks.size() <= most) break;
    }
    if (ticks.isEmpty()) ticks.append({from, say.date(from, QStringLiteral("d MMM yyyy"))});
    return ticks;
}

}  // namespace kempt::charts
