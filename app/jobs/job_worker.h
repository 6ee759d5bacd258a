// The thread behind a JobRunner: a queue, one std::thread, one connection to the book that lives and dies on it.
#pragma once

#include <QPointer>
#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>

#include "jobs/job_runner.h"

namespace kempt::jobs {

class Worker {
  public:
    struct Order {
        JobHandle job;
        QString lane;
        QPointer<QObject> receiver;
        JobRunner::Task task;
        std::function<void(double, const QString&)> told;
        bool needs_book = false;
    };

    // The runner outlives the worker: it owns it.
    Worker(JobRunner* runner, JobRunner::Pace pace);
    ~Worker();  // stops the running job, forgets the waiting ones, joins
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    void put(Order order);
    // Cancels and mutes what waits or runs in this lane. Returns how many waiting orders were taken out.
    int clear_lane(const QString& lane);

  private:
    void run();
    void carry_out(Order& order, std::shared_ptr<Book>& book);
    [[nodiscard]] Progress progress_for(const Order& order);

    JobRunner* runner_;
    JobRunner::Pace pace_;
    std::mutex mutex_;
    std::condition_variable wake_;
    std::deque<Order> waiting_;
    JobHandle running_;
    QString running_lane_;
    bool ending_ = false;
    std::thread thread_;  // last: starts when the rest is there
};

}  // namespace kempt::jobs
