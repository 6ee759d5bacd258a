#include "combings/ends.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <span>

#include "core/rank.h"
#include "core/twice.h"

namespace kempt::combings {
namespace {

// Up to so many px of a line speak for its end, 5 mm of straight hair: two lines that cross at 8 degrees lie on one
// ridge for as long, and only a direction known to a degree or two tells which way each goes on.
constexpr int window = 64;
constexpr size_t least_window = 10;
constexpr float point_sd = 0.2f;  // px, of a ridge point across its line, as rendered photos of all kinds show it
// Of the log of a strand's strength from one side of a crossing to the other: 0.06 to 0.10 in five rendered photos
// (2753 crossings of seeds 30101-30109), where the strands of a photo differ by 0.2 to 0.26. Taken wider: real strands
// are not as round as rendered ones. And of the darkness of a few pixels.
constexpr double tone_sd = 0.12, peak_sd = 0.35;
// A cubic follows an arc well over 40 degrees of it. Where it misses the points by more, the line is none of one bend.
constexpr double most_turn = 0.7, most_miss_px = 0.35;
// Of arcs that tell how coils bend: points, and points below which an arc that hardly turns says nothing (at 32 its
// curvature is known to 0.002 a pixel, a radius of 5 cm).
constexpr size_t least_arc = 13, least_straight = 32;

// Cubic through the first `count` points by least squares, over the distance u along their chord (u <= 0 inward). The
// curvature and its change along the line are held towards 0 with the standard deviations that they have among this
// photo's strands. Gives the RMS of what it misses.
double fit_cubic(std::span<const cv::Point2f> points, size_t count, const Bends& usual, LineEnd& end) {
    cv::Point2f chord = points[0] - points[count - 1];
    const float length = std::max(1e-3f, static_cast<float>(cv::norm(chord)));
    chord *= 1 / length;
    const cv::Point2f across(-chord.y, chord.x);
    // Of each point: along the chord, px, and across it.
    float way[2 * window], off[2 * window];
    // Sums of the powers of u, of which products of two that are alike are one, and of those times v.
    double u1 = 0, u2 = 0, u3 = 0, u13 = 0, u22 = 0, u23 = 0, u33 = 0, v0 = 0, v1 = 0, v2 = 0, v3 = 0;
    for (size_t k = 0; k < count; ++k) {
        const cv::Point2f d = points[k] - points[0];
        way[k] = d.dot(chord), off[k] = d.dot(across);
        const double u = way[k] / length, v = off[k], uu = u * u, uuu = uu * u;
        u1 += u, u2 += uu, u3 += uuu, u13 += u * uuu, u22 += uu * uu, u23 += uu * uuu, u33 += uuu * uuu;
        v0 += v, v1 += u * v, v2 += uu * v, v3 += uuu * v;
    }
    cv::Matx44d m(static_cast<double>(count), u1, u2, u3, u1, u2, u3, u13, u2, u3, u22, u23, u3, u13, u23, u33);
    const cv::Vec4d r(v0, v1, v2, v3);
    const double variance = point_sd * point_sd * 4;  // neighbours share their noise
    const double l = length, bend = 0.5 * usual.curvature * l * l, change = usual.change * l * l * l / 6;
    m(2, 2) += variance / (bend * bend), m(3, 3) += variance / (change * change);
    m(0, 0) += 1e-6, m(1, 1) += 1e-6;
    const cv::Matx44d inverse = m.inv(cv::DECOMP_CHOLESKY);
    const cv::Vec4d k = inverse * r;
    const double slope = k[1] / l, norm = std::sqrt(1 + slope * slope);
    end.at = points[0] + static_cast<float>(k[0]) * across;
    end.ahead = (chord + static_cast<float>(slope) * across) * static_cast<float>(1 / norm);
    end.curvature = static_cast<float>(2 * k[2] / (l * l * norm * norm * norm));
    end.change = static_cast<float>(6 * k[3] / (l * l * l));
    end.direction_sd = static_cast<float>(std::sqrt(std::max(1e-8, variance * inverse(1, 1) / (l * l))));
    end.curvature_sd = static_cast<float>(2 * std::sqrt(std::max(0.0, variance * inverse(2, 2))) / (l * l));
    end.change_sd = static_cast<float>(6 * std::sqrt(std::max(0.0, variance * inverse(3, 3))) / (l * l * l));
    double miss = 0;
    for (size_t i = 0; i < count; ++i) {
        const double u = way[i] / l, v = off[i] - (k[0] + u * (k[1] + u * (k[2] + u * k[3])));
        miss += v * v;
    }
    return std::sqrt(miss / static_cast<double>(count));
}

// By how much the first m points turn, radians.
double turn_over(std::span<const cv::Point2f> points, size_t m) {
    const cv::Point2f a = points[0] - points[m / 3], b = points[2 * m / 3] - points[m - 1];
    return 1.5 * std::abs(std::atan2(a.cross(b), static_cast<double>(a.dot(b))));
}

void fit_end(std::span<const cv::Point2f> points, const Bends& usual, LineEnd& end) {
    size_t count = std::min(static_cast<size_t>(window), points.size());
    const auto shorter = [&] { count = std::max(least_window, count * 4 / 5); };
    while (count > least_window && turn_over(points, count) > most_turn) shorter();
    while (fit_cubic(points, count, usual, end) > most_miss_px && count > least_window) shorter();
}

// The value of `rank` (from 0) among n of at most `window`, by how many are smaller than each: no step of it depends on
// the values, which processors like better than sorting so few.
KEMPT_TWICE float ranked(const float* values, int n, int rank) {
    constexpr float beyond = std::numeric_limits<float>::infinity();
    alignas(32) float v[window];
    alignas(32) int smaller[window] = {};
    const int whole = (n + 7) / 8 * 8;
    for (int i = 0; i < whole; ++i) v[i] = i < n ? values[i] : beyond;
    for (int block = 0; block < whole; block += 8)
        for (int k = 0; k < n; ++k) {
            const float one = v[k];
            for (int i = block; i < block + 8; ++i) smaller[i] += one < v[i];
        }
    float out = -beyond;
    for (int i = 0; i < whole; ++i) out = smaller[i] <= rank && out < v[i] ? v[i] : out;
    return out;
}

// Median over the last piece, and how far noise may have moved it: neighbours share theirs, so that a third counts.
void see_tone(const std::vector<float>& strength, LineEnd& end) {
    float own[window];
    int n = 0;
    for (size_t i = 0; i < std::min<size_t>(window, strength.size()); ++i)
        if (strength[i] > 0) own[n++] = strength[i];
    if (n < 4) return;
    const float median = ranked(own, n, n / 2);
    for (float* v = own; v != own + n; ++v) *v = std::abs(*v - median);
    end.tone = std::log(median);
    // 1.4826: of a normal value's median deviation; 1.2533: a median's SD against a mean's.
    end.tone_sd = 1.4826f * 1.2533f * ranked(own, n, n / 2) / median * std::sqrt(3.f / static_cast<float>(n));
}

std::vector<float> last_strengths(const Line& line, bool last, std::ptrdiff_t most) {
    const auto n = std::min(most, static_cast<std::ptrdiff_t>(line.strength.size()));
    if (last) return {line.strength.rbegin(), line.strength.rbegin() + n};
    return {line.strength.begin(), line.strength.begin() + n};
}

std::vector<cv::Point2f> last_points(const Line& line, bool last, std::ptrdiff_t most) {
    const auto n = std::min(most, static_cast<std::ptrdiff_t>(line.at.size()));
    if (last) return {line.at.rbegin(), line.at.rbegin() + n};
    return {line.at.begin(), line.at.begin() + n};
}

Bends bends_of_cubics(const std::vector<Line>& lines) {
    struct Squares {
        float curvature = 0, change = 0;
        bool told = false, long_enough = false;
    };
    std::vector<Squares> of(lines.size());
    cv::parallel_for_(cv::Range(0, static_cast<int>(lines.size())), [&](const cv::Range& range) {
        for (size_t l = static_cast<size_t>(range.start); l < static_cast<size_t>(range.end); ++l) {
            const Line& line = lines[l];
            if (line.noise || line.at.size() < 26) continue;
            LineEnd probe;
            fit_end(last_points(line, true, window), {0.05f, 0.002f}, probe);
            const auto true_square = [](float value, float sd, float most) {
                return std::min(most * most, std::max(0.f, value * value - sd * sd));
            };
            of[l] = {true_square(probe.curvature, probe.curvature_sd, 0.06f),
                     true_square(probe.change, probe.change_sd, 0.002f), true, line.at.size() >= window};
        }
    });
    double curvature = 0, change = 0, n = 0, changes = 0;
    for (const Squares& one : of) {
        if (one.told) curvature += one.curvature, n += 1;
        if (one.long_enough) change += one.change, changes += 1;
    }
    // Not below the bend of straight hair (a radius of 17 cm at 12 px/mm), which changes over some 30 mm.
    Bends out;
    out.curvature = std::max(0.0005f, static_cast<float>(n > 0 ? std::sqrt(curvature / n) : 0.01));
    out.change = std::max(5e-6f, static_cast<float>(changes > 2 ? std::sqrt(change / changes) : 0.02 * out.curvature));
    return out;
}

// Where strands coil, a stretch that turns by `most_turn` is so short that a cubic over it tells neither its curvature
// from noise nor how that changes, and both come out far too small. Two arcs one after the other tell both. Nothing:
// fewer than half of the lines bend that much.
std::optional<Bends> bends_of_coils(const std::vector<Line>& lines) {
    struct Squares {
        double curvature = 0, change = 0;
        bool told = false, turns = false;
    };
    std::vector<Squares> of(lines.size());
    cv::parallel_for_(cv::Range(0, static_cast<int>(lines.size())), [&](const cv::Range& range) {
        for (size_t l = static_cast<size_t>(range.start); l < static_cast<size_t>(range.end); ++l) {
            const Line& line = lines[l];
            if (line.noise || line.at.size() < 2 * least_arc) continue;
            const std::vector<cv::Point2f> points = last_points(line, true, 2 * window);
            const size_t most = points.size() / 2;
            size_t count = most;
            while (count > least_arc && turn_over(points, count) > most_turn)
                count = std::max(least_arc, count * 4 / 5);
            if (count == most && most < least_straight) continue;
            of[l].told = true;
            of[l].turns = count < most;
            if (!of[l].turns) continue;
            constexpr Bends any{1.f, 1e-9f};  // every curvature is as likely, and none changes
            const std::vector<cv::Point2f> behind(points.begin() + static_cast<std::ptrdiff_t>(count), points.end());
            LineEnd a, b;
            const double missed = 0.5 * (fit_cubic(points, count, any, a) + fit_cubic(behind, count, any, b));
            // The points' own noise is what the arcs miss; `point_sd` is what the fit was told.
            const double share = std::pow(missed / point_sd, 2), steps = static_cast<double>(count),
                         change = (a.curvature - b.curvature) / steps,
                         noise = 0.5 * share * (std::pow(a.curvature_sd, 2) + std::pow(b.curvature_sd, 2));
            of[l].curvature = std::max(0.0, 0.5 * (std::pow(a.curvature, 2) + std::pow(b.curvature, 2)) - noise);
            of[l].change = std::max(0.0, change * change - 2 * noise / (steps * steps));
        }
    });
    std::vector<double> curvatures, changes;
    size_t told = 0;
    for (const Squares& one : of) {
        told += one.told;
        if (one.turns) curvatures.push_back(one.curvature), changes.push_back(one.change);
    }
    if (curvatures.size() < 3 || 2 * curvatures.size() < told) return {};
    // 68 % of normal values lie within their SD, and what is no strand's bend hardly moves that.
    const auto usual = [](std::vector<double>& squares) {
        return static_cast<float>(std::sqrt(at_rank(squares, 0.68)));
    };
    return Bends{usual(curvatures), usual(changes)};
}

}  // namespace

Bends usual_bends(const std::vector<Line>& lines) {
    Bends out = bends_of_cubics(lines);
    if (const auto coils = bends_of_coils(lines)) {
        out.curvature = std::max(out.curvature, coils->curvature);
        out.change = std::max(out.change, coils->change);
    }
    return out;
}

double tone_cost(const LineEnd& e, const LineEnd& f) {
    // Where one is dark and the other mirrors the light, or a way was only followed, the darkness alone tells, badly.
    if (e.sign != f.sign || e.tone_sd < 0 || f.tone_sd < 0) {
        const double off = std::log(static_cast<double>(e.peak) / f.peak) / peak_sd;
        return 0.5 * std::min(16.0, off * off);
    }
    const double off = e.tone - f.tone, variance = tone_sd * tone_sd + e.tone_sd * e.tone_sd + f.tone_sd * f.tone_sd;
    return 0.5 * std::min(16.0, off * off / variance);
}

LineEnd end_of(const std::vector<cv::Point2f>& inward, const std::vector<float>& strength, const Bends& usual,
               const Darkness& darkness) {
    LineEnd end;
    see_tone(strength, end);
    const std::span<const cv::Point2f> p(inward.data(), std::min<size_t>(window, inward.size()));
    fit_end(p, usual, end);
    end.usual = usual.curvature;
    end.usual_change = usual.change;
    float dark[12];
    const size_t n = std::min(std::size(dark), p.size());
    for (size_t i = 0; i < n; ++i) dark[i] = darkness.at(p[i].x, p[i].y);
    const float usual_dark = ranked(dark, static_cast<int>(n), static_cast<int>(n / 2));
    end.sign = usual_dark < 0 ? -1.f : 1.f;
    end.peak = std::max(0.01f, std::abs(usual_dark));
    for (int i = 2; i <= 5; ++i) {
        const cv::Point2f q = end.at + end.ahead * static_cast<float>(i);
        end.ahead_dark += std::clamp(end.sign * darkness.at(q.x, q.y) / (0.6f * end.peak), 0.f, 1.f) / 4;
    }
    return end;
}

std::vector<LineEnd> ends_of(const std::vector<Line>& lines, const Darkness& darkness) {
    std::vector<LineEnd> ends(2 * lines.size());
    const Bends usual = usual_bends(lines);
    cv::parallel_for_(cv::Range(0, static_cast<int>(ends.size())), [&](const cv::Range& range) {
        for (size_t e = static_cast<size_t>(range.start); e < static_cast<size_t>(range.end); ++e) {
            const bool last = e % 2 == 1;
            ends[e] = end_of(last_points(lines[e / 2], last, window), last_strengths(lines[e / 2], last, window), usual,
                             darkness);
            ends[e].line = static_cast<int>(e / 2);
            ends[e].last = e % 2 == 1;
            ends[e].length = static_cast<float>(lines[e / 2].at.size());
        }
    });
    return ends;
}

std::vector<cv::Point2f> bridge(const LineEnd& from, const LineEnd& to) {
    const float gap = static_cast<float>(cv::norm(to.at - from.at));
    const int n = std::max(0, static_cast<int>(std::lround(gap)) - 1);
    std::vector<cv::Point2f> path;
    path.reserve(static_cast<size_t>(n));
    for (int i = 1; i <= n; ++i) {
        const float t = static_cast<float>(i) / static_cast<float>(n + 1), s = 1 - t;
        const float h0 = s * s * (1 + 2 * t), h1 = t * t * (1 + 2 * s), g0 = s * s * t, g1 = t * t * s;
        path.push_back(from.at * h0 + to.at * h1 + (from.ahead * g0 + to.ahead * g1) * gap);
    }
    return path;
}

}  // namespace kempt::combings
