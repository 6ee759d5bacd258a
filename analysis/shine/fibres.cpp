#include "shine/fibres.h"

#include <cmath>

#include <opencv2/imgproc.hpp>

namespace kempt::shine {

namespace {
// Scale of the gradient, mm (Gaussian SD): two fibres' width, which 8 px/mm still resolves (1.2 cells), so that photos
// from there on are looked at through the same blur whatever their pixels.
constexpr double gradient_mm = 0.15;
// Surroundings that the light is divided by.
constexpr double around_mm = 1.5;
// Window over which a direction is taken.
constexpr double window_mm = 0.5;
}  // namespace

FibreCourse fibre_course(const RegionLight& region) {
    return fibre_course(region, 0, region.frame.columns);
}

FibreCourse fibre_course(const RegionLight& region, int first, int last) {
    FibreCourse out;
    const cv::Range columns(first, last);
    const double step = region.frame.step_mm;
    cv::Mat grey, soft, wide;
    cv::transform(region.light.colRange(columns), grey, cv::Matx13f(0.2126f, 0.7152f, 0.0722f));
    cv::Mat inside = region.inside.colRange(columns);
    cv::GaussianBlur(grey, wide, {}, around_mm / step);
    cv::max(wide, 1e-4, wide);
    cv::divide(grey, wide, grey);
    cv::GaussianBlur(grey, soft, {}, gradient_mm / step);
    // Not where the blur reached over the region's rim.
    cv::Mat core;
    const int reach = 1 + 2 * static_cast<int>(std::ceil(2 * gradient_mm / step));
    cv::erode(inside, core, cv::getStructuringElement(cv::MORPH_RECT, {reach, reach}), {-1, -1}, 1, cv::BORDER_CONSTANT,
              cv::Scalar(0));
    cv::Mat gx, gy, xx, yy, xy;
    cv::Sobel(soft, gx, CV_32F, 1, 0, 1, 0.5 / step);
    cv::Sobel(soft, gy, CV_32F, 0, 1, 1, 0.5 / step);
    const auto window = [&](const cv::Mat& a, const cv::Mat& b, cv::Mat& sum) {
        cv::multiply(a, b, sum);
        cv::GaussianBlur(sum, sum, {}, window_mm / step);
    };
    window(gx, gx, xx), window(gy, gy, yy), window(gx, gy, xy);
    // Each window votes alike, whatever its contrast: a single bright hair across dark ones is one of many.
    double c = 0, s = 0, n = 0, energy = 0;
    for (int y = 0; y < soft.rows; ++y) {
        const float *a = xx.ptr<float>(y), *b = yy.ptr<float>(y), *d = xy.ptr<float>(y);
        const uchar* in = core.ptr<uchar>(y);
        for (int x = 0; x < soft.cols; ++x) {
            if (!in[x]) continue;
            const double all = static_cast<double>(a[x]) + b[x] + 1e-9;
            c += (a[x] - b[x]) / all, s += 2 * d[x] / all, energy += all, n += 1;
        }
    }
    if (n < 1) return out;
    out.coherence = std::hypot(c, s) / n;
    out.energy = energy / n;
    // The gradient's main direction (from across) is the fibres' normal.
    out.angle_deg = -0.5 * std::atan2(s, c) * 180 / 3.14159265358979;
    return out;
}

}  // namespace kempt::shine
