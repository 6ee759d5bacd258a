// Lays pixels as stored into the upright picture, by EXIF orientation, a strip of rows at a time, so that a turned
// photo needs no second copy.
#pragma once

#include <QSize>
#include <opencv2/core.hpp>

namespace kempt::intake {

// EXIF 2.32, tag 274: 1 as stored, 2 mirrored, 3 half turn, 4 upside down and mirrored, 5 transposed, 6 to be turned
// clockwise, 7 transposed on the other diagonal, 8 to be turned anticlockwise. Anything else counts as 1.
[[nodiscard]] QSize upright_size(QSize stored, int orientation);

// Rows of one strip: 64 rows of a 12-megapixel photo are 768 kB, which stays in the cache.
inline constexpr int strip_rows = 64;

// The rows first_row.. of the stored picture go to their place in `upright`, which has upright_size(stored) already.
void lay_strip(const cv::Mat& strip, int first_row, QSize stored, int orientation, cv::Mat& upright);

// A whole picture; orientation 1 gives the same pixels without a copy.
[[nodiscard]] cv::Mat turned_upright(const cv::Mat& stored, int orientation);

}  // namespace kempt::intake
