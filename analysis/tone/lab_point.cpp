#include "tone/lab_point.h"

#include <cmath>

namespace kempt::tone {
namespace {

// sRGB primaries (IEC 61966-2-1) to XYZ with the white of colour.h.
const cv::Matx33d xyz_from_rgb(0.4124564, 0.3575761, 0.1804375, 0.2126729, 0.7151522, 0.0721750, 0.0193339, 0.1191920,
                               0.9503041);
const cv::Matx33d rgb_from_xyz = xyz_from_rgb.inv();
const cv::Vec3d white(0.95047, 1.0, 1.08883);
constexpr double epsilon = 216.0 / 24389.0, kappa = 24389.0 / 27.0;  // CIE 15

}  // namespace

LabPoint lab_point(const cv::Vec3d& rgb) {
    const cv::Vec3d xyz = xyz_from_rgb * rgb;
    cv::Vec3d f, d;
    for (int c = 0; c < 3; ++c) {
        const double t = xyz[c] / white[c];
        f[c] = t > epsilon ? std::cbrt(t) : (kappa * t + 16) / 116;
        d[c] = (t > epsilon ? 1 / (3 * f[c] * f[c]) : kappa / 116) / white[c];
    }
    LabPoint out{{116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])}, {}};
    for (int k = 0; k < 3; ++k) {
        const double x = d[0] * xyz_from_rgb(0, k), y = d[1] * xyz_from_rgb(1, k), z = d[2] * xyz_from_rgb(2, k);
        out.slope(0, k) = 116 * y;
        out.slope(1, k) = 500 * (x - y);
        out.slope(2, k) = 200 * (y - z);
    }
    return out;
}

LabPoint rgb_point(const cv::Vec3d& lab) {
    const double fy = (lab[0] + 16) / 116;
    const double f[3] = {fy + lab[1] / 500, fy, fy - lab[2] / 200};
    cv::Vec3d xyz, d;
    for (int c = 0; c < 3; ++c) {
        const bool bent = f[c] > 6.0 / 29;
        xyz[c] = white[c] * (bent ? f[c] * f[c] * f[c] : (116 * f[c] - 16) / kappa);
        d[c] = white[c] * (bent ? 3 * f[c] * f[c] : 116 / kappa);
    }
    const cv::Matx33d by_lab(d[0] / 116, d[0] / 500, 0, d[1] / 116, 0, 0, d[2] / 116, 0, -d[2] / 200);
    return {rgb_from_xyz * xyz, rgb_from_xyz * by_lab};
}

}  // namespace kempt::tone
