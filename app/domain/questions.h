// What is asked of a client, or counted by hand, before a service, and how long an answer counts. The sentence that
// asks belongs to the care rules (care::find_fact of the same name).
#pragma once

#include <QDate>
#include <QString>
#include <QVector>
#include <optional>

#include "domain/records.h"

namespace kempt {

enum class AnswerSort { yes_or_no, count };
// How long an answer counts.
enum class Lasting {
    that_day,     // the scalp and the hours before: asked anew each time
    for_a_week,   // what was counted
    for_weeks,    // how she is these weeks
    yes_for_good  // what once happened: a yes stays, a no counts as for_weeks
};
// Own choices, no source. Four weeks: a usual time between two visits, and short against the two to three months after
// which a pregnancy or a medicine shows in the hair (from memory). The pull test and the 60 second comb count are of
// the week in which they were made: washing and combing move them.
inline constexpr int weeks_days = 28;
inline constexpr int a_week_days = 7;

struct Question {
    QString name;  // "pregnant_or_breastfeeding"
    AnswerSort sort = AnswerSort::yes_or_no;
    Lasting lasting = Lasting::that_day;
};
[[nodiscard]] const QVector<Question>& questions();
[[nodiscard]] const Question* find_question(const QString& name);  // null when there is none

// Whether an answer given on that day still counts today; one of a later day never does.
[[nodiscard]] bool still_counts(const ClientAnswer& answer, QDate today);

}  // namespace kempt
