// Everything that a condition report says, as plain data. The use case fills it; report_pdf paints it. Values are in
// the unit that the reading carries; millimetres turn to inches only while painting.
#pragma once

#include <QDate>
#include <QDateTime>
#include <QImage>
#include <QString>
#include <QStringList>
#include <QVector>
#include <optional>

#include "charts/chart_data.h"
#include "domain/measure_units.h"
#include "domain/records.h"
#include "report/care_model.h"
#include "speech/speech.h"

namespace kempt::report {

enum class Copy {
    client,  // to take home: pictures, what changed, what it means
    record   // for the salon's own file: the client copy and every reading of every visit with where it came from
};
enum class Paper { letter, a4 };
enum class Outcome { improved, worse, changed, no_detectable_change, not_comparable };

// A visit's value: the mean of its comparable shots, with its 95 % interval.
struct Value {
    QDate date;
    double value = 0, low = 0, high = 0;
    int shots = 1;
};

// One reading of one view between two visits.
struct Row {
    View view = View::front_hairline;
    QString reading;                     // "edge_coverage"; painted as title_of_reading()
    QString unit;                        // "%", "1/cm", "mm", "mm/mm2"
    std::optional<Value> first, latest;  // not set: no value that stands; reason says why
    std::optional<double> change;        // latest - first
    std::optional<double> smallest_detectable;
    Outcome outcome = Outcome::not_comparable;
    QString reason;   // a full sentence with figures
    QString trend;    // a full sentence from four visits on, else empty
    double step = 0;  // last decimal place of change and smallest change in `reason`; 0: a tenth of the latter
};

// Two photos of one view, aligned and at one scale: the same size, the same place at the same pixel.
struct Pair {
    View view = View::front_hairline;
    QDate before_date, after_date;
    QImage before, after;  // either may be null: the report says that there is no picture
    double px_per_mm = 0;  // of both; 0 when not known: no scale bar is drawn
    QString verdict;       // one line
    QString note;          // "scale from two points", "aligned by hand"...; may be empty
};

// One reading over the visits; painted by the chart painter. data in the reading's own unit (mm): turned to inches
// here.
struct Chart {
    View view = View::front_hairline;
    charts::ChartData data;
};

// The way to a target of the client's own. There is no sum over targets.
struct TargetBar {
    View view = View::front_hairline;
    QString reading, unit;
    double baseline = 0, now = 0, target = 0;
    QDate baseline_date, now_date;
    std::optional<double> share;  // 0 at the baseline, 1 at the target, unclamped; not set when it makes no sense
    QString forecast;             // a full sentence with a range of dates, or why there is none; may be empty
    double baseline_half = 0, now_half = 0;  // half of the 95 % intervals; 0: not known
};

struct ServiceLine {
    QDate date;
    QString kind, note;
    QStringList details{};  // where on the hair, strength, minutes, tests; may be empty
    QString result{};       // as the stylist wrote it, as the note is; may be empty
    bool planned = false;
};

struct GradeLine {
    QDate date;
    QString zone, quality;
    int value = 0;              // 0-4
    QString anchor;             // the written anchor of that step
    std::optional<int> second;  // the second grading of the same visit
};

// What was left out and why: a photo that the gate refused, a reading that could not be had, a visit not comparable.
struct LeftOut {
    QDate date;
    View view = View::front_hairline;
    QString what;    // "photo 2", "strands at the edge", "visit"
    QString reason;  // a full sentence
    QString remedy;  // may be empty
};

// Record copy only: one stored reading and where it came from.
struct HistoryLine {
    QDate date;
    View view = View::front_hairline;
    int shot = 1;
    QString reading, unit;
    double value = 0, low = 0, high = 0;
    bool refused = false;
    QString refusal;       // when refused
    QString photo_sha256;  // of the original bytes
    int analysis_version = 0;
};

struct Method {
    QString program_version;  // "Kempt 0.1.0"
    int analysis_version = 0;
    QString card;           // "gauge card, printed at 100.2 % of its size", may be empty
    QString spread_source;  // where the within-visit spread came from, a full sentence; may be empty
    QStringList extra;      // further full sentences
};

struct Model {
    QString client_name;  // as given, any script
    QString salon_name;   // "prepared by"; may be empty
    QDate first_visit, last_visit;
    int visits = 0;
    QDate today;  // the day of the report, from the settable clock
    QVector<Pair> pairs;
    QVector<Id> photos;         // that the pairs show, or would once they were looked at
    QVector<Id> to_look_at;     // of these: nobody has, and she does not want her face seen
    QString pictures_withheld;  // why there are no pictures (no consent); empty when they may be shown
    QVector<Row> rows;
    QVector<Chart> charts;
    QVector<TargetBar> targets;
    QVector<ServiceLine> services;
    QVector<GradeLine> grades;
    QString grade_agreement;  // a full sentence, or empty
    QVector<LeftOut> left_out;
    QVector<HistoryLine> history;
    QVector<PartLine> hair;  // what each part has been through, roots first
    QVector<GrowthLine> growth;
    Planned planned;
    QVector<Tip> home_care;
    QVector<NextDate> next_dates;
    QVector<Tip> cautions;  // beyond the standing ones, which are always printed
    Method method;
};

// What may be left out. Who, when, the verdicts in short, how it was measured and the cautions always stand.
struct Parts {
    bool pictures = true, readings = true, charts = true, targets = true, services = true, hair = true, grades = true,
         plan = true, next = true, left_out = true;
    bool operator==(const Parts&) const = default;
};

struct Options {
    Copy copy = Copy::client;
    Paper paper = Paper::letter;
    LengthUnit length = LengthUnit::millimetres;
    Parts parts = {};
    speech::Speech speech = {};  // the language of the pages; the model itself is English
};

}  // namespace kempt::report
