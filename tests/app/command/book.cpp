#include <QJsonArray>

#include "app/command/program.h"

using namespace kempt;
using tests::Program;
using tests::words;

namespace {

tests::CardPhoto shot(double strands_per_cm, unsigned seed) {
    tests::CardPhoto what;
    what.size = QSize(1900, 1400);
    what.card_at = QPoint(100, 70);
    what.edge_y = 850;
    what.strands_per_cm = strands_per_cm;
    what.seed = seed;
    return what;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(book)

BOOST_AUTO_TEST_CASE(from_photos_to_report_by_commands_alone) {
    const Program kempt;
    const QJsonObject client =
        kempt.json({"client", "add", "b.kempt", "--name", "Ada Lindqvist", "--new", "--photo-consent"});
    BOOST_TEST(client["id"].toInt() == 1);
    (void)kempt.json(words("visit add b.kempt --client 1 --date 2026-01-12"));
    (void)kempt.json(words("visit add b.kempt --client 1 --date 2026-03-12"));
    for (int visit = 1; visit <= 2; ++visit)
        for (int n = 1; n <= 2; ++n) {
            const QString name = QStringLiteral("v%1s%2").arg(visit).arg(n);
            kempt.write_photo(name, shot(visit == 1 ? 8 : 20, static_cast<unsigned>(10 * visit + n)));
            const QJsonObject added = kempt.json(
                {"photo", "add", "b.kempt", "--visit", QString::number(visit), "--view", "left-temple", name + ".jpg"});
            BOOST_TEST(added["imported"].toInt() == 1);
            const QString photo = QString::number(added["files"].toArray()[0].toObject()["photo"].toInt());
            (void)kempt.json({"marks", "add", "b.kempt", "--photo", photo, "--marks", name + ".json"});
        }
    const QJsonObject measured = kempt.json(words("photo measure b.kempt --client 1"));
    BOOST_TEST(measured["measured"].toInt() == 4);
    BOOST_TEST(kempt.json(words("photo measure b.kempt --client 1"))["kept"].toInt() == 4);
    (void)kempt.json(
        {"service", "add", "b.kempt", "--client", "1", "--date", "2026-02-01", "--kind", "protein treatment"});
    (void)kempt.json(words("target add b.kempt --client 1 --view left-temple --reading edge_coverage --value 80"));
    (void)kempt.json(words("grade add b.kempt --visit 1 --zone Left-temple --quality edges --value 1"));
    const QJsonObject progress = kempt.json(words("progress b.kempt --client 1"));
    bool coverage = false;
    for (const QJsonValue& value : progress["series"].toArray()) {
        const QJsonObject series = value.toObject();
        if (series["reading"].toString() != u"edge_coverage") continue;
        coverage = true;
        BOOST_TEST(series["visits"].toArray().size() == 2);
        BOOST_TEST(series["verdicts"].toArray().size() == 1);
        BOOST_TEST(series["verdicts"].toArray()[0].toObject()["verdict"].toString().toStdString() == "improved");
        BOOST_TEST(series["trend"].isNull());
        BOOST_TEST(series["target"].toObject()["share"].isDouble());
    }
    BOOST_TEST(coverage);
    const QJsonObject compared =
        kempt.json(words("compare b.kempt --client 1 --view left-temple --from 1 --to 2 --out pair.png"));
    BOOST_TEST(compared["px_per_mm"].toDouble() > 5);
    BOOST_TEST(!QImage::fromData(kempt.read(QStringLiteral("pair.png"))).isNull());
    const QJsonObject turned =
        kempt.json(words("compare b.kempt --client 1 --view left-temple --from 2 --to 1 --out turned.png"));
    BOOST_TEST((turned["before_photo"] == compared["before_photo"]));
    BOOST_TEST((turned["verdict"] == compared["verdict"]));
    kempt.fails(1, words("compare b.kempt --client 1 --view left-temple --from 1 --to 1 --out same.png"), "itself");
    kempt.fails(1, words("card --kind card --out b.kempt"), "is a book");
    kempt.fails(1, words("report b.kempt --client 1 --out b.kempt"), "is a book");
    (void)kempt.json(words("report b.kempt --client 1 --out report.pdf --today 2026-04-01"));
    BOOST_TEST(kempt.read(QStringLiteral("report.pdf")).startsWith("%PDF"));
    const QJsonObject exported = kempt.json(words("export b.kempt --out out --photos"));
    BOOST_TEST(exported["files"].toArray().size() == 15);
    BOOST_TEST(exported["notes"].toArray()[0].toString().contains(u"faces"));
    BOOST_TEST(kempt.json(words("export b.kempt --out tables"))["notes"].toArray().isEmpty());
    BOOST_TEST(kempt.run(words("export --help")).out.contains("faces are seen"));
    (void)kempt.done(words("client change b.kempt --client 1 --consent no"));
    kempt.fails(1, words("compare b.kempt --client 1 --view left-temple --from 1 --to 2 --out withheld.png"),
                "has not agreed");
    BOOST_TEST(!QFile::exists(kempt.folder.filePath(QStringLiteral("withheld.png"))));
    BOOST_TEST(kempt.json(words("check b.kempt"))["sound"].toBool());
    (void)kempt.json(words("backup b.kempt --out copy.kempt"));
    const auto erased = kempt.run(words("client erase b.kempt --client 1 --yes"));
    BOOST_TEST(erased.out.contains("b.kempt.before-restore"));
    BOOST_TEST(erased.out.contains("b.kempt.version-N"));
    BOOST_TEST(kempt.json(words("client list b.kempt"))["clients"].toArray().isEmpty());
    BOOST_TEST(!kempt.json(words("restore b.kempt --from copy.kempt"))["kept"].isNull());
    BOOST_TEST(kempt.json(words("client list b.kempt"))["clients"].toArray().size() == 1);
}

BOOST_AUTO_TEST_CASE(a_batch_with_a_bad_file_keeps_the_good_ones_and_exits_1) {
    const Program kempt;
    (void)kempt.json({"client", "add", "b.kempt", "--name", "Ada", "--new"});
    (void)kempt.json(words("visit add b.kempt --client 1 --date 2026-01-12"));
    kempt.write_photo(QStringLiteral("good"), shot(10, 1));
    kempt.write(QStringLiteral("bad.jpg"), "no picture");
    const auto ran = kempt.run(words("photo add b.kempt --visit 1 --view nape bad.jpg good.jpg good.jpg --json"));
    BOOST_TEST(ran.exit == 1);
    BOOST_TEST(ran.err.count('\n') == 1);
    const QJsonObject json = ran.json();
    BOOST_TEST(json["imported"].toInt() == 1);
    BOOST_TEST(json["duplicates"].toInt() == 1);
    BOOST_TEST(json["failed"].toInt() == 1);
    BOOST_TEST(!json["files"].toArray()[0].toObject()["text"].toString().isEmpty());
    BOOST_TEST(kempt.json(words("photo list b.kempt --visit 1"))["photos"].toArray().size() == 1);
}

BOOST_AUTO_TEST_CASE(records_are_added_listed_shown_and_erased) {
    const Program kempt;
    (void)kempt.json({"client", "add", "b.kempt", "--name", "Ada", "--new"});
    (void)kempt.json(words("visit add b.kempt --client 1 --date 2026-01-12 --wet"));
    BOOST_TEST(kempt.json(words("visit show b.kempt --visit 1"))["hair"].toObject()["wet"].toBool());
    const QJsonObject service =
        kempt.json({"service", "add", "b.kempt", "--client", "1", "--date", "2026-02-01", "--kind", "gloss"});
    const QJsonObject grade =
        kempt.json(words("grade add b.kempt --visit 1 --zone nape --quality breakage --value 3 --round 2"));
    const QJsonObject target =
        kempt.json(words("target add b.kempt --client 1 --view nape --reading bare_length --value 5"));
    // A second target for the same view and reading takes the place of the first.
    BOOST_TEST((kempt.json(words("target add b.kempt --client 1 --view nape --reading bare_length --value 4"))["id"] ==
                target["id"]));
    const std::pair<const char*, QJsonObject> all[] = {{"service", service}, {"grade", grade}, {"target", target}};
    for (const auto& [name, record] : all) {
        const QString id = QString::number(record["id"].toInt());
        const QString option = QStringLiteral("--") + QString::fromLatin1(name);
        BOOST_TEST((kempt.json({name, "show", "b.kempt", option, id})["id"] == record["id"]));
        (void)kempt.json({name, "erase", "b.kempt", option, id});
        kempt.fails(1, {name, "show", "b.kempt", option, id}, "");
    }
    BOOST_TEST(kempt.json(words("service list b.kempt --client 1"))["services"].toArray().isEmpty());
    BOOST_TEST(kempt.json(words("grade list b.kempt --visit 1"))["grades"].toArray().isEmpty());
    BOOST_TEST(kempt.json(words("target list b.kempt --client 1"))["targets"].toArray().isEmpty());
    (void)kempt.json(words("visit erase b.kempt --visit 1"));
    kempt.fails(1, words("visit show b.kempt --visit 1"), "");
    kempt.fails(1, {"client", "add", "b.kempt", "--name", "Ada", "--new"}, "b.kempt");
}

BOOST_AUTO_TEST_CASE(the_printer_correction_is_kept_in_the_book) {
    const Program kempt;
    (void)kempt.json({"client", "add", "b.kempt", "--name", "Ada", "--new"});
    BOOST_TEST(kempt.json(words("card b.kempt --check-line 49.5"))["printer_scale"].toDouble() == 0.99,
               boost::test_tools::tolerance(1e-9));
    kempt.fails(1, words("card b.kempt --check-line 30"), "check line");
}

BOOST_AUTO_TEST_CASE(a_small_demo_writes_all_it_names_and_a_second_run_leaves_it_as_it_is) {
    const Program kempt;
    for (int visit = 1; visit <= 2; ++visit)
        kempt.write_photo(QStringLiteral("v%1").arg(visit), shot(visit == 1 ? 8 : 20, static_cast<unsigned>(visit)));
    kempt.write(QStringLiteral("scenario.json"), R"({"salon": "Test", "today": "2026-04-01", "clients": [
        {"name": "Ada Lindqvist", "photo_consent": true, "visits": [
          {"date": "2026-01-12", "photos": [{"file": "v1.jpg", "view": "left temple", "marks": "v1.json"}]},
          {"date": "2026-03-12", "photos": [{"file": "v2.jpg", "view": "left temple", "marks": "v2.json"},
                                            {"file": "none.jpg", "view": "nape"}]}],
         "services": [{"date": "2026-02-01", "kind": "gloss"}],
         "targets": [{"view": "left temple", "reading": "edge_coverage", "value": 70}]}]})");
    const QJsonObject made = kempt.json(words("demo --samples . --out demo"));
    BOOST_TEST(made["measured"].toInt() == 2);
    BOOST_TEST(made["problems"].toArray().size() == 1);
    BOOST_TEST(!made["as_it_was"].toBool());
    QStringList files;
    for (const QJsonValue& file : made["files"].toArray()) {
        files.append(file.toString());
        BOOST_TEST(!kempt.read(QStringLiteral("demo/") + file.toString()).isEmpty());
    }
    for (const char* name :
         {"ada-lindqvist/report.pdf", "ada-lindqvist/before-after-left-temple.png", "ada-lindqvist/progress.json",
          "ada-lindqvist/plan.json", "due.ics", "ada-lindqvist/charts/left-temple-edge-coverage.png",
          "readings/readings.csv", "readings/book.json"})
        BOOST_TEST(files.contains(QString::fromLatin1(name)), name);
    BOOST_TEST(!kempt.read(QStringLiteral("demo/due.ics")).contains("Lindqvist"));  // numbers, no names
    BOOST_TEST(kempt.json(words("check demo/demo.kempt"))["sound"].toBool());
    BOOST_TEST(kempt.json(words("demo --samples . --out demo"))["as_it_was"].toBool());
    BOOST_TEST(QFile::remove(kempt.folder.filePath(QStringLiteral("demo/ada-lindqvist/report.pdf"))));
    BOOST_TEST(!kempt.json(words("demo --samples . --out demo"))["as_it_was"].toBool());
}

BOOST_AUTO_TEST_CASE(the_demo_never_takes_the_place_of_a_book_that_is_not_its_own) {
    const Program kempt;
    kempt.write_photo(QStringLiteral("v1"), shot(8, 1));
    kempt.write(QStringLiteral("scenario.json"), R"({"today": "2026-04-01", "clients": [{"name": "A", "visits": [
          {"date": "2026-01-12", "photos": [{"file": "v1.jpg", "view": "nape", "marks": "v1.json"}]}]}]})");
    QDir(kempt.folder.path()).mkdir(QStringLiteral("mine"));
    (void)kempt.json({"client", "add", "mine/demo.kempt", "--name", "Ada", "--new"});
    kempt.fails(1, words("demo --samples . --out mine"), "not the demo");
    BOOST_TEST(kempt.json(words("client list mine/demo.kempt"))["clients"].toArray().size() == 1);
}

BOOST_AUTO_TEST_SUITE_END()
