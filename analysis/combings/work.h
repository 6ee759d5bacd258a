// How much work a photo may cost, whatever lies on it, and whether somebody stopped it meanwhile.
#pragma once

#include <atomic>
#include <cstdint>

#include "core/progress.h"

namespace kempt::combings {

class Work {
  public:
    // limit: steps of an inner loop, each some tens of nanoseconds.
    Work(const Progress& progress, int64_t limit) : progress_(progress), limit_(limit) {}
    // Counts steps; false: leave off, what was found so far will not be used. Asks for a stop now and then, on the
    // thread that began. Loops on other threads call spend().
    bool go(int64_t steps = 1) {
        const int64_t now = spend(steps);
        if (now - asked_ >= ask_every) {
            asked_ = now;
            if (tell(progress_, fraction_, step_) == Go::stop) stopped_ = true;
        }
        return ok();
    }
    int64_t spend(int64_t steps) { return spent_.fetch_add(steps, std::memory_order_relaxed) + steps; }
    bool begin(double fraction, std::string_view step) {
        fraction_ = fraction, step_ = step;
        if (tell(progress_, fraction, step) == Go::stop) stopped_ = true;
        return ok();
    }
    [[nodiscard]] bool stopped() const { return stopped_; }
    [[nodiscard]] bool ok() const { return !stopped_ && spent_.load(std::memory_order_relaxed) <= limit_; }
    [[nodiscard]] int64_t spent() const { return spent_.load(std::memory_order_relaxed); }

  private:
    static constexpr int64_t ask_every = 1 << 20;
    const Progress& progress_;
    const int64_t limit_;
    std::atomic<int64_t> spent_{0};
    int64_t asked_ = 0;
    double fraction_ = 0;
    std::string_view step_ = "";
    std::atomic<bool> stopped_{false};
};

}  // namespace kempt::combings
