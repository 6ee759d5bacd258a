#include "work/lay_pair.h"

#include <algorithm>
#include <cmath>

#include "align/align.h"
#include "work/errors.h"

namespace kempt::work {

std::vector<cv::Point2d> pair_mm(const QVector<QPointF>& px, const card::Calibration& calibration) {
    std::vector<cv::Point2d> mm;
    for (const QPointF& p : px) mm.push_back(card::mm_from_px(calibration, {p.x(), p.y()}));
    return mm;
}

bool has_scale(const PairSide& side) {
    return side.calibration.card_found || side.calibration.sheet_found || side.calibration.two_points;
}

MarkedLine line_of(const PairSide& side) {
    MarkedLine marked{pair_mm(side.marks.edge_line, side.calibration), {}};
    const QPointF hair = side.marks.hair_side.value_or(side.marks.edge_line.front());
    marked.hair_mm = card::mm_from_px(side.calibration, {hair.x(), hair.y()});
    return marked;
}

namespace {

align::Side align_side(const PairSide& side) {
    align::Side out;
    out.photo = &side.photo->decoded.photo;
    out.calibration = &side.calibration;
    for (const QPointF& p : side.marks.edge_line) out.edge_line_px.emplace_back(p.x(), p.y());
    const QPointF hair = side.marks.hair_side.value_or(side.marks.edge_line.front());
    out.hair_side_px = {hair.x(), hair.y()};
    for (const QPointF& p : side.marks.anchors) out.anchors_px.emplace_back(p.x(), p.y());
    return out;
}

// The rigid laying nearest to the skin's map along the edge line, and what it leaves there.
Laying rigid_of(const align::Alignment& found, const MarkedLine& earlier) {
    const std::vector<cv::Point2d> line = resampled(earlier.line_mm, 1);
    std::vector<cv::Point2d> later;
    for (const cv::Point2d& p : line) later.push_back(found.later_mm_from_earlier_mm(p));
    Laying laid;
    laid.earlier_from_later = rigid_from_pairs(later, line);
    double left = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const cv::Point2d off = laid.earlier_from_later(later[i]) - line[i];
        left += std::hypot(off.x, off.y) / static_cast<double>(line.size());
    }
    laid.by = QString::fromStdString(found.by);
    laid.residual_mm = found.residual_mm + left;
    return laid;
}

}  // namespace

Result<Laying> lay_pair(const PairSide& before, const PairSide& after, const Progress& progress) {
    const MarkedLine earlier = line_of(before), later = line_of(after);
    const auto before_anchors = pair_mm(before.marks.anchors, before.calibration);
    const auto after_anchors = pair_mm(after.marks.anchors, after.calibration);
    Laying laid;
    if (before.calibration.card_found && after.calibration.card_found) {
        const auto found = align::align(align_side(before), align_side(after), {}, progress);
        if (!found && found.error().kind == ErrorKind::cancelled) return stopped();
        if (found) laid = rigid_of(*found, earlier);
    } else if (before_anchors.size() >= 2 && before_anchors.size() == after_anchors.size()) {
        laid.earlier_from_later = rigid_from_pairs(after_anchors, before_anchors);
        laid.by = QStringLiteral("anchors");
    }
    if (laid.by.isEmpty()) {
        laid.earlier_from_later = line_up(earlier, later).earlier_from_later;
        laid.by = QStringLiteral("edge line");
    }
    laid.rms_mm = lines_apart_mm(earlier, later, laid.earlier_from_later);
    return laid;
}

QString Laying::told() const {
    if (by == u"edge line")
        return QStringLiteral(
            "Laid over each other by the edge lines: where the edge itself has moved, it does not show.");
    const QString means =
        by == u"skin" ? QStringLiteral("the skin beside the edge line") : QStringLiteral("the anchors");
    if (!residual_mm) return QStringLiteral("Laid over each other by %1.").arg(means);
    return QStringLiteral("Laid over each other by %1, to about %2 mm.")
        .arg(means)
        .arg(std::max(0.1, *residual_mm), 0, 'f', 1);
}

}  // namespace kempt::work
