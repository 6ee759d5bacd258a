#include "combings/smooth.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace kempt::combings {

std::vector<cv::Point2d> smoothed(const std::vector<cv::Point2f>& path, int half, double step) {
    const int n = static_cast<int>(path.size());
    std::vector<cv::Point2d> out;
    if (n < 2) return out;
    const int parts = std::max(1, static_cast<int>(std::lround((n - 1) / step)));
    for (int k = 0; k <= parts; ++k) {
        const double at = static_cast<double>(k) * (n - 1) / parts;
        const int middle = static_cast<int>(std::lround(at)), w = std::min(half, (n - 1) / 2);
        const int from = std::clamp(middle - w, 0, n - 1 - 2 * w), to = from + 2 * w;
        // Least squares of a + b u + c u^2 over u = i - at, of x and y alike; wanted is a.
        double s0 = 0, s1 = 0, s2 = 0, s3 = 0, s4 = 0;
        cv::Point2d r0(0, 0), r1(0, 0), r2(0, 0);
        for (int i = from; i <= to; ++i) {
            const double u = i - at;
            const cv::Point2d p = path[static_cast<size_t>(i)];
            s0 += 1, s1 += u, s2 += u * u, s3 += u * u * u, s4 += u * u * u * u;
            r0 += p, r1 += u * p, r2 += u * u * p;
        }
        const double det = s0 * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s2 * s3) + s2 * (s1 * s3 - s2 * s2);
        if (w < 2 || std::abs(det) < 1e-9)
            out.push_back(r0 * (1 / s0) - (s1 / s0) * ((s0 * r1 - s1 * r0) * (1 / std::max(1e-9, s0 * s2 - s1 * s1))));
        else
            out.push_back((r0 * (s2 * s4 - s3 * s3) - r1 * (s1 * s4 - s2 * s3) + r2 * (s1 * s3 - s2 * s2)) * (1 / det));
    }
    return out;
}

std::vector<cv::Point2d> thinned(const std::vector<cv::Point2d>& path, double miss) {
    if (path.size() < 3) return path;
    std::vector<char> keep(path.size(), 0);
    keep.front() = keep.back() = 1;
    std::vector<std::pair<size_t, size_t>> open{{0, path.size() - 1}};
    while (!open.empty()) {
        const auto [from, to] = open.back();
        open.pop_back();
        const cv::Point2d a = path[from], d = path[to] - a;
        const double square = std::max(1e-12, d.dot(d));
        double most = miss * miss;
        size_t at = from;
        for (size_t i = from + 1; i < to; ++i) {
            const cv::Point2d w = path[i] - a, off = w - std::clamp(w.dot(d) / square, 0.0, 1.0) * d;
            if (off.dot(off) > most) most = off.dot(off), at = i;
        }
        if (at == from) continue;
        keep[at] = 1;
        open.push_back({from, at}), open.push_back({at, to});
    }
    std::vector<cv::Point2d> out;
    for (size_t i = 0; i < path.size(); ++i)
        if (keep[i]) out.push_back(path[i]);
    return out;
}

double length_of(const std::vector<cv::Point2d>& path) {
    double sum = 0;
    for (size_t i = 1; i < path.size(); ++i) sum += cv::norm(path[i] - path[i - 1]);
    return sum;
}

double arc_length(const std::vector<cv::Point2d>& path) {
    const double fine = length_of(path);
    if (path.size() < 5) return fine;
    std::vector<cv::Point2d> other;
    for (size_t i = 0; i < path.size(); i += 2) other.push_back(path[i]);
    double tail = 0;
    if (path.size() % 2 == 0) tail = cv::norm(path.back() - path[path.size() - 2]);
    return fine + (fine - tail - length_of(other)) / 3;
}

}  // namespace kempt::combings
