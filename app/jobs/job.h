// One piece of work on the worker thread: its title, its state, the person's wish to stop it.
#pragma once

#include <QString>
#include <atomic>
#include <memory>

namespace kempt::jobs {

enum class State { waiting, running, done, failed, cancelled };

// Shared between the window that started it and the worker. All members may be used from any thread.
class Job {
  public:
    explicit Job(QString title) : title_(std::move(title)) {}
    [[nodiscard]] const QString& title() const { return title_; }
    [[nodiscard]] State state() const { return state_.load(); }
    // Asks the work to stop at its next step; a waiting job never starts. The receiver still gets its answer, an
    // error of kind `cancelled`.
    void cancel() { stop_.store(true); }
    [[nodiscard]] bool cancel_asked() const { return stop_.load(); }

  private:
    friend class JobRunner;
    friend class Worker;
    QString title_;
    std::atomic<State> state_{State::waiting};
    std::atomic<bool> stop_{false};
    std::atomic<bool> muted_{false};  // a newer job of its lane took over: nobody wants the answer
};
using JobHandle = std::shared_ptr<Job>;

}  // namespace kempt::jobs
