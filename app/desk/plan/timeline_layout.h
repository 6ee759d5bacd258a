// Where the order of work is drawn: one strip a part of a head section, all of them running to the rinse. No painting.
//
// Every height within a strip is a hair: the lowest gets the product with the first stroke, the highest with the last.
// So a strip begins as a wedge as wide as the minutes of application, and its hair is ready along a line parallel to
// that edge, the needed minutes later. Where the ready line lies before the rinse, hair is over-processed; where it
// lies beyond, under-processed.
#pragma once

#include <QRectF>
#include <QString>
#include <QVector>

#include "care/timeline.h"

namespace kempt::desk {

struct TimelineSizes {
    double width = 600, row = 34, gap = 6, label = 200, result = 150, head = 30, foot = 26;
    bool label_above = false;  // narrow: the words stand over their strip
};

struct TimelineStrip {
    int order = 0;           // 1: begun first
    std::size_t placed = 0;  // index into Timeline::order
    QString name, hand;      // "mid-shaft of nape"; "person 2", empty with one pair of hands
    QString result;          // "12 % over"
    bool within = true;
    QRectF label, band, result_box;          // band: from the first stroke to the rinse
    double start = 0, full = 0;              // x of the first and the last stroke
    double first_ready = 0, last_ready = 0;  // x where the first and the last hair are ready; may lie beyond the rinse
};

struct TimelinePicture {
    QVector<TimelineStrip> strips;
    double height = 0, rinse = 0;  // x of the rinse
    double earliest = -1;          // x before which no stroke may fall, by the maker's maximum; -1: before it all
    QVector<QPair<double, double>> ticks;  // x, minutes
    QRectF chart;
    bool words_between = false;  // over each strip, across the chart: no line runs through them
    double px_per_minute = 1;
    [[nodiscard]] double x_of(double minutes) const { return chart.left() + minutes * px_per_minute; }
    [[nodiscard]] int strip_at(const QPointF& at) const;  // -1: none
};

[[nodiscard]] TimelinePicture layout_timeline(const care::Application& application, const care::Timeline& timeline,
                                              const TimelineSizes& sizes);

// "just right", "up to 12 % over", "up to 8 % under, 5 % over"
[[nodiscard]] QString result_words(const care::Placed& placed);
[[nodiscard]] QString strip_name(const care::Task& task);

}  // namespace kempt::desk
