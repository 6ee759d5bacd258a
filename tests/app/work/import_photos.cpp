#include "work/import_photos.h"

#include <QCryptographicHash>
#include <QDir>

#include "app/work/book_photos.h"
#include "app/work/exif_photo.h"

using namespace kempt;
using tests::taken_at;
using tests::TemporaryBook;
using What = work::ImportedFile::What;

BOOST_AUTO_TEST_SUITE(import_photos)

BOOST_AUTO_TEST_CASE(original_bytes_come_back_untouched) {
    TemporaryBook in;
    const QByteArray bytes = tests::photo_bytes_of(tests::small_photo(10, 1));
    const QString path = in.write(QStringLiteral("one.jpg"), bytes);
    const auto report =
        TemporaryBook::required(work::import_photos(*in.book, {in.visit.id, View::left_temple, {path}, true, {}}));
    BOOST_TEST(report.imported == 1);
    BOOST_TEST(report.files.front().shot == 1);
    const auto kept = TemporaryBook::required(work::photo_bytes(*in.book, report.files.front().photo));
    BOOST_TEST((kept == bytes));
    const auto row = TemporaryBook::required(work::photo_of(*in.book, report.files.front().photo));
    BOOST_TEST(row.photo.sha256.toStdString() ==
               QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString());
    BOOST_TEST(row.photo.format.toStdString() == "jpeg");
    BOOST_TEST(row.photo.size.width() == 1900);
    BOOST_TEST(!row.photo.thumbnail.isEmpty());
}

BOOST_AUTO_TEST_CASE(a_folder_goes_in_whole_and_bad_files_do_not_stop_it) {
    TemporaryBook in;
    QDir(in.folder.path()).mkdir(QStringLiteral("shots"));
    const QByteArray good = tests::photo_bytes_of(tests::small_photo(10, 1));
    in.write(QStringLiteral("shots/shot 2.jpg"), tests::photo_bytes_of(tests::small_photo(10, 2)));
    in.write(QStringLiteral("shots/shot 10.jpg"), tests::photo_bytes_of(tests::small_photo(10, 3)));
    in.write(QStringLiteral("shots/shot 1.jpg"), good);
    in.write(QStringLiteral("shots/empty.jpg"), QByteArray());
    in.write(QStringLiteral("shots/text.png"), "no picture at all");
    in.write(QStringLiteral("shots/half.jpg"), good.left(good.size() / 3));
    in.write(QStringLiteral("shots/notes.txt"), "not a picture file");
    const auto report = TemporaryBook::required(work::import_photos(
        *in.book, {in.visit.id, View::nape, {in.folder.filePath(QStringLiteral("shots"))}, true, {}}));
    BOOST_TEST(report.files.size() == 6u);
    BOOST_TEST(report.imported == 3);
    BOOST_TEST(report.failed == 3);
    for (const work::ImportedFile& file : report.files) {
        if (file.what != What::failed) continue;
        BOOST_TEST(!file.error.sentence().empty());
    }
    const auto rows = TemporaryBook::required(work::list_photos(*in.book, in.visit.id));
    BOOST_REQUIRE_EQUAL(rows.size(), 3);
    BOOST_TEST(rows[0].photo.file_name.toStdString() == "shot 1.jpg");
    BOOST_TEST(rows[1].photo.file_name.toStdString() == "shot 2.jpg");
    BOOST_TEST(rows[2].photo.file_name.toStdString() == "shot 10.jpg");
    for (int i = 0; i < 3; ++i) BOOST_TEST(rows[i].photo.shot == i + 1);
}

BOOST_AUTO_TEST_CASE(shots_are_numbered_in_the_order_in_which_they_were_taken) {
    TemporaryBook in;
    const QByteArray plain = tests::photo_bytes_of(tests::small_photo(10, 1));
    const QString a = in.write(QStringLiteral("a.jpg"), taken_at(plain, "2026:01:12 10:05:00")),
                  b = in.write(QStringLiteral("b.jpg"), taken_at(plain, "2026:01:12 10:04:00")),
                  c = in.write(QStringLiteral("c.jpg"), plain);
    const auto report =
        TemporaryBook::required(work::import_photos(*in.book, {in.visit.id, View::nape, {c, a, b}, true, {}}));
    BOOST_TEST(report.imported == 3);
    BOOST_TEST(report.files[0].shot == 3);  // without a capture time: last
    BOOST_TEST(report.files[1].shot == 2);
    BOOST_TEST(report.files[2].shot == 1);
    const auto row = TemporaryBook::required(work::photo_of(*in.book, report.files[1].photo));
    BOOST_REQUIRE(row.photo.taken.has_value());
    BOOST_TEST((row.photo.taken->date() == QDate(2026, 1, 12)));
    BOOST_TEST((row.photo.taken->time() == QTime(10, 5)));
}

BOOST_AUTO_TEST_CASE(the_same_bytes_are_recognised_under_another_name_and_visit) {
    TemporaryBook in;
    const QByteArray bytes = tests::photo_bytes_of(tests::small_photo(10, 1));
    const QString one = in.write(QStringLiteral("one.jpg"), bytes), other = in.write(QStringLiteral("copy.jpg"), bytes);
    const Visit later = in.add_visit(QDate(2026, 2, 12));
    const auto first = TemporaryBook::required(
        work::import_photos(*in.book, {in.visit.id, View::left_temple, {one, other}, true, {}}));
    BOOST_TEST(first.imported == 1);
    BOOST_TEST(first.duplicates == 1);
    const auto again =
        TemporaryBook::required(work::import_photos(*in.book, {later.id, View::nape, {other}, true, {}}));
    BOOST_TEST(again.duplicates == 1);
    BOOST_TEST(again.files.front().photo == first.files.front().photo);
    BOOST_TEST(again.files.front().visit == in.visit.id);
}

BOOST_AUTO_TEST_CASE(nothing_to_import_and_an_unknown_visit_are_errors) {
    TemporaryBook in;
    const auto none = work::import_photos(*in.book, {in.visit.id, View::nape, {}, true, {}});
    BOOST_REQUIRE(!none.ok());
    BOOST_TEST(none.error().code == "no-pictures");
    const auto visit = work::import_photos(*in.book, {999, View::nape, {QStringLiteral("x.jpg")}, true, {}});
    BOOST_REQUIRE(!visit.ok());
    BOOST_TEST(static_cast<int>(visit.error().kind) == static_cast<int>(ErrorKind::not_found));
}

BOOST_AUTO_TEST_CASE(a_stop_keeps_what_was_taken_in_and_says_how_many) {
    TemporaryBook in;
    QStringList paths;
    for (unsigned i = 1; i <= 3; ++i)
        paths.append(in.write(QStringLiteral("p%1.jpg").arg(i), tests::photo_bytes_of(tests::small_photo(10, i))));
    int taking = 0;
    const auto report =
        work::import_photos(*in.book, {in.visit.id, View::nape, paths, true, {}}, [&](double, std::string_view step) {
            if (step.starts_with("taking in")) ++taking;
            return taking == 3 ? Go::stop : Go::on;
        });
    BOOST_REQUIRE(!report.ok());
    BOOST_TEST(static_cast<int>(report.error().kind) == static_cast<int>(ErrorKind::cancelled));
    BOOST_TEST(report.error().kept == "2 photos were kept before that.");
    BOOST_TEST(TemporaryBook::required(work::list_photos(*in.book, in.visit.id)).size() == 2);
}

BOOST_AUTO_TEST_SUITE_END()
