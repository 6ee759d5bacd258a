#include "desk/plan/questions_panel.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/translations/said.h"
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
            if (!all.contains(sentence)) all.insert(sentence, {finding.level, said(finding.reason)});
        }
    return all;
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

// A stretch stands below them.
int QuestionsPanel::rows_in(const QBoxLayout* side) {
    return side->count() - 1;
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

// What was told before and counts today, so that it can be seen and put right.
void QuestionsPanel::add_answered(const PlanData& told) {
    for (const work::CurrentAnswer& one : told.answers) {
        if (!one.fresh) continue;
        const auto answering = answering_of_fact(one.answer.question);
        if (answering && !rows_.contains(answering->sentence)) add_row(*answering, answered_before);
    }
}

void QuestionsPanel::show_questions(const work::CarePlan& plan, const PlanData& told,
                                    const QVector<PlanField>& on_forms) {
    const QHash<QString, Weight> weights = weights_of(plan);
    for (Row& row : rows_) row.asked = false;
    open_ = 0;
    for (const std::string& question : plan.questions) {
        const QString sentence = QString::fromStdString(question);
        const Weight weight = weights.value(sentence);
        auto row = rows_.find(sentence);
        auto answering = answering_of(sentence);
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
