// A small counter-free generator (xoshiro256**, Blackman & Vigna 2018): the same seed gives the same scene everywhere.
#pragma once

#include <cmath>
#include <cstdint>

namespace render {

class Rng {
  public:
    explicit Rng(uint64_t seed) {
        for (auto& word : s_) {
            seed += 0x9e3779b97f4a7c15ull;
            uint64_t z = seed;
            z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ull;
            z = (z ^ (z >> 27)) * 0x94d049bb133111ebull;
            word = z ^ (z >> 31);
        }
    }
    uint64_t next() {
        const uint64_t result = rotl(s_[1] * 5, 7) * 9, t = s_[1] << 17;
        s_[2] ^= s_[0];
        s_[3] ^= s_[1];
        s_[1] ^= s_[2];
        s_[0] ^= s_[3];
        s_[2] ^= t;
        s_[3] = rotl(s_[3], 45);
        return result;
    }
    double uniform() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }
    double uniform(double low, double high) { return low + (high - low) * uniform(); }
    double log_uniform(double low, double high) { return low * std::exp(uniform() * std::log(high / low)); }
    bool chance(double p) { return uniform() < p; }
    int index(int n) { return static_cast<int>(uniform() * n); }
    double normal() {
        const double u = 1 - uniform(), v = uniform();
        return std::sqrt(-2 * std::log(u)) * std::cos(6.283185307179586 * v);
    }
    double normal(double mean, double sd) { return mean + sd * normal(); }

  private:
    static uint64_t rotl(uint64_t x, int k) { return (x << k) | (x >> (64 - k)); }
    uint64_t s_[4];
};

}  // namespace render
