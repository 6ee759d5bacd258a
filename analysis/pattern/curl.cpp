// The curl scale, and stretch.
#include <algorithm>
#include <array>
#include <cmath>

#include "pattern/pattern.h"

namespace kempt::pattern {

namespace {

constexpr std::array<double, 5> most_mm = {6, 12, 24, 48, 96};

}  // namespace

Curl curl_of(double curve_diameter_mm) {
    constexpr std::array<Curl, 5> steps = {Curl::very_tight, Curl::tight, Curl::medium, Curl::loose, Curl::bend};
    for (std::size_t i = 0; i < steps.size(); ++i)
        if (curve_diameter_mm < most_mm[i]) return steps[i];
    return Curl::straight;
}

std::string word_of(Curl curl) {
    switch (curl) {
        case Curl::straight:
            return "straight";
        case Curl::bend:
            return "slight bend";
        case Curl::loose:
            return "loose curl";
        case Curl::medium:
            return "medium curl";
        case Curl::tight:
            return "tight curl";
        case Curl::very_tight:
            return "very tight curl";
    }
    return {};
}

Result<Quantity> stretch(const Quantity& at_rest, const Quantity& pulled) {
    for (const Quantity* one : {&at_rest, &pulled})
        if (!(one->value > 0 && std::isfinite(one->value)))
            return Error{ErrorKind::invalid, "length-not-positive", "A strand's length must be more than 0 mm.", "",
                         "Measure the strand again, at rest and pulled."};
    // First-order propagation: lengths of two photos are independent, each interval as the SD of its logarithm.
    const auto share = [](const Quantity& one) { return 0.5 * std::max(0.0, one.high - one.low) / one.value; };
    const double ratio = pulled.value / at_rest.value, spread = std::hypot(share(at_rest), share(pulled));
    return Quantity{"stretch", 100 * (ratio - 1), "%", 100 * (ratio * std::exp(-spread) - 1),
                    100 * (ratio * std::exp(spread) - 1)};
}

}  // namespace kempt::pattern
