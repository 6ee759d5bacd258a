// A real photograph through intake, marks, two-point scale and the readings that its resolution can bear. The picture
// is public domain and comes from Debian's python3-skimage (tests/support/fetch_fixtures.sh); without it the tests that
// need it say so and stop.
#include "work/real_photo.h"

#include <QFile>
#include <iostream>

#include "app/work/temporary_book.h"
#include "domain/marks_json.h"
#include "domain/words.h"
#include "work/import_photos.h"
#include "work/measure_in_book.h"
#include "work/set_marks.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

const QString samples = QStringLiteral(KEMPT_SAMPLES_FOLDER);

QString portrait() {
    for (const QString& folder :
         {work::fixtures_folder(), QStringLiteral("/usr/lib/python3/dist-packages/skimage/data")})
        if (const QString path = work::find_portrait(folder); !path.isEmpty()) return path;
    std::cout << "skipped: the portrait astronaut.png is not here (KEMPT_FIXTURES, tests/support/fetch_fixtures.sh)\n";
    return {};
}

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

Marks portrait_marks() {
    return TemporaryBook::required(
        marks_from_json(bytes_of(samples + QStringLiteral("/without-card/portrait.marks.json"))));
}

}  // namespace

BOOST_AUTO_TEST_SUITE(real_photo)

BOOST_AUTO_TEST_CASE(a_portrait_from_afar_is_refused_for_its_coarseness_and_told_what_to_do) {
    const QString path = portrait();
    if (path.isEmpty()) return;
    const auto result = TemporaryBook::required(work::measure_photo(bytes_of(path), portrait_marks()));
    BOOST_TEST(result.header.format.toStdString() == "png");
    BOOST_TEST((result.header.size == QSize(512, 512)));
    BOOST_TEST(!result.calibration.card_found);
    BOOST_TEST(result.calibration.two_points);
    // 44 px between the pupils, taken as 62 mm.
    BOOST_TEST(result.px_per_mm == 0.71, boost::test_tools::tolerance(0.02));
    BOOST_TEST(result.quality.level == "refused");
    BOOST_TEST(result.readings.empty());
    BOOST_REQUIRE_EQUAL(result.refused.size(), static_cast<std::size_t>(edge_reading_names().size()));
    for (const Refusal& refusal : result.refused) BOOST_TEST(refusal.code == "too-coarse");
    const Finding& first = result.quality.findings.front();
    BOOST_TEST(first.code == "too-coarse");
    BOOST_TEST(first.text.find("0.7 pixels per mm") != std::string::npos, first.text);
    BOOST_TEST(first.remedy.find("Come closer") != std::string::npos, first.remedy);
}

// The same skin and hair, were it photographed from near: the scale is stated, not real, so only the kind of answer
// counts here, never its figures.
BOOST_AUTO_TEST_CASE(the_same_portrait_at_a_closer_scale_gives_coverage_at_most_and_never_counts) {
    const QString path = portrait();
    if (path.isEmpty()) return;
    const QByteArray bytes = bytes_of(path);
    Marks marks = portrait_marks();
    for (const double px_per_mm : {3.5, 5.0, 7.0}) {
        marks.scale_mm = 44.05 / px_per_mm;
        const auto result = work::measure_photo(bytes, marks);
        BOOST_REQUIRE_MESSAGE(result.ok(), (result.ok() ? "" : result.error().sentence()));
        BOOST_TEST_CONTEXT(px_per_mm << " px/mm") {
            for (const Quantity& reading : result->readings) {
                BOOST_TEST(reading.name == "edge_coverage");
                BOOST_TEST(reading.low <= reading.value);
                BOOST_TEST(reading.high >= reading.value);
            }
            BOOST_TEST((px_per_mm > 4 || result->readings.empty()));
            for (const Refusal& refusal : result->refused) BOOST_TEST(!refusal.text.empty());
        }
    }
}

BOOST_AUTO_TEST_CASE(in_the_book_it_is_kept_with_its_refusals_and_its_scale) {
    const QString path = portrait();
    if (path.isEmpty()) return;
    TemporaryBook in;
    work::ImportOptions options;
    options.visit = in.visit.id;
    options.paths = {path};
    const auto taken = TemporaryBook::required(work::import_photos(*in.book, options));
    BOOST_REQUIRE_EQUAL(taken.imported, 1);
    const Id photo = taken.files.front().photo;
    TemporaryBook::required(work::set_marks(*in.book, photo, portrait_marks()));
    const auto measured = TemporaryBook::required(work::measure_in_book(*in.book, photo));
    BOOST_TEST(measured.photo.quality_level.toStdString() == "refused");
    for (const ReadingRecord& reading : measured.readings) {
        BOOST_TEST(reading.refused);
        BOOST_TEST(reading.card.contains(QStringLiteral("points")));
    }
    BOOST_TEST((TemporaryBook::required(work::photo_bytes(*in.book, photo)) == bytes_of(path)));
}

BOOST_AUTO_TEST_CASE(the_demo_takes_it_only_where_it_is_and_its_digest_tells_the_two_apart) {
    work::Scenario scenario;
    scenario.today = QDate(2026, 10, 6);
    scenario.digest = "abc";
    TemporaryBook::required(work::add_photo_without_card(scenario, samples, QString()));
    TemporaryBook::required(work::add_photo_without_card(scenario, samples, QStringLiteral("/nowhere")));
    BOOST_TEST(scenario.clients.isEmpty());
    BOOST_TEST((scenario.digest == "abc"));
    const QString path = portrait();
    if (path.isEmpty()) return;
    TemporaryBook::required(work::add_photo_without_card(scenario, samples, QFileInfo(path).path()));
    BOOST_REQUIRE_EQUAL(scenario.clients.size(), 1);
    BOOST_TEST(scenario.clients.front().client.name.toStdString() == "Photo without a card (example)");
    BOOST_TEST((scenario.clients.front().visits.front().photos.front().file == path));
    BOOST_TEST((scenario.digest != "abc"));
}

BOOST_AUTO_TEST_SUITE_END()
