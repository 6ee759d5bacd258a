// Small pictures of ends for fitting the estimate of cover (tests/render/train/ends.py).
#pragma once

#include <cstdint>
#include <cstdio>

#include "card/card_layout.h"

namespace bench {

// Writes COUNT records: hair colour, light known, px/mm, number of cells near the hem, number elsewhere (float32), then
// for each cell inputs_of() and its true cover (float32).
// On the blue sheet the inputs are blue_inputs_of() and the hair is blonde, grey or salt and pepper;
// `whole_photos`: from photos as the benchmark's own, on the blue sheet alone.
int write_strips(uint64_t seed, uint64_t count, kempt::card::Ground ground, bool whole_photos, std::FILE* out);

}  // namespace bench
