// The machines that the convolutions are compiled for.
#pragma once

#include "edges/convolve.h"

#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__)
#define KEMPT_X86  // GCC's #pragma GCC target
#endif

namespace kempt::edges {

extern const Convolver portable_convolver;
#ifdef KEMPT_X86
extern const Convolver avx2_convolver, avx512_convolver;
#endif

}  // namespace kempt::edges
