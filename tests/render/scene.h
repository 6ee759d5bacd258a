// What a rendered close-up of a hairline is made of. World: millimetres in the card's plane, x to the right, y down,
// z towards the camera. The edge line runs from left to right; hair grows on its +y side.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "rng.h"
#include "vec.h"

namespace render {

enum class Shape { straight, wavy, coiled };
inline constexpr int skin_classes =
    6;  // ITA classes of Chardon 1991: very light, light, intermediate, tan, brown, dark
inline constexpr int salt_and_pepper = 6,
                     hair_colours = 7;  // black, dark brown, medium brown, red, blonde, grey, salt and pepper
extern const char* const skin_names[skin_classes];
extern const char* const hair_names[hair_colours];

struct Skin {
    Rgb albedo;
    double blotch = 0.1;      // relative low-frequency variation
    double redness = 0.1;     // of it, the part that is blood
    double pores = 0.3;       // depth of pores, 0..1
    double grain = 0.05;      // fine relief
    double sheen = 0.1;       // strength of the oily highlight
    double sheen_power = 12;  // Blinn exponent
    double freckles = 0;      // per mm2
    double stubble = 0;       // dark follicle dots per mm2
    Rgb scalp_tint{1, 1, 1};  // scalp inside the line against the skin outside
    uint32_t seed = 1;
};

struct HairLook {
    Rgb albedo;         // of a single strand lit from the front
    Rgb second_albedo;  // for mixed hair (grey)
    double second_share = 0;
    double spread = 0.2;   // SD of log albedo between strands
    double root_dark = 0;  // darker first millimetres
    double gloss = 0.3;    // strength of the white surface highlight (R)
    double glint = 0.3;    // of the coloured one (TRT)
    double roughness_deg = 8;
    double body = 0.6;  // how strongly the cylinder's shape shades across its width
};

struct Growth {
    double density = 1.0;       // roots per mm2 where full
    double edge_share = 0.3;    // of it at the line
    double full_depth_mm = 10;  // where it becomes full
    double length_mean_mm = 40, length_sd_mm = 15;
    double short_share = 0.1;  // regrowth of 1-10 mm
    double vellus_share = 0.05;
    double width_mean_mm = 0.07, width_sd_mm = 0.012;  // Wolfram 2003: 60-80 um typical
    double direction_deg = 0;                          // from straight inward, positive to +x
    double direction_spread_deg = 15;
    double wander = 0.02;        // random curvature, 1/mm
    double clump = 0.5;          // 0 each strand alone .. 1 locks
    double lift_mm = 0.5;        // mean height of the coat above the scalp
    double stray_outside = 0.0;  // share of strands that start with a swing over the line
    Shape shape = Shape::straight;
    double wave_mm = 12, wave_amplitude_mm = 1;  // wavy
    double coil_mm = 5;                          // coiled: curve diameter
    struct Patch {
        double x, y, radius, keep;  // a thin or bare spot: share of roots kept in its middle
    };
    std::vector<Patch> patches;
};

struct Lighting {
    V3 key{0.3, -0.3, 0.9};                 // unit vector towards the key light
    double key_share = 0.6;                 // the rest is soft light from all around
    double penumbra = 0.25;                 // blur of a shadow per height
    double gradient_x = 0, gradient_y = 0;  // relative change per mm
    bool shadow_edge = false;               // soft edge of something's shadow
    double shadow_x = 0, shadow_angle = 0, shadow_soft_mm = 10, shadow_depth = 0.5;
    Rgb colour{1, 1, 1};
};

struct Phone {
    double exposure = 0.8;
    Rgb gains{1, 1, 1};                              // white balance error
    double blur_px = 0.6;                            // Gaussian sigma
    double noise_shot = 0.0004, noise_read = 0.002;  // variance = shot * light + read^2
    bool mosaic = false;                             // colour filter array and a plain bilinear demosaic
    double denoise = 0;                              // 0..1 mix with a smoothed chroma
    double sharpen = 0;                              // unsharp amount, sigma 1 px
    double lift = 0, curve = 0;                      // tone curve: lifted shadows, S shape
    double gamma = 1;
    bool display_p3 = false;
};

struct Camera {
    int width = 0, height = 0;
    double px_per_mm = 20;  // at the aim point
    double focal_px = 3000;
    double tilt_deg = 0, tilt_axis_deg = 0, turn_deg = 0;
    V2 aim_mm{0, 0};               // plane point in the middle of the picture
    double bulge_radius_mm = 1e9;  // scalp as a cylinder along x, touching the plane at bulge_y_mm
    double bulge_y_mm = 0;

    [[nodiscard]] double scalp_z(double y) const;
};

// The camera with its rotation worked out.
class Projector {
  public:
    explicit Projector(const Camera& camera);
    [[nodiscard]] V2 px_from(V3 world) const;
    [[nodiscard]] V2 plane_from_px(V2 px) const;  // on z = 0
    [[nodiscard]] V2 scalp_from_px(V2 px) const;  // on z = scalp_z(y)

  private:
    Camera c_;
    double r_[9];
};

struct CardPicture {
    int width = 0, height = 0;  // CARD face
    double px_per_mm = 0;
    std::vector<float> reflectance;  // linear
    V2 origin_mm{0, 0};              // of its top left corner in the world
    double turn_deg = 0;
    [[nodiscard]] bool present() const { return !reflectance.empty(); }
};

struct Scene {
    Skin skin;
    HairLook hair;
    Growth growth;
    Lighting light;
    Phone phone;
    Camera camera;
    CardPicture card;
    double detail_from_mm = -1e9;  // skin further outside the line than this is drawn plain (saves time)
    // Skin is drawn on the bulge where hair stands on it; false: in the card's plane (quicker, at most 0.3 mm off near
    // the line), which is enough where no second photo is laid over the first.
    bool skin_on_bulge = false;
    double x_from = 0, x_to = 20;  // extent of the edge line in world x
    std::function<double(double)> edge_y = [](double) { return 0.0; };
    uint64_t strand_seed = 1;  // the same seed grows the same strands
    uint64_t noise_seed = 2;
    int skin_class = 0, hair_colour = 0;
};

// Looks drawn at random within a class; published ITA limits for skin, hair colours by eye (own choice).
[[nodiscard]] Skin random_skin(Rng& rng, int skin_class);
[[nodiscard]] HairLook random_hair(Rng& rng, int colour);
[[nodiscard]] Growth random_growth(Rng& rng, double x_from, double x_to);
[[nodiscard]] Lighting random_lighting(Rng& rng);
// strength 0..1: how far from a perfect camera.
[[nodiscard]] Phone random_phone(Rng& rng, double strength);

[[nodiscard]] Rgb linear_from_lab(double L, double a, double b);

}  // namespace render
