// Round numbers for axes.
#pragma once

#include <QDate>
#include <QString>
#include <QVector>
#include <optional>

#include "speech/speech.h"

namespace kempt::charts {

struct ValueAxis {
    double low = 0, high = 1;  // low < high
    double step = 1;           // 1, 2, 2.5 or 5 times a power of ten
    int decimals = 0;          // that every label needs
    QVector<double> ticks;     // multiples of step inside low..high
};

// Steps so that at most `most` ticks (taken as 3 or more) cover low..high; the ends lie on ticks. Any finite input; a
// zero range is opened. floor_at and ceiling_at keep the ends within what the reading can be (0 and 100 for %).
[[nodiscard]] ValueAxis value_axis(double low, double high, int most, std::optional<double> floor_at = std::nullopt,
                                   std::optional<double> ceiling_at = std::nullopt);

struct DateTick {
    QDate date;
    QString label;
};
// Ticks on calendar days: days, weeks, months, quarters, years; the finest of at most `most` (>= 2) ticks.
[[nodiscard]] QVector<DateTick> date_ticks(const QDate& from, const QDate& to, int most, const speech::Speech& say);

}  // namespace kempt::charts
