#include "card/sharpness.h"

namespace kempt::card {
namespace {

constexpr int green = 1;
constexpr size_t pixels_wanted = 2500;  // per edge: about 20 for each bin at 12 px/mm
constexpr double least_contrast = 0.02;

// Mean light by bin; a bin without a pixel (an edge that runs along the pixel grid leaves many) lies on the line
// between its neighbours. Empty when there is less than one pixel for every four bins.
std::optional<std::vector<double>> levels_of(const std::vector<double>& sum, const std::vector<double>& count) {
    std::vector<size_t> filled;
    for (size_t i = 0; i < sum.size(); ++i)
        if (count[i] > 0) filled.push_back(i);
    if (4 * filled.size() < sum.size()) return std::nullopt;
    const auto mean = [&](size_t i) { return sum[i] / count[i]; };
    std::vector<double> level(sum.size());
    for (size_t i = 0, next = 0; i < level.size(); ++i) {
        while (next < filled.size() && filled[next] < i) ++next;
        if (next == 0 || next == filled.size()) {
            level[i] = mean(filled[std::min(next, filled.size() - 1)]);
            continue;
        }
        const size_t left = filled[next - 1], right = filled[next];
        const double share = double(i - left) / double(right - left);
        level[i] = (1 - share) * mean(left) + share * mean(right);
    }
    return level;
}

// Rise of one edge, from cloud of (distance outward in mm, light). Empty when the edge cannot be seen.
std::optional<double> rise_of(const std::vector<cv::Point2f>& cloud, double reach, double bin) {
    const auto bins = static_cast<size_t>(2 * reach / bin);
    if (bins < 12 || cloud.size() < 4 * bins) return std::nullopt;
    std::vector<double> sum(bins, 0), count(bins, 0);
    for (const cv::Point2f& p : cloud) {
        const double at = (p.x + reach) / bin;
        if (at < 0 || at >= double(bins)) continue;
        sum[static_cast<size_t>(at)] += p.y;
        count[static_cast<size_t>(at)] += 1;
    }
    const std::optional<std::vector<double>> levels = levels_of(sum, count);
    if (!levels) return std::nullopt;
    const std::vector<double>& level = *levels;
    const size_t plateau = std::max<size_t>(2, bins / 6);
    double black = 0, white = 0;
    for (size_t i = 0; i < plateau; ++i)
        black += level[i] / double(plateau), white += level[bins - 1 - i] / double(plateau);
    if (white - black < least_contrast || white < 2 * black) return std::nullopt;
    // From the middle outward to the first crossing on each side.
    const auto crossing = [&](double share) {
        const double wanted = black + share * (white - black);
        size_t middle = bins / 2;
        double nearest = 1e9;
        for (size_t i = 1; i < bins; ++i) {
            const double half = (black + white) / 2;
            if (level[i - 1] < half && level[i] >= half && std::abs(double(i) - double(bins) / 2) < nearest)
                middle = i, nearest = std::abs(double(i) - double(bins) / 2);
        }
        if (share < 0.5)
            for (size_t i = middle; i > 0; --i)
                if (level[i - 1] <= wanted)
                    return double(i - 1) + (wanted - level[i - 1]) / std::max(level[i] - level[i - 1], 1e-9);
        if (share > 0.5)
            for (size_t i = middle; i < bins; ++i)
                if (level[i] >= wanted)
                    return double(i - 1) + (wanted - level[i - 1]) / std::max(level[i] - level[i - 1], 1e-9);
        return share < 0.5 ? 0.0 : double(bins - 1);
    };
    return (crossing(0.9) - crossing(0.1)) * bin;
}

}  // namespace

double edge_rise_mm(const Sampler& light, const std::function<float(float)>& true_light,
                    const std::vector<Marker>& markers, const Layout& layout, const Plane& plane) {
    const cv::Matx33d mm_from_px = plane.px_from_mm.inv();
    // Inward the border is one cell deep (1.67 mm on the card); outward the quiet zone is wider than that.
    const double reach = 0.75 * layout.side_mm / 6, bin = 0.35 / plane.px_per_mm;
    std::array<double, 2> total{}, edges{};
    for (const Marker& marker : markers) {
        const auto corners = layout.corners_mm(static_cast<size_t>(marker.id - layout.first_id), plane.edge_shift_mm);
        for (size_t k = 0; k < 4; ++k) {
            const cv::Point2d a = corners[k], b = corners[(k + 1) % 4], along = (b - a) / cv::norm(b - a);
            const cv::Point2d outward(along.y, -along.x);  // clockwise corners with y down
            const cv::Point2d from = a + along * 2, to = b - along * 2;
            std::vector<cv::Point2f> strip;
            for (const cv::Point2d& p :
                 {from - outward * reach, to - outward * reach, to + outward * reach, from + outward * reach})
                strip.push_back(apply(plane.px_from_mm, p));
            const cv::Rect box = cv::boundingRect(strip) & cv::Rect(1, 1, light.cols() - 2, light.rows() - 2);
            if (box.empty()) continue;
            const double area = 2 * reach * cv::norm(to - from) * plane.px_per_mm * plane.px_per_mm;
            // Every n-th row and column with odd steps, so that all distances from a slanted edge still occur.
            const int step = std::max(1, static_cast<int>(std::sqrt(area / double(pixels_wanted))));
            std::vector<cv::Point2f> cloud;
            for (int y = box.y; y < box.br().y; y += step)
                for (int x = box.x + (y / step) % step; x < box.br().x; x += step) {
                    const cv::Point2d mm = apply(mm_from_px, {double(x), double(y)}) - from;
                    const double distance = mm.dot(outward), place = mm.dot(along);
                    if (std::abs(distance) >= reach || place < 0 || place > cv::norm(to - from)) continue;
                    cloud.emplace_back(static_cast<float>(distance), true_light(light.pixel(x, y, green)));
                }
            if (const auto rise = rise_of(cloud, reach, bin)) total[k % 2] += *rise, edges[k % 2] += 1;
        }
    }
    double largest = 0;
    for (size_t i = 0; i < 2; ++i)
        if (edges[i] > 0) largest = std::max(largest, total[i] / edges[i]);
    return largest;
}

}  // namespace kempt::card
