// The hair's record, drawn; Left and Right walk it by a centimetre, or half an inch.
#pragma once

#include <QWidget>
#include <vector>

#include "desk/plan/strand_layout.h"

namespace kempt::desk {

class StrandView : public QWidget {
    Q_OBJECT
  public:
    explicit StrandView(QWidget* parent = nullptr);
    void show_hair(const care::ClientState& state, const std::vector<care::Carried>& carried,
                   const work::CarePlan& plan);
    void set_gentle_too(bool too);
    [[nodiscard]] const StrandPicture& picture() const { return picture_; }
    [[nodiscard]] care::Span picked() const;  // one centimetre, or half an inch
    void pick(double mm);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  signals:
    void place_picked();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    [[nodiscard]] StrandSizes sizes_for(int width) const;
    [[nodiscard]] QFont words_font() const;
    care::ClientState state_;
    std::vector<care::Carried> carried_;
    work::CarePlan plan_;
    StrandPicture picture_;
    bool gentle_too_ = false;
    int at_ = 0;  // which centimetre
};

}  // namespace kempt::desk
