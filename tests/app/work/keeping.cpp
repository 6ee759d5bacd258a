#include <QDir>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "app/work/book_photos.h"
#include "work/errors.h"
#include "work/export_book.h"
#include "work/keep_safe.h"
#include "work/make_report.h"
#include "work/print_card.h"
#include "work/scenario.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {
QByteArray content(const QString& path) {
    QFile file(path);
    BOOST_REQUIRE_MESSAGE(file.open(QIODevice::ReadOnly), path.toStdString());
    return file.readAll();
}
}  // namespace

BOOST_AUTO_TEST_SUITE(keeping)

BOOST_AUTO_TEST_CASE(a_backup_restores_what_was_there_and_the_former_book_is_kept) {
    TemporaryBook in;
    const QString copy = in.folder.filePath(QStringLiteral("copy.kempt"));
    TemporaryBook::required(work::backup_book(*in.book, copy));
    BOOST_TEST(!work::backup_book(*in.book, copy).ok());  // never over an existing file
    TemporaryBook::required(work::erase_client(*in.book, in.client.id));
    in.book.reset();
    const auto restored = TemporaryBook::required(work::restore_book(copy, in.path));
    BOOST_TEST(QFileInfo::exists(restored.kept));
    in.book = TemporaryBook::required(work::open_book(in.path));
    BOOST_TEST(TemporaryBook::required(work::list_clients(*in.book)).size() == 1);
}

BOOST_AUTO_TEST_CASE(no_output_is_written_over_a_book) {
    const TemporaryBook in;
    const QByteArray before = content(in.path);
    const Status refused = work::write_file(in.path, "a picture");
    BOOST_REQUIRE(!refused.ok());
    BOOST_TEST(refused.error().code == "target-is-a-book");
    BOOST_TEST((content(in.path) == before));
}

BOOST_AUTO_TEST_CASE(a_sound_book_is_called_sound_and_counted) {
    TemporaryBook in;
    tests::add_measured(in, in.visit, tests::small_photo(12, 1));
    const auto report = TemporaryBook::required(work::check_book(*in.book));
    BOOST_TEST(report.sound);
    BOOST_TEST(report.clients == 1);
    BOOST_TEST(report.visits == 1);
    BOOST_TEST(report.photos == 1);
    BOOST_TEST(report.readings == 5);
}

BOOST_AUTO_TEST_CASE(the_export_holds_every_record_and_the_original_bytes) {
    TemporaryBook in;
    const Id photo = tests::add_measured(in, in.visit, tests::small_photo(12, 1));
    TemporaryBook::required(work::add_service(
        *in.book, {0, in.client.id, std::nullopt, QDate(2026, 2, 1), QStringLiteral("protein treatment"), {}}));
    work::ExportOptions options;
    options.folder = in.folder.filePath(QStringLiteral("out"));
    options.photos = true;
    const auto report = TemporaryBook::required(work::export_book(*in.book, options));
    BOOST_TEST(report.files.size() == 12);
    const QDir out(options.folder);
    const QJsonObject json = QJsonDocument::fromJson(content(out.filePath(QStringLiteral("book.json")))).object();
    const QJsonObject client = json["clients"].toArray()[0].toObject();
    BOOST_TEST(client["name"].toString().toStdString() == "Ada Lindqvist");
    const QJsonObject kept = client["visits"].toArray()[0].toObject()["photos"].toArray()[0].toObject();
    BOOST_TEST(kept["readings"].toArray().size() == 5);
    BOOST_TEST(kept["marks"].toArray().size() == 1);
    const QByteArray bytes = content(out.filePath(kept["exported_as"].toString()));
    BOOST_TEST((bytes == TemporaryBook::required(work::photo_bytes(*in.book, photo))));
    BOOST_TEST(content(out.filePath(QStringLiteral("readings.csv"))).count("\r\n") == 6);
    BOOST_TEST(content(out.filePath(QStringLiteral("services.csv"))).contains("protein treatment"));
}

BOOST_AUTO_TEST_CASE(an_erased_client_leaves_no_row_behind) {
    TemporaryBook in;
    tests::add_measured(in, in.visit, tests::small_photo(12, 1));
    TemporaryBook::required(work::erase_client(*in.book, in.client.id));
    const auto report = TemporaryBook::required(work::check_book(*in.book));
    BOOST_TEST(report.clients == 0);
    BOOST_TEST(report.photos == 0);
    BOOST_TEST(report.readings == 0);
}

BOOST_AUTO_TEST_CASE(the_report_says_what_changed_and_withholds_pictures_without_consent) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    tests::add_measured(in, in.visit, tests::small_photo(8, 1));
    tests::add_measured(in, later, tests::small_photo(14, 2));
    work::ReportOptions options;
    options.client = in.client.id;
    auto model = TemporaryBook::required(work::report_model_of(*in.book, options, QDate(2026, 4, 1)));
    BOOST_TEST(model.client_name.toStdString() == "Ada Lindqvist");
    BOOST_TEST(model.visits == 2);
    BOOST_TEST(!model.rows.isEmpty());
    BOOST_TEST(model.pairs.size() == 1);
    BOOST_TEST(model.pictures_withheld.isEmpty());
    BOOST_TEST(model.history.size() == 10);
    for (const report::Row& row : model.rows) BOOST_TEST(!row.reason.isEmpty());
    work::ReportOptions turned = options;  // the later visit asked for first
    turned.from_visit = later.id;
    turned.to_visit = in.visit.id;
    const auto same = TemporaryBook::required(work::report_model_of(*in.book, turned, QDate(2026, 4, 1)));
    BOOST_REQUIRE_EQUAL(same.rows.size(), model.rows.size());
    for (qsizetype i = 0; i < same.rows.size(); ++i)
        BOOST_TEST(same.rows[i].reason.toStdString() == model.rows[i].reason.toStdString());
    in.client.photo_consent = false;
    in.client.consent_on.reset();
    TemporaryBook::required(work::change_client(*in.book, in.client));
    model = TemporaryBook::required(work::report_model_of(*in.book, options, QDate(2026, 4, 1)));
    BOOST_TEST(model.pairs.isEmpty());
    BOOST_TEST(!model.pictures_withheld.isEmpty());
    options.to_visit = 999;
    BOOST_TEST(!work::report_model_of(*in.book, options, QDate(2026, 4, 1)).ok());
}

BOOST_AUTO_TEST_CASE(the_card_as_png_has_the_size_asked_for) {
    TemporaryBook in;
    work::PrintCardOptions options;
    options.png = true;
    options.px_per_mm = 10;
    options.path = in.folder.filePath(QStringLiteral("card.png"));
    TemporaryBook::required(work::print_card(options));
    BOOST_TEST((QImage(options.path).size() == QSize(840, 300)));
    options.px_per_mm = 100;
    BOOST_TEST(!work::print_card(options).ok());
}

BOOST_AUTO_TEST_CASE(the_check_line_gives_the_printer_correction_or_is_refused) {
    BOOST_TEST(TemporaryBook::required(work::printer_scale_from(49)) == 0.98, boost::test_tools::tolerance(1e-12));
    BOOST_TEST(!work::printer_scale_from(40).ok());
    BOOST_TEST(!work::printer_scale_from(-1).ok());
    TemporaryBook in;
    BOOST_TEST(TemporaryBook::required(work::printer_scale_of(*in.book)) == 1.0);
    TemporaryBook::required(work::set_printer_scale(*in.book, 0.98));
    BOOST_TEST(TemporaryBook::required(work::printer_scale_of(*in.book)) == 0.98);
    BOOST_TEST(!work::set_printer_scale(*in.book, 2).ok());
}

BOOST_AUTO_TEST_CASE(a_scenario_with_a_wrong_member_names_it) {
    TemporaryBook in;
    const auto read = [&](const QByteArray& json) {
        in.write(QStringLiteral("scenario.json"), json);
        return work::read_scenario(in.folder.path());
    };
    BOOST_TEST(read(R"({"today": "2026-09-01", "clients": [{"name": "A", "visits": [{"date": "2026-01-01"}]}]})").ok());
    const std::pair<const char*, const char*> wrong[] = {
        {R"({"today": "soon", "clients": [{"name": "A", "since": "2026-01-01"}]})", "today"},
        {R"({"today": "2026-09-01", "clients": []})", "clients"},
        {R"({"today": "2026-09-01", "clients": [{"name": "A", "visits": [{"date": "2026-01-01",
            "photos": [{"file": "a.jpg", "view": "elbow"}]}]}]})",
         "view"},
        {R"({"today": "2026-09-01", "clients": [{"name": "A", "visits": [{"date": "2026-01-01",
            "photos": [{"file": "a.jpg", "view": "nape", "marks": "none.json"}]}]}]})",
         "marks"},
        {"{", "byte"}};
    for (const auto& [json, member] : wrong) {
        const auto scenario = read(json);
        BOOST_REQUIRE(!scenario.ok());
        BOOST_TEST(scenario.error().what.find(member) != std::string::npos, scenario.error().what);
    }
}

BOOST_AUTO_TEST_SUITE_END()
