#include "edges/stereology.h"

#include <numeric>

namespace kempt::edges {

double length_per_area(double mean_crossings_per_mm) {
    return CV_PI / 2 * mean_crossings_per_mm;
}

double length_per_area(const std::array<double, test_directions>& crossings_per_mm) {
    return length_per_area(std::accumulate(crossings_per_mm.begin(), crossings_per_mm.end(), 0.0) / test_directions);
}

}  // namespace kempt::edges
