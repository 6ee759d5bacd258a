#include "desk/widgets/rows_anew.h"

#include <QVBoxLayout>

#include "desk/widgets/focus_order.h"

namespace kempt::desk {

RowsAnew::RowsAnew(int spacing, QWidget* parent) : QWidget(parent), spacing_(spacing) {
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(0, 0, 0, 0);
    around->setSpacing(0);
}

QBoxLayout* RowsAnew::begin() {
    delete next_;
    next_ = new QWidget(this);
    next_->hide();
    auto* column = new QVBoxLayout(next_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing_);
    return column;
}

void RowsAnew::show_rows() {
    if (next_ == nullptr) return;
    if (now_ != nullptr) {
        layout()->removeWidget(now_);
        now_->hide();
        now_->deleteLater();  // a press in it may have asked for this
    }
    now_ = next_;
    next_ = nullptr;
    layout()->addWidget(now_);
    now_->show();
    tidy_focus_order_later(this);
}

}  // namespace kempt::desk
