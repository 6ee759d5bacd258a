// One row of the questions: what is asked, why, and what answers it.
#include <QPushButton>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/plan/questions_panel.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/confirm.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {

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
            row.choice = new ChoiceRow(answering.sentence, said(hair_textures()) << tr("unknown"));
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
            there->setAccessibleName(tr("Enter it with the planned service: %1").arg(said(answering.sentence)));
            connect(there, &QPushButton::clicked, this, [this, field = *answering.field] { emit field_asked(field); });
            into->addWidget(there, 0, Qt::AlignLeft);
            return;
        }
        case AnswerBy::record: {
            auto* there = button(tr("To the record"), "quiet");
            there->setAccessibleName(tr("To the record of services: %1").arg(said(answering.sentence)));
            connect(there, &QPushButton::clicked, this, &QuestionsPanel::record_asked);
            into->addWidget(there, 0, Qt::AlignLeft);
            return;
        }
        case AnswerBy::grade: {
            auto* there = button(tr("Grade it"), "quiet");
            there->setAccessibleName(tr("To the grades: %1").arg(said(answering.sentence)));
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
    box->left()->addWidget(text(said(answering.sentence)));
    row.why = text({}, "caption");
    row.why->hide();
    box->left()->addWidget(row.why);
    row.erase = button(tr("Erase that answer…"), "quiet");
    row.erase->setAccessibleName(tr("Erase the answer: %1").arg(said(answering.sentence)));
    row.erase->hide();
    box->left()->addWidget(row.erase, 0, Qt::AlignLeft);
    connect(row.erase, &QPushButton::clicked, this, [this, answering] {
        ask_before_erasing(
            this, tr("Erase the yes to “%1”?").arg(said(answering.sentence)),
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

}  // namespace kempt::desk
