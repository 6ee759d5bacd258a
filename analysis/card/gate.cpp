#include "card/gate.h"

#include <cstdio>

namespace kempt::card {
namespace {

std::string number(double value, int digits) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.*f", digits, value);
    return text.data();
}

// A phone's tone curve flattens towards white and JPEG moves codes by a few: burnt skin is written from 250 of 255 on
// (rendered photo lit 3.2 times too much: 35 % of the region from there on, 6 % at 255 itself; well lit ones: none).
constexpr double burnt_share_of_top = 250.0 / 255;

// Share of the region's pixels whose codes stand at the bottom or near the top in two channels or more.
template <class Code>
double clipped_share(const cv::Mat& pixels, const cv::Mat1b& inside, int step, Code top) {
    const auto burnt = static_cast<Code>(burnt_share_of_top * top);
    size_t all = 0, clipped = 0;
    for (int y = 0; y < inside.rows; ++y)
        for (int x = 0; x < inside.cols; ++x) {
            if (!inside(y, x)) continue;
            const Code* code = pixels.ptr<Code>(y * step) + 3 * (x * step);
            int low = 0, high = 0;
            for (int c = 0; c < 3; ++c) low += code[c] == 0, high += code[c] >= burnt;
            ++all;
            clipped += low >= 2 || high >= 2;
        }
    return all ? double(clipped) / double(all) : 0;
}

double clipped_share(const Photo& photo, const Calibration& calibration, const std::vector<cv::Point2d>& region_px) {
    if (photo.pixels.empty()) return 0;
    // 300 000 pixels tell a share of 2 % to a few hundredths of a percent.
    const double area = double(photo.pixels.cols) * photo.pixels.rows;
    const int step = std::max(1, static_cast<int>(std::sqrt(area / 300000)));
    cv::Mat1b inside((photo.pixels.rows + step - 1) / step, (photo.pixels.cols + step - 1) / step, uchar(1));
    if (region_px.size() >= 3) {
        inside.setTo(0);
        std::vector<cv::Point> polygon;
        for (const cv::Point2d& p : region_px) polygon.emplace_back(cvRound(p.x / step), cvRound(p.y / step));
        cv::fillPoly(inside, std::vector<std::vector<cv::Point>>{polygon}, cv::Scalar(1));
    }
    if (calibration.card_found) {
        // The card is no hair, and its print may well be pitch black in a contrasty photo.
        std::vector<cv::Point> face;
        for (const cv::Point2d& p : calibration.card_corners_px)
            face.emplace_back(cvRound(p.x / step), cvRound(p.y / step));
        cv::fillPoly(inside, std::vector<std::vector<cv::Point>>{face}, cv::Scalar(0));
    }
    return photo.pixels.depth() == CV_16U ? clipped_share<ushort>(photo.pixels, inside, step, 65535)
                                          : clipped_share<uchar>(photo.pixels, inside, step, 255);
}

}  // namespace

GateLimits default_gate_limits() {
    return {
        // A 70 um hair blurred by sigma keeps erf(0.035 / (sigma sqrt 2)) of its contrast; the 10-90 % rise is 2.563
        // sigma (Gaussian). At 0.15 mm it keeps 45 %: finer hairs begin to drown.
        .sharp_warning_mm = 0.15,
        // At 0.40 mm 18 %: hair and skin melt into one tone and their colours can no longer be taken apart.
        .sharp_refused_mm = 0.40,
        // Hairs that can be counted lie 0.3-0.5 mm apart on average. Two closer than 2 sigma blur into one (Sparrow's
        // limit): at 0.18 mm that is 0.14 mm, a quarter to a third of neighbours when they lie at random, and a 70 um
        // hair keeps 38 % of its contrast. Rendered photos blurred step by step: counts move by 2-8 % at 0.20 mm,
        // 10-35 % at 0.29 mm, up to 50 % at 0.35 mm, against the 15 % asked of a count.
        .sharp_counts_mm = 0.18,
        // Clipped pixels have no light to read. 2 % shifts a coverage by 2 points at most, the size of its own error;
        // with 15 % the highlight or the dark hair itself is gone. Calibrated on that reasoning, not published.
        .clipped_warning = 0.02,
        .clipped_refused = 0.15,
        // Edge line and depth are set to 2 px at best: 0.5 mm at 4 px/mm, against the 0.6 mm asked of a depth reading.
        .scale_refused_px_per_mm = 4,
        // Below 8 px/mm a 70 um hair is half a pixel: single hairs at the edge melt into a haze that moves where an
        // edge
        // begins. Rendered photos made coarser step by step: bare length errs by 4 mm at 8 px/mm, 12 mm at 6, fill
        // depth by 1.3 mm at 5, while coverage errs by a tenth to a sixth of itself.
        .scale_lengths_px_per_mm = 8,
        // 70 um is 1.4 px at 20 px/mm and 2 px at 28.6; below 1.4 px neighbouring hairs run together. Less 1 %, as the
        // scale is known no better (edges::EdgeOptions::count_min_px_per_mm is taken with the same allowance).
        .scale_counts_px_per_mm = 0.99 * 20,
        // At 20 degrees a length along the tilt is short by 6 % and one end of a 60 mm region lies 20 mm further away
        // than the other, the depth of focus of a phone at 20 cm (from memory). Beyond 35 degrees (18 %) hair standing
        // off the skin hides what lies behind it; the finder itself is tested to 30.
        .tilt_warning_deg = 20,
        .tilt_refused_deg = 35,
        // 10 % per cm is 20 % over the 20 mm band, as much as two neighbouring shades of skin differ (common practice).
        .gradient_warning_per_cm = 0.10,
    };
}

namespace {

// The sharpest edge a camera writes rises over about 2 px (demosaicing and a lens at its best, common practice): up to
// 3 px it is the distance that spreads the edge over millimetres, and holding still would not help.
constexpr double pixel_bound_px = 3;

void judge_sharpness(std::vector<Finding>& findings, const Calibration& calibration, const GateLimits& limits,
                     bool too_coarse) {
    const double rise = calibration.edge_rise_mm;
    if (rise <= 0) {
        findings.push_back({"sharpness-not-measured", Level::warning,
                            "The sharpness could not be measured at the card.",
                            "Keep the card's corners free and evenly lit."});
        return;
    }
    const bool pixel_bound = rise * calibration.px_per_mm <= pixel_bound_px;
    // A photo from too far away is said to be just that.
    if (rise <= limits.sharp_warning_mm || (pixel_bound && too_coarse)) return;
    const bool refused = rise > limits.sharp_refused_mm;
    findings.push_back({"blurred", refused ? Level::refused : Level::warning,
                        "The photo is blurred: edges at the card spread over " + number(rise, 2) + " mm" +
                            (refused ? "." : ", wider than two hairs."),
                        pixel_bound ? "Come closer: the photo is as sharp as its pixels allow at this distance."
                                    : "Hold still, tap on the hair to focus, come no closer than the camera can "
                                      "focus, and use more light."});
}

// Counts ask more of a photo than the readings in mm do.
void judge_counts(std::vector<Finding>& findings, const Calibration& calibration, const GateLimits& limits,
                  double px_per_mm) {
    const double rise = calibration.edge_rise_mm;
    if (px_per_mm < limits.scale_counts_px_per_mm)
        findings.push_back({"too-coarse-for-counts", Level::note,
                            "With " + number(px_per_mm, 1) + " pixels per mm single strands cannot be counted.",
                            "Come closer for counts: 20 pixels per mm and more."});
    else if (rise > limits.sharp_counts_mm)
        findings.push_back({"too-soft-for-counts", Level::note,
                            "With edges that spread over " + number(rise, 2) +
                                " mm neighbouring hairs run together, so single strands cannot be counted.",
                            "Focus on the hair and hold still for counts: edges must rise within " +
                                number(limits.sharp_counts_mm, 2) + " mm."});
    else if (rise <= 0)
        findings.push_back({"sharpness-unknown-for-counts", Level::note,
                            "It is not known how sharp this photo is, so single strands are not counted.",
                            "Photograph with the gauge card for counts: the sharpness is measured at its edges."});
}

}  // namespace

GateReport judge(const Photo& photo, const Calibration& calibration, const std::vector<cv::Point2d>& region_px,
                 const GateLimits& limits, double px_per_mm_there) {
    GateReport report;
    report.findings = calibration.findings;
    auto& findings = report.findings;
    const bool gauge = calibration.card_found || calibration.sheet_found;
    if (!gauge && !calibration.two_points)
        findings.push_back({"scale-missing", Level::refused,
                            "The photo has no scale, so nothing can be measured in millimetres.",
                            "Photograph with the gauge card, or set two points a known distance apart. The photo can "
                            "still be compared by eye."});
    const double px_per_mm = px_per_mm_there > 0 ? px_per_mm_there : calibration.px_per_mm;
    const bool too_coarse = px_per_mm > 0 && px_per_mm < limits.scale_refused_px_per_mm;
    if (too_coarse)
        findings.push_back(
            {"too-coarse", Level::refused,
             "The photo has only " + number(px_per_mm, 1) + " pixels per mm; below " +
                 number(limits.scale_refused_px_per_mm, 0) +
                 " hairs cannot be told from the scalp between them, so nothing is measured.",
             "Come closer: 12 pixels per mm are wanted for coverage, 20 and more for counting strands."});
    if (gauge) {
        judge_sharpness(findings, calibration, limits, too_coarse);
        if (calibration.tilt_deg > limits.tilt_warning_deg) {
            const bool refused = calibration.tilt_deg > limits.tilt_refused_deg;
            findings.push_back(
                {"tilted", refused ? Level::refused : Level::warning,
                 "The camera looks at the card at a slant of " + number(calibration.tilt_deg, 0) + " degrees.",
                 "Hold the phone parallel to the card."});
        }
    }
    if (px_per_mm > 0 && !too_coarse && px_per_mm < limits.scale_lengths_px_per_mm)
        findings.push_back(
            {"coverage-only", Level::warning,
             "With " + number(px_per_mm, 1) +
                 " pixels per mm single hairs melt together: only coverage can be given, and that roughly.",
             "Come closer: 12 pixels per mm are wanted for all readings in mm, 20 for counts."});
    if (limits.scale_counts_px_per_mm > 0 && px_per_mm > 0 && !too_coarse) judge_counts(findings, calibration, limits, px_per_mm);
    if (calibration.light && calibration.light->gradient_per_cm > limits.gradient_warning_per_cm)
        findings.push_back(
            {"light-uneven", Level::warning,
             "The light changes by " + number(100 * calibration.light->gradient_per_cm, 0) + " % per cm over the card.",
             "Move the lamp further away or turn the client so that no shadow falls on the hair or the card."});
    const double clipped = clipped_share(photo, calibration, region_px);
    if (clipped > limits.clipped_warning)
        findings.push_back({"clipped", clipped > limits.clipped_refused ? Level::refused : Level::warning,
                            number(100 * clipped, 0) + " % of the region is burnt out or pitch black.",
                            "Lower or raise the exposure (tap and slide on the phone), no flash, softer light."});
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding& a, const Finding& b) { return a.level > b.level; });
    const bool refused = !findings.empty() && findings.front().level == Level::refused;
    const bool warned = !findings.empty() && findings.front().level == Level::warning;
    report.level = refused ? "refused" : warned ? "usable" : "good";
    return report;
}

const Finding* against_lengths(const GateReport& report) {
    for (const Finding& finding : report.findings)
        if (finding.code == "coverage-only") return &finding;
    return nullptr;
}

const Finding* against_counts(const GateReport& report) {
    for (const Finding& finding : report.findings)
        if (finding.code.ends_with("-for-counts")) return &finding;
    return nullptr;
}

}  // namespace kempt::card
