// Two pictures beside each other (one above the other where the window is narrow), nearer and farther together: what is
// in the middle of one is in the middle of the other.
#pragma once

#include <QWidget>

#include "desk/compare/pair_on_show.h"

namespace kempt::desk {

class SideBySide : public QWidget {
    Q_OBJECT
  public:
    explicit SideBySide(QWidget* parent = nullptr);
    void set_pair(const PairOnShow& pair);
    void set_lines_shown(bool shown);
    // Of the later picture only, about its upright middle.
    void set_turned_over(bool turned);
    [[nodiscard]] double zoom() const { return zoom_; }       // 1: whole
    [[nodiscard]] QPointF middle() const { return middle_; }  // share of the picture, 0..1
    void zoom_by(double factor, QPointF at);                  // at: widget pixels that stay where they are
    void move_by(QPointF px);                                 // of the widget
    void show_whole();
    [[nodiscard]] QSize sizeHint() const override { return {720, 480}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 110}; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    [[nodiscard]] std::pair<QRectF, QRectF> panes() const;
    [[nodiscard]] QRectF whole(const QRectF& pane,
                               bool turned) const;  // where the whole picture stands, beyond the pane too
    void hold();                                    // within the picture
    PairOnShow pair_;
    double zoom_ = 1;
    QPointF middle_{0.5, 0.5}, dragged_;
    bool lines_shown_ = true, turned_over_ = false;
};

}  // namespace kempt::desk
