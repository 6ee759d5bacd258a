// What a measurement found, as plain values in photo pixels, ready to be drawn over the photo and beside it. Prepared
// on the worker.
#pragma once

#include <QColor>
#include <QLineF>
#include <QPolygonF>
#include <QString>
#include <QVector>
#include <optional>

#include "desk/photo/picture.h"

namespace kempt::desk {

struct EdgesOverlay {
    QPolygonF band;
    Cover cover;  // only when asked for
};

struct ShineOverlay {
    QPolygonF outline, crest, half_zone, axis;
    // Light along the fibres, one value each step_mm: all of it, and of it the surface highlight.
    QVector<double> total, surface;
    double step_mm = 0;
    double base_first = 0, base_last = 0;     // ends of the straight line below the highlight (the dull light)
    double half_from_mm = 0, half_to_mm = 0;  // where the highlight stands above half its height
};

struct ToneSwatch {
    QColor colour;
    double lightness = 0, a = 0, b = 0;  // CIE L*, a*, b*
};
struct ToneLine {
    double step = 0, step_low = 0, step_high = 0;  // CIEDE2000
    double at_mm = 0, at_low = 0, at_high = 0;     // from the scalp
    double width_mm = 0;
    QLineF tick;  // across the lane
    // How long hair takes to grow that far, 95 %; 0: cannot be told.
    double weeks_low = 0, weeks_high = 0;
};
struct ToneOverlay {
    std::optional<ToneSwatch> root, mid, end;
    QPolygonF lane, path;
    QVector<QColor> profile;  // each step_mm
    double step_mm = 0, length_mm = 0;
    double mixed_over_mm = 0;  // width of the lane, where it is a wide one for mixed hair
    QVector<ToneLine> lines;
};

struct EndsOverlay {
    QPolygonF hem, smooth_hem, silhouette;
    Cover cover;
};

struct ShownStrand {
    QPolygonF path;  // from end to end
    double length_mm = 0, low = 0, high = 0;
    bool doubtful = false, cut_off = false, perhaps_longer = false;
    bool looks_torn = false;                       // at an end; she may say that it is whole
    QVector<QPointF> open_ends;                    // where a cut-off strand goes on unseen
    int colour = 0;                                // of strand_colours()
    double curve_diameter_mm = 0, wave_ratio = 0;  // of a pattern's strand; 0: not measured
};
struct StrandsOverlay {
    QVector<ShownStrand> strands;   // longest first
    QVector<QPolygonF> unresolved;  // dark lines that belong to no strand
    int parts = 0;                  // strands that the count takes for parts of others
};

struct Overlay {
    EdgesOverlay edges;
    std::optional<ShineOverlay> shine;
    std::optional<ToneOverlay> tone;
    std::optional<EndsOverlay> ends;
    std::optional<StrandsOverlay> combings, pattern;
};

// A colour for each strand out of `colours`: strands that come near each other get different ones as long as there are
// enough, and all are used alike. near_px: how near.
[[nodiscard]] QVector<int> colours_for(const QVector<QPolygonF>& paths, int colours, double near_px);

// A point on a strand that means it and no other: the one of its path that lies farthest from all others.
[[nodiscard]] QPointF own_point(const QVector<ShownStrand>& strands, int strand);

}  // namespace kempt::desk
