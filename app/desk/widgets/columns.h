// Two columns side by side where there is room, one above the other where there is not.
#pragma once

#include <QBoxLayout>
#include <QWidget>

namespace kempt::desk {

class Columns : public QWidget {
    Q_OBJECT
  public:
    // Side by side from this width on.
    explicit Columns(int side_by_side_from, QWidget* parent = nullptr);
    [[nodiscard]] QBoxLayout* left() const { return left_; }
    [[nodiscard]] QBoxLayout* right() const { return right_; }
    void set_shares(int left, int right);
    // One above the other, the right one comes first.
    void put_right_above() { folded_ = QBoxLayout::BottomToTop; }
    // Stands as this width asks for before it has it: what is put into a page that is seen is laid out once, not twice.
    void expect_width(int width);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    int from_, left_share_ = 1, right_share_ = 1;
    QBoxLayout::Direction folded_ = QBoxLayout::TopToBottom;
    QBoxLayout *both_, *left_, *right_;
};

}  // namespace kempt::desk
