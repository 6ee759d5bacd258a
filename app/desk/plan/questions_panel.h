// What has to be checked first, answered on the spot. A row stays where it is once it is answered, so that neither eye
// nor keyboard loses its place.
#pragma once

#include <QFrame>
#include <QHash>
#include <QTimer>

#include "desk/plan/answering.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace kempt::desk {

class ChoiceRow;
class Columns;
class NumberField;

class QuestionsPanel : public QFrame {
    Q_OBJECT
  public:
    explicit QuestionsPanel(QWidget* parent = nullptr);
    // Another client: no row stays.
    void begin();
    // on_forms: fields that a planned service shows; what is asked for beside them is answered here for all services.
    void show_questions(const work::CarePlan& plan, const PlanData& told, const QVector<PlanField>& on_forms);
    // Keeps numbers that are still being typed.
    void flush();
    [[nodiscard]] ChoiceRow* choice(const QString& fact) const;
    [[nodiscard]] NumberField* number(const QString& fact) const;
    [[nodiscard]] QPushButton* erase_button(const QString& fact) const;
    [[nodiscard]] int open_questions() const { return open_; }

  signals:
    void answered(const kempt::desk::Answering& answering, const std::optional<double>& value);
    void field_asked(kempt::desk::PlanField field);
    void field_answered(kempt::desk::PlanField field, const std::optional<bool>& yes);
    void record_asked();
    void grades_asked();

  private:
    struct Row {
        Answering answering;
        QWidget* box = nullptr;
        QLabel* why = nullptr;
        QPushButton* erase = nullptr;  // of a yes that is kept for good
        ChoiceRow* choice = nullptr;
        NumberField* number = nullptr;
        int group = 0;
        bool asked = false;
    };
    void add_row(const Answering& answering, int group, bool on_form = true);
    [[nodiscard]] static int rows_in(const QBoxLayout* side);
    void fill_answer(Row& row, const PlanData& told);
    void add_controls(Row& row, QBoxLayout* into, bool on_form);
    [[nodiscard]] QPushButton* fold(const QString& words, QWidget* box);
    void add_answered(const PlanData& told);
    void show_groups();

    QHash<QString, Row> rows_;  // by sentence
    QHash<QString, QString> why_;
    QLabel* sum_;
    QVector<QLabel*> headings_;
    QVector<Columns*> groups_;
    QHash<int, QWidget*> folded_;  // groups that are opened by a press
    QHash<int, QPushButton*> folds_;
    QTimer typing_;
    QString typed_;  // sentence of the row that is being typed in
    int open_ = 0;
};

}  // namespace kempt::desk
