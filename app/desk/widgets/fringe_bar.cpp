#include "desk/widgets/fringe_bar.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"

namespace kempt::desk {

FringeBar::FringeBar(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    set_share(std::nullopt);
}

QSize FringeBar::sizeHint() const {
    return {measures().px(160), measures().px(30)};
}

void FringeBar::set_share(std::optional<double> share) {
    share_ = share;
    const long percent = share ? std::lround(*share * 100) : 0;
    setAccessibleName(!share        ? tr("No way to show yet")
                      : percent < 0 ? tr("%1 per cent farther from the target than at the start").arg(-percent)
                                    : tr("%1 per cent of the way to the target").arg(percent));
    update();
}

void FringeBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const double base = height() - 3, step = std::max(4.0, measures().space * 5);
    const int count = static_cast<int>((width() - 4) / step);
    const double gone = share_ ? std::clamp(*share_, 0.0, 1.0) * count : 0;
    painter.setPen(QPen(c.outline, 1.5, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(2, base), QPointF(width() - 2, base));
    for (int i = 0; i < count; ++i) {
        const double x = 2 + (i + 0.5) * step;
        const double grown = std::clamp(gone - i, 0.0, 1.0);
        // A little unevenness, the same each time: hair is not a fence. All of it leans one way.
        const double sway = step * (0.9 + 0.5 * std::sin(i * 2.399));
        const double length =
            (height() - 8) * (0.74 + 0.16 * std::sin(i * 1.618 + 1) + 0.1 * std::sin(i * 0.37)) * grown;
        if (grown <= 0) {
            painter.setPen(QPen(c.outline, 1.6, Qt::SolidLine, Qt::RoundCap));
            painter.drawLine(QPointF(x, base - 1), QPointF(x, base - 4));
            continue;
        }
        QPainterPath strand(QPointF(x, base));
        strand.cubicTo(x - sway * 0.3, base - length * 0.4, x + sway * 0.1, base - length * 0.75, x + sway,
                       base - length);
        painter.setPen(QPen(c.better, 1.7 * measures().space, Qt::SolidLine, Qt::RoundCap));
        painter.drawPath(strand);
    }
}

}  // namespace kempt::desk
