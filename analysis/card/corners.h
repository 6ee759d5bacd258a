// Corners of a marker to a small part of a pixel, from the straight edges of its black border at full resolution.
#pragma once

#include <optional>

#include "card/markers.h"
#include "card/sampler.h"

namespace kempt::card {

// Each of the four edges is crossed by short profiles in linear light; where each falls to half way between its own
// black and white (so light that differs along the edge does no harm) is a point, a robust line goes through the
// points, and neighbouring lines meet in the corners. Two passes, the second from the corners of the first.
// Empty when an edge shows too little contrast or too few points: hidden, or no marker at all.
[[nodiscard]] std::optional<Marker> refine(const Sampler& light, const Marker& rough);

}  // namespace kempt::card
