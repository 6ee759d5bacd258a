// Reading and keeping the grades of a visit.
#include <algorithm>

#include "desk/consultation/grades_page.h"
#include "desk/consultation/kept_strip.h"
#include "desk/translations/said.h"
#include "work/keep_records.h"

namespace kempt::desk {

Result<GradesData> grades_data(Book& book, Id id) {
    GradesData data;
    auto visit = work::visit_of(book, id);
    if (!visit) return visit.error();
    data.visit = std::move(visit).value();
    auto client = work::client_of(book, data.visit.client);
    if (!client) return client.error();
    data.client = std::move(client).value();
    auto grades = work::list_grades(book, id);
    if (!grades) return grades.error();
    data.grades = std::move(grades).value();
    const auto agreement = work::grade_agreement_of(book, data.client.id);
    if (!agreement) return agreement.error();
    data.agreement = *agreement;
    return data;
}

void GradesPage::set_local(const GradeStep& step, int round, const std::optional<int>& value) {
    const auto found = std::find_if(data_.grades.begin(), data_.grades.end(), [&](const Grade& g) {
        return g.quality == step.quality && g.zone == step.zone && g.round == round;
    });
    if (found != data_.grades.end() && value)
        found->value = *value;
    else if (found != data_.grades.end())
        data_.grades.erase(found);
    else if (value)
        data_.grades.append({0, place_.visit, step.zone, step.quality, *value, round});
}

void GradesPage::grade(int value) {
    const auto now = step();
    if (!now) return;
    const Grade* given = grade_of(data_.grades, *now, round_);
    before_ = Before{*now, round_, given != nullptr ? std::optional(given->value) : std::nullopt};
    strip_->set_undo(tr("grade of %1, %2").arg(now->quality, now->zone));
    keep(*now, round_, value);
    ++at_;
    show_list();
    show_step();
}

void GradesPage::take_back() {
    if (!before_) return;
    const Before before = *before_;
    before_.reset();
    strip_->set_undo({});
    round_ = before.round;
    keep(before.step, before.round, before.value);
    show_all();
    pick(before.step);
}

// Shown at once, kept behind the window; a refusal brings back what the book holds.
void GradesPage::keep(const GradeStep& step, int round, const std::optional<int>& value) {
    set_local(step, round, value);
    ++keeping_;
    const Grade grade{0, place_.visit, step.zone, step.quality, value.value_or(0), round};
    session_.records().start(
        tr("Keeping the grade"), this,
        [grade, erase = !value](Book& book, const Progress&) -> Result<work::GradeAgreement> {
            if (!erase) {
                if (const auto kept = work::set_grade(book, grade); !kept) return kept.error();
            } else {
                const auto all = work::list_grades(book, grade.visit);
                if (!all) return all.error();
                for (const Grade& one : *all)
                    if (one.zone == grade.zone && one.quality == grade.quality && one.round == grade.round)
                        if (const Status gone = work::erase_grade(book, one.id); !gone) return gone.error();
            }
            const auto visit = work::visit_of(book, grade.visit);
            if (!visit) return visit.error();
            return work::grade_agreement_of(book, visit->client);
        },
        [this, client = data_.client.id, visit = place_.visit](Result<work::GradeAgreement> kept) {
            if (kept.ok()) {
                data_.agreement = *kept;
                strip_->say_kept();
                show_step();
                session_.changed(client, visit);
                --keeping_;
                return;
            }
            --keeping_;
            tell_not_kept(session_, kept.error());
            strip_->say_not_kept(said(kept.error().what));
            before_.reset();
            strip_->set_undo({});
            load();
        });
}

}  // namespace kempt::desk
