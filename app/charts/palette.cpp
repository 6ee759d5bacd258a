#include "charts/chart_painter.h"

namespace kempt::charts {

// Plum readings, teal target, ochre trend, grey-green noise: apart in lightness as well as in hue, and each also has a
// shape of its own (disc, long dashes, solid line, dotted edges).
Palette light_palette() {
    Palette p;
    p.ground = QColor("#fbf9f6");
    p.grid = QColor("#e4dcd4");
    p.ink = QColor("#2a2220");
    p.ink_soft = QColor("#5f524b");
    p.reading = QColor("#74304f");
    p.shot = QColor("#a3748a");
    p.band = QColor("#e3e8e0");
    p.band_edge = QColor("#76806f");
    p.target = QColor("#1b6a60");
    p.trend = QColor("#a0651a");
    p.service = QColor("#46617a");
    return p;
}

Palette dark_palette() {
    Palette p;
    p.ground = QColor("#282120");
    p.grid = QColor("#423733");
    p.ink = QColor("#f3ebe4");
    p.ink_soft = QColor("#c3b5aa");
    p.reading = QColor("#e9b2c8");
    p.shot = QColor("#b0849a");
    p.band = QColor("#3a3f37");
    p.band_edge = QColor("#9aa592");
    p.target = QColor("#7fcabd");
    p.trend = QColor("#e4ae62");
    p.service = QColor("#a4c0da");
    return p;
}

}  // namespace kempt::charts
