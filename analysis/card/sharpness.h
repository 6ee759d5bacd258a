// Sharpness from the black-white edges of the markers.
#pragma once

#include <functional>

#include "card/plane.h"
#include "card/sampler.h"

namespace kempt::card {

// 10-90 % edge rise in mm: the real pixels of a strip across each outer edge are laid on one line by their distance
// from the edge (as in the slanted edge method of ISO 12233), in light undone by `true_light` (green channel).
// Upright and level edges are averaged apart and the larger rise is given: a moving hand blurs one way only.
// 0 when no edge could be measured. A pixel's own width sets the floor of 0.8 pixel.
[[nodiscard]] double edge_rise_mm(const Sampler& light, const std::function<float(float)>& true_light,
                                  const std::vector<Marker>& markers, const Layout& layout, const Plane& plane);

}  // namespace kempt::card
