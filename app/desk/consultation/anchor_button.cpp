#include "desk/consultation/anchor_button.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

constexpr int steps = 5, flags = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;

QFont figure_font() {
    QFont font(QStringLiteral("DejaVu Serif"));
    font.setPixelSize(measures().title);
    return font;
}

}  // namespace

AnchorButton::AnchorButton(int step, QWidget* parent) : QAbstractButton(parent), step_(step) {
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    take_height_from_width(this);
}

void AnchorButton::set_anchor(const QString& anchor, const QString& of) {
    anchor_ = anchor;
    setAccessibleName(tr("%1, grade %2: %3").arg(of).arg(step_).arg(anchor));
    updateGeometry();
    update();
}

int AnchorButton::words_left() const {
    return measures().gap(4) + measures().px(30) + measures().px(44) + measures().gap(3);
}

QSize AnchorButton::sizeHint() const {
    return {measures().px(420), heightForWidth(measures().px(420))};
}

QSize AnchorButton::minimumSizeHint() const {
    return {measures().px(200), measures().target};
}

int AnchorButton::heightForWidth(int width) const {
    const int room = std::max(60, width - words_left() - measures().gap(3));
    const int words = fontMetrics().boundingRect(QRect(0, 0, room, 10000), flags, anchor_).height();
    return std::max(measures().target + 10, words + 2 * measures().gap(2));
}

void AnchorButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const bool chosen = isChecked() || isDown();
    const double pen = hasFocus() ? 2 : 1;
    const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
    painter.setPen(QPen(hasFocus() ? c.focus : chosen ? c.accent : c.outline, pen));
    painter.setBrush(chosen ? c.accent_wash : underMouse() ? c.raised_over : c.raised);
    painter.drawRoundedRect(box, measures().radius, measures().radius);

    painter.setFont(figure_font());
    painter.setPen(chosen ? c.accent : c.ink);
    const int left = measures().gap(4);
    painter.drawText(QRect(left, 0, measures().px(30), height()), Qt::AlignLeft | Qt::AlignVCenter,
                     QString::number(step_));

    // Four strands on a piece of scalp: as many stand as the grade says.
    const double base = height() / 2.0 + measures().px(9), from = left + measures().px(30.0), step = measures().px(10);
    painter.setPen(QPen(c.outline, 1.6, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(from - 2, base), QPointF(from + step * (steps - 1) - 2, base));
    for (int i = 0; i + 1 < steps; ++i) {
        const double x = from + i * step, tall = i < step_ ? measures().px(18.0 - (i % 2) * 2) : 3.0;
        QPainterPath strand(QPointF(x, base));
        strand.quadTo(x, base - tall * 0.6, x + (i < step_ ? step * 0.45 : 0), base - tall);
        painter.setPen(QPen(i < step_ ? (chosen ? c.accent : c.ink_soft) : c.outline, 1.7 * measures().space,
                            Qt::SolidLine, Qt::RoundCap));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(strand);
    }
    painter.setFont(font());
    painter.setPen(c.ink);
    painter.drawText(QRect(words_left(), 0, width() - words_left() - measures().gap(3), height()), flags, anchor_);
}

}  // namespace kempt::desk
