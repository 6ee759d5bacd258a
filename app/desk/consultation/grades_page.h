// The grades of one visit: one zone at a time with the written anchors, one key a grade, the next zone by itself; a
// second grading that does not show the first.
#pragma once

#include <QHash>
#include <optional>

#include "desk/consultation/grade_steps.h"
#include "desk/window/page.h"
#include "work/grade_agreement.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace kempt::desk {

class AnchorButton;
class ChoiceRow;
class KeptStrip;

struct GradesData {
    Client client;
    Visit visit;
    QVector<Grade> grades;
    work::GradeAgreement agreement;
};
[[nodiscard]] Result<GradesData> grades_data(Book& book, Id visit);

class GradesPage : public Page {
    Q_OBJECT
  public:
    explicit GradesPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    [[nodiscard]] bool settled() const override { return settled_ && keeping_ == 0; }
    void grade(int value);
    void take_back();
    void undo(const Place&) override { take_back(); }
    void redo(const Place&) override { do_again(); }
    [[nodiscard]] QString undo_words(const Place&) const override { return {}; }  // its strip says them
    void do_again();
    void set_round(int round);
    void pick(const GradeStep& step);
    // Leaves this one open.
    void next();
    // For tests and for whoever works by name.
    [[nodiscard]] std::optional<GradeStep> step() const;
    [[nodiscard]] int round() const { return round_; }
    [[nodiscard]] QVector<AnchorButton*> anchors() const { return anchors_; }
    [[nodiscard]] QString told() const;
    [[nodiscard]] KeptStrip* strip() const { return strip_; }

  private:
    void load();
    void take(const GradesData& read);
    void keep(const GradeStep& step, int round, int value);
    void set_local(const GradeStep& step, int round, const std::optional<int>& value);
    void show_undo();
    void taken(const UndoStep& undone);
    [[nodiscard]] QString about() const;  // of the steps of undo
    void show_all();
    void show_step();
    void show_list();
    void to_first_open();
    [[nodiscard]] QWidget* build_step();
    [[nodiscard]] QString sum_words() const;

    Place place_;
    GradesData data_;
    QVector<GradeStep> steps_;
    int at_ = 0, round_ = 1, order_ = 0, keeping_ = 0;
    bool settled_ = true;
    QLabel *title_, *below_, *quality_, *zone_, *sum_;
    ChoiceRow* rounds_;
    KeptStrip* strip_;
    QVector<AnchorButton*> anchors_;
    QWidget *step_box_, *done_box_;
    QLabel* done_;
    QBoxLayout* list_;
    QHash<QString, QPushButton*> chips_;
};

}  // namespace kempt::desk
