// The convolutions with four lanes, which every machine has.
#include "edges/convolve_machines.h"

namespace kempt::edges {

namespace {
#define LANES 4
#define BIG_BLOCK 0  // 16 registers hold 4 channels of three lanes
#include "edges/convolve_lanes.h"
}  // namespace

extern const Convolver portable_convolver{"portable", block, direct, winograd, part, join};

}  // namespace kempt::edges
