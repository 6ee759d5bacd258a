// The order of work of one service, or of one of its rounds, drawn; Up and Down walk its strips.
#pragma once

#include <QWidget>

#include "desk/plan/timeline_layout.h"

namespace kempt::desk {

class TimelineView : public QWidget {
    Q_OBJECT
  public:
    explicit TimelineView(QWidget* parent = nullptr);
    void set_timeline(const QString& title, const care::Application& application, const care::Timeline& timeline);
    [[nodiscard]] const TimelinePicture& picture() const { return picture_; }
    [[nodiscard]] QString words_of(int strip) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    [[nodiscard]] TimelineSizes sizes_for(int width) const;
    [[nodiscard]] QFont words_font() const;
    care::Application application_;
    care::Timeline timeline_;
    QString title_;
    TimelinePicture picture_;
    int picked_ = -1;
};

}  // namespace kempt::desk
