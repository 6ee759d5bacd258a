#include "desk/compare/compare_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QResizeEvent>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "desk/compare/before_after.h"
#include "desk/compare/compare_choices.h"
#include "desk/look/look.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"
#include "work/compare_pictures.h"

namespace kempt::desk {

ComparePage::ComparePage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* column = new QVBoxLayout(this);
    const int margin = measures().gap(4);
    column->setContentsMargins(margin, measures().gap(3), margin, margin);
    column->setSpacing(measures().gap(2));
    choices_row_ = new QWidget;
    auto* choices = new FlowLayout(measures().gap(2), false, choices_row_);
    const auto combo = [choices](const QString& caption, const QString& name) {
        auto* box = new QWidget;
        auto* row = new QHBoxLayout(box);
        row->setContentsMargins(0, 0, measures().gap(2), 0);
        auto* label = text(caption, "soft");
        label->setWordWrap(false);
        auto* c = new QComboBox;
        c->setAccessibleName(name);
        c->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        c->setMinimumContentsLength(14);
        label->setBuddy(c);
        row->addWidget(label);
        row->addWidget(c);
        choices->addWidget(box);
        return c;
    };
    view_ = combo(tr("View"), tr("View to compare"));
    from_ = combo(tr("Before"), tr("Visit before"));
    to_ = combo(tr("After"), tr("Visit after"));
    lines_ = new QCheckBox(tr("Edge lines"));
    lines_->setAccessibleName(tr("Show the edge lines"));
    lines_->setChecked(true);
    choices->addWidget(lines_);
    save_ = button(tr("Save the picture…"), "", Sign::picture);
    choices->addWidget(save_);
    column->addWidget(choices_row_);
    verdict_box_ = panel("plain");
    auto* words = column_in(verdict_box_, 3, 0.5);
    verdict_ = text({}, "strong");
    notes_ = text({}, "caption");
    words->addWidget(verdict_);
    words->addWidget(notes_);
    column->addWidget(verdict_box_);
    empty_ = text({}, "heading");
    empty_->setAlignment(Qt::AlignCenter);
    column->addWidget(empty_, 1);
    picture_ = new BeforeAfter;
    column->addWidget(picture_, 1);
    slider_ = new QSlider(Qt::Horizontal);
    slider_->setRange(0, 100);
    slider_->setValue(50);
    slider_->setAccessibleName(tr("Parting between before and after"));
    column->addWidget(slider_);

    connect(slider_, &QSlider::valueChanged, this, [this](int v) { picture_->set_parting(v / 100.0); });
    connect(picture_, &BeforeAfter::parting_moved, this, [this](double share) {
        const QSignalBlocker block(slider_);
        slider_->setValue(static_cast<int>(std::lround(share * 100)));
    });
    connect(lines_, &QCheckBox::toggled, picture_, &BeforeAfter::set_lines_shown);
    connect(view_, &QComboBox::currentIndexChanged, this, [this] {
        fill_visits();
        compare();
    });
    connect(from_, &QComboBox::currentIndexChanged, this, &ComparePage::compare);
    connect(to_, &QComboBox::currentIndexChanged, this, &ComparePage::compare);
    connect(save_, &QPushButton::clicked, this, &ComparePage::choose_file);
}

void ComparePage::show_place(const Place& place) {
    place_ = place;
    settled_ = false;
    picture_->hide();
    slider_->hide();
    verdict_box_->hide();
    empty_->setText(tr("Reading…"));
    empty_->show();
    session_.ask(
        session_.records(), tr("Reading the visits"), this,
        [client = place.client](Book& book, const Progress& progress) {
            return compare_choices(book, client, progress);
        },
        [this](const CompareChoices& found) {
            if (found.client.id == place_.client) take(found);
        },
        [this] { settled_ = true; });
}

void ComparePage::take(const CompareChoices& found) {
    choices_ = std::make_shared<const CompareChoices>(found);
    const QSignalBlocker block(view_);
    view_->clear();
    for (const View view : found.views()) view_->addItem(beginning(word_of(view)), static_cast<int>(view));
    view_->setCurrentIndex(std::max(0, view_->findData(static_cast<int>(place_.view))));
    emit trail_changed({{found.client.name, {Where::client, found.client.id}}, {tr("Before and after"), place_}});
    choices_row_->setVisible(view_->count() > 0);
    save_->setEnabled(found.client.photo_consent);
    save_->setToolTip(found.client.photo_consent ? QString() : tr("She has not agreed that photos leave the book."));
    fill_visits();
    compare();
}

View ComparePage::chosen_view() const {
    return static_cast<View>(view_->currentData().toInt());
}

void ComparePage::fill_visits() {
    const QSignalBlocker a(from_), b(to_);
    const QVariant before = from_->currentData(), after = to_->currentData();
    from_->clear();
    to_->clear();
    if (!choices_) return;
    for (const Visit& visit : choices_->with_view(chosen_view())) {
        from_->addItem(date_words(visit.date), visit.id);
        to_->addItem(date_words(visit.date), visit.id);
    }
    const auto pick = [](QComboBox* combo, const QVariant& wanted, Id place, int otherwise) {
        int index = combo->findData(wanted);
        if (place > 0) index = combo->findData(place);
        combo->setCurrentIndex(index >= 0 ? index : otherwise);
    };
    pick(from_, before, place_.from, 0);
    pick(to_, after, place_.to, to_->count() - 1);
    if (from_->currentIndex() == to_->currentIndex() && to_->count() > 1) {
        from_->setCurrentIndex(0);
        to_->setCurrentIndex(to_->count() - 1);
    }
}

void ComparePage::compare() {
    const Id from = from_->currentData().toLongLong(), to = to_->currentData().toLongLong();
    const int asked = ++asked_;
    if (from == 0 || to == 0 || from == to) {
        settled_ = true;
        picture_->hide();
        slider_->hide();
        verdict_box_->hide();
        empty_->setText(
            tr("Nothing to compare yet.\nDraw the edge line of one view at two visits, and both stand here at one "
               "scale."));
        empty_->show();
        return;
    }
    settled_ = false;
    work::CompareOptions options;
    options.client = place_.client;
    options.view = chosen_view();
    options.from_visit = from;
    options.to_visit = to;
    options.length = look().length();
    session_.bench().start(
        tr("Laying the photos over each other"), this,
        [options](Book& book, const Progress& progress) { return work::compare_pictures(book, options, progress); },
        [this, asked](Result<work::ComparedPictures> result) {
            if (asked != asked_) return;
            settled_ = true;
            const bool ok = result.ok();
            for (QWidget* w : std::initializer_list<QWidget*>{picture_, verdict_box_}) w->setVisible(ok);
            show_slider();
            empty_->setVisible(!ok);
            if (!ok) {
                empty_->setText(QString::fromStdString(result.error().sentence()));
                return;
            }
            const work::ComparedPictures& c = result.value();
            picture_->set_pair({c.pair.before, c.pair.after, c.pair.before_line, c.pair.after_line, c.before_date,
                                c.after_date, c.pair.px_per_mm});
            verdict_->setText(beginning(c.verdict));
            set_panel_tone(verdict_box_, c.verdict.startsWith(QLatin1String("improved")) ? "better"
                                         : c.verdict.startsWith(QLatin1String("worse"))  ? "worse"
                                                                                         : "plain");
            QStringList notes = c.pair.notes;
            if (c.pair.px_per_mm > 0) notes.prepend(tr("Both at one scale."));
            notes_->setText(notes.join(QLatin1Char(' ')));
            notes_->setVisible(!notes.isEmpty());
        });
}

// Where there is little height the picture gets it: it has a parting of its own.
void ComparePage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    show_slider();
}

void ComparePage::show_slider() {
    slider_->setVisible(!picture_->isHidden() && height() >= measures().px(480));
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
    if (!choices_ || !choices_->client.photo_consent) {
        emit session_.trouble(
            tr("No picture was saved: she has not agreed that photos leave the book. Her consent is kept under “Change "
               "name, note or consent”."));
        return;
    }
    work::CompareOptions options;
    options.client = place_.client;
    options.view = chosen_view();
    options.from_visit = from_->currentData().toLongLong();
    options.to_visit = to_->currentData().toLongLong();
    options.length = look().length();
    session_.ask(
        session_.bench(), tr("Saving the picture"), this,
        [options, path](Book& book, const Progress& progress) -> Status {
            auto pictures = work::compare_pictures(book, options, progress);
            if (!pictures.ok()) return pictures.error();
            return work::write_pair(pictures.value(), path);
        },
        [this, path](Done) { emit session_.news(tr("The picture is saved as %1.").arg(path)); });
}

}  // namespace kempt::desk
