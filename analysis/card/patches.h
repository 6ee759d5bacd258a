// Samples of the card's patches and of the bare paper beside them.
#pragma once

#include "card/card_layout.h"
#include "card/sampler.h"

namespace kempt::card {

struct Sample {
    cv::Point2d centre_mm;
    std::array<double, 3> light{};  // linear device light, mean of the middle half of the pixels
    bool usable = false;            // inside the photo, even (nothing lies across it)
    bool clipped = false;           // at the top of the codes in some channel
};

struct CardSamples {
    std::array<Sample, 12> patches;              // as card_patches()
    std::array<std::array<Sample, 6>, 3> paper;  // strips above, between and below the rows, one site for each column
    std::array<Sample, 16> black;                // borders of the four markers, four sites each
};

// card_mm of the layout as printed (nominal millimetres).
[[nodiscard]] CardSamples sample_card(const Sampler& light, const cv::Matx33d& px_from_mm);

}  // namespace kempt::card
