#include "combings/shadows.h"

#include <algorithm>
#include <cmath>

#include "combings/joins.h"
#include "core/rank.h"

namespace kempt::combings {
namespace {

// The score of a line is a logistic regression on 3746 lines that run beside a clearer one for two fifths of their way
// or more, of 45 rendered photos of all hair colours and shapes (seeds 1000-1044): 95 % told right, of those longer
// than 60 px 97 %. What tells most is how faint the line is among those of its photo. A strand 1 mm above the paper in
// light from 58 degrees off the zenith.
constexpr double reach_mm = 1.6;
constexpr double faint_share = 0.15;  // of the usual line: no strand's, but lint's and soft shadows'
constexpr float rim_px = 5;
constexpr int every = 3;  // points of a line that are looked at

struct Place {
    int line, point;
    cv::Point2f at;  // of the point: kept here, for most are passed by for where they lie
};

cv::Point2f direction_at(const Line& line, int i) {
    const int n = static_cast<int>(line.at.size());
    const cv::Point2f d =
        line.at[static_cast<size_t>(std::min(n - 1, i + 3))] - line.at[static_cast<size_t>(std::max(0, i - 3))];
    return d * static_cast<float>(1 / std::max(1e-6, cv::norm(d)));
}

// What lies beside a sample of a line.
struct Beside {
    cv::Point2f normal{0, 0};  // unit, from the clearer line to this one; 0: nothing clearer there
    float ratio = 1;           // this one's strength to the other's
    float away = 0;            // px between them
    bool rim = false;          // a clearer line of the other sign lies within the reach of sharpening
};

class Neighbours {
  public:
    Neighbours(const std::vector<Line>& lines, cv::Rect bounds)
        : lines_(lines), bounds_(bounds), nx_(bounds.width / side + 2), ny_(bounds.height / side + 2) {
        start_.assign(static_cast<size_t>(nx_) * static_cast<size_t>(ny_) + 1, 0);
        for_each([&](size_t cell, Place) { ++start_[cell + 1]; });
        for (size_t c = 1; c < start_.size(); ++c) start_[c] += start_[c - 1];
        places_.resize(static_cast<size_t>(start_.back()));
        std::vector<int> fill(start_.begin(), start_.end() - 1);
        for_each([&](size_t cell, Place p) { places_[static_cast<size_t>(fill[cell]++)] = p; });
    }
    // The clearest line that runs beside a point within reach.
    [[nodiscard]] Beside beside(int line, int i, float reach) const {
        const Line& own = lines_[static_cast<size_t>(line)];
        const cv::Point2f q = own.at[static_cast<size_t>(i)], t = direction_at(own, i);
        const int r = static_cast<int>(reach / side) + 1, cx = column(q.x), cy = row(q.y);
        Beside best;
        bool rim = false;
        for (int y = std::max(0, cy - r); y <= std::min(ny_ - 1, cy + r); ++y)
            for (int x = std::max(0, cx - r); x <= std::min(nx_ - 1, cx + r); ++x) {
                // A cell whose middle lies farther along the line than its half diagonal allows has nothing beside it.
                const cv::Point2f middle(static_cast<float>(bounds_.x + x * side) + 0.5f * side,
                                         static_cast<float>(bounds_.y + y * side) + 0.5f * side);
                const bool rim_cell = x == 0 || y == 0 || x == nx_ - 1 || y == ny_ - 1;  // takes points from outside
                if (!rim_cell && std::abs((q - middle).dot(t)) > 1.1f + 0.7072f * side + 0.01f) continue;
                const size_t cell = static_cast<size_t>(y) * static_cast<size_t>(nx_) + static_cast<size_t>(x);
                for (int k = start_[cell]; k < start_[cell + 1]; ++k) {
                    const Place p = places_[static_cast<size_t>(k)];
                    if (p.line == line) continue;
                    const cv::Point2f d = q - p.at;
                    const float along = d.dot(t), aside = static_cast<float>(d.cross(t));
                    if (std::abs(along) > 1.1f || std::abs(aside) > reach || std::abs(aside) < 1.2f) continue;
                    const Line& other = lines_[static_cast<size_t>(p.line)];
                    if (std::abs(t.dot(direction_at(other, p.point))) < 0.94f) continue;  // 20 degrees
                    const float ratio = own.mass / other.mass;
                    if (other.sign != own.sign) {
                        rim = rim || (ratio < (own.sign > 0 ? 0.6f : 1.67f) && std::abs(aside) < rim_px);
                        if (own.sign < 0) continue;  // a dark line may well be the shadow of a bright strand
                    }
                    if (ratio < best.ratio) best = {d * static_cast<float>(1 / cv::norm(d)), ratio, std::abs(aside)};
                }
            }
        best.rim = rim;
        return best;
    }

  private:
    static constexpr int side = 8;
    [[nodiscard]] int column(float x) const { return std::clamp((static_cast<int>(x) - bounds_.x) / side, 0, nx_ - 1); }
    [[nodiscard]] int row(float y) const { return std::clamp((static_cast<int>(y) - bounds_.y) / side, 0, ny_ - 1); }
    template <class Act>
    void for_each(const Act& act) const {
        for (size_t l = 0; l < lines_.size(); ++l)
            for (size_t i = 0; i < lines_[l].at.size(); ++i) {
                const cv::Point2f p = lines_[l].at[i];
                act(static_cast<size_t>(row(p.y)) * static_cast<size_t>(nx_) + static_cast<size_t>(column(p.x)),
                    Place{static_cast<int>(l), static_cast<int>(i), p});
            }
    }
    const std::vector<Line>& lines_;
    cv::Rect bounds_;
    int nx_, ny_;
    std::vector<int> start_;
    std::vector<Place> places_;
};

// Median over all points of how clear their line is.
double usual_mass(const std::vector<Line>& lines) {
    std::vector<float> masses;
    for (const Line& line : lines)
        if (!line.noise) masses.insert(masses.end(), line.at.size() / 5 + 1, line.mass);
    return masses.empty() ? 1 : std::max(1e-6f, at_rank(masses, 0.5));
}

// How surely a line is none of the paper's: its log likelihood ratio grows with strength^2 times length.
double score_of(const Line& line) {
    return line.mass * std::sqrt(static_cast<double>(line.at.size()));
}

// The score that lines of noise do not reach. Noise and compression make bright lines as often and as clear as dark
// ones (12 rendered photos of qualities 62-95: the 98 % quantiles of false dark lines and of bright lines agree within
// a tenth), while strands are darker than paper, or mirror the light along a few lines.
double noise_score(const std::vector<Line>& lines, double noise) {
    constexpr size_t enough = 60;
    constexpr double least = 15;  // SDs of the noise: a line of 10 px at 4.7, which starts at 4.5
    // The same photos' scores of noise stay below 40 SDs. Brighter lines are the gaps of a mat of hair.
    constexpr double most = 60;
    std::vector<double> bright;
    for (const Line& line : lines)
        if (line.sign < 0) bright.push_back(score_of(line));
    if (bright.size() < enough) return least * noise;
    return std::clamp(1.6 * at_rank(bright, 0.98), least * noise, most * noise);  // the largest of thousands
}

}  // namespace

std::vector<Line> mark_shadows(std::vector<Line> lines, const Ridges& ridges, double px_per_mm,
                               std::vector<Line>& noise, Work& work) {
    const cv::Rect bounds = ridges.bounds;
    std::vector<Line> out;
    const double least = noise_score(lines, ridges.noise);
    for (Line& line : lines) line.noise = score_of(line) < least;
    for (const Line& line : lines)
        if (line.noise) noise.push_back(line);
    // Those far below it are not worth looking at one by one.
    lines.erase(
        std::remove_if(lines.begin(), lines.end(), [&](const Line& line) { return score_of(line) < 0.5 * least; }),
        lines.end());
    cv::Point2f mean_side(0, 0);
    const double reach_px = reach_mm * px_per_mm;
    const Neighbours neighbours(lines, bounds);
    std::vector<std::vector<Beside>> seen(lines.size());
    cv::parallel_for_(cv::Range(0, static_cast<int>(lines.size())), [&](const cv::Range& range) {
        for (int l = range.start; l < range.end && work.ok(); ++l) {
            const int n = static_cast<int>(lines[static_cast<size_t>(l)].at.size());
            work.spend(100 * (n / every + 1));
            for (int i = n < 2 * every ? n / 2 : every; i < n; i += every)
                seen[static_cast<size_t>(l)].push_back(neighbours.beside(l, i, static_cast<float>(reach_px)));
        }
    });
    if (!work.go()) return {};
    // On which side do the much fainter of two lie? Of strands that happen to lie side by side on either, of shadows on
    // one.
    cv::Point2f sum(0, 0);
    double votes = 0;
    for (size_t l = 0; l < lines.size(); ++l)
        for (const Beside& b : seen[l])
            if (b.ratio < 0.45f && !lines[l].noise) sum += b.normal, votes += 1;
    if (votes > 0) mean_side = sum * static_cast<float>(1 / votes);
    const double one_sided = cv::norm(mean_side);
    const cv::Point2f side = one_sided > 0 ? mean_side * static_cast<float>(1 / one_sided) : mean_side;
    const double clear = one_sided * votes / (votes + 40);
    const double usual = usual_mass(lines);
    for (size_t l = 0; l < lines.size(); ++l) {
        double on_side = 0, beside = 0, ratio = 0, away = 0, rims = 0;
        for (const Beside& b : seen[l]) {
            rims += b.rim;
            if (b.ratio < 1) beside += 1, on_side += b.normal.dot(side), ratio += b.ratio, away += b.away;
        }
        const double samples = static_cast<double>(seen[l].size()), share = beside / samples;
        if (rims > 0.5 * samples) continue;
        bool shadow = lines[l].mass < faint_share * usual;
        if (share > 0.4) {
            const double score = -6.85 + 2.19 * ratio / beside + 4.34 * on_side / beside * clear + 4.33 * clear -
                                 2.04 * away / beside / px_per_mm -
                                 0.47 * std::log(static_cast<double>(lines[l].at.size())) -
                                 5.83 * std::log(std::max(0.01, lines[l].mass / usual)) + 2.44 * share;
            shadow = shadow || score > 0;
        }
        lines[l].shadow = shadow;
        out.push_back(std::move(lines[l]));
    }
    return out;
}

std::vector<Line> without_shadows(std::vector<Line> lines, const Darkness& darkness, std::vector<Line>& shadows,
                                  Work& work) {
    const std::vector<LineEnd> ends = ends_of(lines, darkness);
    std::vector<int> partner(ends.size(), -1);
    constexpr double clear_join = 6;
    for (const Join& q : join_ends(ends, darkness, {}, work))
        if (q.cost < clear_join) partner[static_cast<size_t>(q.a)] = q.b, partner[static_cast<size_t>(q.b)] = q.a;
    // From an end on through marked lines to the first that is not marked.
    auto leads_to_strand = [&](size_t end) {
        for (size_t steps = 0; steps < lines.size(); ++steps) {
            const int next = partner[end];
            if (next < 0 || !work.go()) return false;
            if (!lines[static_cast<size_t>(next) / 2].doubted()) return true;
            end = static_cast<size_t>(next) ^ 1;
        }
        return false;
    };
    std::vector<Line> out;
    std::vector<char> take(lines.size(), 0);
    for (size_t l = 0; l < lines.size(); ++l)
        take[l] = !lines[l].doubted() || (leads_to_strand(2 * l) && leads_to_strand(2 * l + 1));
    for (size_t l = 0; l < lines.size(); ++l)
        if (take[l] || !lines[l].noise) (take[l] ? out : shadows).push_back(std::move(lines[l]));
    return out;
}

}  // namespace kempt::combings
