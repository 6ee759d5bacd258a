// One visit as a round of steps, each with how it stands: what she told, scalp check, photographs, grades, readings,
// services, photographs afterwards, next dates. Any of them may be left and gone on with later.
#pragma once

#include <QString>
#include <QVector>

#include "desk/visit/missing.h"

namespace kempt::desk {

struct VisitFacts {
    QDate day;
    bool life_told = false, profile_told = false;  // told that day, or not long enough ago to be asked again
    QVector<work::PhotoRow> photos;
    QVector<View> followed;     // views of the visit before
    QVector<Grade> grades;      // of the visit
    QVector<Service> services;  // of the visit
};

struct VisitStep {
    enum class What { told, scalp, photos, grades, readings, services, after, dates };
    enum class State { open, begun, done, optional };
    What what = What::told;
    State state = State::open;
    QString name, words;       // "Photographs"; a sentence on how it stands
    QVector<Missing> missing;  // of photos and readings: each has its own press
    Id photo = 0;              // of readings: the photo to go on with
    View view = View::front_hairline;
};

// In the order of the round.
[[nodiscard]] QVector<VisitStep> steps_of(const VisitFacts& facts);
// "done", "begun", "still to do", "as needed"
[[nodiscard]] QString word_of(VisitStep::State state);

}  // namespace kempt::desk
