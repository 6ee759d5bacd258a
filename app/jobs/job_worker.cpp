#include "jobs/job_worker.h"

#include <QMetaObject>
#include <chrono>
#ifdef __linux__
#include <sys/resource.h>
#include <unistd.h>
#endif
#ifdef __GLIBC__
#include <malloc.h>
#endif

#include "book/book.h"
#include "work/open_book.h"

namespace kempt::jobs {

namespace {
// Faster than this a bar only flickers, and the windows' queue would fill up (30 ms: about two frames).
constexpr std::chrono::milliseconds told_every{30};

// After shorter work there is little to give back.
constexpr std::chrono::milliseconds long_work{200};
// On Linux a thread has a niceness of its own, which threads that it starts inherit. 5: the windows get three quarters
// of a core that both want, the work goes at full pace where nobody else wants it.
constexpr int nicer_by = 5;

void step_back() {
#ifdef __linux__
    setpriority(PRIO_PROCESS, static_cast<id_t>(gettid()), nicer_by);
#endif
}

// What a photo or the whole book took is returned to the system: the C library keeps it for the thread otherwise, and
// with several threads that adds up to more than the windows themselves need.
void give_memory_back() {
#ifdef __GLIBC__
    malloc_trim(0);
#endif
}

Error cancelled_error() {
    return {ErrorKind::cancelled, "cancelled", "The work was stopped before it began.", "Nothing was changed.", ""};
}
}  // namespace

Worker::Worker(JobRunner* runner, JobRunner::Pace pace) : runner_(runner), pace_(pace), thread_([this] { run(); }) {}

Worker::~Worker() {
    {
        const std::lock_guard lock(mutex_);
        ending_ = true;
        waiting_.clear();
        if (running_) running_->cancel();
    }
    wake_.notify_all();
    thread_.join();
}

void Worker::put(Order order) {
    {
        const std::lock_guard lock(mutex_);
        waiting_.push_back(std::move(order));
    }
    wake_.notify_one();
}

int Worker::clear_lane(const QString& lane) {
    const std::lock_guard lock(mutex_);
    if (running_ && running_lane_ == lane) {
        running_->muted_ = true;
        running_->cancel();
    }
    int taken_out = 0;
    for (auto order = waiting_.begin(); order != waiting_.end();) {
        if (order->lane != lane) {
            ++order;
            continue;
        }
        order->job->state_ = State::cancelled;
        order = waiting_.erase(order);
        ++taken_out;
    }
    return taken_out;
}

void Worker::run() {
    if (pace_ == JobRunner::Pace::behind) step_back();
    std::shared_ptr<Book> book;
    for (;;) {
        Order order;
        {
            std::unique_lock lock(mutex_);
            wake_.wait(lock, [this] { return ending_ || !waiting_.empty(); });
            if (ending_) break;
            order = std::move(waiting_.front());
            waiting_.pop_front();
            running_ = order.job;
            running_lane_ = order.lane;
        }
        const auto begun = std::chrono::steady_clock::now();
        carry_out(order, book);
        order = {};
        if (std::chrono::steady_clock::now() - begun > long_work) give_memory_back();
        const std::lock_guard lock(mutex_);
        running_.reset();
        running_lane_.clear();
    }
}

Progress Worker::progress_for(const Order& order) {
    auto last = std::make_shared<std::chrono::steady_clock::time_point>();
    return [this, job = order.job, receiver = order.receiver, told = order.told, last](double fraction,
                                                                                       std::string_view step) {
        if (job->cancel_asked()) return Go::stop;
        const auto now = std::chrono::steady_clock::now();
        if (fraction > 0 && fraction < 1 && now - *last < told_every) return Go::on;
        *last = now;
        const QString words = QString::fromUtf8(step.data(), static_cast<qsizetype>(step.size()));
        QMetaObject::invokeMethod(
            runner_,
            [runner = runner_, job, receiver, told, fraction, words] {
                if (job->muted_) return;
                if (told && receiver) told(fraction, words);
                emit runner->job_progress(job->title(), fraction, words);
            },
            Qt::QueuedConnection);
        return Go::on;
    };
}

void Worker::carry_out(Order& order, std::shared_ptr<Book>& book) {
    const JobHandle job = order.job;
    std::optional<Error> instead;
    if (job->cancel_asked()) {
        instead = cancelled_error();
    } else if (order.needs_book && !book) {
        auto opened = work::open_book(runner_->book_path());
        if (opened.ok())
            book = std::move(opened).value();
        else
            instead = opened.error();
    }
    job->state_ = State::running;
    JobRunner::Outcome outcome =
        order.task(order.needs_book ? book.get() : nullptr, progress_for(order), instead ? &*instead : nullptr);
    job->state_ = outcome.state;
    // The task holds what the window captured: let it go on the windows' thread, together with the answer.
    QMetaObject::invokeMethod(
        runner_,
        [runner = runner_, job, receiver = order.receiver, outcome = std::move(outcome), task = std::move(order.task)] {
            runner->settle(job, receiver, outcome);
        },
        Qt::QueuedConnection);
}

}  // namespace kempt::jobs
