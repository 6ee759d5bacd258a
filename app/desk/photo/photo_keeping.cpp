// Keeping what was drawn, and taking a line over from another shot.
#include <QPushButton>

#include "desk/photo/mark_parts.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "work/carry_marks.h"
#include "work/measure_in_book.h"
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
        emit session_.trouble(
            tr("The last drawing was not kept. %1").arg(QString::fromStdString(fit.error().sentence())));
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

void PhotoPage::carry() {
    if (carry_from_ == 0) return;
    work::CarryOptions options;
    options.from_photo = carry_from_;
    options.to_photo = photo_.id;
    carry_->setEnabled(false);
    session_.ask(
        session_.bench(), tr("Taking the line over"), this,
        [options](Book& book, const Progress& progress) { return work::carry_marks(book, options, progress); },
        [this, to = photo_.id](const Marks& marks) {
            carry_->setEnabled(true);
            if (to != photo_.id) return;
            canvas_->propose(marks);
            canvas_->setFocus();
            emit session_.news(
                tr("The line was taken over through the card. Look along it and move the points that are off."));
        },
        [this] { carry_->setEnabled(true); });
}

}  // namespace kempt::desk
