// Measures photos on threads of its own; knows no book.
#pragma once

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <deque>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "work/measure_photo.h"

namespace kempt::work {

// Used by one thread. The destructor stops what is being measured and waits for it.
class MeasurePool {
  public:
    explicit MeasurePool(int threads);
    ~MeasurePool();
    MeasurePool(const MeasurePool&) = delete;
    MeasurePool& operator=(const MeasurePool&) = delete;

    // Cores that this process may use.
    [[nodiscard]] static int cores();

    void add(QByteArray bytes, Marks marks, MeasureOptions how);
    // Photos that still hold their bytes or pixels: waiting or being measured.
    [[nodiscard]] int unfinished() const;
    // Sum of the fractions (0..1) of the pending photos.
    [[nodiscard]] double fractions() const;
    // The result of the photo that was added first, or nothing if it is not there by then.
    [[nodiscard]] std::optional<Result<MeasureResult>> take(std::chrono::milliseconds within);

  private:
    struct Work {
        QByteArray bytes;
        Marks marks;
        MeasureOptions how;
        std::atomic<double> fraction{0};
        std::optional<Result<MeasureResult>> result;
        bool begun = false;
    };
    void run(const std::stop_token& stop);
    void measure(Work& work, const std::stop_token& stop);

    mutable std::mutex mutex_;
    std::condition_variable_any added_;
    std::condition_variable finished_;
    std::deque<std::shared_ptr<Work>> work_;  // in the order in which it was added
    int threads_before_;                      // of OpenCV inside one measurement
    std::vector<std::jthread> threads_;       // last: they end before the rest goes
};

}  // namespace kempt::work
