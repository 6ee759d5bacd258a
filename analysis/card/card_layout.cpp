#include "card/card_layout.h"

#include "card/markers.h"

namespace kempt::card {
namespace {

// Six reflectances at even steps of CIE lightness: L* 20.0, 35.2, 50.4, 65.6, 80.8, 96.0 (CIE 15, Y = ((L* + 16) /
// 116)^3). Even in lightness because a phone's tone curve bends in lightness-like codes: even steps there put a sample
// on every stretch of the curve, shadows included, where even steps of light would leave five of six patches in the
// highlights. 0.03 is about the darkest that office toner and ink reach on plain paper; 0.9 stays below bare paper
// (1.0), so that a slightly over-exposed photo clips the paper before the lightest patch. All are relative to the bare
// paper.
constexpr double darkest_lightness = 20.0, lightest_lightness = 96.0;
constexpr int columns = 6;

double reflectance_at(int step) {
    const double lightness = darkest_lightness + (lightest_lightness - darkest_lightness) * step / (columns - 1);
    return std::pow((lightness + 16) / 116, 3);
}

// Rows of 9 mm beside the markers' rows with 4 mm of bare paper above, between and below: the paper beside a patch
// tells how much light falls there. 8 mm patches at a pitch of 9 mm keep 2 mm of paper to the markers (their quiet zone
// needs one cell of 1.7 mm).
constexpr double first_x_mm = 15, pitch_mm = 9, gap_mm = 1, row_height_mm = 9;
constexpr std::array<double, 2> row_top_mm{4, 17};

std::vector<Patch> make_patches() {
    std::vector<Patch> patches;
    for (int row = 0; row < 2; ++row)
        for (int column = 0; column < columns; ++column)
            patches.push_back({.area_mm = {first_x_mm + pitch_mm * column + gap_mm / 2,
                                           row_top_mm[static_cast<size_t>(row)], pitch_mm - gap_mm, row_height_mm},
                               .reflectance = reflectance_at(row == 0 ? column : columns - 1 - column),
                               .row = row,
                               .column = column});
    return patches;
}

}  // namespace

const std::vector<Patch>& card_patches() {
    static const std::vector<Patch> patches = make_patches();
    return patches;
}

cv::Size2d paper_size_mm(Paper paper) {
    // ANSI/ASME Y14.1 size A (8.5 x 11 inches) and ISO 216 A4.
    return paper == Paper::letter ? cv::Size2d(215.9, 279.4) : cv::Size2d(210, 297);
}

std::array<cv::Point2d, 4> sheet_marker_centres_mm(Paper paper) {
    const cv::Size2d page = paper_size_mm(paper);
    const double inset = sheet_marker_inset_mm;
    return {{{inset, inset},
             {page.width - inset, inset},
             {page.width - inset, page.height - inset},
             {inset, page.height - inset}}};
}

cv::Rect2d blue_area_mm(Paper paper) {
    // 7 mm at the sides: what office printers leave white at most (a quarter of an inch, common practice). Above and
    // below the markers keep their quiet zone of one cell (they end 25 mm from the edge); the strip below is as high as
    // the gauge card that lies in it, and 3 mm of paper on both sides.
    constexpr double side = 7, above = 30, below = 36;
    const cv::Size2d page = paper_size_mm(paper);
    return {side, above, page.width - 2 * side, page.height - above - below};
}

std::array<std::array<bool, 6>, 6> marker_cells(int id) {
    const cv::Mat bits = marker_bits(id);
    std::array<std::array<bool, 6>, 6> cells{};
    for (int y = 0; y < bits.rows; ++y)
        for (int x = 0; x < bits.cols; ++x)
            cells[static_cast<size_t>(y + 1)][static_cast<size_t>(x + 1)] = bits.at<uchar>(y, x) != 0;
    return cells;
}

}  // namespace kempt::card
