#include "jobs/job_runner.h"

#include "jobs/job_worker.h"

namespace kempt::jobs {

JobRunner::JobRunner(QString book_path, QObject* parent, Pace pace)
    : QObject(parent), book_path_(std::move(book_path)), worker_(std::make_unique<Worker>(this, pace)) {}

JobRunner::~JobRunner() = default;

int JobRunner::unfinished() const {
    return unfinished_;
}

Error JobRunner::threw(const char* what) {
    return {ErrorKind::io, "job-threw", std::string("The work broke off unexpectedly (") + what + ").",
            "What had been stored before stays; nothing half done was kept.",
            "Try again; if it happens again, check the book and report the words in brackets."};
}

JobHandle JobRunner::add(const QString& title, const QString& lane, QObject* receiver, Task task,
                         std::function<void(double, const QString&)> told, bool needs_book) {
    if (!lane.isEmpty()) unfinished_ -= worker_->clear_lane(lane);
    auto job = std::make_shared<Job>(title);
    if (++unfinished_ == 1) emit busy_changed(true);
    worker_->put({job, lane, receiver ? receiver : this, std::move(task), std::move(told), needs_book});
    return job;
}

void JobRunner::settle(const JobHandle& job, const QPointer<QObject>& receiver, const Outcome& outcome) {
    --unfinished_;
    bool well = outcome.state == State::done;
    QString sentence = outcome.sentence;
    if (receiver && !job->muted_) {
        try {
            outcome.deliver();
        } catch (const std::exception& thrown) {
            well = false;
            sentence = QString::fromStdString(threw(thrown.what()).sentence());
        } catch (...) {
            well = false;
            sentence = QString::fromStdString(threw("unknown").sentence());
        }
    }
    if (!job->muted_) emit job_finished(job->title(), well, sentence);
    if (unfinished_ == 0) emit busy_changed(false);
}

}  // namespace kempt::jobs
