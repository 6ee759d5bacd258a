#include "desk/plan/timeline_layout.h"

#include <QObject>
#include <algorithm>
#include <cmath>

#include "desk/plan/plan_words.h"
#include "desk/translations/said.h"

namespace kempt::desk {
namespace {

// The smallest of the usual steps of a clock that leaves its figures room.
double tick_step(double px_per_minute, double least_px) {
    for (const double step : {1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0})
        if (step * px_per_minute >= least_px) return step;
    return 120;
}

}  // namespace

QString strip_name(const care::Task& task) {
    const QString part = said(word_of(task.part));
    return task.section.empty() ? part : QObject::tr("%1, %2").arg(said(task.section), part);
}

QString result_words(const care::Placed& placed) {
    QStringList words;
    const long under = std::lround(placed.under_percent), over = std::lround(placed.over_percent);
    if (under > 0) words.append(QObject::tr("%1 % under").arg(under));
    if (over > 0) words.append(QObject::tr("%1 % over").arg(over));
    return words.isEmpty() ? QObject::tr("as needed") : words.join(QStringLiteral(", "));
}

TimelinePicture layout_timeline(const care::Application& application, const care::Timeline& timeline,
                                const TimelineSizes& sizes) {
    TimelinePicture picture;
    picture.words_between = sizes.label_above;
    const double label = sizes.label_above ? 0 : sizes.label, words = sizes.label_above ? sizes.row * 0.7 : 0;
    const double right = sizes.label_above ? sizes.gap * 3 : sizes.result;
    picture.chart = {label, sizes.head, std::max(80.0, sizes.width - label - right), 0};
    // Under-processed hair would be ready after the rinse: that much is shown beyond it.
    double last = timeline.rinse_minutes;
    for (const care::Placed& placed : timeline.order)
        last = std::max(last, placed.end_minutes + application.tasks[placed.task].needed_minutes);
    picture.px_per_minute = picture.chart.width() / std::max(1.0, last);
    picture.rinse = picture.x_of(timeline.rinse_minutes);
    if (timeline.rinse_minutes > application.most_minutes)
        picture.earliest = picture.x_of(timeline.rinse_minutes - application.most_minutes);
    double y = sizes.head;
    for (std::size_t i = 0; i < timeline.order.size(); ++i) {
        const care::Placed& placed = timeline.order[i];
        const care::Task& task = application.tasks[placed.task];
        TimelineStrip strip;
        strip.order = static_cast<int>(i) + 1;
        strip.placed = i;
        strip.name = strip_name(task);
        if (application.hands > 1) strip.hand = QObject::tr("person %1").arg(placed.hand + 1);
        strip.result = result_words(placed);
        strip.within = placed.within;
        strip.start = picture.x_of(placed.start_minutes);
        strip.full = picture.x_of(placed.end_minutes);
        strip.first_ready = picture.x_of(placed.start_minutes + task.needed_minutes);
        strip.last_ready = picture.x_of(placed.end_minutes + task.needed_minutes);
        if (sizes.label_above) {
            strip.label = {0, y, sizes.width * 0.62, words};
            strip.result_box = {sizes.width * 0.62, y, sizes.width * 0.38, words};
        } else {
            strip.label = {0, y, label - sizes.gap * 2, sizes.row};
            strip.result_box = {picture.chart.right() + sizes.gap, y, right - sizes.gap, sizes.row};
        }
        strip.band = QRectF(QPointF(strip.start, y + words + 3), QPointF(picture.rinse, y + words + sizes.row - 3));
        picture.strips.append(strip);
        y += words + sizes.row + sizes.gap;
    }
    picture.chart.setBottom(y);
    const double step = tick_step(picture.px_per_minute, sizes.row * 2);
    for (double at = 0; at < timeline.rinse_minutes - step * 0.45; at += step)
        picture.ticks.append({picture.x_of(at), at});
    picture.height = y + sizes.foot;
    return picture;
}

int TimelinePicture::strip_at(const QPointF& at) const {
    for (int i = 0; i < strips.size(); ++i) {
        const double top = std::min(strips[i].label.top(), strips[i].band.top());
        if (at.y() >= top && at.y() <= strips[i].band.bottom() + 3) return i;
    }
    return -1;
}

}  // namespace kempt::desk
