#include "desk/photo/shine_plot.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "domain/measure_units.h"

namespace kempt::desk {

ShinePlot::ShinePlot(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Light along the fibres"));
}

QSize ShinePlot::sizeHint() const {
    return {measures().px(220), measures().px(120)};
}

void ShinePlot::show_shine(const ShineOverlay& shine) {
    shine_ = shine;
    const double width = shine.half_to_mm - shine.half_from_mm;
    setAccessibleDescription(tr("Curve of the light from the root side over %1; above half its height over %2.")
                                 .arg(in_figures(plain_value(static_cast<double>(shine.total.size()) * shine.step_mm, 1,
                                                             QStringLiteral("mm"), look().length())),
                                      in_figures(plain_value(width, 0.1, QStringLiteral("mm"), look().length()))));
    update();
}

void ShinePlot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const qsizetype n = shine_.total.size();
    if (n < 2) return;
    QFont font = painter.font();
    font.setPixelSize(measures().caption);
    painter.setFont(font);
    const double below = QFontMetricsF(font).height() + 2;
    const QRectF box = QRectF(rect()).adjusted(1, 4, -1, -below);
    const double top = *std::max_element(shine_.total.begin(), shine_.total.end());
    if (!(top > 0)) return;
    const double length = static_cast<double>(n - 1);
    const auto at = [&](double index, double light) {
        return QPointF(box.left() + index / length * box.width(), box.bottom() - light / (1.05 * top) * box.height());
    };
    const auto curve = [&](const QVector<double>& light) {
        QPolygonF line;
        for (qsizetype i = 0; i < light.size(); ++i) line << at(static_cast<double>(i), light[i]);
        return line;
    };
    // The dull light: everything below its straight line.
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.sunken);
    painter.drawPolygon(QPolygonF{at(0, 0), at(0, shine_.base_first), at(length, shine_.base_last), at(length, 0)});
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.ink_soft, 1.4, Qt::DashLine));
    painter.drawLine(at(0, shine_.base_first), at(length, shine_.base_last));
    if (!shine_.surface.isEmpty()) {
        painter.setPen(QPen(c.accent, 2));
        painter.drawPolyline(curve(shine_.surface));
    }
    painter.setPen(QPen(c.ink, 1.8));
    const QPolygonF total = curve(shine_.total);
    painter.drawPolyline(total);
    if (shine_.step_mm > 0 && shine_.half_to_mm > shine_.half_from_mm) {
        const double from = shine_.half_from_mm / shine_.step_mm, to = shine_.half_to_mm / shine_.step_mm;
        const QVector<double>& highlight = shine_.surface.size() == n ? shine_.surface : shine_.total;
        const auto light_at = [&](double index) {
            const auto i = std::clamp<qsizetype>(static_cast<qsizetype>(index), 0, n - 2);
            const double t = index - static_cast<double>(i);
            return highlight[i] * (1 - t) + highlight[i + 1] * t;
        };
        const QPointF left = at(from, light_at(from)), right = at(to, light_at(to));
        painter.setPen(QPen(c.better, 2.4));
        painter.drawLine(left, right);
        for (const QPointF& end : {left, right}) painter.drawLine(end - QPointF(0, 5), end + QPointF(0, 5));
    }
    painter.setPen(c.outline);
    painter.drawLine(box.bottomLeft(), box.bottomRight());
    painter.setPen(c.ink_soft);
    const QRectF words(box.left(), box.bottom() + 2, box.width(), below);
    painter.drawText(words, Qt::AlignLeft, tr("roots"));
    painter.drawText(words, Qt::AlignRight,
                     in_figures(plain_value(length * shine_.step_mm, 1, QStringLiteral("mm"), look().length())));
}

}  // namespace kempt::desk
