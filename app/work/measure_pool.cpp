#include "work/measure_pool.h"

#include <QThread>
#include <algorithm>
#include <opencv2/core/utility.hpp>

namespace kempt::work {

int MeasurePool::cores() {
    return std::max(1, QThread::idealThreadCount());
}

MeasurePool::MeasurePool(int threads) : threads_before_(cv::getNumThreads()) {
    const int count = std::max(1, threads);
    // The photos share the cores among themselves, so that each is measured on one thread: see tests/bench/batch.cpp.
    if (count > 1) cv::setNumThreads(std::max(1, cores() / count));
    for (int i = 0; i < count; ++i) threads_.emplace_back([this](const std::stop_token& stop) { run(stop); });
}

MeasurePool::~MeasurePool() {
    for (std::jthread& thread : threads_) thread.request_stop();
    threads_.clear();  // joins
    cv::setNumThreads(threads_before_);
}

void MeasurePool::add(QByteArray bytes, Marks marks, MeasureOptions how) {
    auto work = std::make_shared<Work>();
    work->bytes = std::move(bytes);
    work->marks = std::move(marks);
    work->how = std::move(how);
    {
        const std::lock_guard lock(mutex_);
        work_.push_back(std::move(work));
    }
    added_.notify_one();
}

int MeasurePool::unfinished() const {
    const std::lock_guard lock(mutex_);
    return static_cast<int>(std::count_if(work_.begin(), work_.end(), [](const auto& work) { return !work->result; }));
}

double MeasurePool::fractions() const {
    const std::lock_guard lock(mutex_);
    double sum = 0;
    for (const auto& work : work_) sum += work->fraction;
    return sum;
}

std::optional<Result<MeasureResult>> MeasurePool::take(std::chrono::milliseconds within) {
    std::unique_lock lock(mutex_);
    finished_.wait_for(lock, within, [this] { return work_.empty() || work_.front()->result; });
    if (work_.empty() || !work_.front()->result) return {};
    auto result = std::move(work_.front()->result);
    work_.pop_front();
    return result;
}

void MeasurePool::run(const std::stop_token& stop) {
    for (;;) {
        std::shared_ptr<Work> next;
        {
            std::unique_lock lock(mutex_);
            const auto waiting = [this] {
                return std::find_if(work_.begin(), work_.end(), [](const auto& work) { return !work->begun; });
            };
            if (!added_.wait(lock, stop, [&] { return waiting() != work_.end(); })) return;
            next = *waiting();
            next->begun = true;
        }
        measure(*next, stop);
        finished_.notify_all();
    }
}

void MeasurePool::measure(Work& work, const std::stop_token& stop) {
    auto result = measure_photo(work.bytes, work.marks, work.how, [&](double fraction, std::string_view) {
        work.fraction = fraction;
        return stop.stop_requested() ? Go::stop : Go::on;
    });
    work.bytes = {};
    work.fraction = 1;
    const std::lock_guard lock(mutex_);
    work.result = std::move(result);
}

}  // namespace kempt::work
