#include "shine/fibres.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <opencv2/imgproc.hpp>

#include "core/rank.h"

namespace kempt::shine {

namespace {
// Scale of the gradient, mm (Gaussian SD): two fibres' width, which 8 px/mm still resolves (1.2 cells), so that photos
// from there on are looked at through the same blur whatever their pixels.
constexpr double gradient_mm = 0.15;
// Surroundings that the light is divided by.
constexpr double around_mm = 1.5;
// Window over which a direction is taken.
constexpr double window_mm = 0.3;
// The quietest quarter of the windows; its upper end lies about a quarter below their mean (noise of some ten
// independent places a window).
constexpr double quiet_share = 0.25, quiet_to_mean = 1.4;
constexpr double stretch_mm = 6;
constexpr double least_over_noise = 4;
constexpr double least_voters = 0.1;  // share of the windows; below, no fibres can be seen at all
}  // namespace

FibreCourse fibre_course(const RegionLight& region) {
    FibreCourse out;
    const double step = region.frame.step_mm;
    cv::Mat grey, soft, wide;
    cv::transform(region.light, grey, cv::Matx13f(0.2126f, 0.7152f, 0.0722f));
    cv::GaussianBlur(grey, wide, {}, around_mm / step);
    cv::max(wide, 1e-4, wide);
    cv::divide(grey, wide, grey);
    cv::GaussianBlur(grey, soft, {}, gradient_mm / step);
    // Not where the blur reached over the region's rim.
    cv::Mat core;
    const int reach = 1 + 2 * static_cast<int>(std::ceil(2 * gradient_mm / step));
    cv::erode(region.inside, core, cv::getStructuringElement(cv::MORPH_RECT, {reach, reach}), {-1, -1}, 1,
              cv::BORDER_CONSTANT, cv::Scalar(0));
    cv::Mat gx, gy, xx, yy, xy;
    cv::Sobel(soft, gx, CV_32F, 1, 0, 1, 0.5 / step);
    cv::Sobel(soft, gy, CV_32F, 0, 1, 1, 0.5 / step);
    const auto window = [&](const cv::Mat& a, const cv::Mat& b, cv::Mat& sum) {
        cv::multiply(a, b, sum);
        cv::GaussianBlur(sum, sum, {}, window_mm / step);
    };
    window(gx, gx, xx), window(gy, gy, yy), window(gx, gy, xy);
    // The photo's own noise has no direction: it adds alike to both eigenvalues of every window and would make fine or
    // dark hair look ruffled. Where the fibres lie best, the smaller eigenvalue is nothing but noise; it is asked in
    // stretches along the fibres, as the light changes there and the noise with it.
    const int stretch = std::max(1, static_cast<int>(stretch_mm / step)),
              stretches = (soft.rows + stretch - 1) / stretch;
    std::vector<double> noise(static_cast<size_t>(stretches), 0.0);
    for (int k = 0; k < stretches; ++k) {
        std::vector<float> lesser;
        for (int y = k * stretch; y < std::min(soft.rows, (k + 1) * stretch); ++y) {
            const float *a = xx.ptr<float>(y), *b = yy.ptr<float>(y), *d = xy.ptr<float>(y);
            const uchar* in = core.ptr<uchar>(y);
            for (int x = y % 2; x < soft.cols; x += 2)
                if (in[x]) lesser.push_back(0.5f * (a[x] + b[x] - std::hypot(a[x] - b[x], 2 * d[x])));
        }
        if (lesser.size() < 16) continue;
        noise[static_cast<size_t>(k)] = quiet_to_mean * std::max(0.f, at_rank(lesser, quiet_share));
    }
    // Each window votes alike, whatever its contrast: a single bright hair across dark ones is one of many. Windows
    // that hold little but noise have no vote.
    double c = 0, s = 0, n = 0, energy = 0, seen = 0;
    for (int y = 0; y < soft.rows; ++y) {
        const float *a = xx.ptr<float>(y), *b = yy.ptr<float>(y), *d = xy.ptr<float>(y);
        const uchar* in = core.ptr<uchar>(y);
        const double here = noise[static_cast<size_t>(y / stretch)];
        for (int x = 0; x < soft.cols; ++x) {
            if (!in[x]) continue;
            seen += 1;
            const double all = static_cast<double>(a[x]) + b[x], split = std::hypot(a[x] - b[x], 2.0 * d[x]);
            if (all < least_over_noise * here + 1e-9) continue;
            const double share = std::min(1.0, split / std::max(1e-12, all - 2 * here)) / std::max(split, 1e-12);
            c += (a[x] - b[x]) * share, s += 2 * d[x] * share, energy += all, n += 1;
        }
    }
    if (n < 1 || n < least_voters * seen) return out;
    out.coherence = std::hypot(c, s) / n;
    out.energy = energy / n;
    // The gradient's main direction (from across) is the fibres' normal.
    out.angle_deg = -0.5 * std::atan2(s, c) * 180 / 3.14159265358979;
    return out;
}

}  // namespace kempt::shine
