#include "shine/profile_luster.h"

#include <algorithm>
#include <numeric>

namespace kempt::shine {

CurveLuster luster_of(const std::vector<double>& curve, double step) {
    CurveLuster out;
    if (curve.size() < 3 || !(step > 0)) return out;
    const size_t last = curve.size() - 1;
    const double first = curve.front(), rise = (curve.back() - curve.front()) / static_cast<double>(last);
    out.whole = step * (std::accumulate(curve.begin(), curve.end(), 0.0) - 0.5 * (curve.front() + curve.back()));
    out.line = 0.5 * step * static_cast<double>(last) * (curve.front() + curve.back());
    const auto over = [&](size_t i) { return curve[i] - first - rise * static_cast<double>(i); };
    size_t top = 0;
    for (size_t i = 1; i <= last; ++i)
        if (over(i) > over(top)) top = i;
    out.peak = over(top);
    out.peak_at = step * static_cast<double>(top);
    if (!(out.peak > 0) || !(out.whole > 0)) return out;
    const double half = 0.5 * out.peak;
    // Where the curve crosses half height between sample `in` (above) and `beyond` (at or below), in steps from `in`.
    const auto share = [&](size_t in, size_t beyond) { return (over(in) - half) / (over(in) - over(beyond)); };
    size_t left = top, right = top;
    while (left > 0 && over(left) > half) --left;
    while (right < last && over(right) > half) ++right;
    const double from = over(left) > half ? 0 : static_cast<double>(left + 1) - share(left + 1, left);
    const double to =
        over(right) > half ? static_cast<double>(last) : static_cast<double>(right - 1) + share(right - 1, right);
    out.width = step * (to - from);
    out.stamm = (out.whole - out.line) / out.whole;
    const double excess = out.whole - out.line;
    if (excess > 0) out.stamm_excess = (excess - out.line) / excess;
    if (out.line > 0 && out.width > 0) {
        out.luster = out.whole / (out.line * out.width);
        out.luster_excess = excess / (out.line * out.width);
    }
    return out;
}

}  // namespace kempt::shine
