#include "intake/upright.h"

#include <algorithm>

namespace kempt::intake {
namespace {

constexpr int none = 2;  // beside the codes of cv::flip: 0 upside down, 1 mirrored, -1 both

struct Turn {
    int flip;                      // of the stored picture, before it is transposed
    bool transpose, from_far_end;  // of the axis along which stored rows are counted
};

Turn turn_for(int orientation) {
    switch (orientation) {
        case 2:
            return {1, false, false};
        case 3:
            return {-1, false, true};
        case 4:
            return {0, false, true};
        case 5:
            return {none, true, false};
        case 6:
            return {0, true, true};
        case 7:
            return {-1, true, true};
        case 8:
            return {1, true, false};
        default:
            return {none, false, false};
    }
}

}  // namespace

QSize upright_size(QSize stored, int orientation) {
    return turn_for(orientation).transpose ? stored.transposed() : stored;
}

void lay_strip(const cv::Mat& strip, int first_row, QSize stored, int orientation, cv::Mat& upright) {
    const Turn turn = turn_for(orientation);
    const int start = turn.from_far_end ? stored.height() - first_row - strip.rows : first_row;
    cv::Mat place =
        turn.transpose ? upright.colRange(start, start + strip.rows) : upright.rowRange(start, start + strip.rows);
    if (!turn.transpose) {
        if (turn.flip == none)
            strip.copyTo(place);
        else
            cv::flip(strip, place, turn.flip);
        return;
    }
    // Flipped first, while the strip is in the cache: in the upright picture it lies scattered.
    cv::Mat flipped;
    if (turn.flip != none) cv::flip(strip, flipped, turn.flip);
    cv::transpose(turn.flip == none ? strip : flipped, place);
}

cv::Mat turned_upright(const cv::Mat& stored, int orientation) {
    if (orientation < 2 || orientation > 8) return stored;
    const QSize size(stored.cols, stored.rows);
    const QSize wanted = upright_size(size, orientation);
    cv::Mat upright(wanted.height(), wanted.width(), stored.type());
    for (int first = 0; first < stored.rows; first += strip_rows)
        lay_strip(stored.rowRange(first, std::min(first + strip_rows, stored.rows)), first, size, orientation, upright);
    return upright;
}

}  // namespace kempt::intake
