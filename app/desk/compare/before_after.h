// Two aligned pictures of one place; a parting line is drawn across by mouse, touch or arrow keys: before on its left,
// after on its right.
#pragma once

#include <QPixmap>
#include <QWidget>

#include "desk/compare/pair_on_show.h"

namespace kempt::desk {

class BeforeAfter : public QWidget {
    Q_OBJECT
  public:
    explicit BeforeAfter(QWidget* parent = nullptr);
    void set_pair(const PairOnShow& pair);
    void set_lines_shown(bool shown);
    // 0: only after; 1: only before.
    void set_parting(double share);
    [[nodiscard]] double parting() const { return parting_; }
    [[nodiscard]] QSize sizeHint() const override { return {720, 480}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 110}; }

  signals:
    void parting_moved(double share);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    [[nodiscard]] QRectF frame() const;
    void follow(QPointF at);
    PairOnShow pair_;
    QPixmap before_, after_;  // at the size of the frame
    double parting_ = 0.5;
    bool lines_shown_ = true;
};

}  // namespace kempt::desk
