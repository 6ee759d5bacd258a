// How far the colours of root, mid and end hang on where the lane happens to lie: its strips differ from each other
// where hair is mixed (white among dark fibres), and another day another lane is read.
#pragma once

#include <array>
#include <vector>

#include "tone/lane_rows.h"

namespace kempt::tone {

// The body colours of rows: light with the fitted highlight taken out.
class Body {
  public:
    Body(const StrandModel& model, const StrandModel::Parameters& parameters);
    // Lab of a row of this light (linear sRGB).
    [[nodiscard]] cv::Vec3d lab(size_t row, const cv::Vec3d& light) const;
    // What the model expects there.
    [[nodiscard]] const cv::Vec3d& expected_lab(size_t row) const { return expected_[row].lab; }

  private:
    struct Expected {
        cv::Vec3d lab, light;
        double shine = 0;
    };
    std::vector<Expected> expected_;
};

// The rows of root, mid and end, usable or not.
[[nodiscard]] std::array<std::vector<size_t>, 3> rows_of_zones(const Rows& rows, double zone_share);

// L, a, b of root, mid and end.
using ZoneColours = cv::Matx<double, 9, 1>;

// Covariance of the zones' colours over lanes beside this one, by the jackknife over its strips (Tukey 1958, Ann Math
// Stat 29:614; Efron & Stein 1981, Ann Stat 9:586-596, pages from memory). 0 for a zone without a usable row; a strip
// that is not seen counts as one that differs by nothing.
[[nodiscard]] cv::Matx<double, 9, 9> covariance_of_placing(const Rows& rows, const std::vector<StripRow>& strips,
                                                           const Body& body, double zone_share);

// The zones' colours as they are seen, highlights and all, over the strips [from, to). 0 for a zone that is not seen.
[[nodiscard]] ZoneColours seen_colours(const Rows& rows, const std::vector<StripRow>& strips, double zone_share,
                                       size_t from, size_t to);

}  // namespace kempt::tone
