// Draws what was measured over the photo.
#pragma once

#include <QPainter>
#include <optional>

#include "desk/photo/overlay.h"
#include "desk/photo/view_map.h"
#include "domain/readings.h"

namespace kempt::desk {

// What lies under the marks: tints and traced lines of these groups. scale: of strokes, follows the text size.
void paint_overlay(QPainter& painter, const ViewMap& map, const Overlay& overlay, const QVector<ReadingGroup>& groups,
                   double scale);
// What is written on the photo: above the marks, so that none crosses it.
void paint_overlay_words(QPainter& painter, const ViewMap& map, const Overlay& overlay, double scale);
// The strand that the person points at, above all others.
void paint_strand_picked(QPainter& painter, const ViewMap& map, const ShownStrand& strand, double scale);

// A sample of a stroke or a tint for the legend, as the overlay draws it.
enum class Sample {
    band,
    cover,
    region,
    crest,
    half_zone,
    axis,
    lane,
    demarcation,
    hem,
    smooth_hem,
    silhouette,
    strand,
    doubtful,
    cut_off,
    unresolved,
    taken_out,
    joined,
    whole
};
void paint_sample(QPainter& painter, const QRectF& box, Sample sample, double scale);

}  // namespace kempt::desk
