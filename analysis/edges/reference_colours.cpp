#include "edges/reference_colours.h"

#include <algorithm>
#include <cmath>

namespace kempt::edges {

namespace {
using Triples = std::vector<std::array<float, 3>>;

// shares: rising. Each search goes on in what the one before left above its place.
template <size_t count>
std::array<float, count> quantiles(const Triples& triples, size_t channel, const std::array<double, count>& shares,
                                   std::vector<float>& scratch) {
    std::array<float, count> out{};
    if (triples.empty()) return out;
    scratch.resize(triples.size());
    std::transform(triples.begin(), triples.end(), scratch.begin(), [channel](const auto& t) { return t[channel]; });
    auto from = scratch.begin();
    for (size_t i = 0; i < count; ++i) {
        const auto at =
            scratch.begin() + static_cast<std::ptrdiff_t>(shares[i] * static_cast<double>(scratch.size() - 1));
        std::nth_element(from, at, scratch.end());
        out[i] = *at;
        from = at;
    }
    return out;
}

float median(const Triples& triples, size_t channel, std::vector<float>& scratch) {
    return quantiles<1>(triples, channel, {0.5}, scratch)[0];
}
}  // namespace

ReferenceColours reference_colours(Triples& outer, Triples& deep, const Triples& hair_taps, const Triples& scalp_taps,
                                   double px_per_mm) {
    ReferenceColours out;
    std::vector<float> scratch;
    for (size_t c = 0; c < 3; ++c) out.log_skin[c] = median(scalp_taps.empty() ? outer : scalp_taps, c, scratch);
    size_t slot = 0;
    for (size_t c = 0; c < 3; ++c)
        for (const float deep_at : quantiles<5>(deep, c, {0.05, 0.25, 0.5, 0.75, 0.95}, scratch))
            out.context[slot++] = deep_at - out.log_skin[c];
    for (size_t c = 0; c < 3; ++c)
        for (const float outer_at : quantiles<3>(outer, c, {0.1, 0.5, 0.9}, scratch))
            out.context[slot++] = outer_at - out.log_skin[c];
    for (size_t c = 0; c < 3; ++c)
        out.context[slot++] = hair_taps.empty() ? 0 : median(hair_taps, c, scratch) - out.log_skin[c];
    out.context[slot++] = hair_taps.empty() ? 0.f : 1.f;
    out.context[slot++] = static_cast<float>(std::log2(px_per_mm / 20));
    return out;
}

}  // namespace kempt::edges
