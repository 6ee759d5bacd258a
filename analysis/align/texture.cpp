#include "align/texture.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/rank.h"

namespace kempt::align {

namespace {

constexpr float cut_off = 2.5f;  // standard deviations: a stray hair counts no more than a pore
// Below this share of weight a mean is made of too little: half a window's edge of a corner.
constexpr double least_weight = 0.05;
constexpr Band hair_band{0, 0.08,
                         0.5};      // a hair of 0.07 mm blurred by lens and pixels against the half millimetre about
constexpr double stands_out = 4.5;  // times the skin's own contrast in that band
constexpr double beside_mm = 0.17;  // a hair's blur and its shadow: one pixel. Wider takes the skin between strays away
constexpr double about_mm =
    0.8;  // where more than a share of this is hairs and their sides, nothing is left of the skin
constexpr double full_of_hair = 0.6;
constexpr double contrast_mm = 4, least_contrast = 0.5;  // of the whole

cv::Mat mean(const cv::Mat& field, const cv::Mat& weight, double sigma_px) {
    cv::Mat out;
    cv::divide(smooth(cv::Mat(field.mul(weight)), sigma_px), cv::max(smooth(weight, sigma_px), least_weight), out);
    return out;
}

cv::Mat in_band(const cv::Mat& field, const cv::Mat& weight, const Band& band, double px_per_mm) {
    return mean(field, weight, band.finest_mm * px_per_mm) - mean(field, weight, band.coarsest_mm * px_per_mm);
}

// Standard deviation of what is normal: from a low quantile of the size, so that hair, card and cloth on half of the
// picture hardly matter. Of a normal distribution the quantile 0.35 of |x| is 0.454 sigma.
float contrast(const cv::Mat& field, const cv::Mat& weight) {
    std::vector<float> size;
    for (int j = 0; j < field.rows; ++j)
        for (int i = 0; i < field.cols; ++i)
            if (weight.at<float>(j, i) > 0.5f) size.push_back(std::abs(field.at<float>(j, i)));
    if (size.size() < 20) return 1;
    return std::max(at_rank(size, 0.35) / 0.454f, 1e-6f);
}

}  // namespace

cv::Mat smooth(const cv::Mat& field, double sigma_px) {
    cv::Mat out;
    if (sigma_px < 0.3) return field.clone();
    if (sigma_px < 3) {
        cv::GaussianBlur(field, out, {}, sigma_px, sigma_px, cv::BORDER_CONSTANT);
        return out;
    }
    // Three boxes of width d have variance 3 (d^2 - 1) / 12.
    const int d = std::max(1, cvRound(std::sqrt(4 * sigma_px * sigma_px + 1)) | 1);
    cv::boxFilter(field, out, -1, {d, d}, {-1, -1}, true, cv::BORDER_CONSTANT);
    for (int k = 0; k < 2; ++k) cv::boxFilter(out, out, -1, {d, d}, {-1, -1}, true, cv::BORDER_CONSTANT);
    return out;
}

void leave_out_hairs(Ground& ground) {
    cv::Mat light;
    cv::extractChannel(ground.layers, light, 0);
    const cv::Mat band = in_band(light, ground.weight, hair_band, ground.px_per_mm);
    const float limit = static_cast<float>(stands_out) * contrast(band, ground.weight);
    cv::Mat out = (cv::abs(band) > limit) & (ground.weight > 0), wide, density;
    const int side = 2 * cvRound(beside_mm * ground.px_per_mm) + 1;
    cv::dilate(out, wide, cv::getStructuringElement(cv::MORPH_ELLIPSE, {side, side}));
    wide.convertTo(density, CV_32F, 1.0 / 255);
    density = mean(density, ground.weight, about_mm * ground.px_per_mm);
    ground.weight.setTo(0, wide | (density > full_of_hair));
}

Texture texture_of(const Ground& ground, const std::vector<Band>& bands) {
    std::array<cv::Mat, 2> layers;
    cv::split(ground.layers, layers.data());
    std::vector<cv::Mat> kept;
    for (const Band& band : bands) {
        cv::Mat field = in_band(layers[static_cast<std::size_t>(band.layer)], ground.weight, band, ground.px_per_mm);
        // Contrast about each place, held up by that of the whole, so that plain places stay quiet and noisy ones do
        // not speak for all.
        field *= 1 / contrast(field, ground.weight);
        cv::Mat about = cv::max(cv::min(field, 2 * cut_off), -2 * cut_off);
        about = mean(cv::Mat(about.mul(about)), ground.weight, contrast_mm * ground.px_per_mm);
        cv::sqrt(about * (1 - least_contrast * least_contrast) + least_contrast * least_contrast, about);
        cv::divide(field, about, field);
        field = cv::max(cv::min(field, cut_off), -cut_off);
        field.setTo(0, ground.weight <= 0);
        kept.push_back(field);
    }
    Texture out{ground, {}};
    cv::merge(kept, out.texture);
    return out;
}

Texture without_first(const Texture& texture) {
    std::vector<cv::Mat> bands;
    cv::split(texture.texture, bands);
    bands.erase(bands.begin());
    Texture out{texture.ground, {}};
    cv::merge(bands, out.texture);
    return out;
}

std::vector<cv::Mat> weighted_bands(const Texture& texture) {
    std::vector<cv::Mat> bands;
    cv::split(texture.texture, bands);
    for (cv::Mat& band : bands) band = band.mul(texture.ground.weight);
    return bands;
}

}  // namespace kempt::align
