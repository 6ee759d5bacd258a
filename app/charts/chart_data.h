// What a chart of one reading over the visits shows. Plain values: the window, the report and the demo fill the same
// struct. Values are in the unit named by `unit` (whoever fills it converts to inches where they are asked for).
#pragma once

#include <QDate>
#include <QString>
#include <QVector>
#include <optional>

#include "speech/speech.h"

namespace kempt::charts {

// One visit: the mean of its shots and the 95 % interval of that mean.
struct Point {
    QDate date;
    double value = 0, low = 0, high = 0;
    QVector<double> shots;   // each repeat shot; may be empty
    bool comparable = true;  // false: drawn hollow and left out of the line that joins the visits
};

// ± smallest detectable change around one value: a later value inside it is no detectable change.
struct NoiseBand {
    double around = 0;      // the value of the baseline or of the last visit
    double half_width = 0;  // > 0
    bool of_baseline = true;
};

struct ServiceMark {
    QDate date;
    QString label;  // "gloss", "hydroxide straightener"
};

// Theil-Sen line; only from four visits on. The line and its interval turn about the pivot (median date, median value).
struct TrendLine {
    QDate pivot_date;
    double pivot_value = 0;
    double per_day = 0;
    std::optional<double> per_day_low, per_day_high;  // 95 %; not set where the visits are too few for an interval
};

// When the target may be reached. An end that is not set lies beyond what can be foreseen.
struct ForecastRange {
    std::optional<QDate> earliest, middle, latest;
};

struct ChartData {
    QString title;          // "Left temple"; may be empty
    QString value_name;     // "edge coverage"
    QString unit;           // "%", "1/cm", "mm", "mm/mm2", "in"; empty for a bare number
    QVector<Point> points;  // in any order
    std::optional<NoiseBand> noise;
    QVector<ServiceMark> services;
    std::optional<double> target;
    std::optional<TrendLine> trend;
    std::optional<ForecastRange> forecast;  // drawn only with a target
    QString empty_text;                     // shown when there is no point; a friendly sentence of our own when empty
    QString note;                           // one sentence below the key; may be empty
};

// The chart in words, for screen readers and for the text behind the picture in a PDF.
[[nodiscard]] QString in_words(const ChartData& data, const speech::Speech& say = {});

// "%" stays, "1/cm" becomes "per cm", "mm/mm2" becomes "mm/mm²".
[[nodiscard]] QString unit_for_people(const QString& unit, const speech::Speech& say = {});

}  // namespace kempt::charts
