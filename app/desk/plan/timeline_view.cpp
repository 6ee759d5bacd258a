#include "desk/plan/timeline_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/plan/plan_words.h"
#include "desk/plan/timeline_painter.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

TimelineView::TimelineView(QWidget* parent) : QWidget(parent) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    take_height_from_width(this);
    connect(&look(), &Look::changed, this, [this] { update(); });
}

QFont TimelineView::words_font() const {
    QFont f = font();
    f.setPixelSize(measures().caption);
    return f;
}

TimelineSizes TimelineView::sizes_for(int width) const {
    const QFontMetricsF metrics(words_font());
    TimelineSizes sizes;
    sizes.width = width;
    sizes.row = std::max(26.0, metrics.height() * 1.7);
    sizes.gap = measures().gap(1);
    sizes.head = metrics.height() + 8;
    sizes.foot = metrics.height() + 8;
    double label = 0, result = metrics.horizontalAdvance(tr("as needed"));
    for (const care::Placed& placed : timeline_.order) {
        QString words = QStringLiteral("88  ") + strip_name(application_.tasks[placed.task]);
        if (application_.hands > 1) words += tr(" (person %1)").arg(placed.hand + 1);
        label = std::max(label, metrics.horizontalAdvance(words));
        QFont strong = words_font();
        strong.setBold(true);
        result = std::max(result, QFontMetricsF(strong).horizontalAdvance(result_words(placed)));
    }
    sizes.label = label + 3 * sizes.gap;
    sizes.result = result + 3 * sizes.gap;
    sizes.label_above = width - sizes.label - sizes.result < width * 0.45;
    return sizes;
}

void TimelineView::set_timeline(const QString& title, const care::Application& application,
                                const care::Timeline& timeline) {
    title_ = title;
    application_ = application;
    timeline_ = timeline;
    picked_ = -1;
    picture_ = layout_timeline(application_, timeline_, sizes_for(std::max(width(), 200)));
    setAccessibleName(title);
    QStringList words;
    for (int i = 0; i < picture_.strips.size(); ++i) words.append(words_of(i));
    words.append(tr("Rinse after %1.").arg(clock_words(timeline_.rinse_minutes)));
    setAccessibleDescription(words.join(QLatin1Char(' ')));
    updateGeometry();
    update();
}

QString TimelineView::words_of(int index) const {
    const TimelineStrip& strip = picture_.strips[index];
    const care::Placed& placed = timeline_.order[strip.placed];
    const auto half = [](double minutes) { return QLocale().toString(std::round(minutes * 2) / 2, 'g', 4); };
    QString who = strip.hand.isEmpty() ? QString() : QStringLiteral(", ") + strip.hand;
    return tr("%1. %2%3: from %4 to %5; carries it %6 to %7 min, needs %8 min: %9%10.")
        .arg(strip.order)
        .arg(strip.name, who, clock_words(placed.start_minutes), clock_words(placed.end_minutes),
             half(placed.least_minutes), half(placed.most_minutes),
             half(application_.tasks[placed.task].needed_minutes), strip.result)
        .arg(strip.within ? QString() : tr(", beyond what is tolerated"));
}

QSize TimelineView::sizeHint() const {
    return {measures().px(480), heightForWidth(measures().px(480))};
}

int TimelineView::heightForWidth(int width) const {
    return static_cast<int>(std::ceil(layout_timeline(application_, timeline_, sizes_for(width)).height));
}

void TimelineView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    picture_ = layout_timeline(application_, timeline_, sizes_for(width()));
}

void TimelineView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paint_timeline(painter, picture_, colours(), words_font(), hasFocus() ? picked_ : -1);
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours().focus, 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), measures().radius, measures().radius);
}

void TimelineView::mouseMoveEvent(QMouseEvent* event) {
    const int at = picture_.strip_at(event->position());
    if (at >= 0)
        QToolTip::showText(event->globalPosition().toPoint(), words_of(at), this);
    else
        QToolTip::hideText();
}

void TimelineView::keyPressEvent(QKeyEvent* event) {
    const int step = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    if (step == 0 || picture_.strips.isEmpty()) return QWidget::keyPressEvent(event);
    const int last = static_cast<int>(picture_.strips.size()) - 1;
    picked_ = picked_ < 0 ? (step > 0 ? 0 : last) : std::clamp(picked_ + step, 0, last);
    const QRectF band = picture_.strips[picked_].band;
    QToolTip::showText(mapToGlobal(band.bottomLeft().toPoint()), words_of(picked_), this);
    setAccessibleDescription(words_of(picked_));
    update();
}

}  // namespace kempt::desk
