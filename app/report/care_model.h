// What the report says of care, as plain data: the hair's record by part, a planned service, the next dates, care at
// home. Lengths in mm from the scalp.
#pragma once

#include <QDate>
#include <QString>
#include <QStringList>
#include <QVector>
#include <optional>

namespace kempt::report {

struct Stretch {
    QString part;  // "mid-shaft"
    double from_mm = 0;
    std::optional<double> to_mm;  // not set: to the ends
};

struct PastLine {
    QDate date;
    QString kind;
    bool surely = true;  // else the rate of growth leaves it open
    Stretch hair;
};
// What one part of today's hair has been through, newest first.
struct PartLine {
    Stretch hair;
    QVector<PastLine> been_through;
    bool complete = false;  // else what came before the record is not known
};
struct GrowthLine {
    QString kind;
    QDate since;
    double mm = 0, low = 0, high = 0;  // 95 % range
    QString source;
};

struct PlanFinding {
    QString level;      // "stop", "caution", "note"
    QString text;       // full sentences: reason and remedy
    QStringList where;  // empty: the client as a whole
    QString source;
};
struct WorkStep {
    double start_minutes = 0, end_minutes = 0;  // from the first stroke
    QString part, section;                      // "roots", "nape"; no section: the whole head
    int person = 1;
    double needed_minutes = 0, least_minutes = 0, most_minutes = 0;  // that its hair needs, and carries the product
    bool within = true;                                              // what is tolerated
};
struct PlannedWork {
    QString kind;
    bool stopped = false;
    QVector<Stretch> put_on, keep_off;
    bool unsure = false;      // the record does not say what all of it has been through
    QVector<WorkStep> order;  // empty: none was asked for, or none works
    int people = 1;
    double rinse_minutes = 0;
    QString no_order;        // why there is none, full sentences; may be empty
    QStringList would_help;  // when no order works
};
struct Planned {
    QVector<PlannedWork> services;  // none: nothing was planned, and the report says nothing of it
    QVector<PlanFinding> findings;  // stops first
    QStringList questions;          // to be answered first
    qsizetype stop_questions = 0;   // so many of them, from the first one on, may bring a stop
    QStringList always;             // cautions that stand whatever the findings are
};

struct NextDate {
    QString what;  // "retouch"
    QDate from, to;
    QString why{};  // a full sentence; may be empty
    QString source{};
    bool passed = false;  // its last day lies before the report
};

struct Tip {
    QString text, source;
};

}  // namespace kempt::report
