#include "tone/level.h"

namespace kempt::tone {

double level_of_lightness(double lightness) {
    const auto& table = lightness_of_level;
    if (lightness <= table.front()) return 1;
    for (size_t i = 0; i + 1 < table.size(); ++i)
        if (lightness < table[i + 1])
            return 1 + static_cast<double>(i) + (lightness - table[i]) / (table[i + 1] - table[i]);
    return static_cast<double>(table.size());
}

}  // namespace kempt::tone
