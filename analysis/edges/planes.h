// Pictures of many channels as convolve.h wants them: rows of planes with margins of zeros.
#pragma once

#include <algorithm>
#include <opencv2/core.hpp>
#include <vector>

#include "edges/convolve.h"

namespace kempt::edges {

// Of a row whose cells are still to be written.
inline void clear_margins(float* row, int channels, int cells) {
    const std::ptrdiff_t step = channel_step_of(cells);
    for (int c = 0; c < channels; ++c, row += step) {
        std::fill(row, row + row_margin, 0.f);
        std::fill(row + row_margin + cells, row + step, 0.f);
    }
    std::fill(row, row + 2 * row_margin, 0.f);
}

// A whole picture. Rows outside it are zeros, as the network was trained.
class Planes {
  public:
    void shape(int channels, int rows, int cells) {
        if (channels == channels_ && rows == rows_ && cells == cells_) return;
        channels_ = channels, rows_ = rows, cells_ = cells;
        step_ = channel_step_of(cells);
        data_.create(rows + 1, static_cast<int>(channels * step_) + 2 * row_margin, CV_32F);
        for (int y = 0; y < rows; ++y) clear_margins(data_.ptr<float>(y), channels, cells);
        data_.row(rows) = 0;
    }
    [[nodiscard]] int rows() const { return rows_; }
    [[nodiscard]] int cells() const { return cells_; }
    [[nodiscard]] int channels() const { return channels_; }
    [[nodiscard]] std::ptrdiff_t step() const { return step_; }
    // Cell 0 of channel 0.
    [[nodiscard]] const float* row(int y) const {
        return data_.ptr<float>(y >= 0 && y < rows_ ? y : rows_) + row_margin;  // the last one stays zeros
    }
    // nullptr outside.
    [[nodiscard]] float* own_row(int y) { return y >= 0 && y < rows_ ? data_.ptr<float>(y) + row_margin : nullptr; }

  private:
    cv::Mat data_;
    int channels_ = 0, rows_ = 0, cells_ = 0;
    std::ptrdiff_t step_ = 0;
};

// A thread's own memory, handed out in pieces; one user at a time.
class Bench {
  public:
    Bench() { used_ = 0; }
    [[nodiscard]] float* take(std::ptrdiff_t floats) {
        auto& all = memory();
        CV_Assert(used_ + static_cast<size_t>(floats) <= all.size());
        float* piece = all.data() + used_;
        used_ += static_cast<size_t>(floats);
        return piece;
    }
    // Before the first take().
    static void reserve(std::ptrdiff_t floats) {
        if (memory().size() < static_cast<size_t>(floats)) memory().resize(static_cast<size_t>(floats));
    }

  private:
    static std::vector<float>& memory() {
        static thread_local std::vector<float> all;
        return all;
    }
    size_t used_ = 0;
};

// Some rows on a bench, margins cleared.
struct Strip {
    Strip(float* memory, int channels, int rows, int cells)
        : first(memory + row_margin), step(channel_step_of(cells)), per_row(channels * step + 2 * row_margin) {
        for (int y = 0; y < rows; ++y) clear_margins(memory + y * per_row, channels, cells);
    }
    static std::ptrdiff_t floats(int channels, int rows, int cells) {
        return rows * (channels * channel_step_of(cells) + 2 * row_margin);
    }
    [[nodiscard]] float* row(int y) const { return first + y * per_row; }
    float* first;
    std::ptrdiff_t step, per_row;
};

}  // namespace kempt::edges
