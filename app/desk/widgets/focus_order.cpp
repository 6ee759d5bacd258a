#include "desk/widgets/focus_order.h"

#include <QBoxLayout>
#include <QScrollArea>
#include <QTimer>
#include <QWidget>

namespace kempt::desk {
namespace {

constexpr auto timer_name = "kempt-focus-order";

void collect(QWidget* widget, QVector<QWidget*>& order);

void collect(QLayout* layout, QVector<QWidget*>& order) {
    const auto* box = qobject_cast<QBoxLayout*>(layout);
    const bool upwards = box != nullptr && box->direction() == QBoxLayout::BottomToTop;
    for (int i = 0; i < layout->count(); ++i) {
        QLayoutItem* item = layout->itemAt(upwards ? layout->count() - 1 - i : i);
        if (item->widget() != nullptr)
            collect(item->widget(), order);
        else if (item->layout() != nullptr)
            collect(item->layout(), order);
    }
}

void collect(QWidget* widget, QVector<QWidget*>& order) {
    if (widget->focusPolicy() & Qt::TabFocus) order.append(widget);
    if (auto* area = qobject_cast<QScrollArea*>(widget)) {
        if (area->widget() != nullptr) collect(area->widget(), order);
    } else if (widget->layout() != nullptr) {
        collect(widget->layout(), order);
    }
}

}  // namespace

void tidy_focus_order(QWidget* root) {
    QVector<QWidget*> order;
    collect(root, order);
    for (qsizetype i = 1; i < order.size(); ++i) QWidget::setTabOrder(order[i - 1], order[i]);
}

void tidy_focus_order_later(QWidget* widget) {
    if (widget == nullptr) return;
    QWidget* window = widget->window();
    auto* timer = window->findChild<QTimer*>(QLatin1String(timer_name), Qt::FindDirectChildrenOnly);
    if (timer == nullptr) {
        timer = new QTimer(window);
        timer->setObjectName(QLatin1String(timer_name));
        timer->setSingleShot(true);
        QObject::connect(timer, &QTimer::timeout, window, [window] { tidy_focus_order(window); });
    }
    timer->start(0);
}

}  // namespace kempt::desk
