// Watches the event loop of the windows' thread: a timer that is late says how long the loop was held up.
#pragma once

#include <QElapsedTimer>
#include <QTimer>
#include <string>
#include <vector>

namespace bench {

class Watchdog {
  public:
    Watchdog();
    struct Gaps {
        double worst_ms = 0;       // longest time in which the loop answered nothing
        double worst_work_ms = 0;  // most of its own processor time spent in one such gap: what the program did,
                                   // without the time in which other programs had the processor
        int beyond_100 = 0, beyond_100_work = 0;
        std::string doing;  // what was going on in the worst one
    };
    // From now on; `doing` names it.
    void begin(const std::string& doing);
    void go_on(const std::string& doing) { doing_ = doing; }  // the same watch, another name
    [[nodiscard]] Gaps end();

  private:
    void beat();
    QTimer timer_;
    QElapsedTimer clock_;
    double last_ms_ = 0, last_work_ms_ = 0;
    Gaps gaps_;
    std::string doing_;
    bool told_ = false;  // between begin and end
};

// Processor time of the calling thread so far.
[[nodiscard]] double thread_work_ms();
// Of all threads of the program.
[[nodiscard]] double process_work_ms();

}  // namespace bench
