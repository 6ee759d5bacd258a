#include "card/calibration.h"

#include "card/card_layout.h"
#include "card/corners.h"
#include "card/ramp.h"
#include "card/sharpness.h"
#include "card/tilt.h"

namespace kempt::card {
namespace {

// 1000 px: a 12 megapixel photo is reduced fourfold, a card at 12 px/mm then has markers of 30 px, cells of 5. Larger
// photos are reduced fivefold at most, which leaves such markers 24 px. When that finds nothing, a picture with a
// little more than twice the pixels is tried, quickly: most photos that come so far have no card, and they should not
// wait.
constexpr int search_side = 1000, most_reduction = 5;
constexpr double second_search = 1.6;
// A photo out of focus shows its card too softly for the search; halved it is as sharp again, and then the gate can
// say that it is blurred and not that there is no card. A quarter of the first search's pixels, quickly.
constexpr double blurred_search = 0.5;
// Unsharp mask about as wide as a blurred marker's cell is deep (5-7 px there).
constexpr double sharpening_px = 5;
constexpr int smallest_search = 100;  // px: four markers of 12 px and what lies between them
// A good corner fit leaves 0.05-0.3 px; a bent card or a false marker several pixels. 1 % of a marker's side is 0.1 mm,
// which would be 0.1 % of the card's length.
constexpr double bent_share = 0.01, broken_share = 0.06;

Layout card_layout() {
    return {0, card_marker_centres_mm, card_marker_mm};
}
Layout sheet_layout(Paper paper, Ground ground) {
    return {sheet_first_id(ground), sheet_marker_centres_mm(paper), sheet_marker_mm};
}
constexpr std::array both_papers{Paper::letter, Paper::a4};
constexpr std::array both_grounds{Ground::white, Ground::blue};

// Three, for with two neighbours both papers fit.
constexpr size_t least_of_sheet = 3;
bool sheet_among(const std::vector<Marker>& found) {
    for (const Ground ground : both_grounds)
        for (const Paper paper : both_papers)
            if (agreeing(found, sheet_layout(paper, ground)).size() >= least_of_sheet) return true;
    return false;
}

struct Placed {
    std::vector<Marker> markers;
    Plane plane;
};

// Refines the corners, looks again for missing markers near their places, fits, and leaves a marker out that spoils
// the fit of the others.
std::optional<Placed> place(const Photo& photo, const Sampler& light, const std::vector<Marker>& group,
                            const Layout& layout, cv::Point2d middle_mm) {
    Placed placed;
    for (const Marker& rough : group)
        if (const auto fine = refine(light, rough)) placed.markers.push_back(*fine);
    auto plane = fit_plane(placed.markers, layout, middle_mm);
    if (plane && placed.markers.size() < 4) {
        for (int k = 0; k < 4; ++k) {
            const int id = layout.first_id + k;
            const auto same = [&](const Marker& m) { return m.id == id; };
            if (std::any_of(placed.markers.begin(), placed.markers.end(), same)) continue;
            std::array<cv::Point2d, 4> expected;
            const auto mm = layout.corners_mm(static_cast<size_t>(k));
            for (size_t c = 0; c < 4; ++c) expected[c] = apply(plane->px_from_mm, mm[c]);
            for (const Marker& rough : detect_near(photo.pixels, expected, id))
                if (const auto fine = refine(light, rough)) {
                    placed.markers.push_back(*fine);
                    break;
                }
        }
        plane = fit_plane(placed.markers, layout, middle_mm);
    }
    if (!plane) return std::nullopt;
    const auto side = [&](const Plane& p) { return layout.side_mm * p.px_per_mm; };
    if (placed.markers.size() > 2 && plane->corner_rms_px > bent_share * side(*plane)) {
        for (size_t out = 0; out < placed.markers.size(); ++out) {
            std::vector<Marker> fewer = placed.markers;
            fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(out));
            const auto without = fit_plane(fewer, layout, middle_mm);
            if (without && without->corner_rms_px < plane->corner_rms_px / 4) {
                plane = without;
                placed.markers = fewer;
                break;
            }
        }
    }
    if (plane->corner_rms_px > broken_share * side(*plane) || !(plane->px_per_mm > 0)) return std::nullopt;
    placed.plane = *plane;
    return placed;
}

void set_scale(Calibration& calibration, const Placed& placed, const Layout& layout, const Photo& photo,
               const CalibrationOptions& options, double printer_scale) {
    const Plane& plane = placed.plane;
    const cv::Matx33d stretch(printer_scale, 0, 0, 0, printer_scale, 0, 0, 0, 1);
    calibration.mm_from_px = stretch * plane.px_from_mm.inv();
    calibration.px_per_mm = plane.px_per_mm / printer_scale;
    calibration.px_per_mm_sd = plane.px_per_mm_sd / printer_scale;
    calibration.corner_rms_px = plane.corner_rms_px;
    calibration.tilt_deg = tilt_degrees(plane, layout, photo.pixels.size(),
                                        {.focal_px = options.focal_px, .corner_sd_px = plane.corner_rms_px});
}

void read_card(Calibration& calibration, const Photo& photo, const Sampler& light, const Placed& placed,
               const CalibrationOptions& options, double printer_scale) {
    const Layout layout = card_layout();
    const Plane& plane = placed.plane;
    calibration.card_found = true;
    set_scale(calibration, placed, layout, photo, options, printer_scale);
    const std::array<cv::Point2d, 4> face{
        {{0, 0}, {card_width_mm, 0}, {card_width_mm, card_height_mm}, {0, card_height_mm}}};
    for (size_t k = 0; k < 4; ++k) calibration.card_corners_px[k] = apply(plane.px_from_mm, face[k]);

    RampResult ramp = light_of_card(sample_card(light, plane.px_from_mm));
    calibration.light = ramp.light;
    const auto true_light = [&](float p) { return ramp.light ? corrected(*ramp.light, 1, p) : p; };
    calibration.edge_rise_mm = edge_rise_mm(light, true_light, placed.markers, layout, plane) * printer_scale;

    auto& findings = calibration.findings;
    findings.insert(findings.end(), ramp.findings.begin(), ramp.findings.end());
    if (placed.markers.size() < 4)
        findings.push_back({"card-partly-hidden", placed.markers.size() == 3 ? Level::note : Level::warning,
                            placed.markers.size() == 3
                                ? "One corner of the card is hidden or outside the photo; the other three were used."
                                : "Half of the card is hidden or outside the photo; the scale rests on two corners.",
                            "Keep hair, hands and clips off the card and the whole card in the photo."});
    if (plane.corner_rms_px > bent_share * card_marker_mm * plane.px_per_mm)
        findings.push_back({"card-not-flat", Level::warning, "The card's corners do not lie in one plane.",
                            "Glue the card on stiff board and lay it flat beside the hair."});
}

void read_sheet(Calibration& calibration, const Photo& photo, const Sampler& light, const std::vector<Marker>& found,
                const CalibrationOptions& options, double printer_scale) {
    std::optional<Placed> best;
    Paper best_paper = Paper::a4;
    Ground best_ground = Ground::white;
    for (const Ground ground : both_grounds)
        for (const Paper paper : both_papers) {
            const cv::Size2d page = paper_size_mm(paper);
            const Layout layout = sheet_layout(paper, ground);
            const std::vector<Marker> group = agreeing(found, layout);
            if (group.size() < least_of_sheet) continue;
            const auto placed = place(photo, light, group, layout, {page.width / 2, page.height / 2});
            if (placed && placed->markers.size() >= least_of_sheet &&
                (!best || placed->plane.corner_rms_px < best->plane.corner_rms_px))
                best = placed, best_paper = paper, best_ground = ground;
        }
    if (!best) return;
    calibration.sheet_found = true;
    const cv::Matx33d stretch(printer_scale, 0, 0, 0, printer_scale, 0, 0, 0, 1);
    const Layout layout = sheet_layout(best_paper, best_ground);
    calibration.sheet = {best_paper, best_ground, stretch * best->plane.px_from_mm.inv(),
                         best->plane.px_per_mm / printer_scale, best->plane.px_per_mm_sd / printer_scale};
    if (calibration.card_found) return;  // the card lies nearest to the hair and knows the light
    set_scale(calibration, *best, layout, photo, options, printer_scale);
    calibration.edge_rise_mm = edge_rise_mm(
                                   light, [](float p) { return p; }, best->markers, layout, best->plane) *
                               printer_scale;
    calibration.findings.push_back(
        {"light-not-measured", Level::warning,
         "Only the gauge sheet is in the photo, so colours and shine cannot be corrected for the light.",
         "Lay the gauge card on the sheet as well."});
}

}  // namespace

Calibration calibrate(const Photo& photo, const CalibrationOptions& options) {
    Calibration calibration;
    const int type = photo.pixels.type();
    const bool readable = !photo.pixels.empty() && (type == CV_8UC3 || type == CV_16UC3);
    try {
        if (readable) {
            const double printer_scale = std::clamp(options.printer_scale, 0.9, 1.1);
            const Sampler light(photo);
            const int longer = std::max(photo.pixels.cols, photo.pixels.rows);
            const int side = std::max(search_side, longer / most_reduction);
            std::vector<Marker> found = detect_reduced(photo.pixels, side);
            std::vector<Marker> card = agreeing(found, card_layout());
            const bool sheet_seen = sheet_among(found);
            if (card.size() < 2 && !sheet_seen && longer > side) {
                found = detect_reduced(photo.pixels, cvRound(second_search * side), true);
                card = agreeing(found, card_layout());
            }
            if (card.size() < 2 && !sheet_seen && longer > smallest_search) {
                const int halved = std::max(smallest_search, cvRound(blurred_search * std::min(longer, side)));
                const std::vector<Marker> softly = detect_reduced(photo.pixels, halved, false, sharpening_px);
                if (auto group = agreeing(softly, card_layout()); group.size() >= 2) {
                    found = softly;
                    card = std::move(group);
                }
            }
            if (card.size() >= 2)
                if (const auto placed =
                        place(photo, light, card, card_layout(), {card_width_mm / 2, card_height_mm / 2}))
                    read_card(calibration, photo, light, *placed, options, printer_scale);
            read_sheet(calibration, photo, light, found, options, printer_scale);
        }
    } catch (const cv::Exception&) {
        // OpenCV refused a degenerate picture (a few pixels wide, say): as good as no card.
        calibration = {};
    }
    if (!calibration.card_found && !calibration.sheet_found)
        calibration.findings.insert(
            calibration.findings.begin(),
            {"card-missing", Level::warning, "No gauge card was found in the photo.",
             "Lay the gauge card flat beside the hair, in focus and with all four corners in view, from 15 to 30 cm."});
    std::stable_sort(calibration.findings.begin(), calibration.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.level > b.level; });
    return calibration;
}

Result<Calibration> calibrate_two_points(cv::Point2d a_px, cv::Point2d b_px, double mm) {
    const double apart = cv::norm(b_px - a_px);
    // Ten pixels: a point is set to a pixel or so, and a tenth is the worst scale that still says anything.
    if (!std::isfinite(apart) || !std::isfinite(mm) || apart < 10 || !(mm > 0) || mm > 5000)
        return Error{
            ErrorKind::invalid, "scale-points-unusable",
            "The two points for the scale are too close together or their distance is not a length above 0 mm.", "",
            "Set two points at least 10 pixels apart, as far apart as the photo allows, and state their distance in "
            "mm."};
    Calibration calibration;
    calibration.two_points = true;
    calibration.px_per_mm = apart / mm;
    // Each point is set by hand to about a pixel (standard deviation, both axes along the line): common practice.
    calibration.px_per_mm_sd = calibration.px_per_mm * std::sqrt(2.0) / apart;
    const double s = mm / apart;
    calibration.mm_from_px = cv::Matx33d(s, 0, 0, 0, s, 0, 0, 0, 1);
    calibration.findings.push_back({"scale-from-two-points", Level::warning,
                                    "The scale comes from two points: tilt, sharpness and light are not known.",
                                    "Use the gauge card for photos that are to be compared."});
    return calibration;
}

double px_per_mm_at(const Calibration& calibration, cv::Point2d px) {
    const double mm_per_px = local_scale(calibration.mm_from_px, px);
    return mm_per_px > 0 ? 1 / mm_per_px : 0;
}

cv::Point2d mm_from_px(const Calibration& calibration, cv::Point2d px) {
    return apply(calibration.mm_from_px, px);
}

cv::Point2d px_from_mm(const Calibration& calibration, cv::Point2d mm) {
    return apply(calibration.mm_from_px.inv(), mm);
}

}  // namespace kempt::card
