// How the questions of a plan are answered: by what they ask for. And keeping the answers.
#pragma once

#include <QDate>
#include <QString>
#include <optional>

#include "desk/plan/plan_data.h"
#include "desk/plan/plan_fields.h"

namespace kempt::desk {

enum class AnswerBy {
    yes_no,        // a question of domain/questions.h
    count,         // hairs, counted by hand: the same
    habit,         // yes or no, of daily life
    habit_number,  // times or minutes, of daily life
    age,
    length,
    texture,
    field,     // of the planned service
    record,    // of services
    grade,     // at a visit
    elsewhere  // what is measured
};

struct Answering {
    AnswerBy by = AnswerBy::elsewhere;
    QString name;      // of the fact: "scalp_pain"
    QString sentence;  // that asks
    std::optional<PlanField> field;
};
// Of a sentence that the care rules ask with; nothing for one that they do not know.
[[nodiscard]] std::optional<Answering> answering_of(const QString& sentence);
// The same by the fact's name.
[[nodiscard]] std::optional<Answering> answering_of_fact(const QString& name);

// What is known now: 1 yes, 0 no, else the number (hairs, years, mm, times); of texture 0..2. Only what still counts.
[[nodiscard]] std::optional<double> known_answer(const Answering& answering, const PlanData& data);
// The day of an answer that is kept for good, when it was given before today: it is not changed by a single press.
[[nodiscard]] std::optional<QDate> kept_for_good(const Answering& answering, const PlanData& data);

// Puts it into the book as told today; nothing: takes back what still counts. Errors: those of work/keep_care.h.
[[nodiscard]] Status keep_answer(Book& book, Id client, QDate today, const Answering& answering,
                                 const std::optional<double>& value);

// Highest number that can be told, and its unit.
struct AnswerRange {
    double most = 0;
    QString unit;
};
[[nodiscard]] AnswerRange range_of(const Answering& answering);

}  // namespace kempt::desk
