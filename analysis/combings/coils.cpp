#include "combings/coils.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <numeric>
#include <opencv2/core/utility.hpp>
#include <optional>
#include <unordered_map>

#include "combings/coil_track.h"
#include "combings/smooth.h"
#include "core/rank.h"

namespace kempt::combings {
namespace {

constexpr double widest_mm = 9;     // of the curve diameter: turns of wider curls seldom lie in each other
constexpr double touch_mm = 2.5;    // an end so near to another line belongs to it
constexpr double own_px = 2.5;      // of the way: a line there is the way's own
constexpr double least_covered = 0.93;  // of the lines' length
constexpr double enough_covered = 0.985;  // no other start is tried then
constexpr double most_length = 1.08;    // times the lines' sum
constexpr double most_miss_px = 1.5;  // of a turn that is gone on from
constexpr size_t most_starts = 6, most_guesses = 4;
constexpr int clear_px = 8;
constexpr float crowd_px = 5;
constexpr double least_group_mm = 20;

struct Point {
    cv::Point2f at;
    int chain, index;
};
class Points {
  public:
    static constexpr int side = 8;
    explicit Points(const std::vector<Chain>& chains) {
        for (size_t c = 0; c < chains.size(); ++c)
            for (size_t i = 0; i < chains[c].at.size(); ++i)
                cells_[key(chains[c].at[i], 0, 0)].push_back({chains[c].at[i], static_cast<int>(c), static_cast<int>(i)});
    }
    template <class Act>
    void near(cv::Point2f p, float px, const Act& act) const {
        const int reach = static_cast<int>(std::ceil(px / side));
        for (int v = -reach; v <= reach; ++v)
            for (int u = -reach; u <= reach; ++u)
                if (const auto cell = cells_.find(key(p, u, v)); cell != cells_.end())
                    for (const Point& q : cell->second)
                        if (cv::norm(q.at - p) < px) act(q);
    }

  private:
    static int64_t key(cv::Point2f p, int u, int v) {
        return (static_cast<int64_t>(std::floor(p.x / side)) + u) * 1'000'000 + static_cast<int64_t>(std::floor(p.y / side)) + v;
    }
    std::unordered_map<int64_t, std::vector<Point>> cells_;
};

std::vector<std::vector<int>> groups_of(const std::vector<Chain>& chains, const Points& points, float touch_px) {
    std::vector<int> root(chains.size());
    std::iota(root.begin(), root.end(), 0);
    const auto find = [&](int c) {
        while (root[static_cast<size_t>(c)] != c) c = root[static_cast<size_t>(c)] = root[static_cast<size_t>(root[static_cast<size_t>(c)])];
        return c;
    };
    for (size_t c = 0; c < chains.size(); ++c)
        for (const LineEnd& end : chains[c].end)
            points.near(end.at, touch_px, [&](const Point& q) { root[static_cast<size_t>(find(q.chain))] = find(static_cast<int>(c)); });
    std::vector<std::vector<int>> groups(chains.size());
    for (size_t c = 0; c < chains.size(); ++c) groups[static_cast<size_t>(find(static_cast<int>(c)))].push_back(static_cast<int>(c));
    std::erase_if(groups, [](const auto& g) { return g.empty(); });
    return groups;
}

// A turn of a chain, from the point `first` until its direction has gone round once.
struct Turn {
    int chain;
    CoilState middle;
    double miss_px;  // RMS of its points from the course that its state foretells
};
std::optional<Turn> turn_at(const Chain& chain, int c, size_t first, const std::vector<double>& angle) {
    const auto& p = chain.at;
    size_t last = first;
    while (last < p.size() && std::abs(angle[last] - angle[first]) < 2 * CV_PI) ++last;
    if (last >= p.size()) return std::nullopt;
    const size_t middle = (first + last) / 2;
    CoilState state;
    state.hand = angle[last] > angle[first] ? 1 : -1;
    state.advance_px = (cv::Point2d(p[last]) - cv::Point2d(p[first])) * (1 / (2 * CV_PI));
    const double pace = cv::norm(state.advance_px);
    const cv::Point2d along = pace > 1e-6 ? state.advance_px * (1 / pace) : cv::Point2d(1, 0), side(-along.y, along.x);
    double low = 1e9, high = -1e9;
    for (size_t i = first; i <= last; ++i) {
        const double off = cv::Point2d(p[i]).dot(side);
        low = std::min(low, off), high = std::max(high, off);
    }
    state.radius_px = 0.5 * (high - low);
    state.at = p[middle];
    // The velocity lies along the line, so across it the circle's part and the advance's make nothing.
    const cv::Point2d across(-std::sin(angle[middle]), std::cos(angle[middle]));
    const double sine = state.advance_px.dot(across) / std::max(1e-3, state.radius_px);
    if (std::abs(sine) > 0.95) return std::nullopt;
    state.phase = angle[middle] - std::asin(sine);
    double squares = 0;
    size_t n = 0;
    for (const CoilState& start : {state, state.back()}) {
        CoilState at = start;
        for (size_t k = 0; k < (last - first) / 2; ++k, ++n) {
            double nearest = 1e9;
            for (size_t i = first; i <= last; ++i) nearest = std::min(nearest, cv::norm(cv::Point2d(p[i]) - at.at));
            squares += nearest * nearest;
            step_on(at);
        }
    }
    return Turn{c, state, std::sqrt(squares / static_cast<double>(std::max<size_t>(1, n)))};
}

// Direction at each point, over a few to both sides, without jumps.
std::vector<double> angles_of(const std::vector<cv::Point2f>& p) {
    std::vector<double> out(p.size(), 0);
    for (size_t i = 0; i < p.size(); ++i) {
        const cv::Point2f d = p[std::min(i + 3, p.size() - 1)] - p[i >= 3 ? i - 3 : 0];
        const double angle = std::atan2(d.y, d.x);
        out[i] = i ? out[i - 1] + std::remainder(angle - out[i - 1], 2 * CV_PI) : angle;
    }
    return out;
}

// Turns that bend as a coil does, the best first, apart from each other.
std::vector<Turn> turns_of(const std::vector<Chain>& chains, const std::vector<int>& group) {
    std::vector<Turn> all, out;
    for (const int c : group) {
        const Chain& chain = chains[static_cast<size_t>(c)];
        const auto angle = angles_of(chain.at);
        for (size_t i = 0; i < chain.at.size(); i += 12)
            if (const auto turn = turn_at(chain, c, i, angle); turn && turn->miss_px < most_miss_px) all.push_back(*turn);
    }
    std::sort(all.begin(), all.end(), [](const Turn& a, const Turn& b) { return a.miss_px < b.miss_px; });
    for (const Turn& turn : all) {
        if (std::all_of(out.begin(), out.end(), [&](const Turn& other) {
                return cv::norm(other.middle.at - turn.middle.at) > 4 * turn.middle.radius_px;
            }))
            out.push_back(turn);
        if (out.size() == most_starts) break;
    }
    return out;
}

std::vector<bool> covered_by(const std::vector<cv::Point2f>& way, const Chain& chain) {
    std::unordered_map<int64_t, std::vector<cv::Point2f>> cells;
    constexpr float side = 4;
    const auto key = [](cv::Point2f p, int u, int v) {
        return (static_cast<int64_t>(std::floor(p.x / side)) + u) * 1'000'000 + static_cast<int64_t>(std::floor(p.y / side)) + v;
    };
    for (const cv::Point2f& p : way) cells[key(p, 0, 0)].push_back(p);
    std::vector<bool> out(chain.at.size(), false);
    for (size_t i = 0; i < chain.at.size(); ++i)
        for (int v = -1; v <= 1; ++v)
            for (int u = -1; u <= 1; ++u)
                if (const auto cell = cells.find(key(chain.at[i], u, v)); cell != cells.end())
                    for (const cv::Point2f& q : cell->second) out[i] = out[i] || cv::norm(q - chain.at[i]) < own_px;
    return out;
}

// Where a chain is by itself over `clear_px` to both sides: the bend of the group there is known, how fast it advances
// along its own axis is not, so all usual paces are tried.
std::vector<Turn> guesses_of(const std::vector<Chain>& chains, const std::vector<int>& group, const Points& points,
                             const Bends& usual) {
    std::vector<Turn> out;
    struct Clear {
        int chain;
        size_t middle, length;
    };
    std::vector<Clear> clear;
    for (const int c : group) {
        const Chain& chain = chains[static_cast<size_t>(c)];
        size_t run = 0;
        for (size_t i = 0; i <= chain.at.size(); ++i) {
            bool alone = i < chain.at.size() && chain.strength[i] > 0;
            if (alone)
                points.near(chain.at[i], crowd_px, [&](const Point& q) {
                    alone = alone && q.chain == c && std::abs(q.index - static_cast<int>(i)) < 10;
                });
            if (alone) {
                ++run;
                continue;
            }
            if (run >= 2 * clear_px + 1) clear.push_back({c, i - 1 - run / 2, run});
            run = 0;
        }
    }
    std::sort(clear.begin(), clear.end(), [](const Clear& a, const Clear& b) { return a.length > b.length; });
    if (clear.size() > most_guesses) clear.resize(most_guesses);
    for (const Clear& one : clear) {
        const Chain& chain = chains[static_cast<size_t>(one.chain)];
        const cv::Point2d at = chain.at[one.middle], d = chain.at[one.middle + clear_px] - chain.at[one.middle - clear_px],
                          half = chain.at[one.middle] - chain.at[one.middle - clear_px];
        const double angle = std::atan2(d.y, d.x), hand = half.cross(d) > 0 ? 1 : -1;
        // The axis and the width of what lies around.
        const double reach = 3 / usual.curvature;
        std::vector<cv::Point2d> around;
        cv::Point2d mean;
        points.near(chain.at[one.middle], static_cast<float>(reach), [&](const Point& q) {
            if (std::find(group.begin(), group.end(), q.chain) != group.end()) around.emplace_back(q.at), mean += around.back();
        });
        mean *= 1.0 / static_cast<double>(around.size());
        double xx = 0, xy = 0, yy = 0;
        for (const cv::Point2d& q : around) {
            const cv::Point2d off = q - mean;
            xx += off.x * off.x, xy += off.x * off.y, yy += off.y * off.y;
        }
        const double axis = 0.5 * std::atan2(2 * xy, xx - yy);
        const cv::Point2d along(std::cos(axis), std::sin(axis)), side(-along.y, along.x);
        std::vector<double> off;
        for (const cv::Point2d& q : around) off.push_back(q.dot(side));
        const double radius = 0.5 * (at_rank(off, 0.98) - at_rank(off, 0.02));
        for (const double pace : {0.08, 0.13, 0.19, 0.27, 0.37, 0.5})
            for (const int way : {1, -1}) {
                CoilState state;
                state.at = at, state.hand = hand, state.radius_px = radius, state.advance_px = along * (way * pace * radius);
                const cv::Point2d across(-std::sin(angle), std::cos(angle));
                state.phase = angle - std::asin(state.advance_px.dot(across) / radius);
                out.push_back({one.chain, state, 0});
            }
    }
    return out;
}

struct Retraced {
    Chain way;
    std::vector<int> gone;  // chains whose place it takes
};

std::optional<Retraced> retraced(const std::vector<Chain>& chains, const std::vector<int>& group, const Points& points,
                                 const Bends& usual, const Darkness& darkness, Work& work) {
    double all = 0;
    for (const int c : group) all += static_cast<double>(chains[static_cast<size_t>(c)].at.size());
    const static bool debug = std::getenv("COILS") != nullptr;
    std::vector<Turn> turns = turns_of(chains, group);
    const auto guesses = guesses_of(chains, group, points, usual);
    turns.insert(turns.end(), guesses.begin(), guesses.end());
    std::optional<Retraced> best;
    double best_covered = least_covered;
    for (const Turn& turn : turns) {
        const Chain& from = chains[static_cast<size_t>(turn.chain)];
        const CoilTrack track = track_coil(turn.middle, from.end[0].sign, most_length * all + 60, darkness, work);
        if (!work.ok()) return std::nullopt;
        double covered = 0;
        Retraced out;
        for (const int c : group) {
            const auto own = covered_by(track.at, chains[static_cast<size_t>(c)]);
            const auto n = static_cast<double>(std::count(own.begin(), own.end(), true));
            covered += n;
            if (n > 0.8 * static_cast<double>(own.size())) out.gone.push_back(c);
        }
        if (debug)
            std::fprintf(stderr, "group of %zu, %.0f px from %.0f,%.0f (miss %.2f R %.1f a %.1f): way %zu px, covers %.2f, ended %d %d, blind %zu\n",
                         group.size(), all, turn.middle.at.x, turn.middle.at.y, turn.miss_px, turn.middle.radius_px, cv::norm(turn.middle.advance_px), track.at.size(), covered / all, track.ended[0],
                         track.ended[1], track.blind.size());
        if (debug)
            if (FILE* f = std::fopen("/tmp/tracks.txt", "a")) {
                for (auto& q : track.at) std::fprintf(f, "%.2f %.2f ", q.x, q.y);
                std::fprintf(f, "\n");
                std::fclose(f);
            }
        if (covered <= best_covered * all || !track.ended[0] || !track.ended[1] ||
            static_cast<double>(track.at.size()) > most_length * all)
            continue;
        Chain& way = out.way;
        way.at.clear();
        for (const cv::Point2d& p : smoothed(track.at, 8, 1)) way.at.emplace_back(p);
        way.strength.assign(way.at.size(), -1.f);
        for (size_t i = 0; i < way.at.size(); ++i)
            points.near(way.at[i], 2, [&](const Point& q) {
                way.strength[i] = std::max(way.strength[i], chains[static_cast<size_t>(q.chain)].strength[static_cast<size_t>(q.index)]);
            });
        for (int e = 0; e < 2; ++e) {
            std::vector<cv::Point2f> inward = way.at;
            std::vector<float> strength = way.strength;
            if (e) std::reverse(inward.begin(), inward.end()), std::reverse(strength.begin(), strength.end());
            way.end[e] = end_of(inward, strength, usual, darkness);
            way.end[e].peak = from.end[0].peak, way.end[e].sign = from.end[0].sign;
            way.end[e].length = static_cast<float>(way.at.size());
        }
        way.doubts = std::max(1, static_cast<int>(track.blind.size()));
        way.doubtful_at = track.blind;
        best_covered = covered / all;
        best = std::move(out);
        if (best_covered > enough_covered) break;
    }
    return best;
}

}  // namespace

std::vector<Chain> retraced_coils(std::vector<Chain> chains, const Bends& usual, double px_per_mm,
                                  const Darkness& darkness, Work& work) {
    if (!(usual.curvature > 2 / (widest_mm * px_per_mm))) return chains;
    const Points points(chains);
    std::vector<std::vector<int>> doubted;
    for (auto& group : groups_of(chains, points, static_cast<float>(touch_mm * px_per_mm))) {
        double length = 0;
        bool doubt = group.size() > 1;
        for (const int c : group) {
            const Chain& chain = chains[static_cast<size_t>(c)];
            length += static_cast<double>(chain.at.size());
            doubt = doubt || chain.doubts > 0 || chain.shared_px > 0 || chain.blank_px > 0.5 * px_per_mm;
        }
        if (doubt && length > least_group_mm * px_per_mm) doubted.push_back(std::move(group));
    }
    std::vector<std::optional<Retraced>> found(doubted.size());
    cv::parallel_for_(cv::Range(0, static_cast<int>(doubted.size())), [&](const cv::Range& range) {
        for (auto g = static_cast<size_t>(range.start); g < static_cast<size_t>(range.end); ++g)
            found[g] = retraced(chains, doubted[g], points, usual, darkness, work);
    });
    if (!work.go()) return chains;
    std::vector<char> gone(chains.size(), 0);
    std::vector<Chain> out;
    for (auto& one : found) {
        if (!one) continue;
        for (const int c : one->gone) gone[static_cast<size_t>(c)] = 1;
        out.push_back(std::move(one->way));
    }
    for (size_t c = 0; c < chains.size(); ++c)
        if (!gone[c]) out.push_back(std::move(chains[c]));
    return out;
}

}  // namespace kempt::combings
