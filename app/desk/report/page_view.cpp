#include "desk/report/page_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"

namespace kempt::desk {
namespace {

constexpr int most_kept = 8;  // pages: at 900 px wide about 5 MB each
constexpr double farthest = 0.4, nearest = 2.5, zoom_step = 1.2;
constexpr int widest_px = 1100;  // of a page at its plain size: wider does not read better

}  // namespace

PageView::PageView(QWidget* parent) : QAbstractScrollArea(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Pages of the report"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    describe();
}

void PageView::set_pages(int count, QSizeF points) {
    count_ = count;
    points_ = points;
    pictures_.clear();
    lay_out();
    ask();
    describe();
}

void PageView::set_page(int page, const QImage& picture) {
    pictures_[page] = picture;
    viewport()->update(page_rect(page));
    ask();
}

int PageView::page_width_px() const {
    const int room = std::max(80, viewport()->width() - 2 * measures().gap(3));
    return static_cast<int>(std::min(room, widest_px) * zoom_);
}

void PageView::lay_out() {
    const double height = page_width_px() / points_.width() * points_.height();
    step_ = static_cast<int>(std::ceil(height)) + measures().gap(3);
    verticalScrollBar()->setRange(0, std::max(0, count_ * step_ + measures().gap(3) - viewport()->height()));
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(step_ / 12);
    const int wide = page_width_px() + 2 * measures().gap(3) - viewport()->width();
    horizontalScrollBar()->setRange(0, std::max(0, wide));
    horizontalScrollBar()->setPageStep(viewport()->width());
    viewport()->update();
}

QRect PageView::page_rect(int page) const {
    const int width = page_width_px();
    const int left = std::max(measures().gap(3), (viewport()->width() - width) / 2) - horizontalScrollBar()->value();
    return {left, measures().gap(3) + page * step_ - verticalScrollBar()->value(), width, step_ - measures().gap(3)};
}

int PageView::current() const {
    const int middle = verticalScrollBar()->value() + viewport()->height() / 3;
    return std::clamp(middle / std::max(1, step_), 0, std::max(0, count_ - 1));
}

// One at a time, the seen ones first; what lies far off is let go.
void PageView::ask() {
    const int here = current();
    if (pictures_.size() > most_kept)
        pictures_.removeIf([here](const auto& one) { return std::abs(one.key() - here) > most_kept / 2; });
    for (int page = 0; page < count_; ++page)
        if (!pictures_.contains(page) && page_rect(page).intersects(viewport()->rect())) {
            emit wanted(page, static_cast<int>(page_width_px() * devicePixelRatioF()));
            return;
        }
}

void PageView::describe() {
    setAccessibleDescription(count_ == 0 ? tr("Nothing yet.")
                                         : tr("Page %1 of %2. Page up and Page down turn pages, plus and minus go "
                                              "nearer and farther.")
                                               .arg(current() + 1)
                                               .arg(count_));
}

void PageView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.fillRect(viewport()->rect(), colours().sunken);
    for (int page = 0; page < count_; ++page) {
        const QRect rect = page_rect(page);
        if (!rect.intersects(viewport()->rect())) continue;
        painter.fillRect(rect, Qt::white);
        if (pictures_.contains(page)) painter.drawImage(rect, pictures_[page]);
        painter.setPen(colours().outline);
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect.adjusted(0, 0, -1, -1));
    }
    if (hasFocus()) {
        painter.setPen(QPen(colours().focus, 2));
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void PageView::resizeEvent(QResizeEvent*) {
    const double share = count_ > 0 ? 1.0 * verticalScrollBar()->value() / std::max(1, count_ * step_) : 0;
    pictures_.clear();
    lay_out();
    verticalScrollBar()->setValue(static_cast<int>(share * count_ * step_));
    ask();
}

void PageView::scrollContentsBy(int, int) {
    viewport()->update();
    ask();
    describe();
    emit moved();
}

void PageView::show_page(int page) {
    verticalScrollBar()->setValue(std::clamp(page, 0, std::max(0, count_ - 1)) * step_);
}

void PageView::zoom_by(double factor) {
    const int page = current();
    zoom_ = std::clamp(zoom_ * factor, farthest, nearest);
    pictures_.clear();
    lay_out();
    show_page(page);
    ask();
}

void PageView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_PageUp:
            return show_page(current() - 1);
        case Qt::Key_PageDown:
            return show_page(current() + 1);
        case Qt::Key_Home:
            return show_page(0);
        case Qt::Key_End:
            return show_page(count_ - 1);
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            return zoom_by(zoom_step);
        case Qt::Key_Minus:
            return zoom_by(1 / zoom_step);
        default:
            QAbstractScrollArea::keyPressEvent(event);
    }
}

void PageView::wheelEvent(QWheelEvent* event) {
    if (event->modifiers() & Qt::ControlModifier) return zoom_by(std::pow(zoom_step, event->angleDelta().y() / 120.0));
    QAbstractScrollArea::wheelEvent(event);
}

void PageView::focusInEvent(QFocusEvent*) {
    viewport()->update();
}

void PageView::focusOutEvent(QFocusEvent*) {
    viewport()->update();
}

}  // namespace kempt::desk
