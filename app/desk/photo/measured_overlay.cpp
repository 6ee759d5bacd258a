#include "desk/photo/measured_overlay.h"

#include <QImage>
#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "combings/field.h"
#include "combings/summary.h"
#include "desk/look/colours.h"
#include "desk/photo/line_geometry.h"
#include "work/measure_groups.h"
#include "work/weeks_of_line.h"

namespace kempt::desk {
namespace {

constexpr int widest_tint = 2000;  // px: the screen shows no more
constexpr int full_alpha = 150;    // of 255, where all is covered: the hair under the tint is still seen
// Strands nearer than this to each other get different colours.
constexpr double near_mm = 4;
// A strand that runs into the rim ends that close to it.
constexpr double rim_mm = 1;
constexpr double drawing_tolerance_px = 0.4;  // of the photo: less than the strand's own width

QPolygonF polygon(const std::vector<cv::Point2d>& points) {
    QPolygonF out;
    out.reserve(static_cast<qsizetype>(points.size()));
    for (const cv::Point2d& p : points) out << QPointF(p.x, p.y);
    return out;
}

// The course of a traced line with as few points as its picture needs: drawing must not hold up the window.
QPolygonF drawn_path(const std::vector<cv::Point2d>& points) {
    std::vector<cv::Point2f> fine, coarse;
    fine.reserve(points.size());
    for (const cv::Point2d& p : points) fine.emplace_back(p);
    if (fine.size() < 3) return polygon(points);
    cv::approxPolyDP(fine, coarse, drawing_tolerance_px, false);
    QPolygonF out;
    out.reserve(static_cast<qsizetype>(coarse.size()));
    for (const cv::Point2f& p : coarse) out << QPointF(p.x, p.y);
    return out;
}

// A tint over `box` of the photo; cover(x, y) gives 0..255 for a photo pixel.
template <class CoverAt>
Cover tint_over(const QRect& box, CoverAt cover_at) {
    Cover cover;
    if (box.isEmpty()) return cover;
    const int step = std::max(1, std::max(box.width(), box.height()) / widest_tint);
    QImage tint(box.width() / step + 1, box.height() / step + 1, QImage::Format_ARGB32_Premultiplied);
    if (tint.isNull()) return cover;
    const QColor& c = mark_colours().cover;
    for (int y = 0; y < tint.height(); ++y) {
        auto* out = reinterpret_cast<QRgb*>(tint.scanLine(y));
        for (int x = 0; x < tint.width(); ++x) {
            const int alpha = cover_at(box.x() + x * step, box.y() + y * step) * full_alpha / 255;
            out[x] = qPremultiply(qRgba(c.red(), c.green(), c.blue(), alpha));
        }
    }
    cover.tint = tint;
    cover.where =
        QRectF(box.x(), box.y(), static_cast<double>(tint.width()) * step, static_cast<double>(tint.height()) * step);
    return cover;
}

EdgesOverlay edges_of(const edges::EdgeReadings& edges) {
    EdgesOverlay out;
    out.band = polygon(edges.band_outline_px);
    const cv::Mat& px = edges.overlay_px;
    if (px.empty()) return out;
    const QRect box = out.band.boundingRect().toAlignedRect().intersected(QRect(0, 0, px.cols, px.rows));
    out.cover = tint_over(box, [&px](int x, int y) {
        return static_cast<int>(px.at<uchar>(std::min(y, px.rows - 1), std::min(x, px.cols - 1)));
    });
    return out;
}

// Where the surface highlight crosses half its height over the straight line between its ends, as shine::luster_of
// reads its width.
void mark_half_height(ShineOverlay& shine) {
    const QVector<double>& light = shine.surface;
    const qsizetype last = light.size() - 1;
    const auto over = [&](qsizetype i) {
        const double t = static_cast<double>(i) / static_cast<double>(last);
        return light[i] - light.front() * (1 - t) - light.back() * t;
    };
    qsizetype top = 0;
    for (qsizetype i = 1; i <= last; ++i)
        if (over(i) > over(top)) top = i;
    const double half = over(top) / 2;
    if (!(half > 0)) return;
    const auto crossing = [&](qsizetype step) {
        qsizetype i = top;
        while (i > 0 && i < last && over(i) > half) i += step;
        const double above = over(i - step), below = over(i);
        const double share = above > below ? std::clamp((above - half) / (above - below), 0.0, 1.0) : 0.0;
        return (static_cast<double>(i - step) + share * static_cast<double>(step)) * shine.step_mm;
    };
    shine.half_from_mm = crossing(-1);
    shine.half_to_mm = crossing(1);
}

ShineOverlay shine_of(const shine::ShineReadings& shine) {
    ShineOverlay out;
    out.outline = polygon(shine.outline_px);
    out.crest = polygon(shine.crest_px);
    out.half_zone = polygon(shine.half_zone_px);
    out.axis = polygon(shine.fibre_axis_px);
    out.total = QVector<double>(shine.total.begin(), shine.total.end());
    out.surface = QVector<double>(shine.surface.begin(), shine.surface.end());
    out.step_mm = shine.step_mm;
    if (out.total.size() < 3 || out.surface.size() != out.total.size()) return out;
    // Without the grain of single values: over a twentieth of the curve at each end.
    const qsizetype n = out.total.size(), few = std::max<qsizetype>(1, n / 20);
    for (qsizetype i = 0; i < few; ++i) {
        out.base_first += (out.total[i] - out.surface[i]) / static_cast<double>(few);
        out.base_last += (out.total[n - 1 - i] - out.surface[n - 1 - i]) / static_cast<double>(few);
    }
    mark_half_height(out);
    return out;
}

QColor colour_of(const colour::Lab& lab) {
    const cv::Vec3d light = colour::linear_srgb_from_lab(lab);
    const auto code = [](double l) {
        return static_cast<int>(
            std::lround(255 * std::clamp(colour::srgb_from_linear(std::clamp(l, 0.0, 1.0)), 0.0, 1.0)));
    };
    return {code(light[0]), code(light[1]), code(light[2])};
}

std::optional<ToneSwatch> swatch_of(const std::optional<colour::Lab>& lab) {
    if (!lab) return std::nullopt;
    return ToneSwatch{colour_of(*lab), lab->L, lab->a, lab->b};
}

// Across the lane where the path passes `at`.
QLineF tick_across(const QPolygonF& path, const QPolygonF& lane, QPointF at) {
    const int stretch = nearest_stretch(path, at).stretch;
    if (stretch < 0) return {};
    // The path has a point each millimetre: its direction is taken over some of them.
    const int reach = 4, last = static_cast<int>(path.size()) - 1;
    const QPointF along = path[std::min(stretch + reach, last)] - path[std::max(stretch - reach, 0)];
    const double length = length_between({}, along);
    if (length <= 0) return {};
    double half = 0;
    for (const QPointF& p : lane)  // the lane's half width: how far its rim lies from the path
        half = std::max(half, nearest_stretch(path, p).distance);
    const QPointF across = QPointF(-along.y(), along.x()) * (1.5 * half / length);
    return {at - across, at + across};
}

ToneOverlay tone_of(const tone::ToneReadings& tone) {
    ToneOverlay out;
    out.root = swatch_of(tone.root);
    out.mid = swatch_of(tone.mid);
    out.end = swatch_of(tone.end);
    out.lane = polygon(tone.lane_px);
    out.path = polygon(tone.path_px);
    for (const colour::Lab& lab : tone.profile) out.profile.append(colour_of(lab));
    out.step_mm = tone.step_mm;
    out.length_mm = tone.length_mm;
    if (tone.mixed) out.mixed_over_mm = tone.lane_mm;
    for (const tone::Demarcation& line : tone.lines) {
        ToneLine to{
            line.step,   line.step_low, line.step_high, line.at_mm,
            line.at_low, line.at_high,  line.width_mm,  tick_across(out.path, out.lane, {line.at_px.x, line.at_px.y})};
        if (const auto weeks = work::weeks_of_line(line)) {
            to.weeks_low = weeks->low;
            to.weeks_high = weeks->high;
        }
        out.lines.append(to);
    }
    return out;
}

EndsOverlay ends_of(const ends::EndsReadings& ends, QRect photo) {
    EndsOverlay out;
    out.hem = polygon(ends.hem_px);
    out.smooth_hem = polygon(ends.smooth_hem_px);
    out.silhouette = polygon(ends.silhouette_px);
    const cv::Mat& cover = ends.cover;
    if (cover.empty()) return out;
    const cv::Matx33f& to = ends.px_from_cover;
    QPolygonF corners;
    for (const auto& [x, y] : {std::pair{0, 0}, {cover.cols, 0}, {cover.cols, cover.rows}, {0, cover.rows}}) {
        const cv::Vec3f p = to * cv::Vec3f(static_cast<float>(x), static_cast<float>(y), 1);
        corners << QPointF(p[0] / p[2], p[1] / p[2]);
    }
    const cv::Matx33f back = to.inv();
    const QRect box = corners.boundingRect().toAlignedRect().intersected(photo);
    out.cover = tint_over(box, [&](int x, int y) {
        const cv::Vec3f p = back * cv::Vec3f(static_cast<float>(x), static_cast<float>(y), 1);
        const int col = static_cast<int>(std::lround(p[0] / p[2])), row = static_cast<int>(std::lround(p[1] / p[2]));
        const bool within = col >= 0 && row >= 0 && col < cover.cols && row < cover.rows;
        return within ? static_cast<int>(cover.at<uchar>(row, col)) : 0;
    });
    return out;
}

// The ends of a cut-off strand at what is not looked at: rim, print, card, the region's sides. At least one.
QVector<QPointF> open_ends(const std::vector<cv::Point2d>& path, const combings::Field& field) {
    if (path.empty()) return {};
    const double first = field.inside_mm(path.front()), last = field.inside_mm(path.back());
    QVector<QPointF> ends;
    if (first <= std::max(rim_mm, std::min(first, last))) ends << QPointF(path.front().x, path.front().y);
    if (last <= std::max(rim_mm, std::min(first, last))) ends << QPointF(path.back().x, path.back().y);
    return ends;
}

StrandsOverlay strands_of(const std::vector<combings::Strand>& strands, const work::MeasureResult& result,
                          const Marks& marks) {
    const double px_per_mm = result.px_per_mm;
    std::optional<combings::Field> field;
    if (result.calibration.sheet)
        field.emplace(result.calibration, work::points_from(marks.region), combings::CombingsOptions{}.margin_mm);
    StrandsOverlay out;
    QVector<QPolygonF> paths;
    for (const combings::Strand& strand : strands) {
        ShownStrand to;
        to.path = drawn_path(strand.path_px);
        to.length_mm = strand.length_mm;
        to.low = strand.length_low;
        to.high = strand.length_high;
        to.doubtful = strand.doubtful;
        to.cut_off = strand.cut_off;
        to.perhaps_longer = combings::perhaps_longer(strand);
        to.looks_torn = combings::looks_torn(strand);
        if (to.cut_off && field) to.open_ends = open_ends(strand.path_px, *field);
        out.strands.append(to);
        paths.append(to.path);
    }
    const QVector<int> colours = colours_for(paths, static_cast<int>(strand_colours().size()), near_mm * px_per_mm);
    for (qsizetype i = 0; i < out.strands.size(); ++i) out.strands[i].colour = colours[i];
    return out;
}

}  // namespace

Overlay overlay_from(const work::MeasureResult& result, const Marks& marks) {
    Overlay out;
    out.edges = edges_of(result.edges);
    if (result.shine) out.shine = shine_of(*result.shine);
    if (result.tone) out.tone = tone_of(*result.tone);
    if (result.ends) out.ends = ends_of(*result.ends, QRect(QPoint(0, 0), result.header.size));
    if (result.combings) {
        out.combings = strands_of(result.combings->strands, result, marks);
        out.combings->parts = result.combings->parts;
        for (const auto* lines : {&result.combings->unresolved_px, &result.combings->dim_px})
            for (const auto& line : *lines) out.combings->unresolved.append(drawn_path(line));
    }
    if (result.pattern) {
        out.pattern = strands_of(result.pattern->strands, result, marks);
        for (qsizetype i = 0; i < out.pattern->strands.size(); ++i) {
            const auto at = static_cast<std::size_t>(i);
            if (at >= result.pattern->shapes.size()) break;
            out.pattern->strands[i].curve_diameter_mm = result.pattern->shapes[at].curve_diameter_mm;
            out.pattern->strands[i].wave_ratio = result.pattern->shapes[at].wave_ratio;
        }
    }
    return out;
}

}  // namespace kempt::desk
