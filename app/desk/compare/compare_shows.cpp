// What the compare page does with pictures: asks for them, shows them, lets them leave.
#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QSignalBlocker>
#include <QSlider>
#include <QStackedWidget>
#include <QTimer>

#include "desk/compare/before_after.h"
#include "desk/compare/compare_choices.h"
#include "desk/compare/compare_page.h"
#include "desk/compare/eyes_dialog.h"
#include "desk/compare/one_over_other.h"
#include "desk/compare/side_by_side.h"
#include "desk/compare/strip_panel.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"
#include "speech/speech.h"
#include "work/compare_pictures.h"
#include "work/report_language.h"

namespace kempt::desk {

void ComparePage::compare() {
    const work::CompareOptions asked_for = options();
    const int asked = ++asked_;
    if (job_) job_->cancel();
    job_.reset();
    pair_there_ = false;
    settled_ = true;
    if (view_->count() > 0 && wanted_ == Mode::all_visits && !temples()) {
        strip_->show_view(place_.client, chosen_view(), to_->currentData().toLongLong());
        show_mode();
        return;
    }
    strip_->stop();
    if (asked_for.from_visit == 0 || asked_for.to_visit == 0 ||
        (asked_for.from_visit == asked_for.to_visit && !temples())) {
        show_empty(
            tr("Nothing to compare yet.\nTake photos of one view at two visits, and both stand here at one "
               "scale; with an edge line or anchors drawn on them they are laid over each other."));
        show_mode();
        return;
    }
    settled_ = false;
    job_ = session_.bench().start(
        tr("Laying the photos over each other"), this,
        [asked_for](Book& book, const Progress& progress) { return work::compare_pictures(book, asked_for, progress); },
        [this, asked](Result<work::ComparedPictures> result) {
            if (asked != asked_) return;
            settled_ = true;
            job_.reset();
            if (!result.ok()) {
                show_empty(said(result.error().sentence()));
                show_mode();
                return;
            }
            take_pair(result.value());
        });
}

void ComparePage::take_pair(const work::ComparedPictures& c) {
    pair_ = {c.pair.before, c.pair.after, c.pair.before_line, c.pair.after_line,
             c.before_date, c.after_date, c.pair.px_per_mm};
    pair_.over = c.pair.over;
    pair_.shift = c.pair.shift;
    pair_.laid_to_mm = c.pair.residual_mm;
    if (temples()) {
        pair_.mirrored = true;
        pair_.before_words = tr("left  %1").arg(date_words(c.before_date));
        pair_.after_words = tr("right  %1").arg(date_words(c.after_date));
    }
    pair_there_ = true;
    photos_ = {c.before_photo, c.after_photo};
    why_apart_ = said(c.pair.why_apart);
    verdict_words_ = beginning(said(c.verdict));
    tone_ = c.verdict.startsWith(QLatin1String("improved")) ? "better"
            : c.verdict.startsWith(QLatin1String("worse"))  ? "worse"
                                                            : "plain";
    QStringList notes = said(c.pair.notes);
    if (c.pair.px_per_mm > 0 && c.pair.over) notes.prepend(tr("Both at one scale."));
    if (c.must_look())
        notes.append(tr("She does not want her face seen: look at both photos under “Eyes” before they leave."));
    notes_words_ = notes.join(QLatin1Char(' '));
    picture_->set_pair(pair_);
    over_->set_pair(pair_);
    beside_->set_pair(pair_);
    show_mode();
}

void ComparePage::say(const QString& strong, const QString& soft, const char* tone) {
    verdict_->setText(strong);
    verdict_->setVisible(!strong.isEmpty());
    notes_->setText(soft);
    notes_->setVisible(!soft.isEmpty());
    verdict_box_->setVisible(!strong.isEmpty() || !soft.isEmpty());
    set_panel_tone(verdict_box_, tone);
    QTimer::singleShot(0, this, &ComparePage::fit);
}

void ComparePage::show_mode() {
    const Mode now = mode();
    const bool strip = now == Mode::all_visits;
    for (int i = 0; i < modes_.size(); ++i) {
        const QSignalBlocker block(modes_[i]);
        modes_[i]->setChecked(i == static_cast<int>(now));
        const bool possible = static_cast<Mode>(i) == Mode::beside ||
                              (static_cast<Mode>(i) == Mode::all_visits && !temples()) ||
                              (!temples() && (strip || !pair_there_ || pair_.over));
        modes_[i]->setEnabled(possible);
        modes_[i]->setToolTip(possible ? QString() : temples() ? tr("Left and right are two places.") : why_apart_);
    }
    from_box_->setVisible(!strip);
    from_label_->setText(temples() ? tr("Left") : tr("Before"));
    to_label_->setText(strip ? tr("Laid over") : temples() ? tr("Right") : tr("After"));
    lines_->setVisible(!strip && now != Mode::edge);
    turned_->setVisible(temples());
    eyes_->setVisible(!strip && pair_there_);
    save_->setVisible(!strip && pair_there_);
    const bool there = strip ? view_->count() > 0 : pair_there_;
    if (there) empty_->hide();
    shown_->setVisible(there);
    slider_->setVisible(there && now == Mode::parting && height() >= measures().px(480));
    if (!there) return;
    if (strip) {
        shown_->setCurrentWidget(strip_);
        say(strip_->picked_words(), strip_->picked_told(), strip_->picked_apart() ? "caution" : "plain");
        return;
    }
    over_->set_show(now == Mode::edge ? OneOverOther::Show::edge : OneOverOther::Show::turns);
    shown_->setCurrentWidget(now == Mode::parting  ? static_cast<QWidget*>(picture_)
                             : now == Mode::beside ? static_cast<QWidget*>(beside_)
                                                   : static_cast<QWidget*>(over_));
    if (now == Mode::edge)
        say(OneOverOther::edge_words(pair_), notes_words_, "plain");
    else
        say(verdict_words_, notes_words_, tone_);
}

EyesDialog* ComparePage::open_eyes() {
    if (!pair_there_ || photos_.isEmpty()) return nullptr;
    auto* dialog = new EyesDialog(session_, place_.client, photos_, this);
    connect(dialog, &EyesDialog::kept, this, &ComparePage::compare);
    dialog->open();
    return dialog;
}

void ComparePage::choose_file() {
    auto* dialog = new QFileDialog(this, tr("Save the picture"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(tr("PNG picture (*.png)"));
    dialog->setDefaultSuffix(QStringLiteral("png"));
    connect(dialog, &QFileDialog::fileSelected, this, &ComparePage::save_to);
    dialog->open();
}

void ComparePage::save_to(const QString& path) {
    session_.ask(
        session_.bench(), tr("Saving the picture"), this,
        [asked_for = options(), path, ours = speech_now()](Book& book, const Progress& progress) mutable -> Status {
            // She takes it home: lettered in the language of her report.
            const auto hers = work::report_language_of(book, asked_for.client);
            if (!hers.ok()) return hers.error();
            asked_for.speech = hers->has_value() ? speech::Speech(**hers) : ours;
            const auto written = work::write_pair(book, asked_for, path, progress);
            return written.ok() ? Status(Done{}) : Status(written.error());
        },
        [this, path](Done) { emit session_.news(tr("The picture is saved as %1.").arg(path)); });
}

}  // namespace kempt::desk
