// The plain records of a book. No behaviour, no SQL, no windows; std::optional means "not set".
#pragma once

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QPointF>
#include <QSize>
#include <QString>
#include <QStringList>
#include <QVector>
#include <optional>

namespace kempt {

using Id = qint64;  // > 0 once kept in a book; 0 while it has not been

enum class View { front_hairline, left_temple, right_temple, crown, nape, lengths, ends };

struct Client {
    Id id = 0;
    QString name;
    QString note;
    QDate since;                 // first visit or the day she was added
    bool photo_consent = false;  // pictures may leave the book
    std::optional<QDate> consent_on;
};

// How the hair was when the photos were taken; two visits that differ are not comparable.
struct HairState {
    bool wet = false;
    bool styled = false;
    bool product = false;
    bool operator==(const HairState&) const = default;
};

struct Visit {
    Id id = 0;
    Id client = 0;
    QDate date;
    HairState hair;
    QString note;
};

struct PhotoRecord {
    Id id = 0;
    Id visit = 0;
    View view = View::front_hairline;
    int shot = 1;                    // repeat shots of one view count 1, 2, 3
    QString file_name;               // as it came
    QString format;                  // "jpeg", "png", "webp", "tiff", "heic"
    QString sha256;                  // of the original bytes, lower-case hex
    QSize size;                      // upright pixels
    std::optional<QDateTime> taken;  // capture time from the file
    QByteArray thumbnail;            // JPEG, longest side 320
    QString quality_level;           // "good", "usable", "refused", empty before measuring
    QString quality_findings;        // JSON array as in the contract
};

// What the stylist drew on a photo; pixel coordinates in the upright photo.
struct Marks {
    Id id = 0;
    Id photo = 0;
    View view = View::front_hairline;
    QVector<QPointF> edge_line;
    std::optional<QPointF> hair_side;
    QVector<QPointF> hair_taps, scalp_taps;  // optional colour samples
    QVector<QPointF> shine_region, strand_line, region, anchors;
    QString sheet;  // "hem", "combings", "strand" or empty
    // Corrections of a comb-out: a point on each traced strand that is no hair; pairs of points, one on each of two
    // traced strands that are one hair; a point on each that is a hair of its own, however its ends look.
    QVector<QPointF> not_hair, joined, whole;
    QVector<QPointF> scale_points;  // two or none
    double scale_mm = 0;
};

struct ReadingRecord {
    Id id = 0;
    Id photo = 0;
    Id marks = 0;
    QString name, unit;
    double value = 0, low = 0, high = 0;
    bool refused = false;
    QString refusal_code, refusal_text;  // when refused; value, low, high are then meaningless
    // Where it came from, so that it can be explained years later; never recomputed silently.
    int analysis_version = 0;
    QString options;                         // JSON
    QString card;                            // JSON of the calibration
    QString details = QStringLiteral("{}");  // JSON of what the run found besides its readings
    QString photo_sha256;
    QDateTime measured_at;
};

struct Grade {
    Id id = 0;
    Id visit = 0;
    QString zone;     // "left temple", "nape", "mid-shaft"...
    QString quality;  // "edges", "breakage", "porosity", "elasticity", "shine", "scalp"
    int value = 0;    // 0-4
    int round = 1;    // 2 for the second grading of the same visit
};

struct Service {
    Id id = 0;
    Id client = 0;
    std::optional<Id> visit;
    QDate date;
    QString kind;  // see domain/words.h: service_kinds()
    QString note;
    // Where on the hair, in mm from the scalp as it was on that day; no to_mm: to the ends. Of a cut, to_mm is the
    // length that was left.
    double from_mm = 0;
    std::optional<double> to_mm = {};
    QStringList sections = {};                // of the head, see head_sections(); empty: all of it
    QString strength = {};                    // "mild", "regular", "super", empty: not written down
    std::optional<double> minutes = {};       // from the first stroke to the rinse
    std::optional<double> most_minutes = {};  // that the maker's directions allow
    std::optional<double> temperature_c = {};
    std::optional<int> passes = {};
    QString strand_test = {}, patch_test = {};  // "passed", "failed", empty: none, or nobody wrote it down
    std::optional<QDate> patch_test_on = {};    // the day it was put on
    QString patch_test_where = {};              // "behind the left ear"
    QString result = {};                        // in the stylist's words
    std::optional<bool> reaction = {};          // of scalp or skin
    std::optional<bool> at_home = {};
    // Its line of demarcation as a tape showed it on a later day, mm from the scalp: the new growth since. Both or
    // none.
    std::optional<double> line_mm = {};
    std::optional<QDate> line_on = {};
    // Not: planned for that day. Only what was done changes the hair; of a planned one whose day has passed it is asked
    // whether it was done.
    bool done = true;
    bool operator==(const Service&) const = default;
};

struct Target {
    Id id = 0;
    Id client = 0;
    View view = View::left_temple;
    QString reading;   // "edge_coverage"
    double value = 0;  // in the reading's unit
};

// What a client is like for longer than one visit; at most one for each client.
struct ClientProfile {
    Id client = 0;
    std::optional<QDate> born;          // where she told it
    std::optional<double> age_years;    // else the age that she told
    std::optional<QDate> age_on;        // on this day
    std::optional<double> length_mm;    // of the longest hair, stretched straight
    std::optional<QDate> length_on;     // measured on this day
    QString texture;                    // "fine", "medium", "coarse", empty: not felt yet
    QString hair_group;                 // see hair_groups(): as studies of growth name it; empty: not asked, or mixed
    bool whole_history = false;         // every service of her life is in the record
    std::optional<QDate> history_from;  // else: every service from this day on
    std::optional<QDate> history_told_on = {};  // the day on which she said so; not set: not known, asked again
    bool operator==(const ClientProfile&) const = default;
};

struct HeatTool {
    QString name;  // "flat iron", "dryer"
    std::optional<double> temperature_c;
    double times_a_week = 0;
    std::optional<bool> on_wet_hair;
    bool operator==(const HeatTool&) const = default;
};

// What the hair goes through from day to day, as she told it on a day. The newest counts; at most one for each client
// and day.
struct DailyLife {
    Id id = 0;
    Id client = 0;
    QDate date;
    std::optional<double> minutes_a_day;    // she has for her hair
    std::optional<QVector<HeatTool>> heat;  // an empty list: none used
    std::optional<double> swims_a_week, washes_a_week;
    std::optional<bool> hard_water, covers_hair, tight_headwear, covers_at_night;
    std::optional<bool> tight_styles, style_hurts, added_hair;
    std::optional<double> style_weeks;  // how long one style stays in
    bool operator==(const DailyLife&) const = default;
};

// The answer to a question that is asked before a service, or a count made by hand, on a day. The newest of a question
// counts, for as long as domain/questions.h says; at most one for each client, question and day.
struct ClientAnswer {
    Id id = 0;
    Id client = 0;
    QDate date;
    QString question;  // a name of domain/questions.h
    int value = 0;     // yes 1, no 0; of a count the hairs
    bool operator==(const ClientAnswer&) const = default;
};

}  // namespace kempt
