#include "combings/coil_starts.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/rank.h"

namespace kempt::combings {
namespace {

constexpr size_t most_turns = 6, most_stretches = 3;
constexpr size_t turn_step = 12;      // points between the turns that are looked at
constexpr double most_miss_px = 1.5;  // RMS, of a turn from the course that its own circle and advance foretell
constexpr size_t clear_px = 8;        // to both sides of a stretch's middle
constexpr double crowd_px = 5;        // nearer lines are in the way
constexpr double strays = 0.02;       // of what lies around, on both sides of the coil
constexpr size_t own_points = 10;     // of the same line, which are not
// Advance for each radian as shares of the radius: wave ratios from 2 to 12 (ratio about radius / advance).
constexpr double paces[] = {0.08, 0.13, 0.19, 0.27, 0.37, 0.5};

// Direction at each point, over three to both sides, without jumps.
std::vector<double> angles_of(const std::vector<cv::Point2f>& p) {
    std::vector<double> out(p.size(), 0);
    for (size_t i = 0; i < p.size(); ++i) {
        const cv::Point2f d = p[std::min(i + 3, p.size() - 1)] - p[i >= 3 ? i - 3 : 0];
        const double angle = std::atan2(d.y, d.x);
        out[i] = i ? out[i - 1] + std::remainder(angle - out[i - 1], 2 * CV_PI) : angle;
    }
    return out;
}

// The phase of a strand that runs at `angle`: across it the circle's part of the velocity and the advance make nothing.
std::optional<double> phase_at(double angle, cv::Point2d advance, double radius) {
    const double sine = advance.dot({-std::sin(angle), std::cos(angle)}) / std::max(1e-3, radius);
    if (std::abs(sine) > 0.95) return std::nullopt;
    return angle - std::asin(sine);
}

// How far the places lie across a direction.
std::vector<double> across(const std::vector<cv::Point2d>& places, cv::Point2d side) {
    std::vector<double> off;
    for (const cv::Point2d& p : places) off.push_back(p.dot(side));
    return off;
}

struct Turn {
    CoilStart start;
    double miss_px = 0;
};

// RMS distance of the course that the state foretells, half a turn both ways, from the points it came from.
double miss_of(const CoilState& state, const std::vector<cv::Point2d>& turn) {
    double squares = 0;
    size_t n = 0;
    for (CoilState at : {state, state.back()})
        for (size_t k = 0; k < turn.size() / 2; ++k, ++n) {
            double nearest = 1e9;
            for (const cv::Point2d& p : turn) nearest = std::min(nearest, cv::norm(p - at.at));
            squares += nearest * nearest;
            step_on(at);
        }
    return std::sqrt(squares / static_cast<double>(std::max<size_t>(1, n)));
}

// From the point `first` of a chain until its direction has gone round once: the advance is what it moved on by, the
// radius half of its width across that.
std::optional<Turn> turn_at(const Chain& chain, size_t c, size_t first, const std::vector<double>& angle) {
    size_t last = first;
    while (last < chain.at.size() && std::abs(angle[last] - angle[first]) < 2 * CV_PI) ++last;
    if (last >= chain.at.size()) return std::nullopt;
    const std::vector<cv::Point2d> points(chain.at.begin() + static_cast<std::ptrdiff_t>(first),
                                          chain.at.begin() + static_cast<std::ptrdiff_t>(last) + 1);
    const size_t middle = (first + last) / 2;
    CoilState state;
    state.at = chain.at[middle];
    state.hand = angle[last] > angle[first] ? 1 : -1;
    state.advance_px = (points.back() - points.front()) * (1 / (2 * CV_PI));
    const double pace = cv::norm(state.advance_px);
    const cv::Point2d side =
        pace > 1e-6 ? cv::Point2d(-state.advance_px.y, state.advance_px.x) * (1 / pace) : cv::Point2d(0, 1);
    const auto off = across(points, side);
    const auto [least, most] = std::minmax_element(off.begin(), off.end());
    state.radius_px = 0.5 * (*most - *least);
    const auto phase = phase_at(angle[middle], state.advance_px, state.radius_px);
    if (!phase) return std::nullopt;
    state.phase = *phase;
    return Turn{{c, state}, miss_of(state, points)};
}

void add_turns(const std::vector<Chain>& chains, const std::vector<size_t>& group, size_t most,
               std::vector<CoilStart>& out) {
    std::vector<Turn> turns;
    for (const size_t c : group) {
        const auto angle = angles_of(chains[c].at);
        for (size_t i = 0; i < chains[c].at.size(); i += turn_step)
            if (const auto turn = turn_at(chains[c], c, i, angle); turn && turn->miss_px < most_miss_px)
                turns.push_back(*turn);
    }
    std::sort(turns.begin(), turns.end(), [](const Turn& a, const Turn& b) { return a.miss_px < b.miss_px; });
    for (const Turn& turn : turns) {
        const bool apart = std::all_of(out.begin(), out.end(), [&](const CoilStart& other) {
            return cv::norm(other.state.at - turn.start.state.at) > 4 * turn.start.state.radius_px;
        });
        if (apart) out.push_back(turn.start);
        if (out.size() == most) break;
    }
}

struct Stretch {
    size_t chain, middle, length;
};
std::vector<Stretch> clear_stretches(const std::vector<Chain>& chains, const std::vector<size_t>& group,
                                     const ChainPoints& points) {
    std::vector<Stretch> out;
    for (const size_t c : group) {
        const Chain& chain = chains[c];
        size_t run = 0;
        for (size_t i = 0; i <= chain.at.size(); ++i) {
            bool alone = i < chain.at.size() && chain.strength[i] > 0;
            if (alone)
                points.near(chain.at[i], crowd_px, [&](cv::Point2d, const OfChain& q) {
                    alone = alone && q.chain == c && std::max(q.index, i) - std::min(q.index, i) < own_points;
                });
            if (alone) {
                ++run;
                continue;
            }
            if (run > 2 * clear_px) out.push_back({c, i - 1 - run / 2, run});
            run = 0;
        }
    }
    std::sort(out.begin(), out.end(), [](const Stretch& a, const Stretch& b) { return a.length > b.length; });
    if (out.size() > most_stretches) out.resize(most_stretches);
    return out;
}

void add_guesses(const std::vector<Chain>& chains, const std::vector<size_t>& group, const ChainPoints& points,
                 double usual_curvature, std::vector<CoilStart>& out) {
    for (const Stretch& stretch : clear_stretches(chains, group, points)) {
        const auto& path = chains[stretch.chain].at;
        const cv::Point2d at = path[stretch.middle], before = path[stretch.middle - clear_px],
                          after = path[stretch.middle + clear_px], course = after - before;
        // The coil's axis and radius there: what of the strand lies around is as wide as the coil.
        std::vector<cv::Point2d> around;
        cv::Point2d mean;
        points.near(path[stretch.middle], 3 / usual_curvature, [&](cv::Point2d p, const OfChain& q) {
            if (std::find(group.begin(), group.end(), q.chain) == group.end()) return;
            around.push_back(p);
            mean += p;
        });
        mean *= 1.0 / static_cast<double>(around.size());
        double xx = 0, xy = 0, yy = 0;
        for (const cv::Point2d& q : around) {
            const cv::Point2d off = q - mean;
            xx += off.x * off.x, xy += off.x * off.y, yy += off.y * off.y;
        }
        const double axis = 0.5 * std::atan2(2 * xy, xx - yy);
        const cv::Point2d along(std::cos(axis), std::sin(axis));
        CoilState state;
        state.at = at;
        state.hand = (at - before).cross(course) > 0 ? 1 : -1;
        auto off = across(around, {-along.y, along.x});
        state.radius_px = 0.5 * (at_rank(off, 1 - strays) - at_rank(off, strays));
        for (const double pace : paces)
            for (const int way : {1, -1}) {
                state.advance_px = along * (way * pace * state.radius_px);
                const auto phase = phase_at(std::atan2(course.y, course.x), state.advance_px, state.radius_px);
                if (!phase) continue;
                state.phase = *phase;
                out.push_back({stretch.chain, state});
            }
    }
}

}  // namespace

std::vector<CoilStart> coil_turns(const std::vector<Chain>& chains, const std::vector<size_t>& group) {
    std::vector<CoilStart> out;
    add_turns(chains, group, 4 * most_turns, out);
    return out;
}

std::vector<CoilStart> coil_starts(const std::vector<Chain>& chains, const std::vector<size_t>& group,
                                   const ChainPoints& points, double usual_curvature) {
    std::vector<CoilStart> out;
    add_turns(chains, group, most_turns, out);
    add_guesses(chains, group, points, usual_curvature, out);
    return out;
}

}  // namespace kempt::combings
