#include "desk/widgets/columns.h"

#include <QResizeEvent>
#include <QVBoxLayout>

#include "desk/look/look.h"

namespace kempt::desk {

Columns::Columns(int side_by_side_from, QWidget* parent) : QWidget(parent), from_(side_by_side_from) {
    both_ = new QBoxLayout(QBoxLayout::TopToBottom, this);
    both_->setContentsMargins(0, 0, 0, 0);
    both_->setSpacing(measures().gap(5));
    left_ = new QVBoxLayout;
    right_ = new QVBoxLayout;
    left_->setSpacing(measures().gap(4));
    right_->setSpacing(measures().gap(4));
    both_->addLayout(left_);
    both_->addLayout(right_);
}

void Columns::set_shares(int left, int right) {
    left_share_ = left;
    right_share_ = right;
}

void Columns::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    expect_width(event->size().width());
}

void Columns::expect_width(int width) {
    const bool beside = width >= from_;
    const auto direction = beside ? QBoxLayout::LeftToRight : folded_;
    if (both_->direction() != direction) both_->setDirection(direction);
    both_->setStretch(0, beside ? left_share_ : 0);
    both_->setStretch(1, beside ? right_share_ : 0);
}

}  // namespace kempt::desk
