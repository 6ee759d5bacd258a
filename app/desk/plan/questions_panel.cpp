#include "desk/plan/questions_panel.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/confirm.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

constexpr int typing_ms = 700;  // as notes are kept a moment after the hand is still
enum Group { on_stop, on_caution, on_note, answered_before, group_count };

// The weightiest level that a question hangs on, and what would then be said.
struct Weight {
    care::RuleLevel level = care::RuleLevel::note;
    QString why;
};

QHash<QString, Weight> weights_of(const work::CarePlan& plan) {
    QHash<QString, Weight> all;
    for (const care::Finding& finding : plan.advice.findings)  // stops first
        for (const std::string& question : finding.questions) {
            const QString sentence = QString::fromStdString(question);
            if (!all.contains(sentence)) all.insert(sentence, {finding.level, QString::fromStdString(finding.reason)});
        }
    return all;
}

// A stretch stands below them.
int rows_in(const QBoxLayout* side) {
    return side->count() - 1;
}

bool has_control(AnswerBy by) {
    return by != AnswerBy::field && by != AnswerBy::record && by != AnswerBy::grade && by != AnswerBy::elsewhere;
}

}  // namespace

QuestionsPanel::QuestionsPanel(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("To check first"), "heading"));
    sum_ = text({}, "soft");
    column->addWidget(sum_);
    const QStringList names{tr("A stop hangs on these"), tr("A caution hangs on these"), tr("A note hangs on these"),
                            tr("Answered before")};
    for (int i = 0; i < group_count; ++i) {
        auto* box = new Columns(measures().px(900));
        box->set_shares(1, 1);
        for (QBoxLayout* side : {box->left(), box->right()}) {
            side->setSpacing(measures().gap(1.5));
            side->addStretch();
        }
        groups_.append(box);
        if (i == on_stop || i == on_caution) {
            auto* heading = text(names[i], "lead");
            headings_.append(heading);
            column->addWidget(heading);
        } else {
            folds_.insert(i, fold(names[i], box));
            folded_.insert(i, box);
            column->addWidget(folds_[i], 0, Qt::AlignLeft);
        }
        column->addWidget(box);
    }
    typing_.setSingleShot(true);
    typing_.setInterval(typing_ms);
    connect(&typing_, &QTimer::timeout, this, &QuestionsPanel::flush);
    show_groups();
}

QPushButton* QuestionsPanel::fold(const QString& words, QWidget* box) {
    auto* press = button(words, "quiet");
    press->setProperty("words", words);
    press->setCheckable(true);
    box->hide();
    connect(press, &QPushButton::toggled, box, &QWidget::setVisible);
    return press;
}

void QuestionsPanel::begin() {
    flush();
    rows_.clear();
    for (Columns* group : groups_) {
        for (QBoxLayout* side : {group->left(), group->right()}) {
            empty_layout(side);
            side->addStretch();
        }
    }
    for (QPushButton* press : folds_) press->setChecked(false);
}

void QuestionsPanel::flush() {
    typing_.stop();
    const auto found = rows_.find(typed_);
    typed_.clear();
    if (found == rows_.end() || found->number == nullptr) return;
    auto* length = qobject_cast<LengthField*>(found->number);
    emit answered(found->answering, length != nullptr ? length->mm() : found->number->number());
}

ChoiceRow* QuestionsPanel::choice(const QString& fact) const {
    for (const Row& row : rows_)
        if (row.answering.name == fact) return row.choice;
    return nullptr;
}

QPushButton* QuestionsPanel::erase_button(const QString& fact) const {
    for (const Row& row : rows_)
        if (row.answering.name == fact) return row.erase;
    return nullptr;
}

NumberField* QuestionsPanel::number(const QString& fact) const {
    for (const Row& row : rows_)
        if (row.answering.name == fact) return row.number;
    return nullptr;
}

void QuestionsPanel::add_controls(Row& row, QBoxLayout* into, bool on_form) {
    const Answering answering = row.answering;
    const auto typed = [this, sentence = answering.sentence] {
        if (!typed_.isEmpty() && typed_ != sentence) flush();
        typed_ = sentence;
        typing_.start();
    };
    switch (answering.by) {
        case AnswerBy::yes_no:
        case AnswerBy::habit:
            row.choice = yes_no_row(answering.sentence);
            connect(row.choice, &ChoiceRow::picked, this, [this, answering](int index) {
                const auto yes = answer_of(index);
                emit answered(answering, yes ? std::optional(*yes ? 1.0 : 0.0) : std::nullopt);
            });
            break;
        case AnswerBy::texture:
            row.choice = new ChoiceRow(answering.sentence, QStringList(hair_textures()) << tr("unknown"));
            connect(row.choice, &ChoiceRow::picked, this, [this, answering](int index) {
                emit answered(answering, index < hair_textures().size() ? std::optional<double>(index) : std::nullopt);
            });
            break;
        case AnswerBy::length:
            row.number = new LengthField(answering.sentence, tr("unknown"));
            break;
        case AnswerBy::count:
        case AnswerBy::habit_number:
        case AnswerBy::age: {
            const AnswerRange range = range_of(answering);
            row.number = new NumberField(answering.sentence,
                                         {range.most, 0, 1, range.unit, tr("unknown"), answering.by != AnswerBy::age});
            break;
        }
        case AnswerBy::field: {
            if (!on_form) {
                row.choice = yes_no_row(answering.sentence);
                connect(row.choice, &ChoiceRow::picked, this,
                        [this, field = *answering.field](int index) { emit field_answered(field, answer_of(index)); });
                into->addWidget(row.choice);
                return;
            }
            auto* there = button(tr("Enter it"), "quiet");
            there->setAccessibleName(tr("Enter it with the planned service: %1").arg(answering.sentence));
            connect(there, &QPushButton::clicked, this, [this, field = *answering.field] { emit field_asked(field); });
            into->addWidget(there, 0, Qt::AlignLeft);
            return;
        }
        case AnswerBy::record: {
            auto* there = button(tr("To the record"), "quiet");
            there->setAccessibleName(tr("To the record of services: %1").arg(answering.sentence));
            connect(there, &QPushButton::clicked, this, &QuestionsPanel::record_asked);
            into->addWidget(there, 0, Qt::AlignLeft);
            return;
        }
        case AnswerBy::grade: {
            auto* there = button(tr("Grade it"), "quiet");
            there->setAccessibleName(tr("To the grades: %1").arg(answering.sentence));
            connect(there, &QPushButton::clicked, this, &QuestionsPanel::grades_asked);
            into->addWidget(there, 0, Qt::AlignLeft);
            return;
        }
        case AnswerBy::elsewhere:
            return;
    }
    if (row.number != nullptr) {
        connect(row.number, &NumberField::entered, this, typed);
        row.number->setMinimumWidth(measures().px(140));
        into->addWidget(row.number, 0, Qt::AlignLeft);
    } else {
        into->addWidget(row.choice);
    }
}

void QuestionsPanel::add_row(const Answering& answering, int group, bool on_form) {
    Row row;
    row.answering = answering;
    row.group = group;
    auto* box = new Columns(measures().px(430));
    box->set_shares(5, 4);
    box->layout()->setSpacing(measures().gap(2));
    box->left()->setSpacing(0);
    box->left()->addWidget(text(answering.sentence));
    row.why = text({}, "caption");
    row.why->hide();
    box->left()->addWidget(row.why);
    row.erase = button(tr("Erase that answer…"), "quiet");
    row.erase->setAccessibleName(tr("Erase the answer: %1").arg(answering.sentence));
    row.erase->hide();
    box->left()->addWidget(row.erase, 0, Qt::AlignLeft);
    connect(row.erase, &QPushButton::clicked, this, [this, answering] {
        ask_before_erasing(
            this, tr("Erase the yes to “%1”?").arg(answering.sentence),
            tr("It is kept for good because it speaks against services for good. Erase it only if it was "
               "written down by mistake."),
            [this, answering] { emit answered(answering, std::nullopt); });
    });
    box->left()->addStretch();
    add_controls(row, box->right(), on_form);
    box->right()->addStretch();
    row.box = box;
    Columns* sides = groups_[group];
    QBoxLayout* side = rows_in(sides->left()) > rows_in(sides->right()) ? sides->right() : sides->left();
    side->insertWidget(rows_in(side), box);
    rows_.insert(answering.sentence, row);
}

void QuestionsPanel::fill_answer(Row& row, const PlanData& told) {
    if (typed_ == row.answering.sentence) return;  // she is typing
    const auto known = known_answer(row.answering, told);
    if (auto* length = qobject_cast<LengthField*>(row.number))
        length->set_mm(known);
    else if (row.number != nullptr)
        row.number->set_number(known);
    if (row.choice == nullptr) return;
    if (row.answering.by == AnswerBy::texture)
        row.choice->set_chosen(known ? static_cast<int>(*known) : static_cast<int>(hair_textures().size()));
    else
        row.choice->set_chosen(index_of(known ? std::optional(*known != 0) : std::nullopt));
    if (const auto day = kept_for_good(row.answering, told)) {
        row.choice->setEnabled(false);
        row.why->setText(tr("Yes, told on %1. That is kept for good.").arg(date_words(*day)));
        row.why->show();
        row.erase->show();
    } else {
        row.erase->hide();
        row.choice->setEnabled(true);
    }
}

// What was told before and counts today, so that it can be seen and put right.
void QuestionsPanel::add_answered(const PlanData& told) {
    for (const work::CurrentAnswer& one : told.answers) {
        if (!one.fresh) continue;
        const auto answering = answering_of_fact(one.answer.question);
        if (answering && !rows_.contains(answering->sentence)) add_row(*answering, answered_before);
    }
}

void QuestionsPanel::show_questions(const work::CarePlan& plan, const PlanData& told,
                                    const QVector<PlanField>& on_forms, const QVector<PlanField>& open_fields) {
    const QHash<QString, Weight> weights = weights_of(plan);
    for (Row& row : rows_) row.asked = false;
    open_ = 0;
    for (const std::string& question : plan.questions) {
        const QString sentence = QString::fromStdString(question);
        const Weight weight = weights.value(sentence);
        auto row = rows_.find(sentence);
        auto answering = answering_of(sentence);
        // Asked of a service whose kind has no such thing: there is nowhere to enter it.
        if (answering && answering->field && !is_yes_no(*answering->field) && !open_fields.contains(*answering->field))
            continue;
        if (row == rows_.end()) {
            if (!answering) answering = Answering{AnswerBy::elsewhere, sentence, sentence, {}};
            const int group = static_cast<int>(weight.level);
            add_row(*answering, group, !answering->field || on_forms.contains(*answering->field));
            row = rows_.find(sentence);
        }
        row->asked = true;
        ++open_;
        const bool stop = weight.level == care::RuleLevel::stop;
        row->why->setText(stop ? tr("If so: %1").arg(weight.why) : QString());
        row->why->setVisible(stop);
        row->box->setToolTip(tr("If so: %1").arg(weight.why));
    }
    add_answered(told);
    QStringList gone;
    for (auto row = rows_.begin(); row != rows_.end(); ++row) {
        const bool answered_here = has_control(row->answering.by) && known_answer(row->answering, told).has_value();
        if (row->asked || answered_here) {
            if (!row->asked) row->why->hide();
            fill_answer(*row, told);
            continue;
        }
        // Nobody asks any more, and nothing was told.
        row->box->hide();
        row->box->deleteLater();
        groups_[row->group]->left()->removeWidget(row->box);
        groups_[row->group]->right()->removeWidget(row->box);
        gone.append(row.key());
    }
    for (const QString& sentence : gone) rows_.remove(sentence);
    sum_->setText(open_ > 0 ? tr("%1 still open. Y, N and U answer, Tab leads on.").arg(open_)
                            : tr("Nothing that the rules ask for is open."));
    show_groups();
    tidy_focus_order_later(this);
}

void QuestionsPanel::show_groups() {
    for (int i = 0; i < group_count; ++i) {
        const int count = rows_in(groups_[i]->left()) + rows_in(groups_[i]->right());
        const bool any = count > 0;
        if (QPushButton* press = folds_.value(i)) {
            const QString words = press->property("words").toString();
            press->setText(tr("%1 (%2)").arg(words).arg(count));
            press->setAccessibleName(press->text());
            press->setVisible(any);
            folded_[i]->setVisible(any && press->isChecked());
        } else {
            headings_[i]->setVisible(any);
        }
    }
}

}  // namespace kempt::desk
