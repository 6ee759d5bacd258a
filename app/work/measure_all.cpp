// A batch: this thread reads photos from the book and keeps their readings, in order; a pool measures between.
#include <algorithm>
#include <deque>

#include "book/client_store.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/visit_store.h"
#include "work/errors.h"
#include "work/measure_pool.h"
#include "work/measure_steps.h"

namespace kempt::work {

namespace {

Result<QVector<Id>> photos_of(Book& book, Id client) {
    QVector<Id> clients{client};
    if (client == 0) {
        clients.clear();
        const auto rows = store::list_clients(book);
        if (!rows) return rows.error();
        for (const store::ClientRow& row : rows.value()) clients.push_back(row.client.id);
    } else if (const auto known = store::get_client(book, client); !known) {
        return known.error();
    }
    QVector<Id> photos;
    for (const Id one : clients) {
        const auto visits = store::visits_of_client(book, one);
        if (!visits) return visits.error();
        for (const Visit& visit : visits.value()) {
            const auto records = store::photos_of_visit(book, visit.id);
            if (!records) return records.error();
            for (const PhotoRecord& record : records.value()) photos.push_back(record.id);
        }
    }
    return photos;
}

class Batch {
  public:
    Batch(Book& book, const MeasureInBookOptions& options, int at_a_time)
        : book_(book), options_(options), most_unfinished_(at_a_time + 1), pool_(at_a_time) {}

    // One more photo than is being measured lies ready, so that no thread waits for the disk; results that wait for a
    // slower one before them hold no pixels.
    [[nodiscard]] bool has_room() const {
        return pool_.unfinished() < most_unfinished_ &&
               waiting_.size() < static_cast<std::size_t>(4 * most_unfinished_);
    }
    [[nodiscard]] bool is_empty() const { return waiting_.empty(); }
    [[nodiscard]] double fractions() const { return pool_.fractions(); }
    [[nodiscard]] int done() const { return done_; }
    [[nodiscard]] BatchReport& report() { return report_; }

    Status add(Id photo) {
        const auto marks = store::latest_marks(book_, photo);
        if (!marks) return marks.error();
        if (!marks.value()) {
            ++report_.without_marks;
            ++done_;
            return Done{};
        }
        auto ready = make_ready(book_, photo, options_);
        Waiting next{photo, std::move(ready), false};
        if (next.ready && !next.ready->measured.kept_as_they_were) {
            next.in_pool = true;
            pool_.add(std::move(next.ready->bytes), next.ready->measured.marks, next.ready->how);
            next.ready->bytes = {};
        }
        waiting_.push_back(std::move(next));
        return Done{};
    }

    // Keeps the oldest photo's readings when they are there; else waits a little.
    void keep_one(std::chrono::milliseconds patience) {
        Waiting& oldest = waiting_.front();
        Status kept = Done{};
        if (!oldest.ready) {
            kept = oldest.ready.error();
        } else if (oldest.in_pool) {
            auto result = pool_.take(patience);
            if (!result) return;
            kept = *result ? keep_result(book_, oldest.ready.value(), std::move(*result).value(), options_.clock)
                           : Status(result->error());
        }
        if (!kept)
            report_.failed.emplace_back(oldest.photo, kept.error());
        else
            ++(oldest.in_pool ? report_.measured : report_.kept);
        ++done_;
        waiting_.pop_front();
    }

  private:
    struct Waiting {
        Id photo;
        Result<ReadyPhoto> ready;
        bool in_pool;
    };
    Book& book_;
    const MeasureInBookOptions& options_;
    int most_unfinished_;
    int done_ = 0;
    BatchReport report_;
    std::deque<Waiting> waiting_;
    MeasurePool pool_;
};

Result<BatchReport> run(Book& book, Id client, const MeasureInBookOptions& options, const Progress& progress) {
    const auto photos = photos_of(book, client);
    if (!photos) return photos.error();
    const int count = static_cast<int>(photos->size());
    const int at_a_time =
        std::min(options.at_a_time > 0 ? options.at_a_time : MeasurePool::cores(), std::max(1, count));
    Batch batch(book, options, at_a_time);
    // A person who stops waits no longer than this; short beside a photo, long beside the work of asking.
    constexpr std::chrono::milliseconds patience(40);
    for (int next = 0; batch.done() < count;) {
        const std::string words =
            "measuring photo " + std::to_string(std::min(batch.done() + 1, count)) + " of " + std::to_string(count);
        const double share = (batch.done() + batch.fractions()) / count;
        if (tell(progress, std::min(share, 1.0), words) == Go::stop)
            return stopped(std::to_string(batch.report().measured) + " photos were measured before that.");
        if (next < count && batch.has_room()) {
            if (const Status status = batch.add((*photos)[next++]); !status) return status.error();
        } else if (!batch.is_empty()) {
            batch.keep_one(patience);
        }
    }
    tell(progress, 1, "all photos are measured");
    return std::move(batch.report());
}

}  // namespace

Result<BatchReport> measure_all(Book& book, Id client, const MeasureInBookOptions& options, const Progress& progress) {
    return guarded([&] { return run(book, client, options, progress); });
}

}  // namespace kempt::work
