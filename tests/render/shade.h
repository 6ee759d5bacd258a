// Light on skin, shadows of the coat, light on a strand.
#pragma once

#include <vector>

#include "scene.h"
#include "strands.h"

namespace render {

// Cover of the coat in a few layers of height, blurred and shifted as the key light throws it.
class Shadows {
  public:
    Shadows(const Scene& scene, const Coat& coat, double x0, double y0, double x1, double y1);
    // Share of the key light that reaches the scalp at (x, y), and of the soft light.
    [[nodiscard]] float key_on_scalp(double x, double y) const { return sample(key_, x, y); }
    [[nodiscard]] float soft_on_scalp(double x, double y) const { return sample(soft_, x, y); }
    // Share of all light left for a strand at height z above the scalp.
    [[nodiscard]] float on_strand(double x, double y, double z) const;

  private:
    static constexpr int layers = 4;
    static constexpr double cell = 0.1;  // mm
    [[nodiscard]] float sample(const std::vector<float>& map, double x, double y) const;
    double x0_, y0_;
    int nx_, ny_;
    double top_[layers] = {0.25, 0.6, 1.2, 9.0};
    std::vector<float> layer_[layers], key_, soft_;
};

// Diffuse and sheen of bare skin at a world point, without shadows: key and soft parts.
struct SkinLight {
    Rgb key, soft;
};
[[nodiscard]] SkinLight skin_light(const Scene& scene, double x, double y, double depth_mm, double px_mm);

// Reflected light of a strand piece with tangent t lit by the key light and the soft light, per unit of light.
struct StrandLight {
    Rgb key, soft, highlight;
};
[[nodiscard]] StrandLight strand_light(const Scene& scene, const Strand& strand, V3 tangent, double along_mm);

// Evenness of the scene's light at a place (gradient and somebody's shadow), 1 in the middle.
[[nodiscard]] double light_at(const Lighting& light, double x, double y);

}  // namespace render
