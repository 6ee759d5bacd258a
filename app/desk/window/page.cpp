#include "desk/window/page.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

Page::Page(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    setProperty("page", true);
    setAttribute(Qt::WA_StyledBackground);
}

QVBoxLayout* Page::scrolled() {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    const int margin = measures().gap(6);
    column->setContentsMargins(margin, measures().gap(5), margin, margin);
    column->setSpacing(measures().gap(4));
    area_ = scroll_area(inside);
    outer->addWidget(area_);
    return column;
}

void Page::undo(const Place& here) {
    session_.undo().take_back(here.client);
}

void Page::redo(const Place& here) {
    session_.undo().do_again(here.client);
}

QString Page::undo_words(const Place& here) const {
    return session_.undo().words(here.client);
}

void Page::to_top() {
    if (area_ != nullptr) area_->verticalScrollBar()->setValue(0);
}

}  // namespace kempt::desk
