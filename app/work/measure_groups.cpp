#include "work/measure_groups.h"

#include <algorithm>
#include <cmath>

#include "combings/corrections.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

cv::Point2d point(const QPointF& p) {
    return {p.x(), p.y()};
}

bool has_scale(const card::Calibration& calibration) {
    return calibration.card_found || calibration.sheet_found || calibration.two_points;
}

// The line widened to both sides, in pixels.
std::vector<cv::Point2d> widened(const std::vector<cv::Point2d>& line, double left_px, double right_px) {
    std::vector<cv::Point2d> one, other;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const cv::Point2d along = line[std::min(i + 1, line.size() - 1)] - line[i > 0 ? i - 1 : 0];
        const double length = std::hypot(along.x, along.y);
        if (length <= 0) continue;
        const cv::Point2d normal(-along.y / length, along.x / length);
        one.push_back(line[i] + normal * left_px);
        other.push_back(line[i] - normal * right_px);
    }
    one.insert(one.end(), other.rbegin(), other.rend());
    return one;
}

std::vector<cv::Point2d> band_of(const Marks& marks, const card::Calibration& calibration) {
    const std::vector<cv::Point2d> line = points_from(marks.edge_line);
    if (line.size() < 2 || !has_scale(calibration) || !marks.hair_side) return {};
    // Inward over the whole band, outward far enough for the bare skin that the readings are told apart from.
    constexpr double inward_mm = 20, outward_mm = 3;
    const double scale = card::px_per_mm_at(calibration, line[line.size() / 2]);
    const cv::Point2d chord = line.back() - line.front();
    const cv::Point2d to_hair = point(*marks.hair_side) - (line.front() + line.back()) * 0.5;
    const bool left = chord.x * to_hair.y - chord.y * to_hair.x >= 0;
    return widened(line, (left ? inward_mm : outward_mm) * scale, (left ? outward_mm : inward_mm) * scale);
}

// The narrow lane, which is always read: mixed hair beside it is as sharp and lit alike.
std::vector<cv::Point2d> lane_of(const Marks& marks, const card::Calibration& calibration) {
    const std::vector<cv::Point2d> line = points_from(marks.strand_line);
    if (line.size() < 2 || !has_scale(calibration)) return {};
    const double half = tone::ToneOptions{}.lane_mm / 2 * card::px_per_mm_at(calibration, line[line.size() / 2]);
    return widened(line, half, half);
}

// What the gate forbids though the photo passes moves to the refused ones; what edges has refused keeps its reason.
void refuse_some(edges::EdgeReadings& edges, const Finding* finding, std::initializer_list<const char*> names) {
    if (!finding) return;
    std::erase_if(edges.readings, [&](const Quantity& reading) {
        const bool hit = std::find(names.begin(), names.end(), reading.name) != names.end();
        if (hit) edges.refused.push_back({reading.name, finding->code, finding->text});
        return hit;
    });
}

// Moves readings and refusals of a room's answer up to the photo's, or turns its refusal into one of each reading.
template <class Readings, class Keep>
Status take(Result<Readings> measured, ReadingGroup group, MeasureResult& result, Keep keep) {
    if (!measured) {
        if (measured.error().kind != ErrorKind::refused) return measured.error();
        refuse_group(result, group, measured.error().code, measured.error().what);
        return Done{};
    }
    auto& found = measured.value();
    result.readings.insert(result.readings.end(), found.readings.begin(), found.readings.end());
    result.refused.insert(result.refused.end(), found.refused.begin(), found.refused.end());
    found.readings.clear();
    found.refused.clear();
    keep(std::move(found));
    return Done{};
}

combings::Corrections corrections_from(const Marks& marks) {
    combings::Corrections to;
    to.not_hair_px = points_from(marks.not_hair);
    const std::vector<cv::Point2d> joined = points_from(marks.joined);
    for (std::size_t i = 0; i + 1 < joined.size(); i += 2) to.joined_px.push_back({joined[i], joined[i + 1]});
    to.whole_px = points_from(marks.whole);
    return to;
}

// As traced, then as corrected.
Status measure_comb_out(Result<combings::CombingsReadings> traced, const Marks& marks, MeasureResult& result) {
    if (traced) {
        result.traced = *traced;
        if (const combings::Corrections corrections = corrections_from(marks); !corrections.none())
            traced = combings::corrected(*result.traced, corrections, result.calibration);
    }
    return take(std::move(traced), ReadingGroup::combings, result,
                [&](combings::CombingsReadings&& found) { result.combings = std::move(found); });
}

}  // namespace

std::vector<cv::Point2d> points_from(const QVector<QPointF>& from) {
    std::vector<cv::Point2d> to;
    to.reserve(static_cast<std::size_t>(from.size()));
    for (const QPointF& p : from) to.push_back(point(p));
    return to;
}

edges::EdgeMarks edge_marks_from(const Marks& marks) {
    edges::EdgeMarks to;
    to.edge_line_px = points_from(marks.edge_line);
    if (marks.hair_side) to.hair_side_px = point(*marks.hair_side);
    to.hair_taps_px = points_from(marks.hair_taps);
    to.scalp_taps_px = points_from(marks.scalp_taps);
    return to;
}

std::vector<cv::Point2d> region_of(ReadingGroup group, const Marks& marks, const card::Calibration& calibration) {
    switch (group) {
        case ReadingGroup::edges:
            return band_of(marks, calibration);
        case ReadingGroup::shine:
            return points_from(marks.shine_region);
        case ReadingGroup::tone:
            return lane_of(marks, calibration);
        case ReadingGroup::ends:
        case ReadingGroup::combings:
        case ReadingGroup::pattern:
            break;
    }
    return points_from(marks.region);
}

cv::Point2d place_of(ReadingGroup group, const Marks& marks, const card::Calibration& calibration) {
    const QVector<QPointF>* line = group == ReadingGroup::edges  ? &marks.edge_line
                                   : group == ReadingGroup::tone ? &marks.strand_line
                                                                 : nullptr;
    if (line && !line->isEmpty()) return point(line->at(line->size() / 2));
    const QVector<QPointF>& corners = group == ReadingGroup::shine ? marks.shine_region : marks.region;
    if (corners.isEmpty()) {
        // The middle of the card, or of a sheet: both papers have (105, 145) mm well inside.
        return card::px_from_mm(calibration, calibration.card_found ? cv::Point2d(42, 15) : cv::Point2d(105, 145));
    }
    cv::Point2d sum;
    for (const QPointF& p : corners) sum += point(p);
    return sum * (1.0 / static_cast<double>(corners.size()));
}

card::GateLimits limits_of(ReadingGroup group, const MeasureOptions& options) {
    card::GateLimits limits = card::default_gate_limits();
    if (group == ReadingGroup::edges) {
        // The same least scale as edges takes, with the same allowance of 1 %.
        limits.scale_counts_px_per_mm = 0.99 * options.edges.count_min_px_per_mm;
        return limits;
    }
    // The rooms below know their own least scale and say it in their own words.
    limits.scale_refused_px_per_mm = limits.scale_lengths_px_per_mm = limits.scale_counts_px_per_mm = 0;
    if (group == ReadingGroup::shine || group == ReadingGroup::tone) {
        // Highlights and tones change over millimetres: a blur of half a millimetre moves neither, one of 1.5 mm is as
        // wide as a narrow highlight's flank. Burnt or black hair is judged by the rooms where it matters.
        limits.sharp_warning_mm = 0.5;
        limits.sharp_refused_mm = 1.5;
        return limits;
    }
    // On the sheet dark hair lies on white paper: a strand of 0.07 mm blurred over 0.3 mm still takes a fifth of the
    // paper's light away, over 0.6 mm a tenth, as much as the paper's own grain (derived as in card/gate.cpp). The
    // ends' hem is a mass of hair and bears twice that. Burnt paper is still paper.
    const double allowance = group == ReadingGroup::ends ? 2 : 1;
    limits.sharp_warning_mm = 0.3 * allowance;
    limits.sharp_refused_mm = 0.6 * allowance;
    limits.clipped_warning = limits.clipped_refused = 1;
    return limits;
}

void refuse_group(MeasureResult& result, ReadingGroup group, const std::string& code, const std::string& text) {
    for (const QString& name : reading_names_of(group)) result.refused.push_back({name.toStdString(), code, text});
}

Status measure_group(ReadingGroup group, const OpenPhoto& photo, const Marks& marks, const MeasureOptions& options,
                     MeasureResult& result, const Progress& progress) {
    const Photo& pixels = photo.decoded.photo;
    const card::Calibration& calibration = result.calibration;
    switch (group) {
        case ReadingGroup::edges: {
            auto measured = edges::measure_edges(pixels, calibration, edge_marks_from(marks), options.edges,
                                                 options.with_overlay, progress);
            if (measured) {
                refuse_some(*measured, card::against_counts(result.quality), {"edge_strands", "length_density"});
                refuse_some(*measured, card::against_lengths(result.quality), {"fill_depth", "bare_length"});
            }
            return take(std::move(measured), group, result,
                        [&](edges::EdgeReadings&& found) { result.edges = std::move(found); });
        }
        case ReadingGroup::shine:
            return take(shine::measure_shine(pixels, calibration, points_from(marks.shine_region), {}, progress), group,
                        result, [&](shine::ShineReadings&& found) { result.shine = std::move(found); });
        case ReadingGroup::tone:
            return take(tone::measure_tone(pixels, calibration, points_from(marks.strand_line), {}, progress), group,
                        result, [&](tone::ToneReadings&& found) { result.tone = std::move(found); });
        case ReadingGroup::ends:
            return take(ends::measure_ends(pixels, calibration, points_from(marks.region), {}, progress), group, result,
                        [&](ends::EndsReadings&& found) { result.ends = std::move(found); });
        case ReadingGroup::combings:
            return measure_comb_out(
                combings::measure_combings(pixels, calibration, points_from(marks.region), {}, progress), marks,
                result);
        case ReadingGroup::pattern:
            break;
    }
    return take(pattern::measure_pattern(pixels, calibration, points_from(marks.region), progress), group, result,
                [&](pattern::PatternReadings&& found) { result.pattern = std::move(found); });
}

void correct_again(const combings::CombingsReadings& traced, const Marks& marks, MeasureResult& result) {
    // Nothing is measured, so nothing can fail.
    (void)measure_comb_out(traced, marks, result);
}

void take_over_group(ReadingGroup group, const MeasureResult& earlier, MeasureResult& result) {
    const QStringList& names = reading_names_of(group);
    const auto is_its = [&names](const auto& named) { return names.contains(QString::fromStdString(named.name)); };
    std::copy_if(earlier.readings.begin(), earlier.readings.end(), std::back_inserter(result.readings), is_its);
    std::copy_if(earlier.refused.begin(), earlier.refused.end(), std::back_inserter(result.refused), is_its);
    switch (group) {
        case ReadingGroup::edges:
            result.edges = earlier.edges;
            break;
        case ReadingGroup::shine:
            result.shine = earlier.shine;
            break;
        case ReadingGroup::tone:
            result.tone = earlier.tone;
            break;
        case ReadingGroup::ends:
            result.ends = earlier.ends;
            break;
        case ReadingGroup::combings:
            result.combings = earlier.combings;
            result.traced = earlier.traced;
            break;
        case ReadingGroup::pattern:
            result.pattern = earlier.pattern;
            break;
    }
}

}  // namespace kempt::work
