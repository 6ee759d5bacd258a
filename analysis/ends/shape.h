// Hem, smooth perimeter and silhouette from the cover of the region.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "ends/ends.h"
#include "ends/look.h"
#include "ends/perimeter.h"

namespace kempt::ends {

// Sums of cover over boxes, in millimetres of the region; what is not valid adds nothing.
class CoverSums {
  public:
    CoverSums(const cv::Mat& cover, const cv::Mat& valid, double cell_mm);
    struct Sum {
        double cover = 0, seen = 0;  // mm2
        [[nodiscard]] double mean() const { return seen > 0 ? cover / seen : 0; }
    };
    // u is rounded to whole cells, v is not.
    [[nodiscard]] Sum over(double u0, double v0, double u1, double v1) const;
    // One sum for each row of cells between u0 and u1.
    [[nodiscard]] std::vector<Sum> rows_between(double u0, double u1) const;
    [[nodiscard]] double width_mm() const { return cols_ * cell_; }
    [[nodiscard]] double length_mm() const { return rows_ * cell_; }

  private:
    int cols_, rows_;
    double cell_;
    cv::Mat1d cover_, seen_;  // sums from the top left corner, one row and column more than cells
};

inline constexpr double column_step_mm = 0.5;             // the hem is found this often across
inline constexpr double stretch_mm = 1;                   // over which a column's cover is taken along the hair
inline constexpr double inside_mm = 40, outside_mm = 20;  // flyaway looks this far inside and outside

// A side of the hair: u at side_depth_mm inside the smooth hem, and its change with each millimetre further in.
inline constexpr double side_depth_mm = 5;
struct SideLine {
    double u = 0, slope = 0;
    [[nodiscard]] double at(double depth_mm) const { return u + slope * (depth_mm - side_depth_mm); }
};

struct HemShape {
    std::vector<double> u, hem;  // columns of the hem, and where it lies
    Perimeter smooth;
    SideLine left, right;
    double full_cover = 0;
    double half = 0.5;       // share of full cover at which the hem was taken
    double left_out = 0;     // share of columns more than 20 mm off the smooth perimeter
    double deep_enough = 0;  // share of the hem whose last 30 mm lie in the region
};

// Definitions, with cover c on the region's plane:
//  - a column is column_mm wide; its cover at v is the mean over the column and 1 mm along.
//  - hem of a column: where its cover falls through level x full cover (level: `half`); of several such places the one
//    that best parts covered from bare, the largest running sum of (cover - level x full) from the roots on.
//  - smooth perimeter: see perimeter.h, through the hem of all columns; columns more than 20 mm off are left out.
//  - sides: on each side the straight line that holds most of (cover - half full cover) between itself and the middle,
//    over 2-40 mm inside the smooth hem. Columns of the hem have their middle 2 mm or more inside of it.
//  - full cover: mean over the hem, last_mm to last_mm + 10 mm inside the smooth hem.
// half: what an estimate of cover gives a place that is covered half as much as the fullest, as a share of what it
// gives these; 0.5 where cover is known. Empty (no u) where less than least_width_mm of hem was found.
[[nodiscard]] HemShape find_shape(const CoverSums& cover, const EndsOptions& options, double half = 0.5);

// RMS of hem minus smooth perimeter, mm; the second for another level than shape.half (what an error of cover would
// do).
[[nodiscard]] double unevenness(const HemShape& shape);
[[nodiscard]] double unevenness_at(const CoverSums& cover, const HemShape& shape, const EndsOptions& options,
                                   double level);
// Share of paper over the last_mm inside the smooth hem.
[[nodiscard]] double bare_share(const CoverSums& cover, const HemShape& shape, double last_mm);

struct Flyaway {
    double inside = 0, outside = 0;  // hair's area, mm2
    double seen = 0;                 // share of the 20 mm around the silhouette that lies in the region
    double rim_mm2 = 0;              // area of it that was seen
};
[[nodiscard]] Flyaway flyaway(const CoverSums& cover, const HemShape& shape);

}  // namespace kempt::ends
