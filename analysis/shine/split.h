// The light along the fibres taken apart: surface highlight, second highlight, and the hair's own body.
#pragma once

#include <array>
#include <functional>
#include <vector>

#include "shine/profile.h"

namespace kempt::shine {

// Model, by place y along the fibres (mm) and channel c:
//   light_c = body_c + surface + second body_c^1.5 (scaled to luminance 1)
// body_c   exp(a_c + b_c t + k t^2), t = -1..1 over the region: a smooth curve under the peak, its colour free to drift
//          straight from end to end.
// surface  a bell in the colour of the light (neutral after the card), its two sides of different width. Shafer 1985
//          (Color Res Appl 10:210-218): interface reflection keeps the light's colour, the body's does not.
// second   a bell 1.8 times as wide beside it, in the body's colour and more saturated (TRT of Marschner et al. 2003:
//          twice the spread, -3/2 of the tilt, passed through the fibre).
// With coloured hair the three channels tell surface from body; with black, grey and white hair the shape along the
// fibres alone does, held by what is known of the body's curve on a round head and of the second bell's size.
struct Split {
    double step_mm = 0;
    std::vector<double> total, body, second, surface;  // luminance, each step_mm from the profile's first row
    double crest_mm = 0;                               // of the surface, from the profile's first row
    double left_mm = 0, right_mm = 0;                  // standard deviations of its two sides
    double peak = 0, peak_sd = 0;                      // height of the surface and its standard uncertainty
    bool fitted = false;

    // Standard uncertainties of values that follow from the curves: `values` is asked with slightly changed splits.
    using Values = std::function<std::vector<double>(const Split&)>;
    [[nodiscard]] std::vector<double> uncertainty(const Values& values) const;

    static constexpr int unknowns = 13;
    std::array<double, unknowns> parameters{};
    std::vector<double> covariance;  // unknowns x unknowns
    int second_side = -1;            // -1: the second bell lies towards the first row, 1: towards the last
};

[[nodiscard]] Split split(const Profile& profile);

}  // namespace kempt::shine
