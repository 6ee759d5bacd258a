#include "combings/rides.h"

#include <algorithm>
#include <cmath>

#include "combings/chain_map.h"

namespace kempt::combings {
namespace {

constexpr float aside_px = 4.5f;    // two lines nearer than about 3 px melt into one ridge
constexpr float entry_turn = 0.8f;  // cosine: an end that meets a line more steeply crosses it

struct Ride {
    FreeEnd e, f;
    int host = -1, from = 0, to = 0;  // points of the host
    double cost = 0;
};

cv::Point2f direction_at(const Chain& chain, int i, int sense) {
    const int n = static_cast<int>(chain.at.size());
    cv::Point2f d =
        chain.at[static_cast<size_t>(std::min(n - 1, i + 3))] - chain.at[static_cast<size_t>(std::max(0, i - 3))];
    return d * static_cast<float>(sense / std::max(1e-6, cv::norm(d)));
}

// Direction of a line some pixels past its end.
cv::Point2f way_at(const LineEnd& end, float ahead) {
    const float turn = end.curvature * ahead, c = std::cos(turn), s = std::sin(turn);
    return {end.ahead.x * c - end.ahead.y * s, end.ahead.x * s + end.ahead.y * c};
}

double angle_cost(double cosine) {
    const double a = std::acos(std::clamp(cosine, -1.0, 1.0)) / 0.22;  // 12.5 degrees
    return 0.5 * a * a;
}

// The cheapest ways for one free end.
void rides_of(const std::vector<Chain>& chains, const ChainMap& map, FreeEnd e, const RideOptions& options,
              std::vector<Ride>& out, Work& work) {
    const Chain& own = chains[static_cast<size_t>(e.chain)];
    const LineEnd& end = own.end[e.side];
    // Hosts: lines beside or just ahead that run the same way, each at its nearest point.
    struct Host {
        int chain, point, sense;
        float away;
    };
    std::vector<Host> hosts;
    map.points_near(end.at, [&](int c, int i) {
        if (c == e.chain && std::abs(i - (e.side ? static_cast<int>(own.at.size()) - 1 : 0)) < 30) return;
        const Chain& other = chains[static_cast<size_t>(c)];
        const cv::Point2f d = other.at[static_cast<size_t>(i)] - end.at;
        const float ahead = d.dot(end.ahead),
                    aside = d.dot(end.across()) - 0.5f * end.curvature * ahead * std::abs(ahead);
        if (ahead < -1 || ahead > 14 || std::abs(aside) > aside_px) return;
        const float turn = direction_at(other, i, 1).dot(way_at(end, ahead));
        if (std::abs(turn) < entry_turn) return;
        const float away = std::abs(aside) + 0.4f * std::abs(ahead - 2);
        const int sense = turn > 0 ? 1 : -1;
        for (Host& h : hosts)
            if (h.chain == c && std::abs(h.point - i) < 30) {
                if (away < h.away) h = {c, i, sense, away};
                return;
            }
        hosts.push_back({c, i, sense, away});
    });
    for (const Host& h : hosts) {
        const Chain& host = chains[static_cast<size_t>(h.chain)];
        const int n = static_cast<int>(host.at.size());
        const float to_entry = (host.at[static_cast<size_t>(h.point)] - end.at).dot(end.ahead);
        const double entry =
            angle_cost(direction_at(host, h.point, h.sense).dot(way_at(end, to_entry))) + 0.15 * h.away * h.away;
        if (entry > options.most_cost) continue;
        std::vector<Ride> found;
        for (int k = 0; k <= static_cast<int>(options.longest_px); k += 2) {
            const int i = h.point + h.sense * k;
            if (i < 0 || i >= n) break;
            work.spend(30);
            if (!work.ok()) break;
            const cv::Point2f q = host.at[static_cast<size_t>(i)];
            map.ends_near(q, [&](FreeEnd f) {
                if (f.chain == e.chain || f.chain == h.chain) return;
                const LineEnd& far = chains[static_cast<size_t>(f.chain)].end[f.side];
                const cv::Point2f d = q - far.at;
                const float ahead = d.dot(far.ahead),
                            aside = d.dot(far.across()) - 0.5f * far.curvature * ahead * std::abs(ahead);
                if (ahead < -1 || ahead > 14 || std::abs(aside) > aside_px) return;
                const double turn = -direction_at(host, i, h.sense).dot(way_at(far, ahead));
                if (turn < entry_turn) return;
                const double away = std::abs(aside) + 0.4 * std::abs(ahead - 2);
                const double cost = entry + angle_cost(turn) + 0.15 * away * away + 0.015 * k + tone_cost(end, far);
                for (Ride& r : found)
                    if (r.f.chain == f.chain && r.f.side == f.side) {
                        if (cost < r.cost) r.cost = cost, r.to = i;
                        return;
                    }
                found.push_back({e, f, h.chain, h.point, i, cost});
            });
        }
        for (const Ride& r : found)
            if (r.cost < options.most_cost) out.push_back(r);
    }
}

struct Piece {
    std::vector<cv::Point2f> at;
    std::vector<float> strength;
};
Piece piece_of(const Chain& c, int from, int to) {  // both included, either way
    Piece p;
    for (int i = from, step = to >= from ? 1 : -1;; i += step) {
        p.at.push_back(c.at[static_cast<size_t>(i)]);
        p.strength.push_back(c.strength[static_cast<size_t>(i)]);
        if (i == to) break;
    }
    return p;
}
void append(Chain& c, const Piece& p, bool bridge_px) {
    if (bridge_px && !c.at.empty() && !p.at.empty()) {
        const cv::Point2f a = c.at.back(), d = p.at.front() - a;
        const int n = static_cast<int>(std::lround(cv::norm(d)));
        for (int i = 1; i < n; ++i)
            c.at.push_back(a + d * (static_cast<float>(i) / static_cast<float>(n))), c.strength.push_back(-1);
    }
    c.at.insert(c.at.end(), p.at.begin(), p.at.end());
    c.strength.insert(c.strength.end(), p.strength.begin(), p.strength.end());
}
void inherit(Chain& c, const Chain& from) {
    c.doubts += from.doubts;
    c.blank_px += from.blank_px;
    c.shared_px += from.shared_px;
    c.doubtful_at.insert(c.doubtful_at.end(), from.doubtful_at.begin(), from.doubtful_at.end());
}

// The chain with its end `side` last.
Piece ending_at(const Chain& c, int side) {
    const int n = static_cast<int>(c.at.size());
    return side ? piece_of(c, 0, n - 1) : piece_of(c, n - 1, 0);
}
Piece starting_at(const Chain& c, int side) {
    const int n = static_cast<int>(c.at.size());
    return side ? piece_of(c, n - 1, 0) : piece_of(c, 0, n - 1);
}

// False: what lies on both sides of the shared part agrees so badly that the ends had better stay torn.
bool apply(std::vector<Chain>& chains, const Ride& ride, const RideOptions& options, const Bends& usual,
           const Darkness& darkness) {
    Chain &a = chains[static_cast<size_t>(ride.e.chain)], &b = chains[static_cast<size_t>(ride.f.chain)],
          &host = chains[static_cast<size_t>(ride.host)];
    const int n = static_cast<int>(host.at.size()), sense = ride.to >= ride.from ? 1 : -1;
    const LineEnd &e = a.end[ride.e.side], &f = b.end[ride.f.side];
    // The host just before and behind the shared part.
    bool swap = false, doubt = true;
    const int before = ride.from - sense * 4, behind = ride.to + sense * 4;
    const bool apart = ride.e.chain != ride.host && ride.f.chain != ride.host && ride.e.chain != ride.f.chain;
    if (apart && before >= 3 && before < n - 3 && behind >= 3 && behind < n - 3) {
        const Piece in = piece_of(host, before, sense > 0 ? 0 : n - 1),
                    on = piece_of(host, behind, sense > 0 ? n - 1 : 0);
        const LineEnd h1 = end_of(in.at, in.strength, usual, darkness),
                      h2 = end_of(on.at, on.strength, usual, darkness);
        const double host_alone = disagreement(h1, h2), straight = disagreement(e, f) + host_alone,
                     crossed = disagreement(e, h2) + disagreement(h1, f);
        if (std::min(straight, crossed) > host_alone + options.torn_cost) return false;
        swap = crossed < straight;
        doubt = std::abs(crossed - straight) < 3;
    }
    // A way along nearly all of the host is no sharing: the host is the piece between the two.
    const bool whole = std::abs(ride.to - ride.from) > n - 1 - 24 && apart;
    if (whole) swap = false;
    Piece shared = piece_of(host, ride.from, ride.to);
    if (!whole && !swap) std::fill(shared.strength.begin(), shared.strength.end(), -1.f);  // not its own
    const double length = static_cast<double>(shared.at.size());
    Chain one;
    append(one, ending_at(a, ride.e.side), false);
    append(one, shared, true);
    one.end[0] = a.end[1 - ride.e.side];
    inherit(one, a);
    one.shared_px += length;
    one.doubts += doubt;
    if (doubt) one.doubtful_at.push_back(shared.at[shared.at.size() / 2]);
    if (!swap) {
        append(one, starting_at(b, ride.f.side), true);
        one.end[1] = b.end[1 - ride.f.side];
        inherit(one, b);
        b = {};
        if (whole)
            host = {};
        else
            host.shared_px += length;
        a = std::move(one);
        return true;
    }
    const int last = sense > 0 ? n - 1 : 0, first = n - 1 - last;
    if (ride.to != last) append(one, piece_of(host, ride.to + sense, last), false);
    one.end[1] = host.end[sense > 0 ? 1 : 0];
    Chain two;
    append(two, piece_of(host, first, ride.to), false);
    append(two, starting_at(b, ride.f.side), true);
    two.end[0] = host.end[sense > 0 ? 0 : 1];
    two.end[1] = b.end[1 - ride.f.side];
    // Doubts of the host go to both: which part they lie in is not kept.
    inherit(one, host);
    inherit(two, host);
    inherit(two, b);
    two.shared_px += length;
    two.doubts += doubt;
    b = {};
    host = std::move(two);
    a = std::move(one);
    return true;
}

}  // namespace

std::vector<Chain> join_along(std::vector<Chain> chains, const Bends& usual, const Darkness& darkness, Work& work,
                              const RideOptions& options) {
    for (int pass = 0; pass < 8; ++pass) {
        const ChainMap map(chains, darkness.size());
        std::vector<Ride> rides;
        if (!work.go(static_cast<int64_t>(16 * chains.size()))) return {};
        std::vector<std::vector<Ride>> of_chain(chains.size());
        cv::parallel_for_(cv::Range(0, static_cast<int>(chains.size())), [&](const cv::Range& range) {
            for (int c = range.start; c < range.end && work.ok(); ++c)
                for (int s = 0; s < 2; ++s)
                    if (chains[static_cast<size_t>(c)].end[s].ahead_dark > 0.35f)
                        rides_of(chains, map, {c, s}, options, of_chain[static_cast<size_t>(c)], work);
        });
        if (!work.go(0)) return {};
        for (const auto& some : of_chain) rides.insert(rides.end(), some.begin(), some.end());
        std::sort(rides.begin(), rides.end(), [](const Ride& x, const Ride& y) { return x.cost < y.cost; });
        std::vector<char> touched(chains.size(), 0);
        bool any = false;
        for (const Ride& r : rides) {
            const size_t members[3] = {static_cast<size_t>(r.e.chain), static_cast<size_t>(r.f.chain),
                                       static_cast<size_t>(r.host)};
            if (touched[members[0]] || touched[members[1]] || touched[members[2]]) continue;
            if (!apply(chains, r, options, usual, darkness)) continue;
            for (const size_t m : members) touched[m] = 1;
            any = true;
        }
        chains.erase(std::remove_if(chains.begin(), chains.end(), [](const Chain& c) { return c.at.empty(); }),
                     chains.end());
        if (!any) break;
    }
    return chains;
}

}  // namespace kempt::combings
