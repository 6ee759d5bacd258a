#include <QJsonArray>

#include "app/command/program.h"
#include "domain/words.h"

using namespace kempt;
using tests::Program;
using tests::words;

BOOST_AUTO_TEST_SUITE(measure)

BOOST_AUTO_TEST_CASE(the_json_of_measure_keeps_the_contract) {
    const Program kempt;
    kempt.write_photo(QStringLiteral("p"), {});
    const QJsonObject json = kempt.json(words("measure p.jpg --marks p.json"));
    BOOST_TEST((json.keys() == QStringList{"card", "photo", "quality", "readings", "refused"}));
    BOOST_TEST(json["photo"].toObject()["width"].toInt() == 2000);
    BOOST_TEST(json["photo"].toObject()["height"].toInt() == 1700);
    const QJsonObject card = json["card"].toObject();
    BOOST_TEST(card["found"].toBool());
    BOOST_TEST(card["px_per_mm"].toDouble() == 20.0, boost::test_tools::tolerance(0.01));
    BOOST_TEST(card["tilt_deg"].isDouble());
    BOOST_TEST(card["gains"].toArray().size() == 3);
    const QString level = json["quality"].toObject()["level"].toString();
    BOOST_TEST((level == u"good" || level == u"usable"));
    QStringList names;
    for (const QJsonValue& value : json["readings"].toArray()) {
        const QJsonObject reading = value.toObject();
        names.append(reading["name"].toString());
        BOOST_TEST(reading["low"].toDouble() <= reading["value"].toDouble());
        BOOST_TEST(reading["value"].toDouble() <= reading["high"].toDouble());
        BOOST_TEST(!reading["unit"].toString().isEmpty());
    }
    for (const QJsonValue& value : json["refused"].toArray()) names.append(value.toObject()["name"].toString());
    names.sort();
    QStringList expected = edge_reading_names();
    expected.sort();
    BOOST_TEST((names == expected));
}

BOOST_AUTO_TEST_CASE(a_photo_without_any_scale_is_an_answer_not_a_failure) {
    const Program kempt;
    tests::CardPhoto bare;
    bare.with_card = false;
    kempt.write_photo(QStringLiteral("p"), bare);
    const QJsonObject json = kempt.json(words("measure p.jpg --marks p.json"));
    BOOST_TEST(!json["card"].toObject()["found"].toBool());
    BOOST_TEST(json["card"].toObject()["px_per_mm"].isNull());
    BOOST_TEST(json["readings"].toArray().isEmpty());
    BOOST_TEST(json["refused"].toArray().size() == edge_reading_names().size());
    BOOST_TEST(json["quality"].toObject()["findings"].toArray().size() >= 1);
    for (const QJsonValue& value : json["quality"].toObject()["findings"].toArray())
        BOOST_TEST((value.toObject().keys() == QStringList{"code", "level", "remedy", "text"}));
}

BOOST_AUTO_TEST_CASE(marks_without_an_edge_line_say_that_there_is_nothing_to_measure) {
    const Program kempt;
    kempt.write_photo(QStringLiteral("p"), {});
    kempt.write(QStringLiteral("m.json"), "{}");
    BOOST_TEST(kempt.run(words("measure p.jpg --marks m.json"))
                   .out.contains("Nothing to measure: the marks hold no edge line."));
    for (const char* marks : {"{}", R"({"edge_lines": [[1, 1], [90, 1]], "hair_side": [5, 5]})"}) {
        kempt.write(QStringLiteral("m.json"), marks);
        const QJsonObject json = kempt.json(words("measure p.jpg --marks m.json"));
        BOOST_TEST(json["readings"].toArray().isEmpty());
        BOOST_TEST(json["refused"].toArray().size() == edge_reading_names().size());
        for (const QJsonValue& value : json["refused"].toArray())
            BOOST_TEST(value.toObject()["code"].toString().toStdString() == "no-edge-line");
    }
}

BOOST_AUTO_TEST_CASE(marks_that_miss_the_photo_exit_1) {
    const Program kempt;
    kempt.write_photo(QStringLiteral("p"), {});
    kempt.write(QStringLiteral("m.json"), R"({"view": "nape", "edge_line": [[1, 1], [9000, 1]], "hair_side": [5, 5]})");
    kempt.fails(1, words("measure p.jpg --marks m.json --json"), "outside");
}

BOOST_AUTO_TEST_CASE(the_plain_answer_names_the_readings) {
    const Program kempt;
    kempt.write_photo(QStringLiteral("p"), {});
    const QByteArray out = kempt.done(words("measure p.jpg --marks p.json")).out;
    BOOST_TEST(out.contains("edge coverage: "));
    BOOST_TEST(out.contains("2000 x 1700"));
}

BOOST_AUTO_TEST_CASE(the_card_is_drawn_as_pdf_and_png) {
    const Program kempt;
    BOOST_TEST(kempt.json(words("card --kind card --out c.pdf"))["format"].toString().toStdString() == "pdf");
    BOOST_TEST(kempt.read(QStringLiteral("c.pdf")).startsWith("%PDF"));
    (void)kempt.done(words("card --kind sheet --paper letter --out s.pdf"));
    BOOST_TEST(kempt.read(QStringLiteral("s.pdf")).startsWith("%PDF"));
    (void)kempt.done(words("card --kind card --png --px-per-mm 12 --out c.png"));
    BOOST_TEST((QImage::fromData(kempt.read(QStringLiteral("c.png"))).size() == QSize(1008, 360)));
}

BOOST_AUTO_TEST_SUITE_END()
