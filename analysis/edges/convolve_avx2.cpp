// The convolutions with eight lanes (AVX2 and FMA of x86-64).
#include "edges/convolve_machines.h"

#ifdef KEMPT_X86
#pragma GCC target("avx2,fma")

namespace kempt::edges {

namespace {
#define LANES 8
#define BIG_BLOCK 0  // 16 registers hold 4 channels of three lanes
#include "edges/convolve_lanes.h"
}  // namespace

extern const Convolver avx2_convolver{"avx2", block, direct, winograd, part, join};

}  // namespace kempt::edges

#endif
