// Reading and keeping the grades of a visit.
#include <algorithm>

#include "desk/consultation/grades_page.h"
#include "desk/consultation/kept_strip.h"
#include "desk/translations/said.h"
#include "work/keep_records.h"
#include "work/put_back.h"

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

QString GradesPage::about() const {
    return QStringLiteral("grade/%1/").arg(place_.visit);
}

void GradesPage::grade(int value) {
    const auto now = step();
    if (!now) return;
    keep(*now, round_, value);
    ++at_;
    show_list();
    show_step();
}

void GradesPage::take_back() {
    session_.undo().take_back(place_.client, about());
}

void GradesPage::do_again() {
    session_.undo().do_again(place_.client, about());
}

// The zone whose grade it was stands open again.
void GradesPage::taken(const UndoStep& undone) {
    if (!undone.about.startsWith(about())) return;
    const QStringList at = undone.about.mid(about().size()).split(QLatin1Char('/'));
    round_ = at.value(0).toInt();
    show_all();
    pick({at.value(1), at.value(2)});
}

void GradesPage::show_undo() {
    strip_->set_undo(session_.undo().words(place_.client, about()));
}

// Shown at once, kept behind the window; a refusal brings back what the book holds.
void GradesPage::keep(const GradeStep& step, int round, int value) {
    set_local(step, round, value);
    ++keeping_;
    struct Kept {
        work::GradeEntry before;
        work::GradeAgreement agreement;
    };
    const Grade grade{0, place_.visit, step.zone, step.quality, value, round};
    session_.records().start(
        tr("Keeping the grade"), this,
        [grade](Book& book, const Progress&) -> Result<Kept> {
            Kept out{{grade, {}}, {}};
            const auto all = work::list_grades(book, grade.visit);
            if (!all) return all.error();
            for (const Grade& one : *all)
                if (one.zone == grade.zone && one.quality == grade.quality && one.round == grade.round)
                    out.before.value = one.value;
            if (const auto kept = work::set_grade(book, grade); !kept) return kept.error();
            const auto visit = work::visit_of(book, grade.visit);
            if (!visit) return visit.error();
            const auto agreement = work::grade_agreement_of(book, visit->client);
            if (!agreement) return agreement.error();
            out.agreement = *agreement;
            return out;
        },
        [this, grade, client = place_.client](Result<Kept> kept) {
            if (!kept.ok()) {
                --keeping_;
                tell_not_kept(session_, kept.error());
                strip_->say_not_kept(said(kept.error().what));
                load();
                return;
            }
            UndoStep undo{
                tr("grade of %1, %2").arg(said(grade.quality), said(grade.zone)),
                QStringLiteral("grade/%1/%2/%3/%4").arg(grade.visit).arg(grade.round).arg(grade.quality, grade.zone),
                client,
                grade.visit,
                {}};
            const work::GradeEntry now{grade, grade.value};
            undo.back = [now, before = kept->before](Book& book) { return work::put_back(book, now, before); };
            undo.again = [now, before = kept->before](Book& book) { return work::put_back(book, before, now); };
            session_.undo().add(undo);
            data_.agreement = kept->agreement;
            strip_->say_kept();
            show_step();
            session_.changed(client, grade.visit);
            --keeping_;
        });
}

}  // namespace kempt::desk
