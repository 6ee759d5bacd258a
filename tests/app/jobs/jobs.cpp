#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QTimer>
#include <boost/test/unit_test.hpp>
#include <latch>
#include <stdexcept>
#include <thread>

#include "app/work/temporary_book.h"
#include "jobs/job_runner.h"

using namespace kempt;
using jobs::JobHandle;
using jobs::JobRunner;
using jobs::State;
using tests::TemporaryBook;

namespace {

// Lets events through until the wish is fulfilled; a generous limit only so that a broken build ends.
template <class Wish>
bool until(Wish wish) {
    tests::application();
    QElapsedTimer timer;
    timer.start();
    while (!wish() && timer.elapsed() < 20000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    return wish();
}

bool all_delivered(const JobRunner& runner) {
    return until([&] { return runner.unfinished() == 0; });
}

// Work of `steps` steps that asks after each whether to go on, and waits at the gate first when there is one.
Result<int> count_to(int steps, const Progress& progress, std::latch* gate = nullptr) {
    if (gate) gate->wait();
    for (int i = 0; i < steps; ++i)
        if (tell(progress, static_cast<double>(i) / steps, "counting") == Go::stop)
            return Error{ErrorKind::cancelled, "cancelled", "Stopped.", "", ""};
    return steps;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(jobs_suite)

BOOST_AUTO_TEST_CASE(the_answer_arrives_on_the_windows_thread) {
    TemporaryBook in;
    JobRunner runner(in.path);
    QObject receiver;
    int clients = -1;
    std::thread::id worked_on, heard_on;
    runner.start(
        QStringLiteral("count"), &receiver,
        [&](Book& book, const Progress&) -> Result<int> {
            worked_on = std::this_thread::get_id();
            const auto rows = work::list_clients(book);
            if (!rows) return rows.error();
            return static_cast<int>(rows->size());
        },
        [&](const Result<int>& result) {
            heard_on = std::this_thread::get_id();
            if (result) clients = result.value();
        });
    BOOST_TEST(runner.unfinished() == 1);
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(clients == 1);
    BOOST_TEST((heard_on == std::this_thread::get_id()));
    BOOST_TEST((worked_on != std::this_thread::get_id()));
}

BOOST_AUTO_TEST_CASE(a_book_that_cannot_be_opened_is_an_error_for_the_receiver) {
    tests::application();
    JobRunner runner(QStringLiteral("/nowhere/at/all.kempt"));
    QObject receiver;
    std::string code;
    runner.start(
        QStringLiteral("x"), &receiver, [](Book&, const Progress&) -> Result<int> { return 1; },
        [&](const Result<int>& result) { code = result.ok() ? "ok" : result.error().code; });
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(!code.empty());
    BOOST_TEST(code != "ok");
}

BOOST_AUTO_TEST_CASE(a_job_cancelled_before_it_begins_never_runs) {
    tests::application();
    JobRunner runner({});
    QObject receiver;
    std::latch gate(1);
    bool ran = false;
    std::optional<ErrorKind> kind;
    runner.start_without_book(
        QStringLiteral("first"), &receiver, [&](const Progress& progress) { return count_to(1, progress, &gate); },
        [](Result<int>) {});
    const JobHandle job = runner.start_without_book(
        QStringLiteral("second"), &receiver,
        [&](const Progress&) -> Result<int> {
            ran = true;
            return 1;
        },
        [&](const Result<int>& result) {
            if (!result.ok()) kind = result.error().kind;
        });
    job->cancel();
    gate.count_down();
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(!ran);
    BOOST_REQUIRE(kind.has_value());
    BOOST_TEST((*kind == ErrorKind::cancelled));
    BOOST_TEST((job->state() == State::cancelled));
}

BOOST_AUTO_TEST_CASE(a_job_cancelled_midway_stops_at_its_next_step) {
    tests::application();
    JobRunner runner({});
    QObject receiver;
    std::optional<ErrorKind> kind;
    std::atomic<int> reached{0};
    std::latch halfway(1), asked(1);
    const JobHandle job = runner.start_without_book(
        QStringLiteral("long"), &receiver,
        [&](const Progress& progress) -> Result<int> {
            for (int i = 0; i < 10; ++i) {
                if (tell(progress, i / 10.0, "step") == Go::stop)
                    return Error{ErrorKind::cancelled, "cancelled", "Stopped.", "", ""};
                reached = i;
                if (i == 5) {
                    halfway.count_down();
                    asked.wait();
                }
            }
            return 10;
        },
        [&](const Result<int>& result) {
            if (!result.ok()) kind = result.error().kind;
        });
    halfway.wait();
    job->cancel();
    asked.count_down();
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(reached == 5);
    BOOST_REQUIRE(kind.has_value());
    BOOST_TEST((*kind == ErrorKind::cancelled));
}

BOOST_AUTO_TEST_CASE(a_job_cancelled_after_its_last_step_gives_what_was_done) {
    tests::application();
    JobRunner runner({});
    QObject receiver;
    int value = -1;
    std::latch finished(1), asked(1);
    const JobHandle job = runner.start_without_book(
        QStringLiteral("done"), &receiver,
        [&](const Progress& progress) -> Result<int> {
            const auto result = count_to(3, progress);
            finished.count_down();
            asked.wait();
            return result;
        },
        [&](const Result<int>& result) {
            if (result.ok()) value = result.value();
        });
    finished.wait();
    job->cancel();
    asked.count_down();
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(value == 3);
    BOOST_TEST((job->state() == State::done));
}

BOOST_AUTO_TEST_CASE(a_throwing_use_case_becomes_an_error_and_the_next_job_runs) {
    tests::application();
    JobRunner runner({});
    QObject receiver;
    std::vector<std::string> codes;
    const auto hear = [&](const Result<int>& result) { codes.push_back(result.ok() ? "ok" : result.error().code); };
    runner.start_without_book(
        QStringLiteral("throws"), &receiver,
        [](const Progress&) -> Result<int> { throw std::runtime_error("disk on fire"); }, hear);
    runner.start_without_book(
        QStringLiteral("throws oddly"), &receiver, [](const Progress&) -> Result<int> { throw 7; }, hear);
    runner.start_without_book(
        QStringLiteral("works"), &receiver, [](const Progress& progress) { return count_to(2, progress); }, hear);
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(codes == (std::vector<std::string>{"job-threw", "job-threw", "ok"}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_throwing_receiver_does_not_bring_the_window_down) {
    tests::application();
    JobRunner runner({});
    QObject receiver;
    bool well = true;
    QObject::connect(&runner, &JobRunner::job_finished, &receiver,
                     [&](const QString&, bool was_well, const QString&) { well = was_well; });
    runner.start_without_book(
        QStringLiteral("x"), &receiver, [](const Progress& progress) { return count_to(1, progress); },
        [](Result<int>) { throw std::runtime_error("receiver"); });
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(!well);
}

BOOST_AUTO_TEST_CASE(the_answer_for_a_receiver_that_is_gone_is_dropped) {
    tests::application();
    JobRunner runner({});
    auto receiver = std::make_unique<QObject>();
    std::latch gate(1);
    bool heard = false, told = false;
    runner.start_without_book(
        QStringLiteral("x"), receiver.get(), [&](const Progress& progress) { return count_to(5, progress, &gate); },
        [&](Result<int>) { heard = true; }, [&](double, const QString&) { told = true; });
    receiver.reset();  // the window closes while the job runs
    gate.count_down();
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(!heard);
    BOOST_TEST(!told);
}

BOOST_AUTO_TEST_CASE(closing_the_runner_midway_stops_the_work_and_delivers_nothing) {
    tests::application();
    QObject receiver;
    bool heard = false;
    std::atomic<bool> stopped{false};
    std::latch running(1);
    {
        JobRunner runner({});
        runner.start_without_book(
            QStringLiteral("endless"), &receiver,
            [&](const Progress& progress) -> Result<int> {
                running.count_down();
                while (tell(progress, 0.5, "on and on") == Go::on) std::this_thread::yield();
                stopped = true;
                return 1;
            },
            [&](Result<int>) { heard = true; });
        running.wait();
    }
    QCoreApplication::processEvents();
    BOOST_TEST(stopped);
    BOOST_TEST(!heard);
}

BOOST_AUTO_TEST_CASE(while_dragging_only_the_newest_of_a_lane_is_heard) {
    tests::application();
    JobRunner runner({});
    QObject receiver;
    std::latch gate(1);
    std::vector<int> heard;
    const QString lane = QStringLiteral("live");
    for (int i = 0; i < 20; ++i)
        runner.start_latest(
            lane, QStringLiteral("measure"), &receiver,
            [&, i](const Progress& progress) -> Result<int> {
                const auto result = count_to(3, progress, &gate);
                if (!result) return result.error();
                return i;
            },
            [&](const Result<int>& result) {
                if (result.ok()) heard.push_back(result.value());
            });
    gate.count_down();
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_TEST(heard == (std::vector<int>{19}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(progress_arrives_in_order_with_its_first_and_last_step_and_few_between) {
    tests::application();
    JobRunner runner({});
    QObject receiver;
    std::vector<double> fractions;
    runner.start_without_book(
        QStringLiteral("steps"), &receiver,
        [](const Progress& progress) -> Result<int> {
            for (int i = 0; i <= 100000; ++i) (void)tell(progress, i / 100000.0, "step");
            return 1;
        },
        [](Result<int>) {}, [&](double fraction, const QString&) { fractions.push_back(fraction); });
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_REQUIRE(!fractions.empty());
    BOOST_TEST(fractions.front() == 0.0);
    BOOST_TEST(fractions.back() == 1.0);
    BOOST_TEST(std::is_sorted(fractions.begin(), fractions.end()));
    BOOST_TEST(fractions.size() < 10000u);
}

BOOST_AUTO_TEST_CASE(busy_is_told_once_at_the_start_and_once_at_the_end) {
    tests::application();
    JobRunner runner({});
    QObject receiver;
    std::vector<bool> busy;
    QObject::connect(&runner, &JobRunner::busy_changed, &receiver, [&](bool is) { busy.push_back(is); });
    for (int i = 0; i < 3; ++i)
        runner.start_without_book(
            QStringLiteral("x"), &receiver, [](const Progress& progress) { return count_to(1, progress); },
            [](Result<int>) {});
    BOOST_REQUIRE(all_delivered(runner));
    BOOST_REQUIRE_EQUAL(busy.size(), 2u);
    BOOST_TEST(busy[0]);
    BOOST_TEST(!busy[1]);
}

BOOST_AUTO_TEST_SUITE_END()
