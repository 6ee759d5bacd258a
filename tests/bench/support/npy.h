// Pictures for NumPy.
#pragma once

#include <opencv2/core.hpp>
#include <string>

namespace bench {

// NumPy's file format, version 1.0. picture: CV_32F or CV_8U with one channel (rows x columns) or more (x channels).
void write_npy(const std::string& path, const cv::Mat& picture);

}  // namespace bench
