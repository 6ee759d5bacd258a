// Linear light of a sheet with strands on it: paper, print, card, shadows in layers of softness, then the strands as
// anti-aliased lines from the lowest to the highest.
#include <algorithm>

#include <opencv2/imgproc.hpp>

#include "noise.h"
#include "shade.h"
#include "sheet.h"

namespace render {

namespace {
constexpr double pi = 3.14159265358979;

// ---- shadows

// Cover thrown onto the paper, in layers by how soft its shadow is there, on a grid of `cell` mm.
class PaperShadows {
  public:
    PaperShadows(const SheetScene& scene)
        : light_(scene.light), nx_(cells(scene.size_mm.x)), ny_(cells(scene.size_mm.y)) {}
    void throw_down(const Coat& coat) {
        const double kz = std::max(0.2, light_.key.z);
        for (const Strand& s : coat.strands)
            for (int i = s.first + 1; i < s.first + s.count; ++i) {
                const V3 a = coat.points[static_cast<size_t>(i - 1)], b = coat.points[static_cast<size_t>(i)];
                const double length = std::hypot(b.x - a.x, b.y - a.y), z = std::max(0.0, 0.5 * (a.z + b.z));
                const double soft = std::hypot(light_.penumbra * z, 0.5 * s.radius);
                int k = 0;
                while (k < layers - 1 && soft > limit[k]) ++k;
                const double dx = -light_.key.x / kz * z, dy = -light_.key.y / kz * z;
                const int parts = std::max(1, static_cast<int>(length / (cell * 0.8)));
                const float share = static_cast<float>(2 * s.radius * length / parts / (cell * cell));
                for (int p = 0; p < parts; ++p) {
                    const double t = (p + 0.5) / parts, x = a.x + t * (b.x - a.x), y = a.y + t * (b.y - a.y);
                    splat(key_[k], x + dx, y + dy, share);
                    splat(near_, x, y, share);
                }
            }
    }
    void finish() {
        cv::Mat1f key(ny_, nx_, 1.f), soft(ny_, nx_, 1.f);
        for (int k = 0; k < layers; ++k) {
            if (key_[k].empty()) continue;
            const double sigma = k == 0 ? 0.4 * limit[0] : std::sqrt(limit[k - 1] * std::min(limit[k], 1.6));
            cv::GaussianBlur(key_[k], key_[k], {}, sigma / cell);
            key.forEach([&](float& v, const int at[]) {
                if (const float cover = key_[k](at); cover > 0) v *= 1 - 0.93f * (1 - std::exp(-cover));
            });
            key_[k].release();
        }
        if (!near_.empty()) {
            cv::Mat1f small;
            cv::resize(near_, small, {}, 0.25, 0.25, cv::INTER_AREA);
            cv::GaussianBlur(small, small, {}, 0.5 / (4 * cell));
            small.forEach([](float& v, const int*) { v = 1 - 0.75f * (1 - std::exp(-v)); });
            cv::resize(small, soft, soft.size(), 0, 0, cv::INTER_LINEAR);
            near_.release();
        }
        left_ = light_.key_share * key + (1 - light_.key_share) * soft;
    }
    // Share of the light that reaches the paper at a place.
    [[nodiscard]] float light_left(double x, double y) const {
        const double u = clamp(x / cell + pad - 0.5, 0, nx_ - 1.001), v = clamp(y / cell + pad - 0.5, 0, ny_ - 1.001);
        const int i = static_cast<int>(u), j = static_cast<int>(v);
        const float a = static_cast<float>(u - i), b = static_cast<float>(v - j);
        const float *p = left_[j] + i, *q = left_[j + 1] + i;
        return (p[0] * (1 - a) + p[1] * a) * (1 - b) + (q[0] * (1 - a) + q[1] * a) * b;
    }

  private:
    static constexpr int layers = 4, pad = 20;
    static constexpr double cell = 0.12;                           // mm
    static constexpr double limit[layers] = {0.08, 0.25, 0.7, 9};  // mm of blur
    static int cells(double mm) { return static_cast<int>(mm / cell) + 2 * pad; }
    void splat(cv::Mat1f& map, double x, double y, float share) {
        const double u = x / cell + pad - 0.5, v = y / cell + pad - 0.5;
        if (!(u >= 0 && v >= 0 && u < nx_ - 1 && v < ny_ - 1)) return;
        if (map.empty()) map = cv::Mat1f(ny_, nx_, 0.f);
        const int i = static_cast<int>(u), j = static_cast<int>(v);
        const float a = static_cast<float>(u - i), b = static_cast<float>(v - j);
        float *p = map[j] + i, *q = map[j + 1] + i;
        p[0] += share * (1 - a) * (1 - b), p[1] += share * a * (1 - b);
        q[0] += share * (1 - a) * b, q[1] += share * a * b;
    }
    const Lighting& light_;
    int nx_, ny_;
    cv::Mat1f key_[layers], near_, left_;
};

// Cover of the coat in cells of 0.5 mm and layers of height: strands deep in a hem get less light.
class Depths {
  public:
    Depths(const SheetScene& scene, const Coat& coat)
        : nx_(static_cast<int>(scene.size_mm.x / cell) + 120),
          ny_(static_cast<int>(scene.size_mm.y / cell) + 120),
          cover_(static_cast<size_t>(nx_) * static_cast<size_t>(ny_) * layers, 0.f) {
        for (const Strand& s : coat.strands)
            for (int i = s.first + 1; i < s.first + s.count; ++i) {
                const V3 a = coat.points[static_cast<size_t>(i - 1)], b = coat.points[static_cast<size_t>(i)];
                if (const long at = cell_of(0.5 * (a.x + b.x), 0.5 * (a.y + b.y)); at >= 0)
                    cover_[static_cast<size_t>(at) + layer(0.5 * (a.z + b.z))] +=
                        static_cast<float>(2 * s.radius * std::hypot(b.x - a.x, b.y - a.y) / (cell * cell));
            }
    }
    [[nodiscard]] float light_left(double x, double y, double z) const {
        const long at = cell_of(x, y);
        if (at < 0) return 1;
        const size_t own = layer(z);
        float above = 0.4f * cover_[static_cast<size_t>(at) + own];
        for (size_t k = own + 1; k < layers; ++k) above += cover_[static_cast<size_t>(at) + k];
        return 0.15f + 0.85f * std::exp(-above);
    }

  private:
    static constexpr double cell = 0.5;
    static constexpr size_t layers = 6;
    static size_t layer(double z) {
        size_t k = 0;
        for (const double top : {0.15, 0.35, 0.7, 1.4, 2.8}) k += z > top;
        return k;
    }
    [[nodiscard]] long cell_of(double x, double y) const {
        const long i = static_cast<long>(std::floor(x / cell)) + 60, j = static_cast<long>(std::floor(y / cell)) + 60;
        return i < 0 || j < 0 || i >= nx_ || j >= ny_ ? -1 : (j * nx_ + i) * static_cast<long>(layers);
    }
    int nx_, ny_;
    std::vector<float> cover_;
};

// ---- paper and print

struct Print {  // rectangles of ink in page mm: markers' cells, the check line, rows of words between the upper markers
    std::vector<cv::Rect2d> ink;
    std::vector<cv::Rect2d> around;  // boxes that hold all ink, to ask quickly
};

Print print_of(const SheetScene& scene) {
    using namespace kempt::card;
    Print print;
    const auto centres = sheet_marker_centres_mm(scene.paper);
    const double cell = sheet_marker_mm / 6;
    for (int id = 0; id < 4; ++id) {
        const auto cells = marker_cells(id + sheet_first_id(scene.ground));
        const cv::Point2d c = centres[static_cast<size_t>(id)];
        for (size_t j = 0; j < 6; ++j)
            for (size_t i = 0; i < 6; ++i)
                if (!cells[j][i])
                    print.ink.push_back({c.x - sheet_marker_mm / 2 + cell * static_cast<double>(i),
                                         c.y - sheet_marker_mm / 2 + cell * static_cast<double>(j), cell, cell});
        print.around.push_back({c.x - 10.5, c.y - 10.5, 21, 21});
    }
    // app/report/gauge_pdf.cpp: two lines of words from y = 5, a 50 mm check line at 15, three lines from 18, x
    // from 32.
    const double left = 32, right = scene.size_mm.x - 32;
    print.around.push_back({left - 1, 4, right - left + 2, 24});
    print.ink.push_back({left, 14.9, 50, 0.2});
    for (int i = 0; i <= 5; ++i)
        print.ink.push_back({left + 10 * i - 0.1, i % 5 ? 14.0 : 13.0, 0.2, i % 5 ? 1.0 : 4.0});
    Rng words(scene.paper_seed);
    for (const double y : {5.6, 9.0, 18.6, 22.0, 25.4})
        for (double x = left; x < right;) {
            const double stroke = words.uniform(0.2, 0.35), height = words.uniform(1.2, 2.0);
            print.ink.push_back({x, y + 2 - height, stroke, height});
            x += words.chance(0.15) ? 2.2 : words.uniform(0.7, 1.1);
        }
    return print;
}

// Share of a pixel's footprint (dx, dy: mm a pixel to the right and down) that is ink.
float ink_share(const Print& print, V2 p, V2 dx, V2 dy) {
    bool any = false;
    for (const auto& box : print.around) any = any || box.contains({p.x, p.y});
    if (!any) return 0;
    constexpr int n = 4;
    int hit = 0;
    const double reach = std::abs(dx.x) + std::abs(dx.y) + std::abs(dy.x) + std::abs(dy.y);
    for (const auto& r : print.ink) {
        if (p.x < r.x - reach || p.x > r.x + r.width + reach || p.y < r.y - reach || p.y > r.y + r.height + reach)
            continue;
        for (int j = 0; j < n; ++j)
            for (int i = 0; i < n; ++i) {
                const double u = (i + 0.5) / n - 0.5, v = (j + 0.5) / n - 0.5;
                const double x = p.x + u * dx.x + v * dy.x, y = p.y + u * dx.y + v * dy.y;
                hit += x >= r.x && x < r.x + r.width && y >= r.y && y < r.y + r.height;
            }
    }
    return static_cast<float>(hit) / (n * n);
}

// Grain and mottle on a tile of 50 mm that repeats (two sizes of grain, two of mottle).
cv::Mat1f paper_tile(const SheetScene& scene, int side) {
    cv::Mat1f fine(side, side), coarse(side / 16, side / 16);
    Rng rng(scene.paper_seed + 1);
    for (float& v : fine) v = static_cast<float>(rng.normal());
    for (float& v : coarse) v = static_cast<float>(rng.normal());
    auto wrapped = [](const cv::Mat1f& in, double sigma) {
        cv::Mat1f wide, out;
        const int pad = 16;
        cv::copyMakeBorder(in, wide, pad, pad, pad, pad, cv::BORDER_WRAP);
        cv::GaussianBlur(wide, wide, {}, sigma);
        wide({pad, pad, in.cols, in.rows}).copyTo(out);
        cv::Scalar mean, sd;
        cv::meanStdDev(out, mean, sd);
        return cv::Mat1f((out - mean[0]) / sd[0]);
    };
    cv::Mat1f slow;
    cv::Mat1f soft = wrapped(coarse, 1.5);
    cv::copyMakeBorder(soft, soft, 2, 2, 2, 2, cv::BORDER_WRAP);
    cv::resize(soft, slow, {}, 16, 16, cv::INTER_CUBIC);
    slow = slow({32, 32, side, side}).clone();
    cv::Mat1f grain = 0.7 * wrapped(fine, 1.2) + 0.7 * wrapped(fine, 3.0);
    return cv::Mat1f(1 + scene.grain * grain + scene.mottle * slow);
}

struct Fold {  // a crease: light and dark side by side along a line
    double nx, ny, at, depth;
};
std::vector<Fold> folds_of(const SheetScene& scene) {
    std::vector<Fold> folds;
    for (const auto& c : scene.creases) {
        const double nx = std::cos(c.angle) / c.width_mm, ny = std::sin(c.angle) / c.width_mm;
        folds.push_back({nx, ny, nx * c.through.x + ny * c.through.y, c.depth});
    }
    return folds;
}
float folded(const std::vector<Fold>& folds, V2 p) {
    double v = 1;
    for (const Fold& f : folds) {
        const double d = p.x * f.nx + p.y * f.ny - f.at;
        if (std::abs(d) < 4) v *= 1 + 1.65 * f.depth * d * std::exp(-0.5 * d * d);
    }
    return static_cast<float>(v);
}

float card_share(const CardPicture& card, double cos_t, double sin_t, double x, double y, double px_mm, float& face) {
    const double dx = x - card.origin_mm.x, dy = y - card.origin_mm.y, s = card.px_per_mm;
    const double u = dx * cos_t + dy * sin_t, v = -dx * sin_t + dy * cos_t, wide = card.width / s,
                 high = card.height / s;
    if (u < -px_mm || v < -px_mm || u > wide + px_mm || v > high + px_mm) return 0;
    constexpr int n = 4;
    float sum = 0;
    int inside = 0;
    for (int j = 0; j < n; ++j)
        for (int i = 0; i < n; ++i) {
            const double su = u + ((i + 0.5) / n - 0.5) * px_mm, sv = v + ((j + 0.5) / n - 0.5) * px_mm;
            if (su < 0 || sv < 0 || su >= wide || sv >= high) continue;
            const int iu = std::min(card.width - 1, static_cast<int>(su * s)),
                      iv = std::min(card.height - 1, static_cast<int>(sv * s));
            sum +=
                card.reflectance[static_cast<size_t>(iv) * static_cast<size_t>(card.width) + static_cast<size_t>(iu)];
            ++inside;
        }
    if (inside == 0) return 0;
    face = sum / static_cast<float>(inside);
    return static_cast<float>(inside) / (n * n);
}

void draw_ground(const SheetScene& scene, const PaperShadows& shadows, Rendered& out) {
    const Projector projector(scene.camera);
    const Print print = print_of(scene);
    const std::vector<Fold> folds = folds_of(scene);
    constexpr int side = 1024;
    constexpr double per_mm = 20;
    const cv::Rect2d& blue = scene.blue_mm;
    // Print is more uneven than paper: the same tile, its contrast raised.
    const float mottled = static_cast<float>(scene.blue_mottle / std::hypot(scene.grain, scene.mottle));
    const cv::Mat1f tile = paper_tile(scene, side);
    const double cos_t = std::cos(scene.card.turn_deg * pi / 180), sin_t = std::sin(scene.card.turn_deg * pi / 180),
                 px_mm = 1 / scene.camera.px_per_mm, card_x = scene.card.origin_mm.x + 42 * cos_t - 15 * sin_t,
                 card_y = scene.card.origin_mm.y + 42 * sin_t + 15 * cos_t, mx = scene.size_mm.x / 2,
                 my = scene.size_mm.y / 2;
    const int W = out.width, H = out.height;
    // Where the pixels lie on the page is a ratio of linear forms along a row: three points fix them.
    for (int y = 0; y < H; ++y) {
        const V2 a = projector.plane_from_px({0, static_cast<double>(y)}),
                 m = projector.plane_from_px({W / 2.0, static_cast<double>(y)}),
                 b = projector.plane_from_px({static_cast<double>(W), static_cast<double>(y)});
        // p(t) = (a + t (k b - a)) / (1 + t (k - 1)), t = x / W; p(1/2) = m gives k.
        const double ab = std::hypot(b.x - a.x, b.y - a.y), am = std::hypot(m.x - a.x, m.y - a.y), f = am / ab,
                     k = f / (1 - f);
        const V2 dy = [&] {
            const V2 below = projector.plane_from_px({W / 2.0, y + 1.0});
            return V2{below.x - m.x, below.y - m.y};
        }();
        float light_here = 1, light_step = 0;
        for (int x = 0; x < W; ++x) {
            const double t = static_cast<double>(x) / W, w = 1 / (1 + t * (k - 1));
            const V2 p{(a.x + t * (k * b.x - a.x)) * w, (a.y + t * (k * b.y - a.y)) * w};
            if (x % 16 == 0) {  // light changes slowly
                const double t2 = (x + 16.0) / W, w2 = 1 / (1 + t2 * (k - 1));
                light_here = static_cast<float>(light_at(scene.light, p.x - mx, p.y - my - 5));
                light_step = (static_cast<float>(light_at(scene.light, (a.x + t2 * (k * b.x - a.x)) * w2 - mx,
                                                          (a.y + t2 * (k * b.y - a.y)) * w2 - my - 5)) -
                              light_here) /
                             16;
            }
            const float even = light_here + light_step * static_cast<float>(x % 16);
            Rgb ground;
            const double over =
                std::min(std::min(p.x, scene.size_mm.x - p.x), std::min(p.y, scene.size_mm.y - p.y)) / px_mm;
            const float on_page = static_cast<float>(clamp(over + 0.5, 0, 1));
            if (on_page > 0) {
                const int u = static_cast<int>(p.x * per_mm + 4 * side) % side,
                          v = static_cast<int>(p.y * per_mm + 4 * side) % side;
                float face = 0, tone = tile(v, u);
                tone *= folded(folds, p);
                const float ink =
                    std::abs(p.y - my) > my - 30.5 ? ink_share(print, p, {(b.x - a.x) / W, (b.y - a.y) / W}, dy) : 0.f;
                ground = scene.white * ((1 - ink) * tone + ink * scene.ink);
                if (!blue.empty()) {
                    const double in = std::min(std::min(p.x - blue.x, blue.x + blue.width - p.x),
                                               std::min(p.y - blue.y, blue.y + blue.height - p.y)) /
                                      px_mm;
                    if (const float share = static_cast<float>(clamp(in + 0.5, 0, 1)); share > 0)
                        ground = ground * (1 - share) +
                                 scene.white * scene.blue * (share * std::max(0.f, 1 + mottled * (tone - 1)));
                }
                if (scene.card.present() && std::hypot(p.x - card_x, p.y - card_y) < 46) {
                    const float share = card_share(scene.card, cos_t, sin_t, p.x, p.y, px_mm, face);
                    if (share > 0) ground = ground * (1 - share) + Rgb{face, face, face} * share;
                }
                ground = ground * (even * shadows.light_left(p.x, p.y));
            }
            if (on_page < 1) {
                const float wood = 1 + 0.06f * value_noise(scene.paper_seed + 7, p.x / 9, p.y / 1.7);
                ground = ground * on_page + scene.table * ((1 - on_page) * even * wood);
            }
            out.light[static_cast<size_t>(y) * static_cast<size_t>(W) + static_cast<size_t>(x)] =
                ground * scene.light.colour;
        }
    }
}

// ---- strands

struct Piece {
    V2 a, b;     // pixels
    float half;  // width / 2, pixels
    float z;
    int strand;
    Rgb light;
};

void draw_strands(const SheetScene& scene, const Coat& coat, double taper, bool truth, Rendered& out) {
    const Projector projector(scene.camera);
    const Depths depths(scene, coat);
    Scene lit;  // for strand_light
    lit.hair = scene.hair;
    lit.light = scene.light;
    const double mx = scene.size_mm.x / 2, my = scene.size_mm.y / 2;
    // Mean over a round fibre's width of the shading across it (raster.cpp): the mean cap is pi / 4.
    const float wrap = static_cast<float>(0.55 + 0.45 * pi / 4 * scene.light.key.z),
                form = static_cast<float>(1 - scene.hair.body + scene.hair.body * wrap),
                gleam = static_cast<float>(0.4 + 0.6 * pi / 4);
    std::vector<Piece> pieces;
    pieces.reserve(coat.points.size());
    for (size_t n = 0; n < coat.strands.size(); ++n) {
        const Strand& s = coat.strands[n];
        V2 before{};
        V3 last_tangent{};
        double since = 1e9, along = 0;
        Rgb light;
        for (int i = 0; i < s.count; ++i) {
            const V3 w = coat.points[static_cast<size_t>(s.first + i)];
            const V2 p = projector.px_from(w);
            if (i > 0) {
                const V3 v = coat.points[static_cast<size_t>(s.first + i - 1)], step = w - v;
                const double length = std::sqrt(dot(step, step));
                along += length;
                since += length;
                const V3 t = length > 0 ? step * (1 / length) : last_tangent;
                if (since > 1.5 || dot(t, last_tangent) < 0.999) {
                    const StrandLight l = strand_light(lit, s, t, along);
                    const float left = depths.light_left(w.x, w.y, w.z),
                                even = static_cast<float>(light_at(scene.light, w.x - mx, w.y - my - 5));
                    light = ((l.key * form + l.highlight * gleam) * left + l.soft * (0.35f + 0.65f * left)) * even *
                            scene.light.colour;
                    last_tangent = t;
                    since = 0;
                }
                const double tip = std::min(1.0, taper + (1 - taper) * 5.0 * (s.count - 1 - i) / (s.count - 1));
                pieces.push_back({before, p, static_cast<float>(s.radius * scene.camera.px_per_mm * tip),
                                  static_cast<float>(0.5 * (v.z + w.z)), static_cast<int>(n), light});
            }
            before = p;
        }
    }
    // From the lowest to the highest in 256 steps; within a step in the order of the strands.
    float top = 1e-3f;
    for (const Piece& q : pieces) top = std::max(top, q.z);
    std::vector<std::vector<int>> levels(256);
    for (size_t i = 0; i < pieces.size(); ++i)
        levels[static_cast<size_t>(std::clamp(255 * pieces[i].z / top, 0.f, 255.f))].push_back(static_cast<int>(i));
    const int W = out.width, H = out.height;
    for (const auto& level : levels)
        for (const int index : level) {
            const Piece& q = pieces[static_cast<size_t>(index)];
            // Along the longer axis pixel by pixel; half-open, so that a strand's pieces never meet in a pixel twice.
            const bool steep = std::abs(q.b.y - q.a.y) > std::abs(q.b.x - q.a.x);
            double u0 = steep ? q.a.y : q.a.x, v0 = steep ? q.a.x : q.a.y, u1 = steep ? q.b.y : q.b.x,
                   v1 = steep ? q.b.x : q.b.y;
            if (u0 > u1) std::swap(u0, u1), std::swap(v0, v1);
            if (!(u1 - u0 > 1e-9)) continue;
            const double slope = (v1 - v0) / (u1 - u0), half = q.half * std::sqrt(1 + slope * slope);
            const int from = std::max(0, static_cast<int>(std::ceil(u0))),
                      to = std::min((steep ? H : W) - 1, static_cast<int>(std::ceil(u1)) - 1);
            for (int u = from; u <= to; ++u) {
                const double v = v0 + slope * (u - u0), low = v - half + 0.5, high = v + half + 0.5;  // pixel j: j..j+1
                const int j0 = std::max(0, static_cast<int>(std::floor(low))),
                          j1 = std::min((steep ? W : H) - 1, static_cast<int>(std::floor(high)));
                for (int j = j0; j <= j1; ++j) {
                    const float share =
                        static_cast<float>(std::min(high, j + 1.0) - std::max(low, static_cast<double>(j)));
                    if (share <= 0) continue;
                    const size_t at = steep ? static_cast<size_t>(u) * static_cast<size_t>(W) + static_cast<size_t>(j)
                                            : static_cast<size_t>(j) * static_cast<size_t>(W) + static_cast<size_t>(u);
                    out.light[at] = out.light[at] * (1 - share) + q.light * share;
                    if (truth) out.cover[at] += (1 - out.cover[at]) * share;
                }
            }
        }
}
}  // namespace

Rendered sheet_light(const SheetScene& scene, const Coat& coat, double taper) {
    Rendered out;
    out.width = scene.camera.width;
    out.height = scene.camera.height;
    const size_t n = static_cast<size_t>(out.width) * static_cast<size_t>(out.height);
    out.light.resize(n);
    out.cover.assign(n, 0.f);
    PaperShadows shadows(scene);
    shadows.throw_down(coat);
    shadows.throw_down(scene.lint);
    shadows.finish();
    draw_ground(scene, shadows, out);
    if (!scene.lint.strands.empty()) draw_strands(scene, scene.lint, 1, false, out);
    draw_strands(scene, coat, taper, true, out);
    return out;
}

}  // namespace render
