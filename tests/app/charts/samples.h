// Invented charts that the tests lay out and paint.
#pragma once

#include <cmath>

#include "charts/chart_painter.h"

namespace kempt::charts::samples {

inline Point visit(const QDate& date, double value, double half, bool comparable = true) {
    Point point;
    point.date = date;
    point.value = value;
    point.low = value - half;
    point.high = value + half;
    point.shots = {value - 0.6 * half, value + 0.1 * half, value + 0.5 * half};
    point.comparable = comparable;
    return point;
}

// A recovering edge seen `visits` times, about every four weeks.
inline ChartData recovering(int visits) {
    ChartData data;
    data.title = QStringLiteral("Left temple");
    data.value_name = QStringLiteral("edge coverage");
    data.unit = QStringLiteral("%");
    const QDate first(2025, 11, 4);
    for (int i = 0; i < visits; ++i) {
        const double value = 38 + 30 * (1 - std::exp(-i / 8.0)) + 1.3 * std::sin(2.1 * i);
        data.points.append(visit(first.addDays(28 * i + i * i % 5), value, 1.6, i != 4));
    }
    data.noise = NoiseBand{data.points.first().value, 3.1, true};
    data.target = 65;
    data.services = {{first.addDays(3), QStringLiteral("hydroxide straightener")},
                     {first.addDays(60), QStringLiteral("gloss")},
                     {first.addDays(66), QStringLiteral("trim")},
                     {first.addDays(120), QStringLiteral("gloss")}};
    if (visits >= 4) {
        const Point& middle = data.points[visits / 2];
        data.trend = TrendLine{middle.date, middle.value, 0.08, 0.04, 0.13};
        if (visits < 4 || visits > 20) data.trend = TrendLine{middle.date, middle.value, 0.004, 0.003, 0.006};
        const QDate last = data.points.last().date;
        data.forecast = ForecastRange{last.addDays(60), last.addDays(110), last.addDays(260)};
    }
    return data;
}

inline ChartData crowded() {
    ChartData data = recovering(60);
    data.services.clear();
    const char* kinds[] = {"gloss", "trim", "protein treatment", "hydroxide straightener", "braids taken out"};
    for (int i = 0; i < 40; ++i)
        data.services.append({data.points.first().date.addDays(40 * i), QString::fromLatin1(kinds[i % 5])});
    data.note =
        QStringLiteral("Visits on wet hair are left out of the line; the record copy lists them with the reason.");
    return data;
}

inline ChartData open_end() {
    ChartData data = recovering(6);
    data.title = QStringLiteral("Right temple");
    data.value_name = QStringLiteral("fill depth");
    data.unit = QStringLiteral("mm");
    for (int i = 0; i < data.points.size(); ++i) {
        data.points[i] = visit(data.points[i].date, 8.2 - 0.4 * i + 0.2 * std::sin(3.0 * i), 0.4);
    }
    data.noise = NoiseBand{8.2, 0.7, true};
    data.target = 4;
    data.trend = TrendLine{data.points[3].date, 7.0, -0.014, -0.022, -0.004};
    data.forecast = ForecastRange{data.points.last().date.addDays(80), data.points.last().date.addDays(150), {}};
    return data;
}

inline ChartData empty() {
    ChartData data = recovering(1);
    data.points.clear();
    data.services.clear();
    data.noise.reset();
    return data;
}

}  // namespace kempt::charts::samples
