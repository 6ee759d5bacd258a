// Loops that are compiled a second time for processors with vectors of eight and a bit count, chosen when the program
// starts. A room that uses it is compiled without fused multiplication (CMakeLists.txt): both give the same bits.
#pragma once

#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__)
#define KEMPT_TWICE __attribute__((target_clones("default", "arch=x86-64-v3")))
#define KEMPT_WITHIN inline __attribute__((always_inline))
#else
#define KEMPT_TWICE
#define KEMPT_WITHIN inline
#endif
