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

bool has_line(const PairSide& side) {
    return side.marks.edge_line.size() >= 2;
}

cv::Point2d middle_px(const PairSide& side) {
    const Marks& m = side.marks;
    if (has_line(side)) {
        const QPointF at = m.edge_line.at(m.edge_line.size() / 2);
        return {at.x(), at.y()};
    }
    const QVector<QPointF>& points = m.region.size() == 4         ? m.region
                                     : m.strand_line.size() >= 2  ? m.strand_line
                                     : m.shine_region.size() == 4 ? m.shine_region
                                                                  : m.anchors;
    const cv::Size size = side.photo->decoded.photo.pixels.size();
    cv::Point2d sum{0, 0};
    for (const QPointF& p : points) sum += cv::Point2d(p.x(), p.y());
    return points.isEmpty() ? cv::Point2d(size.width / 2.0, size.height / 2.0)
                            : sum * (1.0 / static_cast<double>(points.size()));
}

Stand stand_of(const PairSide& side) {
    const Marks& m = side.marks;
    Stand stand;
    const auto unit = [](cv::Point2d v) {
        const double length = std::hypot(v.x, v.y);
        return length > 0 ? v * (1 / length) : cv::Point2d(1, 0);
    };
    if (m.region.size() == 4 || (m.shine_region.size() == 4 && m.strand_line.size() < 2)) {
        // Two corners in the hair or nearer to the roots first, the other two after.
        const auto corners = pair_mm(m.region.size() == 4 ? m.region : m.shine_region, side.calibration);
        const cv::Point2d upper = (corners[0] + corners[1]) * 0.5, lower = (corners[2] + corners[3]) * 0.5;
        stand.shown_mm = corners;
        stand.at_mm = (upper + lower) * 0.5;
        stand.along_mm = unit(lower - upper);
        stand.what = m.region.size() == 4 ? QStringLiteral("region") : QStringLiteral("shine region");
    } else if (m.strand_line.size() >= 2) {
        stand.shown_mm = pair_mm(m.strand_line, side.calibration);
        for (const cv::Point2d& p : pair_mm(m.shine_region, side.calibration)) stand.shown_mm.push_back(p);
        stand.at_mm = stand.shown_mm.front();  // the root
        stand.along_mm = unit(pair_mm(m.strand_line, side.calibration).back() - stand.at_mm);
        stand.what = QStringLiteral("strand");
    } else {
        const cv::Size size = side.photo->decoded.photo.pixels.size();
        const double w = size.width - 1, h = size.height - 1;
        stand.shown_mm = pair_mm({QPointF(0, 0), QPointF(w, 0), QPointF(w, h), QPointF(0, h)}, side.calibration);
        stand.at_mm = pair_mm({QPointF(w / 2, h / 2)}, side.calibration).front();
        stand.along_mm = unit(pair_mm({QPointF(w / 2 + 1, h / 2)}, side.calibration).front() - stand.at_mm);
        stand.what = QStringLiteral("photo");
    }
    return stand;
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

namespace {

constexpr double most_anchor_rms_mm =
    2.5;  // as align::AlignOptions::most_anchor_residual_mm: a mark set on another mole

// Anchors of both photos, in one order.
std::optional<Laying> by_anchors(const PairSide& before, const PairSide& after, QString& refused) {
    const auto earlier = pair_mm(before.marks.anchors, before.calibration);
    const auto later = pair_mm(after.marks.anchors, after.calibration);
    if (earlier.size() < 2 || earlier.size() != later.size()) return std::nullopt;
    Laying laid;
    laid.earlier_from_later = rigid_from_pairs(later, earlier);
    double squares = 0;
    for (std::size_t i = 0; i < later.size(); ++i) {
        const cv::Point2d off = laid.earlier_from_later(later[i]) - earlier[i];
        squares += off.dot(off);
    }
    const double rms = std::sqrt(squares / static_cast<double>(later.size()));
    if (rms > most_anchor_rms_mm) {
        refused =
            QStringLiteral("The anchors of both photos do not lie alike: they differ by %1 mm.").arg(rms, 0, 'f', 1);
        return std::nullopt;
    }
    laid.by = QStringLiteral("anchors");
    return laid;
}

Laying by_marks(const PairSide& before, const PairSide& after) {
    const Stand earlier = stand_of(before), later = stand_of(after);
    Laying laid;
    laid.by = QStringLiteral("marks");
    if (earlier.what == later.what) {
        const double angle =
            std::atan2(earlier.along_mm.y, earlier.along_mm.x) - std::atan2(later.along_mm.y, later.along_mm.x);
        laid.earlier_from_later.turn = {std::cos(angle), -std::sin(angle), std::sin(angle), std::cos(angle)};
    }
    const cv::Point2d moved = laid.earlier_from_later(later.at_mm);
    laid.earlier_from_later.shift = {earlier.at_mm.x - moved.x, earlier.at_mm.y - moved.y};
    return laid;
}

}  // namespace

Result<Laying> lay_pair(const PairSide& before, const PairSide& after, const Progress& progress) {
    Laying laid;
    QString refused;
    if (!has_line(before) || !has_line(after)) {
        if (const auto found = by_anchors(before, after, refused)) return *found;
        laid = by_marks(before, after);
        laid.refused = !refused.isEmpty() ? refused
                                          : QStringLiteral(
                                                "Neither an edge line nor the same anchors are marked in both "
                                                "photos.");
        return laid;
    }
    const MarkedLine earlier = line_of(before), later = line_of(after);
    if (before.mirrored != after.mirrored) {
        refused = QStringLiteral("They are two sides of the head.");
    } else if (before.calibration.card_found && after.calibration.card_found) {
        const auto found = align::align(align_side(before), align_side(after), {}, progress);
        if (!found && found.error().kind == ErrorKind::cancelled) return stopped();
        if (found)
            laid = rigid_of(*found, earlier);
        else
            refused = QString::fromStdString(found.error().what);
    } else if (const auto found = by_anchors(before, after, refused)) {
        laid = *found;
    } else if (refused.isEmpty()) {
        refused = QStringLiteral("Without the gauge card in both photos the skin cannot be laid over itself.");
    }
    if (laid.by.isEmpty()) {
        laid.earlier_from_later = line_up(earlier, later).earlier_from_later;
        laid.by = QStringLiteral("edge line");
        laid.refused = refused;
    }
    laid.rms_mm = lines_apart_mm(earlier, later, laid.earlier_from_later);
    return laid;
}

QString Laying::told() const {
    if (by == u"marks") return QStringLiteral("At one scale, side by side; not laid over each other. %1").arg(refused);
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
