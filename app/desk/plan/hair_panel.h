// The hair itself: its record along the strand, and in words what the picked centimetre has been through.
#pragma once

#include <QFrame>
#include <vector>

#include "desk/plan/strand_layout.h"
#include "desk/plan/strand_view.h"

class QBoxLayout;
class QCheckBox;
class QLabel;

namespace kempt::desk {

class HairPanel : public QFrame {
    Q_OBJECT
  public:
    explicit HairPanel(QWidget* parent = nullptr);
    void show_hair(const care::ClientState& state, const std::vector<care::Carried>& carried,
                   const work::CarePlan& plan);
    [[nodiscard]] StrandView* strand() const { return strand_; }
    [[nodiscard]] QStringList listed() const;

  private:
    void list_place();
    care::ClientState state_;
    std::vector<care::Carried> carried_;
    work::CarePlan plan_;
    StrandView* strand_;
    QCheckBox* gentle_;
    QLabel *place_, *growth_;
    QBoxLayout* list_;
};

}  // namespace kempt::desk
