#include "tone/lane_rows.h"

#include <algorithm>
#include <cmath>

namespace kempt::tone {
namespace {

// A row needs this share of its cells inside the photo and beside the card; above the other shares it is burnt or
// black.
constexpr double least_seen = 0.6, most_burnt = 0.1, most_black = 0.5;
// The first millimetre touches the scalp, the last two the thinning ends.
constexpr double scalp_mm = 1, tips_mm = 2;

using States = std::array<double, Lane::states>;

StripRow strips_of(const Lane& lane, int from, int to, States& states) {
    StripRow out;
    for (int r = from; r < to; ++r) {
        const cv::Vec3f* light = lane.light.ptr<cv::Vec3f>(r);
        const uchar* state = lane.state.ptr<uchar>(r);
        for (int c = 0; c < lane.light.cols; ++c) {
            ++states[state[c]];
            if (state[c] == Lane::outside || state[c] == Lane::under_card) continue;
            const size_t strip = static_cast<size_t>(c) * StripRow::strips / static_cast<size_t>(lane.light.cols);
            out.light[strip] += cv::Vec3d(light[c]);
            ++out.cells[strip];
        }
    }
    return out;
}

// Whether the row is lost, and to what.
bool is_lost(const States& states, double all, double seen, Lost& lost) {
    ++lost.all;
    if (seen < least_seen * all)
        ++(states[Lane::under_card] > states[Lane::outside] ? lost.under_card : lost.outside);
    else if (states[Lane::burnt] > most_burnt * std::max(seen, 1.0))
        ++lost.burnt;
    else if (states[Lane::black] > most_black * std::max(seen, 1.0))
        ++lost.black;
    else
        return false;
    return true;
}

}  // namespace

LaneRows rows_of(const Lane& lane, double step_mm) {
    LaneRows out;
    out.rows.length_mm = lane.length_mm;
    const int count = static_cast<int>(std::floor(lane.length_mm / step_mm));
    for (int i = 0; i < count; ++i) {
        const int from = cvRound(i * step_mm * lane.rows_per_mm),
                  to = std::min(lane.light.rows, std::max(from + 1, cvRound((i + 1) * step_mm * lane.rows_per_mm)));
        States states{};
        const StripRow strips = strips_of(lane, from, to, states);
        double all = 0, seen = 0;
        for (const double n : states) all += n;
        cv::Vec3d sum;
        for (size_t k = 0; k < StripRow::strips; ++k) {
            sum += strips.light[k];
            seen += strips.cells[k];
        }
        const bool lost = is_lost(states, all, seen, out.lost);
        sum *= 1 / std::max(seen, 1.0);
        const double at = (i + 0.5) * step_mm;
        out.rows.at_mm.push_back(at);
        out.rows.light.push_back(sum);
        out.rows.lab.push_back(lab_point(sum).value);
        out.rows.usable.push_back(!lost && at >= scalp_mm && at <= lane.length_mm - tips_mm);
        out.strips.push_back(strips);
    }
    return out;
}

}  // namespace kempt::tone
