#include "combings/coils.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <opencv2/core/utility.hpp>
#include <optional>

#include "combings/coil_starts.h"
#include "combings/coil_track.h"
#include "combings/near_points.h"
#include "combings/smooth.h"

namespace kempt::combings {
namespace {

// Constants: bench_pattern's seeds 50000-50562 (docs/methods-lengths.md).
constexpr double widest_mm = 22;  // curve diameter: with wider curls more good lines were lost than bad ones mended
constexpr double touch_mm = 2.5;  // an end so near to another line belongs to it
constexpr double least_mm = 20;   // of a strand's lines
constexpr double own_px = 2.5;    // a line that near to the way lies on it
// Beside it, and along it, lies its shadow: so far at most, and nearer than the next turn does.
constexpr double shadow_mm = 0.8, shadow_share = 0.18;  // of the curve diameter
constexpr double along = 0.8;                           // cosine between the two
// Of the lines, what the new way must run over, shadows left out; from there on no other start is tried; and how long
// it may be, for one that goes through a turn twice is longer than all lines.
constexpr double least_covered = 0.95, enough_covered = 0.985, most_length = 1.08;
constexpr double most_ridden = 0.05;  // of it, along other parts of itself
constexpr double most_shadow = 0.5;   // of the lines' length
// Where strands lie on each other: of the way, what lies on whole lines, and on parts of lines that belong to others.
constexpr double least_whole = 0.9, most_cut = 0.05;
constexpr double crossed_share = 0.25;  // of a line that crosses it, no more lies on it
// A line of which that much lies on the way is a part of it; one of which less does than the second keeps its mark.
constexpr double gone_share = 0.8, unmarked_share = 0.97;
constexpr double least_rest = 0.05;  // of the longest line, beside it: the strand is mixed up
constexpr double most_blank_mm = 0.5;
constexpr int smooth_half = 8;  // where a way comes back into view it jumps by half a pixel or so

std::vector<std::vector<size_t>> groups_of(const std::vector<Chain>& chains, const ChainPoints& points,
                                           double touch_px) {
    std::vector<size_t> root(chains.size());
    std::iota(root.begin(), root.end(), size_t{0});
    const auto find = [&](size_t c) {
        while (root[c] != c) c = root[c] = root[root[c]];
        return c;
    };
    for (size_t c = 0; c < chains.size(); ++c)
        for (const LineEnd& end : chains[c].end)
            points.near(end.at, touch_px, [&](cv::Point2d, const OfChain& q) { root[find(q.chain)] = find(c); });
    std::vector<std::vector<size_t>> groups(chains.size());
    for (size_t c = 0; c < chains.size(); ++c) groups[find(c)].push_back(c);
    std::erase_if(groups, [](const auto& group) { return group.empty(); });
    return groups;
}

// A way, to be asked how much of a line lies on it.
class Way {
  public:
    Way(const std::vector<cv::Point2f>& at, double shadow_px)
        : at_(at), shadow_px_(shadow_px), near_(std::max(own_px, shadow_px)) {
        for (size_t i = 0; i < at.size(); ++i) near_.put(at[i], i);
    }
    struct Covered {
        double on = 0, beside = 0;  // shares of the line
    };
    [[nodiscard]] Covered covered(const std::vector<cv::Point2f>& line) const {
        Covered out;
        const double one = 1 / static_cast<double>(std::max<size_t>(1, line.size()));
        for (size_t i = 0; i < line.size(); ++i) {
            bool on = false, beside = false;
            const cv::Point2d here = line[i], course = course_at(line, i);
            near_.near(here, std::max(own_px, shadow_px_), [&](cv::Point2d p, size_t k) {
                const double away = cv::norm(p - here);
                on = on || away < own_px;
                beside = beside || (away < shadow_px_ && std::abs(course_at(at_, k).dot(course)) > along);
            });
            if (on)
                out.on += one;
            else if (beside)
                out.beside += one;
        }
        return out;
    }

  private:
    static cv::Point2d course_at(const std::vector<cv::Point2f>& path, size_t i) {
        const cv::Point2d d = path[std::min(i + 3, path.size() - 1)] - path[i >= 3 ? i - 3 : 0];
        return d * (1 / std::max(1e-3, cv::norm(d)));
    }
    const std::vector<cv::Point2f>& at_;
    double shadow_px_;
    NearPoints<size_t> near_;
};

double length_of(const Chain& chain) {
    return static_cast<double>(chain.at.size());
}

// group: the longest first.
bool mixed_up(const std::vector<Chain>& chains, const std::vector<size_t>& group, double shadow_px, double px_per_mm) {
    const Chain& main = chains[group.front()];
    double all = length_of(main), rest = 0;
    const Way way(main.at, shadow_px);
    for (size_t k = 1; k < group.size(); ++k) {
        const Chain& chain = chains[group[k]];
        const Way::Covered part = way.covered(chain.at);
        all += length_of(chain);
        rest += (1 - part.on - part.beside) * length_of(chain);
    }
    return all > least_mm * px_per_mm &&
           (main.doubts > 0 || main.shared_px > 0 || main.blank_px > most_blank_mm * px_per_mm ||
            rest > least_rest * length_of(main));
}

// The followed strand as a chain, with what the lines under it tell.
Chain chain_of(const CoilTrack& track, const Chain& from, const std::vector<Chain>& chains, const ChainPoints& points,
               const Bends& usual, const Darkness& darkness) {
    Chain out;
    for (const cv::Point2d& p : smoothed(track.at, smooth_half, 1)) out.at.emplace_back(p);
    out.strength.assign(out.at.size(), -1.f);
    for (size_t i = 0; i < out.at.size(); ++i)
        points.near(out.at[i], 2, [&](cv::Point2d, const OfChain& q) {
            out.strength[i] = std::max(out.strength[i], chains[q.chain].strength[q.index]);
        });
    std::vector<cv::Point2f> inward = out.at;
    std::vector<float> strength = out.strength;
    for (LineEnd& end : out.end) {
        end = end_of(inward, strength, usual, darkness);
        end.peak = from.end[0].peak, end.sign = from.end[0].sign;
        end.length = static_cast<float>(out.at.size());
        std::reverse(inward.begin(), inward.end());
        std::reverse(strength.begin(), strength.end());
    }
    out.doubts = std::max(1, static_cast<int>(track.blind.size()));
    out.doubtful_at = track.blind;
    return out;
}

struct Retraced {
    Chain way;
    std::vector<size_t> parts, shadows;  // chains that lie on it, and beside it
};

// What of a group lies on a followed way.
struct Over {
    double all = 0, on = 0, beside = 0;  // px: of the group's lines
    double whole = 0, cut = 0;           // of lines that lie on it all along, and in part only
    std::vector<size_t> parts, shadows;
};
Over over(const CoilTrack& track, const std::vector<Chain>& chains, const std::vector<size_t>& group,
          double shadow_px) {
    const Way way(track.at, shadow_px);
    Over out;
    for (const size_t c : group) {
        const double length = length_of(chains[c]);
        const Way::Covered part = way.covered(chains[c].at);
        out.all += length, out.on += part.on * length, out.beside += part.beside * length;
        if (part.on > gone_share) {
            out.parts.push_back(c);
            out.whole += length;
            if (part.on < unmarked_share) out.shadows.push_back(c);  // keeps its mark
        } else if (part.on + part.beside > gone_share) {
            out.shadows.push_back(c);
        } else if (part.on > crossed_share) {
            out.cut += part.on * length;
        }
    }
    return out;
}

bool ran_out(const CoilTrack& track) {
    return track.ended[0] && track.ended[1] && track.rode_px <= most_ridden * static_cast<double>(track.at.size());
}

double length_of(const std::vector<Chain>& chains, const std::vector<size_t>& group) {
    double out = 0;
    for (const size_t c : group) out += length_of(chains[c]);
    return out;
}

// One strand of all lines of the group.
std::optional<Retraced> retraced(const std::vector<Chain>& chains, const std::vector<size_t>& group,
                                 const ChainPoints& points, const Bends& usual, double shadow_px,
                                 const Darkness& darkness, Work& work) {
    const double longest = most_length * length_of(chains, group);
    double best = least_covered;
    std::optional<Retraced> out;
    for (const CoilStart& start : coil_starts(chains, group, points, usual.curvature)) {
        const Chain& from = chains[start.chain];
        const CoilTrack track = track_coil(start.state, from.end[0].sign, longest, darkness, work);
        if (!work.ok()) return std::nullopt;
        if (!ran_out(track) || static_cast<double>(track.at.size()) > longest) continue;
        const Over own = over(track, chains, group, shadow_px);
        if (own.beside > most_shadow * own.all || !(own.on > best * (own.all - own.beside))) continue;
        best = own.on / (own.all - own.beside);
        out = Retraced{chain_of(track, from, chains, points, usual, darkness), own.parts, own.shadows};
        if (best > enough_covered) break;
    }
    return out;
}

// Strands of some of the lines of the group, each of two lines or more from end to end.
std::vector<Retraced> rejoined(const std::vector<Chain>& chains, std::vector<size_t> group, const ChainPoints& points,
                               const Bends& usual, double shadow_px, const Darkness& darkness, Work& work) {
    std::vector<Retraced> out;
    const double longest = most_length * length_of(chains, group);
    for (const CoilStart& start : coil_turns(chains, group)) {
        if (std::find(group.begin(), group.end(), start.chain) == group.end()) continue;
        const Chain& from = chains[start.chain];
        const CoilTrack track = track_coil(start.state, from.end[0].sign, longest, darkness, work);
        if (!work.ok()) return {};
        const auto length = static_cast<double>(track.at.size());
        if (!ran_out(track)) continue;
        const Over own = over(track, chains, group, shadow_px);
        if (own.parts.size() < 2 || own.whole < least_whole * length || own.cut > most_cut * length) continue;
        for (const auto& gone : {own.parts, own.shadows})
            for (const size_t c : gone) std::erase(group, c);
        out.push_back({chain_of(track, from, chains, points, usual, darkness), own.parts, own.shadows});
    }
    return out;
}

}  // namespace

std::vector<Chain> retraced_coils(std::vector<Chain> chains, bool apart, const Bends& usual, double px_per_mm,
                                  const Darkness& darkness, std::vector<Chain>& shadows, Work& work) {
    const double usual_px = 2 / usual.curvature, shadow_px = std::min(shadow_mm * px_per_mm, shadow_share * usual_px);
    if (!(usual_px < widest_mm * px_per_mm)) return chains;
    ChainPoints points(8);
    for (size_t c = 0; c < chains.size(); ++c)
        for (size_t i = 0; i < chains[c].at.size(); ++i) points.put(chains[c].at[i], {c, i});
    std::vector<std::vector<size_t>> groups = groups_of(chains, points, touch_mm * px_per_mm);
    for (auto& group : groups)
        std::sort(group.begin(), group.end(),
                  [&](size_t a, size_t b) { return length_of(chains[a]) > length_of(chains[b]); });
    std::erase_if(groups, [&](const auto& group) { return !mixed_up(chains, group, shadow_px, px_per_mm); });
    std::vector<std::vector<Retraced>> found(groups.size());
    cv::parallel_for_(cv::Range(0, static_cast<int>(groups.size())), [&](const cv::Range& range) {
        for (auto g = static_cast<size_t>(range.start); g < static_cast<size_t>(range.end); ++g) {
            if (!apart)
                found[g] = rejoined(chains, groups[g], points, usual, shadow_px, darkness, work);
            else if (auto one = retraced(chains, groups[g], points, usual, shadow_px, darkness, work))
                found[g].push_back(std::move(*one));
        }
    });
    std::vector<Chain> out;
    if (!work.go()) return out;
    std::vector<char> gone(chains.size(), 0);
    for (auto& group : found)
        for (Retraced& one : group) {
            for (const size_t c : one.parts) gone[c] = 1;
            for (const size_t c : one.shadows) {
                gone[c] = 1;
                shadows.push_back(chains[c]);
            }
            out.push_back(std::move(one.way));
        }
    for (size_t c = 0; c < chains.size(); ++c)
        if (!gone[c]) out.push_back(std::move(chains[c]));
    return out;
}

}  // namespace kempt::combings
