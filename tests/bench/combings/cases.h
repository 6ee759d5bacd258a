// Photos of combed-out strands on the gauge sheet with their truth.
#pragma once

#include <cstdint>
#include <vector>

#include "combings/combings.h"
#include "render/sheet.h"

namespace bench {

inline constexpr int strand_shapes = 3;  // straight, wavy, coiled
extern const char* const shape_names[strand_shapes];

// JPEG qualities that phones and messengers save photos with; a client's photos keep theirs.
inline constexpr int jpeg_qualities[] = {62, 70, 85, 92, 95};
extern const char* const quality_names[5];

struct CombingsCase {
    int hair = 0, shape = 0;
    int quality = 3;  // which of jpeg_qualities
    std::vector<render::LooseStrand> strands;
};
// What was combed out of a head: 5 to 60 strands, of coiled hair 3 to 20 (more of it lie in a mat), of 9 to 26 cm with
// a share of broken ones of 5 % to a half. Nine photos in twenty show straight hair, seven wavy, four coiled.
[[nodiscard]] CombingsCase combings_case(uint64_t person);
// Of pairs: 30 to 50 strands, straight or wavy, of every second person a third to a half of them broken, of the others
// (`mostly_broken`) 58 to 70 %.
[[nodiscard]] CombingsCase pairs_case(uint64_t person);
[[nodiscard]] bool mostly_broken(uint64_t person);
// The same person after better weeks: half of the broken strands and a quarter of the others are not there; of those
// mostly broken three quarters and a tenth, which leaves about a third broken: the documented change of the median,
// which stays among the whole strands, and says little, while fewer than half of them are broken.
[[nodiscard]] CombingsCase recovered(const CombingsCase& before, uint64_t person);

struct CombingsShot {
    render::SheetShot shot;
    bool display_p3 = false;
    double strands = 0, median_mm = 0, short_share = 0;  // truth
    double middle_mm[2] = {0, 0};  // the middle strand, twice, or the middle two: each length between them is a median
};
// Sets strands, median_mm (mean of the middle two), short_share and middle_mm by the lengths of the shot.
void tell_truth(CombingsShot& shot);
// lie: how they were thrown down. shot: light, phone, camera.
[[nodiscard]] CombingsShot take_combings(const CombingsCase& one, uint64_t person, uint64_t lie, uint64_t shot);

// How the marks of a reading lie on the true strands.
struct Marks {
    double marked = 0;       // % of the true length that lies within 0.4 mm of a mark
    int lost = 0;            // strands marked over less than half of their length
    int right = 0;           // strands with a traced one along nine tenths of them, of a length within 8 %
    double length_held = 0;  // % of the right ones whose interval holds the true length
    double stray_mm = 0;     // length of the marks of dim strands that lies on no true strand
};
[[nodiscard]] Marks compare_marks(const CombingsShot& shot, const kempt::combings::CombingsReadings& read);

}  // namespace bench
