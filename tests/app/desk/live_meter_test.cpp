#include <QElapsedTimer>
#include <boost/test/unit_test.hpp>

#include "desk/photo/live_meter.h"
#include "jobs/job_runner.h"
#include "room.h"

using namespace kempt;
using namespace kempt::desk;

namespace {

struct Meter {
    Meter() {
        meter.set_photo(
            [this](const Marks& marks, bool, const Progress& progress) { return analysis.measure(marks, progress); });
        QObject::connect(&meter, &LiveMeter::measured, &meter, [this](const Measured& m, bool current) {
            values.append(m.readings.first().value);
            last_current = current;
        });
    }
    test::FakeAnalysis analysis;
    jobs::JobRunner runner{QString()};
    LiveMeter meter{runner};
    QVector<double> values;
    bool last_current = false;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(live_meter, Meter)

BOOST_AUTO_TEST_CASE(the_reading_arrives_for_what_is_drawn) {
    meter.set_marks(test::some_marks(5), false);
    BOOST_TEST(test::wait_until([this] { return values == QVector<double>{50} && last_current; }));
    BOOST_TEST(!meter.measuring());
}

BOOST_AUTO_TEST_CASE(readings_follow_a_hand_that_does_not_stop) {
    analysis.slow_ms = 80;
    QElapsedTimer clock;
    clock.start();
    int points = 2;
    // New marks every 20 ms, faster than a measurement takes, until three answers have been shown on the way.
    while (values.size() < 3 && clock.elapsed() < 20000) {
        meter.set_marks(test::some_marks(points++ % 50 + 2), true);
        QTest::qWait(20);
    }
    BOOST_TEST(values.size() >= 3);
    analysis.slow_ms = 0;
    meter.set_marks(test::some_marks(6), false);
    BOOST_TEST(test::wait_until([this] { return last_current && values.last() == 60; }));
}

BOOST_AUTO_TEST_CASE(an_answer_for_older_marks_is_dropped_once_the_hand_is_still) {
    analysis.slow_ms = 300;
    meter.set_marks(test::some_marks(3), false);
    BOOST_TEST(test::wait_until([this] { return meter.measuring(); }));
    meter.set_marks(test::some_marks(9), false);
    BOOST_TEST(test::wait_until([this] { return !values.isEmpty() && !meter.measuring(); }));
    BOOST_TEST((values == QVector<double>{90}));
    BOOST_TEST(analysis.stopped >= 1);  // the older one was told to stop, not only forgotten
}

BOOST_AUTO_TEST_CASE(another_photo_drops_what_was_under_way) {
    analysis.slow_ms = 200;
    meter.set_marks(test::some_marks(3), false);
    BOOST_TEST(test::wait_until([this] { return meter.measuring(); }));
    meter.set_photo({});
    BOOST_TEST(!meter.measuring());
    BOOST_TEST(test::wait_until([this] { return runner.unfinished() == 0; }));
    BOOST_TEST(values.isEmpty());
}

BOOST_AUTO_TEST_CASE(the_window_goes_on_while_a_slow_measurement_runs) {
    analysis.slow_ms = 500;
    int ticks = 0, while_measuring = 0;
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, &timer, [&] {
        ++ticks;
        if (meter.measuring()) ++while_measuring;
    });
    timer.start(5);
    meter.set_marks(test::some_marks(4), false);
    BOOST_TEST(test::wait_until([this] { return !values.isEmpty(); }));
    // 500 ms hold a hundred ticks of 5 ms; a frozen window would have one.
    BOOST_TEST(while_measuring >= 10);
}

BOOST_AUTO_TEST_SUITE_END()
