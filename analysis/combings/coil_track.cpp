#include "combings/coil_track.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "combings/near_points.h"

namespace kempt::combings {
namespace {

constexpr int half_window = 3;         // px along the way that a look across averages over
constexpr int looks = 21;              // across, half a pixel apart
constexpr int lost_px = 10;            // so far it looks for more where it sees paper ...
constexpr size_t longest_gap_px = 30;  // ... and so far where it sees but other turns
constexpr double paper = 0.35;         // below that share of the strand's strength
constexpr double seen_sd = 0.3;        // of a place across, px
constexpr double crowd_share = 0.2;    // so much more darkness beside a line, as a share of its peak, is another line's
// A way that lies along an earlier part of itself, this near and for so far, goes through that part again.
constexpr double ride_px = 1.2, ride_angle = 0.2, longest_ride_px = 26;
constexpr long just_now = 12;  // points back
constexpr int blind_px = 6;    // unseen for so far it may have changed over to another turn
constexpr double sharpest = 0.1, narrowest = 0.4, widest = 2.5;  // shares of the first radius: beyond, it is no coil

// How far radius and advance (shares of the radius) and the phase (radians) drift in a turn, SD. Rendered coils hardly
// drift, and 0.06 did a little better on them, 0.2 a little worse; hair that grew is less regular.
constexpr double radius_drift = 0.1, advance_drift = 0.1, phase_drift = 0.05;

using Vec = cv::Vec6d;  // x, y, phase, radius, advance x and y
using Mat = cv::Matx66d;

// Where the way ran so far, to notice when it runs along itself.
struct OwnWay {
    struct Point {
        double angle = 0;
        long index = 0;
    };
    NearPoints<Point> points{2};
    long count = 0;
    void add(cv::Point2d p, double angle) { points.put(p, {angle, count++}); }
    [[nodiscard]] bool along(cv::Point2d p, double angle) const {
        bool found = false;
        points.near(p, ride_px, [&](cv::Point2d, const Point& q) {
            found =
                found || (count - q.index > just_now && std::abs(std::remainder(q.angle - angle, CV_PI)) < ride_angle);
        });
        return found;
    }
};

using Across = std::array<double, looks>;  // darkness, half a pixel apart

// Averaged along the bend of the way.
Across across_at(const CoilState& state, double sign, const Darkness& darkness) {
    Across seen{};
    const cv::Point2d v = state.velocity();
    const double speed = std::max(1e-3, cv::norm(v));
    const cv::Point2d p = state.at, ahead = v * (1 / speed), across(-ahead.y, ahead.x);
    // Only the circle's part of the velocity turns.
    const cv::Point2d turning(-std::sin(state.phase), std::cos(state.phase));
    const double curvature = state.hand * state.radius_px * turning.dot(across) / (speed * speed);
    for (int k = -half_window; k <= half_window; ++k) {
        const cv::Point2d q = p + ahead * k + across * (0.5 * curvature * k * k);
        for (int i = 0; i < looks; ++i) {
            const cv::Point2d at = q + across * (0.5 * (i - looks / 2));
            seen[static_cast<size_t>(i)] += sign * static_cast<double>(darkness.at(at.x, at.y)) / (2 * half_window + 1);
        }
    }
    return seen;
}

// How a line looks by itself, as a share of its peak.
struct Usual {
    double peak = 0;
    std::array<double, looks / 2 + 1> share{};  // so far to its sides
};
Usual usual_at(const CoilState& start, double sign, const Darkness& darkness) {
    Across sum{};
    for (CoilState at : {start, start.back()})
        for (int k = 0; k < 7; ++k, step_on(at)) {
            const Across here = across_at(at, sign, darkness);
            for (size_t i = 0; i < looks; ++i) sum[i] += here[i] / 14;
        }
    Usual out;
    out.peak = sum[looks / 2];
    for (size_t i = 0; i <= looks / 2; ++i)
        out.share[i] = 0.5 * (sum[looks / 2 + i] + sum[looks / 2 - i]) / std::max(1e-6, out.peak);
    return out;
}

struct Look {
    double aside = 0, strength = 0;
    bool clear = false;
};
// Across the way: where it is darkest, near where it should be.
Look look(const CoilState& state, double unsure_px, double sign, const Usual& usual, const Darkness& darkness) {
    const Across seen = across_at(state, sign, darkness);
    const double reach = std::max(1.0, std::min(3.0, 2.5 * std::hypot(unsure_px, seen_sd))),
                 spread = 2 * (unsure_px * unsure_px + 0.25);
    size_t best = 0;
    double most = -1e9;
    for (size_t i = 1; i + 1 < looks; ++i) {
        const double off = 0.5 * (static_cast<double>(i) - looks / 2);
        if (std::abs(off) > reach || seen[i] < seen[i - 1] || seen[i] < seen[i + 1]) continue;
        const double score = seen[i] - 0.5 * usual.peak * off * off / spread;
        if (score > most) most = score, best = i;
    }
    Look out;
    out.strength = *std::max_element(seen.begin() + looks / 2 - 2, seen.begin() + looks / 2 + 3);
    if (best == 0) return out;
    const double bend = seen[best - 1] + seen[best + 1] - 2 * seen[best];
    out.aside =
        0.5 * (static_cast<double>(best) - looks / 2 + (bend < 0 ? 0.5 * (seen[best - 1] - seen[best + 1]) / bend : 0));
    out.strength = seen[best];
    // By itself: to both sides it falls off as it does where nothing else is near.
    out.clear = seen[best] > paper * usual.peak;
    for (const size_t away : {4U, 6U})
        for (const int side : {-1, 1}) {
            const int i = static_cast<int>(best) + side * static_cast<int>(away);
            if (i < 0 || i >= looks) continue;
            out.clear = out.clear && seen[static_cast<size_t>(i)] < (usual.share[away] + crowd_share) * seen[best];
        }
    return out;
}

struct Half {
    std::vector<cv::Point2f> at, blind;
    bool ended = false;
    double rode_px = 0;
};

// Covariance of the state, on the way.
class Belief {
  public:
    explicit Belief(double radius)
        : radius_(radius),
          sure_(Mat::diag(Vec(0.25, 0.25, 0.04, std::pow(0.1 * radius, 2), std::pow(0.1 * radius, 2),
                              std::pow(0.1 * radius, 2)))) {}
    void step(const CoilState& state, double turn) {
        Mat by = Mat::eye();
        const double c = std::cos(state.phase), s = std::sin(state.phase);
        by(0, 2) = -state.radius_px * s * turn, by(1, 2) = state.radius_px * c * turn;
        by(0, 3) = c * turn, by(1, 3) = s * turn;
        by(0, 4) = by(1, 5) = turn;
        sure_ = by * sure_ * by.t();
        const double part = turn / (2 * CV_PI);
        sure_(2, 2) += phase_drift * phase_drift * part;
        sure_(3, 3) += std::pow(radius_drift * radius_, 2) * part;
        for (const int k : {4, 5}) sure_(k, k) += std::pow(advance_drift * radius_, 2) * part;
    }
    [[nodiscard]] double across_sd(cv::Point2d across) const {
        const Vec h(across.x, across.y, 0, 0, 0, 0);
        return std::sqrt((h.t() * (sure_ * h))(0));
    }
    void see(CoilState& state, cv::Point2d across, double aside) {
        const Vec h(across.x, across.y, 0, 0, 0, 0), with = sure_ * h;
        const double variance = with.dot(h) + seen_sd * seen_sd;
        const Vec move = with * (aside / variance);
        sure_ = sure_ - Mat((with * with.t()) * (1 / variance));
        state.at += cv::Point2d(move[0], move[1]);
        state.phase += move[2];
        state.radius_px += move[3];
        state.advance_px += cv::Point2d(move[4], move[5]);
    }

  private:
    double radius_;
    Mat sure_;
};

Half half_way(CoilState state, double sign, double longest, const Darkness& darkness, const Usual& usual, OwnWay& way,
              Work& work) {
    Half out;
    Belief belief(state.radius_px);
    const double first_radius = state.radius_px;
    int paper_px = 0, clear_px = 0, ride = 0, blind = 0;
    constexpr size_t none = static_cast<size_t>(-1);
    size_t gap = none;  // where it began
    const auto lay_down = [&] {
        if (blind >= blind_px) out.blind.push_back(out.at[out.at.size() - static_cast<size_t>(blind) / 2 - 1]);
        blind = 0;
    };
    while (static_cast<double>(out.at.size()) < longest) {
        work.spend(2 * looks * (2 * half_window + 1));
        if (!work.ok()) return out;
        belief.step(state, step_on(state));
        const cv::Point2d v = state.velocity();
        const double speed = cv::norm(v);
        // Neither a point nor another hair's bend.
        if (!(speed > sharpest * first_radius) ||
            !(state.radius_px > narrowest * first_radius && state.radius_px < widest * first_radius))
            break;
        const cv::Point2d across(-v.y / speed, v.x / speed);
        const Look seen = look(state, belief.across_sd(across), sign, usual, darkness);
        if (seen.clear) {
            belief.see(state, across, seen.aside);
            lay_down();
        } else {
            ++blind;
        }
        const double angle = std::atan2(v.y, v.x);
        out.at.push_back(state.at);
        way.add(state.at, angle);
        paper_px = seen.strength < paper * usual.peak ? paper_px + 1 : 0;
        clear_px = seen.clear ? clear_px + 1 : 0;
        // What lies across a gap is another turn, until the line is seen by itself again.
        if (paper_px == 3 && gap == none) gap = out.at.size() - 3;
        if (clear_px == 3) gap = none;
        if (paper_px >= lost_px || (gap != none && out.at.size() > gap + longest_gap_px)) {
            out.ended = true;
            break;
        }
        ride = way.along(state.at, angle) ? ride + 1 : 0;
        out.rode_px += ride > 0;
        if (ride > longest_ride_px) {
            gap = std::min(gap, out.at.size() - static_cast<size_t>(ride));
            break;
        }
    }
    if (gap != none) out.at.resize(gap);
    return out;
}

}  // namespace

cv::Point2d CoilState::velocity() const {
    return cv::Point2d(std::cos(phase), std::sin(phase)) * radius_px + advance_px;
}

CoilState CoilState::back() const {
    // The circle's part turns round as well as the advance.
    return {at, -advance_px, phase + CV_PI, radius_px, -hand};
}

double step_on(CoilState& state) {
    const double turn = state.hand / std::max(1e-3, cv::norm(state.velocity()));
    state.phase += 0.5 * turn;
    state.at += state.velocity() * std::abs(turn);
    state.phase += 0.5 * turn;
    return std::abs(turn);
}

CoilTrack track_coil(const CoilState& start, double sign, double longest_px, const Darkness& darkness, Work& work) {
    OwnWay way;
    const Usual usual = usual_at(start, sign, darkness);
    const Half on = half_way(start, sign, longest_px, darkness, usual, way, work),
               back = half_way(start.back(), sign, longest_px, darkness, usual, way, work);
    CoilTrack out;
    out.at.assign(back.at.rbegin(), back.at.rend());
    out.at.emplace_back(start.at);
    out.at.insert(out.at.end(), on.at.begin(), on.at.end());
    out.blind.assign(back.blind.begin(), back.blind.end());
    out.blind.insert(out.blind.end(), on.blind.begin(), on.blind.end());
    out.ended[0] = back.ended, out.ended[1] = on.ended;
    out.rode_px = on.rode_px + back.rode_px;
    return out;
}

}  // namespace kempt::combings
