#include "combings/chains.h"

#include <algorithm>
#include <unordered_map>

namespace kempt::combings {

namespace {
// Appends a chain from its end `side` on.
void append(Chain& to, const Chain& c, int side) {
    if (side == 0) {
        to.at.insert(to.at.end(), c.at.begin(), c.at.end());
        to.strength.insert(to.strength.end(), c.strength.begin(), c.strength.end());
    } else {
        to.at.insert(to.at.end(), c.at.rbegin(), c.at.rend());
        to.strength.insert(to.strength.end(), c.strength.rbegin(), c.strength.rend());
    }
    to.doubts += c.doubts;
    to.blank_px += c.blank_px;
    to.shared_px += c.shared_px;
    to.doubtful_at.insert(to.doubtful_at.end(), c.doubtful_at.begin(), c.doubtful_at.end());
}
}  // namespace

std::vector<LineEnd> ends_of(const std::vector<Chain>& chains) {
    std::vector<LineEnd> ends;
    for (size_t c = 0; c < chains.size(); ++c)
        for (const LineEnd& end : chains[c].end) {
            ends.push_back(end);
            ends.back().line = static_cast<int>(c);
            ends.back().length = static_cast<float>(chains[c].at.size());
        }
    return ends;
}

std::vector<Chain> joined(std::vector<Chain> chains, const std::vector<Join>& joins) {
    std::vector<int> join_of(2 * chains.size(), -1);
    for (size_t j = 0; j < joins.size(); ++j)
        join_of[static_cast<size_t>(joins[j].a)] = join_of[static_cast<size_t>(joins[j].b)] = static_cast<int>(j);
    std::vector<char> seen(chains.size(), 0);
    std::vector<Chain> out;
    for (int start = 0; start < static_cast<int>(join_of.size()); ++start) {
        if (join_of[static_cast<size_t>(start)] >= 0 || seen[static_cast<size_t>(start / 2)]) continue;
        Chain chain;
        chain.end[0] = chains[static_cast<size_t>(start / 2)].end[start % 2];
        for (int end = start;;) {
            const Chain& part = chains[static_cast<size_t>(end / 2)];
            seen[static_cast<size_t>(end / 2)] = 1;
            append(chain, part, end % 2);
            const int far = end ^ 1, j = join_of[static_cast<size_t>(far)];
            const LineEnd& from = part.end[far % 2];
            if (j < 0) {
                chain.end[1] = from;
                break;
            }
            const Join& join = joins[static_cast<size_t>(j)];
            const int next = join.a == far ? join.b : join.a;
            const LineEnd& to = chains[static_cast<size_t>(next / 2)].end[next % 2];
            const auto way = bridge(from, to);
            chain.at.insert(chain.at.end(), way.begin(), way.end());
            chain.strength.resize(chain.at.size(), -1.f);
            chain.doubts += join.doubtful;
            chain.blank_px += join.blank_px;
            if (join.doubtful) chain.doubtful_at.push_back(to.at);
            end = next;
        }
        out.push_back(std::move(chain));
    }
    return out;
}

std::vector<Chain> chains_of(const std::vector<Line>& lines, const std::vector<LineEnd>& ends,
                             const std::vector<Join>& joins) {
    std::vector<Chain> chains;
    for (size_t l = 0; l < lines.size(); ++l) {
        Chain chain;
        chain.at = lines[l].at;
        chain.strength = lines[l].strength;
        chain.end[0] = ends[2 * l];
        chain.end[1] = ends[2 * l + 1];
        chains.push_back(std::move(chain));
    }
    return joined(std::move(chains), joins);
}

std::vector<Chain> without_covered(std::vector<Chain> chains, cv::Size photo, Work& work) {
    constexpr int side = 4;
    constexpr float near_px = 2.3f;
    const int nx = photo.width / side + 1, ny = photo.height / side + 1;
    std::vector<size_t> order(chains.size());
    for (size_t c = 0; c < order.size(); ++c) order[c] = c;
    std::sort(order.begin(), order.end(),
              [&](size_t a, size_t b) { return chains[a].at.size() > chains[b].at.size(); });
    // Only short ones are asked, so only their surroundings are kept.
    constexpr size_t longest = 120;
    std::unordered_map<int, std::vector<std::pair<cv::Point2f, size_t>>> near;
    auto key = [&](int i, int j) { return std::clamp(j, 0, ny - 1) * nx + std::clamp(i, 0, nx - 1); };
    for (const Chain& c : chains)
        if (c.at.size() <= longest)
            for (const cv::Point2f& p : c.at)
                for (int v = -1; v <= 1; ++v)
                    for (int u = -1; u <= 1; ++u)
                        near[key(static_cast<int>(p.x) / side + u, static_cast<int>(p.y) / side + v)];
    for (size_t c = 0; c < chains.size(); ++c)
        for (const cv::Point2f& p : chains[c].at) {
            const auto cell = near.find(key(static_cast<int>(p.x) / side, static_cast<int>(p.y) / side));
            if (cell != near.end()) cell->second.emplace_back(p, c);
        }
    std::vector<char> gone(chains.size(), 0);
    for (size_t k = order.size(); k-- > 0;) {  // the shortest first
        const size_t c = order[k];
        if (chains[c].at.size() > longest) break;
        if (!work.go(static_cast<int64_t>(100 * chains[c].at.size()))) return {};
        size_t covered = 0;
        for (const cv::Point2f& p : chains[c].at) {
            bool found = false;
            for (int v = -1; v <= 1 && !found; ++v)
                for (int u = -1; u <= 1 && !found; ++u)
                    for (const auto& [q, owner] :
                         near[key(static_cast<int>(p.x) / side + u, static_cast<int>(p.y) / side + v)])
                        if (owner != c && !gone[owner] && cv::norm(q - p) < near_px) {
                            found = true;
                            break;
                        }
            covered += found;
        }
        if (static_cast<double>(covered) >= 0.9 * static_cast<double>(chains[c].at.size())) gone[c] = 1;
    }
    std::vector<Chain> out;
    for (size_t c = 0; c < chains.size(); ++c)
        if (!gone[c]) out.push_back(std::move(chains[c]));
    return out;
}

}  // namespace kempt::combings
