// One step of a grade with its written anchor. Strands beside it stand as far as the grade goes.
#pragma once

#include <QAbstractButton>

namespace kempt::desk {

class AnchorButton : public QAbstractButton {
    Q_OBJECT
  public:
    explicit AnchorButton(int step, QWidget* parent = nullptr);
    // anchor: without its number.
    void set_anchor(const QString& anchor, const QString& of);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] int words_left() const;
    int step_;
    QString anchor_;
};

}  // namespace kempt::desk
