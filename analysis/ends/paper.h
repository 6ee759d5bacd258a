// The light of the bare paper over the whole grid, seen where it is bare and carried on under the hair.
#pragma once

#include <opencv2/core.hpp>
#include <optional>

#include "card/card_layout.h"
#include "ends/grid.h"

namespace kempt::ends {

struct PaperLight {
    cv::Mat light;          // CV_32FC3, of the grid's size
    cv::Mat bare;           // CV_8UC1, cells of 0.5 mm: 255 where bare paper was seen
    double rim = 0;         // mean light of the rim's paper
    double bare_share = 0;  // of the valid cells
};

// Bare paper is smooth, bright and of one colour, and hangs together with the region's rim beyond the ends and beside
// the hair: cells of 0.5 mm are taken from there inward as long as light changes slowly (a shadow's soft edge is
// followed, a strand is not). Over the rest its light is carried on from coarser and coarser means. Empty where no
// such paper is seen along the last side. On the blue sheet its blue is what is followed: smooth and of one colour.
[[nodiscard]] std::optional<PaperLight> paper_light(const Grid& grid, card::Ground ground = card::Ground::white);

// What the rim of the region shows, where no sheet's markers say it: blue where it is far bluer than any light.
[[nodiscard]] card::Ground ground_of_rim(const Grid& grid);

}  // namespace kempt::ends
