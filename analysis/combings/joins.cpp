#include "combings/joins.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace kempt::combings {
namespace {

double free_cost_of(const LineEnd& end, const JoinOptions& o) {
    // A short piece between crossings may be left over: the ways of others pass there already.
    return (o.free_cost + (o.torn_cost - o.free_cost) * std::clamp((end.ahead_dark - 0.3) / 0.5, 0.0, 1.0)) *
           std::min(1.0, end.length / o.whole_px);
}

// One component of the graph of possible joins, solved exactly when small, by greedy choice and swaps otherwise.
class Component {
  public:
    Component(std::vector<int> ends, std::vector<Join> joins, const std::vector<double>& free, Work& work)
        : ends_(std::move(ends)), joins_(std::move(joins)), free_(free), work_(work) {
        std::sort(joins_.begin(), joins_.end(), [](const Join& x, const Join& y) { return x.cost < y.cost; });
        of_.resize(ends_.size());
        for (size_t j = 0; j < joins_.size(); ++j) {
            const Join& q = joins_[j];
            at_.emplace_back(index(q.a), index(q.b));
            of_[at_[j].first].push_back(static_cast<int>(j));
            of_[at_[j].second].push_back(static_cast<int>(j));
            gain_.push_back(free_[static_cast<size_t>(q.a)] + free_[static_cast<size_t>(q.b)] - q.cost);
        }
        order_.resize(joins_.size());
        std::iota(order_.begin(), order_.end(), 0);
        std::sort(order_.begin(), order_.end(), [&](int x, int y) { return gain(x) > gain(y); });
    }
    // Joins chosen, and for each whether another solution without it costs hardly more.
    std::vector<Join> solve(double doubt_cost) {
        double best = 0;
        std::vector<int> chosen = run(-1, best);
        std::vector<Join> out;
        for (const int j : chosen) {
            Join join = joins_[static_cast<size_t>(j)];
            double other = 0;
            (void)run(j, other);
            if (!work_.go()) break;
            join.doubtful = other - best < doubt_cost;
            out.push_back(join);
        }
        return out;
    }

  private:
    static constexpr size_t exact = 12;
    [[nodiscard]] double gain(int j) const { return gain_[static_cast<size_t>(j)]; }
    [[nodiscard]] size_t index(int end) const {
        return static_cast<size_t>(std::lower_bound(ends_.begin(), ends_.end(), end) - ends_.begin());
    }
    std::vector<int> run(int banned, double& cost) {
        banned_ = banned;
        taken_.assign(ends_.size(), 0);
        now_.clear();
        if (ends_.size() <= exact) {
            least_ = 1e300;
            search(0, 0);
            cost = least_;
            return best_;
        }
        return greedy(cost);
    }
    void search(size_t i, double so_far) {
        while (i < ends_.size() && taken_[i]) ++i;
        if (so_far >= least_ || !work_.go()) return;
        if (i == ends_.size()) {
            least_ = so_far;
            best_ = now_;
            return;
        }
        taken_[i] = 1;
        for (const int j : of_[i]) {
            if (j == banned_) continue;
            const Join& join = joins_[static_cast<size_t>(j)];
            const size_t other = index(join.a == ends_[i] ? join.b : join.a);
            if (taken_[other]) continue;
            taken_[other] = 1;
            now_.push_back(j);
            search(i + 1, so_far + join.cost);
            now_.pop_back();
            taken_[other] = 0;
        }
        search(i + 1, so_far + free_[static_cast<size_t>(ends_[i])]);
        taken_[i] = 0;
    }
    std::vector<int> greedy(double& cost) {
        // By gain over leaving both free; then any two joins swap partners while that helps.
        std::vector<int> of(ends_.size(), -1);
        for (const int j : order_) {
            if (j == banned_ || gain(j) <= 0) continue;
            const auto [a, b] = at_[static_cast<size_t>(j)];
            if (of[a] < 0 && of[b] < 0) of[a] = of[b] = j;
        }
        for (int pass = 0; pass < 6; ++pass) {
            if (!work_.go(4 * static_cast<int64_t>(order_.size()))) break;
            bool changed = false;
            for (const int j : order_) {
                // Put j in, take out what it replaces, join the two left over when they can be.
                if (j == banned_) continue;
                const Join& q = joins_[static_cast<size_t>(j)];
                const auto [a, b] = at_[static_cast<size_t>(j)];
                if (of[a] == j) continue;
                double change = -gain(j);
                int left[2] = {-1, -1};
                const int old[2] = {of[a], of[b]};
                for (int k = 0; k < 2; ++k)
                    if (old[k] >= 0 && (k == 0 || old[0] != old[1])) {
                        const Join& r = joins_[static_cast<size_t>(old[k])];
                        change += gain(old[k]);
                        const int own = k == 0 ? q.a : q.b;
                        left[k] = r.a == own ? r.b : r.a;
                    }
                int fresh = -1;
                if (left[0] >= 0 && left[1] >= 0)
                    for (const int f : of_[index(left[0])]) {
                        const Join& r = joins_[static_cast<size_t>(f)];
                        if (f != banned_ && (r.a == left[1] || r.b == left[1]) && gain(f) > 0) fresh = f;
                    }
                if (fresh >= 0) change -= gain(fresh);
                if (change > -1e-9) continue;
                for (const int k : left)
                    if (k >= 0) of[index(k)] = fresh;
                of[a] = of[b] = j;
                changed = true;
            }
            if (!changed) break;
        }
        cost = 0;
        std::vector<int> chosen;
        for (size_t i = 0; i < ends_.size(); ++i) {
            if (of[i] < 0)
                cost += free_[static_cast<size_t>(ends_[i])];
            else if (at_[static_cast<size_t>(of[i])].first == i) {
                chosen.push_back(of[i]);
                cost += joins_[static_cast<size_t>(of[i])].cost;
            }
        }
        return chosen;
    }
    std::vector<int> ends_;  // sorted
    std::vector<Join> joins_;
    const std::vector<double>& free_;
    Work& work_;
    std::vector<std::vector<int>> of_;
    // Of each join: the indices of its ends, and what it gains over leaving both free; then joins by that, largest
    // first. solve() asks again for each chosen join.
    std::vector<std::pair<size_t, size_t>> at_;
    std::vector<double> gain_;
    std::vector<int> order_;
    std::vector<char> taken_;
    std::vector<int> now_, best_;
    double least_ = 0;
    int banned_ = -1;
};

}  // namespace

double disagreement(const LineEnd& e, const LineEnd& f) {
    const cv::Point2d d = f.at - e.at;
    const double gap = cv::norm(d);
    // Angles between the way of e, the chord and the way on from f. On an arc the two are alike, and their sum is the
    // curvature times the length of the arc.
    auto between = [](cv::Point2d a, cv::Point2d b) { return std::atan2(a.cross(b), a.dot(b)); };
    const cv::Point2d out = e.ahead, in = -f.ahead;
    double turn, skew = 0;
    if (gap < 1.5) {
        turn = between(out, in);
    } else {
        const double first = between(out, d), second = between(d, in);
        turn = first + second, skew = first - second;
    }
    const double half = std::min(1.5, std::abs(turn) / 2), way = gap * (half > 1e-3 ? half / std::sin(half) : 1);
    // Both curvatures in the sense of travel from e to f; f looks back, so its sign turns.
    const double ke = e.curvature, kf = -f.curvature;
    const double direction = e.direction_sd * e.direction_sd + f.direction_sd * f.direction_sd + 0.02 * 0.02;
    // Curvature may change on the way, on curly hair more.
    const double drift = std::min(1.2 * e.usual, 0.7 * e.usual_change * way);
    const double bend_sd = 0.5 * std::hypot(e.curvature_sd, f.curvature_sd) + 0.0003 + 0.5 * drift;
    const double turn_miss = turn - 0.5 * (ke + kf) * way, skew_miss = skew - (ke - kf) * way / 6;
    const double place = 0.35 / std::max(gap, 1.5);
    double cost = 0.5 * turn_miss * turn_miss / (direction + bend_sd * bend_sd * way * way);
    cost += 0.5 * skew_miss * skew_miss / (direction + 4 * place * place + bend_sd * bend_sd * way * way / 9);
    const double bend_var =
        e.curvature_sd * e.curvature_sd + f.curvature_sd * f.curvature_sd + 0.001 * 0.001 + 4 * drift * drift;
    cost += 0.25 * std::min(9.0, (ke - kf) * (ke - kf) / bend_var);
    return cost + tone_cost(e, f);
}

Join weigh(const std::vector<LineEnd>& ends, int a, int b, const Darkness& darkness, const JoinOptions& o,
           double limit) {
    const LineEnd &e = ends[static_cast<size_t>(a)], &f = ends[static_cast<size_t>(b)];
    Join join{a, b, 1e9, 0, 0, false};
    const cv::Point2f d = f.at - e.at;
    const double gap = cv::norm(d);
    join.gap_px = gap;
    if (gap > o.long_reach_px || d.dot(e.ahead) < -4 || -d.dot(f.ahead) < -4) return join;
    join.cost = disagreement(e, f) + (gap > o.reach_px ? 0.1 * (gap - o.reach_px) : 0);
    if (join.cost > limit) return join;
    const double peak = std::min(e.peak, f.peak);
    for (const cv::Point2f& p : bridge(e, f)) {
        // From dark to bright a strand passes through the tone of the paper.
        const double dark = darkness.at(p.x, p.y), seen = e.sign == f.sign ? e.sign * dark : std::abs(dark);
        join.blank_px += 1 - std::clamp(seen / (0.6 * peak), 0.0, 1.0);
    }
    join.cost += o.blank_cost * join.blank_px;
    return join;
}

std::vector<LineEnd> seen_with_joins(const std::vector<Line>& lines, const std::vector<LineEnd>& ends,
                                     const std::vector<Join>& joins, const Bends& usual, const Darkness& darkness) {
    std::vector<int> partner(ends.size(), -1);
    for (const Join& q : joins) partner[static_cast<size_t>(q.a)] = q.b, partner[static_cast<size_t>(q.b)] = q.a;
    std::vector<LineEnd> out = ends;
    constexpr size_t enough = 64;  // px
    const auto seen_on = [&](size_t e) {
        std::vector<cv::Point2f> path;
        std::vector<float> strength;
        size_t at = e;
        for (;;) {
            const std::vector<cv::Point2f>& p = lines[at / 2].at;
            const std::vector<float>& s = lines[at / 2].strength;
            if (at % 2) {
                path.insert(path.end(), p.rbegin(), p.rend());
                strength.insert(strength.end(), s.rbegin(), s.rend());
            } else {
                path.insert(path.end(), p.begin(), p.end());
                strength.insert(strength.end(), s.begin(), s.end());
            }
            const int next = partner[at ^ 1];
            if (path.size() >= enough || next < 0 || static_cast<size_t>(next) / 2 == e / 2) break;
            const auto way = bridge(ends[at ^ 1], ends[static_cast<size_t>(next)]);
            path.insert(path.end(), way.begin(), way.end());
            strength.resize(path.size(), -1.f);
            at = static_cast<size_t>(next);
        }
        LineEnd end = end_of(path, strength, usual, darkness);
        end.line = ends[e].line, end.last = ends[e].last;
        end.peak = ends[e].peak, end.sign = ends[e].sign;
        end.length = static_cast<float>(path.size());
        return end;
    };
    cv::parallel_for_(cv::Range(0, static_cast<int>(ends.size())), [&](const cv::Range& range) {
        for (size_t e = static_cast<size_t>(range.start); e < static_cast<size_t>(range.end); ++e)
            if (lines[e / 2].at.size() < enough) out[e] = seen_on(e);
    });
    return out;
}

std::vector<Join> join_ends(const std::vector<LineEnd>& ends, const Darkness& darkness, const JoinOptions& options,
                            Work& work) {
    const int n = static_cast<int>(ends.size());
    std::vector<double> free(ends.size());
    for (size_t e = 0; e < ends.size(); ++e) free[e] = free_cost_of(ends[e], options);
    // Candidates by a grid.
    const double side = options.long_reach_px;
    const int nx = static_cast<int>(darkness.size().width / side) + 2,
              ny = static_cast<int>(darkness.size().height / side) + 2;
    std::vector<std::vector<int>> grid(static_cast<size_t>(nx) * static_cast<size_t>(ny));
    auto cell = [&](const cv::Point2f& p) {
        return cv::Point(std::clamp(static_cast<int>(p.x / side), 0, nx - 1),
                         std::clamp(static_cast<int>(p.y / side), 0, ny - 1));
    };
    for (int e = 0; e < n; ++e) {
        const cv::Point c = cell(ends[static_cast<size_t>(e)].at);
        grid[static_cast<size_t>(c.y * nx + c.x)].push_back(e);
    }
    std::vector<std::vector<Join>> of_end(ends.size());
    const auto beyond_reach = static_cast<float>((options.long_reach_px + 1) * (options.long_reach_px + 1));
    cv::parallel_for_(cv::Range(0, n), [&](const cv::Range& range) {
        for (int e = range.start; e < range.end && work.ok(); ++e) {
            const cv::Point c = cell(ends[static_cast<size_t>(e)].at);
            int64_t steps = 0;
            for (int j = std::max(0, c.y - 1); j <= std::min(ny - 1, c.y + 1); ++j)
                for (int i = std::max(0, c.x - 1); i <= std::min(nx - 1, c.x + 1); ++i)
                    for (const int f : grid[static_cast<size_t>(j * nx + i)]) {
                        steps += 2;
                        if (f <= e || f / 2 == e / 2) continue;
                        // weigh() refuses what is farther apart; most pairs are by far.
                        const cv::Point2f d = ends[static_cast<size_t>(f)].at - ends[static_cast<size_t>(e)].at;
                        if (d.dot(d) > beyond_reach) continue;
                        const double limit = free[static_cast<size_t>(e)] + free[static_cast<size_t>(f)];
                        const Join join = weigh(ends, e, f, darkness, options, limit);
                        if (join.cost < limit) of_end[static_cast<size_t>(e)].push_back(join);
                    }
            work.spend(steps);
        }
    });
    if (!work.go()) return {};
    std::vector<Join> joins;
    for (const auto& some : of_end) joins.insert(joins.end(), some.begin(), some.end());
    // Components.
    std::vector<int> parent(ends.size());
    std::iota(parent.begin(), parent.end(), 0);
    auto root = [&](int v) {
        while (parent[static_cast<size_t>(v)] != v)
            v = parent[static_cast<size_t>(v)] = parent[static_cast<size_t>(parent[static_cast<size_t>(v)])];
        return v;
    };
    for (const Join& q : joins) parent[static_cast<size_t>(root(q.a))] = root(q.b);
    std::vector<std::vector<Join>> of(ends.size());
    for (const Join& q : joins) of[static_cast<size_t>(root(q.a))].push_back(q);
    std::vector<Join> chosen;
    for (auto& group : of) {
        if (group.empty()) continue;
        std::vector<int> members;
        for (const Join& q : group) members.push_back(q.a), members.push_back(q.b);
        std::sort(members.begin(), members.end());
        members.erase(std::unique(members.begin(), members.end()), members.end());
        const auto part = Component(members, group, free, work).solve(options.doubt_cost);
        chosen.insert(chosen.end(), part.begin(), part.end());
    }
    // No rings: a strand has two ends. The dearest join of a ring is left out.
    std::sort(chosen.begin(), chosen.end(), [](const Join& x, const Join& y) { return x.cost < y.cost; });
    std::vector<int> chain(ends.size() / 2);
    std::iota(chain.begin(), chain.end(), 0);
    auto chain_of = [&](int v) {
        while (chain[static_cast<size_t>(v)] != v) v = chain[static_cast<size_t>(v)];
        return v;
    };
    std::vector<Join> out;
    for (const Join& q : chosen) {
        const int x = chain_of(q.a / 2), y = chain_of(q.b / 2);
        if (x == y) continue;
        chain[static_cast<size_t>(x)] = y;
        out.push_back(q);
    }
    return out;
}

}  // namespace kempt::combings
