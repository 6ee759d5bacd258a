// Luster of a reflection curve in closed form: the formulas, apart from any photo.
#pragma once

#include <vector>

namespace kempt::shine {

// Areas are trapezoids over the whole curve, first value to last; step in mm (or degrees: the units of width follow).
// stamm = (S - D) / S after Stamm et al. 1977, luster = S / (D width) after Reich and Robbins 1993, both as quoted by
// McMullen and Jachowicz 2003 (J Cosmet Sci 54:335-351, eq. 2 and 3). S there is read as the WHOLE area under the
// curve: their values of 0.67-0.72 fit nothing else, and stamm then lies in 0..1. With S' = S - D, the light over the
// line alone, the same formulas give stamm_excess and luster_excess = luster - 1 / width.
struct CurveLuster {
    double whole = 0;    // S: area under the curve
    double line = 0;     // D: area under the straight line that joins its ends
    double width = 0;    // full width at half height over that line
    double peak = 0;     // height over the line at its highest
    double peak_at = 0;  // place of it from the first value
    double stamm = 0, luster = 0;
    double stamm_excess = 0, luster_excess = 0;
};

// `curve`: three values or more, not negative. A curve that nowhere rises over its line, or lies at zero, gives width,
// luster and stamm 0. The width is read by straight interpolation between the values, outward from the peak; where
// the curve does not fall to half height inside, it ends at the curve's end.
[[nodiscard]] CurveLuster luster_of(const std::vector<double>& curve, double step);

}  // namespace kempt::shine
