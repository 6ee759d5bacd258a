// A panel of straight or smooth hair hanging over a curved head, with the gauge card beside it in the plane: what shine
// and tone are proven on. Drawn per pixel from a woven sheet of fibres, not strand by strand.
// World as in scene.h: millimetres in the card's plane, x across the fibres, y along them from root to end, z towards
// the camera. The head is a paraboloid that touches the plane at (0, crown_y).
//
// Light on a fibre with tangent t (root to end), after Marschner et al. 2003 (longitudinal lobes, table 1; values as in
// /work/shared/reference.md section 3): with theta_h = (theta_i + theta_r) / 2
//   surface  R   = gloss key cos(phi / 2) / cos^2(theta_d) N(theta_h - alpha_R; beta_R), in the colour of the light
//   body         = albedo (key cos(theta_i) + soft)
//   second   TRT = glint key albedo^1.5 / cos^2(theta_d) N(theta_h + 1.5 alpha_R; 2 beta_R), coloured
// alpha_R = -5..-10 deg (R moves towards the ends, TRT towards the roots), beta_R = 5..10 deg (roughness_deg). N is a
// Gaussian of constant area (height 0.5 at 8 deg), so that a rougher cuticle makes a lower and wider band of the same
// light. Each fibre leans by its own angle (tilt_noise_deg), which widens the band further. Light reflected by the
// cuticle from the soft part is not drawn apart: it counts as part of the albedo.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "close_up.h"
#include "scene.h"

namespace render {

struct Panel {
    Scene scene;  // camera, light, phone, card, hair look, noise_seed; strand_seed weaves the same fibres again
    double root_y = -50, end_y = 50;  // world mm: scalp line and mean end of the fibres
    double half_width_mm = 26;        // of the panel across
    double radius_mm = 90;            // of the head along the fibres (1e9: flat)
    double radius_across_mm = 250;
    double crown_y = 0;
    // Linear reflectance (sRGB primaries, 0..1) of a fibre at s_mm along the hair from the scalp (arc length on the
    // curved head; PanelTruth tells where that lies in the photo). Empty: scene.hair.albedo all along. Each fibre
    // strays from it by scene.hair.spread.
    std::function<Rgb(double s_mm)> albedo;
    double alpha_deg = -7.5;      // alpha_R
    double tilt_noise_deg = 2.5;  // SD of each fibre's own lean, constant along it in part and wandering in part
    double fibre_mm = 0.07;
    double wander_mm = 0.5;                        // slow sideways course of the locks
    double wave_mm = 60, wave_amplitude_mm = 0.5;  // waves common to the panel
    double gaps = 0.15;                            // share where the top layer is open
    double run_mm = 20;                            // how far a fibre stays on top before it dips under
    double under = 0.55;                           // brightness of the layer below
    double streaks_per_cm2 = 0;                    // fibres that lie across the others on top
    double streak_spread_deg = 20;
    double tip_spread_mm = 4;                                        // SD of the fibres' ends
    Rgb background{0.03f, 0.03f, 0.035f}, skin{0.45f, 0.3f, 0.22f};  // beside the panel; beyond the scalp line
    // The region for shine: on the hair, s_mm from..to and this far to both sides.
    double region_from_mm = 10, region_to_mm = 90, region_half_mm = 12;

    [[nodiscard]] double z(double x, double y) const;
    [[nodiscard]] double y_of(double s_mm) const;  // arc length to world y and back
    [[nodiscard]] double s_of(double y) const;
    [[nodiscard]] V3 on_head(double x, double s_mm) const { return {x, y_of(s_mm), z(x, y_of(s_mm))}; }
};

[[nodiscard]] Rgb albedo_from_lab(double L, double a,
                                  double b);  // linear_from_lab by another name, for callers of tone

enum class PanelLight { any, warm, cool, dim };
enum class CardPlace { any, left, right, below };

struct PanelOptions {
    int hair_colour = -1;       // render::hair_names; -1: any
    double gloss = -1;          // strength of R; below 0: 0.08-0.7
    double roughness_deg = 0;   // beta_R; 0: 5-10
    double radius_mm = 0;       // 0: 60-140
    double length_mm = 0;       // of the hair along the head; 0: what the band and its feet need, 70-190
    double region_half_mm = 0;  // of the shine region across; 0: 12-20 (the panel is 5-9 mm wider on each side)
    double px_per_mm = 0;       // 0: 8-16
    double tilt_max_deg = 12;
    double least_key_share = 0;  // of the key light; it is drawn from 0.35-0.85
    double phone_strength = 0.5;
    bool card = true;
    CardPlace card_place = CardPlace::any;
    PanelLight light = PanelLight::any;
};

// What is the person's (hair, head, colours, weave) comes from person_seed, everything else (light, camera, phone,
// place of the card, noise) from shot_seed. Members may be changed before it is taken.
[[nodiscard]] Panel panel(uint64_t person_seed, uint64_t shot_seed, const CardPicture& card,
                          const PanelOptions& options = {});
// Puts the shine region where a hand would draw it under the panel's light: over the band, `feet` of its own standard
// deviations to both sides, as far as the hair reaches.
void mark_region(Panel& panel, double feet);
// Light of a chair from which the highlight falls into the panel; and the same lamps set up again on another day:
// direction to turn_deg around both axes, shares and evenness a little different.
[[nodiscard]] Lighting panel_light(Rng& rng, PanelLight kind = PanelLight::any);
[[nodiscard]] Lighting set_up_again(const Lighting& usual, Rng& rng, double turn_deg);

// From the model alone. Light is relative to a white in the card's plane under the same light, evenness taken out.
// Rows lie every row_mm along the hair from the scalp, on the panel's middle line (x = 0).
struct PanelTruth {
    double row_mm = 0.5;
    std::vector<double> s_mm;      // along the hair from the scalp
    std::vector<double> plane_mm;  // distance from the scalp line as the card's homography places it
    std::vector<V2> at_px;
    // Colour of the hair's body as a colorimeter under even light from all around would say (fibres and gaps together,
    // no R, no TRT): linear, and CIE Lab (D65).
    std::vector<Rgb> body;
    std::vector<V3> body_lab;  // x, y, z = L, a, b
    // Mean light (luminance Y) over the region's width: whole, and of it the surface highlight R.
    std::vector<double> total, surface;
    // Over the region's rows:
    double gloss = 0;          // the factor put in
    double surface_share = 0;  // area of surface / area of total, over plane_mm
    double width_mm = 0;       // full width at half height of surface, in plane_mm; 0 where it does not fall to half
    double crest_mm = 0;       // plane_mm of its crest
    double alignment = 0;      // |mean exp(2 i angle)| of the fibres' directions, by the area they show
    V2 crest_px;
    std::vector<V2> region_px;  // four corners in order around, first two at the root side
    std::vector<V2> strand_px;  // along the middle fibre from the scalp to the ends, every 5 mm
    double px_per_mm = 0, tilt_deg = 0;
};

struct PanelShot {
    Shot shot;  // its own truth stays empty
    PanelTruth truth;
};
[[nodiscard]] PanelShot take(const Panel& panel);

}  // namespace render
