#include <QJsonObject>
#include <boost/test/unit_test.hpp>

#include "report/export_csv.h"
#include "report/export_json.h"

using namespace kempt;
using namespace kempt::report;

namespace {

ExportedReading example_reading() {
    ExportedReading one;
    one.client = QStringLiteral("Lindqvist, Amara");
    one.visit = QDate(2026, 1, 14);
    one.view = View::left_temple;
    one.file_name = QStringLiteral("IMG \"1\".jpg");
    one.reading.name = QStringLiteral("edge_coverage");
    one.reading.unit = QStringLiteral("%");
    one.reading.value = 41.2;
    one.reading.low = 1.0 / 3;
    one.reading.high = 44;
    one.reading.analysis_version = 1;
    one.reading.options = QStringLiteral("{\"depth_mm\": 20}");
    one.reading.measured_at = QDateTime(QDate(2026, 1, 14), QTime(9, 30), Qt::UTC);
    return one;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(export_of_readings)

// RFC 4180, section 2: rules 1 (CR LF), 5 to 7 (quotes about commas, line breaks and doubled quotes).
BOOST_AUTO_TEST_CASE(csv_follows_rfc_4180) {
    BOOST_CHECK_EQUAL(csv_line({"aaa", "b\r\nbb", "c\"c", "d,d", ""}).toStdString(),
                      "aaa,\"b\r\nbb\",\"c\"\"c\",\"d,d\",\r\n");
    const QByteArray csv = readings_csv({example_reading()});
    const QList<QByteArray> lines = csv.split('\n');
    BOOST_REQUIRE_EQUAL(lines.size(), 3);
    BOOST_CHECK_EQUAL(lines[0].count(','), 15);
    BOOST_CHECK(lines[1].startsWith(
        "\"Lindqvist, Amara\",2026-01-14,left temple,1,\"IMG \"\"1\"\".jpg\",edge_coverage,41.2,%,"));
    BOOST_CHECK_EQUAL(lines[1].split(',').at(9).toDouble(), 1.0 / 3);  // every digit; the name's comma makes one more
    BOOST_CHECK(lines[1].endsWith("2026-01-14T09:30:00Z\r"));
}

BOOST_AUTO_TEST_CASE(csv_text_is_never_a_formula) {
    BOOST_CHECK_EQUAL(csv_line({"=1+1", "@x", "-2.5", "+1", "-x", "a=b"}).toStdString(),
                      "'=1+1,'@x,-2.5,+1,'-x,a=b\r\n");
}

BOOST_AUTO_TEST_CASE(refused_readings_have_a_reason_and_no_value) {
    ExportedReading one = example_reading();
    one.reading.refused = true;
    one.reading.refusal_code = QStringLiteral("too-coarse");
    one.reading.refusal_text = QStringLiteral("The photo is too coarse.");
    BOOST_CHECK(readings_csv({one}).contains(",edge_coverage,,%,,,yes,too-coarse,The photo is too coarse.,1,"));
    const QJsonObject object = readings_json({one}).first().toObject();
    BOOST_CHECK(object.value(QStringLiteral("value")).isNull());
    BOOST_CHECK(object.value(QStringLiteral("refusal_code")).toString() == QStringLiteral("too-coarse"));
}

BOOST_AUTO_TEST_CASE(json_carries_options_as_an_object) {
    const QJsonObject object = readings_json({example_reading()}).first().toObject();
    BOOST_CHECK_EQUAL(object.value(QStringLiteral("value")).toDouble(), 41.2);
    BOOST_CHECK_EQUAL(object.value(QStringLiteral("options")).toObject().value(QStringLiteral("depth_mm")).toInt(), 20);
    BOOST_CHECK(object.value(QStringLiteral("card")).isNull());
}

BOOST_AUTO_TEST_SUITE_END()
