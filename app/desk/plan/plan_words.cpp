#include "desk/plan/plan_words.h"

#include <QLocale>
#include <QObject>
#include <cmath>

#include "desk/look/look.h"

namespace kempt::desk {
namespace {

constexpr double mm_per_inch = 25.4;  // by definition

bool inches() {
    return look().length() == LengthUnit::inches;
}

QString number_of(double mm) {
    return inches() ? QLocale().toString(mm / mm_per_inch, 'f', 1) : QString::number(std::lround(mm));
}

QString unit() {
    return inches() ? QObject::tr("in") : QObject::tr("mm");
}

}  // namespace

QString length_words(double mm) {
    return number_of(mm) + QLatin1Char(' ') + unit();
}

QString span_words(const care::Span& span) {
    if (!std::isfinite(span.to_mm))
        return span.from_mm > 0 ? QObject::tr("from %1 to the ends").arg(length_words(span.from_mm))
                                : QObject::tr("from the scalp to the ends");
    return QStringLiteral("%1–%2 %3").arg(number_of(span.from_mm), number_of(span.to_mm), unit());
}

QString clock_words(double minutes) {
    const long seconds = std::lround(minutes * 2) * 30;
    QString words = seconds % 60 == 0 ? QObject::tr("%1 min").arg(seconds / 60)
                                      : QObject::tr("%1 min %2 s").arg(seconds / 60).arg(seconds % 60);
    return words.replace(u' ', QChar(QChar::Nbsp));  // a unit never stands alone on the next line
}

}  // namespace kempt::desk
