// Keeps the readings following the marks: measures on the worker while the person draws, never more often than the
// worker can answer, and never shows an older answer over a newer one. No widgets.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include "desk/photo/live_reading.h"
#include "jobs/job.h"

namespace kempt::jobs {
class JobRunner;
}

namespace kempt::desk {

class LiveMeter : public QObject {
    Q_OBJECT
  public:
    // The runner outlives the meter; it needs no book.
    explicit LiveMeter(jobs::JobRunner& runner, QObject* parent = nullptr);
    ~LiveMeter() override;

    // Another photo: whatever is under way for the last one is dropped.
    void set_photo(MeasureFunction measure);
    void set_with_cover(bool with_cover);
    // New marks; what is half drawn in them waits, the finished part is measured. While dragging an answer for slightly
    // older marks is worth showing (it is told as not current) and the running measurement is let finish; afterwards
    // only the answer for the last marks counts and older work is stopped.
    void set_marks(const Marks& marks, bool dragging);
    void stop();

    [[nodiscard]] bool measuring() const { return running_ != 0; }
    // It measures, or is about to: nothing more comes when it is not.
    [[nodiscard]] bool awaited() const { return running_ != 0 || pause_.isActive(); }

  signals:
    void measured(const kempt::desk::Measured& measured, bool current);
    void failed(const QString& sentence);
    void measuring_changed(bool measuring);

  private:
    void begin();
    void finished(int generation, Result<Measured> result);

    jobs::JobRunner& runner_;
    MeasureFunction measure_;
    Marks marks_;
    QTimer pause_;
    jobs::JobHandle job_;
    int generation_ = 0;  // of the marks that are drawn now
    int running_ = 0;     // of the marks that are being measured; 0: none
    int shown_ = 0;       // of the marks whose answer was shown last
    bool dragging_ = false, with_cover_ = false;
};

}  // namespace kempt::desk
