#include "shine/binned.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace kempt::shine {

namespace {

// Rows are not independent: the same fibre stays in view for millimetres.
constexpr double correlation_mm = 12;
constexpr double shape_misfit = 0.015;  // of the peak: no lobe is a perfect bell
constexpr double level_misfit = 0.003;  // of the light: unevenness, tone curve
// A JPEG keeps the mean colour of a block of pixels to whole steps. Over even hair all blocks fall on the same step, so
// that the colour comes in flights of stairs and no mean of blocks helps. The standard table at quality 85 (ITU-T T.81,
// annex K) has steps of 5 for the mean, over 8 pixels that is 0.63 codes of Cb and Cr: 0.18 as a standard deviation,
// and 0.4 codes of the difference of red or blue to green.
constexpr double chroma_codes = 0.4;
constexpr double code_power = 1 / 2.2;  // codes go about with this power of light

std::vector<double> smooth(const std::vector<double>& v, int reach) {
    const int n = static_cast<int>(v.size());
    std::vector<double> out(v.size());
    for (int i = 0; i < n; ++i) {
        const int a = std::max(0, i - reach), b = std::min(n, i + reach + 1);
        out[static_cast<size_t>(i)] = std::accumulate(v.begin() + a, v.begin() + b, 0.0) / (b - a);
    }
    return out;
}

// Size of what is left of v after smoothing over 2 reach + 1.
double roughness(const std::vector<double>& v, int reach) {
    const std::vector<double> soft = smooth(v, reach);
    double sum = 0;
    for (size_t i = 0; i < v.size(); ++i) sum += (v[i] - soft[i]) * (v[i] - soft[i]);
    return std::sqrt(sum / static_cast<double>(v.size()));
}

// Standard uncertainty of the log of a ratio of two channels of light y, from the steps of a JPEG's colour.
double stairs_sd(double y) {
    return chroma_codes / code_power / (255 * std::pow(std::max(y, 1e-4), code_power));
}

// Variance of the mean of the lanes by what they do differently along the fibres, mean over the bins. That one lane is
// lighter than another all along says nothing of the curve.
double lanes_variance(const Profile& profile, size_t bins, size_t per_bin) {
    const double count = static_cast<double>(profile.lanes.size()), rows = static_cast<double>(bins);
    if (count < 2) return 0;
    std::vector<double> sum(bins, 0), squares(bins, 0);
    for (const Lane& lane : profile.lanes) {
        std::vector<double> own(bins, 0);
        for (size_t i = 0; i < bins * per_bin; ++i)
            own[i / per_bin] += luminance(lane.light[i]) / static_cast<double>(per_bin);
        const double mean = std::accumulate(own.begin(), own.end(), 0.0) / rows;
        for (size_t i = 0; i < bins; ++i) {
            const double y = own[i] - mean;
            sum[i] += y, squares[i] += y * y;
        }
    }
    double variance = 0;
    for (size_t i = 0; i < bins; ++i) {
        const double m = sum[i] / count;
        variance += std::max(0.0, squares[i] / count - m * m) / (count - 1) / rows;
    }
    return variance;
}

// Luminance over the straight line that joins the ends, smoothed over nine bins; the ends' light.
void lay_line(Binned& out) {
    const size_t n = out.size(), rim = std::max<size_t>(2, n / 12);
    for (size_t i = 0; i < rim; ++i)
        out.first += out.light[i] * (1.0 / static_cast<double>(rim)),
            out.last += out.light[n - 1 - i] * (1.0 / static_cast<double>(rim));
    const double y0 = luminance(out.first), y1 = luminance(out.last);
    std::vector<double> over;
    for (size_t i = 0; i < n; ++i) {
        const double t = (static_cast<double>(i) + 0.5) / static_cast<double>(n);
        over.push_back(out.luminance[i] - (y0 + t * (y1 - y0)));
    }
    out.over = smooth(over, 4);
}

}  // namespace

Binned binned(const Profile& profile) {
    Binned out;
    const double row = profile.step_mm;
    const auto per_bin = static_cast<size_t>(
        std::max(1.0, std::round(std::max(0.5, row * static_cast<double>(profile.size()) / 140) / row)));
    const size_t n = profile.size() / per_bin;
    out.bin_mm = row * static_cast<double>(per_bin);
    out.length_mm = out.bin_mm * static_cast<double>(n);
    for (size_t i = 0; i < n; ++i) {
        cv::Vec3d sum;
        for (size_t k = 0; k < per_bin; ++k)
            sum += profile.light[i * per_bin + k] * (1.0 / static_cast<double>(per_bin));
        for (int c = 0; c < 3; ++c) sum[c] = std::max(sum[c], 1e-5);
        out.light.push_back(sum);
        out.luminance.push_back(luminance(sum));
        out.red_green.push_back(std::log(sum[0] / sum[1]));
        out.blue_green.push_back(std::log(sum[2] / sum[1]));
    }
    out.mean = std::accumulate(out.luminance.begin(), out.luminance.end(), 0.0) / static_cast<double>(n);
    lay_line(out);
    const int reach = std::max(1, static_cast<int>(3 / out.bin_mm));
    const double chroma = std::max(roughness(out.red_green, reach), roughness(out.blue_green, reach)),
                 inflate = std::sqrt(std::max(1.0, correlation_mm / out.bin_mm)),
                 uneven = lanes_variance(profile, n, per_bin);
    for (size_t i = 0; i < n; ++i) {
        const double peak = std::max(0.0, out.over[i]), y = out.luminance[i];
        out.luminance_sd.push_back(
            inflate * std::sqrt(uneven + std::pow(shape_misfit * peak, 2) + std::pow(level_misfit * y, 2)));
        out.colour_sd.push_back(inflate * std::hypot(chroma, stairs_sd(y)));
    }
    return out;
}

}  // namespace kempt::shine
