#include "work/carry_between.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "align/align.h"
#include "colour/colour.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

using PointMap = std::function<cv::Point2d(cv::Point2d)>;  // later px from earlier px

// Repeats of a colour after correction stay below 4 in 95 % (docs/accuracy.md); hair and skin that a tap can tell apart
// lie 15 or more from each other (common practice, no source).
constexpr double same_colour = 8;
// How far card and skin may differ before the card counts as moved: half a millimetre is what a line drawn by hand is
// worth.
constexpr double card_moved_mm = 0.5;
constexpr double least_line_mm = 10;  // shorter lines are not measured (edges/band.h)

QSize size_of(const OpenPhoto& photo) {
    return {photo.decoded.photo.pixels.cols, photo.decoded.photo.pixels.rows};
}

std::vector<cv::Point2d> px_of(const QVector<QPointF>& points) {
    std::vector<cv::Point2d> out;
    for (const QPointF& p : points) out.emplace_back(p.x(), p.y());
    return out;
}

QPointF clipped(cv::Point2d px, QSize size) {
    return {std::clamp(px.x, 0.0, static_cast<double>(size.width())),
            std::clamp(px.y, 0.0, static_cast<double>(size.height()))};
}

// The longest piece of a line that lies on the photo, cut at its border.
QVector<QPointF> on_photo(const std::vector<cv::Point2d>& line, QSize size) {
    QVector<QPointF> best, piece;
    double best_length = -1, length = 0;
    const auto close = [&] {
        if (piece.size() >= 2 && length > best_length) best = piece, best_length = length;
        piece.clear();
        length = 0;
    };
    for (std::size_t i = 1; i < line.size(); ++i) {
        // Liang and Barsky 1984: the part of the segment within the frame.
        const cv::Point2d a = line[i - 1], d = line[i] - line[i - 1];
        double from = 0, to = 1;
        bool inside = true;
        for (const auto& [p, q] :
             {std::pair{-d.x, a.x}, {d.x, size.width() - a.x}, {-d.y, a.y}, {d.y, size.height() - a.y}}) {
            if (p == 0)
                inside = inside && q >= 0;
            else if (p < 0)
                from = std::max(from, q / p);
            else
                to = std::min(to, q / p);
        }
        if (!inside || from > to) {
            close();
            continue;
        }
        if (from > 0) close();
        if (piece.isEmpty()) piece.append(clipped(a + d * from, size));
        piece.append(clipped(a + d * to, size));
        length += (to - from) * std::hypot(d.x, d.y);
        if (to < 1) close();
    }
    close();
    return best;
}

colour::Lab colour_at(const OpenPhoto& photo, const card::LightMap& light, cv::Point2d px) {
    const cv::Mat& pixels = photo.decoded.photo.pixels;
    // As large as a tap is read (edges/band_maps.cpp): 3 x 3 pixels.
    const cv::Rect spot =
        cv::Rect(cvRound(px.x) - 1, cvRound(px.y) - 1, 3, 3) & cv::Rect(0, 0, pixels.cols, pixels.rows);
    if (spot.empty()) return {};
    const cv::Scalar mean = cv::mean(light.linear(pixels(spot)));
    return colour::lab_from_linear_srgb({mean[0], mean[1], mean[2]});
}

// Only where the same stuff shows.
QVector<QPointF> taps(const QVector<QPointF>& points, const PointMap& map, const OpenPhoto& from, const OpenPhoto& to) {
    QVector<QPointF> kept;
    if (points.isEmpty()) return kept;
    const card::LightMap before(from.decoded.photo, from.card), after(to.decoded.photo, to.card);
    const QSize size = size_of(to);
    for (const QPointF& p : points) {
        const cv::Point2d px = map({p.x(), p.y()});
        if (px.x < 1 || px.y < 1 || px.x > size.width() - 2 || px.y > size.height() - 2) continue;
        if (colour::ciede2000(colour_at(from, before, {p.x(), p.y()}), colour_at(to, after, px)) <= same_colour)
            kept.append(QPointF(px.x, px.y));
    }
    return kept;
}

Result<Marks> carried_by(const Marks& marks, const PointMap& map, const OpenPhoto& from, const OpenPhoto& to,
                         QStringList& notes) {
    const QSize size = size_of(to);
    const auto moved = [&](const QVector<QPointF>& points) {
        std::vector<cv::Point2d> out;
        for (const QPointF& p : points) out.push_back(map({p.x(), p.y()}));
        return out;
    };
    const auto area = [&](const QVector<QPointF>& points) {
        QVector<QPointF> out;
        for (const cv::Point2d& p : moved(points)) out.append(clipped(p, size));
        return out;
    };
    Marks carried;
    carried.view = marks.view;
    carried.sheet = marks.sheet;
    carried.edge_line = on_photo(moved(marks.edge_line), size);
    double length = 0;
    for (qsizetype i = 1; i < carried.edge_line.size(); ++i) {
        const QPointF a = carried.edge_line[i - 1], b = carried.edge_line[i];
        const cv::Point2d d = card::mm_from_px(to.card, {b.x(), b.y()}) - card::mm_from_px(to.card, {a.x(), a.y()});
        length += std::hypot(d.x, d.y);
    }
    if (!marks.edge_line.isEmpty() && length < least_line_mm)
        return Error{ErrorKind::refused, "line-off-photo", "The last edge line would lie outside this photo.",
                     "Nothing was carried over.",
                     "Photograph the same place as at the last visit, or draw the line anew."};
    if (marks.hair_side) carried.hair_side = area({*marks.hair_side}).front();
    carried.shine_region = area(marks.shine_region);
    carried.strand_line = on_photo(moved(marks.strand_line), size);
    carried.region = area(marks.region);
    for (const cv::Point2d& p : moved(marks.anchors))
        if (p.x >= 0 && p.y >= 0 && p.x <= size.width() && p.y <= size.height())
            carried.anchors.append(QPointF(p.x, p.y));
    carried.hair_taps = taps(marks.hair_taps, map, from, to);
    carried.scalp_taps = taps(marks.scalp_taps, map, from, to);
    if (const auto lost =
            marks.hair_taps.size() + marks.scalp_taps.size() - carried.hair_taps.size() - carried.scalp_taps.size();
        lost > 0)
        notes.append(
            lost == 1
                ? QStringLiteral("One colour sample was left out: the photo shows something else there.")
                : QStringLiteral("%1 colour samples were left out: the photo shows something else there.").arg(lost));
    return carried;
}

align::Side side_of(const OpenPhoto& photo, const Marks& marks) {
    align::Side side{&photo.decoded.photo, &photo.card, px_of(marks.edge_line), {}, px_of(marks.anchors)};
    if (marks.hair_side) side.hair_side_px = {marks.hair_side->x(), marks.hair_side->y()};
    return side;
}

PointMap through(const align::Alignment& laid, const OpenPhoto& from, const OpenPhoto& to) {
    return [map = laid.later_mm_from_earlier_mm, &from, &to](cv::Point2d px) {
        return card::px_from_mm(to.card, map(card::mm_from_px(from.card, px)));
    };
}

// Largest distance at the line between the skin's word and the cards'.
double apart_mm(const align::Alignment& laid, const OpenPhoto& from, const Marks& marks) {
    double most = 0;
    for (const cv::Point2d& px : px_of(marks.edge_line)) {
        const cv::Point2d mm = card::mm_from_px(from.card, px), d = laid.later_mm_from_earlier_mm(mm) - mm;
        most = std::max(most, std::hypot(d.x, d.y));
    }
    return most;
}

Result<CarriedMarks> within_visit(const OpenPhoto& from, const Marks& marks, const OpenPhoto& to,
                                  const Progress& progress) {
    CarriedMarks out;
    out.by = QStringLiteral("card");
    auto cards = map_marks(marks, from.card, to.card, size_of(to));
    if (!cards) return cards.error();
    if (from.card.card_found && to.card.card_found && marks.edge_line.size() >= 2 && marks.hair_side) {
        const auto laid = align::align(side_of(from, marks), side_of(to, {}), {}, progress);
        if (!laid && laid.error().kind == ErrorKind::cancelled) return laid.error();
        if (laid && apart_mm(*laid, from, marks) > std::max(card_moved_mm, 2 * laid->residual_mm)) {
            auto carried = carried_by(marks, through(*laid, from, to), from, to, out.notes);
            if (!carried) return carried.error();
            out.marks = std::move(carried).value();
            out.by = QString::fromStdString(laid->by);
            out.residual_mm = laid->residual_mm;
            out.notes.prepend(QStringLiteral("The card was moved between the shots, so the skin was used."));
            return out;
        }
        if (laid) out.residual_mm = std::max(laid->residual_mm, apart_mm(*laid, from, marks));
    }
    const PointMap map = [&](cv::Point2d px) { return card::px_from_mm(to.card, card::mm_from_px(from.card, px)); };
    out.marks = std::move(cards).value();
    QStringList& notes = out.notes;
    Marks only_taps;
    only_taps.hair_taps = marks.hair_taps;
    only_taps.scalp_taps = marks.scalp_taps;
    const auto checked = carried_by(only_taps, map, from, to, notes);
    if (!checked) return checked.error();
    out.marks.hair_taps = checked->hair_taps;
    out.marks.scalp_taps = checked->scalp_taps;
    return out;
}

Result<CarriedMarks> between_visits(const OpenPhoto& from, const Marks& marks, const OpenPhoto& to,
                                    const std::optional<Marks>& to_marks, const Progress& progress) {
    const auto laid = align::align(side_of(from, marks), side_of(to, to_marks.value_or(Marks{})), {}, progress);
    if (!laid) return laid.error();
    CarriedMarks out;
    out.by = QString::fromStdString(laid->by);
    out.residual_mm = laid->residual_mm;
    auto carried = carried_by(marks, through(*laid, from, to), from, to, out.notes);
    if (!carried) return carried.error();
    out.marks = std::move(carried).value();
    if (out.by == u"anchors") out.marks.anchors = to_marks->anchors;  // as they were set on the new photo
    return out;
}

}  // namespace

QString CarriedMarks::told() const {
    QString text = by == u"skin"      ? QStringLiteral("Taken over by the skin beside the line")
                   : by == u"anchors" ? QStringLiteral("Taken over by the anchors")
                                      : QStringLiteral("Taken over through the card");
    if (residual_mm) text += QStringLiteral(", to about %1 mm").arg(std::max(0.1, *residual_mm), 0, 'f', 1);
    return (QStringList{text + QStringLiteral(".")} + notes).join(QStringLiteral(" "));
}

Result<Marks> map_marks(const Marks& marks, const card::Calibration& from, const card::Calibration& to, QSize to_size) {
    const bool cards = from.card_found && to.card_found, sheets = from.sheet_found && to.sheet_found;
    if (!cards && !sheets)
        return Error{ErrorKind::refused, "no-card-to-carry",
                     "Marks can only be carried between two photos that both show the gauge card.", "",
                     "Draw the marks on this photo by hand."};
    const auto carry = [&](const QPointF& p) {
        return clipped(card::px_from_mm(to, card::mm_from_px(from, {p.x(), p.y()})), to_size);
    };
    Marks carried = marks;
    carried.id = 0;
    carried.photo = 0;
    for (QVector<QPointF>* points : {&carried.edge_line, &carried.hair_taps, &carried.scalp_taps, &carried.shine_region,
                                     &carried.strand_line, &carried.region, &carried.anchors})
        for (QPointF& p : *points) p = carry(p);
    if (carried.hair_side) carried.hair_side = carry(*carried.hair_side);
    // They belong to the strands of that photo.
    carried.not_hair.clear();
    carried.joined.clear();
    carried.whole.clear();
    carried.scale_points.clear();  // the card gives the scale
    carried.scale_mm = 0;
    return carried;
}

Result<CarriedMarks> carry_between(const OpenPhoto& from, const Marks& marks, const OpenPhoto& to,
                                   const std::optional<Marks>& to_marks, Between between, const Progress& progress) {
    return guarded([&] {
        return between == Between::shots ? within_visit(from, marks, to, progress)
                                         : between_visits(from, marks, to, to_marks, progress);
    });
}

}  // namespace kempt::work
