#include "work/measure_photo.h"

#include <algorithm>
#include <cmath>

#include "domain/words.h"
#include "work/errors.h"
#include "work/set_marks.h"

namespace kempt::work {

namespace {

cv::Point2d point(const QPointF& p) {
    return {p.x(), p.y()};
}

std::vector<cv::Point2d> points(const QVector<QPointF>& from) {
    std::vector<cv::Point2d> to;
    to.reserve(static_cast<std::size_t>(from.size()));
    for (const QPointF& p : from) to.push_back(point(p));
    return to;
}

void refuse_all(MeasureResult& result, const std::string& code, const std::string& text) {
    for (const QString& name : edge_reading_names()) result.edges.refused.push_back({name.toStdString(), code, text});
}

void refuse_some(edges::EdgeReadings& edges, const Finding* finding, std::initializer_list<const char*> names) {
    if (!finding) return;
    std::erase_if(edges.readings, [&](const Quantity& reading) {
        const bool hit = std::find(names.begin(), names.end(), reading.name) != names.end();
        if (hit) edges.refused.push_back({reading.name, finding->code, finding->text});
        return hit;
    });
}

// What the gate forbids though the photo passes moves to the refused ones; what edges has refused keeps its reason.
void refuse_by_gate(MeasureResult& result) {
    refuse_some(result.edges, card::against_counts(result.quality), {"edge_strands", "length_density"});
    refuse_some(result.edges, card::against_lengths(result.quality), {"fill_depth", "bare_length"});
}

card::GateLimits limits_for(const edges::EdgeOptions& options) {
    card::GateLimits limits = card::default_gate_limits();
    // The same least scale as edges takes, with the same allowance of 1 %.
    limits.scale_counts_px_per_mm = 0.99 * options.count_min_px_per_mm;
    return limits;
}

// The finding that made the gate refuse.
const Finding* refusing(const card::GateReport& quality) {
    for (const Finding& finding : quality.findings)
        if (finding.level == Level::refused) return &finding;
    return nullptr;
}

bool has_scale(const card::Calibration& calibration) {
    return calibration.card_found || calibration.sheet_found || calibration.two_points;
}

cv::Point2d middle_of(const QVector<QPointF>& line) {
    return point(line.at(line.size() / 2));
}

}  // namespace

Status MeasureOptions::check() const {
    if (!(printer_scale >= 0.9 && printer_scale <= 1.1))
        return invalid("bad-printer-scale", "The printer correction must lie between 0.9 and 1.1.",
                       "Measure the 50 mm check line of the card again.");
    if (!(focal_px >= 0)) return invalid("bad-focal", "The focal length in pixels must not be negative.");
    if (!(edges.depth_mm >= edges.full_zone_to_mm && edges.coverage_depth_mm > 0 && edges.strand_depth_mm > 0))
        return invalid("bad-band", "The depths of the band must be positive and lie within the band.");
    return Done{};
}

namespace {

Result<std::shared_ptr<const OpenPhoto>> open(const QByteArray& bytes, const MeasureOptions& options,
                                              const Progress& progress) {
    if (const Status status = options.check(); !status) return status.error();
    if (tell(progress, 0, "reading the photo") == Go::stop) return stopped();
    auto decoded = intake::decode(bytes, options.limits,
                                  options.with_sha256 ? intake::CheckSum::wanted : intake::CheckSum::skipped);
    if (!decoded) return decoded.error();
    if (tell(progress, 0.5, "looking for the gauge card") == Go::stop) return stopped();
    auto open = std::make_shared<OpenPhoto>();
    open->decoded = std::move(decoded).value();
    open->card = card::calibrate(open->decoded.photo, {options.printer_scale, options.focal_px});
    if (tell(progress, 1, "photo is open") == Go::stop) return stopped();
    return std::shared_ptr<const OpenPhoto>(std::move(open));
}

}  // namespace

Result<std::shared_ptr<const OpenPhoto>> open_photo(const QByteArray& bytes, const MeasureOptions& options,
                                                    const Progress& progress) {
    return guarded([&] { return open(bytes, options, progress); });
}

edges::EdgeMarks edge_marks_from(const Marks& marks) {
    edges::EdgeMarks to;
    to.edge_line_px = points(marks.edge_line);
    if (marks.hair_side) to.hair_side_px = point(*marks.hair_side);
    to.hair_taps_px = points(marks.hair_taps);
    to.scalp_taps_px = points(marks.scalp_taps);
    return to;
}

std::vector<cv::Point2d> region_of(const Marks& marks, const card::Calibration& calibration) {
    if (marks.edge_line.size() < 2) return points(marks.region);
    const std::vector<cv::Point2d> line = points(marks.edge_line);
    if (!has_scale(calibration) || !marks.hair_side) return {};
    // Inward over the whole band, outward far enough for the bare skin that the readings are told apart from.
    constexpr double inward_mm = 20, outward_mm = 3;
    const cv::Point2d middle = line[line.size() / 2];
    const double scale = card::px_per_mm_at(calibration, middle);
    const cv::Point2d chord = line.back() - line.front();
    const cv::Point2d to_hair = point(*marks.hair_side) - (line.front() + line.back()) * 0.5;
    const double side = chord.x * to_hair.y - chord.y * to_hair.x >= 0 ? 1 : -1;
    std::vector<cv::Point2d> inner, outer;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const cv::Point2d along = line[std::min(i + 1, line.size() - 1)] - line[i > 0 ? i - 1 : 0];
        const double length = std::hypot(along.x, along.y);
        if (length <= 0) continue;
        const cv::Point2d normal(-along.y / length * side, along.x / length * side);
        inner.push_back(line[i] + normal * (inward_mm * scale));
        outer.push_back(line[i] - normal * (outward_mm * scale));
    }
    inner.insert(inner.end(), outer.rbegin(), outer.rend());
    return inner;
}

namespace {

Result<MeasureResult> measure(const OpenPhoto& photo, const Marks& marks, const MeasureOptions& options,
                              const Progress& progress) {
    if (const Status status = options.check(); !status) return status.error();
    if (const Status status = check_marks(marks, photo.decoded.header.size); !status) return status.error();
    MeasureResult result;
    result.header = photo.decoded.header;
    result.sha256 = photo.decoded.sha256;
    result.notes = photo.decoded.notes;
    result.calibration = photo.card;
    if (!has_scale(photo.card) && marks.scale_points.size() == 2) {
        auto scaled =
            card::calibrate_two_points(point(marks.scale_points[0]), point(marks.scale_points[1]), marks.scale_mm);
        if (!scaled) return scaled.error();
        result.calibration = std::move(scaled).value();
    }
    if (tell(progress, 0.1, "judging the photo") == Go::stop) return stopped();
    result.edge_asked = !marks.edge_line.isEmpty();
    const bool scaled = has_scale(result.calibration);
    if (scaled)
        result.px_per_mm = result.edge_asked ? card::px_per_mm_at(result.calibration, middle_of(marks.edge_line))
                                             : result.calibration.px_per_mm;
    result.quality = card::judge(photo.decoded.photo, result.calibration, region_of(marks, result.calibration),
                                 limits_for(options.edges), result.px_per_mm);
    if (!result.edge_asked) {
        if (tell(progress, 1, "done") == Go::stop) return stopped();
        return result;
    }
    const Finding* refused = result.quality.level == "refused" ? refusing(result.quality) : nullptr;
    if (!scaled) {
        refuse_all(result, "no-scale",
                   "There is no gauge card and no known distance in the photo, so nothing can be given in mm.");
    } else if (refused) {
        refuse_all(result, refused->code, refused->text);
    } else {
        auto measured = edges::measure_edges(photo.decoded.photo, result.calibration, edge_marks_from(marks),
                                             options.edges, options.with_overlay, part_of(progress, 0.2, 0.95));
        if (measured) {
            result.edges = std::move(measured).value();
            refuse_by_gate(result);
        } else if (measured.error().kind == ErrorKind::refused) {
            refuse_all(result, measured.error().code, measured.error().what);
        } else {
            return measured.error();
        }
    }
    if (tell(progress, 1, "done") == Go::stop) return stopped();
    return result;
}

}  // namespace

Result<MeasureResult> measure_open_photo(const OpenPhoto& photo, const Marks& marks, const MeasureOptions& options,
                                         const Progress& progress) {
    return guarded([&] { return measure(photo, marks, options, progress); });
}

Result<MeasureResult> measure_photo(const QByteArray& bytes, const Marks& marks, const MeasureOptions& options,
                                    const Progress& progress) {
    auto open = open_photo(bytes, options, part_of(progress, 0, 0.6));
    if (!open) return open.error();
    return measure_open_photo(*open.value(), marks, options, part_of(progress, 0.6, 1));
}

}  // namespace kempt::work
