#include "desk/widgets/photo_tile.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <tuple>

#include "desk/look/look.h"

namespace kempt::desk {
namespace {

// A shape for each standing, so that it does not rest on colour alone: tick, bar, cross.
void badge(QPainter& painter, QPointF centre, double r, PhotoTile::Stand stand) {
    const Colours& c = colours();
    const QColor colour = stand == PhotoTile::Stand::good        ? c.better
                          : stand == PhotoTile::Stand::attention ? c.caution
                                                                 : c.worse;
    painter.setPen(QPen(c.surface, 2));
    painter.setBrush(colour);
    painter.drawEllipse(centre, r, r);
    painter.setPen(QPen(c.surface, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const double u = r * 0.45;
    switch (stand) {
        case PhotoTile::Stand::good:
            painter.drawPolyline(QPolygonF(
                {centre + QPointF(-u, 0), centre + QPointF(-u * 0.2, u * 0.8), centre + QPointF(u, -u * 0.8)}));
            break;
        case PhotoTile::Stand::attention:
            painter.drawLine(centre + QPointF(0, -u * 1.1), centre + QPointF(0, u * 0.2));
            painter.drawPoint(centre + QPointF(0, u * 1.1));
            break;
        case PhotoTile::Stand::refused:
            painter.drawLine(centre + QPointF(-u, -u), centre + QPointF(u, u));
            painter.drawLine(centre + QPointF(-u, u), centre + QPointF(u, -u));
            break;
        case PhotoTile::Stand::none:
            break;
    }
}

}  // namespace

PhotoTile::PhotoTile(const QByteArray& thumbnail, const QString& first, const QString& second, Stand stand,
                     QWidget* parent)
    : QAbstractButton(parent), thumbnail_(thumbnail), first_(first), second_(second), stand_(stand) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    const QString standing = stand == Stand::refused     ? tr("refused")
                             : stand == Stand::attention ? tr("needs a look")
                                                         : QString();
    QStringList words{first, second};
    if (!standing.isEmpty()) words.append(standing);
    words.removeAll(QString());
    setAccessibleName(words.join(QStringLiteral(", ")));
    setToolTip(words.join(QStringLiteral("\n")));
}

const QPixmap& PhotoTile::picture_for(QSize frame) {
    if (made_for_ == frame) return picture_;
    made_for_ = frame;
    picture_ = QPixmap();
    const QImage whole = QImage::fromData(thumbnail_);
    if (whole.isNull()) return picture_;
    const QImage fitted =
        whole.scaled(whole.size().scaled(frame, Qt::KeepAspectRatioByExpanding).boundedTo(whole.size()),
                     Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    picture_ = QPixmap::fromImage(fitted);
    return picture_;
}

void PhotoTile::set_picture_size(QSize at_100) {
    picture_size_ = at_100;
    updateGeometry();
}

QSize PhotoTile::sizeHint() const {
    const Measures& m = measures();
    const QFontMetrics metrics(font());
    const int lines = (first_.isEmpty() ? 0 : 1) + (second_.isEmpty() ? 0 : 1);
    const int words = std::max(metrics.horizontalAdvance(first_), metrics.horizontalAdvance(second_)) + 2;
    const int least = static_cast<int>(picture_size_.width() * m.space);
    const int width = std::clamp(words, least, std::max(least, m.px(picture_size_.width())));
    return {width + m.gap(2), static_cast<int>(picture_size_.height() * m.space) + m.gap(2) + lines * metrics.height() +
                                  (lines > 0 ? m.gap(1) : 0)};
}

void PhotoTile::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const Colours& c = colours();
    const Measures& m = measures();
    const QRectF whole = QRectF(rect()).adjusted(1, 1, -1, -1);
    if (underMouse() || isDown()) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.accent_wash);
        painter.drawRoundedRect(whole, m.radius, m.radius);
    }
    const QRectF frame(m.gap(1), m.gap(1), width() - 2 * m.gap(1), picture_size_.height() * m.space);
    QPainterPath clip;
    clip.addRoundedRect(frame, m.radius - 2, m.radius - 2);
    painter.fillPath(clip, c.sunken);
    if (const QPixmap& picture = picture_for((frame.size() * devicePixelRatioF()).toSize()); !picture.isNull()) {
        painter.save();
        painter.setClipPath(clip);
        const QSizeF filled = QSizeF(picture.size()).scaled(frame.size(), Qt::KeepAspectRatioByExpanding);
        painter.drawPixmap(QRectF(frame.center() - QPointF(filled.width() / 2, filled.height() / 2), filled), picture,
                           QRectF(picture.rect()));
        painter.restore();
    }
    if (stand_ != Stand::none) badge(painter, frame.topRight() + QPointF(-13, 13) * m.space, 9 * m.space, stand_);
    double y = frame.bottom() + m.gap(1);
    QFont small = font();
    small.setPixelSize(m.caption);
    for (const auto& [words, colour, in] :
         {std::tuple<QString, QColor, QFont>{first_, c.ink, font()}, {second_, c.ink_soft, small}}) {
        if (words.isEmpty()) continue;
        painter.setPen(colour);
        painter.setFont(in);
        const QFontMetrics metrics(in);
        const QRectF line(frame.left(), y, frame.width(), metrics.height());
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                         metrics.elidedText(words, Qt::ElideRight, static_cast<int>(line.width())));
        y += metrics.height();
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(c.focus, 2));
        painter.drawRoundedRect(whole, m.radius, m.radius);
    }
}

void PhotoTile::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return click();
    if (event->key() == Qt::Key_Delete) {
        emit asked_to_erase();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

void PhotoTile::enterEvent(QEnterEvent* event) {
    QAbstractButton::enterEvent(event);
    update();
}

void PhotoTile::leaveEvent(QEvent* event) {
    QAbstractButton::leaveEvent(event);
    update();
}

}  // namespace kempt::desk
