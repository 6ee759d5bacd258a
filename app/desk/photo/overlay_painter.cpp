#include "desk/photo/overlay_painter.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

#include "desk/look/colours.h"
#include "desk/look/look.h"
#include "desk/photo/strokes.h"
#include "desk/translations/said.h"
#include "domain/measure_units.h"

namespace kempt::desk {
namespace {

constexpr int tint_alpha = 70;  // of a filled zone: the hair under it is still seen

const QVector<double> doubtful_dashes = {2.2, 1.8}, soft_dashes = {4, 2.5};

QColor tint(QColor c) {
    c.setAlpha(tint_alpha);
    return c;
}

QColor thin_white() {
    QColor c = mark_colours().found;
    c.setAlpha(150);
    return c;
}

void draw_cover(QPainter& painter, const ViewMap& map, const Cover& cover) {
    if (cover.tint.isNull()) return;
    painter.drawImage(
        QRectF(map.window_from_photo(cover.where.topLeft()), map.window_from_photo(cover.where.bottomRight())),
        cover.tint);
}

// A short barb at the end of a line, so that its direction is seen.
QPainterPath arrow(const QPolygonF& line, double size) {
    QPainterPath path = path_of(line);
    if (line.size() < 2) return path;
    const QPointF tip = line.last();
    QLineF back(tip, line[line.size() - 2]);
    if (back.length() <= 0) return path;
    for (const double angle : {28.0, -28.0}) {
        QLineF barb = back;
        barb.setLength(size);
        barb.setAngle(back.angle() + angle);
        path.moveTo(tip);
        path.lineTo(barb.p2());
    }
    return path;
}

void draw_shine(QPainter& painter, const ViewMap& map, const ShineOverlay& shine, double s) {
    const MarkColours& c = mark_colours();
    if (shine.half_zone.size() > 2) {
        const QPainterPath zone = path_of(on_window(map, shine.half_zone), true);
        painter.fillPath(zone, tint(c.region));
        cased(painter, zone, c.region, 1 * s);
    }
    cased(painter, arrow(on_window(map, shine.axis), 10 * s), thin_white(), 1.2 * s);
    cased(painter, path_of(on_window(map, shine.crest)), c.found, 2.2 * s);
}

void label(QPainter& painter, QPointF at, const QString& words, double s) {
    QFont font = painter.font();
    font.setPixelSize(static_cast<int>(12.5 * s));
    painter.setFont(font);
    const QRectF ink = QFontMetricsF(font).boundingRect(words);
    const QRectF box = QRectF(at + QPointF(8 * s, -ink.height() / 2 - 2), QSizeF(ink.width() + 10, ink.height() + 4));
    painter.setPen(Qt::NoPen);
    painter.setBrush(mark_colours().casing);
    painter.drawRoundedRect(box, 4, 4);
    painter.setPen(mark_colours().found);
    painter.drawText(box, Qt::AlignCenter, words);
}

void draw_tone(QPainter& painter, const ViewMap& map, const ToneOverlay& tone, double s) {
    if (tone.lane.size() > 2) cased(painter, path_of(on_window(map, tone.lane), true), thin_white(), 1 * s);
    for (const ToneLine& line : tone.lines) {
        const QPolygonF tick = on_window(map, {line.tick.p1(), line.tick.p2()});
        cased(painter, path_of(tick), mark_colours().warning, 2.2 * s);
    }
}

void draw_ends(QPainter& painter, const ViewMap& map, const EndsOverlay& ends, double s) {
    const MarkColours& c = mark_colours();
    draw_cover(painter, map, ends.cover);
    cased(painter, path_of(on_window(map, ends.silhouette), true), thin_white(), 1 * s);
    cased(painter, path_of(on_window(map, ends.smooth_hem)), c.found, 1.6 * s, soft_dashes);
    cased(painter, path_of(on_window(map, ends.hem)), c.line, 2 * s);
}

void open_end(QPainter& painter, QPointF at, const QColor& core, double s) {
    QPainterPath ring;
    ring.addEllipse(at, 5 * s, 5 * s);
    cased(painter, ring, core, 1.8 * s);
}

void draw_strand(QPainter& painter, const ViewMap& map, const ShownStrand& strand, double width, double s) {
    const QColor core = strand_colours()[strand.colour % strand_colours().size()];
    cased(painter, path_of(on_window(map, strand.path)), core, width,
          strand.doubtful ? doubtful_dashes : QVector<double>(), 2);  // many lie close: a thin casing
    for (const QPointF& end : strand.open_ends) open_end(painter, map.window_from_photo(end), core, s);
}

void draw_strands(QPainter& painter, const ViewMap& map, const StrandsOverlay& found, double s) {
    for (const QPolygonF& line : found.unresolved) striped(painter, path_of(on_window(map, line)), 4 * s);
    // The longest lie lowest, so that short ones are not hidden.
    for (const ShownStrand& strand : found.strands) draw_strand(painter, map, strand, 1.6 * s, s);
}

}  // namespace

void paint_overlay(QPainter& painter, const ViewMap& map, const Overlay& overlay, const QVector<ReadingGroup>& groups,
                   double s) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const ReadingGroup group : groups) switch (group) {
            case ReadingGroup::edges:
                draw_cover(painter, map, overlay.edges.cover);
                break;
            case ReadingGroup::shine:
                if (overlay.shine) draw_shine(painter, map, *overlay.shine, s);
                break;
            case ReadingGroup::tone:
                if (overlay.tone) draw_tone(painter, map, *overlay.tone, s);
                break;
            case ReadingGroup::ends:
                if (overlay.ends) draw_ends(painter, map, *overlay.ends, s);
                break;
            case ReadingGroup::combings:
                if (overlay.combings) draw_strands(painter, map, *overlay.combings, s);
                break;
            case ReadingGroup::pattern:
                if (overlay.pattern) draw_strands(painter, map, *overlay.pattern, s);
                break;
        }
    painter.restore();
}

void paint_overlay_words(QPainter& painter, const ViewMap& map, const Overlay& overlay, double s) {
    if (!overlay.tone) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const ToneLine& line : overlay.tone->lines) {
        const QPolygonF tick = on_window(map, {line.tick.p1(), line.tick.p2()});
        label(painter, tick[0].x() > tick[1].x() ? tick[0] : tick[1],
              in_figures(
                  plain_value(line.at_mm, (line.at_high - line.at_low) / 2, QStringLiteral("mm"), look().length())),
              s);
    }
    painter.restore();
}

void paint_strand_picked(QPainter& painter, const ViewMap& map, const ShownStrand& strand, double s) {
    painter.setRenderHint(QPainter::Antialiasing);
    const QPainterPath path = path_of(on_window(map, strand.path));
    // A white lane with the strand in it: told from every colour, on hair and on paper.
    cased(painter, path, mark_colours().found, 9 * s);
    draw_strand(painter, map, strand, 3.4 * s, s);
}

void paint_sample(QPainter& painter, const QRectF& box, Sample sample, double s) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const MarkColours& c = mark_colours();
    const QPointF left(box.left() + 3 * s, box.center().y()), right(box.right() - 3 * s, box.center().y());
    const QPainterPath line = path_of(QPolygonF{left, right});
    const QRectF inner = box.adjusted(2, 2, -2, -2);
    const auto outlined = [&](const QColor& core) { cased(painter, path_of(QPolygonF(inner), true), core, 1.2 * s); };
    QColor cover = c.cover;
    cover.setAlpha(150);
    switch (sample) {
        case Sample::band:
        case Sample::lane:
        case Sample::silhouette:
            outlined(c.found);
            break;
        case Sample::region:
            outlined(c.region);
            break;
        case Sample::cover:
            painter.fillRect(inner, cover);
            break;
        case Sample::half_zone:
            painter.fillRect(inner, tint(c.region));
            outlined(c.region);
            break;
        case Sample::crest:
            cased(painter, line, c.found, 2.2 * s);
            break;
        case Sample::axis:
            cased(painter, arrow({left, right}, 7 * s), c.found, 1.2 * s);
            break;
        case Sample::demarcation:
            cased(painter, line, c.warning, 2.2 * s);
            break;
        case Sample::hem:
            cased(painter, line, c.line, 2 * s);
            break;
        case Sample::smooth_hem:
            cased(painter, line, c.found, 1.6 * s, soft_dashes);
            break;
        case Sample::strand:
            cased(painter, line, strand_colours()[0], 2 * s);
            break;
        case Sample::doubtful:
            cased(painter, line, strand_colours()[1], 2 * s, doubtful_dashes);
            break;
        case Sample::cut_off:
            cased(painter, path_of(QPolygonF{left, right - QPointF(5 * s, 0)}), strand_colours()[4], 2 * s);
            open_end(painter, right - QPointF(4 * s, 0), strand_colours()[4], s * 0.8);
            break;
        case Sample::unresolved:
            striped(painter, line, 4 * s);
            break;
        case Sample::taken_out: {
            const QPointF d(4.5 * s, 4.5 * s), e(4.5 * s, -4.5 * s), middle = box.center();
            QPainterPath mark = path_of(QPolygonF{middle - d, middle + d});
            mark.addPath(path_of(QPolygonF{middle - e, middle + e}));
            cased(painter, mark, c.warning, 2.2);
            break;
        }
        case Sample::joined:
            cased(painter, line, c.warning, 1.6 * s, {2, 2});
            break;
        case Sample::whole:
            cased(painter, tick_at(box.center(), 5 * s), c.warning, 2.2);
            break;
    }
    painter.restore();
}

}  // namespace kempt::desk
