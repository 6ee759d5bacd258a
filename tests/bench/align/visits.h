// Two visits of one rendered person: skin and head stay, hair changes, the card, the camera and the light come anew.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "render/close_up.h"

namespace bench {

struct Visit {
    render::Scene scene;
    render::Shot shot;
    std::vector<uint8_t> jpeg;
    double px_per_mm = 0;
};

struct VisitPair {
    Visit earlier, later;
    bool any_light = false;  // the later visit is lit from anywhere; else the same chair and lamps, set up again
    std::string change;  // of the hair: "none", "density", "restyled" (other strands), "grown out" (line 1-3 mm out)
    double card_shift_mm = 0, card_turn_deg = 0;  // how much else the card lies
};

// Everything follows from the seed. Photos of 12-14 px/mm, every fifth of 20-21.5. Not yet photographed.
[[nodiscard]] VisitPair visit_pair(uint64_t seed, const render::CardPicture& card);
void photograph(VisitPair& pair);

// The same places of the head in both photos: the earlier photo's edge line every millimetre, and where the later
// camera sees those points of the scalp.
struct SamePlaces {
    std::vector<render::V2> earlier_px, later_px;
};
[[nodiscard]] SamePlaces edge_places(const VisitPair& pair);

}  // namespace bench
