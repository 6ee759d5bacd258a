#include "domain/measure_units.h"

#include <algorithm>
#include <cmath>

namespace kempt {
namespace {

constexpr double mm_per_inch = 25.4;  // exact by definition (international inch, 1959)

struct Shown {
    double factor = 1;
    QString unit;
};

Shown shown_unit(const QString& unit, LengthUnit length) {
    const UnitConversion to = conversion_of(unit, length);
    if (to.unit == u"-" || to.unit == u"count" || to.unit == u"level") return {1, QString()};
    if (to.unit == u"dE00") return {1, QStringLiteral("ΔE")};
    QString shown = to.unit;
    return {to.factor, shown.replace(QStringLiteral("mm2"), QStringLiteral("mm\u00b2"))
                           .replace(QStringLiteral("in2"), QStringLiteral("in\u00b2"))};
}

// The decimal place of the first significant digit of half the interval: a figure finer than that says nothing.
// Never coarser than whole numbers: "62 % (50-74)" reads plainer than a value rounded to tens.
int decimals_for(double value, double half_interval) {
    constexpr int most = 6;
    // Without an interval (a target typed by hand): three significant digits.
    const bool known = std::isfinite(half_interval) && half_interval > 0;
    if (!known && (value == 0 || !std::isfinite(value))) return 0;
    const double place = known ? half_interval : std::abs(value) / 100;
    // 1e-9: 0.1 reached by subtraction may come out a hair below 0.1.
    return std::clamp(-static_cast<int>(std::floor(std::log10(place) + 1e-9)), 0, most);
}

QString digits(double value, int decimals) {
    if (!std::isfinite(value)) return QStringLiteral("unknown");
    QString text = QString::number(value, 'f', decimals);
    if (text.startsWith(u'-') && text.toDouble() == 0) text.remove(0, 1);  // no "-0"
    return text;
}

QString trimmed(QString text) {
    if (!text.contains(u'.')) return text;
    while (text.endsWith(u'0')) text.chop(1);
    if (text.endsWith(u'.')) text.chop(1);
    return text;
}

QString with_unit(const QString& number, const QString& unit) {
    return unit.isEmpty() ? number : number + u' ' + unit;
}

}  // namespace

UnitConversion conversion_of(const QString& unit, LengthUnit length) {
    if (length == LengthUnit::inches) {
        if (unit == u"mm") return {1 / mm_per_inch, QStringLiteral("in")};
        if (unit == u"1/cm") return {mm_per_inch / 10, QStringLiteral("1/in")};
        if (unit == u"1/mm") return {mm_per_inch, QStringLiteral("1/in")};
        if (unit == u"mm/mm2") return {mm_per_inch, QStringLiteral("in/in2")};
    }
    return {1, unit};
}

QString with_interval(double value, double low, double high, const QString& unit, LengthUnit length) {
    const Shown shown = shown_unit(unit, length);
    const double factor = shown.factor;
    const int decimals = decimals_for(value * factor, (high - low) / 2 * factor);
    const QString from = digits(low * factor, decimals), to = digits(high * factor, decimals);
    // A hyphen beside a minus sign cannot be read.
    const QString between = from.startsWith(u'-') || to.startsWith(u'-') ? QStringLiteral(" to ") : QStringLiteral("-");
    return QStringLiteral("%1 (%2%3%4)")
        .arg(with_unit(digits(value * factor, decimals), shown.unit), from, between, to);
}

QString plain_value(double value, double half_interval, const QString& unit, LengthUnit length) {
    const Shown shown = shown_unit(unit, length);
    const double number = value * shown.factor;
    const QString text = digits(number, decimals_for(number, half_interval * shown.factor));
    const bool interval_known = std::isfinite(half_interval) && half_interval > 0;
    return with_unit(interval_known ? text : trimmed(text), shown.unit);
}

QString whole_percent(double share) {
    return QStringLiteral("%1 %").arg(std::llround(100 * share));
}

}  // namespace kempt
