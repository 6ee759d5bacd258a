// Runs use cases on one worker thread with its own connection to the book. Answers arrive on the thread that made the
// runner (the windows' thread), through its event loop; when the receiver is gone they are dropped. Nothing here waits
// in a nested event loop.
#pragma once

#include <QObject>
#include <QPointer>
#include <QString>
#include <functional>
#include <memory>
#include <type_traits>

#include "core/progress.h"
#include "core/result.h"
#include "jobs/job.h"
#include "work/book_fwd.h"

namespace kempt::jobs {

class Worker;  // job_worker.h

class JobRunner : public QObject {
    Q_OBJECT
  public:
    // book_path may be empty: then only work without a book can run. The connection is opened on the worker thread
    // when the first job needs it, and closed there with the runner. behind: the thread, and those that it starts, give
    // way to the windows where the processor does not suffice for both.
    enum class Pace { beside, behind };
    explicit JobRunner(QString book_path, QObject* parent = nullptr, Pace pace = Pace::beside);
    // Asks the running job to stop, drops the waiting ones, and joins the thread; no answer is delivered any more.
    ~JobRunner() override;

    [[nodiscard]] const QString& book_path() const { return book_path_; }
    [[nodiscard]] int unfinished() const;  // waiting and running jobs whose answer has not been delivered

    // Work that needs the book: Result<T> work(Book&, const Progress&).
    // done(Result<T>) runs on this runner's thread as long as `receiver` lives; a throwing work gives an error of kind
    // `io`, code "job-threw". told(fraction, step) likewise; steps closer than 30 ms are swallowed, the last one never.
    template <class Work, class Receive>
    JobHandle start(const QString& title, QObject* receiver, Work work, Receive done,
                    std::function<void(double, const QString&)> told = {}) {
        using R = std::invoke_result_t<Work, Book&, const Progress&>;
        return enqueue<R>(
            title, {}, receiver,
            [work = std::move(work)](Book* book, const Progress& progress) mutable -> R {
                return work(*book, progress);
            },
            std::move(done), std::move(told), true);
    }
    // Work without a book: Result<T> work(const Progress&).
    template <class Work, class Receive>
    JobHandle start_without_book(const QString& title, QObject* receiver, Work work, Receive done,
                                 std::function<void(double, const QString&)> told = {}) {
        using R = std::invoke_result_t<Work, const Progress&>;
        return enqueue<R>(
            title, {}, receiver,
            [work = std::move(work)](Book*, const Progress& progress) mutable -> R { return work(progress); },
            std::move(done), std::move(told), false);
    }
    // As start_without_book, for dragging: a waiting or running job of the same `lane` is cancelled first, and its
    // receiver hears nothing more of it; so at most one job of the lane waits.
    template <class Work, class Receive>
    JobHandle start_latest(const QString& lane, const QString& title, QObject* receiver, Work work, Receive done,
                           std::function<void(double, const QString&)> told = {}) {
        using R = std::invoke_result_t<Work, const Progress&>;
        return enqueue<R>(
            title, lane, receiver,
            [work = std::move(work)](Book*, const Progress& progress) mutable -> R { return work(progress); },
            std::move(done), std::move(told), false);
    }

  signals:
    // For a status bar: any job's progress, start and end. On this runner's thread.
    void job_progress(const QString& title, double fraction, const QString& step);
    void job_finished(const QString& title, bool well, const QString& sentence);
    void busy_changed(bool busy);

  private:
    // What the worker runs: does the work and gives back the delivery, to be run on the runner's thread. The error
    // argument, when set, is why the work cannot even start (no book, cancelled).
    struct Outcome {
        std::function<void()> deliver;
        State state = State::done;
        QString sentence;  // of the error
    };
    using Task = std::function<Outcome(Book*, const Progress&, const Error* instead)>;

    template <class R, class Work, class Receive>
    JobHandle enqueue(const QString& title, const QString& lane, QObject* receiver, Work work, Receive done,
                      std::function<void(double, const QString&)> told, bool needs_book) {
        Task task = [work = std::move(work), done = std::move(done)](Book* book, const Progress& progress,
                                                                     const Error* instead) mutable -> Outcome {
            std::shared_ptr<R> result = instead ? std::make_shared<R>(*instead)
                                                : std::make_shared<R>(guarded<R>([&] { return work(book, progress); }));
            Outcome outcome;
            if (!result->ok()) {
                outcome.state = result->error().kind == ErrorKind::cancelled ? State::cancelled : State::failed;
                outcome.sentence = QString::fromStdString(result->error().sentence());
            }
            outcome.deliver = [done, result]() mutable { done(std::move(*result)); };
            return outcome;
        };
        return add(title, lane, receiver, std::move(task), std::move(told), needs_book);
    }
    template <class R, class Call>
    static R guarded(Call call) {
        try {
            return call();
        } catch (const std::exception& thrown) {
            return R(threw(thrown.what()));
        } catch (...) {
            return R(threw("unknown"));
        }
    }
    [[nodiscard]] static Error threw(const char* what);
    JobHandle add(const QString& title, const QString& lane, QObject* receiver, Task task,
                  std::function<void(double, const QString&)> told, bool needs_book);

    void settle(const JobHandle& job, const QPointer<QObject>& receiver, const Outcome& outcome);

    friend class Worker;
    QString book_path_;
    std::unique_ptr<Worker> worker_;
    int unfinished_ = 0;
};

}  // namespace kempt::jobs
