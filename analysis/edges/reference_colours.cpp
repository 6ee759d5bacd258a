#include "edges/reference_colours.h"

#include <algorithm>
#include <cmath>

namespace kempt::edges {

namespace {
using Triples = std::vector<std::array<float, 3>>;

float quantile(const Triples& triples, size_t channel, double share, std::vector<float>& scratch) {
    if (triples.empty()) return 0;
    scratch.resize(triples.size());
    std::transform(triples.begin(), triples.end(), scratch.begin(), [channel](const auto& t) { return t[channel]; });
    const auto at = scratch.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(scratch.size() - 1));
    std::nth_element(scratch.begin(), at, scratch.end());
    return *at;
}
}  // namespace

ReferenceColours reference_colours(Triples& outer, Triples& deep, const Triples& hair_taps, const Triples& scalp_taps,
                                   double px_per_mm) {
    ReferenceColours out;
    std::vector<float> scratch;
    for (size_t c = 0; c < 3; ++c) out.log_skin[c] = quantile(scalp_taps.empty() ? outer : scalp_taps, c, 0.5, scratch);
    size_t slot = 0;
    for (size_t c = 0; c < 3; ++c)
        for (const double share : {0.05, 0.25, 0.5, 0.75, 0.95})
            out.context[slot++] = quantile(deep, c, share, scratch) - out.log_skin[c];
    for (size_t c = 0; c < 3; ++c)
        for (const double share : {0.1, 0.5, 0.9})
            out.context[slot++] = quantile(outer, c, share, scratch) - out.log_skin[c];
    for (size_t c = 0; c < 3; ++c)
        out.context[slot++] = hair_taps.empty() ? 0 : quantile(hair_taps, c, 0.5, scratch) - out.log_skin[c];
    out.context[slot++] = hair_taps.empty() ? 0.f : 1.f;
    out.context[slot++] = static_cast<float>(std::log2(px_per_mm / 20));
    return out;
}

}  // namespace kempt::edges
