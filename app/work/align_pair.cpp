#include <algorithm>
#include <cmath>

#include "work/compare_pictures.h"
#include "work/draw_laid.h"
#include "work/errors.h"
#include "work/lay_pair.h"
#include "work/pair_frame.h"

namespace kempt::work {

namespace {

// Without a scale: both whole, at one height, for the eye only.
AlignedPair side_by_side(const PairSide& before, const PairSide& after, const AlignOptions& options,
                         const QString& why) {
    AlignedPair pair;
    pair.notes.append(why);
    pair.why_apart = why;
    const cv::Size one = before.photo->decoded.photo.pixels.size(), other = after.photo->decoded.photo.pixels.size();
    const double ratio =
        std::max(static_cast<double>(one.width) / one.height, static_cast<double>(other.width) / other.height);
    const int height = static_cast<int>(options.longest_side_px / std::max(1.0, ratio));
    const cv::Size size(static_cast<int>(std::ceil(height * ratio)), height);
    const auto place = [&](const PairSide& side, QPolygonF& line) {
        const cv::Size from = side.photo->decoded.photo.pixels.size();
        const double scale = static_cast<double>(height) / from.height;
        const double left = (size.width - from.width * scale) / 2;
        for (const QPointF& p : side.marks.edge_line) line.append(QPointF(p.x() * scale + left, p.y() * scale));
        return draw_laid(side, {scale * finer, 0, left * finer, 0, scale * finer, 0, 0, 0, 1}, size, false);
    };
    pair.before = place(before, pair.before_line);
    pair.after = place(after, pair.after_line);
    return pair;
}

// The edge line, else what the photo was stood by.
std::vector<cv::Point2d> shown_line(const PairSide& side) {
    if (has_line(side)) return pair_mm(side.marks.edge_line, side.calibration);
    if (side.marks.region.size() == 4 || side.marks.strand_line.size() < 2) {
        QVector<QPointF> corners = side.marks.region.size() == 4 ? side.marks.region : side.marks.shine_region;
        if (corners.size() == 4) corners.append(corners.front());
        return pair_mm(corners, side.calibration);
    }
    return pair_mm(side.marks.strand_line, side.calibration);
}

Result<AlignedPair> laid_pair(const PairSide& before, const PairSide& after, const AlignOptions& options,
                              const Progress& progress) {
    if (!before.photo || !after.photo) return invalid("no-photo", "A before/after picture needs two photos.");
    if (options.longest_side_px < 100 || options.longest_side_px > 8000)
        return invalid("bad-picture-size", "The longest side must be 100 to 8000 pixels.");
    if (tell(progress, 0, "laying the photos over each other") == Go::stop) return stopped();
    if (!has_scale(before) || !has_scale(after))
        return side_by_side(before, after, options,
                            QStringLiteral("Not to scale: there is no gauge card in one of the photos."));
    const auto laying = lay_pair(before, after, part_of(progress, 0, 0.3));
    if (!laying) return laying.error();
    const Laying& laid = laying.value();
    const Frame frame = frame_for(before, after, laid, options);
    AlignedPair pair;
    pair.px_per_mm = frame.px_per_mm;
    pair.by = laid.by;
    pair.residual_mm = laid.residual_mm;
    pair.rms_mm = laid.rms_mm;
    pair.over = laid.by != u"marks" && before.mirrored == after.mirrored;
    if (!pair.over) pair.why_apart = laid.refused;
    const bool both_lines = has_line(before) && has_line(after);
    if (pair.over && laid.by != u"edge line" && both_lines) {
        EdgeShift shift = edge_shift(line_of(before), line_of(after), laid.earlier_from_later);
        if (!shift.at_mm.empty()) pair.shift = std::move(shift);
    }
    if (before.mirrored == after.mirrored)
        pair.notes.append(laid.told());
    else
        pair.notes.append(QStringLiteral("The right side is mirrored and laid by the edge lines."));
    pair.light_matched = before.calibration.light && after.calibration.light;
    if (!pair.light_matched)
        pair.notes.append(QStringLiteral("Colours as the cameras wrote them: the light could not be matched."));
    if (before.calibration.two_points || after.calibration.two_points)
        pair.notes.append(QStringLiteral("Scale from two points: tilt is not known."));
    const cv::Matx33d fine = frame.px_from_earlier(finer), plain = frame.px_from_earlier(1);
    pair.before_line = polygon_in(shown_line(before), {}, plain);
    pair.after_line = polygon_in(shown_line(after), laid.earlier_from_later, plain);
    if (tell(progress, 0.3, "drawing the earlier photo") == Go::stop) return stopped();
    pair.before = draw_laid(before, fine * before.calibration.mm_from_px, frame.size(), pair.light_matched);
    if (tell(progress, 0.6, "drawing the later photo") == Go::stop) return stopped();
    pair.after = draw_laid(after, fine * laid.earlier_from_later.matrix() * after.calibration.mm_from_px, frame.size(),
                           pair.light_matched);
    if (tell(progress, 1, "pictures are drawn") == Go::stop) return stopped();
    return pair;
}

}  // namespace

Result<AlignedPair> align_pair(const PairSide& before, const PairSide& after, const AlignOptions& options,
                               const Progress& progress) {
    return guarded([&] { return laid_pair(before, after, options, progress); });
}

}  // namespace kempt::work
