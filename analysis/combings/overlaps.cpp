#include "combings/overlaps.h"

#include <algorithm>
#include <cmath>

#include "combings/chain_map.h"

namespace kempt::combings {
namespace {

constexpr int reach = 4;       // points to both sides that tell a direction
constexpr float along = 0.9f;  // cosine: the two run the same way

cv::Point2f direction_at(const Chain& c, int i) {
    const int n = static_cast<int>(c.at.size());
    const cv::Point2f d =
        c.at[static_cast<size_t>(std::min(n - 1, i + reach))] - c.at[static_cast<size_t>(std::max(0, i - reach))];
    return d * static_cast<float>(1 / std::max(1e-6, cv::norm(d)));
}

// Where chain a lies on chain b, walked inward from its end `side`.
struct Stretch {
    FreeEnd e{-1, 0};
    int other = -1, sense = 0;      // sense: of b's points, outward from a
    int own = 0, from = 0, to = 0;  // points of a walked; of b, beside a's end and beside the last of them
    double apart = 0;               // mean
    bool ends = false;              // b ends there
};

Stretch walk(const std::vector<Chain>& chains, FreeEnd e, int other, int point, double most_px) {
    const Chain &a = chains[static_cast<size_t>(e.chain)], &b = chains[static_cast<size_t>(other)];
    const int n = static_cast<int>(a.at.size()), m = static_cast<int>(b.at.size());
    const auto own = [&](int k) { return static_cast<size_t>(e.side ? n - 1 - k : k); };
    Stretch s{e, other};
    cv::Point2f out = direction_at(a, static_cast<int>(own(reach)));
    if (!e.side) out = -out;
    const float turn = direction_at(b, point).dot(out);
    s.sense = turn > 0 ? 1 : -1;
    s.from = s.to = point;
    if (std::abs(turn) < along) return s;
    int j = point;
    double sum = 0;
    for (int k = 0; k < n; ++k) {
        // The nearest point of b, from the last one on.
        const cv::Point2f p = a.at[own(k)];
        const auto away = [&](int i) { return cv::norm(b.at[static_cast<size_t>(i)] - p); };
        for (int next = j - s.sense, tried = 0; next >= 0 && next < m && tried < 3; next -= s.sense, ++tried)
            if (away(next) < away(j)) j = next, tried = -1;
        if (away(j) > most_px) break;
        sum += away(j);
        s.own = k + 1;
        s.to = j;
        if (j == (s.sense > 0 ? 0 : m - 1)) {
            s.ends = true;
            break;
        }
    }
    s.apart = s.own > 0 ? sum / s.own : 0;
    return s;
}

Chain without_tail(const Chain& c, int side, int points) {
    Chain out = c;
    const auto n = static_cast<std::ptrdiff_t>(points);
    if (side) {
        out.at.erase(out.at.end() - n, out.at.end()), out.strength.erase(out.strength.end() - n, out.strength.end());
    } else {
        out.at.erase(out.at.begin(), out.at.begin() + n);
        out.strength.erase(out.strength.begin(), out.strength.begin() + n);
    }
    return out;
}

}  // namespace

std::vector<Chain> join_overlaps(std::vector<Chain> chains, cv::Size photo, const OverlapOptions& options,
                                 std::vector<Chain>& covered, Work& work) {
    for (int pass = 0; pass < 6; ++pass) {
        const ChainMap map(chains, photo);
        std::vector<Stretch> joins, lies;
        for (size_t c = 0; c < chains.size(); ++c)
            for (int side = 0; side < 2; ++side) {
                if (!work.go(200)) return {};
                const Chain& a = chains[c];
                if (a.at.size() < 12) continue;
                const cv::Point2f end = side ? a.at.back() : a.at.front();
                // The nearest point of each chain beside the end.
                std::vector<std::pair<int, std::pair<int, double>>> hosts;
                map.points_near(end, [&](int other, int i) {
                    if (other == static_cast<int>(c)) return;
                    const double away = cv::norm(chains[static_cast<size_t>(other)].at[static_cast<size_t>(i)] - end);
                    if (away > options.beside_px) return;
                    for (auto& h : hosts)
                        if (h.first == other) {
                            if (away < h.second.second) h.second = {i, away};
                            return;
                        }
                    hosts.push_back({other, {i, away}});
                });
                for (const auto& [other, at] : hosts)
                    for (const double most : {options.same_px, options.beside_px}) {
                        if (at.second > most) continue;
                        const Stretch s = walk(chains, {static_cast<int>(c), side}, other, at.first, most);
                        if (!work.go(5 * s.own + 1)) return {};
                        if (s.own >= 0.9 * static_cast<double>(a.at.size())) {
                            lies.push_back(s);
                            break;
                        }
                        if (s.ends && s.own >= 6 && s.own <= options.longest_px) {
                            joins.push_back(s);
                            break;
                        }
                    }
            }
        std::vector<char> touched(chains.size(), 0);
        bool any = false;
        std::sort(lies.begin(), lies.end(), [&](const Stretch& x, const Stretch& y) {
            return chains[static_cast<size_t>(x.e.chain)].at.size() < chains[static_cast<size_t>(y.e.chain)].at.size();
        });
        for (const Stretch& s : lies) {
            const size_t a = static_cast<size_t>(s.e.chain), b = static_cast<size_t>(s.other);
            if (touched[a] || touched[b]) continue;
            if (chains[a].at.size() > chains[b].at.size()) continue;
            touched[a] = 1;
            covered.push_back(std::move(chains[a]));
            chains[a] = {};
            any = true;
        }
        std::sort(joins.begin(), joins.end(), [](const Stretch& x, const Stretch& y) { return x.apart < y.apart; });
        for (const Stretch& s : joins) {
            const size_t a = static_cast<size_t>(s.e.chain), b = static_cast<size_t>(s.other);
            if (touched[a] || touched[b]) continue;
            // Half of the stretch from each, so that the step between them lies where both are surest.
            const int own = s.own / 2, theirs = std::abs(s.from - s.to) / 2, far = s.sense > 0 ? 0 : 1;
            if (own + 4 >= static_cast<int>(chains[a].at.size()) || theirs + 4 >= static_cast<int>(chains[b].at.size()))
                continue;
            touched[a] = touched[b] = 1;
            std::vector<Chain> two{without_tail(chains[a], s.e.side, own), without_tail(chains[b], far, theirs)};
            Join join;
            join.a = s.e.side, join.b = 2 + far;
            two[0].end[s.e.side].at = s.e.side ? two[0].at.back() : two[0].at.front();
            two[1].end[far].at = far ? two[1].at.back() : two[1].at.front();
            chains[a] = joined(std::move(two), {join}).front();
            chains[b] = {};
            any = true;
        }
        chains.erase(std::remove_if(chains.begin(), chains.end(), [](const Chain& c) { return c.at.empty(); }),
                     chains.end());
        if (!any) break;
    }
    return chains;
}

}  // namespace kempt::combings
