// One open book as the windows use it: three workers, so that reading a list never waits for a report, and word of
// what has changed.
#pragma once

#include <QDate>
#include <QObject>
#include <QString>
#include <memory>

#include "desk/photo/live_reading.h"
#include "desk/session/undo.h"
#include "domain/records.h"
#include "jobs/job_runner.h"

namespace kempt::desk {

class Session : public QObject {
    Q_OBJECT
  public:
    explicit Session(const QString& book_path, OpenFunction open = open_with_analysis(), QObject* parent = nullptr);

    [[nodiscard]] QString book_path() const { return path_; }
    [[nodiscard]] jobs::JobRunner& records() {
        return records_;
    }                                                          // short reads and writes, in the order they were asked
    [[nodiscard]] jobs::JobRunner& bench() { return bench_; }  // taking photos in, measuring, comparing, reports
    [[nodiscard]] jobs::JobRunner& live() { return live_; }    // opening a photo and measuring while she draws
    [[nodiscard]] const OpenFunction& open_photo() const { return open_; }
    [[nodiscard]] Undo& undo() { return undo_; }

    // Asks a worker; `got` has the value, an error is told in the window (and `failed` runs, where given).
    template <class Work, class Got>
    jobs::JobHandle ask(jobs::JobRunner& runner, const QString& title, QObject* receiver, Work work, Got got,
                        std::function<void()> failed = {}) {
        return runner.start(title, receiver, std::move(work),
                            [this, got = std::move(got), failed = std::move(failed)](auto result) mutable {
                                if (result.ok()) return got(std::move(result.value()));
                                tell(result.error());
                                if (failed) failed();
                            });
    }
    // A write on the records' worker, then word that a client or a visit has changed.
    template <class Work>
    void keep(const QString& title, QObject* receiver, Id client, Id visit, Work work) {
        ask(records_, title, receiver, std::move(work), [this, client, visit](auto&&) { changed(client, visit); });
    }
    // The same of an entry that can be taken back.
    template <class Work>
    void keep(const QString& title, QObject* receiver, UndoStep step, Work work) {
        ask(records_, title, receiver, std::move(work), [this, step = std::move(step)](auto&&) {
            undo_.add(step);
            changed(step.client, step.visit);
        });
    }
    void changed(Id client, Id visit);
    void tell(const Error& error);
    // Work that a closing window must wait for.
    [[nodiscard]] bool busy_keeping() const { return records_.unfinished() > 0; }

  signals:
    void clients_changed();
    void client_changed(kempt::Id client);
    void visit_changed(kempt::Id visit);
    void trouble(const QString& sentence);
    void news(const QString& sentence);
    void made_file(const QString& sentence, const QString& path);  // the window offers to open it

  private:
    QString path_;
    OpenFunction open_;
    Undo undo_;
    jobs::JobRunner records_, bench_, live_;
};

}  // namespace kempt::desk
