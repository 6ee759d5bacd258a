// Dark lines about a pixel wide, found as ridges: points with a sub-pixel place, direction and strength.
// After C. Steger, An unbiased detector of curvilinear structures, IEEE PAMI 20 (1998): a line's middle is where the
// first derivative across it vanishes, taken from the second-order Taylor polynomial of the smoothed picture.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/field.h"
#include "core/photo.h"

namespace kempt::combings {

// Darkness of a photo's pixels against the paper around them: 0 paper, 1 black.
class Darkness {
  public:
    Darkness(const Photo& photo, const Field& field);
    // Of the columns [from, to) of a row.
    void row(int y, int from, int to, float* out) const;
    // Bilinear; 0 outside the photo.
    [[nodiscard]] float at(double x, double y) const;
    [[nodiscard]] cv::Size size() const { return pixels_.size(); }

  private:
    [[nodiscard]] float light(int x, int y) const;
    cv::Mat pixels_;
    bool wide_;
    std::vector<float> table_[3];  // code to weighted linear light
    cv::Mat1f per_paper_;          // 1 / light of the paper, a cell each 32 x 32 pixels
};

struct RidgePoint {
    float x, y;      // pixels
    float tx, ty;    // unit vector along the line, either way
    float strength;  // second derivative across it, in darkness per px^2
    float lean;      // 1 a line .. 0 a spot: share by which the curvature across exceeds that along
};

struct Ridges {
    std::vector<RidgePoint> points;  // by rows, then columns of their pixel
    std::vector<cv::Point> pixel;    // of each
    cv::Mat1i index;                 // point at a pixel of `bounds`, -1 none
    cv::Rect bounds;
    float noise = 0;  // SD of the second derivative on bare paper
    [[nodiscard]] int at(int x, int y) const {
        const int u = x - bounds.x, v = y - bounds.y;
        return u < 0 || v < 0 || u >= bounds.width || v >= bounds.height ? -1 : index(v, u);
    }
};
// Points of at least `least_snr` times the noise inside the field.
[[nodiscard]] Ridges find_ridges(const Darkness& darkness, const Field& field, double least_snr);

}  // namespace kempt::combings
