#include "ends/shape.h"

#include <algorithm>
#include <cmath>

namespace kempt::ends {

namespace {

constexpr double start_mm = 10;  // first full cover and sides come from so much of the region
constexpr double beside_mm = 2;  // hem columns lie so far inside the sides
// Sides lean by 31 degrees at most: wider, and it is no hanging lock.
constexpr double side_row_mm = 2, steepest_side = 0.6, side_slope_step = 0.02;
constexpr double full_mm = 10;
constexpr double off_mm = 20;  // a column further off is a gap between locks or a stray lock
constexpr int passes = 4;
constexpr size_t least_columns = 40;
// The first pass looks at the middle of the width alone: hair that hangs aslant leaves the outer columns sideways.
constexpr double first_margin = 0.15;

// The stretch [first, past last) of largest sum of (value - level).
template <class Value>
std::pair<int, int> best_stretch(int n, double level, Value value) {
    double sum = 0, most = 0;
    int start = 0;
    std::pair<int, int> best{0, 0};
    for (int i = 0; i < n; ++i) {
        sum += value(i) - level;
        if (sum <= 0)
            sum = 0, start = i + 1;
        else if (sum > most)
            most = sum, best = {start, i + 1};
    }
    return best;
}

double hem_of_column(const CoverSums& cover, double u, double column_mm, double level) {
    const double half = column_mm / 2, step = cell_mm;
    const std::vector<CoverSums::Sum> row = cover.rows_between(u - half, u + half);
    const int rows = static_cast<int>(row.size());
    const int reach = std::max(1, static_cast<int>(std::lround(stretch_mm / step)));
    double sum = 0, most = 0, hem = 0, before = 0;
    bool falls_next = false;
    for (int j = 0; j + reach <= rows; ++j) {
        CoverSums::Sum s;
        for (int k = 0; k < reach; ++k) {
            s.cover += row[static_cast<size_t>(j + k)].cover;
            s.seen += row[static_cast<size_t>(j + k)].seen;
        }
        if (s.seen <= 0) continue;
        const double here = s.mean(), v = (j + reach / 2.0) * step;
        if (falls_next) {
            falls_next = false;
            hem = v - step + (before > here ? step * std::clamp((before - level) / (before - here), 0.0, 1.0) : step);
        }
        sum += here - level;
        if (sum > most) most = sum, falls_next = true, hem = v;
        before = here;
    }
    return hem;
}

struct Columns {
    std::vector<double> u, hem;
};

Columns hem_between(const CoverSums& cover, double from, double to, double column_mm, double level) {
    Columns out;
    const int n = static_cast<int>(cover.width_mm() / column_step_mm);
    for (int i = 0; i < n; ++i)
        if (const double u = (i + 0.5) * column_step_mm; u >= from && u <= to) out.u.push_back(u);
    out.hem.resize(out.u.size());
    cv::parallel_for_(cv::Range(0, static_cast<int>(out.u.size())), [&](const cv::Range& part) {
        for (int i = part.start; i < part.end; ++i) {
            const auto k = static_cast<size_t>(i);
            out.hem[k] = hem_of_column(cover, out.u[k], column_mm, level);
        }
    });
    return out;
}

// Fits the perimeter, leaves out what lies far off it, fits again.
double fit_smooth(Columns all, double from, double to, double smooth_mm, HemShape& shape) {
    shape.u = all.u, shape.hem = all.hem;
    for (int again = 0; again < 3; ++again) {
        shape.smooth = Perimeter(shape.u, shape.hem, from, to, smooth_mm);
        Columns kept;
        for (size_t i = 0; i < all.u.size(); ++i)
            if (std::abs(all.hem[i] - shape.smooth.at(all.u[i])) <= off_mm)
                kept.u.push_back(all.u[i]), kept.hem.push_back(all.hem[i]);
        if (kept.u.size() == shape.u.size() || kept.u.size() < least_columns) break;
        shape.u = kept.u, shape.hem = kept.hem;
    }
    return 1 - static_cast<double>(shape.u.size()) / static_cast<double>(all.u.size());
}

// direction -1: left of the middle, 1: right of it.
SideLine find_side(const CoverSums& cover, const Perimeter& smooth, double middle, double half_cover, int direction) {
    const double reach = direction < 0 ? middle : cover.width_mm() - middle;
    const int n = static_cast<int>(reach / column_step_mm), rows = static_cast<int>((inside_mm - 2) / side_row_mm);
    // Running sums outward of each row.
    cv::Mat1d sums(rows, n + 1, 0.0);
    for (int r = 0; r < rows; ++r)
        for (int i = 0; i < n; ++i) {
            const double u = middle + direction * (i + 0.5) * column_step_mm, d = 2 + (r + 0.5) * side_row_mm,
                         s = smooth.at(u);
            const auto sum = cover.over(u - column_step_mm / 2, s - d - side_row_mm / 2, u + column_step_mm / 2,
                                        s - d + side_row_mm / 2);
            // What the region does not hold speaks for neither.
            sums(r, i + 1) = sums(r, i) + (sum.seen > 0 ? sum.mean() - half_cover : 0);
        }
    SideLine best{middle, 0};
    double most = -1e300;
    std::vector<int> shift(static_cast<size_t>(rows));
    for (double slope = -steepest_side; slope <= steepest_side + 1e-9; slope += side_slope_step) {
        for (int r = 0; r < rows; ++r)
            shift[static_cast<size_t>(r)] = static_cast<int>(
                std::lround(direction * slope * (2 + (r + 0.5) * side_row_mm - side_depth_mm) / column_step_mm));
        for (int i = 0; i <= n; ++i) {
            double sum = 0;
            for (int r = 0; r < rows; ++r) sum += sums(r, std::clamp(i + shift[static_cast<size_t>(r)], 0, n));
            if (sum > most) most = sum, best = {middle + direction * i * column_step_mm, slope};
        }
    }
    return best;
}

}  // namespace

CoverSums::CoverSums(const cv::Mat& cover, const cv::Mat& valid, double cell)
    : cols_(cover.cols),
      rows_(cover.rows),
      cell_(cell),
      cover_(rows_ + 1, cols_ + 1, 0.0),
      seen_(rows_ + 1, cols_ + 1, 0.0) {
    for (int y = 0; y < rows_; ++y) {
        const auto* c = cover.ptr<float>(y);
        const auto* ok = valid.ptr<uchar>(y);
        double sum = 0, seen = 0;
        for (int x = 0; x < cols_; ++x) {
            if (ok[x]) sum += c[x] * cell * cell, seen += cell * cell;
            cover_(y + 1, x + 1) = cover_(y, x + 1) + sum;
            seen_(y + 1, x + 1) = seen_(y, x + 1) + seen;
        }
    }
}

CoverSums::Sum CoverSums::over(double u0, double v0, double u1, double v1) const {
    const int a = std::clamp(static_cast<int>(std::lround(u0 / cell_)), 0, cols_),
              b = std::clamp(static_cast<int>(std::lround(u1 / cell_)), 0, cols_);
    const double c = std::clamp(v0 / cell_, 0.0, static_cast<double>(rows_)),
                 d = std::clamp(v1 / cell_, 0.0, static_cast<double>(rows_));
    if (b <= a || d <= c) return {};
    const auto down_to = [&](const cv::Mat1d& sums, double v) {
        const int j = std::min(static_cast<int>(v), rows_ - 1);
        const double t = v - j;
        return (sums(j, b) - sums(j, a)) * (1 - t) + (sums(j + 1, b) - sums(j + 1, a)) * t;
    };
    return {down_to(cover_, d) - down_to(cover_, c), down_to(seen_, d) - down_to(seen_, c)};
}

std::vector<CoverSums::Sum> CoverSums::rows_between(double u0, double u1) const {
    const int a = std::clamp(static_cast<int>(std::lround(u0 / cell_)), 0, cols_),
              b = std::clamp(static_cast<int>(std::lround(u1 / cell_)), 0, cols_);
    std::vector<Sum> rows(static_cast<size_t>(rows_));
    double cover = 0, seen = 0;
    for (int y = 0; y < rows_; ++y) {
        const double c = cover_(y + 1, b) - cover_(y + 1, a), s = seen_(y + 1, b) - seen_(y + 1, a);
        rows[static_cast<size_t>(y)] = {c - cover, s - seen};
        cover = c, seen = s;
    }
    return rows;
}

HemShape find_shape(const CoverSums& cover, const EndsOptions& options, double half) {
    HemShape shape;
    shape.half = half;
    const int n = static_cast<int>(cover.width_mm() / column_step_mm);
    if (n < static_cast<int>(least_columns)) return shape;
    const auto at_start = [&](int i) {
        return cover.over(i * column_step_mm, 0, (i + 1) * column_step_mm, start_mm).mean();
    };
    std::vector<double> start;
    for (int i = 0; i < n; ++i) start.push_back(at_start(i));
    std::nth_element(start.begin(), start.begin() + n * 9 / 10, start.end());
    shape.full_cover = start[static_cast<size_t>(n * 9 / 10)];
    const auto sides = best_stretch(n, shape.full_cover / 2, at_start);
    shape.left.u = sides.first * column_step_mm, shape.right.u = sides.second * column_step_mm;
    for (int pass = 0; pass < passes; ++pass) {
        const double margin = pass == 0 ? first_margin * (shape.right.u - shape.left.u) : beside_mm,
                     from = shape.left.u + margin, to = shape.right.u - margin;
        const Columns columns = hem_between(cover, from, to, options.column_mm, half * shape.full_cover);
        shape.u.clear();
        if (columns.u.size() < least_columns) return shape;
        if (pass == 0) {
            shape.u = columns.u, shape.hem = columns.hem;
            shape.smooth = Perimeter::line(shape.u, shape.hem, from, to);
        } else
            shape.left_out = fit_smooth(columns, from, to, options.smooth_mm, shape);
        if (pass == passes - 1) break;
        CoverSums::Sum full;
        double deep = 0;
        for (const double u : columns.u) {
            const double s = shape.smooth.at(u) - options.last_mm;
            const auto sum = cover.over(u - 0.25, s - full_mm, u + 0.25, s);
            full.cover += sum.cover, full.seen += sum.seen;
            deep += s - full_mm > -1;
        }
        shape.deep_enough = deep / static_cast<double>(columns.u.size());
        if (full.seen > 0) shape.full_cover = full.mean();
        const double middle = std::round((from + to) / 2 / column_step_mm) * column_step_mm;
        shape.left = find_side(cover, shape.smooth, middle, shape.full_cover / 2, -1);
        shape.right = find_side(cover, shape.smooth, middle, shape.full_cover / 2, 1);
    }
    return shape;
}

double unevenness(const HemShape& shape) {
    double squares = 0;
    for (size_t i = 0; i < shape.u.size(); ++i) squares += std::pow(shape.hem[i] - shape.smooth.at(shape.u[i]), 2);
    return shape.u.empty() ? 0 : std::sqrt(squares / static_cast<double>(shape.u.size()));
}

double unevenness_at(const CoverSums& cover, const HemShape& shape, const EndsOptions& options, double level) {
    const double from = shape.left.u + beside_mm, to = shape.right.u - beside_mm;
    HemShape other;
    fit_smooth(hem_between(cover, from, to, options.column_mm, level * shape.full_cover), from, to, options.smooth_mm,
               other);
    return unevenness(other);
}

double bare_share(const CoverSums& cover, const HemShape& shape, double last_mm) {
    CoverSums::Sum all;
    for (double u = shape.left.u + beside_mm; u + column_step_mm <= shape.right.u - beside_mm + 1e-9;
         u += column_step_mm) {
        const double s = shape.smooth.at(u + column_step_mm / 2);
        const auto sum = cover.over(u, s - last_mm, u + column_step_mm, s);
        all.cover += sum.cover, all.seen += sum.seen;
    }
    return std::max(0.0, 1 - all.mean());
}

Flyaway flyaway(const CoverSums& cover, const HemShape& shape) {
    Flyaway out;
    constexpr double step = 0.5;
    double wanted = 0;
    const double from = std::min(shape.left.at(0), shape.left.at(inside_mm)) - outside_mm,
                 to = std::max(shape.right.at(0), shape.right.at(inside_mm)) + outside_mm;
    for (double u = std::floor(from); u < to; u += step) {
        const double s = shape.smooth.at(u + step / 2);
        for (double d = inside_mm - step / 2; d > -outside_mm; d -= step) {
            const double deep = std::max(0.0, d), left = shape.left.at(deep), right = shape.right.at(deep),
                         x = u + step / 2;
            if (x < left - outside_mm || x > right + outside_mm) continue;
            const auto sum = cover.over(u, s - d - step / 2, u + step, s - d + step / 2);
            const bool in = d > 0 && x >= left && x <= right;
            (in ? out.inside : out.outside) += sum.cover;
            if (!in) wanted += step * step, out.rim_mm2 += sum.seen;
        }
    }
    out.seen = wanted > 0 ? out.rim_mm2 / wanted : 0;
    return out;
}

}  // namespace kempt::ends
