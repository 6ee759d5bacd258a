// Two aligned pictures in one place: taking turns (the eye sees what moves), or the later one with the way that the
// edge has gone, in millimetres.
#pragma once

#include <QPixmap>
#include <QTimer>
#include <QWidget>

#include "desk/compare/pair_on_show.h"

namespace kempt::desk {

class OneOverOther : public QWidget {
    Q_OBJECT
  public:
    enum class Show { turns, edge };
    explicit OneOverOther(QWidget* parent = nullptr);
    void set_pair(const PairOnShow& pair);
    void set_show(Show show);
    void set_lines_shown(bool shown);
    [[nodiscard]] bool later_shown() const { return later_; }
    [[nodiscard]] bool running() const { return turn_.isActive(); }
    // Where the edge went, in one sentence.
    [[nodiscard]] static QString edge_words(const PairOnShow& pair);
    [[nodiscard]] QSize sizeHint() const override { return {720, 480}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 110}; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void describe();
    void pause_or_go();
    void paint_edge(QPainter& painter, const QRectF& frame) const;
    PairOnShow pair_;
    QPixmap before_, after_;
    Show show_ = Show::turns;
    QTimer turn_;
    bool later_ = false, lines_shown_ = true, wanted_ = true;
};

}  // namespace kempt::desk
