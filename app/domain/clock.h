// A clock that tests can set.
#pragma once

#include <QDateTime>
#include <functional>

namespace kempt {

class Clock {
  public:
    Clock() : now_(usual()) {}
    explicit Clock(std::function<QDateTime()> now) : now_(std::move(now)) {}
    [[nodiscard]] QDateTime now() const { return now_(); }
    [[nodiscard]] QDate today() const { return now_().toLocalTime().date(); }
    // What every Clock() made from now on reads, instead of the system's clock. Before other threads ask.
    static void set_usual(std::function<QDateTime()> now) { usual() = std::move(now); }

  private:
    static std::function<QDateTime()>& usual() {
        static std::function<QDateTime()> now = [] { return QDateTime::currentDateTimeUtc(); };
        return now;
    }
    std::function<QDateTime()> now_;
};

}  // namespace kempt
