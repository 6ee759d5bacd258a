#include "combings/trace.h"

#include <algorithm>
#include <cmath>

#include <opencv2/imgproc.hpp>

#include "combings/chains.h"
#include "combings/coils.h"
#include "combings/dim.h"
#include "combings/faint.h"
#include "combings/field.h"
#include "combings/follow.h"
#include "combings/lines.h"
#include "combings/near_points.h"
#include "combings/overlaps.h"
#include "combings/rides.h"
#include "combings/ridges.h"
#include "combings/shadows.h"
#include "combings/smooth.h"
#include "core/rank.h"

namespace kempt::combings {
namespace {

constexpr double least_snr = 2.5;
// The noisiest paper of 68 rendered photos had 0.007 (second derivative of the darkness): above three times that, what
// should be paper is hair.
constexpr double most_noise = 0.022;
constexpr double step_mm = 0.25;          // between points of a path
constexpr double rim_mm = 0.8;            // an end that close to what is not looked at goes on there
constexpr double faint_mm = 8;            // shorter ways of faint pieces are dust, grain and folds of the paper
constexpr double faint_beside_mm = 1.6;   // of strands: their shadows
constexpr double dim_beside_mm = 0.8;     // of any mark: more of its own line
constexpr double working_px_per_mm = 18;  // above it photos are halved: finer tells nothing more about a line's course

constexpr JoinOptions torn_ends{.reach_px = 30, .long_reach_px = 60, .free_cost = 3, .torn_cost = 18};

Error cancelled() {
    return {ErrorKind::cancelled, "cancelled", "Stopped.", "", ""};
}

Error too_tangled() {
    return {ErrorKind::refused, "too-tangled", "Too many lines lie on the sheet to tell single strands apart.",
            "The photo is kept.", "Spread the strands on two sheets or more, and take a photo of each."};
}

// Again and again: after the first time each end is seen with what the last time joined on behind it.
std::vector<Chain> strands_of(const std::vector<Line>& lines, const Darkness& darkness, float paper_sd, double ppm,
                              bool apart, std::vector<Chain>& covered, Work& work) {
    const Bends usual = usual_bends(lines);
    std::vector<LineEnd> ends = ends_of(lines, darkness);
    std::vector<Join> joins;
    for (int pass = 0; pass < 4; ++pass) {
        if (pass > 0) ends = seen_with_joins(lines, ends, joins, usual, darkness);
        joins = join_ends(ends, darkness, {}, work);
        if (!work.ok()) return {};
    }
    std::vector<Chain> chains = without_covered(chains_of(lines, ends, joins), darkness.size(), work);
    chains = without_covered(follow_ends(std::move(chains), usual, paper_sd, darkness, work), darkness.size(), work);
    chains = without_covered(join_along(std::move(chains), usual, darkness, work), darkness.size(), work);
    // What still ends where the line goes on was torn: two such ends that face each other are one strand, if in doubt.
    std::vector<Join> last = join_ends(ends_of(chains), darkness, torn_ends, work);
    for (Join& join : last) join.doubtful = true;
    chains = without_covered(joined(std::move(chains), last), darkness.size(), work);
    chains = join_overlaps(std::move(chains), darkness.size(), {0.35 * ppm, 0.9 * ppm, 40 * ppm}, covered, work);
    return retraced_coils(std::move(chains), apart, usual, ppm, darkness, covered, work);
}

// How near other strands come to the ends of each.
void touch(std::vector<TracedStrand>& strands) {
    NearPoints<size_t> points(touch_far_mm);
    for (size_t s = 0; s < strands.size(); ++s)
        for (const cv::Point2d& p : strands[s].path_mm) points.put(p, s);
    for (size_t s = 0; s < strands.size(); ++s)
        for (int e = 0; e < 2; ++e) {
            const cv::Point2d p = e ? strands[s].path_mm.back() : strands[s].path_mm.front();
            double least = touch_far_mm;
            points.near(p, touch_far_mm, [&](cv::Point2d q, size_t other) {
                if (other != s) least = std::min(least, cv::norm(q - p));
            });
            strands[s].touch_mm[e] = least;
        }
}

// Clearness that the fainter fifth of the strands stays below; lint and shadows left out.
double faint_fifth(const std::vector<TracedStrand>& strands) {
    constexpr double lint_mm = 5, lint_share = 0.2;
    std::vector<double> clearness;
    for (const TracedStrand& s : strands)
        if (s.length_mm >= lint_mm && s.share_of_usual >= lint_share) clearness.push_back(s.clearness);
    return at_rank(clearness, 0.2);
}

std::vector<cv::Point2d> points_of(const Line& line, double factor) {
    std::vector<cv::Point2d> out;
    for (size_t i = 0; i < line.at.size(); i += 4)
        out.push_back(factor * cv::Point2d(line.at[i]) + cv::Point2d(factor - 1, factor - 1) * 0.5);
    return out;
}

}  // namespace

Result<Traced> trace_strands(const Photo& photo, const card::Calibration& calibration,
                             const std::vector<cv::Point2d>& region_px, const TraceOptions& options,
                             const Progress& progress) {
    if (!calibration.sheet)
        return Error{ErrorKind::refused, "sheet-missing",
                     "Strands are measured on the gauge sheet, and none was found in the photo.", "The photo is kept.",
                     "Lay the strands on the gauge sheet with all four of its corners in the photo."};
    // Compression leaves chroma half as fine as strands are wide, so that dark strands vanish from the blue and its own
    // blocks look like lines (docs/methods-lengths.md).
    if (calibration.sheet->ground == card::Ground::blue)
        return Error{ErrorKind::refused, "sheet-blue",
                     "Single strands are measured on the white gauge sheet, and this photo shows the blue one.",
                     "The photo is kept.", "Lay the strands on the white gauge sheet."};
    if (calibration.sheet->px_per_mm < options.least_px_per_mm)
        return Error{ErrorKind::refused, "too-coarse", "The photo shows the sheet too small to see single strands.",
                     "The photo is kept.", "Let the sheet fill the photo, at the phone's full resolution."};
    const cv::Rect2d frame(-0.5, -0.5, photo.pixels.cols, photo.pixels.rows);
    if (!region_px.empty() &&
        (region_px.size() < 3 || std::any_of(region_px.begin(), region_px.end(), [&](const cv::Point2d& p) {
             return !(p.x >= frame.x && p.y >= frame.y && p.x <= frame.x + frame.width &&
                      p.y <= frame.y + frame.height);
         })))
        return Error{ErrorKind::invalid, "region-unusable",
                     "The region of the strands is not an outline inside the photo.", "",
                     "Draw a region of four corners around the strands."};
    // A fine photo is halved (or more) first; all points come back to the photo's own pixels.
    const int factor = calibration.sheet->px_per_mm > working_px_per_mm
                           ? static_cast<int>(std::ceil(calibration.sheet->px_per_mm / working_px_per_mm))
                           : 1;
    Photo small;
    card::Calibration own = calibration;
    std::vector<cv::Point2d> region = region_px;
    if (factor > 1) {
        small.colour = photo.colour;
        const cv::Size size(photo.pixels.cols / factor, photo.pixels.rows / factor);
        cv::resize(photo.pixels({0, 0, size.width * factor, size.height * factor}), small.pixels, size, 0, 0,
                   cv::INTER_AREA);
        const double f = factor, shift = (f - 1) / 2;
        const cv::Matx33d photo_from_small(f, 0, shift, 0, f, shift, 0, 0, 1);
        own.sheet->mm_from_px = own.sheet->mm_from_px * photo_from_small;
        own.sheet->px_per_mm /= f;
        for (cv::Point2d& p : own.card_corners_px) p = (p - cv::Point2d(shift, shift)) * (1 / f);
        for (cv::Point2d& p : region) p = (p - cv::Point2d(shift, shift)) * (1 / f);
    }
    const Photo& at_work = factor > 1 ? small : photo;
    const double ppm = own.sheet->px_per_mm;

    const Field field(own, region, options.margin_mm);
    if (field.area_mm2() <= 0)
        return Error{ErrorKind::invalid, "region-unusable", "The region of the strands lies outside the gauge sheet.",
                     "", "Draw a region of four corners around the strands, on the sheet."};
    Work work(progress, options.most_work);
    const auto ended = [&] { return work.stopped() ? cancelled() : too_tangled(); };
    if (!work.begin(0.05, "looking for strands")) return ended();
    const Darkness darkness(at_work, field);
    const Ridges ridges = find_ridges(darkness, field, least_snr);
    if (ridges.noise > most_noise) return too_tangled();
    if (!work.begin(0.5, "following strands")) return ended();
    std::vector<Line> crumbs, shadows, noise;
    const std::vector<Line> all = mark_shadows(string_lines(ridges, work), ridges, ppm, noise, work);
    const std::vector<Line> lines =
        without_shadows(cut_at_crossings(all, ridges.bounds, 5, 3, 6, crumbs, work), darkness, shadows, work);
    if (!work.ok() || !work.begin(0.75, "joining strands at crossings")) return ended();
    std::vector<Chain> covered;
    const std::vector<Chain> chains = strands_of(lines, darkness, ridges.paper_sd, ppm, options.apart, covered, work);
    const auto faint = faint_ways(noise, chains, darkness, faint_mm * ppm, faint_beside_mm * ppm, work);
    if (!work.ok()) return ended();

    Traced out;
    out.px_per_mm = calibration.sheet->px_per_mm;
    out.scale_sd = calibration.sheet->px_per_mm_sd / std::max(1e-9, calibration.sheet->px_per_mm);
    out.point_sd_mm = 0.1 / ppm;
    out.area_mm2 = field.area_mm2();
    auto photo_px = [&](cv::Point2d p) {
        return static_cast<double>(factor) * p + cv::Point2d(factor - 1, factor - 1) * 0.5;
    };
    std::vector<float> all_ridges;
    double path_mm = 0;
    for (const Line& line : lines) path_mm += static_cast<double>(line.at.size()) / ppm;
    out.free_path_mm = lines.empty() ? 0 : path_mm / static_cast<double>(lines.size());
    std::vector<std::vector<cv::Point2d>> paths(chains.size());
    cv::parallel_for_(cv::Range(0, static_cast<int>(chains.size())), [&](const cv::Range& range) {
        for (size_t c = static_cast<size_t>(range.start); c < static_cast<size_t>(range.end); ++c)
            paths[c] = smoothed(chains[c].at, 5, step_mm * ppm);
    });
    for (size_t c = 0; c < chains.size(); ++c) {
        const Chain& chain = chains[c];
        TracedStrand s;
        s.path_px.reserve(paths[c].size());
        s.path_mm.reserve(paths[c].size());
        for (const cv::Point2d& p : paths[c]) {
            s.path_px.push_back(photo_px(p));
            s.path_mm.push_back(field.mm_from_px(p));
        }
        s.length_mm = arc_length(s.path_mm);
        if (s.length_mm < options.least_mark_mm) continue;
        s.blank_mm = chain.blank_px / ppm;
        s.shared_mm = chain.shared_px / ppm;
        s.doubts = chain.doubts;
        for (const cv::Point2f& p : chain.doubtful_at) s.doubts_px.push_back(photo_px(p));
        for (const LineEnd& end : chain.end) s.cut_off = s.cut_off || field.inside_mm(end.at) < rim_mm;
        for (int e = 0; e < 2; ++e) s.ahead_dark[e] = chain.end[e].ahead_dark;
        std::vector<float> ridge;
        for (const float v : chain.strength)
            if (v > 0) ridge.push_back(v);
        all_ridges.insert(all_ridges.end(), ridge.begin(), ridge.end());
        s.clearness = at_rank(ridge, 0.5) / std::max(1e-9f, ridges.noise);
        out.strands.push_back(std::move(s));
    }
    out.clearness = at_rank(all_ridges, 0.5) / std::max(1e-9f, ridges.noise);
    for (TracedStrand& s : out.strands) s.share_of_usual = s.clearness / std::max(1e-9, out.clearness);
    touch(out.strands);
    for (const Chain& chain : covered) {
        std::vector<cv::Point2d> path;
        for (const cv::Point2d& p : smoothed(chain.at, 5, step_mm * ppm)) path.push_back(photo_px(p));
        if (path.size() > 1) out.shadows_px.push_back(std::move(path));
    }
    for (const auto& way : faint) {
        out.faint_px.emplace_back();
        for (const cv::Point2d& p : smoothed(way, 5, step_mm * ppm)) out.faint_px.back().push_back(photo_px(p));
    }
    for (const Line& line : shadows) out.shadows_px.push_back(points_of(line, factor));
    if (const double fifth = faint_fifth(out.strands); fifth > 0 && fifth < options.dim_below) {
        std::vector<Way> followed, marked = faint;
        for (const Chain& c : chains) followed.push_back(c.at);
        for (const Chain& c : covered) marked.push_back(c.at);
        for (const Line& line : shadows) marked.push_back(line.at);
        const DimOptions beside{dim_beside_mm * ppm, faint_beside_mm * ppm, faint_mm * ppm};
        for (const Way& way : dim_ways(darkness, field, followed, marked, beside, work)) {
            out.dim_px.emplace_back();
            for (const cv::Point2d& p : smoothed(way, 5, 2)) out.dim_px.back().push_back(photo_px(p));
        }
        if (work.stopped()) return cancelled();
    }
    std::sort(out.strands.begin(), out.strands.end(),
              [](const TracedStrand& a, const TracedStrand& b) { return a.length_mm > b.length_mm; });
    out.work = work.spent();
    if (!work.begin(1, "strands traced") && work.stopped()) return cancelled();
    return out;
}

}  // namespace kempt::combings
