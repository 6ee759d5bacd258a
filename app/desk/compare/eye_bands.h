// A photo with the bands that hide eyes; moved, turned, made larger and smaller by mouse and keyboard.
#pragma once

#include <QPixmap>
#include <QWidget>

#include "work/face_find.h"

namespace kempt::desk {

class EyeBands : public QWidget {
    Q_OBJECT
  public:
    explicit EyeBands(QWidget* parent = nullptr);
    // picture_px: pixels of the picture for one of the photo; bands are in the photo's.
    void set_photo(const QImage& picture, double picture_px, const QVector<work::EyeBand>& bands);
    [[nodiscard]] const QVector<work::EyeBand>& bands() const { return bands_; }
    [[nodiscard]] int picked() const { return picked_; }
    void add();  // in the middle of the picture, an eighth of it high
    void remove();
    void turn(double degrees);
    void grow(double factor);
    [[nodiscard]] QSize sizeHint() const override { return {640, 440}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 180}; }

  signals:
    void changed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    enum class Grip { none, whole, end, side };
    [[nodiscard]] QRectF frame() const;
    [[nodiscard]] double screen_px() const;  // of the widget for one of the photo
    [[nodiscard]] QPointF to_photo(QPointF at) const;
    [[nodiscard]] QPointF to_widget(QPointF photo) const;
    [[nodiscard]] QPointF end_of(const work::EyeBand& band) const;   // the grip that lengthens and turns, photo pixels
    [[nodiscard]] QPointF side_of(const work::EyeBand& band) const;  // the grip that heightens
    void after_change();

    QPixmap picture_;
    double picture_px_ = 1;
    QVector<work::EyeBand> bands_;
    int picked_ = -1;
    Grip grip_ = Grip::none;
    QPointF held_;  // photo pixels, from the band's middle
};

}  // namespace kempt::desk
