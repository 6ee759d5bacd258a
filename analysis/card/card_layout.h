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
// What lies behind the hair: bare white paper, or the printed blue of the sheet for the ends of grey hair.
enum class Ground { white, blue };
// Sheet: markers clockwise from the top left, 20 mm, centres 15 mm from each edge of the printable page; ids 4-7 on the
// white sheet, 8-11 on the blue one, so that a photo says itself which of them it shows.
inline constexpr double sheet_marker_mm = 20, sheet_marker_inset_mm = 15;
[[nodiscard]] std::array<cv::Point2d, 4> sheet_marker_centres_mm(Paper paper);
[[nodiscard]] constexpr int sheet_first_id(Ground ground) {
    return ground == Ground::white ? 4 : 8;
}
// The part of the blue sheet that is printed blue, millimetres of the page; white paper stays around it.
[[nodiscard]] cv::Rect2d blue_area_mm(Paper paper);
// What is asked of the printer, linear sRGB light. Nothing relies on it: each photo says what its sheet's blue is. Dark
// in red, where light hair is bright, and bright in blue, where black hair is dark: hair of any lightness lacks blue
// less red before it (docs/methods-lengths.md).
inline constexpr std::array<double, 3> blue_print{0.04, 0.12, 0.50};

// One black or white module-wise picture of a marker including its black border: 6 x 6 cells, true is white.
[[nodiscard]] std::array<std::array<bool, 6>, 6> marker_cells(int id);

enum class Kind { card, sheet };
// A raster of the card or sheet at px_per_mm (4..60), sRGB-coded, anti-aliased: CV_8UC1, the blue sheet CV_8UC3 (RGB).
// The card is drawn with its 84 x 30 mm face alone (no margin), so that pixel (x, y) is millimetre (x / px_per_mm, y /
// px_per_mm).
[[nodiscard]] cv::Mat draw(Kind kind, Paper paper, double px_per_mm, Ground ground = Ground::white);

}  // namespace kempt::card
