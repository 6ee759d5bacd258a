// What is printed on the gauge card and the gauge sheet, in millimetres. The one place that knows.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

namespace kempt::card {

// Card 84 x 30 mm, four ArUco DICT_4X4_50 markers of 10 mm, ids 0-3 clockwise from the top left.
inline constexpr double card_width_mm = 84, card_height_mm = 30, card_marker_mm = 10;
inline const std::array<cv::Point2d, 4> card_marker_centres_mm{{{8, 8}, {76, 8}, {76, 22}, {8, 22}}};

// A neutral patch: a rectangle in card millimetres and its printed reflectance (linear light, 0..1).
struct Patch {
    cv::Rect2d area_mm;
    double reflectance = 0;
    int row = 0;     // 0 top, 1 bottom (reversed order)
    int column = 0;  // 0..5 from the left
};
// The twelve patches, top row left to right, then the bottom row.
[[nodiscard]] const std::vector<Patch>& card_patches();

enum class Paper { letter, a4 };
// Page size in mm, portrait.
[[nodiscard]] cv::Size2d paper_size_mm(Paper paper);
// Sheet: markers ids 4-7 clockwise from the top left, 20 mm, centres 15 mm from each edge of the printable page.
inline constexpr double sheet_marker_mm = 20, sheet_marker_inset_mm = 15;
[[nodiscard]] std::array<cv::Point2d, 4> sheet_marker_centres_mm(Paper paper);

// One black or white module-wise picture of a marker including its black border: 6 x 6 cells, true is white.
[[nodiscard]] std::array<std::array<bool, 6>, 6> marker_cells(int id);

enum class Kind { card, sheet };
// A grey raster of the card or sheet at px_per_mm (4..60): CV_8UC1, sRGB-coded, anti-aliased. The card is drawn with
// its 84 x 30 mm face alone (no margin), so that pixel (x, y) is millimetre (x / px_per_mm, y / px_per_mm).
[[nodiscard]] cv::Mat draw(Kind kind, Paper paper, double px_per_mm);

}  // namespace kempt::card
