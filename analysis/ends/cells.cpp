#include "ends/cells.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>

namespace kempt::ends {

cv::Mat cells_of(const cv::Mat& grid, int px) {
    cv::Mat cells;
    cv::resize(grid, cells, {grid.cols / px, grid.rows / px}, 0, 0, cv::INTER_AREA);
    return cells;
}

cv::Mat mean_over(const cv::Mat& cells, double mm) {
    const int n = std::max(1, cvRound(mm / cell_mm));
    cv::Mat out;
    cv::blur(cells, out, {n, n}, {-1, -1}, cv::BORDER_REFLECT_101);
    return out;
}

Spots spots_of(const cv::Mat& plane, cv::Mat& room) {
    const int reach = cvRound(1.5 * grid_px_per_mm);
    const cv::Mat square = cv::Mat::ones(reach, reach, CV_8U);
    cv::Mat spot;
    Spots out;
    cv::blur(plane, room, {2, 2});
    cv::dilate(room, spot, square);
    out.high = mean_over(cells_of(spot), 1);
    cv::erode(room, spot, square);
    out.low = mean_over(cells_of(spot), 1);
    return out;
}

cv::Mat placed(const cv::Mat& values, const cv::Mat& wanted) {
    cv::Mat out(wanted.size(), CV_32FC1, cv::Scalar(0));
    int row = 0;
    for (int y = 0; y < out.rows; ++y)
        for (int x = 0; x < out.cols; ++x)
            if (wanted.at<uchar>(y, x)) out.at<float>(y, x) = values.at<float>(row++);
    return out;
}

float quantile(std::vector<float> values, double share) {
    if (values.empty()) return 0;
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

}  // namespace kempt::ends
