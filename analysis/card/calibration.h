// Scale and light of one photo: from the gauge card, from the gauge sheet, or (scale only) from two points.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "card/card_layout.h"
#include "core/photo.h"
#include "core/quantity.h"
#include "core/result.h"

namespace kempt::card {

// Light-dependent part; present only when the grey patches were read.
struct Light {
    // Multiply linear device light by these so that the card's white patch reads its reflectance.
    cv::Vec3d gains{1, 1, 1};
    // Undoing the phone's tone curve: true scene light (0..1, card white = its reflectance) from linear-coded light of
    // the photo, per channel, sampled at 1024 even steps of sqrt(light); apply with LightMap,
    // or corrected() of ramp.h.
    std::array<std::vector<float>, 3> light_from_photo;
    double ramp_residual = 0;      // RMS of the fit over the patches, in relative light
    double gradient_per_cm = 0;    // relative change of light along its steepest direction over the card
    cv::Vec2d gradient_direction;  // unit vector in card mm
    bool curve_fitted = false;     // false: only gains, the ramp could not be fitted (a finding says so)
};

struct Calibration {
    bool card_found = false;
    bool sheet_found = false;
    bool two_points = false;                      // scale from two points: no tilt, no light
    cv::Matx33d mm_from_px = cv::Matx33d::eye();  // plane of the card; card origin at its top left corner
    double px_per_mm = 0;                         // at the middle of the card (geometric mean of the two axes)
    double px_per_mm_sd = 0;                      // standard uncertainty, from the corners' residuals
    double tilt_deg = 0;                          // angle between the card's normal and the camera's axis
    double corner_rms_px = 0;                     // residual of the homography
    double edge_rise_mm = 0;                      // 10-90 % rise at the card's black-white edges; 0 when not measured
    // Of the sheet itself, also where a card lies on it: the card may lie on board, and ends long before the sheet
    // does.
    struct Sheet {
        Paper paper = Paper::letter;
        Ground ground = Ground::white;                // by its markers' ids
        cv::Matx33d mm_from_px = cv::Matx33d::eye();  // origin at the page's top left corner
        double px_per_mm = 0, px_per_mm_sd = 0;       // at its middle
    };
    std::optional<Sheet> sheet;
    std::optional<Light> light;
    std::array<cv::Point2d, 4> card_corners_px{};  // of the card's face, clockwise from the top left
    std::vector<Finding> findings;                 // of the gate, worst first
};

struct CalibrationOptions {
    double printer_scale = 1.0;  // measured length of the check line / 50 mm; 0.9..1.1
    // If known; else estimated together with the tilt, under a broad prior (tilt.h).
    double focal_px = 0;
};

// Finds the card (or the sheet's markers). Never fails: without either, card_found and sheet_found stay false and a
// finding says so. Photo 12-32 px/mm, tilt to 30 degrees, partly shaded. Pixel coordinates are whole numbers at pixel
// centres; mm are true ones (printed millimetres x printer_scale).
[[nodiscard]] Calibration calibrate(const Photo& photo, const CalibrationOptions& options = {});

// Scale from two points a known distance apart (mm > 0).
[[nodiscard]] Result<Calibration> calibrate_two_points(cv::Point2d a_px, cv::Point2d b_px, double mm);

// Local scale in px/mm at a pixel (geometric mean of the two axes of the local affine map).
[[nodiscard]] double px_per_mm_at(const Calibration& calibration, cv::Point2d px);
[[nodiscard]] cv::Point2d mm_from_px(const Calibration& calibration, cv::Point2d px);
[[nodiscard]] cv::Point2d px_from_mm(const Calibration& calibration, cv::Point2d mm);

// Linear sRGB light of the scene at device codes (r, g, b already linear through ColourEncoding::linear, before the
// matrix): tone curve and gains undone where Light knows them, then the colour matrix.
class LightMap {
  public:
    LightMap(const Photo& photo, const Calibration& calibration);
    // CV_8UC3/CV_16UC3 device codes to CV_32FC3 linear sRGB, any shape.
    [[nodiscard]] cv::Mat linear(const cv::Mat& device_codes) const;
    [[nodiscard]] cv::Vec3f linear(const cv::Vec3b& codes) const;

  private:
    std::array<std::vector<float>, 3> table_;  // code -> corrected light
    cv::Matx33f matrix_;
};

}  // namespace kempt::card
