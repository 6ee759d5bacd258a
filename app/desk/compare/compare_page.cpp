#include "desk/compare/compare_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QSlider>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "desk/compare/before_after.h"
#include "desk/compare/compare_choices.h"
#include "desk/compare/one_over_other.h"
#include "desk/compare/side_by_side.h"
#include "desk/compare/strip_panel.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"
#include "work/compare_pictures.h"

namespace kempt::desk {
namespace {

constexpr int both_temples = -1;  // in the list of views

}  // namespace

ComparePage::ComparePage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    auto* inside = new QWidget;
    area_ = scroll_area(inside);
    area_->setAccessibleName(tr("Before and after"));
    whole->addWidget(area_);
    auto* column = new QVBoxLayout(inside);
    const int margin = measures().gap(4);
    column->setContentsMargins(margin, measures().gap(3), margin, margin);
    column->setSpacing(measures().gap(2));
    choices_row_ = new QWidget;
    auto* choices = new FlowLayout(measures().gap(2), false, choices_row_);
    const auto combo = [choices](const QString& caption, const QString& name, QLabel** label_out, QWidget** box_out) {
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
        if (label_out != nullptr) *label_out = label;
        if (box_out != nullptr) *box_out = box;
        return c;
    };
    view_ = combo(tr("View"), tr("View to compare"), nullptr, nullptr);
    from_ = combo(tr("Before"), tr("Visit before"), &from_label_, &from_box_);
    to_ = combo(tr("After"), tr("Visit after"), &to_label_, &to_box_);
    lines_ = new QCheckBox(tr("Drawn lines"));
    lines_->setAccessibleName(tr("Show the drawn lines"));
    lines_->setChecked(true);
    turned_ = new QCheckBox(tr("Right side in a mirror"));
    turned_->setAccessibleName(turned_->text());
    turned_->setChecked(true);
    eyes_ = button(tr("Eyes…"), "", Sign::pencil);
    eyes_->setAccessibleName(tr("Eyes in the pictures"));
    save_ = button(tr("Save the picture…"), "", Sign::picture);
    for (QWidget* w : std::initializer_list<QWidget*>{lines_, turned_, eyes_, save_}) choices->addWidget(w);
    column->addWidget(choices_row_);
    modes_row_ = new QWidget;
    auto* modes = new FlowLayout(measures().gap(1), false, modes_row_);
    for (const QString& words :
         {tr("Parting"), tr("Taking turns"), tr("Where the edge went"), tr("Side by side"), tr("All visits")}) {
        auto* b = button(words);
        b->setCheckable(true);
        // Not an exclusive group: the Tab key would reach only the one that is chosen.
        connect(b, &QPushButton::clicked, this, [this, mode = static_cast<Mode>(modes_.size())] { set_mode(mode); });
        modes_.append(b);
        modes->addWidget(b);
    }
    modes_.first()->setChecked(true);
    column->addWidget(modes_row_);
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
    shown_ = new QStackedWidget;
    picture_ = new BeforeAfter;
    over_ = new OneOverOther;
    beside_ = new SideBySide;
    strip_ = new StripPanel(session_);
    for (QWidget* w : std::initializer_list<QWidget*>{picture_, over_, beside_, strip_}) shown_->addWidget(w);
    shown_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);  // the least height is set with the window's
    column->addWidget(shown_, 1);
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
    connect(lines_, &QCheckBox::toggled, over_, &OneOverOther::set_lines_shown);
    connect(lines_, &QCheckBox::toggled, beside_, &SideBySide::set_lines_shown);
    connect(turned_, &QCheckBox::toggled, beside_, [this](bool mirror) { beside_->set_turned_over(!mirror); });
    connect(view_, &QComboBox::currentIndexChanged, this, [this] {
        fill_visits();
        compare();
    });
    connect(from_, &QComboBox::currentIndexChanged, this, &ComparePage::compare);
    connect(to_, &QComboBox::currentIndexChanged, this, &ComparePage::compare);
    connect(save_, &QPushButton::clicked, this, &ComparePage::choose_file);
    connect(eyes_, &QPushButton::clicked, this, &ComparePage::open_eyes);
    connect(strip_, &StripPanel::picked_changed, this, [this] {
        if (mode() == Mode::all_visits)
            say(strip_->picked_words(), strip_->picked_told(), strip_->picked_apart() ? "caution" : "plain");
    });
    connect(strip_, &StripPanel::compare_asked, this, [this](Id from, Id to) {
        const QSignalBlocker a(from_), b(to_);
        from_->setCurrentIndex(std::max(0, from_->findData(from)));
        to_->setCurrentIndex(std::max(0, to_->findData(to)));
        set_mode(Mode::parting);
    });
    connect(&look(), &Look::changed, this, [this] {
        if (isVisible()) compare();
    });
}

bool ComparePage::settled() const {
    return settled_ && (mode() != Mode::all_visits || strip_->settled());
}

ComparePage::Mode ComparePage::mode() const {
    if (temples()) return Mode::beside;
    if (wanted_ == Mode::all_visits || pair_.over) return wanted_;
    return Mode::beside;
}

void ComparePage::set_mode(Mode mode) {
    const bool strip_before = wanted_ == Mode::all_visits;
    wanted_ = mode;
    if (strip_before != (mode == Mode::all_visits) || !pair_there_)
        compare();
    else
        show_mode();
}

bool ComparePage::temples() const {
    return view_->currentData().toInt() == both_temples && view_->count() > 0;
}

bool ComparePage::show_temples() {
    const int index = view_->findData(both_temples);
    temples_wanted_ = index < 0 && !choices_;
    if (index < 0) return temples_wanted_;
    view_->setCurrentIndex(index);
    return true;
}

View ComparePage::chosen_view() const {
    return temples() ? View::left_temple : static_cast<View>(view_->currentData().toInt());
}

void ComparePage::show_empty(const QString& words) {
    shown_->hide();
    slider_->hide();
    verdict_box_->hide();
    empty_->setText(words);
    empty_->show();
}

// As high as the rows need at this width. A picture that comes up is what is seen; later the eyes stay where the hand
// is.
void ComparePage::fit() {
    // By hand: a stack with a strip in it gives Qt the strip's height for a width and forgets its own least height.
    QLayout* rows = area_->widget()->layout();
    rows->activate();
    const QMargins m = rows->contentsMargins();
    const auto high_for = [&](int width) {
        int high = m.top() + m.bottom() - rows->spacing();
        for (int i = 0; i < rows->count(); ++i) {
            QLayoutItem* item = rows->itemAt(i);
            if (item->isEmpty()) continue;
            high += rows->spacing() + (item->widget() == shown_    ? shown_->minimumHeight()
                                       : item->hasHeightForWidth() ? item->heightForWidth(width - m.left() - m.right())
                                                                   : item->sizeHint().height());
        }
        return high;
    };
    int high = high_for(area_->width());
    if (high > area_->height()) high = high_for(area_->width() - area_->verticalScrollBar()->sizeHint().width());
    area_->widget()->setMinimumHeight(high);
    if (shown_->isHidden() || !unseen_) return;
    unseen_ = false;
    QTimer::singleShot(0, this, [this] {  // once it is as high
        area_->verticalScrollBar()->setValue(area_->verticalScrollBar()->maximum());
    });
}

void ComparePage::show_place(const Place& place) {
    place_ = place;
    unseen_ = true;
    settled_ = false;
    pair_there_ = false;
    choices_.reset();
    show_empty(tr("Reading…"));
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
    for (const View view : found.views()) view_->addItem(beginning(said(word_of(view))), static_cast<int>(view));
    if (found.has_both_temples()) view_->addItem(tr("Left and right temple"), both_temples);
    const int both = temples_wanted_ ? view_->findData(both_temples) : -1;
    temples_wanted_ = false;
    view_->setCurrentIndex(both >= 0 ? both : std::max(0, view_->findData(static_cast<int>(place_.view))));
    emit trail_changed({{found.client.name, {Where::client, found.client.id}}, {tr("Before and after"), place_}});
    choices_row_->setVisible(view_->count() > 0);
    modes_row_->setVisible(view_->count() > 0);
    save_->setEnabled(found.client.photo_consent);
    save_->setToolTip(found.client.photo_consent ? QString() : tr("She has not agreed that photos leave the book."));
    fill_visits();
    compare();
}

void ComparePage::fill_visits() {
    const QSignalBlocker a(from_), b(to_);
    const QVariant before = from_->currentData(), after = to_->currentData();
    from_->clear();
    to_->clear();
    if (!choices_ || view_->count() == 0) return;
    for (const Visit& visit : choices_->with_view(chosen_view())) from_->addItem(date_words(visit.date), visit.id);
    for (const Visit& visit : choices_->with_view(temples() ? View::right_temple : chosen_view()))
        to_->addItem(date_words(visit.date), visit.id);
    const auto pick = [](QComboBox* combo, const QVariant& wanted, Id place, int otherwise) {
        int index = combo->findData(wanted);
        if (place > 0) index = combo->findData(place);
        combo->setCurrentIndex(index >= 0 ? index : otherwise);
    };
    if (temples()) {
        from_->setCurrentIndex(from_->count() - 1);
        pick(to_, from_->currentData(), 0, to_->count() - 1);
        return;
    }
    pick(from_, before, place_.from, 0);
    pick(to_, after, place_.to, to_->count() - 1);
    if (from_->currentIndex() == to_->currentIndex() && to_->count() > 1) {
        from_->setCurrentIndex(0);
        to_->setCurrentIndex(to_->count() - 1);
    }
}

work::CompareOptions ComparePage::options() const {
    work::CompareOptions options;
    options.client = place_.client;
    options.view = chosen_view();
    options.from_visit = from_->currentData().toLongLong();
    options.to_visit = to_->currentData().toLongLong();
    if (temples()) options.to_view = View::right_temple;
    options.length = look().length();
    return options;
}

// Half of the window at least is the picture's: where large words leave less, the choices scroll away above it. The
// slider goes first, the picture has a parting of its own.
void ComparePage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    shown_->setMinimumHeight(window()->height() / 2);
    slider_->setVisible(!shown_->isHidden() && mode() == Mode::parting && height() >= measures().px(480));
    QTimer::singleShot(0, this, &ComparePage::fit);
}

void ComparePage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    strip_->stop();
}

}  // namespace kempt::desk
