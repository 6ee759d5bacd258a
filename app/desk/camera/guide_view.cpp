#include "desk/camera/guide_view.h"

#include <QPainter>

#include "desk/look/look.h"

namespace kempt::desk {

GuideView::GuideView(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(200, 150);
}

void GuideView::show_frame(const QImage& frame) {
    frame_ = frame;
    update();
}

void GuideView::show_guide(const QImage& guide) {
    guide_ = guide;
    update();
}

void GuideView::set_strength(double share) {
    strength_ = share;
    update();
}

void GuideView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.fillRect(rect(), colours().sunken);
    const auto place = [this](const QImage& image) {
        const QSizeF size = QSizeF(image.size()).scaled(QSizeF(this->size()), Qt::KeepAspectRatio);
        return QRectF((width() - size.width()) / 2, (height() - size.height()) / 2, size.width(), size.height());
    };
    if (!frame_.isNull()) painter.drawImage(place(frame_), frame_);
    if (guide_.isNull()) return;
    painter.setOpacity(frame_.isNull() ? 1.0 : strength_);
    painter.drawImage(place(guide_), guide_);
}

}  // namespace kempt::desk
