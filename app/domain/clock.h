// A clock that tests can set.
#pragma once

#include <QDateTime>
#include <functional>

namespace kempt {

class Clock {
  public:
    Clock() : now_([] { return QDateTime::currentDateTimeUtc(); }) {}
    explicit Clock(std::function<QDateTime()> now) : now_(std::move(now)) {}
    [[nodiscard]] QDateTime now() const { return now_(); }
    [[nodiscard]] QDate today() const { return now_().toLocalTime().date(); }

  private:
    std::function<QDateTime()> now_;
};

}  // namespace kempt
