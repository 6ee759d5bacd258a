// Tone along a strand line from root to end: Lab of root, mid and end, evenness, lines of demarcation, level.
#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "card/calibration.h"
#include "colour/colour.h"
#include "core/photo.h"
#include "core/progress.h"
#include "core/quantity.h"
#include "core/result.h"

namespace kempt::tone {

struct ToneOptions {
    // Width of the lane whose colours are taken: narrow enough that the highlight lies at one height in it. Where its
    // colours hang on where it lies by more than mixed_sd (SD as a distance in Lab), as in greying hair, a lane as wide
    // as a section for colour (an inch: common practice, no source) evens that out. Tried on 300 rendered panels (seeds
    // 61000-61299): of 14, 18 and 24 mm mixed hair erred least with 24, by 1.7 instead of 2.2 CIEDE2000, and black hair
    // by more the wider; all hair together least with a mixed_sd of 0.7 to 0.9.
    double lane_mm = 10, mixed_lane_mm = 24, mixed_sd = 0.8;
    double step_mm = 1;           // of the profile
    double zone_share = 0.2;      // root, mid and end are means over this share of the line
    double least_length_mm = 30;  // of the line: a shorter one has no root, mid and end
    double least_step = 2.0;      // CIEDE2000: a smaller step is no line of demarcation (about twice the just
                                  // noticeable difference)
};

// A line of demarcation: the colour steps from one tone to another.
struct Demarcation {
    double step = 0, step_low = 0, step_high = 0;  // CIEDE2000, 95 %
    double at_mm = 0, at_low = 0, at_high = 0;     // from the line's first point (the scalp), 95 %
    double width_mm = 0;                           // over which 80 % of the step happens
    cv::Point2d at_px;
};

struct ToneReadings {
    std::vector<Quantity> readings;  // tone_spread "dE00", tone_level "level" (of the mid-shaft; 1-10, own calibration)
    std::vector<Refusal> refused;
    std::optional<colour::Lab> root, mid, end;  // D65, relative to the card's white
    std::vector<Demarcation> lines;             // from the scalp outward
    std::vector<colour::Lab> profile;           // each step_mm
    std::vector<cv::Point2d> path_px;           // where each value of the profile was taken
    double step_mm = 0, length_mm = 0;
    double lane_mm = 0;  // width of the lane that was read
    bool mixed = false;  // it is the wide one, as the hair is mixed
    std::vector<cv::Point2d> lane_px;  // closed polygon: the hair whose colours were taken
};

// strand_line_px: two points or more, from the scalp to the ends. Needs the card's light. Errors: invalid (line too
// short, outside the photo), refused (no scale, no light), cancelled.
[[nodiscard]] Result<ToneReadings> measure_tone(const Photo& photo, const card::Calibration& calibration,
                                                const std::vector<cv::Point2d>& strand_line_px,
                                                const ToneOptions& options = {}, const Progress& progress = {});

}  // namespace kempt::tone
