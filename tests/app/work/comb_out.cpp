// A comb-out that she corrects: the readings follow, with and without tracing anew.
#include <QFile>
#include <boost/test/unit_test.hpp>

#include "work/measure_json.h"
#include "work/measure_photo.h"

using namespace kempt;

namespace {

double value_of(const Result<work::MeasureResult>& result, const std::string& name) {
    BOOST_REQUIRE(result.ok());
    for (const Quantity& reading : result->readings)
        if (reading.name == name) return reading.value;
    BOOST_REQUIRE_MESSAGE(false, name + " is missing");
    return 0;
}

QPointF middle_of(const combings::Strand& strand) {
    const cv::Point2d p = strand.path_px[strand.path_px.size() / 2];
    return {p.x, p.y};
}

}  // namespace

BOOST_AUTO_TEST_SUITE(comb_out)

BOOST_AUTO_TEST_CASE(readings_follow_her_corrections_and_an_earlier_tracing_gives_the_same) {
    QFile file(QStringLiteral("sample-images/marisol/03-comb-out.jpg"));  // tests run in the root of the sources
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    const auto open = work::open_photo(file.readAll(), {});
    BOOST_REQUIRE(open.ok());
    Marks marks;
    marks.view = View::ends;
    marks.sheet = QStringLiteral("combings");
    const auto first = work::measure_open_photo(*open.value(), marks, {});
    const double count = value_of(first, "strands");
    BOOST_REQUIRE(first->combings.has_value());
    BOOST_REQUIRE(first->combings->strands.size() >= 4);
    BOOST_TEST(count + first->combings->parts == static_cast<double>(first->combings->strands.size()));
    BOOST_REQUIRE(first->combings->parts == 0);  // or taking out and joining would move it
    BOOST_TEST(work::json_of_measure(*first)["strand_parts"].toInt(-1) == 0);
    Marks by_hand = marks;
    by_hand.not_hair = {middle_of(first->combings->strands[0])};
    by_hand.joined = {middle_of(first->combings->strands[1]), middle_of(first->combings->strands[2])};
    const auto anew = work::measure_open_photo(*open.value(), by_hand, {});
    BOOST_TEST(value_of(anew, "strands") == count - 2);
    BOOST_TEST(anew->combings->strands.size() == first->combings->strands.size() - 2);
    BOOST_TEST(anew->traced->strands.size() == first->combings->strands.size());
    const work::Earlier earlier{marks, *first};
    const auto again = work::measure_open_photo(*open.value(), by_hand, {}, {}, &earlier);
    for (const char* name : {"strands", "strand_median", "short_share"})
        BOOST_TEST(value_of(again, name) == value_of(anew, name));
    BOOST_TEST(again->combings->strands[0].length_mm == anew->combings->strands[0].length_mm);
    // Two that are likely parts of others, and then are said to be hairs of their own.
    work::Earlier torn{marks, *first};
    for (combings::Strand& strand : torn.result.traced->strands)
        if (&strand < &torn.result.traced->strands[2]) strand.torn_ends = 1, strand.torn[1] = 0.95;
    Marks whole = marks;
    whole.whole = {middle_of(first->combings->strands[0])};
    BOOST_TEST(!same_marks_for(ReadingGroup::combings, marks, whole));
    const auto one = work::measure_open_photo(*open.value(), whole, {}, {}, &torn);
    whole.whole.append(middle_of(first->combings->strands[1]));
    const auto both = work::measure_open_photo(*open.value(), whole, {}, {}, &torn);
    for (const auto* said : {&one, &both}) {
        BOOST_REQUIRE(said->ok());
        BOOST_TEST((*said)->combings->strands[0].whole);
    }
    BOOST_TEST(!(*one).combings->strands[1].whole);
    BOOST_TEST(value_of(both, "strands") == count);
    // And back.
    const work::Earlier corrected{by_hand, *again};
    const auto back = work::measure_open_photo(*open.value(), marks, {}, {}, &corrected);
    BOOST_TEST(value_of(back, "strands") == count);
}

BOOST_AUTO_TEST_SUITE_END()
