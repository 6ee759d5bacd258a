#include "bench/desk/watchdog.h"

#include <algorithm>
#include <ctime>

namespace bench {
namespace {

constexpr int beat_ms = 5;  // a fine ruler for 100 ms, at well under 1 % of a core

}  // namespace

double thread_work_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

Watchdog::Watchdog() {
    timer_.setTimerType(Qt::PreciseTimer);
    timer_.setInterval(beat_ms);
    QObject::connect(&timer_, &QTimer::timeout, &timer_, [this] { beat(); });
    clock_.start();
    timer_.start();
}

void Watchdog::beat() {
    const double now = static_cast<double>(clock_.nsecsElapsed()) / 1e6, work = thread_work_ms();
    const double gap = now - last_ms_ - beat_ms, worked = std::min(work - last_work_ms_, std::max(gap, 0.0));
    if (gap > gaps_.worst_ms) gaps_.worst_ms = gap, gaps_.doing = doing_;
    gaps_.worst_work_ms = std::max(gaps_.worst_work_ms, worked);
    gaps_.beyond_100 += gap > 100;
    gaps_.beyond_100_work += worked > 100;
    last_ms_ = now;
    last_work_ms_ = work;
}

void Watchdog::begin(const std::string& doing) {
    gaps_ = {};
    doing_ = doing;
    last_ms_ = static_cast<double>(clock_.nsecsElapsed()) / 1e6;
    last_work_ms_ = thread_work_ms();
}

Watchdog::Gaps Watchdog::end() {
    beat();
    return gaps_;
}

}  // namespace bench
