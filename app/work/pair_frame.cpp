#include "work/pair_frame.h"

#include "work/common_area.h"

namespace kempt::work {

namespace {

constexpr double longest_mm = 200;       // wider than a head: a mark far off must not make a huge picture
constexpr double longest_hair_mm = 600;  // of lengths and ends, which hang down
constexpr double line_margin_mm = 1;     // an edge line on the rim of the picture is hard to see
constexpr double stand_margin_mm = 10;   // about regions and strands

// The line's band towards the hair and its margin on the other side.
void grow(std::vector<cv::Point2d>& points, const MarkedLine& marked, const Rigid& to_display,
          const AlignOptions& options) {
    const std::vector<cv::Point2d> line = resampled(marked.line_mm, 2);
    const cv::Point2d hair = to_display(marked.hair_mm);
    for (std::size_t i = 0; i < line.size(); ++i) {
        const cv::Point2d here = to_display(line[i]);
        const cv::Point2d along =
            to_display(line[std::min(i + 1, line.size() - 1)]) - to_display(line[i > 0 ? i - 1 : 0]);
        const double length = std::hypot(along.x, along.y);
        if (length <= 0) continue;
        cv::Point2d inward(-along.y / length, along.x / length);
        if (inward.dot(hair - here) < 0) inward = -inward;
        points.push_back(here + inward * options.band_mm);
        points.push_back(here - inward * options.margin_mm);
    }
}

cv::Rect2d about(const std::vector<cv::Point2d>& points, double margin) {
    cv::Point2d first = points.front(), last = first;
    for (const cv::Point2d& p : points) {
        first = {std::min(first.x, p.x), std::min(first.y, p.y)};
        last = {std::max(last.x, p.x), std::max(last.y, p.y)};
    }
    const cv::Point2d m(margin, margin);
    return {first - m, last + m};
}

// One photo of the picture: its marks and its pixels on the display plane.
struct Shows {
    const PairSide* side;
    Rigid to_display;
};

Frame framed(const std::vector<Shows>& photos, bool by_lines, const Rigid& display_from_earlier,
             const AlignOptions& options) {
    Frame frame;
    frame.display_from_earlier = display_from_earlier;
    std::vector<cv::Point2d> points, kept;
    for (const Shows& one : photos) {
        if (by_lines) {
            const MarkedLine line = line_of(*one.side);
            grow(points, line, one.to_display, options);
            for (const cv::Point2d& p : line.line_mm) kept.push_back(one.to_display(p));
        } else {
            for (const cv::Point2d& p : stand_of(*one.side).shown_mm) kept.push_back(one.to_display(p));
        }
    }
    const double margin = by_lines ? line_margin_mm : stand_margin_mm;
    const double longest = by_lines ? longest_mm : longest_hair_mm;
    const cv::Rect2d least = about(kept, by_lines ? margin : 0);
    cv::Rect2d area = about(kept, margin);
    if (!points.empty()) area |= about(points, 0);
    area.width = std::min(area.width, longest);
    area.height = std::min(area.height, longest);
    std::vector<Shown> reach;
    double finest = 0;
    for (const Shows& one : photos) {
        const cv::Matx33d mm_from_px = one.side->calibration.mm_from_px;
        reach.push_back({one.to_display.matrix() * mm_from_px, one.side->photo->decoded.photo.pixels.size()});
        finest = std::max(finest, card::px_per_mm_at(one.side->calibration, middle_px(*one.side)));
    }
    frame.area_mm = common_area(area, least, reach);
    frame.px_per_mm = std::min(options.longest_side_px / std::max(frame.area_mm.width, frame.area_mm.height), finest);
    return frame;
}

Rigid upright(const PairSide& one) {
    const cv::Point2d middle = middle_px(one);
    const cv::Point2d here = card::mm_from_px(one.calibration, middle);
    const cv::Point2d right = card::mm_from_px(one.calibration, {middle.x + 1, middle.y}) - here;
    const double angle = -std::atan2(right.y, right.x);
    Rigid display;
    display.turn = {std::cos(angle), -std::sin(angle), std::sin(angle), std::cos(angle)};
    return display;
}

}  // namespace

cv::Matx33d Frame::px_from_earlier(int times) const {
    const double s = px_per_mm * times, half = (times - 1) / 2.0;  // pixel centres of the finer grid
    const cv::Matx33d scale(s, 0, -area_mm.x * s + half, 0, s, -area_mm.y * s + half, 0, 0, 1);
    return scale * display_from_earlier.matrix();
}

Frame frame_for(const PairSide& before, const PairSide& after, const Laying& laid, const AlignOptions& options) {
    const Rigid from_earlier = upright(before);
    Rigid from_later;
    from_later.turn = from_earlier.turn * laid.earlier_from_later.turn;
    from_later.shift = from_earlier.turn * laid.earlier_from_later.shift;
    return framed({{&before, from_earlier}, {&after, from_later}}, has_line(before) && has_line(after), from_earlier,
                  options);
}

Frame frame_of(const PairSide& one, const AlignOptions& options) {
    const Rigid display = upright(one);
    return framed({{&one, display}}, has_line(one), display, options);
}

QPolygonF polygon_in(const std::vector<cv::Point2d>& mm, const Rigid& earlier_from_mm,
                     const cv::Matx33d& px_from_earlier) {
    QPolygonF line;
    for (const cv::Point2d& p : mm) {
        const cv::Point2d moved = earlier_from_mm(p);
        const cv::Vec3d px = px_from_earlier * cv::Vec3d(moved.x, moved.y, 1);
        line.append(QPointF(px[0] / px[2], px[1] / px[2]));
    }
    return line;
}

}  // namespace kempt::work
