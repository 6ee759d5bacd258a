#include "desk/consultation/grade_steps.h"

#include <algorithm>

#include "domain/words.h"

namespace kempt::desk {
namespace {

const QStringList& order() {
    static const QStringList words{QStringLiteral("scalp"),    QStringLiteral("edges"),      QStringLiteral("breakage"),
                                   QStringLiteral("porosity"), QStringLiteral("elasticity"), QStringLiteral("shine")};
    return words;
}

}  // namespace

QStringList zones_of(const QString& quality) {
    const QString front = word_of(View::front_hairline), left = word_of(View::left_temple),
                  right = word_of(View::right_temple), nape = word_of(View::nape);
    const QStringList strand{QStringLiteral("roots"), QStringLiteral("mid-shaft"), QStringLiteral("ends")};
    if (quality == u"scalp") return head_sections();
    if (quality == u"edges") return {front, left, right, nape};
    if (quality == u"shine") return {QStringLiteral("mid-shaft")};
    return strand;
}

QVector<GradeStep> first_steps(const QVector<Grade>& grades) {
    QVector<GradeStep> steps;
    for (const QString& quality : order()) {
        for (const QString& zone : zones_of(quality)) steps.append({quality, zone});
        for (const Grade& grade : grades)
            if (grade.quality == quality && !steps.contains({quality, grade.zone})) steps.append({quality, grade.zone});
    }
    return steps;
}

QVector<GradeStep> second_steps(const QVector<Grade>& grades) {
    QVector<GradeStep> steps;
    for (const GradeStep& step : first_steps(grades))
        if (grade_of(grades, step, 1) != nullptr) steps.prepend(step);
    return steps;
}

const Grade* grade_of(const QVector<Grade>& grades, const GradeStep& step, int round) {
    const auto found = std::find_if(grades.begin(), grades.end(), [&](const Grade& g) {
        return g.quality == step.quality && g.zone == step.zone && g.round == round;
    });
    return found == grades.end() ? nullptr : &*found;
}

}  // namespace kempt::desk
