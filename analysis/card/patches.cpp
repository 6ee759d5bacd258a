#include "card/patches.h"

#include "card/plane.h"

namespace kempt::card {
namespace {

// Enough for the mean to be steady to a fifth of a code with a phone's noise, few enough to cost nothing.
constexpr int points_across = 14;
constexpr int green = 1;

Sample sample(const Sampler& light, const cv::Matx33d& px_from_mm, const cv::Rect2d& mm) {
    Sample result{.centre_mm = {mm.x + mm.width / 2, mm.y + mm.height / 2}};
    std::array<std::vector<float>, 3> values;
    bool clipped = false;
    const int nx = points_across, ny = std::clamp(cvRound(points_across * mm.height / mm.width), 4, 2 * points_across);
    for (int j = 0; j < ny; ++j)
        for (int i = 0; i < nx; ++i) {
            const cv::Point2d px =
                apply(px_from_mm, {mm.x + mm.width * (i + 0.5) / nx, mm.y + mm.height * (j + 0.5) / ny});
            if (!light.inside(px)) continue;
            for (int c = 0; c < 3; ++c)
                values[static_cast<size_t>(c)].push_back(light.pixel(cvRound(px.x), cvRound(px.y), c));
        }
    const size_t n = values[0].size();
    if (n < static_cast<size_t>(nx * ny) * 3 / 4) return result;
    for (size_t c = 0; c < 3; ++c) {
        std::sort(values[c].begin(), values[c].end());
        // The middle half: as robust against hairs and dust as a median, but finer than a code.
        double sum = 0;
        for (size_t i = n / 4; i < n - n / 4; ++i) sum += values[c][i];
        result.light[c] = sum / double(n - 2 * (n / 4));
        // 2 % below the top: sharpening and JPEG leave clipped areas a code or two under it.
        clipped = clipped || result.light[c] > 0.98 * light.highest(static_cast<int>(c));
    }
    // Noise spreads the middle half by a few codes; a hair bundle, a finger or a shadow's edge by a third and more.
    const double spread = values[green][n - 1 - n / 4] - values[green][n / 4];
    result.usable = spread < 0.25 * result.light[green] + 0.012;
    result.clipped = clipped;
    return result;
}

}  // namespace

CardSamples sample_card(const Sampler& light, const cv::Matx33d& px_from_mm) {
    CardSamples samples;
    const std::vector<Patch>& patches = card_patches();
    for (size_t i = 0; i < patches.size(); ++i) {
        // The inner 70 %: blur up to the gate's limit (0.4 mm) and a corner error of a pixel stay outside.
        const cv::Rect2d a = patches[i].area_mm;
        samples.patches[i] =
            sample(light, px_from_mm, {a.x + 0.15 * a.width, a.y + 0.15 * a.height, 0.7 * a.width, 0.7 * a.height});
        if (i >= 6) continue;
        const double x = a.x + 0.15 * a.width, width = 0.7 * a.width;
        // Strips of 4 mm: 0-4, 13-17, 26-30; sampled 1 mm and more from patches and from the cut edge.
        samples.paper[0][i] = sample(light, px_from_mm, {x, 1.2, width, 1.8});
        samples.paper[1][i] = sample(light, px_from_mm, {x, 14.0, width, 2.0});
        samples.paper[2][i] = sample(light, px_from_mm, {x, 27.0, width, 1.8});
    }
    for (size_t k = 0; k < 4; ++k) {
        // The border is a cell of 1.67 mm; its middle 0.5 mm along the middle half of each side.
        const cv::Point2d c = card_marker_centres_mm[k];
        const double out = card_marker_mm / 2 - card_marker_mm / 12;
        samples.black[4 * k] = sample(light, px_from_mm, {c.x - 2.5, c.y - out - 0.25, 5, 0.5});
        samples.black[4 * k + 1] = sample(light, px_from_mm, {c.x - 2.5, c.y + out - 0.25, 5, 0.5});
        samples.black[4 * k + 2] = sample(light, px_from_mm, {c.x - out - 0.25, c.y - 2.5, 0.5, 5});
        samples.black[4 * k + 3] = sample(light, px_from_mm, {c.x + out - 0.25, c.y - 2.5, 0.5, 5});
    }
    return samples;
}

}  // namespace kempt::card
