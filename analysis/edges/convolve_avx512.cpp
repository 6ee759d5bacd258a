// The convolutions with sixteen lanes (AVX-512F of x86-64).
#include "edges/convolve_machines.h"

#ifdef KEMPT_X86
#pragma GCC target("avx512f,fma")

namespace kempt::edges {

namespace {
#define LANES 16
#define BIG_BLOCK 1  // 32 registers hold 8 channels of three lanes
#include "edges/convolve_lanes.h"
}  // namespace

extern const Convolver avx512_convolver{"avx512", block, direct, winograd, part, join};

}  // namespace kempt::edges

#endif
