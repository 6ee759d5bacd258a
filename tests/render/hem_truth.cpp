#include <algorithm>
#include <array>

#include "hem.h"

namespace render {

namespace {

constexpr double grid = 0.1;  // mm
constexpr double column_half = 1, stretch_half = 0.5, column_step = 0.5;
constexpr double last_mm = 20, inside_mm = 40, outside_mm = 20, off_mm = 20;

// Cover in the hair's frame with running sums, so that means over boxes are quick.
class CoverGrid {
  public:
    CoverGrid(double u0, double v0, int nu, int nv) : u0_(u0), v0_(v0), nu_(nu), nv_(nv) {
        sum_.assign(static_cast<size_t>(nu + 1) * (nv + 1), 0);
    }
    template <class Cover>
    void fill(Cover cover) {
        for (int j = 0; j < nv_; ++j) {
            double row = 0;
            for (int i = 0; i < nu_; ++i) {
                row += cover(u0_ + (i + 0.5) * grid, v0_ + (j + 0.5) * grid);
                at(i + 1, j + 1) = at(i + 1, j) + row;
            }
        }
    }
    // Sum of cover over a box, mm2; boxes are cut at the grid's border.
    [[nodiscard]] double area(double ua, double va, double ub, double vb) const {
        const int a = cell(ua - u0_, nu_), b = cell(ub - u0_, nu_), c = cell(va - v0_, nv_), d = cell(vb - v0_, nv_);
        if (b <= a || d <= c) return 0;
        return (at(b, d) - at(a, d) - at(b, c) + at(a, c)) * grid * grid;
    }
    [[nodiscard]] double mean(double ua, double va, double ub, double vb) const {
        const int a = cell(ua - u0_, nu_), b = cell(ub - u0_, nu_), c = cell(va - v0_, nv_), d = cell(vb - v0_, nv_);
        if (b <= a || d <= c) return 0;
        return (at(b, d) - at(a, d) - at(b, c) + at(a, c)) / (static_cast<double>(b - a) * (d - c));
    }
    [[nodiscard]] double u_end() const { return u0_ + nu_ * grid; }
    [[nodiscard]] double v_end() const { return v0_ + nv_ * grid; }
    [[nodiscard]] double u_begin() const { return u0_; }
    [[nodiscard]] double v_begin() const { return v0_; }

  private:
    static int cell(double mm, int n) { return static_cast<int>(clamp(std::lround(mm / grid), 0, n)); }
    [[nodiscard]] double& at(int i, int j) { return sum_[static_cast<size_t>(j) * (nu_ + 1) + i]; }
    [[nodiscard]] double at(int i, int j) const { return sum_[static_cast<size_t>(j) * (nu_ + 1) + i]; }
    double u0_, v0_;
    int nu_, nv_;
    std::vector<double> sum_;
};

// Solves the normal equations by elimination with pivots.
std::vector<double> solve(std::vector<std::vector<double>> m) {
    const size_t n = m.size();
    for (size_t k = 0; k < n; ++k) {
        size_t best = k;
        for (size_t r = k + 1; r < n; ++r)
            if (std::abs(m[r][k]) > std::abs(m[best][k])) best = r;
        std::swap(m[k], m[best]);
        if (std::abs(m[k][k]) < 1e-12) m[k][k] = 1e-12;
        for (size_t r = 0; r < n; ++r) {
            if (r == k) continue;
            const double f = m[r][k] / m[k][k];
            for (size_t c = k; c <= n; ++c) m[r][c] -= f * m[k][c];
        }
    }
    std::vector<double> x(n);
    for (size_t k = 0; k < n; ++k) x[k] = m[k][n] / m[k][k];
    return x;
}

struct Curve {  // cubic in pieces (truncated powers) with one bend
    double from = 0, to = 1, bend = 0;
    bool straight = false;
    std::vector<double> knots, weight;
    [[nodiscard]] std::vector<double> terms(double u) const {
        const double t = (clamp(u, from, to) - from) / (to - from);
        if (straight) return {1, t};
        std::vector<double> f{1, t, t * t, t * t * t};
        for (const double k : knots) f.push_back(std::pow(std::max(0.0, t - k), 3));
        f.push_back(std::max(0.0, t - bend));
        return f;
    }
    [[nodiscard]] double at(double u) const {
        const auto sum = [&](double x) {
            const auto f = terms(x);
            double s = 0;
            for (size_t k = 0; k < f.size(); ++k) s += weight[k] * f[k];
            return s;
        };
        // Straight on beyond the ends.
        if (u < from) return sum(from) + (sum(from + 1) - sum(from)) * (u - from);
        if (u > to) return sum(to) + (sum(to) - sum(to - 1)) * (u - to);
        return sum(u);
    }
};

Curve weighted_fit(const std::vector<double>& u, const std::vector<double>& v, const std::vector<double>& weight,
                   double from, double to, bool straight) {
    Curve best;
    double least = 1e300;
    const int spans = std::max(1, static_cast<int>(std::floor((to - from) / 60 + 0.5)));
    const double margin = std::min(15.0, (to - from) / 2);  // a hem narrower than twice that bends in its middle
    for (double bend = from + margin; bend <= to - margin + 1e-9; bend += 1) {
        Curve c;
        c.from = from, c.to = to, c.bend = (bend - from) / (to - from), c.straight = straight;
        for (int k = 1; k < spans && !straight; ++k) c.knots.push_back(static_cast<double>(k) / spans);
        const size_t n = straight ? 2 : 5 + c.knots.size();
        std::vector<std::vector<double>> m(n, std::vector<double>(n + 1, 0));
        for (size_t i = 0; i < u.size(); ++i) {
            const auto f = c.terms(u[i]);
            for (size_t a = 0; a < n; ++a) {
                for (size_t b = 0; b < n; ++b) m[a][b] += weight[i] * f[a] * f[b];
                m[a][n] += weight[i] * f[a] * v[i];
            }
        }
        for (size_t a = 0; a < n; ++a) m[a][a] += 1e-9;
        c.weight = solve(m);
        double rss = 0;
        for (size_t i = 0; i < u.size(); ++i) rss += weight[i] * std::pow(v[i] - c.at(u[i]), 2);
        if (rss < least) least = rss, best = c;
        if (straight) break;
    }
    return best;
}

Curve fit(const std::vector<double>& u, const std::vector<double>& v, double from, double to, bool straight = false) {
    std::vector<double> weight(u.size(), 1.0);
    Curve c = weighted_fit(u, v, weight, from, to, straight);
    for (int again = 0; again < 4; ++again) {
        std::vector<double> off;
        for (size_t i = 0; i < u.size(); ++i) off.push_back(std::abs(v[i] - c.at(u[i])));
        std::vector<double> sorted = off;
        std::nth_element(sorted.begin(), sorted.begin() + static_cast<long>(sorted.size() / 2), sorted.end());
        const double reach = std::max(0.3, 2.0 * sorted[sorted.size() / 2]);
        for (size_t i = 0; i < u.size(); ++i) weight[i] = std::min(1.0, reach / std::max(1e-9, off[i]));
        c = weighted_fit(u, v, weight, from, to, straight);
    }
    return c;
}

// The stretch of largest sum (value - level) over evenly spaced cells: first and one past the last.
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

double hem_of(const CoverGrid& g, double u, double half_cover) {
    const auto cover = [&](double v) {
        return g.mean(u - column_half, v - stretch_half, u + column_half, v + stretch_half);
    };
    double sum = 0, most = 0, hem = g.v_begin();
    for (double v = g.v_begin() + stretch_half; v < g.v_end() - stretch_half; v += grid) {
        sum += cover(v) - half_cover;
        if (sum <= most) continue;
        most = sum;
        const double here = cover(v), next = cover(v + grid);
        hem = here > next ? v + grid * clamp((here - half_cover) / (here - next), 0, 1) : v + grid;
    }
    return hem;
}

struct Line {  // u at 5 mm inside the smooth hem, and its change a millimetre deeper
    double u = 0, slope = 0;
    [[nodiscard]] double at(double d) const { return u + slope * (d - 5); }
};

struct Found {
    Curve smooth;
    std::vector<double> u, hem;
    Line left, right;
    double full = 0, left_out = 0;
};

// From the middle outward (direction -1, 1) the straight line with most of (cover - half) between it and the middle.
Line side_of(const CoverGrid& g, const Curve& smooth, double middle, double half, int direction) {
    const int n = static_cast<int>((direction < 0 ? middle - g.u_begin() : g.u_end() - middle) / column_step);
    std::vector<std::vector<double>> sums;
    std::vector<double> depth;
    for (double d = 3; d <= inside_mm - 1; d += 2) {
        std::vector<double> sum{0};
        for (int i = 0; i < n; ++i) {
            const double u = middle + direction * (i + 0.5) * column_step, s = smooth.at(u);
            sum.push_back(sum.back() + g.mean(u - 0.25, s - d - 1, u + 0.25, s - d + 1) - half);
        }
        sums.push_back(sum);
        depth.push_back(d);
    }
    Line best;
    double most = -1e300;
    for (int k = -30; k <= 30; ++k)
        for (int i = 0; i <= n; ++i) {
            const double slope = 0.02 * k;
            double sum = 0;
            for (size_t r = 0; r < sums.size(); ++r)
                sum += sums[r][static_cast<size_t>(
                    clamp(std::lround(i + direction * slope * (depth[r] - 5) / column_step), 0, n))];
            if (sum > most) most = sum, best = {middle + direction * i * column_step, slope};
        }
    return best;
}

Found find_hem(const CoverGrid& g) {
    Found f;
    const int columns = static_cast<int>((g.u_end() - g.u_begin()) / column_step);
    const auto middle = [&](int i) { return g.u_begin() + (i + 0.5) * column_step; };
    // Start: full cover and sides from the first 10 mm, one level hem.
    const auto first = [&](int i) { return g.mean(middle(i) - 0.25, g.v_begin(), middle(i) + 0.25, g.v_begin() + 10); };
    std::vector<double> start;
    for (int i = 0; i < columns; ++i) start.push_back(first(i));
    std::sort(start.begin(), start.end());
    f.full = start[static_cast<size_t>(0.9 * columns)];
    const auto sides = best_stretch(columns, f.full / 2, first);
    f.left.u = middle(sides.first) - 0.25, f.right.u = middle(sides.second - 1) + 0.25;
    for (int pass = 0; pass < 4; ++pass) {
        std::vector<double> u, hem;
        // First a straight line through the middle of the width.
        const double margin = pass == 0 ? 0.15 * (f.right.u - f.left.u) : 2, from = f.left.u + margin,
                     to = f.right.u - margin;
        for (int i = 0; i < columns; ++i)
            if (middle(i) >= from && middle(i) <= to)
                u.push_back(middle(i)), hem.push_back(hem_of(g, middle(i), f.full / 2));
        f.u.clear();
        if (u.size() < 40) return f;
        f.u = u, f.hem = hem;
        if (pass == 0) f.smooth = fit(u, hem, from, to, true);
        for (int again = 0; again < 3 && pass > 0; ++again) {
            f.smooth = fit(f.u, f.hem, from, to);
            std::vector<double> ku, kh;
            for (size_t i = 0; i < u.size(); ++i)
                if (std::abs(hem[i] - f.smooth.at(u[i])) <= off_mm) ku.push_back(u[i]), kh.push_back(hem[i]);
            if (ku.size() == f.u.size() || ku.size() < 40) break;
            f.u = ku, f.hem = kh;
        }
        f.left_out = 1 - static_cast<double>(f.u.size()) / static_cast<double>(u.size());
        if (pass == 3) break;
        double sum = 0;
        for (const double x : u) sum += g.mean(x - 0.25, f.smooth.at(x) - 30, x + 0.25, f.smooth.at(x) - 20);
        f.full = sum / static_cast<double>(u.size());
        const double half_way = 0.5 * (f.left.u + f.right.u);
        f.left = side_of(g, f.smooth, half_way, f.full / 2, -1);
        f.right = side_of(g, f.smooth, half_way, f.full / 2, 1);
    }
    return f;
}

}  // namespace

HemTruth hem_truth(const SheetScene& scene, const HemHair& hair, const HemLie& lie, const std::vector<float>& cover) {
    const Projector projector(scene.camera);
    const int W = scene.camera.width, H = scene.camera.height;
    const double c = std::cos(lie.turn_deg * 3.14159265358979 / 180),
                 s = std::sin(lie.turn_deg * 3.14159265358979 / 180);
    const auto sheet = [&](double u, double v) { return V2{lie.u_mm + c * u - s * v, lie.v_mm + s * u + c * v}; };
    // 44 mm above the highest part of the cut (as the drawn region) to 40 mm below; what the picture does not show is
    // bare.
    const double top = -hair.cut_mm - 44;
    CoverGrid g(-90, top, 1800, static_cast<int>((40 - top) / grid));
    g.fill([&](double u, double v) -> double {
        const V2 mm = sheet(u, v), p = projector.px_from({mm.x, mm.y, 0});
        const double fx = std::floor(p.x), fy = std::floor(p.y);
        if (fx < 0 || fy < 0 || fx >= W - 1 || fy >= H - 1) return 0;
        const double tx = p.x - fx, ty = p.y - fy;
        const float* q = cover.data() + static_cast<size_t>(fy) * W + static_cast<size_t>(fx);
        return (q[0] * (1 - tx) + q[1] * tx) * (1 - ty) + (q[W] * (1 - tx) + q[W + 1] * tx) * ty;
    });
    HemTruth t;
    const Found f = find_hem(g);
    t.full_cover = f.full;
    t.width_mm = f.right.u - f.left.u;
    t.left_out = f.left_out;
    if (f.u.size() < 40) return t;
    double squares = 0, bare = 0, all = 0;
    for (size_t i = 0; i < f.u.size(); ++i) {
        squares += std::pow(f.hem[i] - f.smooth.at(f.u[i]), 2);
        t.hem_mm.push_back(sheet(f.u[i], f.hem[i]));
    }
    t.hem_unevenness = std::sqrt(squares / static_cast<double>(f.u.size()));
    for (double u = f.left.u + 2; u <= f.right.u - 2; u += column_step) {
        const double hem = f.smooth.at(u);
        bare += 1 - g.mean(u - 0.25, hem - last_mm, u + 0.25, hem);
        all += 1;
        t.smooth_mm.push_back(sheet(u, hem));
    }
    t.see_through = 100 * bare / all;
    double in = 0, out = 0;
    for (double u = g.u_begin(); u < g.u_end() - grid / 2; u += grid) {
        const double hem = f.smooth.at(u + grid / 2);
        for (double d = inside_mm; d > -outside_mm; d -= 0.5) {
            const double deep = std::max(0.0, d - 0.25), left = f.left.at(deep), right = f.right.at(deep),
                         x = u + grid / 2;
            if (x < left - outside_mm || x > right + outside_mm) continue;
            const double area = g.area(u, hem - d, u + grid, hem - d + 0.5);
            (d > 0.25 && x >= left && x <= right ? in : out) += area;
        }
    }
    t.flyaway = in + out > 0 ? 100 * out / (in + out) : 0;
    for (double d = inside_mm; d >= 0; d -= 1) {
        const double u = f.left.at(d);
        t.silhouette_mm.push_back(sheet(u, f.smooth.at(u) - d));
    }
    for (double u = f.left.at(0); u <= f.right.at(0); u += 1) t.silhouette_mm.push_back(sheet(u, f.smooth.at(u)));
    for (double d = 0; d <= inside_mm; d += 1) {
        const double u = f.right.at(d);
        t.silhouette_mm.push_back(sheet(u, f.smooth.at(u) - d));
    }
    return t;
}

}  // namespace render
