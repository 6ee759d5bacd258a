// A batch on several threads does what photo after photo on one thread does.
#include "work/measure_in_book.h"

#include <QThread>
#include <atomic>

#include "app/work/book_photos.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

struct Batch {
    TemporaryBook in;
    QVector<Id> photos;

    explicit Batch(int count) {
        for (int i = 0; i < count; ++i) {
            const tests::CardPhoto what = tests::small_photo(6 + 3 * i, static_cast<unsigned>(i));
            photos.push_back(tests::add_photo(in, in.visit, what));
            if (i == 1) continue;  // one without marks
            TemporaryBook::required(work::set_marks(*in.book, photos.back(), tests::marks_for(what)));
        }
    }
    [[nodiscard]] QVector<ReadingRecord> readings() const {
        QVector<ReadingRecord> all;
        for (const Id photo : photos) all += TemporaryBook::required(work::readings_of(*in.book, photo));
        return all;
    }
    [[nodiscard]] work::BatchReport measure(int at_a_time, const Progress& progress = {}) const {
        work::MeasureInBookOptions options;
        options.at_a_time = at_a_time;
        return TemporaryBook::required(work::measure_all(*in.book, 0, options, progress));
    }
};

}  // namespace

BOOST_AUTO_TEST_SUITE(measure_all)

BOOST_AUTO_TEST_CASE(several_at_a_time_keep_the_same_rows_in_the_same_order_as_one) {
    const Batch one(5), three(5);
    const work::BatchReport first = one.measure(1), second = three.measure(3);
    BOOST_TEST(first.measured == 4);
    BOOST_TEST(second.measured == 4);
    BOOST_TEST(second.without_marks == 1);
    BOOST_TEST(second.failed.empty());
    const auto a = one.readings(), b = three.readings();
    BOOST_REQUIRE_EQUAL(a.size(), b.size());
    BOOST_REQUIRE(!a.isEmpty());
    for (qsizetype i = 0; i < a.size(); ++i) {
        BOOST_TEST(a[i].id == b[i].id);
        BOOST_TEST(a[i].photo == b[i].photo);
        BOOST_TEST(a[i].name.toStdString() == b[i].name.toStdString());
        BOOST_TEST(a[i].value == b[i].value);
        BOOST_TEST(a[i].low == b[i].low);
        BOOST_TEST(a[i].high == b[i].high);
        BOOST_TEST(a[i].refusal_code.toStdString() == b[i].refusal_code.toStdString());
        BOOST_TEST((i == 0 || b[i - 1].measured_at <= b[i].measured_at));
    }
    BOOST_TEST(three.measure(3).kept == 4);  // again: they stand
}

BOOST_AUTO_TEST_CASE(progress_comes_on_the_callers_thread_and_never_goes_back) {
    const Batch batch(4);
    double before = 0;
    bool same_thread = true, forward = true;
    int told = 0;
    QThread* const caller = QThread::currentThread();
    (void)batch.measure(2, [&](double fraction, std::string_view) {
        same_thread = same_thread && QThread::currentThread() == caller;
        forward = forward && fraction >= before - 1e-9 && fraction <= 1;
        before = fraction;
        ++told;
        return Go::on;
    });
    BOOST_TEST(same_thread);
    BOOST_TEST(forward);
    BOOST_TEST(before == 1);
    BOOST_TEST(told > 4);
}

BOOST_AUTO_TEST_CASE(a_stop_keeps_what_was_measured_and_nothing_half) {
    const Batch batch(5);
    work::MeasureInBookOptions options;
    options.at_a_time = 2;
    const auto stopped = work::measure_all(*batch.in.book, 0, options, [](double, std::string_view step) {
        return step == "measuring photo 3 of 5" ? Go::stop : Go::on;
    });
    BOOST_REQUIRE(!stopped.ok());
    BOOST_TEST(static_cast<int>(stopped.error().kind) == static_cast<int>(ErrorKind::cancelled));
    BOOST_TEST(stopped.error().kept == "1 photos were measured before that.");
    BOOST_TEST(!TemporaryBook::required(work::readings_of(*batch.in.book, batch.photos[0])).isEmpty());
    for (qsizetype i = 2; i < 5; ++i)
        BOOST_TEST(TemporaryBook::required(work::readings_of(*batch.in.book, batch.photos[i])).isEmpty());
    // What was left is measured the next time.
    const auto rest = batch.measure(2);
    BOOST_TEST(rest.kept == 1);
    BOOST_TEST(rest.measured == 3);
}

BOOST_AUTO_TEST_CASE(a_client_who_is_not_there_is_an_error) {
    const Batch batch(0);
    const auto none = work::measure_all(*batch.in.book, 999);
    BOOST_REQUIRE(!none.ok());
    BOOST_TEST(static_cast<int>(none.error().kind) == static_cast<int>(ErrorKind::not_found));
}

BOOST_AUTO_TEST_SUITE_END()
