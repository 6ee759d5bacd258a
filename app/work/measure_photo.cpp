#include "work/measure_photo.h"

#include <algorithm>

#include "work/errors.h"
#include "work/measure_groups.h"
#include "work/set_marks.h"

namespace kempt::work {

namespace {

// The finding that made the gate refuse.
const Finding* refusing(const card::GateReport& quality) {
    for (const Finding& finding : quality.findings)
        if (finding.level == Level::refused) return &finding;
    return nullptr;
}

bool has_scale(const card::Calibration& calibration) {
    return calibration.card_found || calibration.sheet_found || calibration.two_points;
}

// The photo as a whole: what refuses some groups only is a warning.
card::GateReport joined(const std::vector<card::GateReport>& reports) {
    card::GateReport whole;
    const bool all_refused = std::all_of(reports.begin(), reports.end(),
                                         [](const card::GateReport& report) { return report.level == "refused"; });
    for (const card::GateReport& report : reports)
        for (Finding finding : report.findings) {
            if (!all_refused) finding.level = std::min(finding.level, Level::warning);
            const auto same = std::find_if(whole.findings.begin(), whole.findings.end(),
                                           [&](const Finding& known) { return known.code == finding.code; });
            if (same == whole.findings.end())
                whole.findings.push_back(std::move(finding));
            else if (same->level < finding.level)
                *same = std::move(finding);
        }
    std::stable_sort(whole.findings.begin(), whole.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.level > b.level; });
    const Level worst = whole.findings.empty() ? Level::note : whole.findings.front().level;
    whole.level = worst == Level::refused ? "refused" : worst == Level::warning ? "usable" : "good";
    return whole;
}

// Readings and refusals in the order of all_reading_names().
template <class Named>
void sort_by_name(std::vector<Named>& list) {
    const QStringList& order = all_reading_names();
    std::stable_sort(list.begin(), list.end(), [&](const Named& a, const Named& b) {
        return order.indexOf(QString::fromStdString(a.name)) < order.indexOf(QString::fromStdString(b.name));
    });
}

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

bool can_take_over(const Earlier* earlier, ReadingGroup group, const Marks& marks, const MeasureOptions& options) {
    if (earlier == nullptr || !earlier->result.has_asked(group)) return false;
    const bool overlay_missing =
        group == ReadingGroup::edges && options.with_overlay && earlier->result.edges.overlay_px.empty();
    return !overlay_missing && same_marks_for(group, earlier->marks, marks);
}

// The strands are those of the earlier measurement; only what she corrects in them has changed.
bool can_correct_again(const Earlier* earlier, Marks marks) {
    if (earlier == nullptr || !earlier->result.has_asked(ReadingGroup::combings) || !earlier->result.traced)
        return false;
    marks.not_hair = earlier->marks.not_hair;
    marks.joined = earlier->marks.joined;
    marks.whole = earlier->marks.whole;
    return same_marks_for(ReadingGroup::combings, earlier->marks, marks);
}

Result<MeasureResult> measure(const OpenPhoto& photo, const Marks& marks, const MeasureOptions& options,
                              const Progress& progress, const Earlier* earlier) {
    if (const Status status = options.check(); !status) return status.error();
    if (const Status status = check_marks(marks, photo.decoded.header.size); !status) return status.error();
    MeasureResult result;
    result.header = photo.decoded.header;
    result.sha256 = photo.decoded.sha256;
    result.notes = photo.decoded.notes;
    result.calibration = photo.card;
    result.asked = groups_asked_by(marks);
    if (!has_scale(photo.card) && marks.scale_points.size() == 2) {
        const std::vector<cv::Point2d> ends = points_from(marks.scale_points);
        auto scaled = card::calibrate_two_points(ends[0], ends[1], marks.scale_mm);
        if (!scaled) return scaled.error();
        result.calibration = std::move(scaled).value();
    }
    if (tell(progress, 0.1, "judging the photo") == Go::stop) return stopped();
    const bool scaled = has_scale(result.calibration);
    // A photo without marks is judged as one for edges would be.
    const QVector<ReadingGroup> judged = result.asked.isEmpty() ? QVector{ReadingGroup::edges} : result.asked;
    std::vector<card::GateReport> reports;
    for (const ReadingGroup group : judged) {
        double there = scaled ? result.calibration.px_per_mm : 0;
        if (scaled && result.has_asked(group))
            there = card::px_per_mm_at(result.calibration, place_of(group, marks, result.calibration));
        if (reports.empty()) result.px_per_mm = there;
        reports.push_back(card::judge(photo.decoded.photo, result.calibration,
                                      region_of(group, marks, result.calibration), limits_of(group, options), there));
    }
    double done = 0.2;
    const double each = 0.75 / static_cast<double>(judged.size());
    for (qsizetype i = 0; i < result.asked.size(); ++i, done += each) {
        const ReadingGroup group = result.asked[i];
        result.quality = reports[static_cast<std::size_t>(i)];
        if (!scaled) {
            refuse_group(result, group, "no-scale",
                         "There is no gauge card and no known distance in the photo, so nothing can be given in mm.");
        } else if (const Finding* refused = refusing(result.quality)) {
            refuse_group(result, group, refused->code, refused->text);
        } else if (can_take_over(earlier, group, marks, options)) {
            take_over_group(group, earlier->result, result);
        } else if (group == ReadingGroup::combings && can_correct_again(earlier, marks)) {
            correct_again(*earlier->result.traced, marks, result);
        } else if (const Status status =
                       measure_group(group, photo, marks, options, result, part_of(progress, done, done + each));
                   !status) {
            return status.error();
        }
    }
    result.quality = reports.size() == 1 ? reports.front() : joined(reports);
    sort_by_name(result.readings);
    sort_by_name(result.refused);
    if (tell(progress, 1, "done") == Go::stop) return stopped();
    return result;
}

}  // namespace

Status MeasureOptions::check() const {
    if (!(printer_scale >= 0.9 && printer_scale <= 1.1))
        return invalid("bad-printer-scale", "The printer correction must lie between 0.9 and 1.1.",
                       "Measure the 50 mm check line of the card again.");
    // A lens of half to twenty times the picture's width: 300 to 200 000 px covers every phone and camera.
    if (!(focal_px == 0 || (focal_px >= 300 && focal_px <= 200000)))
        return invalid("bad-focal", "The focal length must lie between 300 and 200 000 pixels, or be 0 for unknown.");
    if (!(edges.depth_mm >= edges.full_zone_to_mm && edges.coverage_depth_mm > 0 && edges.strand_depth_mm > 0))
        return invalid("bad-band", "The depths of the band must be positive and lie within the band.");
    return Done{};
}

Result<std::shared_ptr<const OpenPhoto>> open_photo(const QByteArray& bytes, const MeasureOptions& options,
                                                    const Progress& progress) {
    return guarded([&] { return open(bytes, options, progress); });
}

Result<MeasureResult> measure_open_photo(const OpenPhoto& photo, const Marks& marks, const MeasureOptions& options,
                                         const Progress& progress, const Earlier* earlier) {
    return guarded([&] { return measure(photo, marks, options, progress, earlier); });
}

Result<MeasureResult> measure_photo(const QByteArray& bytes, const Marks& marks, const MeasureOptions& options,
                                    const Progress& progress) {
    auto open = open_photo(bytes, options, part_of(progress, 0, 0.6));
    if (!open) return open.error();
    return measure_open_photo(*open.value(), marks, options, part_of(progress, 0.6, 1));
}

}  // namespace kempt::work
