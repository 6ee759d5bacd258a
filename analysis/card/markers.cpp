#include "card/markers.h"

#include <opencv2/imgproc.hpp>

#define KEMPT_NEW_ARUCO (CV_VERSION_MAJOR > 4 || (CV_VERSION_MAJOR == 4 && CV_VERSION_MINOR >= 7))
#if KEMPT_NEW_ARUCO
#include <opencv2/objdetect/aruco_detector.hpp>
#else
#include <opencv2/aruco.hpp>
#endif

namespace kempt::card {
namespace {

template <class Parameters>
void set_parameters(Parameters& parameters, bool quick) {
    // Two windows instead of three: markers span 12-90 px here, cells 2-15 px; 9 px suits the small and 25 px the
    // large, and each window costs a full pass of thresholding and contour following.
    parameters.adaptiveThreshWinSizeMin = quick ? 17 : 9;
    parameters.adaptiveThreshWinSizeMax = quick ? 17 : 25;
    parameters.adaptiveThreshWinSizeStep = 16;
    parameters.adaptiveThreshConstant = 7;
    parameters.minMarkerPerimeterRate = 0.04;  // of the longer side: 10 px sides in 1000 px, less cannot be read
    parameters.maxMarkerPerimeterRate = 2.5;
    parameters.polygonalApproxAccuracyRate = 0.04;
    parameters.minDistanceToBorder = 1;
    // Light hides or lifts a few cells; a wrong id is thrown out later, when the four must form one card.
    parameters.errorCorrectionRate = 0.6;
}

void run_detector(const cv::Mat& grey, std::vector<std::vector<cv::Point2f>>& corners, std::vector<int>& ids,
                  bool quick) {
#if KEMPT_NEW_ARUCO
    cv::aruco::DetectorParameters parameters;
    set_parameters(parameters, quick);
    const cv::aruco::ArucoDetector detector(cv::aruco::getPredefinedDictionary(cv::aruco::DICT_4X4_50), parameters);
    detector.detectMarkers(grey, corners, ids);
#else
    const cv::Ptr<cv::aruco::DetectorParameters> parameters = cv::aruco::DetectorParameters::create();
    set_parameters(*parameters, quick);
    cv::aruco::detectMarkers(grey, cv::aruco::getPredefinedDictionary(cv::aruco::DICT_4X4_50), corners, ids,
                             parameters);
#endif
}

template <class Code>
void average_rows(const cv::Mat& pixels, cv::Mat& grey, int factor, int shift) {
    // From 4 on every second row is enough: the average still holds 8 pixels and more.
    const int row_step = factor >= 4 ? 2 : 1;
    const int rows_used = (factor + row_step - 1) / row_step;
    const unsigned divisor = static_cast<unsigned>(rows_used * factor);
    cv::parallel_for_(cv::Range(0, grey.rows), [&](const cv::Range& range) {
        std::vector<unsigned> sums(static_cast<size_t>(grey.cols));
        for (int y = range.start; y < range.end; ++y) {
            std::fill(sums.begin(), sums.end(), 0u);
            for (int dy = 0; dy < factor; dy += row_step) {
                const Code* code = pixels.ptr<Code>(y * factor + dy) + 1;
                for (int x = 0; x < grey.cols; ++x) {
                    unsigned sum = 0;
                    for (int dx = 0; dx < factor; ++dx, code += 3) sum += *code;
                    sums[static_cast<size_t>(x)] += sum;
                }
            }
            uchar* out = grey.ptr<uchar>(y);
            for (int x = 0; x < grey.cols; ++x)
                out[x] = static_cast<uchar>((sums[static_cast<size_t>(x)] / divisor) >> shift);
        }
    });
}

}  // namespace

cv::Mat marker_bits(int id) {
    const auto dictionary = cv::aruco::getPredefinedDictionary(cv::aruco::DICT_4X4_50);
#if KEMPT_NEW_ARUCO
    return cv::aruco::Dictionary::getBitsFromByteList(dictionary.bytesList.rowRange(id, id + 1), dictionary.markerSize);
#else
    return cv::aruco::Dictionary::getBitsFromByteList(dictionary->bytesList.rowRange(id, id + 1),
                                                      dictionary->markerSize);
#endif
}

cv::Mat reduced_grey(const cv::Mat& pixels, int factor) {
    cv::Mat grey(pixels.rows / factor, pixels.cols / factor, CV_8UC1);
    if (grey.empty()) return grey;
    if (pixels.depth() == CV_16U)
        average_rows<ushort>(pixels, grey, factor, 8);
    else
        average_rows<uchar>(pixels, grey, factor, 0);
    return grey;
}

std::vector<Marker> detect(const cv::Mat& grey, bool quick) {
    std::vector<Marker> found;
    if (grey.cols < 16 || grey.rows < 16) return found;
    std::vector<std::vector<cv::Point2f>> corners;
    std::vector<int> ids;
    run_detector(grey, corners, ids, quick);
    for (size_t i = 0; i < ids.size(); ++i) {
        if (ids[i] < 0 || ids[i] > last_marker_id) continue;
        Marker marker{.id = ids[i], .corners = {}};
        for (size_t k = 0; k < 4; ++k) marker.corners[k] = corners[i][k];
        found.push_back(marker);
    }
    return found;
}

std::vector<Marker> detect_reduced(const cv::Mat& pixels, int longest_side, bool quick, double sharpen_px) {
    const int longer = std::max(pixels.cols, pixels.rows);
    const int factor = std::max(1, (longer + longest_side - 1) / longest_side);
    cv::Mat grey = reduced_grey(pixels, factor);
    if (sharpen_px > 0 && !grey.empty()) {
        cv::Mat soft;
        cv::GaussianBlur(grey, soft, {}, sharpen_px);
        cv::addWeighted(grey, 3, soft, -2, 0, grey);
    }
    std::vector<Marker> found = detect(grey, quick);
    for (Marker& marker : found)
        for (cv::Point2d& corner : marker.corners)
            corner = (corner + cv::Point2d(0.5, 0.5)) * factor - cv::Point2d(0.5, 0.5);
    return found;
}

std::vector<Marker> detect_near(const cv::Mat& pixels, const std::array<cv::Point2d, 4>& expected, int id) {
    double side = 0;
    cv::Point2d centre;
    for (size_t k = 0; k < 4; ++k) {
        side += cv::norm(expected[k] - expected[(k + 1) % 4]) / 4;
        centre += expected[k] / 4;
    }
    const double half = 1.3 * side;  // the marker, its quiet zone and a third of its size for the guess's error
    if (!(side > 8) || !(side < std::max(pixels.cols, pixels.rows))) return {};
    const cv::Rect crop =
        cv::Rect(cvRound(centre.x - half), cvRound(centre.y - half), cvRound(2 * half), cvRound(2 * half)) &
        cv::Rect(0, 0, pixels.cols, pixels.rows);
    if (crop.width < side || crop.height < side) return {};
    const int factor = std::max(1, cvRound(side / 60));  // cells of 10 px
    std::vector<Marker> kept;
    for (Marker marker : detect(reduced_grey(pixels(crop), factor))) {
        if (marker.id != id) continue;
        for (cv::Point2d& corner : marker.corners)
            corner = (corner + cv::Point2d(0.5, 0.5)) * factor + cv::Point2d(crop.x - 0.5, crop.y - 0.5);
        kept.push_back(marker);
    }
    return kept;
}

}  // namespace kempt::card
