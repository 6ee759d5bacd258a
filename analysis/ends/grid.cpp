#include "ends/grid.h"

#include <algorithm>
#include <cmath>

#include <opencv2/imgproc.hpp>

#include "card/card_layout.h"
#include "card/plane.h"
#include "card/ramp.h"
#include "card/sampler.h"

namespace kempt::ends {

namespace {

// A marker's quiet zone is as wide as one of its cells (3.3 mm); half of it is kept clear.
constexpr double mark_margin_mm = 1.7;

cv::Size grid_size(const Frame& frame) {
    return {cvRound(frame.width_mm * grid_px_per_mm), cvRound(frame.length_mm * grid_px_per_mm)};
}

cv::Matx33d px_from_cell(const Frame& frame) {
    const double s = 1 / grid_px_per_mm;
    return frame.px_from_uv * cv::Matx33d(s, 0, 0.5 * s, 0, s, 0.5 * s, 0, 0, 1);
}

bool crosses_itself(const std::vector<cv::Point2d>& p) {
    // A quadrilateral that turns one way at all corners neither crosses itself nor folds in.
    int left = 0;
    for (size_t i = 0; i < 4; ++i) {
        const cv::Point2d a = p[(i + 1) % 4] - p[i], b = p[(i + 2) % 4] - p[(i + 1) % 4];
        left += a.cross(b) > 0;
    }
    return left != 0 && left != 4;
}

// Blocks of k x k pixels in linear light (channels still the device's). K: k where it is known beforehand, for speed.
template <class Code, int K>
void average_blocks(const cv::Mat& codes, int any_k, const std::array<std::vector<float>, 3>& table, cv::Mat& out) {
    const int k = K > 0 ? K : any_k;
    const float scale = 1.f / static_cast<float>(k * k);
    const float *red = table[0].data(), *green = table[1].data(), *blue = table[2].data();
    cv::parallel_for_(cv::Range(0, out.rows), [&](const cv::Range& rows) {
        for (int y = rows.start; y < rows.end; ++y) {
            auto* to = out.ptr<float>(y);
            std::fill(to, to + 3 * out.cols, 0.f);
            for (int j = 0; j < k; ++j) {
                const Code* in = codes.ptr<Code>(y * k + j);
                for (int x = 0; x < out.cols; ++x) {
                    float r = 0, g = 0, b = 0;
                    for (int i = 0; i < k; ++i, in += 3) r += red[in[0]], g += green[in[1]], b += blue[in[2]];
                    to[3 * x] += r, to[3 * x + 1] += g, to[3 * x + 2] += b;
                }
            }
            for (int x = 0; x < 3 * out.cols; ++x) to[x] *= scale;
        }
    });
}

template <class Code>
void average(const cv::Mat& codes, int k, const std::array<std::vector<float>, 3>& table, cv::Mat& out) {
    if (k == 1) return average_blocks<Code, 1>(codes, k, table, out);
    if (k == 2) return average_blocks<Code, 2>(codes, k, table, out);
    if (k == 3) return average_blocks<Code, 3>(codes, k, table, out);
    average_blocks<Code, 0>(codes, k, table, out);
}

cv::Mat where_to_look(const cv::Matx33d& h, cv::Size size, double k, cv::Point corner) {
    cv::Mat where(size, CV_32FC2);
    cv::parallel_for_(cv::Range(0, size.height), [&](const cv::Range& rows) {
        for (int y = rows.start; y < rows.end; ++y) {
            auto* row = where.ptr<cv::Vec2f>(y);
            for (int x = 0; x < size.width; ++x) {
                const double w = 1 / (h(2, 0) * x + h(2, 1) * y + h(2, 2));
                // Pixel p of the photo lies at (p + 0.5) / k - 0.5 of the reduced one.
                row[x] = {static_cast<float>(((h(0, 0) * x + h(0, 1) * y + h(0, 2)) * w - corner.x + 0.5) / k - 0.5),
                          static_cast<float>(((h(1, 0) * x + h(1, 1) * y + h(1, 2)) * w - corner.y + 0.5) / k - 0.5)};
            }
        }
    });
    return where;
}

// What is printed or lies in the region: the card's face, and with the sheet alone the squares of its markers, on
// either paper (the calibration does not say which).
void clear_marks(const card::Calibration& calibration, const Frame& frame, cv::Mat& valid) {
    const cv::Matx33d cell_from_px = px_from_cell(frame).inv();
    const auto clear = [&](const std::array<cv::Point2d, 4>& corners_px) {
        std::vector<cv::Point> outline;
        for (const auto& p : corners_px) {
            const cv::Point2d q = card::apply(cell_from_px, p);
            outline.emplace_back(cvRound(q.x), cvRound(q.y));
        }
        cv::fillConvexPoly(valid, outline, cv::Scalar(0));
    };
    if (calibration.sheet && calibration.sheet->ground == card::Ground::blue) {
        const cv::Matx33d px_from_mm = calibration.sheet->mm_from_px.inv();
        const cv::Rect2d area = card::blue_area_mm(calibration.sheet->paper);
        std::vector<cv::Point> outline;
        for (const cv::Point2d& mm : {area.tl(), {area.br().x, area.y}, area.br(), {area.x, area.br().y}}) {
            const cv::Point2d q = card::apply(cell_from_px, card::apply(px_from_mm, mm));
            outline.emplace_back(cvRound(q.x), cvRound(q.y));
        }
        cv::Mat blue(valid.size(), CV_8UC1, cv::Scalar(0));
        cv::fillConvexPoly(blue, outline, cv::Scalar(255));
        valid &= blue;
    }
    if (calibration.card_found) return clear(calibration.card_corners_px);
    if (!calibration.sheet_found) return;
    const double half = card::sheet_marker_mm / 2 + mark_margin_mm;
    for (const card::Paper paper : {card::Paper::letter, card::Paper::a4})
        for (const cv::Point2d& c : card::sheet_marker_centres_mm(paper))
            clear({card::px_from_mm(calibration, {c.x - half, c.y - half}),
                   card::px_from_mm(calibration, {c.x + half, c.y - half}),
                   card::px_from_mm(calibration, {c.x + half, c.y + half}),
                   card::px_from_mm(calibration, {c.x - half, c.y + half})});
}

}  // namespace

Result<Frame> frame_of(const Photo& photo, const card::Calibration& calibration,
                       const std::vector<cv::Point2d>& region_px) {
    if (region_px.size() != 4)
        return Error{ErrorKind::invalid, "region-corners", "The region around the ends does not have four corners.", "",
                     "Draw it with four corners, the first side lying in the hair."};
    // A corner set at the rim may lie a pixel outside.
    const cv::Rect2d photo_px(-1.5, -1.5, photo.pixels.cols + 2, photo.pixels.rows + 2);
    for (const auto& p : region_px)
        if (!std::isfinite(p.x) || !std::isfinite(p.y) || !photo_px.contains(p))
            return Error{ErrorKind::invalid, "region-outside", "The region around the ends leaves the photo.", "",
                         "Keep its four corners on the picture."};
    if (crosses_itself(region_px))
        return Error{ErrorKind::invalid, "region-crosses", "The sides of the region cross or fold inward.", "",
                     "Draw the four corners in order around the ends."};
    Frame frame;
    std::vector<cv::Point2d> mm;
    frame.px_per_mm = 1e9;
    for (const auto& p : region_px) {
        mm.push_back(card::mm_from_px(calibration, p));
        frame.px_per_mm = std::min(frame.px_per_mm, card::px_per_mm_at(calibration, p));
    }
    const cv::Point2d in_hair = 0.5 * (mm[0] + mm[1]), beyond = 0.5 * (mm[2] + mm[3]), way = beyond - in_hair;
    const double length = cv::norm(way);
    if (!(length > 1e-6) || length > 1000)
        return Error{ErrorKind::invalid, "region-crosses", "The region has no length, or more than a metre.", "",
                     "Draw the four corners in order around the ends, and check the scale."};
    frame.along_mm = way / length;
    frame.across_mm = {frame.along_mm.y, -frame.along_mm.x};
    double u0 = 1e9, u1 = -1e9, v0 = 1e9, v1 = -1e9;
    for (const auto& p : mm) {
        const double u = (p - in_hair).dot(frame.across_mm), v = (p - in_hair).dot(frame.along_mm);
        u0 = std::min(u0, u), u1 = std::max(u1, u), v0 = std::min(v0, v), v1 = std::max(v1, v);
    }
    frame.origin_mm = in_hair + u0 * frame.across_mm + v0 * frame.along_mm;
    frame.width_mm = u1 - u0;
    frame.length_mm = v1 - v0;
    if (frame.width_mm > 1000)
        return Error{ErrorKind::invalid, "region-crosses", "The region is more than a metre wide.", "",
                     "Check the scale."};
    const auto &a = frame.across_mm, &d = frame.along_mm, &o = frame.origin_mm;
    frame.px_from_uv = calibration.mm_from_px.inv() * cv::Matx33d(a.x, d.x, o.x, a.y, d.y, o.y, 0, 0, 1);
    return frame;
}

Grid cut_grid(const Photo& photo, const card::Calibration& calibration, const std::vector<cv::Point2d>& region_px,
              const Frame& frame) {
    const cv::Size size = grid_size(frame);
    const cv::Rect photo_px({}, photo.pixels.size());
    cv::Rect box = cv::boundingRect(std::vector<cv::Point2f>(region_px.begin(), region_px.end()));
    // The straightened region reaches beyond the drawn corners where these are not square.
    for (const cv::Point2d& uv :
         {cv::Point2d(0, 0), {frame.width_mm, 0}, {0, frame.length_mm}, {frame.width_mm, frame.length_mm}}) {
        const cv::Point2d p = card::apply(frame.px_from_uv, uv);
        box |= cv::Rect(cvFloor(p.x), cvFloor(p.y), 2, 2);
    }
    const int k = std::clamp(static_cast<int>(frame.px_per_mm / grid_px_per_mm), 1, 16);
    box = cv::Rect(box.x - 2 * k, box.y - 2 * k, box.width + 4 * k, box.height + 4 * k) & photo_px;
    std::array<std::vector<float>, 3> table = card::code_tables(photo);
    if (calibration.light)
        for (int c = 0; c < 3; ++c)
            for (float& v : table[static_cast<size_t>(c)]) v = card::corrected(*calibration.light, c, v);
    cv::Mat reduced(box.height / k, box.width / k, CV_32FC3);
    if (photo.pixels.depth() == CV_16U)
        average<ushort>(photo.pixels(box), k, table, reduced);
    else
        average<uchar>(photo.pixels(box), k, table, reduced);

    Grid grid;
    const cv::Mat where = where_to_look(px_from_cell(frame), size, k, box.tl());
    cv::remap(reduced, grid.light, where, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    if (cv::norm(photo.colour.srgb_from_device - cv::Matx33f::eye()) > 1e-6)
        cv::transform(grid.light, grid.light, photo.colour.srgb_from_device);

    grid.valid = cv::Mat(size, CV_8UC1, cv::Scalar(0));
    const cv::Matx33d cell_from_px = px_from_cell(frame).inv();
    std::vector<cv::Point> outline;
    for (const auto& p : region_px) {
        const cv::Point2d q = card::apply(cell_from_px, p);
        outline.emplace_back(cvRound(q.x), cvRound(q.y));
    }
    cv::fillConvexPoly(grid.valid, outline, cv::Scalar(255));
    clear_marks(calibration, frame, grid.valid);
    return grid;
}

cv::Mat sample_grid(const cv::Mat& picture, const Frame& frame) {
    cv::Mat out;
    cv::remap(picture, out, where_to_look(px_from_cell(frame), grid_size(frame), 1, {}), cv::noArray(),
              cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return out;
}

}  // namespace kempt::ends
