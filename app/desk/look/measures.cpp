#include "desk/look/measures.h"

#include <algorithm>
#include <cmath>

namespace kempt::desk {

Measures::Measures(double text_scale)
    : text(std::clamp(text_scale, least_text_scale, greatest_text_scale)), space(1.0 + (text - 1.0) / 2.0) {
    caption = px(12.5);
    body = px(14);
    lead = px(16);
    heading = px(18);
    title = px(24);
    figure = px(30);
    target = px(36);
    radius = static_cast<int>(std::lround(7 * space));
}

int Measures::gap(double units) const {
    return static_cast<int>(std::lround(4 * units * space));
}
int Measures::px(double at_100) const {
    return static_cast<int>(std::lround(at_100 * text));
}

}  // namespace kempt::desk
