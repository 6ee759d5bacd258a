// Ends of a lock mass laid on the gauge sheet, with the truth of its three readings.
// The hair comes in from the page's upper edge and hangs towards +y, turned by a few degrees. Its own frame: u across
// the hair (mm, 0 in the middle), v along it towards the ends (mm, 0 at the middle of the intended cut).
#pragma once

#include <vector>

#include "sheet.h"

namespace render {

enum class Cut { straight, slant, u_shape, v_shape };
enum class Ends { blunt, worn, shredded, thinned };
inline constexpr int cut_shapes = 4, end_kinds = 4;
extern const char* const cut_names[cut_shapes];
extern const char* const end_names[end_kinds];

struct HemHair {  // what the hair keeps from day to day
    double width_mm = 90;
    double layers = 4;  // strands' widths side by side over the width of the mass
    Cut cut = Cut::straight;
    double cut_mm = 0;  // how far the sides lie above the middle (U, V), or the left above the right (slant)
    Ends ends = Ends::blunt;
    double own_sd_mm = 0.5;     // of a strand's end about its lock's
    double lock_sd_mm = 0.3;    // of a lock's end about the cut
    double thinned_share = 0;   // of the strands end early, exponentially distributed
    double thinned_mm = 20;     // mean of how much
    double pointed = 0.2;       // 0..1: how far a lock's tip gathers to its middle
    double lock_mm = 6;         // width of a lock
    double stray_share = 0.01;  // of the strands leave the mass over its last centimetres
    double wave_mm = 40, wave_amplitude_mm = 0.6;
    double strand_mm = 0.07, strand_sd_mm = 0.012;  // Wolfram 2003: 60-80 um typical
    double thickness_mm = 1.2;                      // of the mass
    uint64_t seed = 1;
};
[[nodiscard]] HemHair random_hem(Rng& rng);

struct HemLie {                     // how it was laid down on one day
    double u_mm = 108, v_mm = 120;  // middle of the intended cut, sheet millimetres
    double turn_deg = 0;            // of the hair's direction from +y
    double spread = 1;              // of the mass, sideways
    double drift_mm = 1.2;          // SD of slow sideways shifts along the width
    double lock_shift_mm = 0.6, lock_slide_mm = 0.3, own_shift_mm = 0.25;  // SDs: sideways, along, one strand sideways
    uint64_t seed = 2;
};
[[nodiscard]] HemLie random_lie(Rng& rng);

// Strands from `reach_mm` above the cut (or the page's edge) to their ends.
[[nodiscard]] Coat lay_hem(const HemHair& hair, const HemLie& lie, const HairLook& look, double reach_mm = 90);

// The camera near the hem with the gauge card below it, turned as the page: as much is seen as hair and card need.
void aim_at_hem(SheetScene& scene, const HemHair& hair, const HemLie& lie, double px_per_mm, Rng& shot);

// ---- Truth
// Of the share of paper hidden, on a grid of 0.1 mm in the hair's own frame as the camera sees it on the paper:
//  - column: 2 mm across; its cover at v is the mean over the column and 1 mm along.
//  - hem of a column: the place where its cover falls through half of the full cover F. Of several such places the one
//    that best parts covered from bare: where the running sum of (cover - F/2) from the roots on is largest.
//  - smooth perimeter: a cubic spline with knots every 60 mm (one span below 90 mm) and one bend (a change of slope,
//    where it leaves the least residual, 15 mm or more from the ends) through the hem of all columns (every 0.5 mm), by
//    least squares with Huber's weights (Huber 1981; reach of 2 median residuals, at least 0.3 mm), so that gaps
//    between locks do not draw it in. The spline holds straight, slanted and rounded cuts, the bend a pointed one:
//    these are even. Columns more than 20 mm off are left out.
//  - sides: on each side the straight line that holds most of (cover - F/2) between itself and the middle, over 2-40 mm
//    inside the smooth hem. Hem columns have their middle 2 mm or more inside of it, at 5 mm inside the hem.
//  - full cover F: mean over the hem columns, 20-30 mm inside the smooth hem. (Found together in four passes.)
//  - hem_unevenness: RMS of hem minus smooth perimeter over the hem columns, mm.
//  - see_through: 100 (1 - mean cover) over the hem columns from the smooth hem to 20 mm inside.
//  - silhouette: smooth hem and the two sides.
//  - flyaway: % of the hair's area from 40 mm inside the smooth hem to 20 mm outside the silhouette that lies outside
//    the silhouette.
struct HemTruth {
    double hem_unevenness = 0, see_through = 0, flyaway = 0;
    double full_cover = 0, width_mm = 0;
    double left_out = 0;                // share of columns more than 20 mm off
    std::vector<V2> hem_mm, smooth_mm;  // sheet millimetres, every 0.5 mm across
    std::vector<V2> silhouette_mm;      // closed
};
[[nodiscard]] HemTruth hem_truth(const SheetScene& scene, const HemHair& hair, const HemLie& lie,
                                 const std::vector<float>& cover);

// The corners of a region as a person would draw it: the last 44 mm of the hair, 25 mm of paper around; the first side
// lies in the hair.
[[nodiscard]] std::vector<V2> hem_region_px(const SheetScene& scene, const HemHair& hair, const HemLie& lie, Rng& hand);

}  // namespace render
