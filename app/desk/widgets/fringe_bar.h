// The way to a target, drawn as hair coming back along an edge: strands stand where the way is gone, roots where it is
// not. The words beside it carry the same figures.
#pragma once

#include <QWidget>
#include <optional>

namespace kempt::desk {

class FringeBar : public QWidget {
    Q_OBJECT
  public:
    explicit FringeBar(QWidget* parent = nullptr);
    // share: 0 at the baseline, 1 at the target; shown within 0..1. No value: there is nothing to show yet.
    void set_share(std::optional<double> share);
    [[nodiscard]] std::optional<double> share() const { return share_; }
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::optional<double> share_;
};

}  // namespace kempt::desk
