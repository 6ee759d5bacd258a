#include "edges/reference_colours.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace kempt::edges {

namespace {
using Triples = std::vector<std::array<float, 3>>;

// One channel's values in a thousand even steps between the least and the greatest, those of each step together. A
// quantile then lies in one of the steps; it is the same value that sorting would give.
class Sorter {
  public:
    void fill(const Triples& triples, size_t channel) {
        const size_t n = triples.size();
        values_.resize(n);
        in_steps_.resize(n);
        end_.assign(steps + 1, 0);
        if (n == 0) return;
        float low = triples[0][channel], high = low;
        for (size_t i = 0; i < n; ++i) {
            const float v = values_[i] = triples[i][channel];
            low = std::min(low, v), high = std::max(high, v);
        }
        const float scale = high > low ? (steps - 1) / (high - low) : 0;
        const auto step = [&](float v) { return static_cast<size_t>((v - low) * scale); };
        for (const float v : values_) ++end_[step(v) + 1];
        std::partial_sum(end_.begin(), end_.end(), end_.begin());
        // end_[k] is the first place of step k, and after the values are laid out its end.
        for (const float v : values_) in_steps_[end_[step(v)]++] = v;
    }
    // share 0..1; 0 of nothing.
    float quantile(double share) {
        if (in_steps_.empty()) return 0;
        const auto place = static_cast<size_t>(share * static_cast<double>(in_steps_.size() - 1));
        const auto end = std::upper_bound(end_.begin(), end_.end(), place);
        const auto begin = in_steps_.begin();
        const auto from = begin + static_cast<std::ptrdiff_t>(end == end_.begin() ? 0 : *(end - 1)),
                   at = begin + static_cast<std::ptrdiff_t>(place);
        std::nth_element(from, at, begin + static_cast<std::ptrdiff_t>(*end));
        return *at;
    }

  private:
    static constexpr int steps = 1000;
    std::vector<float> values_, in_steps_;
    std::vector<size_t> end_;
};

float median(const Triples& triples, size_t channel) {
    Sorter sorter;
    sorter.fill(triples, channel);
    return sorter.quantile(0.5);
}
}  // namespace

ReferenceColours reference_colours(const Triples& outer, const Triples& deep, const Triples& hair_taps,
                                   const Triples& scalp_taps, double px_per_mm) {
    ReferenceColours out;
    for (size_t c = 0; c < 3; ++c) out.log_skin[c] = median(scalp_taps.empty() ? outer : scalp_taps, c);
    Sorter sorter;
    size_t slot = 0;
    for (size_t c = 0; c < 3; ++c) {
        sorter.fill(deep, c);
        for (const double share : {0.05, 0.25, 0.5, 0.75, 0.95})
            out.context[slot++] = sorter.quantile(share) - out.log_skin[c];
    }
    for (size_t c = 0; c < 3; ++c) {
        sorter.fill(outer, c);
        for (const double share : {0.1, 0.5, 0.9}) out.context[slot++] = sorter.quantile(share) - out.log_skin[c];
    }
    for (size_t c = 0; c < 3; ++c) out.context[slot++] = hair_taps.empty() ? 0 : median(hair_taps, c) - out.log_skin[c];
    out.context[slot++] = hair_taps.empty() ? 0.f : 1.f;
    out.context[slot++] = static_cast<float>(std::log2(px_per_mm / 20));
    return out;
}

}  // namespace kempt::edges
