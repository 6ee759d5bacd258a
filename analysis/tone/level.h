// The trade's level of depth, 1 (black) to 10 (lightest blonde), from CIE L*.
#pragma once

#include <array>

namespace kempt::tone {

// Own calibration, to be edited here: L* (D65, relative to the card's white) at the middle of each level, set from
// memory of common practice; no published L* per level could be found (a survey of 2057 people says only that visual
// level and L* go closely together: Int J Cosmet Sci 39 (2017) 101-107). Two stylists differ by about a level, and so
// do two makers' charts.
inline constexpr std::array<double, 10> lightness_of_level{10, 14, 18, 23, 29, 36, 44, 53, 63, 73};
// Half width of the 95 % range that this table's own uncertainty gives a level (own choice, see above).
inline constexpr double level_doubt = 1.0;

// Between two levels in proportion; 1 below the first and 10 above the last.
[[nodiscard]] double level_of_lightness(double lightness);

}  // namespace kempt::tone
