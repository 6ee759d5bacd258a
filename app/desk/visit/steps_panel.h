// The steps of a visit: a mark and a sentence for each, and one press to go there.
#pragma once

#include <QFrame>

#include "desk/visit/visit_steps.h"

class QBoxLayout;
class QPushButton;

namespace kempt::desk {

class StepsPanel : public QFrame {
    Q_OBJECT
  public:
    explicit StepsPanel(QWidget* parent = nullptr);
    void show_steps(const QVector<VisitStep>& steps);
    // The press of a step, for tests; nullptr before the steps are shown.
    [[nodiscard]] QPushButton* press_of(VisitStep::What what) const;

  signals:
    void step_asked(const kempt::desk::VisitStep& step);
    void missing_asked(const kempt::desk::Missing& missing);

  private:
    void add_step(const VisitStep& step, bool next);
    void add_missing(const Missing& missing);
    QBoxLayout* rows_;
    QHash<int, QPushButton*> presses_;
};

}  // namespace kempt::desk
