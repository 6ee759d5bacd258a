#include "desk/compare/eye_bands.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "desk/compare/pair_on_show.h"
#include "desk/look/look.h"

namespace kempt::desk {
namespace {

constexpr double key_px = 4, key_turn_deg = 3, key_grow = 1.06;  // Shift: five times as far
constexpr double least_px = 6;  // of the widget: smaller could not be taken hold of any more
const QColor fill(38, 38, 38);  // as it is drawn into the picture

double length_of(QPointF v) {
    return std::hypot(v.x(), v.y());
}

}  // namespace

EyeBands::EyeBands(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Photo with the bands over the eyes"));
    after_change();
}

void EyeBands::set_photo(const QImage& picture, double picture_px, const QVector<work::EyeBand>& bands) {
    picture_ = QPixmap::fromImage(picture);
    picture_px_ = picture_px;
    bands_ = bands;
    picked_ = bands_.isEmpty() ? -1 : 0;
    grip_ = Grip::none;
    after_change();
}

void EyeBands::after_change() {
    setAccessibleDescription(
        bands_.isEmpty()
            ? tr("No band. Insert adds one.")
            : tr("%1 bands, number %2 is picked. N the next one, arrows move it, plus and minus its size, less and "
                 "greater its height, brackets turn it, Delete removes it.")
                  .arg(bands_.size())
                  .arg(picked_ + 1));
    update();
}

QRectF EyeBands::frame() const {
    return fitted(picture_.size(), rect());
}

double EyeBands::screen_px() const {
    return picture_.isNull() ? 1 : frame().width() / picture_.width() * picture_px_;
}

QPointF EyeBands::to_photo(QPointF at) const {
    return (at - frame().topLeft()) / screen_px();
}

QPointF EyeBands::to_widget(QPointF photo) const {
    return frame().topLeft() + photo * screen_px();
}

QPointF EyeBands::end_of(const work::EyeBand& band) const {
    const auto c = band.corners();
    return (c[1] + c[2]) / 2;
}

QPointF EyeBands::side_of(const work::EyeBand& band) const {
    const auto c = band.corners();
    return (c[2] + c[3]) / 2;
}

void EyeBands::add() {
    if (picture_.isNull()) return;
    const QSizeF photo = QSizeF(picture_.size()) / picture_px_;
    const double height = std::min(photo.width(), photo.height()) / 8;
    bands_.append({QPointF(photo.width() / 2, photo.height() / 2), height * 3, height, 0});
    picked_ = static_cast<int>(bands_.size()) - 1;
    after_change();
    emit changed();
}

void EyeBands::remove() {
    if (picked_ < 0 || picked_ >= bands_.size()) return;
    bands_.removeAt(picked_);
    picked_ = std::min(picked_, static_cast<int>(bands_.size()) - 1);
    after_change();
    emit changed();
}

void EyeBands::turn(double degrees) {
    if (picked_ < 0) return;
    double& deg = bands_[picked_].turn_deg;
    deg = std::remainder(deg + degrees, 180.0);
    after_change();
    emit changed();
}

void EyeBands::grow(double factor) {
    if (picked_ < 0) return;
    work::EyeBand& band = bands_[picked_];
    const double least = least_px / screen_px();
    band.length = std::max(least, band.length * factor);
    band.height = std::max(least, band.height * factor);
    after_change();
    emit changed();
}

void EyeBands::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    painter.fillRect(rect(), colours().sunken);
    if (picture_.isNull()) return;
    painter.drawPixmap(frame(), picture_, QRectF(picture_.rect()));
    painter.setClipRect(frame());
    const double r = measures().px(7);
    for (int i = 0; i < bands_.size(); ++i) {
        QPolygonF band;
        for (const QPointF& p : bands_[i].corners()) band << to_widget(p);
        painter.setBrush(fill);
        painter.setPen(QPen(mark_colours().casing, 4));
        painter.drawPolygon(band);
        painter.setPen(QPen(i == picked_ ? mark_colours().picked : mark_colours().line, 2));
        painter.drawPolygon(band);
        if (i != picked_) continue;
        for (const QPointF& grip : {to_widget(end_of(bands_[i])), to_widget(side_of(bands_[i]))}) {
            painter.setPen(QPen(mark_colours().casing, 2));
            painter.setBrush(mark_colours().picked);
            painter.drawEllipse(grip, r, r);
        }
    }
    painter.setClipping(false);
    if (hasFocus()) paint_focus(painter, frame());
}

void EyeBands::mousePressEvent(QMouseEvent* event) {
    if (picture_.isNull()) return;
    const QPointF at = to_photo(event->position());
    const double reach = measures().px(18) / screen_px();
    grip_ = Grip::none;
    if (picked_ >= 0) {
        const work::EyeBand& band = bands_[picked_];
        if (length_of(at - end_of(band)) < reach)
            grip_ = Grip::end;
        else if (length_of(at - side_of(band)) < reach)
            grip_ = Grip::side;
    }
    if (grip_ == Grip::none) {
        for (int i = static_cast<int>(bands_.size()) - 1; i >= 0; --i) {
            QPolygonF polygon;
            for (const QPointF& p : bands_[i].corners()) polygon << p;
            if (!polygon.containsPoint(at, Qt::WindingFill)) continue;
            picked_ = i;
            grip_ = Grip::whole;
            held_ = at - bands_[i].middle;
            break;
        }
    }
    after_change();
}

void EyeBands::mouseMoveEvent(QMouseEvent* event) {
    if (grip_ == Grip::none || picked_ < 0 || !(event->buttons() & Qt::LeftButton)) return;
    work::EyeBand& band = bands_[picked_];
    const QPointF at = to_photo(event->position()), off = at - band.middle;
    const double least = least_px / screen_px();
    if (grip_ == Grip::whole) {
        const QRectF photo(QPointF(0, 0), QSizeF(picture_.size()) / picture_px_);
        const QPointF to = at - held_;
        band.middle = {std::clamp(to.x(), photo.left(), photo.right()),
                       std::clamp(to.y(), photo.top(), photo.bottom())};
    } else if (grip_ == Grip::end) {
        band.length = std::max(least, 2 * length_of(off));
        band.turn_deg = std::atan2(off.y(), off.x()) * 180 / M_PI;
    } else {
        const double angle = band.turn_deg * M_PI / 180;
        band.height = std::max(least, 2 * std::abs(-off.x() * std::sin(angle) + off.y() * std::cos(angle)));
    }
    after_change();
}

void EyeBands::mouseReleaseEvent(QMouseEvent*) {
    if (grip_ != Grip::none) emit changed();
    grip_ = Grip::none;
}

void EyeBands::keyPressEvent(QKeyEvent* event) {
    const double far = event->modifiers() & Qt::ShiftModifier ? 5 : 1;
    const double step = key_px * far / screen_px();
    const auto move = [this](double dx, double dy) {
        if (picked_ < 0) return;
        bands_[picked_].middle += QPointF(dx, dy);
        after_change();
        emit changed();
    };
    const auto heighten = [this](double factor) {
        if (picked_ < 0) return;
        bands_[picked_].height = std::max(least_px / screen_px(), bands_[picked_].height * factor);
        after_change();
        emit changed();
    };
    switch (event->key()) {
        case Qt::Key_Left:
            return move(-step, 0);
        case Qt::Key_Right:
            return move(step, 0);
        case Qt::Key_Up:
            return move(0, -step);
        case Qt::Key_Down:
            return move(0, step);
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            return grow(key_grow);
        case Qt::Key_Minus:
            return grow(1 / key_grow);
        case Qt::Key_Greater:
        case Qt::Key_Period:
            return heighten(key_grow);
        case Qt::Key_Less:
        case Qt::Key_Comma:
            return heighten(1 / key_grow);
        case Qt::Key_BracketLeft:
            return turn(-key_turn_deg);
        case Qt::Key_BracketRight:
            return turn(key_turn_deg);
        case Qt::Key_Insert:
        case Qt::Key_A:
            return add();
        case Qt::Key_Delete:
        case Qt::Key_Backspace:
            return remove();
        case Qt::Key_N:
            if (!bands_.isEmpty()) picked_ = (picked_ + 1) % static_cast<int>(bands_.size());
            return after_change();
        default:
            QWidget::keyPressEvent(event);
    }
}

void EyeBands::focusInEvent(QFocusEvent*) {
    update();
}

void EyeBands::focusOutEvent(QFocusEvent*) {
    update();
}

}  // namespace kempt::desk
