// What speaks against the plan: stops, cautions, notes, each with its reason, what to do, where, and its source.
#pragma once

#include <QFrame>

#include "work/plan_care.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace kempt::desk {

// Where it holds, each service named once: "permanent colour: mid-shaft, ends; gloss". Empty: the client as a whole.
[[nodiscard]] QString place_words(const care::Finding& finding);

class FindingsPanel : public QFrame {
    Q_OBJECT
  public:
    explicit FindingsPanel(QWidget* parent = nullptr);
    void show_plan(const work::CarePlan& plan);
    // What was entered cannot be: what is the matter, what was kept, what to do.
    void show_error(const Error& error);
    // Rules of the findings on show, in their order.
    [[nodiscard]] QStringList rules() const { return rules_; }

  signals:
    // A rule names a service to take instead, or to even out with.
    void kind_chosen(kempt::care::Kind kind);

  private:
    QWidget* finding_box(const care::Finding& finding, bool planned);
    QLabel* sum_;
    QBoxLayout *boxes_, *note_boxes_;
    QWidget* notes_;
    QPushButton* more_;
    QStringList rules_;
    bool notes_open_ = false;
};

}  // namespace kempt::desk
