// Where everything of a chart goes.
#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "charts/chart_key.h"
#include "charts/chart_painter.h"

namespace kempt::charts {
namespace {

// In em (the height of a line of text).
constexpr double margin = 0.5;
constexpr double line = 1.25;
constexpr double lane = 1.7;             // service tags and the space below them
constexpr double axis_height = 1.8;      // date labels and their ticks
constexpr double least_plot_height = 4;  // below this, key and note give way
constexpr double ticks_apart = 2.4;

QFontMetricsF metrics_of(const QFont& font, QPaintDevice* device) {
    return device ? QFontMetricsF(font, device) : QFontMetricsF(font);
}

QVector<Point> usable(const ChartData& data) {
    QVector<Point> points;
    for (const Point& point : data.points)
        if (point.date.isValid() && std::isfinite(point.value)) points.append(point);
    return points;
}

QString empty_sentence(const ChartData& data, const speech::Speech& say) {
    if (!data.empty_text.isEmpty()) return say(data.empty_text);
    return say("No readings yet. Photograph this view with the gauge card, and its chart begins here.");
}

// Takes a heading of one or two lines from the top of the area.
double add_heading(Layout& layout, const ChartData& data, const ChartStyle& style, QPaintDevice* device,
                   const QRectF& inside) {
    QFont bold = style.font;
    bold.setBold(true);
    const QFontMetricsF strong = metrics_of(bold, device), plain = metrics_of(style.font, device);
    const double em = layout.em;
    const QString unit = unit_for_people(data.unit, style.speech), name = style.speech(data.value_name);
    const QString axis = unit.isEmpty() ? name : name + QStringLiteral(", ") + unit;
    double x = inside.left(), y = inside.top();
    const auto add = [&](const QString& text, const QFontMetricsF& metrics, bool is_strong) {
        const double width =
            std::min(std::ceil(metrics.horizontalAdvance(text)) + 1, std::max(0.0, inside.right() - x));
        Label label;
        label.rect = QRectF(x, y, width, line * em);
        label.text = metrics.elidedText(text, Qt::ElideRight, width);
        label.strong = is_strong;
        layout.heading.append(label);
        return width;
    };
    if (!data.title.isEmpty()) {
        const double width = add(style.speech(data.title), strong, true);
        if (axis.isEmpty()) return line * em;
        x += width + 0.8 * em;
        if (x + plain.horizontalAdvance(axis) + 1 > inside.right()) {
            x = inside.left();
            y += line * em;
        }
    }
    if (!axis.isEmpty()) add(axis, plain, false);
    return y - inside.top() + (axis.isEmpty() && data.title.isEmpty() ? 0 : line * em);
}

// First and last date of the plot: the visits, services near them, and as much of the forecast as leaves the visits
// two fifths of the width.
void add_dates(Layout& layout, const ChartData& data, const QVector<Point>& points) {
    const auto [first, last] = std::minmax_element(points.begin(), points.end(),
                                                   [](const Point& a, const Point& b) { return a.date < b.date; });
    QDate from = first->date, to = last->date;
    const qint64 span = std::max<qint64>(from.daysTo(to), 60);
    const QDate earliest = from.addDays(-span / 2), latest = to.addDays(span / 2);
    for (const ServiceMark& service : data.services) {
        if (service.date < earliest || service.date > latest) continue;
        from = std::min(from, service.date);
        to = std::max(to, service.date);
    }
    if (data.target && data.forecast) {
        const QDate limit = from.addDays(span * 5 / 2);
        const auto& range = *data.forecast;
        for (const auto& date : {range.earliest, range.middle, range.latest})
            if (date) to = std::max(to, std::min(*date, limit));
    }
    const qint64 days = from.daysTo(to);
    // Six weeks at least: one visit and the service of that week do not need a scale of days.
    const qint64 pad = std::max<qint64>({2, (days * 4 + 50) / 100, (42 - days) / 2});
    layout.from = from.addDays(-pad);
    layout.to = to.addDays(pad);
}

void add_values(Layout& layout, const ChartData& data, const QVector<Point>& points, int most) {
    double low = points.first().value, high = low;
    const auto take = [&](double value) {
        if (!std::isfinite(value)) return;
        low = std::min(low, value);
        high = std::max(high, value);
    };
    for (const Point& point : points) {
        take(point.value);
        take(std::min(point.low, point.value));
        take(std::max(point.high, point.value));
        for (const double shot : point.shots) take(shot);
    }
    if (data.target) take(*data.target);
    std::optional<double> floor_at, ceiling_at;
    if (low >= 0) floor_at = 0;
    if (data.unit == QStringLiteral("%") && high <= 100) ceiling_at = 100;
    if (data.noise) {
        take(data.noise->around - data.noise->half_width);
        take(data.noise->around + data.noise->half_width);
    }
    const double pad = (high - low) * 0.04;
    layout.values = value_axis(low - pad, high + pad, most, floor_at, ceiling_at);
}

// Value labels set the left side of the plot.
double add_value_labels(Layout& layout, double left, double top, double bottom, const ChartStyle& style,
                        const QFontMetricsF& metrics) {
    QVector<QString> texts;
    double width = 0;
    for (const double tick : layout.values.ticks) {
        texts.append(style.speech.locale().toString(tick, 'f', layout.values.decimals));
        width = std::max(width, std::ceil(metrics.horizontalAdvance(texts.last())) + 1);
    }
    layout.plot.setTop(top);
    layout.plot.setBottom(bottom);
    for (int i = 0; i < texts.size(); ++i) {
        Label label;
        label.text = texts[i];
        label.align = Qt::AlignRight | Qt::AlignVCenter;
        label.rect = QRectF(left, layout.y_of(layout.values.ticks[i]) - layout.em / 2, width, layout.em);
        // Only a plot of a line or two is too low for its ticks.
        if (!layout.value_labels.isEmpty() && label.rect.bottom() > layout.value_labels.last().rect.top()) continue;
        layout.value_labels.append(label);
    }
    return left + width + 0.6 * layout.em;
}

void add_date_labels(Layout& layout, const QRectF& inside, const ChartStyle& style, const QFontMetricsF& metrics) {
    const double em = layout.em;
    for (int most = std::clamp(static_cast<int>(layout.plot.width() / (3 * em)), 2, 13); most >= 1; --most) {
        layout.date_labels.clear();
        layout.date_xs.clear();
        auto ticks = date_ticks(layout.from, layout.to, most, style.speech);
        // Calendar steps may leave one more than one: the first alone is the last resort.
        if (most == 1) ticks.resize(1);
        double end = -1e9;
        bool apart = true;
        for (const DateTick& tick : ticks) {
            Label label;
            label.text = tick.label;
            label.align = Qt::AlignHCenter | Qt::AlignVCenter;
            const double width = std::ceil(metrics.horizontalAdvance(tick.label)) + 1;
            const double start = std::clamp(layout.x_of(tick.date) - width / 2, inside.left(),
                                            std::max(inside.left(), inside.right() - width));
            label.rect = QRectF(start, layout.plot.bottom() + 0.6 * em, width, em);
            apart = apart && start >= end + 0.5 * em;
            end = start + width;
            layout.date_labels.append(label);
            layout.date_xs.append(layout.x_of(tick.date));
        }
        if (apart) return;
    }
}

void add_empty(Layout& layout, const ChartData& data, const ChartStyle& style, const QRectF& inside) {
    Label label;
    label.text = empty_sentence(data, style.speech);
    label.align = Qt::AlignCenter;
    label.wrap = true;
    label.rect = inside;
    layout.empty = label;
}

QVector<ServiceMark> services_in(const Layout& layout, const ChartData& data) {
    QVector<ServiceMark> services;
    for (const ServiceMark& service : data.services)
        if (service.date >= layout.from && service.date <= layout.to && !service.label.isEmpty())
            services.append(service);
    return services;
}

// Key and note below the plot; gives their height.
double place_key(Layout& layout, const ChartData& data, const ChartStyle& style, bool letters, const QRectF& inside,
                 const QFontMetricsF& metrics) {
    const double em = layout.em;
    ChartData shown = data;
    shown.services = services_in(layout, data);
    layout.key = key_of(shown, style, letters);
    layout.note.clear();
    double height = flow_key(layout.key, inside.width(), metrics);
    if (const QString note = style.speech(data.note); !note.isEmpty()) {
        const QRectF wrapped = metrics.boundingRect(QRectF(0, 0, inside.width(), 1e6), Qt::TextWordWrap, note);
        Label label;
        label.text = note;
        label.align = Qt::AlignLeft | Qt::AlignTop;
        label.wrap = true;
        height += 0.35 * em;
        label.rect = QRectF(0, height, inside.width(), std::ceil(wrapped.height()) + 1);
        layout.note.append(label);
        height += label.rect.height();
    }
    const double top = inside.bottom() - height;
    for (KeyEntry& item : layout.key) {
        item.swatch.translate(inside.left(), top);
        item.label.rect.translate(inside.left(), top);
    }
    for (Label& label : layout.note) label.rect.translate(inside.left(), top);
    return height;
}

}  // namespace

double Layout::x_of(const QDate& date) const {
    const double days = static_cast<double>(from.daysTo(to));
    return plot.left() + (days > 0 ? static_cast<double>(from.daysTo(date)) / days : 0.5) * plot.width();
}

double Layout::y_of(double value) const {
    return plot.bottom() - (value - values.low) / (values.high - values.low) * plot.height();
}

QVector<QRectF> Layout::text_rects() const {
    QVector<QRectF> rects;
    if (empty) rects.append(empty->rect);
    for (const auto* labels : {&heading, &value_labels, &date_labels, &note})
        for (const Label& label : *labels) rects.append(label.rect);
    for (const ServiceTag& tag : tags) rects.append(tag.rect);
    for (const KeyEntry& item : key) rects.append(item.label.rect);
    return rects;
}

Layout lay_out(const ChartData& data, const QRectF& area, const ChartStyle& style, QPaintDevice* device) {
    const QFontMetricsF metrics = metrics_of(style.font, device);
    Layout layout;
    layout.area = area;
    layout.em = metrics.height();
    const double em = layout.em;
    QRectF inside = area.adjusted(margin * em, margin * em, -margin * em, -margin * em);
    inside.setWidth(std::max(1.0, inside.width()));
    inside.setHeight(std::max(1.0, inside.height()));

    double top = inside.top() + add_heading(layout, data, style, device, inside);
    const QVector<Point> points = usable(data);
    if (points.isEmpty()) {
        add_empty(layout, data, style, QRectF(inside.left(), top, inside.width(), std::max(em, inside.bottom() - top)));
        return layout;
    }
    add_dates(layout, data, points);
    const bool has_services = !services_in(layout, data).isEmpty();
    top += (has_services ? lane : 0.7) * em;

    // Letters need a key, the key needs room, and room decides the labels' width: first with, then without letters.
    for (const bool letters : {false, true}) {
        layout.value_labels.clear();
        double below = place_key(layout, data, style, letters, inside, metrics) + 0.4 * em;
        double bottom = inside.bottom() - below - axis_height * em;
        if (bottom - top < least_plot_height * em) {
            layout.key.clear();
            layout.note.clear();
            bottom = inside.bottom() - axis_height * em;
        }
        bottom = std::max(bottom, top + em);
        const int most = std::clamp(static_cast<int>((bottom - top) / (ticks_apart * em)) + 1, 2, 8);
        add_values(layout, data, points, most);
        const double left = add_value_labels(layout, inside.left(), top, bottom, style, metrics);
        layout.plot.setLeft(left);
        layout.plot.setRight(std::max(left + em, inside.right()));
        const Tags tags = service_tags(
            services_in(layout, data), [&](const QDate& date) { return layout.x_of(date); }, layout.plot.left(),
            layout.plot.right(), top - lane * em + 0.2 * em, metrics, style.speech);
        layout.tags = tags.tags;
        if (!tags.letters) break;
    }
    add_date_labels(layout, inside, style, metrics);
    return layout;
}

double good_height(const ChartData& data, double width, const ChartStyle& style, QPaintDevice* device) {
    const double em = metrics_of(style.font, device).height();
    // Laid out without want of height; what the plot then does not use is taken off again.
    const double ample = 200 * em;
    const Layout layout = lay_out(data, QRectF(0, 0, width, ample), style, device);
    if (layout.empty) return 8 * em;
    const double plot_height = std::clamp(width * 0.42, 9 * em, 20 * em);
    return std::ceil(ample - layout.plot.height() + plot_height);
}

std::optional<int> point_at(const Layout& layout, const ChartData& data, const QPointF& at, double reach) {
    std::optional<int> nearest;
    if (layout.plot.isNull()) return nearest;
    double best = reach;
    for (int i = 0; i < data.points.size(); ++i) {
        const Point& point = data.points[i];
        if (!point.date.isValid() || !std::isfinite(point.value)) continue;
        const double distance = std::hypot(layout.x_of(point.date) - at.x(), layout.y_of(point.value) - at.y());
        if (distance > best) continue;
        best = distance;
        nearest = i;
    }
    return nearest;
}

}  // namespace kempt::charts
