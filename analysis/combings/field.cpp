#include "combings/field.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <opencv2/imgproc.hpp>

#include "card/card_layout.h"
#include "card/plane.h"

namespace kempt::combings {
namespace {

// The words and the check line stand between the upper markers, from 32 mm on and not below 29 mm (report/gauge_pdf).
constexpr double strip_left_mm = 30, strip_bottom_mm = 29;

std::vector<cv::Point2d> rectangle(double x0, double y0, double x1, double y1) {
    return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

// Signed distance of a point to a convex outline whose corners run clockwise (y down): above 0 inside.
double signed_distance(const std::vector<cv::Point2d>& outline, cv::Point2d p) {
    double least = std::numeric_limits<double>::max();
    for (size_t i = 0; i < outline.size(); ++i) {
        const cv::Point2d a = outline[i], d = outline[(i + 1) % outline.size()] - a;
        least = std::min(least, d.cross(p - a) / std::max(1e-9, cv::norm(d)));
    }
    return least;
}

double area_of(const std::vector<cv::Point2d>& outline) {
    double twice = 0;
    for (size_t i = 0; i < outline.size(); ++i) twice += outline[i].cross(outline[(i + 1) % outline.size()]);
    return twice / 2;
}

// Part of a convex outline on the inner side of the line through a along d.
std::vector<cv::Point2d> clipped(const std::vector<cv::Point2d>& outline, cv::Point2d a, cv::Point2d d) {
    std::vector<cv::Point2d> out;
    for (size_t i = 0; i < outline.size(); ++i) {
        const cv::Point2d p = outline[i], q = outline[(i + 1) % outline.size()];
        const double u = d.cross(p - a), v = d.cross(q - a);
        if (u >= 0) out.push_back(p);
        if ((u > 0 && v < 0) || (u < 0 && v > 0)) out.push_back(p + (q - p) * (u / (u - v)));
    }
    return out;
}

}  // namespace

Field::Field(const card::Calibration& calibration, const std::vector<cv::Point2d>& region_px, double margin_mm) {
    const card::Calibration::Sheet& sheet = *calibration.sheet;
    mm_from_px_ = sheet.mm_from_px;
    px_from_mm_ = mm_from_px_.inv();
    const cv::Size2d page = card::paper_size_mm(sheet.paper);
    outline_mm_ = rectangle(margin_mm, margin_mm, page.width - margin_mm, page.height - margin_mm);
    if (region_px.size() >= 3) {
        std::vector<cv::Point2f> corners;
        for (const cv::Point2d& p : region_px) corners.push_back(mm_from_px(p));
        std::vector<cv::Point2f> hull;
        cv::convexHull(corners, hull, true);  // clockwise where y runs down
        std::vector<cv::Point2d> region(hull.begin(), hull.end());
        if (area_of(region) < 0) std::reverse(region.begin(), region.end());
        for (size_t i = 0; i < region.size() && !outline_mm_.empty(); ++i)
            outline_mm_ = clipped(outline_mm_, region[i], region[(i + 1) % region.size()] - region[i]);
    }
    // A marker and the paper between it and the page's corner.
    const double reach = card::sheet_marker_mm / 2 + margin_mm;
    for (const cv::Point2d& c : card::sheet_marker_centres_mm(sheet.paper)) {
        const bool right = c.x > page.width / 2, low = c.y > page.height / 2;
        holes_mm_.push_back(rectangle(right ? c.x - reach : -1, low ? c.y - reach : -1,
                                      right ? page.width + 1 : c.x + reach, low ? page.height + 1 : c.y + reach));
    }
    holes_mm_.push_back(
        rectangle(strip_left_mm - margin_mm, -1, page.width - strip_left_mm + margin_mm, strip_bottom_mm + margin_mm));
    if (calibration.card_found) {
        std::vector<cv::Point2d> card;
        cv::Point2d middle;
        for (const cv::Point2d& p : calibration.card_corners_px)
            card.push_back(mm_from_px(p)), middle += card.back() / 4;
        for (cv::Point2d& p : card) p += (p - middle) * (1.5 * margin_mm / cv::norm(p - middle));
        if (area_of(card) < 0) std::reverse(card.begin(), card.end());
        holes_mm_.push_back(card);
    }
    for (const cv::Point2d& p : outline_mm_) outline_px_.push_back(px_from_mm(p));
    area_mm2_ = outline_mm_.size() < 3 ? 0 : area_of(outline_mm_);
    // Cells that lie wholly inside or outside answer at once.
    const double half_diagonal = cell_mm * 0.7072;
    columns_ = static_cast<int>(page.width / cell_mm) + 1;
    rows_ = static_cast<int>(page.height / cell_mm) + 1;
    for (int j = 0; j < rows_; ++j)
        for (int i = 0; i < columns_; ++i) {
            const double d = distance_mm({(i + 0.5) * cell_mm, (j + 0.5) * cell_mm});
            cells_.push_back(d > half_diagonal ? Cell::inside : d < -half_diagonal ? Cell::outside : Cell::mixed);
        }
}

cv::Point2d Field::mm_from_px(cv::Point2d px) const {
    return card::apply(mm_from_px_, px);
}
cv::Point2d Field::px_from_mm(cv::Point2d mm) const {
    return card::apply(px_from_mm_, mm);
}

double Field::inside_mm(cv::Point2d px) const {
    return distance_mm(mm_from_px(px));
}

bool Field::inside(cv::Point2d px) const {
    const cv::Point2d p = mm_from_px(px);
    const double i = p.x / cell_mm, j = p.y / cell_mm;
    if (!(i >= 0 && j >= 0 && i < columns_ && j < rows_)) return false;
    const Cell cell = cells_[static_cast<size_t>(j) * static_cast<size_t>(columns_) + static_cast<size_t>(i)];
    return cell == Cell::mixed ? distance_mm(p) > 0 : cell == Cell::inside;
}

Field::Cell Field::square(const cv::Rect2d& px) const {
    // A convex outline stays one, unless the horizon passes through it.
    cv::Point2d low(1e9, 1e9), high(-1e9, -1e9);
    for (const cv::Point2d p : {px.tl(), px.br(), cv::Point2d(px.x, px.br().y), cv::Point2d(px.br().x, px.y)}) {
        if (!(mm_from_px_(2, 0) * p.x + mm_from_px_(2, 1) * p.y + mm_from_px_(2, 2) > 1e-9)) return Cell::mixed;
        const cv::Point2d mm = mm_from_px(p);
        low = {std::min(low.x, mm.x), std::min(low.y, mm.y)}, high = {std::max(high.x, mm.x), std::max(high.y, mm.y)};
    }
    constexpr double rounding_mm = 1e-6;
    const double i0 = (low.x - rounding_mm) / cell_mm, i1 = (high.x + rounding_mm) / cell_mm,
                 j0 = (low.y - rounding_mm) / cell_mm, j1 = (high.y + rounding_mm) / cell_mm;
    if (i1 < 0 || j1 < 0 || i0 >= columns_ || j0 >= rows_) return Cell::outside;
    if (!(i0 >= 0 && j0 >= 0 && i1 < columns_ && j1 < rows_)) return Cell::mixed;
    const auto cell = [&](int i, int j) {
        return cells_[static_cast<size_t>(j) * static_cast<size_t>(columns_) + static_cast<size_t>(i)];
    };
    const Cell first = cell(static_cast<int>(i0), static_cast<int>(j0));
    for (int j = static_cast<int>(j0); j <= static_cast<int>(j1); ++j)
        for (int i = static_cast<int>(i0); i <= static_cast<int>(i1); ++i)
            if (cell(i, j) != first) return Cell::mixed;
    return first;
}

cv::Mat1b Field::squares(cv::Rect bounds, int side) const {
    cv::Mat1b out((bounds.height + side - 1) / side, (bounds.width + side - 1) / side);
    for (int j = 0; j < out.rows; ++j)
        for (int i = 0; i < out.cols; ++i)
            out(j, i) = static_cast<uchar>(
                square(cv::Rect2d(bounds.x + i * side - 1.5, bounds.y + j * side - 1.5, side + 2, side + 2)));
    return out;
}

double Field::distance_mm(cv::Point2d p) const {
    if (outline_mm_.size() < 3) return -far_mm;
    double inside = std::min(far_mm, signed_distance(outline_mm_, p));
    for (const auto& hole : holes_mm_) inside = std::min(inside, -signed_distance(hole, p));
    return inside;
}

cv::Range Field::columns(int y, int width) const {
    double low = width, high = -1;
    for (size_t i = 0; i < outline_px_.size(); ++i) {
        const cv::Point2d a = outline_px_[i], b = outline_px_[(i + 1) % outline_px_.size()];
        // Where the side passes the row, taken half a pixel to both sides.
        const double y0 = y - 0.5, y1 = y + 0.5;
        if (std::max(a.y, b.y) < y0 || std::min(a.y, b.y) > y1) continue;
        for (const double at : {y0, y1}) {
            const double t = std::abs(b.y - a.y) < 1e-9 ? 0 : std::clamp((at - a.y) / (b.y - a.y), 0.0, 1.0);
            const double x = a.x + t * (b.x - a.x);
            low = std::min(low, x), high = std::max(high, x);
        }
        if (std::abs(b.y - a.y) < 1e-9) low = std::min({low, a.x, b.x}), high = std::max({high, a.x, b.x});
    }
    const int from = std::max(0, static_cast<int>(std::floor(low))),
              to = std::min(width, static_cast<int>(std::ceil(high)) + 1);
    return from < to ? cv::Range(from, to) : cv::Range(0, 0);
}

cv::Rect Field::bounds(cv::Size photo) const {
    if (outline_px_.size() < 3) return {};
    cv::Point2d low = outline_px_[0], high = low;
    for (const cv::Point2d& p : outline_px_) {
        low.x = std::min(low.x, p.x), low.y = std::min(low.y, p.y);
        high.x = std::max(high.x, p.x), high.y = std::max(high.y, p.y);
    }
    const cv::Rect box(cv::Point(static_cast<int>(std::floor(low.x)), static_cast<int>(std::floor(low.y))),
                       cv::Point(static_cast<int>(std::ceil(high.x)) + 1, static_cast<int>(std::ceil(high.y)) + 1));
    return box & cv::Rect({}, photo);
}

}  // namespace kempt::combings
