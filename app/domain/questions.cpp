#include "domain/questions.h"

#include <algorithm>

namespace kempt {

const QVector<Question>& questions() {
    using enum AnswerSort;
    using enum Lasting;
    static const QVector<Question> all = {
        {QStringLiteral("pregnant_or_breastfeeding"), yes_or_no, for_weeks},
        {QStringLiteral("takes_medication"), yes_or_no, for_weeks},
        {QStringLiteral("scratched_scalp"), yes_or_no, that_day},
        {QStringLiteral("washed_scalp"), yes_or_no, that_day},
        {QStringLiteral("scalp_wound"), yes_or_no, that_day},
        {QStringLiteral("scalp_pain"), yes_or_no, that_day},
        {QStringLiteral("scalp_pustules"), yes_or_no, that_day},
        {QStringLiteral("tingling_with_thinning"), yes_or_no, for_weeks},
        {QStringLiteral("face_rash"), yes_or_no, that_day},
        {QStringLiteral("sudden_loss"), yes_or_no, for_weeks},
        {QStringLiteral("patchy_loss"), yes_or_no, for_weeks},
        {QStringLiteral("smooth_edges"), yes_or_no, for_weeks},
        {QStringLiteral("eyebrow_loss"), yes_or_no, for_weeks},
        {QStringLiteral("loss_goes_on"), yes_or_no, for_weeks},
        {QStringLiteral("swelling_or_breathing"), yes_or_no, yes_for_good},
        {QStringLiteral("dye_reaction"), yes_or_no, yes_for_good},
        {QStringLiteral("black_henna_reaction"), yes_or_no, yes_for_good},
        {QStringLiteral("straightener_burn"), yes_or_no, yes_for_good},
        {QStringLiteral("treatment_reaction"), yes_or_no, yes_for_good},
        {QStringLiteral("uneven_colour"), yes_or_no, for_weeks},
        {QStringLiteral("pull_test_hairs"), count, for_a_week},
        {QStringLiteral("comb_count"), count, for_a_week},
    };
    return all;
}

const Question* find_question(const QString& name) {
    const auto& all = questions();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Question& one) { return one.name == name; });
    return found == all.end() ? nullptr : &*found;
}

bool still_counts(const ClientAnswer& answer, QDate today) {
    const Question* question = find_question(answer.question);
    if (!question || answer.date > today) return false;
    const qint64 days = answer.date.daysTo(today);
    switch (question->lasting) {
        case Lasting::that_day:
            return days == 0;
        case Lasting::for_a_week:
            return days <= a_week_days;
        case Lasting::yes_for_good:
            if (answer.value != 0) return true;
            break;
        case Lasting::for_weeks:
            break;
    }
    return days <= weeks_days;
}

}  // namespace kempt
