#include "desk/widgets/chart_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

constexpr qsizetype most_heights = 32;  // own choice: a page asks for three or four widths

}  // namespace

ChartView::ChartView(QWidget* parent) : QWidget(parent) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    take_height_from_width(this);
    connect(&look(), &Look::changed, this, &ChartView::forget_layout);
}

void ChartView::set_data(const charts::ChartData& data) {
    data_ = data;
    shown_ = -1;
    setAccessibleName(tr("Chart: %1 %2").arg(said(data.title), said(data.value_name)));
    setAccessibleDescription(charts::in_words(data, speech_now()));
    forget_layout();
}

void ChartView::forget_layout() {
    heights_.clear();
    laid_out_ = {};
    updateGeometry();
    update();
}

// Words are measured again when they or their letters are others.
void ChartView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange ||
        event->type() == QEvent::LanguageChange || event->type() == QEvent::LocaleChange)
        forget_layout();
}

charts::ChartStyle ChartView::style_now() const {
    charts::ChartStyle style;
    style.speech = speech_now();
    style.font = font();
    style.font.setPixelSize(measures().caption);
    style.palette = colours().dark ? charts::dark_palette() : charts::light_palette();
    style.palette.ground = colours().surface;
    return style;
}

QSize ChartView::sizeHint() const {
    return {measures().px(420), heightForWidth(measures().px(420))};
}

int ChartView::heightForWidth(int width) const {
    // Layouts ask for the same few widths over and over; one answer lays the whole chart out.
    const int held = std::max(width, 120);
    const auto known = heights_.constFind(held);
    if (known != heights_.cend()) return *known;
    if (heights_.size() > most_heights) heights_.clear();  // a window that is drawn larger
    return *heights_.insert(held, static_cast<int>(std::ceil(charts::good_height(data_, held, style_now()))));
}

void ChartView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const charts::ChartStyle style = style_now();
    if (laid_out_ != size()) {
        layout_ = charts::lay_out(data_, QRectF(rect()).adjusted(4, 4, -4, -4), style, painter.device());
        laid_out_ = size();
    }
    charts::paint(painter, data_, layout_, style);
    if (!hasFocus()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours().focus, 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), measures().radius, measures().radius);
    if (shown_ >= 0 && shown_ < data_.points.size() && !layout_.plot.isNull())
        painter.drawEllipse(QPointF(layout_.x_of(data_.points[shown_].date), layout_.y_of(data_.points[shown_].value)),
                            9, 9);
}

QString ChartView::words_of_point(int index) const {
    const charts::Point& p = data_.points[index];
    const double half = (p.high - p.low) / 2;
    QString words = tr("%1: %2").arg(date_words(p.date), said(plain_value(p.value, half, data_.unit)));
    if (!p.shots.isEmpty()) words += tr(", %1").arg(counted(p.shots.size(), tr("shot"), tr("shots")));
    if (!p.comparable) words += tr(", not comparable");
    return words;
}

void ChartView::mouseMoveEvent(QMouseEvent* event) {
    const auto index = charts::point_at(layout_, data_, event->position(), 16);
    if (index)
        QToolTip::showText(event->globalPosition().toPoint(), words_of_point(*index), this);
    else
        QToolTip::hideText();
}

// Left and right walk the visits in order of date; what is found is told in words.
void ChartView::keyPressEvent(QKeyEvent* event) {
    const int step = event->key() == Qt::Key_Right ? 1 : event->key() == Qt::Key_Left ? -1 : 0;
    if (step == 0 || data_.points.isEmpty() || layout_.plot.isNull()) return QWidget::keyPressEvent(event);
    QVector<int> order(data_.points.size());
    for (int i = 0; i < order.size(); ++i) order[i] = i;
    std::sort(order.begin(), order.end(), [this](int a, int b) { return data_.points[a].date < data_.points[b].date; });
    const qsizetype count = order.size();
    const qsizetype now = order.indexOf(shown_);
    shown_ = order[std::clamp<qsizetype>(now < 0 ? (step > 0 ? 0 : count - 1) : now + step, 0, count - 1)];
    const charts::Point& p = data_.points[shown_];
    QToolTip::showText(
        mapToGlobal(QPoint(static_cast<int>(layout_.x_of(p.date)), static_cast<int>(layout_.y_of(p.value)))),
        words_of_point(shown_), this);
    setAccessibleDescription(words_of_point(shown_) + QLatin1Char(' ') + charts::in_words(data_, speech_now()));
    update();
}

}  // namespace kempt::desk
