// Small pictures of ends for fitting the estimate of cover (tests/render/train/ends.py).
#pragma once

#include <cstdint>
#include <cstdio>

namespace bench {

// Writes COUNT records: hair colour, light known, px/mm, number of cells near the hem, number elsewhere (float32), then
// for each cell inputs_of() and its true cover (float32).
int write_strips(uint64_t seed, uint64_t count, std::FILE* out);

}  // namespace bench
