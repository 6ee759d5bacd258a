// The camera's picture with the last visit's photo laid over it, so that she can stand as she stood then.
#pragma once

#include <QImage>
#include <QWidget>

namespace kempt::desk {

class GuideView : public QWidget {
    Q_OBJECT
  public:
    explicit GuideView(QWidget* parent = nullptr);
    void show_frame(const QImage& frame);
    void show_guide(const QImage& guide);  // null: none
    void set_strength(double share);       // of the guide, 0..1
    [[nodiscard]] const QImage& frame() const { return frame_; }
    [[nodiscard]] const QImage& guide() const { return guide_; }
    [[nodiscard]] double strength() const { return strength_; }
    [[nodiscard]] QSize sizeHint() const override { return {640, 480}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QImage frame_, guide_;
    double strength_ = 0.35;  // both can still be told apart (looked at; own choice)
};

}  // namespace kempt::desk
