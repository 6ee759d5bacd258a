// What the visits of a client say: for each view and reading the values with their noise, the verdict between any two
// visits, the trend from four visits on, the way to the target.
#pragma once

#include <QDate>
#include <QStringList>
#include <optional>
#include <vector>

#include "change/change.h"
#include "core/progress.h"
#include "core/result.h"
#include "domain/measure_units.h"
#include "domain/records.h"
#include "shine/light_signature.h"
#include "work/book_fwd.h"

namespace kempt::work {

struct ShotValue {
    Id photo = 0;
    int shot = 0;
    double value = 0, low = 0, high = 0;  // the reading and its own 95 % interval
};

// One visit of one series.
struct VisitPoint {
    Id visit = 0;
    QDate date;
    HairState hair;
    std::vector<ShotValue> shots;                // comparable shots only
    QStringList left_out;                        // why other shots do not count, one sentence each
    QStringList not_comparable;                  // why the visit as a whole cannot be compared; empty when it can
    std::optional<double> mean;                  // over the shots
    double low = 0, high = 0;                    // 95 % noise band about the mean, from the spread of repeat shots
    QString scale_source;                        // "card", "sheet", "points"
    std::optional<shine::LightSignature> light;  // readings of shine only
    int analysis_version = 0;
    bool in_trend = false;  // has values and agrees with most visits in hair state, scale and method
};

struct PairVerdict {
    Id from = 0, to = 0;  // visits, the earlier one first
    change::Judgement judgement;
};

struct TargetWay {
    Target target;
    std::optional<double> share;  // 0..1, unclamped; missing without two visits or when the baseline is the target
    std::optional<QDate> earliest, middle, latest;  // forecast; only with a trend that leads there
    QString forecast_text;                          // one sentence, also when there is no forecast: why
};

struct Series {
    View view = View::left_temple;
    QString reading, unit;
    std::vector<VisitPoint> visits;      // in order of date
    change::Spread spread;               // of one shot within a visit
    QString spread_from;                 // one sentence: whose repeats stand behind it
    std::vector<PairVerdict> verdicts;   // the pairs asked for, earlier first, in order of (from, to)
    std::optional<change::Trend> trend;  // t in days since the first comparable visit
    QDate trend_origin;                  // day of t = 0
    QString trend_text;                  // one sentence, also when there is none: why
    std::optional<TargetWay> target;

    // nullptr for a pair that was not judged.
    [[nodiscard]] const PairVerdict* verdict(Id from, Id to) const;
    // First to last comparable visit; nullptr with fewer than two.
    [[nodiscard]] const PairVerdict* first_to_last() const;
};

struct Asymmetry {  // both temples at one visit
    Id visit = 0;
    QDate date;
    QString reading, unit;
    double left = 0, right = 0, difference = 0;  // left - right
};

struct ClientProgress {
    Client client;
    QVector<Visit> visits;       // in order of date
    QVector<Service> services;   // in order of date
    std::vector<Series> series;  // by view, then in the order of all_reading_names()
    std::vector<Asymmetry> asymmetry;

    [[nodiscard]] const Series* find(View view, const QString& reading) const;
};

// Which pairs of visits are judged. every: n (n - 1) / 2 of them, 1,770 in each series of a client with 60 visits; ends:
// the first with the last of the trend and the last two, which is what a page shows.
enum class Pairs { every, ends };

struct ProgressOptions {
    Id client = 0;
    std::optional<View> view;                     // nullopt: all
    std::optional<QString> reading;               // nullopt: all
    LengthUnit length = LengthUnit::millimetres;  // of the sentences; figures stay in the reading's unit
    Pairs pairs = Pairs::every;
};

// Errors: not_found (client), cancelled.
[[nodiscard]] Result<ClientProgress> progress_of(Book& book, const ProgressOptions& options,
                                                 const Progress& progress = {});

}  // namespace kempt::work
