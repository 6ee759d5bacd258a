// Two pictures of one place as the compare page shows them, and what all its views paint alike.
#pragma once

#include <QDate>
#include <QImage>
#include <QPolygonF>
#include <QString>
#include <optional>

#include "work/edge_shift.h"

QT_BEGIN_NAMESPACE
class QPainter;
QT_END_NAMESPACE

namespace kempt::desk {

struct PairOnShow {
    QImage before, after;               // of one size
    QPolygonF before_line, after_line;  // in picture pixels; may be empty
    QDate before_date, after_date;
    double px_per_mm = 0;                    // 0: not to scale, no bar
    QString before_words{}, after_words{};   // on the pictures; empty: before and after with their dates
    bool over = true;                        // pixel (x, y) is one place in both
    std::optional<work::EdgeShift> shift{};  // how far the edge has moved; none: cannot be told
    std::optional<double> laid_to_mm{};      // how far off the laying may be
    bool mirrored = false;                   // the later picture is shown as in a mirror

    [[nodiscard]] QString before_tag() const;
    [[nodiscard]] QString after_tag() const;
};

// Words on a dark tag, readable on any photo. corner: the top left one, or the top right with Qt::AlignRight.
// Wider than `room` they go on in the next line.
void paint_tag(QPainter& painter, QPointF corner, const QString& words, Qt::Alignment side, double room = 1e4);
[[nodiscard]] QSizeF tag_size(const QPainter& painter, const QString& words, double room = 1e4);
// The picture's line in its casing. `frame` is where the picture of `size` is painted.
void paint_mark(QPainter& painter, const QPolygonF& line, QSize size, const QRectF& frame, const QColor& colour);
// At the bottom left, no longer than a quarter of the frame.
void paint_scale_bar(QPainter& painter, const QRectF& frame, double px_per_mm);
// A ring inside the frame for whatever has the keyboard.
void paint_focus(QPainter& painter, const QRectF& frame);
// Where a picture of `size` stands when it is shown whole within `room`.
[[nodiscard]] QRectF fitted(QSize size, const QRectF& room);

}  // namespace kempt::desk
