#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "colour/colour.h"
#include "work/common_area.h"
#include "work/compare_pictures.h"
#include "work/errors.h"
#include "work/lay_pair.h"

namespace kempt::work {

namespace {

constexpr int finer = 2;                  // drawn this much finer, then averaged down, so that strands do not shimmer
constexpr double longest_mm = 200;        // wider than a head: a mark far off must not make a huge picture
constexpr int longest_warped_px = 30000;  // OpenCV's warp addresses pixels in 16 bits
constexpr std::uint8_t empty_grey = 200;  // where a photo does not reach
constexpr double line_margin_mm = 1;      // an edge line on the rim of the picture is hard to see

// What both pictures show: display millimetres = turn(earlier millimetres) - origin.
struct Frame {
    Rigid display_from_earlier;  // turned so that the earlier photo stands as it was taken
    cv::Rect2d area_mm;          // in display millimetres
    double px_per_mm = 0;
    [[nodiscard]] cv::Size size() const {
        return {std::max(1, static_cast<int>(std::lround(area_mm.width * px_per_mm))),
                std::max(1, static_cast<int>(std::lround(area_mm.height * px_per_mm)))};
    }
    // Picture pixels from earlier millimetres, for a picture drawn `times` finer.
    [[nodiscard]] cv::Matx33d px_from_earlier(int times) const {
        const double s = px_per_mm * times, half = (times - 1) / 2.0;  // pixel centres of the finer grid
        const cv::Matx33d scale(s, 0, -area_mm.x * s + half, 0, s, -area_mm.y * s + half, 0, 0, 1);
        return scale * display_from_earlier.matrix();
    }
};

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

// Both edge lines with their margin: what stays in the picture also where one photo ends.
cv::Rect2d about_lines(const MarkedLine& earlier, const Rigid& display_from_earlier, const MarkedLine& later,
                       const Rigid& display_from_later) {
    cv::Point2d first = display_from_earlier(earlier.line_mm.front()), last = first;
    const auto take = [&](const MarkedLine& marked, const Rigid& to_display) {
        for (const cv::Point2d& p : marked.line_mm) {
            const cv::Point2d at = to_display(p);
            first = {std::min(first.x, at.x), std::min(first.y, at.y)};
            last = {std::max(last.x, at.x), std::max(last.y, at.y)};
        }
    };
    take(earlier, display_from_earlier);
    take(later, display_from_later);
    const cv::Point2d margin(line_margin_mm, line_margin_mm);
    return {first - margin, last + margin};
}

Frame frame_for(const PairSide& before, const PairSide& after, const Laying& laid, const AlignOptions& options) {
    const MarkedLine earlier = line_of(before), later = line_of(after);
    const QPointF middle = before.marks.edge_line.at(before.marks.edge_line.size() / 2);
    const cv::Point2d here = card::mm_from_px(before.calibration, {middle.x(), middle.y()});
    const cv::Point2d right = card::mm_from_px(before.calibration, {middle.x() + 1, middle.y()}) - here;
    const double angle = -std::atan2(right.y, right.x);
    Frame frame;
    frame.display_from_earlier.turn = {std::cos(angle), -std::sin(angle), std::sin(angle), std::cos(angle)};
    Rigid display_from_later;
    display_from_later.turn = frame.display_from_earlier.turn * laid.earlier_from_later.turn;
    display_from_later.shift = frame.display_from_earlier.turn * laid.earlier_from_later.shift;
    std::vector<cv::Point2d> points;
    grow(points, earlier, frame.display_from_earlier, options);
    grow(points, later, display_from_later, options);
    const cv::Rect2d lines = about_lines(earlier, frame.display_from_earlier, later, display_from_later);
    points.push_back(lines.tl());  // the samples of a line may end short of its last point
    points.push_back(lines.br());
    double left = points[0].x, right_end = left, top = points[0].y, bottom = top;
    for (const cv::Point2d& p : points) {
        left = std::min(left, p.x);
        right_end = std::max(right_end, p.x);
        top = std::min(top, p.y);
        bottom = std::max(bottom, p.y);
    }
    frame.area_mm = {left, top, std::min(right_end - left, longest_mm), std::min(bottom - top, longest_mm)};
    frame.area_mm = common_area(
        frame.area_mm, lines,
        {{frame.display_from_earlier.matrix() * before.calibration.mm_from_px,
          before.photo->decoded.photo.pixels.size()},
         {display_from_later.matrix() * after.calibration.mm_from_px, after.photo->decoded.photo.pixels.size()}});
    const QPointF other = after.marks.edge_line.at(after.marks.edge_line.size() / 2);
    const double finest = std::max(card::px_per_mm_at(before.calibration, {middle.x(), middle.y()}),
                                   card::px_per_mm_at(after.calibration, {other.x(), other.y()}));
    frame.px_per_mm = std::min(options.longest_side_px / std::max(frame.area_mm.width, frame.area_mm.height), finest);
    return frame;
}

// Linear light to sRGB codes; the same for both pictures.
QImage image_from(const cv::Mat& linear_rgb) {
    static const std::vector<std::uint8_t> table = [] {
        std::vector<std::uint8_t> codes(4097);
        for (std::size_t i = 0; i < codes.size(); ++i)
            codes[i] =
                static_cast<std::uint8_t>(std::lround(255 * colour::srgb_from_linear(static_cast<double>(i) / 4096.0)));
        return codes;
    }();
    QImage image(linear_rgb.cols, linear_rgb.rows, QImage::Format_RGB888);
    for (int y = 0; y < linear_rgb.rows; ++y) {
        const auto* from = linear_rgb.ptr<cv::Vec3f>(y);
        std::uint8_t* to = image.scanLine(y);
        for (int x = 0; x < linear_rgb.cols; ++x)
            for (int c = 0; c < 3; ++c)
                *to++ = table[static_cast<std::size_t>(std::clamp(from[x][c], 0.0f, 1.0f) * 4096.0f)];
    }
    return image;
}

QImage draw(const PairSide& side, const cv::Matx33d& out_from_px, cv::Size size, bool with_light) {
    cv::Mat pixels = side.photo->decoded.photo.pixels, codes, reach;
    cv::Matx33d map = out_from_px;
    if (const int longest = std::max(pixels.cols, pixels.rows); longest > longest_warped_px) {
        const double factor = static_cast<double>(longest_warped_px) / longest;
        cv::resize(pixels, pixels, {}, factor, factor, cv::INTER_AREA);
        map = map * cv::Matx33d(1 / factor, 0, 0, 0, 1 / factor, 0, 0, 0, 1);
    }
    const cv::Size fine(size.width * finer, size.height * finer);
    cv::warpPerspective(pixels, codes, map, fine, cv::INTER_LINEAR, cv::BORDER_CONSTANT);
    cv::warpPerspective(cv::Mat(pixels.size(), CV_8UC1, cv::Scalar(255)), reach, map, fine, cv::INTER_NEAREST,
                        cv::BORDER_CONSTANT);
    const card::LightMap light(side.photo->decoded.photo, with_light ? side.calibration : card::Calibration{});
    cv::Mat linear = light.linear(codes);
    linear.setTo(cv::Scalar::all(colour::linear_from_srgb(empty_grey / 255.0)), reach == 0);
    cv::resize(linear, linear, size, 0, 0, cv::INTER_AREA);
    return image_from(linear);
}

QPolygonF polygon(const std::vector<cv::Point2d>& mm, const Rigid& earlier_from_mm,
                  const cv::Matx33d& px_from_earlier) {
    QPolygonF line;
    for (const cv::Point2d& p : mm) {
        const cv::Point2d moved = earlier_from_mm(p);
        const cv::Vec3d px = px_from_earlier * cv::Vec3d(moved.x, moved.y, 1);
        line.append(QPointF(px[0] / px[2], px[1] / px[2]));
    }
    return line;
}

// Without a scale: both whole, at one height, for the eye only.
AlignedPair side_by_side(const PairSide& before, const PairSide& after, const AlignOptions& options,
                         const QString& why) {
    AlignedPair pair;
    pair.notes.append(why);
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
        return draw(side, {scale * finer, 0, left * finer, 0, scale * finer, 0, 0, 0, 1}, size, false);
    };
    pair.before = place(before, pair.before_line);
    pair.after = place(after, pair.after_line);
    return pair;
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
    if (before.marks.edge_line.size() < 2 || after.marks.edge_line.size() < 2)
        return invalid("no-edge-line", "Both photos need an edge line to be laid over each other.",
                       "Draw the edge line on both photos.");
    const auto laying = lay_pair(before, after, part_of(progress, 0, 0.3));
    if (!laying) return laying.error();
    const Laying& laid = laying.value();
    const Frame frame = frame_for(before, after, laid, options);
    AlignedPair pair;
    pair.px_per_mm = frame.px_per_mm;
    pair.by = laid.by;
    pair.residual_mm = laid.residual_mm;
    pair.rms_mm = laid.rms_mm;
    pair.notes.append(laid.told());
    pair.light_matched = before.calibration.light && after.calibration.light;
    if (!pair.light_matched)
        pair.notes.append(QStringLiteral("Colours as the cameras wrote them: the light could not be matched."));
    if (before.calibration.two_points || after.calibration.two_points)
        pair.notes.append(QStringLiteral("Scale from two points: tilt is not known."));
    const cv::Matx33d fine = frame.px_from_earlier(finer), plain = frame.px_from_earlier(1);
    pair.before_line = polygon(pair_mm(before.marks.edge_line, before.calibration), {}, plain);
    pair.after_line = polygon(pair_mm(after.marks.edge_line, after.calibration), laid.earlier_from_later, plain);
    if (tell(progress, 0.3, "drawing the earlier photo") == Go::stop) return stopped();
    pair.before = draw(before, fine * before.calibration.mm_from_px, frame.size(), pair.light_matched);
    if (tell(progress, 0.6, "drawing the later photo") == Go::stop) return stopped();
    pair.after = draw(after, fine * laid.earlier_from_later.matrix() * after.calibration.mm_from_px, frame.size(),
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
