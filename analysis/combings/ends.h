// What the end of a line says about how the strand goes on from there.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/lines.h"

namespace kempt::combings {

struct LineEnd {
    int line = -1;
    bool last = false;       // the end at line.at.back()
    float length = 0;        // of the line, px
    cv::Point2f at;          // smoothed
    cv::Point2f ahead;       // unit tangent, outward
    float curvature = 0;     // 1/px, signed: above 0 turns from x towards y
    float direction_sd = 0;  // radians
    float curvature_sd = 0;
    float change = 0, change_sd = 0;            // of the curvature along the line, 1/px^2
    float usual = 0.01f, usual_change = 2e-4f;  // of the photo's strands
    float peak = 0;                             // size of the darkness along the last piece of the line
    float sign = 1;                             // of that darkness
    float tone = 0, tone_sd = -1;               // log of the ridge's median strength there; SD below 0: not known
    float ahead_dark = 0;                       // 0 paper .. 1 as dark as the line, over the pixels just ahead
    [[nodiscard]] cv::Point2f across() const { return {-ahead.y, ahead.x}; }
};

// How curved this photo's strands are and how fast that changes along them, RMS over its long lines: coils need another
// prior than straight hair.
struct Bends {
    float curvature = 0.01f;  // 1/px
    float change = 2e-4f;     // 1/px^2
};
[[nodiscard]] Bends usual_bends(const std::vector<Line>& lines);
// From the points of a line and the strength of its ridge there (below 0 on a bridge, empty: not known), the end first.
[[nodiscard]] LineEnd end_of(const std::vector<cv::Point2f>& inward, const std::vector<float>& strength,
                             const Bends& usual, const Darkness& darkness);
// How little the tones of two ends suit one strand, in halves of squared standard deviations: 0-8.
[[nodiscard]] double tone_cost(const LineEnd& e, const LineEnd& f);
// Ends 2 l and 2 l + 1 belong to line l.
[[nodiscard]] std::vector<LineEnd> ends_of(const std::vector<Line>& lines, const Darkness& darkness);

// The way from one end to another: a cubic with both tangents, a point each pixel, without the ends themselves.
[[nodiscard]] std::vector<cv::Point2f> bridge(const LineEnd& from, const LineEnd& to);

}  // namespace kempt::combings
