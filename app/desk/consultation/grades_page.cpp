#include "desk/consultation/grades_page.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QPointer>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/consultation/anchor_button.h"
#include "desk/consultation/kept_strip.h"
#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"
#include "work/keep_records.h"

namespace kempt::desk {
namespace {

constexpr int highest = 4;

QString key_of(const GradeStep& step) {
    return step.quality + QLatin1Char('/') + step.zone;
}

// "0: scalp bare..." without its number
QString anchor_of(const QString& quality, int step) {
    return beginning(said(grade_anchor(quality, step).section(QStringLiteral(": "), 1)));
}

}  // namespace

GradesPage::GradesPage(Session& session, QWidget* parent) : Page(session, parent) {
    setFocusPolicy(Qt::ClickFocus);  // a press beside everything leaves the keys at work
    auto* page = scrolled();
    title_ = text(tr("Grades"), "title");
    below_ = text({}, "soft");
    page->addWidget(title_);
    page->addWidget(below_);
    auto* columns = new Columns(measures().px(820));
    columns->set_shares(5, 4);
    columns->left()->addWidget(build_step());
    columns->left()->addStretch();
    auto* list = panel("surface");
    auto* list_column = column_in(list, 4, 2);
    list_column->addWidget(text(tr("All zones"), "heading"));
    rounds_ = new ChoiceRow(tr("Which grading"), {tr("first grading"), tr("second grading")});
    list_column->addWidget(rounds_);
    sum_ = text({}, "soft");
    list_column->addWidget(sum_);
    list_ = new QVBoxLayout;
    list_->setSpacing(measures().gap(2));
    list_column->addLayout(list_);
    columns->right()->addWidget(list);
    columns->right()->addStretch();
    page->addWidget(columns);
    page->addStretch();

    connect(rounds_, &ChoiceRow::picked, this, [this](int index) { set_round(index + 1); });
    connect(strip_, &KeptStrip::undo_asked, this, &GradesPage::take_back);
    const auto on_key = [this](const QKeySequence& key, const std::function<void()>& act) {
        auto* shortcut = new QShortcut(key, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    for (int value = 0; value <= highest; ++value)
        for (const int key : {Qt::Key_0 + value, (Qt::Key_0 + value) | int(Qt::KeypadModifier)})
            on_key(QKeySequence(key), [this, value] { grade(value); });
    on_key(QKeySequence(Qt::Key_N), [this] { next(); });
    on_key(QKeySequence(Qt::Key_Backspace), [this] { take_back(); });
    connect(&session_.undo(), &Undo::changed, this, &GradesPage::show_undo);
    connect(&session_.undo(), &Undo::taken, this, &GradesPage::taken);
    connect(&session_, &Session::visit_changed, this, [this](Id visit) {
        if (visit == place_.visit && isVisible() && keeping_ == 0) load();
    });
}

QWidget* GradesPage::build_step() {
    auto* box = new QWidget;
    auto* both = column_in(box, 0, 2);
    step_box_ = panel("surface");
    auto* column = column_in(step_box_, 4, 2);
    quality_ = text({}, "soft");
    zone_ = text({}, "title");
    column->addWidget(quality_);
    column->addWidget(zone_);
    for (int value = highest; value >= 0; --value) {
        auto* anchor = new AnchorButton(value);
        anchors_.prepend(anchor);
        column->addWidget(anchor);
        connect(anchor, &QAbstractButton::clicked, this, [this, value] { grade(value); });
    }
    auto* row = new FlowLayout(measures().gap(2));
    auto* leave = button(tr("Leave it open"), "quiet");
    leave->setAccessibleName(tr("Leave it open, on to the next zone (N)"));
    leave->setToolTip(leave->accessibleName());
    connect(leave, &QPushButton::clicked, this, &GradesPage::next);
    row->addWidget(leave);
    column->addLayout(row);
    column->addWidget(text(tr("Keys 0 to 4 grade, N leaves it open; the next zone follows by itself."), "caption"));
    both->addWidget(step_box_);
    done_box_ = panel("surface");
    auto* done = column_in(done_box_, 4, 2);
    done->addWidget(text(tr("Nothing open in this grading"), "heading"));
    done_ = text({});
    done->addWidget(done_);
    both->addWidget(done_box_);
    strip_ = new KeptStrip;
    both->addWidget(strip_);
    return box;
}

void GradesPage::show_place(const Place& place) {
    if (place.visit != place_.visit) {
        to_top();
        round_ = 1;
        at_ = -1;
        strip_->say_nothing_yet();
    }
    place_ = place;
    show_undo();
    load();
}

void GradesPage::load() {
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading the grades"), this,
        [id = place_.visit](Book& book, const Progress&) { return grades_data(book, id); },
        [this](const GradesData& read) {
            settled_ = true;
            if (read.visit.id == place_.visit && keeping_ == 0) take(read);
        },
        [this] { settled_ = true; });
}

void GradesPage::take(const GradesData& read) {
    const bool fresh = data_.visit.id != read.visit.id || at_ < 0;
    data_ = read;
    below_->setText(tr("%1  ·  visit of %2").arg(name_within(data_.client.name), date_words(data_.visit.date)));
    show_all();
    if (fresh) {
        to_first_open();
        setFocus(Qt::OtherFocusReason);  // the keys count at once
    }
    emit trail_changed({{data_.client.name, {Where::client, data_.client.id}},
                        {date_words(data_.visit.date), {Where::visit, data_.client.id, data_.visit.id}},
                        {tr("Grades"), place_}});
}

void GradesPage::set_round(int round) {
    round_ = round;
    show_all();
    to_first_open();
}

void GradesPage::show_all() {
    rounds_->set_chosen(round_ - 1);
    steps_ = round_ == 1 ? first_steps(data_.grades) : second_steps(data_.grades);
    at_ = std::clamp(at_, 0, static_cast<int>(steps_.size()));
    show_list();
    show_step();
}

void GradesPage::to_first_open() {
    at_ = 0;
    while (at_ < steps_.size() && grade_of(data_.grades, steps_[at_], round_) != nullptr) ++at_;
    show_step();
}

std::optional<GradeStep> GradesPage::step() const {
    return at_ >= 0 && at_ < steps_.size() ? std::optional(steps_[at_]) : std::nullopt;
}

QString GradesPage::told() const {
    return done_box_->isHidden() ? QString() : done_->text();
}

void GradesPage::pick(const GradeStep& step) {
    at_ = static_cast<int>(std::max<qsizetype>(0, steps_.indexOf(step)));
    show_step();
}

void GradesPage::next() {
    at_ = std::min(at_ + 1, static_cast<int>(steps_.size()));
    show_step();
}

QString GradesPage::sum_words() const {
    const auto given = std::count_if(steps_.begin(), steps_.end(), [this](const GradeStep& one) {
        return grade_of(data_.grades, one, round_) != nullptr;
    });
    return tr("%1 of %2 given").arg(given).arg(steps_.size());
}

void GradesPage::show_step() {
    const auto now = step();
    step_box_->setVisible(now.has_value());
    done_box_->setVisible(!now);
    for (auto it = chips_.begin(); it != chips_.end(); ++it) it.value()->setChecked(now && it.key() == key_of(*now));
    if (now) {
        quality_->setText(beginning(said(now->quality)));
        zone_->setText(beginning(said(now->zone)));
        const Grade* given = grade_of(data_.grades, *now, round_);
        for (int value = 0; value <= highest; ++value) {
            anchors_[value]->set_anchor(anchor_of(now->quality, value),
                                        tr("%1, %2").arg(beginning(said(now->quality)), said(now->zone)));
            anchors_[value]->setChecked(given != nullptr && given->value == value);
        }
        return;
    }
    if (round_ == 1)
        done_->setText(tr("A second grading on the same day shows how steady the eye is. It does not show the first."));
    else if (steps_.isEmpty())
        done_->setText(tr("There is no first grading yet."));
    else if (data_.agreement.kappa)
        done_->setText(tr("Graded twice over all her visits: %1, %2 of them alike. Weighted kappa %3: 1 is full "
                          "agreement, 0 is what chance alone would bring.")
                           .arg(counted(data_.agreement.pairs, tr("grade"), tr("grades")))
                           .arg(data_.agreement.alike)
                           .arg(QLocale().toString(*data_.agreement.kappa, 'f', 2)));
    else
        done_->setText(tr("Graded twice over all her visits: %1, %2 of them alike. That is too few, or too much alike, "
                          "to say how steady the eye is.")
                           .arg(counted(data_.agreement.pairs, tr("grade"), tr("grades")))
                           .arg(data_.agreement.alike));
}

// Of the second grading only what was given in it.
void GradesPage::show_list() {
    // Chips that are there are filled anew; others come only with another grading.
    bool same = chips_.size() == steps_.size();
    for (const GradeStep& one : steps_) same = same && chips_.contains(key_of(one));
    if (!same || order_ != round_) {
        order_ = round_;
        empty_layout(list_);
        chips_.clear();
        QString quality;
        FlowLayout* row = nullptr;
        for (const GradeStep& one : steps_) {
            if (one.quality != quality) {
                quality = one.quality;
                list_->addWidget(text(beginning(said(quality)), "caption"));
                row = new FlowLayout(measures().gap(1));
                list_->addLayout(row);
            }
            auto* chip = button({});
            chip->setCheckable(true);
            connect(chip, &QPushButton::clicked, this, [this, one] { pick(one); });
            chips_.insert(key_of(one), chip);
            row->addWidget(chip);
        }
        tidy_focus_order_later(this);
    }
    for (const GradeStep& one : steps_) {
        const Grade* given = grade_of(data_.grades, one, round_);
        QPushButton* chip = chips_.value(key_of(one));
        const QString mark = given == nullptr ? QStringLiteral("–") : QString::number(given->value);
        chip->setText(tr("%1  %2").arg(said(one.zone), mark));
        chip->setAccessibleName(given == nullptr
                                    ? tr("%1, %2: open").arg(beginning(said(one.quality)), said(one.zone))
                                    : tr("%1, %2: %3").arg(beginning(said(one.quality)), said(one.zone), mark));
    }
    sum_->setText(sum_words());
}

}  // namespace kempt::desk
