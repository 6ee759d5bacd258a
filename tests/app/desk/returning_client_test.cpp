// "Fewer than 60 seconds and 25 actions from dropped photos of a returning client to a saved visit with readings for
// three views." The actions are counted here; the time is told, and measured on a quiet machine by bench_desk_round.
#include "returning_client.h"

#include <boost/test/unit_test.hpp>
#include <iostream>

#include "room.h"

using namespace kempt;
using test::read;

BOOST_AUTO_TEST_SUITE(returning_client)

BOOST_AUTO_TEST_CASE(three_dropped_photos_are_a_visit_with_readings_of_three_views_in_less_than_25_actions) {
    test::ReturningClient round("sample-images");  // tests run in the root of the sources
    round.run();
    BOOST_TEST_REQUIRE(round.trouble().isEmpty(), round.trouble().toStdString());
    std::cout << "returning client: " << round.actions << " actions, " << round.seconds << " s, longest stall "
              << round.longest_stall_ms << " ms\n";
    BOOST_TEST(round.actions < 25);
    BOOST_TEST(round.views_proposed == 3);
    const auto visits =
        read<QVector<Visit>>(round.book_path, [&](Book& b) { return work::list_visits(b, round.client); });
    BOOST_TEST_REQUIRE(visits.size() == 2);
    BOOST_TEST((visits.last().date == round.day));
    const auto photos =
        read<QVector<work::PhotoRow>>(round.book_path, [&](Book& b) { return work::list_photos(b, visits.last().id); });
    BOOST_TEST_REQUIRE(photos.size() == 3);
    const QVector<View> views{View::left_temple, View::right_temple, View::nape};
    for (int i = 0; i < 3; ++i) {
        BOOST_TEST((photos[i].photo.view == views[i]));
        BOOST_TEST(photos[i].has_marks);
        const bool covered = std::any_of(photos[i].readings.begin(), photos[i].readings.end(), [](const auto& r) {
            return r.name == "edge_coverage" && !r.refused && r.high > r.low;
        });
        BOOST_TEST(covered, "view " << i << " has no cover");
    }
    for (const QString& path : round.dropped) BOOST_TEST(QFile::exists(path));
}

BOOST_AUTO_TEST_SUITE_END()
