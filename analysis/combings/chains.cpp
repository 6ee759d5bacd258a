#include "combings/chains.h"

#include <algorithm>
#include <unordered_map>

namespace kempt::combings {

std::vector<Chain> chains_of(const std::vector<Line>& lines, const std::vector<LineEnd>& ends,
                             const std::vector<Join>& joins) {
    std::vector<int> join_of(ends.size(), -1);
    for (size_t j = 0; j < joins.size(); ++j)
        join_of[static_cast<size_t>(joins[j].a)] = join_of[static_cast<size_t>(joins[j].b)] = static_cast<int>(j);
    std::vector<char> seen(lines.size(), 0);
    std::vector<Chain> out;
    for (int start = 0; start < static_cast<int>(ends.size()); ++start) {
        if (join_of[static_cast<size_t>(start)] >= 0 || seen[static_cast<size_t>(start / 2)]) continue;
        Chain chain;
        chain.end[0] = ends[static_cast<size_t>(start)];
        for (int end = start;;) {
            const Line& line = lines[static_cast<size_t>(end / 2)];
            seen[static_cast<size_t>(end / 2)] = 1;
            if (end % 2 == 0) {
                chain.at.insert(chain.at.end(), line.at.begin(), line.at.end());
                chain.strength.insert(chain.strength.end(), line.strength.begin(), line.strength.end());
            } else {
                chain.at.insert(chain.at.end(), line.at.rbegin(), line.at.rend());
                chain.strength.insert(chain.strength.end(), line.strength.rbegin(), line.strength.rend());
            }
            const int far = end ^ 1, j = join_of[static_cast<size_t>(far)];
            if (j < 0) {
                chain.end[1] = ends[static_cast<size_t>(far)];
                break;
            }
            const Join& join = joins[static_cast<size_t>(j)];
            const int next = join.a == far ? join.b : join.a;
            const auto way = bridge(ends[static_cast<size_t>(far)], ends[static_cast<size_t>(next)]);
            chain.at.insert(chain.at.end(), way.begin(), way.end());
            chain.strength.resize(chain.at.size(), -1.f);
            chain.doubts += join.doubtful;
            chain.blank_px += join.blank_px;
            if (join.doubtful) chain.doubtful_at.push_back(ends[static_cast<size_t>(next)].at);
            end = next;
        }
        out.push_back(std::move(chain));
    }
    return out;
}

std::vector<Chain> without_covered(std::vector<Chain> chains, cv::Size photo) {
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
