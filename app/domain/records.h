// The plain records of a book. No behaviour, no SQL, no windows; std::optional means "not set".
#pragma once

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QPointF>
#include <QSize>
#include <QString>
#include <QVector>
#include <optional>

namespace kempt {

using Id = qint64;  // > 0 once kept in a book; 0 while it has not been

enum class View { front_hairline, left_temple, right_temple, crown, nape, lengths, ends };

struct Client {
    Id id = 0;
    QString name;
    QString note;
    QDate since;                       // first visit or the day she was added
    bool photo_consent = false;        // pictures may leave the book
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
    int shot = 1;               // repeat shots of one view count 1, 2, 3
    QString file_name;          // as it came
    QString format;             // "jpeg", "png", "webp", "tiff", "heic"
    QString sha256;             // of the original bytes, lower-case hex
    QSize size;                 // upright pixels
    std::optional<QDateTime> taken;  // capture time from the file
    QByteArray thumbnail;       // JPEG, longest side 320
    QString quality_level;      // "good", "usable", "refused", empty before measuring
    QString quality_findings;   // JSON array as in the contract
};

// What the stylist drew on a photo; pixel coordinates in the upright photo.
struct Marks {
    Id id = 0;
    Id photo = 0;
    View view = View::front_hairline;
    QVector<QPointF> edge_line;
    std::optional<QPointF> hair_side;
    QVector<QPointF> hair_taps, scalp_taps;   // optional colour samples
    QVector<QPointF> shine_region, strand_line, region, anchors;
    QString sheet;                            // "hem", "combings", "strand" or empty
    // Corrections of a comb-out: a point on each traced strand that is no hair; pairs of points, one on each of two
    // traced strands that are one hair.
    QVector<QPointF> not_hair, joined;
    QVector<QPointF> scale_points;            // two or none
    double scale_mm = 0;
};

struct ReadingRecord {
    Id id = 0;
    Id photo = 0;
    Id marks = 0;
    QString name, unit;
    double value = 0, low = 0, high = 0;
    bool refused = false;
    QString refusal_code, refusal_text;       // when refused; value, low, high are then meaningless
    // Where it came from, so that it can be explained years later; never recomputed silently.
    int analysis_version = 0;
    QString options;                          // JSON
    QString card;                             // JSON of the calibration
    QString details = QStringLiteral("{}");   // JSON of what the run found besides its readings
    QString photo_sha256;
    QDateTime measured_at;
};

struct Grade {
    Id id = 0;
    Id visit = 0;
    QString zone;    // "left temple", "nape", "mid-shaft"...
    QString quality; // "edges", "breakage", "porosity", "elasticity", "shine", "scalp"
    int value = 0;   // 0-4
    int round = 1;   // 2 for the second grading of the same visit
};

struct Service {
    Id id = 0;
    Id client = 0;
    std::optional<Id> visit;
    QDate date;
    QString kind;    // see domain/words.h: service_kinds()
    QString note;
};

struct Target {
    Id id = 0;
    Id client = 0;
    View view = View::left_temple;
    QString reading;  // "edge_coverage"
    double value = 0; // in the reading's unit
};

}  // namespace kempt
