#include "painted.h"

#include <algorithm>
#include <cmath>

#include "card/card_layout.h"

namespace kempt::test {

Painted paint(const std::function<cv::Vec3d(double)>& light_at, const PaintedOptions& options) {
    constexpr double margin_px = 40, below_card_mm = 20;
    const double k = options.px_per_mm;
    Painted out;
    const int width = cvRound(2 * margin_px + card::card_width_mm * k),
              height = cvRound(2 * margin_px + (card::card_height_mm + below_card_mm + options.length_mm) * k);
    out.calibration.card_found = true;
    out.calibration.px_per_mm = k;
    out.calibration.px_per_mm_sd = 0.001 * k;
    out.calibration.mm_from_px = cv::Matx33d(1 / k, 0, -margin_px / k, 0, 1 / k, -margin_px / k, 0, 0, 1);
    if (options.light_known) {
        card::Light light;
        light.curve_fitted = true;
        for (auto& table : light.light_from_photo) {
            for (int i = 0; i < 1024; ++i)
                table.push_back(static_cast<float>(std::pow(i / 1023.0, 2) / options.exposure));
        }
        light.gradient_per_cm = 10 * cv::norm(options.gradient_per_mm);
        if (light.gradient_per_cm > 0)
            light.gradient_direction = options.gradient_per_mm / cv::norm(options.gradient_per_mm);
        out.calibration.light = light;
    }
    const double scalp_mm = card::card_height_mm + below_card_mm, middle_mm = card::card_width_mm / 2;
    cv::RNG rng(options.seed);
    // Locks: each column has its own brightness, which wanders along the strand.
    std::vector<double> lock(static_cast<size_t>(width), 0.0);
    std::vector<char> white_fibre(static_cast<size_t>(width), 0);
    for (char& white : white_fibre) white = options.white_share > 0 && rng.uniform(0.0, 1.0) < options.white_share;
    cv::Mat pixels(height, width, CV_8UC3, cv::Scalar::all(options.ground));
    for (int y = 0; y < height; ++y) {
        const double mm_y = (y - margin_px) / k, s = mm_y - scalp_mm;
        const cv::Vec3d here = light_at(s);
        for (int x = 0; x < width; ++x) {
            const double mm_x = (x - margin_px) / k;
            auto& wandering = lock[static_cast<size_t>(x)];
            const double keep = std::exp(-1 / (5 * k));
            wandering = keep * wandering + std::sqrt(1 - keep * keep) * rng.gaussian(1);
            if (std::abs(mm_x - middle_mm) > options.half_mm || s < 0 || s > options.length_mm) continue;
            const double fall = (mm_x - card::card_width_mm / 2) * options.gradient_per_mm[0] +
                                (mm_y - card::card_height_mm / 2) * options.gradient_per_mm[1];
            const double aside = mm_x - middle_mm;
            const bool white =
                white_fibre[static_cast<size_t>(x)] || (aside >= options.white_from_mm && aside < options.white_to_mm);
            const double factor = options.exposure * std::exp(options.lock_noise * wandering + fall);
            cv::Vec3b& pixel = pixels.at<cv::Vec3b>(y, x);
            for (int c = 0; c < 3; ++c)
                pixel[c] = cv::saturate_cast<uchar>(
                    255 * colour::srgb_from_linear(std::clamp((white ? 0.5 : here[c]) * factor, 0.0, 1.0)) +
                    rng.gaussian(options.noise_codes));
        }
    }
    out.photo = {pixels, colour::srgb_encoding()};
    for (const double s : {0.0, 0.3, 0.7, 1.0})
        out.line_px.emplace_back(margin_px + middle_mm * k, margin_px + (scalp_mm + s * options.length_mm) * k);
    return out;
}

}  // namespace kempt::test
