#include "desk/visit/visit_steps.h"

#include <QCoreApplication>
#include <algorithm>

#include "desk/widgets/parts.h"
#include "work/sort_sittings.h"

namespace kempt::desk {
namespace {

using State = VisitStep::State;
using What = VisitStep::What;

QString tr(const char* words) {
    return QCoreApplication::translate("kempt::desk", words);
}

bool is_scalp(const Grade& grade) {
    return grade.quality == QStringLiteral("scalp");
}

VisitStep told_step(const VisitFacts& facts) {
    VisitStep step{What::told, State::open, tr("Consultation"), {}, {}, 0, {}};
    if (facts.life_told && facts.profile_told) {
        step.state = State::done;
        step.words = tr("Hair and daily life were told, and still count.");
    } else if (facts.life_told || facts.profile_told) {
        step.state = State::begun;
        step.words = facts.life_told ? tr("Her hair was not asked about yet.")
                                     : tr("Her daily life was not asked about lately.");
    } else {
        step.words = tr("Ask about her hair and her daily life.");
    }
    return step;
}

VisitStep scalp_step(const VisitFacts& facts) {
    const bool looked = std::any_of(facts.grades.begin(), facts.grades.end(), is_scalp);
    return {What::scalp,
            looked ? State::done : State::open,
            tr("Scalp check"),
            looked ? tr("Looked at and graded that day.") : tr("Look at the scalp before anything else, and grade it."),
            {},
            0,
            {}};
}

VisitStep photos_step(const VisitFacts& facts, const QVector<Missing>& missing) {
    VisitStep step{What::photos, State::done, tr("Photographs"), {}, {}, 0, {}};
    bool view_missing = false;
    for (const Missing& one : missing) {
        if (one.what == Missing::What::edge_line) continue;
        step.missing.append(one);
        view_missing = view_missing || one.what != Missing::What::second_shot;
    }
    if (facts.photos.isEmpty()) {
        step.state = State::open;
        step.words = tr("None yet.");
    } else {
        step.state = step.missing.isEmpty() ? State::done : State::begun;
        step.words = step.missing.isEmpty() ? tr("Every view has its shots.")
                     : view_missing ? tr("%1 so far.").arg(counted(facts.photos.size(), tr("photo"), tr("photos")))
                                    : tr("Every view is there; second shots are wanting.");
    }
    return step;
}

VisitStep grades_step(const VisitFacts& facts) {
    const auto kept = facts.grades.size() - std::count_if(facts.grades.begin(), facts.grades.end(), is_scalp);
    return {What::grades,
            kept > 0 ? State::done : State::open,
            tr("Grades"),
            kept > 0 ? tr("%1 kept.").arg(counted(kept, tr("grade"), tr("grades"))) : tr("None yet: one key a grade."),
            {},
            0,
            {}};
}

VisitStep readings_step(const VisitFacts& facts, const QVector<Missing>& missing) {
    VisitStep step{What::readings, State::open, tr("Readings"), {}, {}, 0, {}};
    for (const Missing& one : missing)
        if (one.what == Missing::What::edge_line) step.missing.append(one);
    qsizetype measured = 0, sound = 0, waiting = 0;
    for (const work::PhotoRow& row : facts.photos) {
        if (row.photo.quality_level == QStringLiteral("refused")) continue;
        ++sound;
        const bool given =
            std::any_of(row.readings.begin(), row.readings.end(), [](const ReadingRecord& r) { return !r.refused; });
        measured += given ? 1 : 0;
        waiting += row.has_marks && row.readings.empty() ? 1 : 0;
        if (!given && !row.has_marks && step.photo == 0) {
            step.photo = row.photo.id;
            step.view = row.photo.view;
        }
    }
    if (!step.missing.isEmpty()) {
        step.photo = step.missing.first().photo;
        step.view = step.missing.first().view;
    }
    if (sound == 0) {
        step.words = tr("They come with the photographs.");
        return step;
    }
    step.state = measured == 0 ? State::open : step.missing.isEmpty() && waiting == 0 ? State::done : State::begun;
    step.words = tr("%1 of %2 give readings.").arg(measured).arg(counted(sound, tr("photo"), tr("photos")));
    if (step.photo == 0) {
        step.photo = facts.photos.first().photo.id;
        step.view = facts.photos.first().photo.view;
    }
    return step;
}

VisitStep services_step(const VisitFacts& facts) {
    const bool any = !facts.services.isEmpty();
    return {What::services,
            any ? State::done : State::optional,
            tr("Services"),
            any ? tr("%1 written down.").arg(counted(facts.services.size(), tr("service"), tr("services")))
                : tr("Write down what was done today, if anything was."),
            {},
            0,
            {}};
}

// Photos of a later sitting of the same visit, told by their capture times.
VisitStep after_step(const VisitFacts& facts) {
    VisitStep step{What::after, State::optional, tr("Photographs afterwards"), {}, {}, 0, {}};
    QVector<QDateTime> taken;
    for (const work::PhotoRow& row : facts.photos)
        if (row.photo.taken && row.photo.taken->date() == facts.day) taken.append(*row.photo.taken);
    const auto sittings = work::sittings_of(taken);
    if (sittings.size() > 1) {
        step.state = State::done;
        const qsizetype later = taken.size() - sittings.first().size();
        step.words = tr("%1 taken later that day.").arg(counted(later, tr("photo"), tr("photos")));
    } else if (facts.services.isEmpty()) {
        step.words = tr("After a service, the same views again.");
    } else {
        step.state = State::open;
        step.words =
            taken.isEmpty() && !facts.photos.isEmpty()
                ? tr("The photos do not say when they were taken: whether some are of afterwards is not known.")
                : tr("The same views again, now that the hair was worked on.");
    }
    return step;
}

}  // namespace

QVector<VisitStep> steps_of(const VisitFacts& facts) {
    const QVector<Missing> missing = missing_of(facts.photos, facts.followed);
    return {told_step(facts),
            scalp_step(facts),
            photos_step(facts, missing),
            grades_step(facts),
            readings_step(facts, missing),
            services_step(facts),
            after_step(facts),
            {What::dates,
             State::optional,
             tr("Next dates"),
             tr("Retouch, trim, photographs and patch test, as ranges."),
             {},
             0,
             {}}};
}

QString word_of(VisitStep::State state) {
    switch (state) {
        case State::done:
            return tr("done");
        case State::begun:
            return tr("begun");
        case State::optional:
            return tr("as needed");
        case State::open:
            break;
    }
    return tr("still to do");
}

}  // namespace kempt::desk
