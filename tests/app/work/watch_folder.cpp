#include "work/watch_folder.h"

#include <QDir>
#include <QFileInfo>

#include "app/work/temporary_book.h"

using namespace kempt;
using tests::TemporaryBook;
using work::FileSeen;
using work::SettledFiles;

namespace {

const QDateTime noon(QDate(2026, 5, 4), QTime(12, 0));

FileSeen file(const char* name, qint64 bytes, int seconds = 0) {
    return {QString::fromLatin1(name), bytes, noon.addSecs(seconds)};
}

}  // namespace

BOOST_AUTO_TEST_SUITE(watch_folder)

BOOST_AUTO_TEST_CASE(a_file_is_taken_when_size_and_time_stood_still_for_two_seconds_and_only_once) {
    SettledFiles files;
    BOOST_TEST(files.settled({file("a", 10)}, 0).isEmpty());
    BOOST_TEST(files.settled({file("a", 10)}, 1999).isEmpty());
    BOOST_TEST(files.waiting());
    BOOST_TEST((files.settled({file("a", 10)}, 2000) == QStringList{"a"}));
    BOOST_TEST(!files.waiting());
    BOOST_TEST(files.settled({file("a", 10)}, 9000).isEmpty());
}

BOOST_AUTO_TEST_CASE(a_file_that_is_written_in_pieces_waits_for_its_last_one) {
    SettledFiles files;
    qint64 now = 0;
    for (int piece = 1; piece <= 5; ++piece, now += 1500)
        BOOST_TEST(files.settled({file("a", 1000 * piece)}, now).isEmpty());
    // The size stays, the time does not: a sync program that makes room first and fills it afterwards.
    BOOST_TEST(files.settled({file("a", 5000, 1)}, now += 1000).isEmpty());
    BOOST_TEST(files.settled({file("a", 5000, 2)}, now += 1900).isEmpty());
    BOOST_TEST(files.settled({file("a", 5000, 2)}, now += 1900).isEmpty());
    BOOST_TEST(files.settled({file("a", 5000, 2)}, now += 100).size() == 1);
    // It was a pause, not the end: given again once the rest is there.
    BOOST_TEST(files.settled({file("a", 8000, 9)}, now += 100).isEmpty());
    BOOST_TEST(files.settled({file("a", 8000, 9)}, now += 2000).size() == 1);
}

BOOST_AUTO_TEST_CASE(an_empty_file_has_only_been_begun_and_one_that_is_gone_is_forgotten) {
    SettledFiles files;
    (void)files.settled({file("a", 0), file("b", 5)}, 0);
    BOOST_TEST((files.settled({file("a", 0), file("b", 5)}, 3000) == QStringList{"b"}));
    BOOST_TEST(files.waiting());
    (void)files.settled({}, 4000);
    BOOST_TEST(!files.waiting());
    BOOST_TEST(files.settled({file("b", 5)}, 5000).isEmpty());  // new again: it has to stand still again
    BOOST_TEST(files.settled({file("b", 5)}, 7000).size() == 1);
}

BOOST_AUTO_TEST_CASE(the_folder_is_only_looked_at_and_old_pictures_are_counted_not_listed) {
    TemporaryBook in;
    QDir(in.folder.path()).mkdir("phone");
    const auto write = [&](const QString& name, const QDateTime& changed) {
        QFile one(in.write("phone/" + name, "content of " + name.toUtf8()));
        BOOST_REQUIRE(one.open(QIODevice::ReadWrite));
        BOOST_REQUIRE(one.setFileTime(changed, QFileDevice::FileModificationTime));
    };
    write("new.jpg", noon);
    write("NEW.HEIC", noon.addSecs(5));
    write("old.jpg", noon.addDays(-30));
    write("half.jpg.part", noon);
    write(".hidden.jpg", noon);
    write("notes.txt", noon);
    const QString folder = in.folder.filePath("phone");
    const auto look = TemporaryBook::required(work::look_into_folder(folder, noon.addDays(-7)));
    BOOST_TEST_REQUIRE(look.files.size() == 2);
    BOOST_TEST(QFileInfo(look.files[0].path).fileName().toStdString() == "NEW.HEIC");
    BOOST_TEST((look.files[1].changed == noon));
    BOOST_TEST(look.older == 1);
    BOOST_TEST(TemporaryBook::required(work::look_into_folder(folder)).files.size() == 3);
    BOOST_TEST(QDir(folder).entryList(QDir::Files | QDir::Hidden).size() == 6);
    const auto gone = work::look_into_folder(in.folder.filePath("nowhere"));
    BOOST_TEST_REQUIRE(!gone.ok());
    BOOST_TEST(gone.error().code == "no-folder");
}

BOOST_AUTO_TEST_SUITE_END()
