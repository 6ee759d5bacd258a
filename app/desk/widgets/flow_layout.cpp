#include "desk/widgets/flow_layout.h"

#include <QWidget>
#include <algorithm>

namespace kempt::desk {

FlowLayout::FlowLayout(int spacing, bool stretch, QWidget* parent) : QLayout(parent), stretch_(stretch) {
    setSpacing(spacing);
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
    qDeleteAll(items_);
}

QLayoutItem* FlowLayout::takeAt(int index) {
    return index >= 0 && index < items_.size() ? items_.takeAt(index) : nullptr;
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : items_) size = size.expandedTo(item->minimumSize());
    const QMargins m = contentsMargins();
    return size + QSize(m.left() + m.right(), m.top() + m.bottom());
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    place(rect, true);
}

int FlowLayout::place(const QRect& rect, bool really) const {
    const QRect inside = rect.marginsRemoved(contentsMargins());
    int y = inside.y(), index = 0;
    while (index < items_.size()) {
        // One row: as many as fit, at least one.
        int end = index, used = 0;
        QVector<int> widths;
        while (end < items_.size()) {
            const QLayoutItem* item = items_[end];
            if (item->isEmpty()) {
                widths.append(0);
                ++end;
                continue;
            }
            const int want = std::min(item->sizeHint().width(), inside.width());
            const int with = used + (used > 0 ? spacing() : 0) + want;
            if (used > 0 && with > inside.width()) break;
            used = with;
            widths.append(want);
            ++end;
        }
        const auto shown = std::count_if(widths.begin(), widths.end(), [](int w) { return w > 0; });
        const int share = stretch_ && shown > 0 ? static_cast<int>((inside.width() - used) / shown) : 0;
        int x = inside.x(), height = 0;
        for (int i = index; i < end; ++i) {
            if (widths[i - index] == 0) continue;
            const int width = widths[i - index] + share;
            QLayoutItem* item = items_[i];
            height =
                std::max(height, item->hasHeightForWidth() ? item->heightForWidth(width) : item->sizeHint().height());
        }
        for (int i = index; i < end; ++i) {
            if (widths[i - index] == 0) continue;
            const int width = widths[i - index] + share;
            // In the middle of its row, unless the row is filled.
            const QLayoutItem* item = items_[i];
            const int own = item->hasHeightForWidth() ? item->heightForWidth(width) : item->sizeHint().height();
            const int tall = stretch_ ? height : std::min(height, own);
            if (really) items_[i]->setGeometry(QRect(x, y + (height - tall) / 2, width, tall));
            x += width + spacing();
        }
        if (height > 0) y += height + spacing();
        index = end;
    }
    const int bottom = contentsMargins().bottom();
    return std::max(0, y - spacing() - rect.y()) + bottom;
}

}  // namespace kempt::desk
