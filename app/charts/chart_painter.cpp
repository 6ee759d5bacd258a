#include "charts/chart_painter.h"

#include <QPaintEngine>
#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <cmath>

namespace kempt::charts {
namespace {

// Widths and sizes in em.
constexpr double hairline = 0.05;
constexpr double thin = 0.08;
constexpr double stroke = 0.13;

class Drawing {
  public:
    Drawing(QPainter& painter, const ChartData& data, const ChartStyle& style, const Layout& layout)
        : p_(painter), data_(data), c_(style.palette), font_(style.font), l_(layout), em_(layout.em) {
        for (const Point& point : data.points)
            if (point.date.isValid() && std::isfinite(point.value)) points_.append(point);
        std::stable_sort(points_.begin(), points_.end(),
                         [](const Point& a, const Point& b) { return a.date < b.date; });
        double room = layout.plot.width();
        for (int i = 1; i < points_.size(); ++i)
            room = std::min(room, layout.x_of(points_[i].date) - layout.x_of(points_[i - 1].date));
        radius_ = std::clamp(0.35 * room, 0.13 * em_, 0.3 * em_);
    }

    void all() {
        p_.fillRect(l_.area, c_.ground);
        for (const Label& label : l_.heading) text(label, label.strong ? c_.ink : c_.ink_soft);
        if (l_.empty) {
            text(*l_.empty, c_.ink_soft);
            return;
        }
        grid();
        p_.save();
        p_.setClipRect(l_.plot.adjusted(-radius_, -radius_, radius_, radius_), Qt::IntersectClip);
        band();
        trend();
        services();
        target();
        joined();
        for (const Point& point : points_) visit(point);
        p_.restore();
        tags();
        for (const Label& label : l_.value_labels) text(label, c_.ink_soft);
        for (const Label& label : l_.date_labels) text(label, c_.ink_soft);
        for (const KeyEntry& item : l_.key) {
            swatch(item);
            text(item.label, c_.ink_soft);
        }
        for (const Label& label : l_.note) text(label, c_.ink_soft);
    }

  private:
    QPen pen(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) const {
        QPen result(colour, width * em_, style);
        result.setCapStyle(Qt::FlatCap);
        return result;
    }

    QPen dashes(const QColor& colour, double width, const QVector<double>& pattern) const {
        QPen result = pen(colour, width);
        result.setDashPattern(pattern);
        return result;
    }

    QPen dotted() const { return dashes(c_.band_edge, thin, {1.5, 2.5}); }
    QPen target_pen() const { return dashes(c_.target, stroke, {6, 3}); }
    QPen service_pen() const { return dashes(c_.service, hairline, {4, 5}); }

    void text(const Label& label, const QColor& colour) {
        QFont font = font_;
        font.setBold(label.strong);
        p_.setFont(font);
        p_.setPen(colour);
        // Without a clip: the layout measured the text, and a descender may stand over by a fraction.
        p_.drawText(label.rect, static_cast<int>(label.align) | (label.wrap ? Qt::TextWordWrap : 0) | Qt::TextDontClip,
                    label.text);
    }

    void across(double y) { p_.drawLine(QPointF(l_.plot.left(), y), QPointF(l_.plot.right(), y)); }

    void grid() {
        for (const double tick : l_.values.ticks) {
            p_.setPen(pen(c_.grid, hairline));
            across(l_.y_of(tick));
        }
        p_.setPen(pen(c_.ink_soft, thin));
        across(l_.plot.bottom());
        for (const double x : l_.date_xs)
            p_.drawLine(QPointF(x, l_.plot.bottom()), QPointF(x, l_.plot.bottom() + 0.35 * em_));
    }

    void band() {
        if (!data_.noise) return;
        const double upper = l_.y_of(data_.noise->around + data_.noise->half_width);
        const double lower = l_.y_of(data_.noise->around - data_.noise->half_width);
        const QRectF rect = QRectF(QPointF(l_.plot.left(), upper), QPointF(l_.plot.right(), lower)) & l_.plot;
        p_.fillRect(rect, c_.band);
        p_.setPen(dotted());
        for (const double y : {upper, lower})
            if (y >= l_.plot.top() && y <= l_.plot.bottom()) across(y);
    }

    QPointF on_trend(const QDate& date, double per_day) const {
        const auto days = static_cast<double>(data_.trend->pivot_date.daysTo(date));
        return {l_.x_of(date), l_.y_of(data_.trend->pivot_value + per_day * days)};
    }

    void trend() {
        if (!data_.trend || !data_.trend->pivot_date.isValid()) return;
        const TrendLine& line = *data_.trend;
        const QDate first = points_.first().date, last = points_.last().date;
        p_.save();
        p_.setClipRect(l_.plot, Qt::IntersectClip);
        if (line.per_day_low && line.per_day_high) {
            QPainterPath fan;
            fan.moveTo(on_trend(first, *line.per_day_low));
            fan.lineTo(on_trend(last, *line.per_day_low));
            fan.lineTo(on_trend(last, *line.per_day_high));
            fan.lineTo(on_trend(first, *line.per_day_high));
            fan.closeSubpath();
            // PDF/A-1 knows no transparency: the wash would hide the points there, so the two edges must do.
            if (p_.paintEngine()->type() != QPaintEngine::Pdf) {
                QColor wash = c_.trend;
                wash.setAlphaF(0.16F);
                p_.fillPath(fan, wash);
            }
            p_.setPen(pen(c_.trend, hairline));
            p_.drawLine(on_trend(first, *line.per_day_low), on_trend(last, *line.per_day_low));
            p_.drawLine(on_trend(first, *line.per_day_high), on_trend(last, *line.per_day_high));
        }
        p_.setPen(pen(c_.trend, stroke));
        p_.drawLine(on_trend(first, line.per_day), on_trend(last, line.per_day));
        if (data_.forecast && data_.forecast->middle && data_.target) {
            p_.setPen(dashes(c_.trend, thin, {2, 3}));
            p_.drawLine(on_trend(last, line.per_day), on_trend(*data_.forecast->middle, line.per_day));
        }
        p_.restore();
    }

    void services() {
        p_.setPen(service_pen());
        double before = -1e9;
        for (const ServiceTag& tag : l_.tags)
            for (const double x : tag.xs) {
                // Closer lines would grow into a hatching that hides the readings.
                if (x - before < 0.35 * em_) continue;
                before = x;
                p_.drawLine(QPointF(x, tag.rect.bottom()), QPointF(x, l_.plot.bottom()));
            }
    }

    void target() {
        if (!data_.target) return;
        const double y = l_.y_of(*data_.target);
        p_.setPen(target_pen());
        across(y);
        if (!data_.forecast) return;
        const ForecastRange& range = *data_.forecast;
        const std::optional<QDate> start = range.earliest ? range.earliest : range.middle;
        if (!start || *start > l_.to) return;
        const bool open = !range.latest || *range.latest > l_.to;
        const double left = l_.x_of(*start), right = open ? l_.plot.right() : l_.x_of(*range.latest);
        forecast_bar(left, right, y, open);
        if (range.middle && *range.middle <= l_.to) diamond({l_.x_of(*range.middle), y}, 0.38 * em_);
    }

    void forecast_bar(double left, double right, double y, bool open) {
        p_.setPen(pen(c_.target, 0.3));
        p_.drawLine(QPointF(left, y), QPointF(open ? right - 0.4 * em_ : right, y));
        p_.setPen(pen(c_.target, stroke));
        p_.drawLine(QPointF(left, y - 0.45 * em_), QPointF(left, y + 0.45 * em_));
        if (open) {
            QPainterPath head;
            head.moveTo(right, y);
            head.lineTo(right - 0.7 * em_, y - 0.45 * em_);
            head.lineTo(right - 0.7 * em_, y + 0.45 * em_);
            head.closeSubpath();
            p_.fillPath(head, c_.target);
        } else {
            p_.drawLine(QPointF(right, y - 0.45 * em_), QPointF(right, y + 0.45 * em_));
        }
    }

    void diamond(const QPointF& at, double half) {
        QPainterPath path;
        path.moveTo(at.x(), at.y() - half);
        path.lineTo(at.x() + half, at.y());
        path.lineTo(at.x(), at.y() + half);
        path.lineTo(at.x() - half, at.y());
        path.closeSubpath();
        p_.setPen(pen(c_.target, thin));
        p_.setBrush(c_.ground);
        p_.drawPath(path);
        p_.setBrush(Qt::NoBrush);
    }

    QPointF place(const Point& point) const { return {l_.x_of(point.date), l_.y_of(point.value)}; }

    void joined() {
        p_.setPen(pen(c_.reading, thin));
        const Point* before = nullptr;
        for (const Point& point : points_) {
            if (!point.comparable) continue;
            if (before) p_.drawLine(place(*before), place(point));
            before = &point;
        }
    }

    void visit(const Point& point) {
        const QPointF at = place(point);
        if (point.high > point.low) {
            p_.setPen(pen(c_.reading, thin));
            const double upper = l_.y_of(point.high), lower = l_.y_of(point.low);
            p_.drawLine(QPointF(at.x(), upper), QPointF(at.x(), lower));
            const double cap = 0.6 * radius_;
            for (const double y : {upper, lower}) p_.drawLine(QPointF(at.x() - cap, y), QPointF(at.x() + cap, y));
        }
        // Beside the mean, so that neither hides the other; on it where visits stand close.
        if (point.shots.size() > 1) {
            p_.setPen(Qt::NoPen);
            p_.setBrush(c_.shot);
            const double aside = radius_ >= 0.25 * em_ ? 1.9 * radius_ : 0;
            const double size = std::max(0.45 * radius_, 0.08 * em_);
            for (const double shot : point.shots)
                if (std::isfinite(shot)) p_.drawEllipse(QPointF(at.x() + aside, l_.y_of(shot)), size, size);
        }
        disc(at, radius_, point.comparable);
    }

    void disc(const QPointF& at, double radius, bool full) {
        p_.setPen(pen(full ? c_.ground : c_.reading, full ? hairline : thin));
        p_.setBrush(full ? c_.reading : c_.ground);
        p_.drawEllipse(at, radius, radius);
        p_.setBrush(Qt::NoBrush);
    }

    void tag(const QRectF& rect, const QString& letters) {
        QPainterPath path;
        path.addRoundedRect(rect, 0.25 * em_, 0.25 * em_);
        p_.fillPath(path, c_.ground);
        p_.setPen(pen(c_.service, thin));
        p_.drawPath(path);
        Label label;
        label.rect = rect;
        label.text = letters;
        label.align = Qt::AlignCenter;
        text(label, c_.service);
    }

    void tags() {
        for (const ServiceTag& item : l_.tags) {
            // Stems of joined tags may stand outside the tag: a bar holds them together.
            if (item.xs.size() > 1) {
                p_.setPen(pen(c_.service, thin));
                p_.drawLine(QPointF(std::min(item.xs.first(), item.rect.center().x()), item.rect.bottom()),
                            QPointF(std::max(item.xs.last(), item.rect.center().x()), item.rect.bottom()));
            }
            tag(item.rect, item.text);
        }
    }

    void swatch(const KeyEntry& item) {
        const QRectF box = item.swatch.adjusted(0, 0.2 * em_, 0, -0.2 * em_);
        const QPointF middle = box.center();
        const auto level = [&] { p_.drawLine(QPointF(box.left(), middle.y()), QPointF(box.right(), middle.y())); };
        switch (item.mark) {
            case KeyMark::reading:
                p_.setPen(pen(c_.reading, thin));
                p_.drawLine(QPointF(middle.x(), box.top()), QPointF(middle.x(), box.bottom()));
                disc(middle, 0.25 * em_, true);
                break;
            case KeyMark::excluded:
                disc(middle, 0.25 * em_, false);
                break;
            case KeyMark::band:
                p_.fillRect(box, c_.band);
                p_.setPen(dotted());
                p_.drawLine(box.topLeft(), box.topRight());
                p_.drawLine(box.bottomLeft(), box.bottomRight());
                break;
            case KeyMark::target:
                p_.setPen(target_pen());
                level();
                break;
            case KeyMark::trend:
                p_.setPen(pen(c_.trend, stroke));
                level();
                break;
            case KeyMark::forecast:
                forecast_bar(box.left() + thin * em_, box.right() - thin * em_, middle.y(), false);
                break;
            case KeyMark::service: {
                const double width = 1.1 * em_;
                tag(QRectF(middle.x() - width / 2, item.swatch.center().y() - 0.525 * em_, width, 1.05 * em_),
                    item.letter);
                break;
            }
        }
    }

    QPainter& p_;
    const ChartData& data_;
    const Palette& c_;
    const QFont& font_;
    const Layout& l_;
    double em_;
    double radius_ = 1;
    QVector<Point> points_;  // by date
};

}  // namespace

Layout paint(QPainter& painter, const ChartData& data, const QRectF& area, const ChartStyle& style) {
    Layout layout = lay_out(data, area, style, painter.device());
    paint(painter, data, layout, style);
    return layout;
}

void paint(QPainter& painter, const ChartData& data, const Layout& layout, const ChartStyle& style) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    Drawing(painter, data, style, layout).all();
    painter.restore();
}

}  // namespace kempt::charts
