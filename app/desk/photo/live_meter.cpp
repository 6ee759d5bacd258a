#include "desk/photo/live_meter.h"

#include "desk/photo/mark_parts.h"
#include "desk/translations/said.h"
#include "jobs/job_runner.h"

namespace kempt::desk {
namespace {

// A change within this time of the last one waits for it: half the least interval at which a hand is seen to lag.
constexpr int pause_ms = 60;

}  // namespace

LiveMeter::LiveMeter(jobs::JobRunner& runner, QObject* parent) : QObject(parent), runner_(runner) {
    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, &LiveMeter::begin);
}

LiveMeter::~LiveMeter() {
    if (job_) job_->cancel();
}

void LiveMeter::set_photo(MeasureFunction measure) {
    stop();
    measure_ = std::move(measure);
}

void LiveMeter::set_with_cover(bool with_cover) {
    if (with_cover_ == with_cover) return;
    with_cover_ = with_cover;
    if (with_cover && generation_ > 0) set_marks(marks_, false);
}

void LiveMeter::stop() {
    pause_.stop();
    if (job_) job_->cancel();
    job_.reset();
    ++generation_;  // an answer that is still on its way belongs to no marks any more
    shown_ = generation_;
    if (running_ != 0) {
        running_ = 0;
        emit measuring_changed(false);
    }
}

void LiveMeter::set_marks(const Marks& marks, bool dragging) {
    marks_ = finished_part(marks);
    dragging_ = dragging;
    ++generation_;
    if (!measure_ || groups_asked_by(marks_).isEmpty()) {
        stop();
        return;
    }
    if (running_ != 0 && !dragging && job_) job_->cancel();
    if (!pause_.isActive()) pause_.start();
}

void LiveMeter::begin() {
    if (!measure_) return;
    if (running_ != 0 && dragging_) return;  // its end begins the next one
    const int generation = generation_;
    const bool was_measuring = running_ != 0;
    running_ = generation;
    job_ = runner_.start_latest(
        QStringLiteral("live"), tr("Measuring"), this,
        [measure = measure_, marks = marks_, cover = with_cover_](const Progress& progress) {
            auto result = measure(marks, cover, progress);
            if (result.ok()) result.value().marks = marks;
            return result;
        },
        [this, generation](Result<Measured> result) { finished(generation, std::move(result)); });
    if (!was_measuring) emit measuring_changed(true);
}

void LiveMeter::finished(int generation, Result<Measured> result) {
    if (generation != running_) return;  // stale: a newer measurement has taken its place
    running_ = 0;
    const bool current = generation == generation_;
    const bool worth_showing = generation > shown_ && (current || dragging_);
    if (worth_showing && result.ok()) {
        shown_ = generation;
        emit measured(result.value(), current);
    } else if (worth_showing && result.error().kind != ErrorKind::cancelled) {
        shown_ = generation;
        emit failed(said(result.error().sentence()));
    }
    if (current)
        emit measuring_changed(false);
    else
        begin();
}

}  // namespace kempt::desk
