// A photo drawn into the frame of an aligned picture.
#pragma once

#include <QImage>

#include "work/compare_pictures.h"

namespace kempt::work {

inline constexpr int finer = 2;  // drawn this much finer, then averaged down, so that strands do not shimmer

// out_from_px: to pixels of a picture `finer` times larger than `size`. with_light: with the card's light, else as the
// camera wrote it. The bands of side.hidden are filled before anything else is done.
[[nodiscard]] QImage draw_laid(const PairSide& side, const cv::Matx33d& out_from_px, cv::Size size, bool with_light);

}  // namespace kempt::work
