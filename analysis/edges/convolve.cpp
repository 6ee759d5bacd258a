#include "edges/convolve.h"

#include <opencv2/core.hpp>

#include "edges/convolve_machines.h"

namespace kempt::edges {

std::vector<const Convolver*> convolvers() {
    std::vector<const Convolver*> all{&portable_convolver};
#ifdef KEMPT_X86
    const bool eight = cv::checkHardwareSupport(CV_CPU_AVX2) && cv::checkHardwareSupport(CV_CPU_FMA3);
    if (eight) all.push_back(&avx2_convolver);
    if (eight && cv::checkHardwareSupport(CV_CPU_AVX_512F)) all.push_back(&avx512_convolver);
#endif
    return all;
}

const Convolver& convolver() {
    static const Convolver& best = *convolvers().back();
    return best;
}

Packed pack(const Convolver& by, int in, int out, int taps, const std::vector<float>& weights,
            const std::vector<float>& bias) {
    CV_Assert(weights.size() == static_cast<size_t>(in * out * taps) && bias.size() == static_cast<size_t>(out) &&
              taps <= most_taps && out <= most_channels);
    Packed packed{in, out, taps, {}, bias};
    packed.weights.reserve(weights.size());
    const int each = by.block(out);
    for (int first = 0; first < out; first += each)
        for (int i = 0; i < in; ++i)
            for (int t = 0; t < taps; ++t)
                for (int o = first; o < std::min(out, first + each); ++o)
                    packed.weights.push_back(weights[static_cast<size_t>((o * in + i) * taps + t)]);
    return packed;
}

Packed pack_winograd(const Convolver& by, int in, int out, const std::vector<float>& weights,
                     const std::vector<float>& bias) {
    CV_Assert(weights.size() == static_cast<size_t>(in * out * 9));
    // What each of the six transformed rows takes of the three rows of weights.
    constexpr double share[6][3] = {{1 / 4., 0, 0},
                                    {-1 / 6., -1 / 6., -1 / 6.},
                                    {-1 / 6., 1 / 6., -1 / 6.},
                                    {1 / 24., 1 / 12., 1 / 6.},
                                    {1 / 24., -1 / 12., 1 / 6.},
                                    {0, 0, 1}};
    Packed all{in, out, 3, {}, bias};
    std::vector<float> row(static_cast<size_t>(in * out * 3));
    for (const auto& s : share) {
        for (size_t pair = 0; pair < static_cast<size_t>(in * out); ++pair)
            for (size_t x = 0; x < 3; ++x) {
                double sum = 0;
                for (size_t y = 0; y < 3; ++y) sum += s[y] * weights[9 * pair + 3 * y + x];
                row[3 * pair + x] = static_cast<float>(sum);
            }
        const Packed one = pack(by, in, out, 3, row, bias);
        all.weights.insert(all.weights.end(), one.weights.begin(), one.weights.end());
    }
    return all;
}

}  // namespace kempt::edges
