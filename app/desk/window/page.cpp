#include "desk/window/page.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include "desk/look/look.h"

namespace kempt::desk {

Page::Page(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    setProperty("page", true);
    setAttribute(Qt::WA_StyledBackground);
}

QVBoxLayout* Page::scrolled() {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* area = area_ = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* inside = new QWidget(area);
    inside->setProperty("clear", true);
    auto* column = new QVBoxLayout(inside);
    const int margin = measures().gap(6);
    column->setContentsMargins(margin, measures().gap(5), margin, margin);
    column->setSpacing(measures().gap(4));
    area->setWidget(inside);
    outer->addWidget(area);
    return column;
}

void Page::to_top() {
    if (area_ != nullptr) area_->verticalScrollBar()->setValue(0);
}

}  // namespace kempt::desk
