// Keeping what was drawn, and taking a line over from another shot.
#include <QPushButton>

#include "desk/photo/mark_parts.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/translations/said.h"
#include "work/carry_marks.h"
#include "work/measure_in_book.h"
#include "work/propose_marks.h"
#include "work/set_marks.h"

namespace kempt::desk {

void PhotoPage::put_away(std::function<void()> then) {
    keep_pause_.stop();
    meter_.stop();
    keep(std::move(then));
}

// The marks first, at once; then the readings that belong to them, on the slower worker.
void PhotoPage::keep(std::function<void()> then) {
    const bool leaving = static_cast<bool>(then);
    const auto done = [then = std::move(then)] {
        if (then) then();
    };
    if (!dirty_) return done();
    const Marks marks = finished_part(canvas_->marks());
    const Id photo = photo_.id, client = place_.client, visit = place_.visit;
    // What is half drawn waits for its next point. Leaving the page with it is said, not hidden.
    const bool whole = all_finished(canvas_->marks());
    if (!whole && !leaving) return;
    if (!whole)
        emit session_.trouble(tr("What was half drawn was not kept: %1").arg(half_drawn_words(canvas_->marks())));
    dirty_ = false;
    if (const Status fit = work::check_marks(marks, photo_.size); !fit.ok()) {
        emit session_.trouble(tr("The last drawing was not kept. %1").arg(said(fit.error().sentence())));
        return done();
    }
    if (nothing_drawn(marks) && nothing_drawn(kept_marks_)) return done();
    kept_marks_ = marks;
    ++keeping_;
    session_.ask(
        session_.records(), tr("Keeping the drawing"), &session_,
        [photo, marks](Book& book, const Progress&) { return work::set_marks(book, photo, marks); },
        [&session = session_, self = QPointer<PhotoPage>(this), photo, client, visit, done](const Marks&) {
            done();
            session.bench().start(
                tr("Keeping the readings"), &session,
                [photo](Book& book, const Progress& progress) {
                    return work::measure_in_book(book, photo, {}, progress);
                },
                [&session, self, client, visit](Result<work::MeasuredPhoto> result) {
                    if (self) --self->keeping_;
                    if (!result.ok()) session.tell(result.error());
                    session.changed(client, visit);
                });
        },
        [self = QPointer<PhotoPage>(this), done] {
            if (self) --self->keeping_;
            done();
        });
}

bool PhotoPage::can_carry() const {
    const Marks& drawn = canvas_->marks();
    // Anchors help to bring the marks of another visit, so they may stand already.
    Marks others = drawn;
    if (bring_from_) others.anchors.clear();
    return (carry_from_ > 0 || bring_from_) && nothing_drawn(others);
}

void PhotoPage::carry() {
    if (carry_from_ == 0) return bring_proposal();
    work::CarryOptions options;
    options.from_photo = carry_from_;
    options.to_photo = photo_.id;
    carry_->setEnabled(false);
    session_.ask(
        session_.bench(), tr("Taking the marks over"), this,
        [options](Book& book, const Progress& progress) { return work::carry_marks(book, options, progress); },
        [this, to = photo_.id](const work::CarriedMarks& carried) {
            carry_->setEnabled(true);
            if (to == photo_.id) take_proposal(carried);
        },
        [this] { carry_->setEnabled(true); });
}

// What is drawn here (anchors) is kept first: the book is asked for it.
void PhotoPage::bring_proposal() {
    if (!bring_from_) return;
    carry_->setEnabled(false);
    keep([this, self = QPointer<PhotoPage>(this), to = photo_.id] {
        if (!self || to != photo_.id) return;
        work::ProposeOptions options;
        options.photo = to;
        session_.ask(
            session_.bench(), tr("Bringing the marks from the last visit"), this,
            [options](Book& book, const Progress& progress) { return work::propose_marks(book, options, progress); },
            [this, to](const work::ProposedMarks& proposed) {
                carry_->setEnabled(true);
                if (to == photo_.id) take_proposal(proposed.carried);
            },
            [this] { carry_->setEnabled(true); });
    });
}

// One step, which can be taken back. What was drawn here already stays.
void PhotoPage::take_proposal(const work::CarriedMarks& carried) {
    Marks now = canvas_->marks();
    const Marks& from = carried.marks;
    const auto fill = [](QVector<QPointF>& list, const QVector<QPointF>& with) {
        if (list.isEmpty()) list = with;
    };
    if (now.edge_line.isEmpty()) now.hair_side = from.hair_side;
    fill(now.edge_line, from.edge_line);
    fill(now.hair_taps, from.hair_taps);
    fill(now.scalp_taps, from.scalp_taps);
    fill(now.shine_region, from.shine_region);
    fill(now.strand_line, from.strand_line);
    fill(now.anchors, from.anchors);
    if (now.sheet.isEmpty() && now.region.isEmpty()) {
        now.sheet = from.sheet;
        now.region = from.region;
    }
    canvas_->propose(now);
    canvas_->setFocus();
    emit session_.news(tr("%1 Look along it and move the points that are off.").arg(said(carried.told())));
}

}  // namespace kempt::desk
