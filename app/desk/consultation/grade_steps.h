// What is graded, in the order of the hands: scalp and edges while the hair is parted, then the strand from root to
// end.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

#include "domain/records.h"

namespace kempt::desk {

struct GradeStep {
    QString quality, zone;
    bool operator==(const GradeStep&) const = default;
};

// Zones in which a quality is looked at. Zones are the words of the care rules.
[[nodiscard]] QStringList zones_of(const QString& quality);
// All of them, with what else the visit has grades of (as added by the command line) behind its quality's own.
[[nodiscard]] QVector<GradeStep> first_steps(const QVector<Grade>& grades);
// Those that have a first grade, from the last to the first: the second look does not follow the first one's trail.
[[nodiscard]] QVector<GradeStep> second_steps(const QVector<Grade>& grades);
// The grade of a step in a round, or null.
[[nodiscard]] const Grade* grade_of(const QVector<Grade>& grades, const GradeStep& step, int round);

}  // namespace kempt::desk
