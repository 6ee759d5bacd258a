#include "work/line_up.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace kempt::work {

namespace {

constexpr double step_mm = 0.5;  // finer than a line is drawn by hand
constexpr int rounds = 30;       // the fit stands still after about ten
constexpr double kept_share = 0.8;

double cross(const cv::Point2d& a, const cv::Point2d& b) {
    return a.x * b.y - a.y * b.x;
}

Rigid turned(double angle) {
    Rigid rigid;
    rigid.turn = {std::cos(angle), -std::sin(angle), std::sin(angle), std::cos(angle)};
    return rigid;
}

// On which side of the line, walked from its first point, the hair lies.
double hair_side(const MarkedLine& marked) {
    const cv::Point2d& first = marked.line_mm.front();
    return cross(marked.line_mm.back() - first, marked.hair_mm - first) >= 0 ? 1 : -1;
}

cv::Point2d closest_on(const std::vector<cv::Point2d>& line, const cv::Point2d& p) {
    cv::Point2d best = line.front();
    double least = std::numeric_limits<double>::max();
    for (std::size_t i = 1; i < line.size(); ++i) {
        const cv::Point2d along = line[i] - line[i - 1];
        const double length2 = along.dot(along);
        const double t = length2 > 0 ? std::clamp((p - line[i - 1]).dot(along) / length2, 0.0, 1.0) : 0;
        const cv::Point2d q = line[i - 1] + along * t;
        const cv::Point2d apart = p - q;
        if (apart.dot(apart) < least) {
            least = apart.dot(apart);
            best = q;
        }
    }
    return best;
}

// The nearest pairs and their RMS distance.
double nearest_pairs(const std::vector<cv::Point2d>& line, const std::vector<cv::Point2d>& samples, const Rigid& rigid,
                     std::vector<cv::Point2d>& from, std::vector<cv::Point2d>& to) {
    std::vector<std::pair<double, std::size_t>> order;
    std::vector<cv::Point2d> partners;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const cv::Point2d moved = rigid(samples[i]);
        partners.push_back(closest_on(line, moved));
        order.emplace_back(std::hypot(moved.x - partners[i].x, moved.y - partners[i].y), i);
    }
    std::sort(order.begin(), order.end());
    const auto kept =
        std::max<std::size_t>(2, static_cast<std::size_t>(kept_share * static_cast<double>(order.size())));
    from.clear();
    to.clear();
    double sum = 0;
    for (std::size_t k = 0; k < std::min(kept, order.size()); ++k) {
        from.push_back(samples[order[k].second]);
        to.push_back(partners[order[k].second]);
        sum += order[k].first * order[k].first;
    }
    return std::sqrt(sum / static_cast<double>(from.size()));
}

}  // namespace

cv::Point2d Rigid::operator()(const cv::Point2d& p) const {
    return {turn(0, 0) * p.x + turn(0, 1) * p.y + shift[0], turn(1, 0) * p.x + turn(1, 1) * p.y + shift[1]};
}

Rigid Rigid::inverse() const {
    Rigid back;
    back.turn = turn.t();
    back.shift = -(back.turn * shift);
    return back;
}

cv::Matx33d Rigid::matrix() const {
    return {turn(0, 0), turn(0, 1), shift[0], turn(1, 0), turn(1, 1), shift[1], 0, 0, 1};
}

Rigid rigid_from_pairs(const std::vector<cv::Point2d>& from, const std::vector<cv::Point2d>& to) {
    const double count = static_cast<double>(from.size());
    const cv::Point2d from_mean = std::accumulate(from.begin(), from.end(), cv::Point2d()) / count;
    const cv::Point2d to_mean = std::accumulate(to.begin(), to.end(), cv::Point2d()) / count;
    double along = 0, across = 0;
    for (std::size_t i = 0; i < from.size(); ++i) {
        const cv::Point2d a = from[i] - from_mean, b = to[i] - to_mean;
        along += a.dot(b);
        across += cross(a, b);
    }
    Rigid rigid = turned(std::atan2(across, along));
    const cv::Point2d moved = rigid(from_mean);
    rigid.shift = {to_mean.x - moved.x, to_mean.y - moved.y};
    return rigid;
}

std::vector<cv::Point2d> resampled(const std::vector<cv::Point2d>& line_mm, double step) {
    std::vector<cv::Point2d> samples{line_mm.front()};
    double left = step;
    for (std::size_t i = 1; i < line_mm.size(); ++i) {
        const cv::Point2d along = line_mm[i] - line_mm[i - 1];
        const double length = std::hypot(along.x, along.y);
        double at = left;
        for (; at <= length && samples.size() < 100000; at += step)
            samples.push_back(line_mm[i - 1] + along * (at / length));
        left = at - length;
    }
    if (samples.size() < 2) samples.push_back(line_mm.back());
    return samples;
}

double lines_apart_mm(const MarkedLine& earlier, const MarkedLine& later, const Rigid& earlier_from_later) {
    std::vector<cv::Point2d> from, to;
    return nearest_pairs(resampled(earlier.line_mm, step_mm), resampled(later.line_mm, step_mm), earlier_from_later,
                         from, to);
}

LineUp line_up(const MarkedLine& earlier, const MarkedLine& later) {
    const std::vector<cv::Point2d> line = resampled(earlier.line_mm, step_mm);
    std::vector<cv::Point2d> samples = resampled(later.line_mm, step_mm);
    if (hair_side(earlier) != hair_side(later)) std::reverse(samples.begin(), samples.end());
    const cv::Point2d earlier_chord = line.back() - line.front(), later_chord = samples.back() - samples.front();
    LineUp result;
    Rigid& rigid = result.earlier_from_later;
    rigid = turned(std::atan2(earlier_chord.y, earlier_chord.x) - std::atan2(later_chord.y, later_chord.x));
    const cv::Point2d moved = rigid(samples[samples.size() / 2]), middle = line[line.size() / 2];
    rigid.shift = {middle.x - moved.x, middle.y - moved.y};
    std::vector<cv::Point2d> from, to;
    for (int round = 0; round < rounds; ++round) {
        nearest_pairs(line, samples, rigid, from, to);
        rigid = rigid_from_pairs(from, to);
    }
    result.rms_mm = nearest_pairs(line, samples, rigid, from, to);
    return result;
}

}  // namespace kempt::work
