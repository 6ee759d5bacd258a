#include "intake/upright.h"

namespace kempt::intake {
namespace {

struct Turn {
    bool transpose, from_far_end;  // of the axis along which rows are counted
    int flip;                      // as cv::flip takes it; 2: none
};

Turn turn_for(int orientation) {
    switch (orientation) {
        case 2:
            return {false, false, 1};
        case 3:
            return {false, true, -1};
        case 4:
            return {false, true, 0};
        case 5:
            return {true, false, 2};
        case 6:
            return {true, true, 1};
        case 7:
            return {true, true, -1};
        case 8:
            return {true, false, 0};
        default:
            return {false, false, 2};
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
    if (turn.transpose)
        cv::transpose(strip, place);
    else if (turn.flip == 2)
        strip.copyTo(place);
    if (turn.flip != 2) cv::flip(turn.transpose ? place : strip, place, turn.flip);
}

cv::Mat turned_upright(const cv::Mat& stored, int orientation) {
    if (orientation < 2 || orientation > 8) return stored;
    const QSize size(stored.cols, stored.rows);
    const QSize wanted = upright_size(size, orientation);
    cv::Mat upright(wanted.height(), wanted.width(), stored.type());
    lay_strip(stored, 0, size, orientation, upright);
    return upright;
}

}  // namespace kempt::intake
