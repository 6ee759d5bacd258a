#include "combings/chains.h"

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

}  // namespace kempt::combings
