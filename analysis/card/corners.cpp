#include "card/corners.h"

#include <opencv2/imgproc.hpp>

namespace kempt::card {
namespace {

constexpr int profiles_per_edge = 28;
constexpr double keep_from_corner =
    0.10;                             // of the side: blur rounds the corners off, points there lie inside the square
constexpr double least_share = 0.45;  // of the profiles must show the edge, else it counts as hidden
constexpr int green = 1;              // sharpest and least noisy channel of a Bayer sensor

struct Line {
    cv::Point2d through, along;
};

// Where a profile from black (start) to white (end) passes half way, as a share of its length.
std::optional<double> half_way(const std::vector<float>& profile) {
    const size_t n = profile.size(), end = std::max<size_t>(2, n / 5);
    double black = 0, white = 0;
    for (size_t i = 0; i < end; ++i) {
        black += profile[i] / double(end);
        white += profile[n - 1 - i] / double(end);
    }
    // Black ink shows at most a third of the paper's light, lifted shadows included (paper 0.9, ink 0.05, glare).
    if (!(white > 1.6 * black) || white - black < 0.004) return std::nullopt;
    const double half = (black + white) / 2;
    double best = -1, best_off = 1e9;
    for (size_t i = 1; i < n; ++i) {
        if (!(profile[i - 1] < half && profile[i] >= half)) continue;
        const double at = double(i - 1) + (half - profile[i - 1]) / (double(profile[i]) - profile[i - 1]);
        const double off = std::abs(at - double(n - 1) / 2);
        if (off < best_off) best = at, best_off = off;
    }
    if (best < 0) return std::nullopt;
    return best / double(n - 1);
}

std::optional<Line> fit_edge(const Sampler& light, cv::Point2d a, cv::Point2d b, cv::Point2d outward, double reach) {
    const cv::Point2d along = b - a;
    const double step = std::max(0.5, reach / 24);
    const int samples = std::max(7, 2 * cvRound(reach / step) + 1);
    const double apart = cv::norm(along) / profiles_per_edge;
    const cv::Point2d sideways = along / cv::norm(along) * std::min(1.0, apart / 3);
    std::vector<cv::Point2f> points;
    std::vector<float> profile(static_cast<size_t>(samples));
    for (int i = 0; i < profiles_per_edge; ++i) {
        const double t = keep_from_corner + (1 - 2 * keep_from_corner) * (i + 0.5) / profiles_per_edge;
        const cv::Point2d middle = a + along * t;
        bool inside = true;
        for (int k = 0; k < samples && inside; ++k) {
            const cv::Point2d p = middle + outward * (reach * (2.0 * k / (samples - 1) - 1));
            inside = light.inside(p - sideways) && light.inside(p + sideways);
            if (inside)
                profile[static_cast<size_t>(k)] =
                    (light.at(p - sideways, green) + light.at(p, green) + light.at(p + sideways, green)) / 3;
        }
        if (!inside) continue;
        if (const auto at = half_way(profile)) points.push_back(middle + outward * (reach * (2 * *at - 1)));
    }
    if (double(points.size()) < least_share * profiles_per_edge) return std::nullopt;
    cv::Vec4f line;
    // Huber, not least squares: single profiles cross hairs, dust and shadow edges.
    cv::fitLine(points, line, cv::DIST_HUBER, 0, 0.01, 0.001);
    return Line{{line[2], line[3]}, {line[0], line[1]}};
}

std::optional<cv::Point2d> meet(const Line& one, const Line& two) {
    const double cross = one.along.cross(two.along);
    if (std::abs(cross) < 0.2) return std::nullopt;  // a square tilted to 35 degrees keeps its angles above 50 degrees
    return one.through + one.along * ((two.through - one.through).cross(two.along) / cross);
}

std::optional<Marker> pass(const Sampler& light, const Marker& rough, double reach_cells) {
    const auto& c = rough.corners;
    const cv::Point2d centre = (c[0] + c[1] + c[2] + c[3]) / 4;
    std::array<Line, 4> lines;
    for (size_t k = 0; k < 4; ++k) {
        const cv::Point2d a = c[k], b = c[(k + 1) % 4], d = b - a;
        const double length = cv::norm(d);
        if (length < 6) return std::nullopt;
        cv::Point2d outward(d.y / length, -d.x / length);
        if (outward.dot((a + b) / 2 - centre) < 0) outward = -outward;
        // Cells as deep as the square is across this edge.
        const double depth = std::abs(((c[(k + 2) % 4] + c[(k + 3) % 4]) / 2 - (a + b) / 2).dot(outward));
        const auto line = fit_edge(light, a, b, outward, reach_cells * depth / 6);
        if (!line) return std::nullopt;
        lines[k] = *line;
    }
    Marker fine{.id = rough.id, .corners = {}};
    for (size_t k = 0; k < 4; ++k) {
        const auto corner = meet(lines[(k + 3) % 4], lines[k]);
        if (!corner || cv::norm(*corner - c[k]) > 0.35 * cv::norm(c[0] - c[2])) return std::nullopt;
        fine.corners[k] = *corner;
    }
    return fine;
}

}  // namespace

std::optional<Marker> refine(const Sampler& light, const Marker& rough) {
    // 0.9 of a cell reaches to the inner end of the black border, wide enough for corners found in a reduced picture.
    const auto first = pass(light, rough, 0.9);
    return first ? pass(light, *first, 0.75) : std::nullopt;
}

}  // namespace kempt::card
