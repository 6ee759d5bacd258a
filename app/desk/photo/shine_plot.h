// The light along the fibres: all of it, the surface highlight of it, the straight line of dull light below the
// highlight, and the width at half height.
#pragma once

#include <QWidget>

#include "desk/photo/overlay.h"

namespace kempt::desk {

class ShinePlot : public QWidget {
    Q_OBJECT
  public:
    explicit ShinePlot(QWidget* parent = nullptr);
    void show_shine(const ShineOverlay& shine);
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    ShineOverlay shine_;
};

}  // namespace kempt::desk
