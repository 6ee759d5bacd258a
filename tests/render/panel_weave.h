// The woven sheet of a panel: light of each fibre along its length, ready to be looked up at any width.
#pragma once

#include <vector>

#include "panel.h"

namespace render {

// Rows along the hair (row_mm of arc length), columns across in the fibres' own coordinate u. Channels r, g, b
// (premultiplied by alpha) and alpha, summed from the left so that a box over any columns costs two look-ups.
struct Weave {
    static constexpr int across = 4;  // columns a fibre
    double row_mm = 0.25, column_mm = 0.0175, u0 = 0;
    int rows = 0, columns = 0;
    std::vector<float> sums;                               // rows x (columns + 1) x 4
    std::vector<double> total, surface, slope2c, slope2s;  // per row over the region: Y, R, mean cos and sin of 2 angle
    std::vector<Rgb> body;                                 // per row over the region, reference light
};

[[nodiscard]] Weave weave(const Panel& panel);
// Sideways course of the fibre at (x, s): world x = u + course.
[[nodiscard]] double course(const Panel& panel, double x, double s_mm);
// Where the camera stands, world.
[[nodiscard]] V3 camera_at(const Camera& camera);

// What the streaks put into a row of the weave within the region's width: area in mm2, light and surface light (Y)
// times area, cos and sin of twice their angle times area.
struct StreakRow {
    double area = 0, total = 0, surface = 0, c2 = 0, s2 = 0;
};
// Fibres that lie over the others, blended into the light.
std::vector<StreakRow> draw_streaks(const Panel& panel, const Projector& projector, const Weave& weave, Rendered& out);

// Geometry of the lobes at a place for a fibre that turns by `slope` (dx/ds) and leans by nothing.
struct LobePlace {
    double theta_h = 0, cos_i = 1, gain = 1;  // deg; cos(theta_i); cos(phi / 2) / cos^2(theta_d)
};
[[nodiscard]] LobePlace lobe_place(const Panel& panel, V3 at, double slope, V3 eye);
// Gaussian of constant area, 0.5 high at 8 deg.
[[nodiscard]] double lobe(double off_deg, double width_deg);

}  // namespace render
