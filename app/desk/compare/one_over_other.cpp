#include "desk/compare/one_over_other.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"
#include "domain/measure_units.h"

namespace kempt::desk {
namespace {

// Slow enough to look at each, and far from the three flashes a second of WCAG 2.1, 2.3.1.
constexpr int turn_ms = 900;

QString mm_words(double value_mm) {
    const auto conversion = conversion_of(QStringLiteral("mm"), look().length());
    return QStringLiteral("%1 %2")
        .arg(QLocale().toString(value_mm * conversion.factor, 'f', look().length() == LengthUnit::inches ? 2 : 1),
             look().length() == LengthUnit::inches ? QObject::tr("in") : QObject::tr("mm"));
}

}  // namespace

OneOverOther::OneOverOther(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    turn_.setInterval(turn_ms);
    connect(&turn_, &QTimer::timeout, this, [this] {
        later_ = !later_;
        update();
    });
    describe();
}

void OneOverOther::set_pair(const PairOnShow& pair) {
    pair_ = pair;
    before_ = after_ = {};
    describe();
    update();
}

void OneOverOther::set_show(Show show) {
    show_ = show;
    if (show == Show::turns && isVisible() && wanted_)
        turn_.start();
    else
        turn_.stop();
    describe();
    update();
}

void OneOverOther::set_lines_shown(bool shown) {
    lines_shown_ = shown;
    update();
}

void OneOverOther::describe() {
    setAccessibleName(show_ == Show::turns ? tr("Before and after, taking turns") : tr("How far the edge has moved"));
    setAccessibleDescription(show_ == Show::turns
                                 ? tr("Before: %1. After: %2. Space stops and goes on; Left shows before, Right after.")
                                       .arg(date_words(pair_.before_date), date_words(pair_.after_date))
                                 : edge_words(pair_));
}

QString OneOverOther::edge_words(const PairOnShow& pair) {
    if (!pair.shift)
        return tr(
            "How far the edge has moved cannot be told: the photos could not be laid over each other by skin or "
            "anchors, and laid by the edge lines it does not show.");
    const work::EdgeShift& shift = *pair.shift;
    const QString range = tr("between %1 back and %2 forward along the line")
                              .arg(mm_words(std::max(0.0, -shift.least_mm)), mm_words(std::max(0.0, shift.most_mm)));
    const double limit = pair.laid_to_mm.value_or(0);
    if (std::abs(shift.mean_mm) <= limit)
        return tr("On average the edge stands where it stood, as far as these photos tell (laid to about %1; %2).")
            .arg(mm_words(limit), range);
    const QString laid = limit > 0 ? tr("laid to about %1").arg(mm_words(limit)) : tr("laid by the anchors");
    return (shift.mean_mm > 0 ? tr("On average the edge stands %1 further forward (%2; %3).")
                              : tr("On average the edge stands %1 further back (%2; %3)."))
        .arg(mm_words(std::abs(shift.mean_mm)), laid, range);
}

void OneOverOther::paint_edge(QPainter& painter, const QRectF& f) const {
    const QSize size = pair_.after.size();
    const auto at = [&](const QPointF& p) {
        return f.topLeft() + QPointF(p.x() / size.width() * f.width(), p.y() / size.height() * f.height());
    };
    if (pair_.shift && pair_.before_line.size() > 1 && pair_.after_line.size() > 1) {
        // What lies between the lines, as far as both run.
        QPolygonF between;
        for (const QPointF& p : pair_.before_line) between << at(p);
        const QPointF first = pair_.before_line.front() - pair_.after_line.front();
        const QPointF last = pair_.before_line.front() - pair_.after_line.back();
        const bool same_way = QPointF::dotProduct(first, first) < QPointF::dotProduct(last, last);
        for (qsizetype i = 0; i < pair_.after_line.size(); ++i)
            between << at(pair_.after_line[same_way ? pair_.after_line.size() - 1 - i : i]);
        QColor wash = mark_colours().found;
        wash.setAlpha(110);
        QPainterPath path;
        path.addPolygon(between);
        path.setFillRule(Qt::WindingFill);
        painter.fillPath(path, wash);
    }
    paint_mark(painter, pair_.before_line, size, f, mark_colours().anchor);
    paint_mark(painter, pair_.after_line, size, f, mark_colours().line);
    const double inset = measures().gap(2);
    // Beside the picture where there is room, so that the key hides nothing of it.
    const double key = inset * 4 + std::max(tag_size(painter, pair_.before_tag()).width(),
                                            tag_size(painter, pair_.after_tag()).width());
    QPointF corner = QPointF(f.left() > key + inset ? f.left() - key : f.left() + inset, f.top() + inset);
    for (const auto& [words, colour] : {QPair<QString, QColor>{pair_.before_tag(), mark_colours().anchor},
                                        {pair_.after_tag(), mark_colours().line}}) {
        paint_tag(painter, corner + QPointF(inset * 3, 0), words, Qt::AlignLeft);
        const double middle = corner.y() + tag_size(painter, words).height() / 2;
        painter.setPen(QPen(mark_colours().casing, 6));
        painter.drawLine(QPointF(corner.x(), middle), QPointF(corner.x() + inset * 2.4, middle));
        painter.setPen(QPen(colour, 3));
        painter.drawLine(QPointF(corner.x(), middle), QPointF(corner.x() + inset * 2.4, middle));
        corner.ry() += tag_size(painter, words).height() + inset / 2;
    }
}

void OneOverOther::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (pair_.before.isNull()) return;
    const QRectF f = fitted(pair_.before.size(), rect());
    if (before_.isNull()) {
        const QSize px = (f.size() * devicePixelRatioF()).toSize().expandedTo({1, 1});
        for (auto& [map, image] :
             {std::pair<QPixmap*, const QImage*>{&before_, &pair_.before}, {&after_, &pair_.after}}) {
            *map = QPixmap::fromImage(image->scaled(px, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
            map->setDevicePixelRatio(devicePixelRatioF());
        }
    }
    const bool later = show_ == Show::edge || later_;
    painter.drawPixmap(f.topLeft(), later ? after_ : before_);
    if (show_ == Show::edge) {
        paint_edge(painter, f);
    } else {
        if (lines_shown_)
            paint_mark(painter, later ? pair_.after_line : pair_.before_line, pair_.before.size(), f,
                       mark_colours().line);
        const double inset = measures().gap(2);
        paint_tag(painter, f.topLeft() + QPointF(inset, inset), later ? pair_.after_tag() : pair_.before_tag(),
                  Qt::AlignLeft);
        if (!turn_.isActive()) paint_tag(painter, f.topRight() + QPointF(-inset, inset), tr("stopped"), Qt::AlignRight);
    }
    paint_scale_bar(painter, f, pair_.px_per_mm * f.width() / pair_.before.width());
    if (hasFocus()) paint_focus(painter, f);
}

void OneOverOther::resizeEvent(QResizeEvent*) {
    before_ = after_ = {};
}

void OneOverOther::showEvent(QShowEvent*) {
    if (show_ == Show::turns && wanted_) turn_.start();
}

void OneOverOther::hideEvent(QHideEvent*) {
    turn_.stop();
}

void OneOverOther::pause_or_go() {
    wanted_ = !turn_.isActive();
    if (wanted_)
        turn_.start();
    else
        turn_.stop();
    update();
}

void OneOverOther::mousePressEvent(QMouseEvent* event) {
    if (show_ == Show::turns && event->button() == Qt::LeftButton) pause_or_go();
}

void OneOverOther::keyPressEvent(QKeyEvent* event) {
    if (show_ != Show::turns) return QWidget::keyPressEvent(event);
    switch (event->key()) {
        case Qt::Key_Space:
            return pause_or_go();
        case Qt::Key_Left:
        case Qt::Key_Right:
            wanted_ = false;
            turn_.stop();
            later_ = event->key() == Qt::Key_Right;
            return update();
        default:
            QWidget::keyPressEvent(event);
    }
}

void OneOverOther::focusInEvent(QFocusEvent*) {
    update();
}

void OneOverOther::focusOutEvent(QFocusEvent*) {
    update();
}

}  // namespace kempt::desk
