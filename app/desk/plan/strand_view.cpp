#include "desk/plan/strand_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/plan/plan_words.h"
#include "desk/plan/strand_painter.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

double step_mm() {
    return look().length() == LengthUnit::inches ? 12.7 : 10;  // half an inch, a centimetre
}

}  // namespace

StrandView::StrandView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("The hair from scalp to ends, and what it has been through"));
    take_height_from_width(this);
    connect(&look(), &Look::changed, this, [this] { update(); });
}

QFont StrandView::words_font() const {
    QFont f = font();
    f.setPixelSize(measures().caption);
    return f;
}

StrandSizes StrandView::sizes_for(int width) const {
    const QFontMetricsF metrics(words_font());
    StrandSizes sizes;
    sizes.width = width;
    sizes.label_height = metrics.height();
    sizes.line_height = std::max(14.0, metrics.height() * 0.9);
    sizes.inches = look().length() == LengthUnit::inches;
    sizes.gentle_too = gentle_too_;
    return sizes;
}

void StrandView::show_hair(const care::ClientState& state, const std::vector<care::Carried>& carried,
                           const work::CarePlan& plan) {
    state_ = state;
    carried_ = carried;
    plan_ = plan;
    picture_ = layout_strand(state_, carried_, plan_, sizes_for(std::max(width(), 200)));
    pick(picked().from_mm);
    updateGeometry();
    update();
}

void StrandView::set_gentle_too(bool too) {
    gentle_too_ = too;
    show_hair(state_, carried_, plan_);
}

care::Span StrandView::picked() const {
    return {at_ * step_mm(), std::min((at_ + 1) * step_mm(), std::max(picture_.length_mm, step_mm()))};
}

void StrandView::pick(double mm) {
    const int last = std::max(0, static_cast<int>(std::ceil(picture_.length_mm / step_mm())) - 1);
    at_ = std::clamp(static_cast<int>(std::floor(mm / step_mm() + 1e-6)), 0, last);
    emit place_picked();
    update();
}

QSize StrandView::sizeHint() const {
    return {measures().px(420), heightForWidth(measures().px(420))};
}

int StrandView::heightForWidth(int width) const {
    return static_cast<int>(std::ceil(layout_strand(state_, carried_, plan_, sizes_for(width)).height));
}

void StrandView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    picture_ = layout_strand(state_, carried_, plan_, sizes_for(width()));
}

void StrandView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paint_strand(painter, picture_, colours(), words_font(), picked());
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours().focus, 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), measures().radius, measures().radius);
}

void StrandView::mousePressEvent(QMouseEvent* event) {
    pick(picture_.mm_of(event->position().x()));
}

void StrandView::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton) pick(picture_.mm_of(event->position().x()));
}

void StrandView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Right:
            return pick((at_ + 1) * step_mm());
        case Qt::Key_Left:
            return pick((at_ - 1) * step_mm());
        case Qt::Key_Home:
            return pick(0);
        case Qt::Key_End:
            return pick(picture_.length_mm);
        default:
            return QWidget::keyPressEvent(event);
    }
}

}  // namespace kempt::desk
