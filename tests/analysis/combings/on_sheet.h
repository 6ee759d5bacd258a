// A picture drawn by a test as a photo of part of the gauge sheet.
#pragma once

#include <cmath>
#include <opencv2/core.hpp>

#include "card/calibration.h"
#include "core/photo.h"

namespace kempt::combings {

// The picture's upper left corner lies at corner_mm of the sheet, far from its print.
inline card::Calibration part_of_sheet(double px_per_mm, cv::Point2d corner_mm) {
    card::Calibration calibration;
    calibration.sheet_found = true;
    calibration.sheet.emplace();
    calibration.sheet->mm_from_px = cv::Matx33d(1 / px_per_mm, 0, corner_mm.x, 0, 1 / px_per_mm, corner_mm.y, 0, 0, 1);
    calibration.sheet->px_per_mm = px_per_mm;
    return calibration;
}

// Codes of three channels; light by a power of 2.2.
inline Photo photo_of_codes(const cv::Mat& codes) {
    Photo photo;
    photo.pixels = codes;
    for (auto& table : photo.colour.linear)
        for (int code = 0; code < 256; ++code) table.push_back(static_cast<float>(std::pow(code / 255.0, 2.2)));
    return photo;
}

// The same of one grey channel of floats.
inline Photo photo_of_grey(const cv::Mat1f& grey) {
    cv::Mat1b codes;
    grey.convertTo(codes, CV_8U);
    cv::Mat colour;
    cv::merge(std::vector<cv::Mat>{codes, codes, codes}, colour);
    return photo_of_codes(colour);
}

}  // namespace kempt::combings
