// What opens, what is refused, and that a refused file stays as it was.
#include <unistd.h>

#include "book/check.h"
#include "book/client_store.h"
#include "book/photo_store.h"
#include "book/sql.h"
#include "room.h"

using namespace kempt;
using namespace kempt::test;

namespace {

struct Closed : Room {
    QString file = path("a.kempt");
    Filled f;
    Closed() {
        Book book = must(Book::create(file));
        f = fill(book);
    }
    // The file refuses to open with this kind, byte for byte as it was, with nothing new beside it.
    Error refused(const QString& where, ErrorKind kind) {
        const QByteArray before = content_of(where);
        const QStringList beside = QDir(folder.path()).entryList(QDir::Files);
        const Error error = must_fail(Book::open(where));
        BOOST_TEST((error.kind == kind), error.sentence());
        BOOST_TEST((content_of(where) == before));
        BOOST_TEST((QDir(folder.path()).entryList(QDir::Files) == beside));
        BOOST_TEST(!error.remedy.empty());
        return error;
    }
};

void put_number(QByteArray& content, int offset, quint32 number) {
    for (int i = 0; i < 4; ++i) content[offset + i] = char(number >> (24 - 8 * i));
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(opening, Closed)

BOOST_AUTO_TEST_CASE(a_closed_book_is_one_file_with_our_number_and_version) {
    BOOST_TEST((QDir(folder.path()).entryList(QDir::Files) == QStringList{"a.kempt"}));
    BOOST_TEST((content_of(file).mid(68, 4) == "Kmpt"));
    Book book = must(Book::open(file));
    BOOST_TEST(book.version() == Book::newest_version());
    BOOST_TEST(book.upgraded_from().isEmpty());
    BOOST_TEST(must(check(book)).sound());
    BOOST_TEST(must(check(book)).photos == 1);
}

BOOST_AUTO_TEST_CASE(the_connection_is_durable_and_keeps_links) {
    Book book = must(Book::open(file));
    const auto pragma = [&](const QString& name) {
        auto query = must(sql::select(book.connection(), "PRAGMA " + name));
        BOOST_REQUIRE(query.next());
        return query.value(0).toString().toStdString();
    };
    BOOST_TEST(pragma("journal_mode") == "wal");
    BOOST_TEST(pragma("synchronous") == "2");  // FULL
    BOOST_TEST(pragma("foreign_keys") == "1");
    BOOST_TEST(pragma("secure_delete") == "1");
    BOOST_TEST(pragma("busy_timeout") == "5000");
}

BOOST_AUTO_TEST_CASE(a_new_book_never_takes_the_place_of_a_file) {
    const QByteArray before = content_of(file);
    BOOST_TEST(must_fail(Book::create(file)).code == "name-taken");
    BOOST_TEST((content_of(file) == before));
    BOOST_TEST((must_fail(Book::create(path("no folder/b.kempt"))).kind == ErrorKind::io));
    BOOST_TEST((QDir(folder.path()).entryList(QDir::Files) == QStringList{"a.kempt"}));
}

BOOST_AUTO_TEST_CASE(a_missing_file_is_not_created) {
    BOOST_TEST((must_fail(Book::open(path("b.kempt"))).kind == ErrorKind::not_found));
    BOOST_TEST(!QFile::exists(path("b.kempt")));
}

BOOST_AUTO_TEST_CASE(a_book_of_a_newer_kempt_is_refused_untouched_and_says_which_is_needed) {
    const QString next = QString::number(Book::newest_version() + 1);
    {
        Book book = must(Book::open(file));
        must(sql::change(
            book.connection(),
            QString("INSERT INTO schema_step (version, name, kempt) VALUES (%1, 'later', '3.2.1')").arg(next)));
        must(sql::select(book.connection(), "PRAGMA user_version=" + next));
    }
    const Error error = refused(file, ErrorKind::version);
    BOOST_TEST(error.remedy.find("Kempt 3.2.1") != std::string::npos);
    BOOST_TEST(error.what.find("book version " + next.toStdString()) != std::string::npos);
}

BOOST_AUTO_TEST_CASE(other_files_are_no_books) {
    write_content(path("empty"), "");
    write_content(path("short"), "SQLite format 3");
    write_content(path("photo.jpg"), noise(5000, 3));
    QByteArray other = content_of(file);
    put_number(other, 68, 0);
    write_content(path("other.db"), other);
    for (const char* name : {"empty", "short", "photo.jpg", "other.db"}) refused(path(name), ErrorKind::unsupported);
    BOOST_TEST((must_fail(Book::open(folder.path())).kind == ErrorKind::unsupported));
}

BOOST_AUTO_TEST_CASE(a_book_cut_short_is_refused) {
    write_content(path("cut.kempt"), content_of(file).left(QFile(file).size() / 2));
    refused(path("cut.kempt"), ErrorKind::damaged);
}

BOOST_AUTO_TEST_CASE(a_book_with_a_ruined_first_page_is_refused) {
    QByteArray content = content_of(file);
    content.replace(100, 400, noise(400, 5));
    write_content(path("ruined.kempt"), content);
    const Error error = must_fail(Book::open(path("ruined.kempt")));
    BOOST_TEST((error.kind == ErrorKind::damaged), error.sentence());
    BOOST_TEST((content_of(path("ruined.kempt")) == content));
}

BOOST_AUTO_TEST_CASE(the_check_finds_bytes_flipped_in_any_page) {
    const QByteArray content = content_of(file);
    const int page = 8192;
    int opened = 0;
    // Page 1 holds the header; its case stands above. The table pages and the photo's pages follow.
    for (int i = 1; i * page < content.size(); ++i) {
        QByteArray spoilt = content;
        for (int k = 0; k < page; ++k) spoilt[i * page + k] = char(~spoilt[i * page + k]);
        write_content(path("spoilt.kempt"), spoilt);
        auto book = Book::open(path("spoilt.kempt"));
        if (!book) {
            BOOST_TEST((book.error().kind == ErrorKind::damaged), book.error().sentence());
            continue;
        }
        ++opened;
        BOOST_TEST(!must(check(*book)).sound(), "page " << i + 1 << " was spoilt and not found");
    }
    BOOST_TEST(opened > 10);
}

BOOST_AUTO_TEST_CASE(the_check_finds_one_flipped_bit_in_a_photo) {
    QByteArray content = content_of(file);
    const int at = int(content.indexOf(f.bytes.mid(40000, 64)));
    BOOST_REQUIRE(at > 0);
    content[at] = char(content[at] ^ 1);
    write_content(path("bit.kempt"), content);
    Book book = must(Book::open(path("bit.kempt")));
    const CheckReport report = must(check(book));
    BOOST_REQUIRE(report.problems.size() == 1);
    BOOST_TEST(report.problems[0].contains("IMG 0001.jpg"));
}

BOOST_AUTO_TEST_CASE(a_check_can_be_stopped) {
    Book book = must(Book::open(file));
    for (const double from : {0.0, 0.1}) {
        const auto stop = [from](double fraction, std::string_view) { return fraction >= from ? Go::stop : Go::on; };
        BOOST_TEST((must_fail(check(book, stop)).kind == ErrorKind::cancelled));
    }
}

BOOST_AUTO_TEST_CASE(a_write_protected_book_is_refused_in_plain_words) {
    // Root may write anywhere, so the child steps down to a user who may not.
    BOOST_REQUIRE(QFile::setPermissions(folder.path(), QFile::Permissions(0x7755)));
    BOOST_REQUIRE(QFile::setPermissions(file, QFile::Permissions(0x4444)));
    const QByteArray before = content_of(file);
    const int outcome = in_child([&] {
        if (::geteuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0)) return 2;
        auto book = Book::open(file);
        return !book && book.error().code == "book-write-protected" ? 0 : 1;
    });
    BOOST_TEST(outcome == 0);
    BOOST_TEST((content_of(file) == before));
}

BOOST_AUTO_TEST_SUITE_END()
