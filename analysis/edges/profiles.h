// Figures read off the band's maps. Depths in mm from the edge line, shares 0..1.
#pragma once

#include <optional>
#include <vector>

#include "edges/band_maps.h"
#include "edges/edges.h"

namespace kempt::edges {

// Mean of a map between two depths over the whole line, valid cells only.
[[nodiscard]] double mean_of(const cv::Mat& map, const BandMaps& maps, double from_mm, double to_mm);
[[nodiscard]] double valid_share(const BandMaps& maps, double from_mm, double to_mm);
[[nodiscard]] std::vector<double> cover_by_depth(const BandMaps& maps, double depth_mm, double bin_mm);
// NaN where a bin is hidden.
[[nodiscard]] std::vector<double> cover_along(const BandMaps& maps, double depth_mm, double bin_mm);
[[nodiscard]] double length_per_area_of(const BandMaps& maps, double depth_mm);
// Depth at which the profile, smoothed over three bins, first reaches `level` (half of the full zone's mean for the
// reading); between bins by a straight line. nullopt when it never does.
[[nodiscard]] std::optional<double> fill_depth(const std::vector<double>& by_depth, double bin_mm, double level);
// Length of line whose column, options.bare_column_mm wide, is covered less than `share`; columns that the card hides
// or the photo leaves out are neither bare nor covered.
struct BareLength {
    double mm = 0, unseen_mm = 0;
};
[[nodiscard]] BareLength bare_length(const BandMaps& maps, const EdgeOptions& options, double share);

}  // namespace kempt::edges
