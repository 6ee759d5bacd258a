// Type scale and spacing at a text scale of 100-200 %. All figures are device-independent pixels.
#pragma once

namespace kempt::desk {

struct Measures {
    explicit Measures(double text_scale = 1.0);

    double text;   // 1.0..2.0
    double space;  // spacing grows more slowly than text, so that 200 % still leaves room: half the growth
    // Type scale, ratio about 1.25 (a major third) from the body size.
    int caption, body, lead, heading, title, figure;
    int target;  // least height of anything that is pressed: 38 px at 100 % (wet hands; WCAG 2.5.8 asks 24)
    int radius;  // of panels and controls

    [[nodiscard]] int gap(double units) const;  // units of 4 px
    [[nodiscard]] int px(double at_100) const;  // a size that follows the text
};

inline constexpr double least_text_scale = 1.0, greatest_text_scale = 2.0;

}  // namespace kempt::desk
