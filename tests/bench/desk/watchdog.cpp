#include "bench/desk/watchdog.h"

#include <algorithm>
#include <cstdio>
#include <ctime>

namespace bench {
namespace {

constexpr int beat_ms = 5;      // a fine ruler for 100 ms, at well under 1 % of a core
constexpr double told_ms = 60;  // own choice: work of this length in one turn is told while the bench runs

double ms_of(clockid_t which) {
    timespec now{};
    clock_gettime(which, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

}  // namespace

double thread_work_ms() {
    return ms_of(CLOCK_THREAD_CPUTIME_ID);
}

double process_work_ms() {
    return ms_of(CLOCK_PROCESS_CPUTIME_ID);
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
    if (told_ &&
        worked > told_ms)  // on the clock that `perf record -k CLOCK_MONOTONIC` writes, so that the turn can be found
        std::fprintf(stderr, "held up while %s: %.3f s to %.3f s, work of its own %.0f ms\n", doing_.c_str(),
                     (clock_.msecsSinceReference() + last_ms_) / 1e3, (clock_.msecsSinceReference() + now) / 1e3,
                     worked);
    if (gap > gaps_.worst_ms) gaps_.worst_ms = gap, gaps_.doing = doing_;
    gaps_.worst_work_ms = std::max(gaps_.worst_work_ms, worked);
    gaps_.beyond_100 += gap > 100;
    gaps_.beyond_100_work += worked > 100;
    last_ms_ = now;
    last_work_ms_ = work;
}

void Watchdog::begin(const std::string& doing) {
    gaps_ = {};
    told_ = true;
    doing_ = doing;
    last_ms_ = static_cast<double>(clock_.nsecsElapsed()) / 1e6;
    last_work_ms_ = thread_work_ms();
}

Watchdog::Gaps Watchdog::end() {
    beat();
    told_ = false;
    return gaps_;
}

}  // namespace bench
