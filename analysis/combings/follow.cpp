#include "combings/follow.h"

#include <algorithm>
#include <cmath>

#include "combings/chain_map.h"

namespace kempt::combings {
namespace {

constexpr int most_steps = 90;     // of two pixels
constexpr double most_loss = 9;    // of log likelihood below its best before it gives up
constexpr double most_a_step = 3;  // one step never says more
constexpr double most_cost = 7;

// Where chains run, in cells of 2 px, around the ends that are followed: tiles of 8 x 8 cells are kept only there and
// where a chain passes.
class Occupied {
  public:
    explicit Occupied(cv::Size photo)
        : columns_(photo.width / 2 + 2),
          rows_(photo.height / 2 + 2),
          across_(columns_ / tile + 1),
          tile_of_(static_cast<size_t>(across_) * static_cast<size_t>(rows_ / tile + 1), far) {}
    // These chains in place of those before, as far as ways from `ends` reach.
    void set(const std::vector<Chain>& chains, const std::vector<cv::Point2f>& ends) {
        std::fill(tile_of_.begin(), tile_of_.end(), far);
        cells_.clear();
        for (const cv::Point2f& p : ends) {
            const int i0 = std::clamp(static_cast<int>(p.x - reach_px) / 2, 0, columns_ - 1) / tile,
                      i1 = std::clamp(static_cast<int>(p.x + reach_px) / 2, 0, columns_ - 1) / tile,
                      j0 = std::clamp(static_cast<int>(p.y - reach_px) / 2, 0, rows_ - 1) / tile,
                      j1 = std::clamp(static_cast<int>(p.y + reach_px) / 2, 0, rows_ - 1) / tile;
            for (int j = j0; j <= j1; ++j)
                std::fill_n(tile_of_.begin() + static_cast<std::ptrdiff_t>(j) * across_ + i0, i1 - i0 + 1, free);
        }
        for (size_t c = 0; c < chains.size(); ++c)
            for (const cv::Point2f& p : chains[c].at) {
                const int i = static_cast<int>(p.x) / 2, j = static_cast<int>(p.y) / 2;
                if (i < 0 || j < 0 || i >= columns_ || j >= rows_) continue;
                int& own = tile_of_[place(i, j)];
                if (own == far) continue;
                if (own == free) {
                    own = static_cast<int>(cells_.size());
                    cells_.resize(cells_.size() + static_cast<size_t>(tile) * tile, -1);
                }
                cells_[static_cast<size_t>(own + within(i, j))] = static_cast<int>(c);
            }
    }
    // Whether a chain runs within about 3 px; `but` counts only farther than its own end's surroundings.
    [[nodiscard]] bool near(cv::Point2f p, int but, bool own_too) const {
        const int i = static_cast<int>(p.x) / 2, j = static_cast<int>(p.y) / 2;
        for (int v = std::max(0, j - 1); v <= std::min(rows_ - 1, j + 1); ++v)
            for (int u = std::max(0, i - 1); u <= std::min(columns_ - 1, i + 1); ++u) {
                const int own = tile_of_[place(u, v)];
                if (own < 0) continue;
                if (const int c = cells_[static_cast<size_t>(own + within(u, v))]; c >= 0 && (own_too || c != but))
                    return true;
            }
        return false;
    }

  private:
    static constexpr int tile = 8, free = -1, far = -2;
    // A step of 2 px along and at most 0.75 aside, and the cells beside.
    static constexpr float reach_px = 2.2f * most_steps + 4;
    [[nodiscard]] size_t place(int i, int j) const {
        return static_cast<size_t>(j / tile) * static_cast<size_t>(across_) + static_cast<size_t>(i / tile);
    }
    [[nodiscard]] static int within(int i, int j) { return j % tile * tile + i % tile; }
    int columns_, rows_, across_;
    std::vector<int> tile_of_;  // first cell of each tile; free: no chain passes; far: not looked at
    std::vector<int> cells_;    // the last chain that runs there; -1 none
};

struct Track {
    FreeEnd from{-1, 0}, to{-1, 0};
    std::vector<cv::Point2f> at;  // after the end
    double cost = 1e9;            // of reaching `to`
    size_t own = 0;               // points up to where it was last seen by itself
};

float seen(const LineEnd& end, const Darkness& darkness, cv::Point2f p) {
    return end.sign * darkness.at(p.x, p.y);
}

Track track(const std::vector<Chain>& chains, const ChainMap& map, const Occupied& occupied, FreeEnd e, float paper_sd,
            const Darkness& darkness) {
    const LineEnd& end = chains[static_cast<size_t>(e.chain)].end[e.side];
    Track out;
    out.from = e;
    cv::Point2f p = end.at;
    double angle = std::atan2(end.ahead.y, end.ahead.x), bend = end.curvature;
    const double peak = end.peak, variance = std::max(1e-6, static_cast<double>(paper_sd) * paper_sd);
    double sum = 0, best = 0;
    size_t best_at = 0;
    for (int step = 0; step < most_steps; ++step) {
        angle += bend;
        cv::Point2f d(static_cast<float>(std::cos(angle)), static_cast<float>(std::sin(angle)));
        p += d * 2;
        angle += bend;
        const cv::Point2f n(-d.y, d.x);
        const bool crowded = occupied.near(p, e.chain, step > 8);
        auto mean_at = [&](float aside) {
            float v = 0;
            for (int k = -2; k <= 2; ++k) v += seen(end, darkness, p + n * aside + d * static_cast<float>(k)) / 5;
            return v;
        };
        if (!crowded) {  // lean to the darkest way
            float most = -1e9f, aside = 0;
            for (int k = -3; k <= 3; ++k) {
                const float a = 0.5f * static_cast<float>(k), v = mean_at(a) - 0.12f * end.peak * a * a;
                if (v > most) most = v, aside = a;
            }
            if (most > 0.3f * end.peak) {
                p += n * (0.5f * aside);
                angle += 0.06 * static_cast<double>(aside);
                bend += 0.004 * static_cast<double>(aside);
            }
        }
        const double value = std::min(static_cast<double>(mean_at(0)), peak);
        sum += std::clamp((peak * value - 0.5 * peak * peak) / variance, -most_a_step, most_a_step);
        out.at.push_back(p);
        if (sum > best) {
            best = sum;
            best_at = out.at.size();
            if (!crowded) out.own = best_at;
        }
        if (best - sum > most_loss) break;
        map.ends_near(p, [&](FreeEnd f) {
            if (f.chain == e.chain) return;
            const LineEnd& far = chains[static_cast<size_t>(f.chain)].end[f.side];
            const cv::Point2f w = far.at - p;
            const double ahead = w.dot(d), aside = w.dot(n);
            if (ahead < -1 || ahead > 3 || std::abs(aside) > 3.5) return;
            const double turn = std::acos(std::clamp(-static_cast<double>(d.dot(far.ahead)), -1.0, 1.0));
            const double cost = 0.5 * std::pow(turn / 0.2, 2) + 0.5 * std::pow(aside / 1.3, 2) + tone_cost(end, far) +
                                0.3 * (best - sum) + 0.02 * step;
            if (cost < out.cost) {
                out.cost = cost;
                out.to = f;
            }
        });
        if (out.cost < 1e8 && cv::norm(chains[static_cast<size_t>(out.to.chain)].end[out.to.side].at - p) > 8) break;
    }
    if (out.cost < most_cost) {
        const cv::Point2f goal = chains[static_cast<size_t>(out.to.chain)].end[out.to.side].at;
        size_t nearest = 0;
        for (size_t i = 1; i < out.at.size(); ++i)
            if (cv::norm(out.at[i] - goal) < cv::norm(out.at[nearest] - goal)) nearest = i;
        out.at.resize(nearest);
    }
    return out;
}

void turn_round(Chain& c) {
    std::reverse(c.at.begin(), c.at.end());
    std::reverse(c.strength.begin(), c.strength.end());
    std::swap(c.end[0], c.end[1]);
}

// Points a pixel apart from the last of a chain through `way`.
void go(Chain& c, const std::vector<cv::Point2f>& way, size_t n) {
    for (size_t i = 0; i < n; ++i) {
        const cv::Point2f a = c.at.back(), d = way[i] - a;
        const int parts = std::max(1, static_cast<int>(std::lround(cv::norm(d))));
        for (int k = 1; k <= parts; ++k)
            c.at.push_back(a + d * (static_cast<float>(k) / static_cast<float>(parts))), c.strength.push_back(-1);
    }
}

}  // namespace

std::vector<Chain> follow_ends(std::vector<Chain> chains, const Bends& usual, float paper_sd, const Darkness& darkness,
                               Work& work) {
    Occupied occupied(darkness.size());
    for (int pass = 0; pass < 4; ++pass) {
        const ChainMap map(chains, darkness.size());
        std::vector<Track> tracks;
        for (size_t c = 0; c < chains.size(); ++c)
            for (int s = 0; s < 2; ++s)
                if (chains[c].at.size() > 12 && chains[c].end[s].ahead_dark > 0.25f)
                    tracks.push_back({{static_cast<int>(c), s}, {-1, 0}, {}, 1e9, 0});
        std::vector<cv::Point2f> followed;
        for (const Track& t : tracks) followed.push_back(chains[static_cast<size_t>(t.from.chain)].end[t.from.side].at);
        occupied.set(chains, followed);
        cv::parallel_for_(cv::Range(0, static_cast<int>(tracks.size())), [&](const cv::Range& range) {
            for (int t = range.start; t < range.end && work.ok(); ++t, work.spend(90 * 50))
                tracks[static_cast<size_t>(t)] =
                    track(chains, map, occupied, tracks[static_cast<size_t>(t)].from, paper_sd, darkness);
        });
        if (!work.go()) return {};
        std::sort(tracks.begin(), tracks.end(), [](const Track& x, const Track& y) { return x.cost < y.cost; });
        std::vector<char> touched(chains.size(), 0);
        bool any = false;
        for (const Track& t : tracks) {
            if (t.cost >= most_cost) break;
            if (touched[static_cast<size_t>(t.from.chain)] || touched[static_cast<size_t>(t.to.chain)]) continue;
            touched[static_cast<size_t>(t.from.chain)] = touched[static_cast<size_t>(t.to.chain)] = 1;
            Chain &a = chains[static_cast<size_t>(t.from.chain)], &b = chains[static_cast<size_t>(t.to.chain)];
            if (t.from.side == 0) turn_round(a);
            if (t.to.side == 1) turn_round(b);
            go(a, t.at, t.at.size());
            go(a, {b.at.front()}, 1);
            a.at.insert(a.at.end(), b.at.begin() + 1, b.at.end());
            a.strength.insert(a.strength.end(), b.strength.begin() + 1, b.strength.end());
            a.end[1] = b.end[1];
            a.doubts += b.doubts + (t.cost > 3);
            if (t.cost > 3) a.doubtful_at.push_back(b.at.front());
            a.blank_px += b.blank_px, a.shared_px += b.shared_px;
            a.doubtful_at.insert(a.doubtful_at.end(), b.doubtful_at.begin(), b.doubtful_at.end());
            b = {};
            any = true;
        }
        if (!any || pass == 3) {
            // Nothing left to join: ends go on to where the strand was last seen by itself.
            for (const Track& t : tracks) {
                Chain& a = chains[static_cast<size_t>(t.from.chain)];
                if (touched[static_cast<size_t>(t.from.chain)] || a.at.empty() || t.own == 0) continue;
                const int side = t.from.side;
                if (side == 0) turn_round(a);
                go(a, t.at, t.own);
                std::vector<cv::Point2f> inward(a.at.rbegin(), a.at.rend());
                const LineEnd old = a.end[1];
                a.end[1] = end_of(inward, {}, usual, darkness);
                a.end[1].peak = old.peak, a.end[1].sign = old.sign;
                a.end[1].tone = old.tone, a.end[1].tone_sd = old.tone_sd;
                if (side == 0) turn_round(a);
            }
        }
        chains.erase(std::remove_if(chains.begin(), chains.end(), [](const Chain& c) { return c.at.empty(); }),
                     chains.end());
        if (!any) break;
    }
    return chains;
}

}  // namespace kempt::combings
