// Skin made for tests: a texture that has a value at every place in millimetres, so that it can be looked at through
// any map without resampling. Two sizes of blotches, fine grain and freckles; redness of its own.
#pragma once

#include <cmath>
#include <cstdint>
#include <functional>
#include <opencv2/core.hpp>

#include "align/ground.h"

namespace kempt::tests {

class MadeSkin {
  public:
    explicit MadeSkin(uint32_t seed, double contrast = 1) : seed_(seed), contrast_(contrast) {}
    // Log light and redness.
    [[nodiscard]] cv::Vec2f operator()(cv::Point2d mm) const {
        const double light =
            0.05 * noise(1, mm, 2.9) + 0.03 * noise(2, mm, 1.1) + 0.02 * noise(3, mm, 0.45) + freckle(mm);
        const double red = 0.03 * noise(4, mm, 3.7) + 0.02 * noise(5, mm, 1.6);
        return {static_cast<float>(contrast_ * light), static_cast<float>(contrast_ * red)};
    }

  private:
    [[nodiscard]] double lattice(uint32_t salt, int x, int y) const {
        uint32_t h = (seed_ * 747796405u + salt * 2891336453u) ^ (static_cast<uint32_t>(x) * 0x8da6b343u) ^
                     (static_cast<uint32_t>(y) * 0xd8163841u);
        h = (h ^ (h >> 15)) * 0x2c1b3c6du;
        h = (h ^ (h >> 12)) * 0x297a2d39u;
        return static_cast<double>(h ^ (h >> 15)) / 2147483648.0 - 1;
    }
    [[nodiscard]] double noise(uint32_t salt, cv::Point2d mm, double size) const {
        const double u = (0.8 * mm.x + 0.6 * mm.y) / size, v = (0.8 * mm.y - 0.6 * mm.x) / size;
        const int x = static_cast<int>(std::floor(u)), y = static_cast<int>(std::floor(v));
        const auto ease = [](double t) { return t * t * (3 - 2 * t); };
        const double tx = ease(u - x), ty = ease(v - y);
        return (lattice(salt, x, y) * (1 - tx) + lattice(salt, x + 1, y) * tx) * (1 - ty) +
               (lattice(salt, x, y + 1) * (1 - tx) + lattice(salt, x + 1, y + 1) * tx) * ty;
    }
    // A dark spot of half a millimetre somewhere in one cell of twenty.
    [[nodiscard]] double freckle(cv::Point2d mm) const {
        const int x = static_cast<int>(std::floor(mm.x / 3)), y = static_cast<int>(std::floor(mm.y / 3));
        if (lattice(7, x, y) < 0.9) return 0;
        const double dx = mm.x - 3 * x - 1.5 - lattice(8, x, y), dy = mm.y - 3 * y - 1.5 - lattice(9, x, y);
        return -0.2 * std::exp(-(dx * dx + dy * dy) / 0.2);
    }
    uint32_t seed_;
    double contrast_;
};

// A ground that shows `skin` through skin_from_mm, with camera noise of `noise_sd` (log light).
inline align::Ground ground_through(const MadeSkin& skin, const std::function<cv::Point2d(cv::Point2d)>& skin_from_mm,
                                    cv::Rect2d area_mm, double noise_sd, int noise_seed) {
    align::Ground ground;
    ground.origin_mm = area_mm.tl();
    ground.px_per_mm = 6;
    const cv::Size size(cvRound(area_mm.width * 6), cvRound(area_mm.height * 6));
    ground.layers.create(size, CV_32FC2);
    ground.weight = cv::Mat(size, CV_32FC1, cv::Scalar(1));
    for (int j = 0; j < size.height; ++j)
        for (int i = 0; i < size.width; ++i) ground.layers.at<cv::Vec2f>(j, i) = skin(skin_from_mm(ground.mm(i, j)));
    cv::Mat noise(size, CV_32FC2);
    cv::RNG random(static_cast<uint64_t>(noise_seed));
    random.fill(noise, cv::RNG::NORMAL, 0, noise_sd);
    ground.layers += noise;
    return ground;
}

}  // namespace kempt::tests
