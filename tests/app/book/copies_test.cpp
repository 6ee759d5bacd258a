// Backup, restore, and books of earlier versions.
#include "book/backup.h"

#include <sys/syscall.h>
#include <unistd.h>

#include <cerrno>

#include "book/check.h"
#include "book/client_store.h"
#include "book/migrate.h"
#include "book/photo_store.h"
#include "book/profile_store.h"
#include "book/service_store.h"
#include "book/sql.h"
#include "book/transaction.h"
#include "domain/clock.h"
#include "room.h"

using namespace kempt;
using namespace kempt::test;

namespace {

const QString old_books = QStringLiteral("tests/old-books");  // tests run in the root of the sources

// A disk that fails: fsync of this one path says no. The program's own fsync stands before that of the C library.
QString failing_disk_at;
struct FailingDisk {
    explicit FailingDisk(const QString& path) { failing_disk_at = path; }
    ~FailingDisk() { failing_disk_at.clear(); }
};

struct Shelf : Room {
    QString file = path("a.kempt");
    QString copy = path("backup.kempt");
    [[nodiscard]] QStringList names() const { return QDir(folder.path()).entryList(QDir::Files, QDir::Name); }
};

Client named(const QString& name) {
    return {0, name, "", QDate(2025, 1, 1), false, {}};
}

}  // namespace

extern "C" int fsync(int handle) {
    if (!failing_disk_at.isEmpty() &&
        QFile::symLinkTarget(QStringLiteral("/proc/self/fd/%1").arg(handle)) == failing_disk_at) {
        errno = EIO;
        return -1;
    }
    return static_cast<int>(::syscall(SYS_fsync, handle));
}

BOOST_FIXTURE_TEST_SUITE(copies, Shelf)

BOOST_AUTO_TEST_CASE(a_backup_holds_the_same_records_and_opens_by_itself) {
    Book book = must(Book::create(file));
    fill(book);
    must(backup(book, copy));
    Book other = must(Book::open(copy));
    BOOST_TEST((listing(other) == listing(book)));
    BOOST_TEST((schema_of(other) == schema_of(book)));
    BOOST_TEST(must(check(other)).sound());
}

BOOST_AUTO_TEST_CASE(a_backup_replaces_no_file_and_leaves_nothing_behind_when_it_fails) {
    Book book = must(Book::create(file));
    write_content(copy, "a diary");
    BOOST_TEST(must_fail(backup(book, copy)).code == "name-taken");
    BOOST_TEST((content_of(copy) == "a diary"));
    BOOST_TEST(must_fail(backup(book, file)).code == "name-taken");
    BOOST_TEST((must_fail(backup(book, path("none/b.kempt"))).kind == ErrorKind::io));
    {
        auto transaction = must(Transaction::begin(book));
        BOOST_TEST(must_fail(backup(book, path("b.kempt"))).code == "transaction-open");
    }
    for (const QString& name : names()) BOOST_TEST(!name.contains(".part-"));
    must(store::add_client(book, named("After")));
}

BOOST_AUTO_TEST_CASE(restore_brings_the_backup_back_and_keeps_the_present_book_aside) {
    QStringList then, now;
    {
        Book book = must(Book::create(file));
        fill(book);
        must(backup(book, copy));
        then = listing(book);
        must(store::add_client(book, named("Later")));
        now = listing(book);
    }
    const QByteArray backup_before = content_of(copy);
    const QString aside = must(restore(copy, file));
    BOOST_TEST((content_of(copy) == backup_before));
    {
        Book back = must(Book::open(file));
        BOOST_TEST((listing(back) == then));
        Book kept = must(Book::open(aside));
        BOOST_TEST((listing(kept) == now));
    }
    const QString second = must(restore(copy, file));
    BOOST_TEST((second != aside));
    BOOST_TEST(
        (names() == QStringList{"a.kempt", "a.kempt.before-restore", "a.kempt.before-restore-2", "backup.kempt"}));
}

BOOST_AUTO_TEST_CASE(a_disk_that_fails_after_the_exchange_takes_no_book_away) {
    {
        Book book = must(Book::create(file));
        must(store::add_client(book, named("Backed up")));
        must(backup(book, copy));
        must(store::add_client(book, named("Later")));
    }
    {
        const FailingDisk disk(file);
        const Error error = must_fail(restore(copy, file));
        BOOST_TEST(error.what.find("was brought back") != std::string::npos);
        BOOST_TEST(error.kept.find("a.kempt.before-restore") != std::string::npos);
    }
    Book back = must(Book::open(file)), kept = must(Book::open(file + ".before-restore"));
    BOOST_TEST(must(store::list_clients(back)).size() == 1);
    BOOST_TEST(must(store::list_clients(kept)).size() == 2);
}

BOOST_AUTO_TEST_CASE(a_new_book_on_a_failing_disk_is_said_to_be_there_when_it_is) {
    {
        const FailingDisk disk(file);
        const Error error = must_fail(Book::create(file));
        BOOST_TEST(error.kept == "A new book without clients was left there.");
    }
    BOOST_TEST((names() == QStringList{"a.kempt"}));
    BOOST_TEST(must_fail(Book::create(path("none/a.kempt"))).kept == "No file was left behind.");
}

BOOST_AUTO_TEST_CASE(restore_works_where_no_book_or_a_ruined_one_stands) {
    {
        Book book = must(Book::create(path("b.kempt")));
        fill(book);
        must(backup(book, copy));
    }
    BOOST_TEST(must(restore(copy, file)).isEmpty());
    const QByteArray ruin = noise(20000, 5);
    write_content(file, ruin);
    const QString aside = must(restore(copy, file));
    BOOST_TEST((content_of(aside) == ruin));
    Book book = must(Book::open(file));
    BOOST_TEST(must(check(book)).sound());
}

BOOST_AUTO_TEST_CASE(restore_refuses_what_is_not_a_sound_book_and_replaces_nothing) {
    Filled f;
    {
        Book book = must(Book::create(file));
        f = fill(book);
        must(backup(book, copy));
    }
    const QByteArray present = content_of(file), good = content_of(copy);
    const auto refused = [&](const QByteArray& content, ErrorKind kind) {
        write_content(copy, content);
        const Error error = must_fail(restore(copy, file));
        BOOST_TEST((error.kind == kind), error.sentence());
        BOOST_TEST(error.kept == "Nothing was replaced.");
        BOOST_TEST((content_of(file) == present));
        BOOST_TEST((names() == QStringList{"a.kempt", "backup.kempt"}));
    };
    refused("", ErrorKind::unsupported);
    refused(noise(9000, 1), ErrorKind::unsupported);
    refused(good.left(good.size() - 8192), ErrorKind::damaged);
    QByteArray flipped = good;
    const int at = int(flipped.indexOf(f.bytes.mid(40000, 64)));
    BOOST_REQUIRE(at > 0);
    flipped[at] = char(flipped[at] ^ 1);
    refused(flipped, ErrorKind::damaged);
    QByteArray newer = good;
    newer[63] = 9;
    refused(newer, ErrorKind::version);
    BOOST_TEST((must_fail(restore(path("none"), file)).kind == ErrorKind::not_found));
    BOOST_TEST(must_fail(restore(file, file)).code == "same-file");
}

BOOST_AUTO_TEST_CASE(restore_waits_for_no_one_when_the_book_is_open) {
    Book book = must(Book::create(file));
    fill(book);
    must(backup(book, copy));
    const QStringList before = listing(book);
    BOOST_TEST((must_fail(restore(copy, file)).kind == ErrorKind::busy));
    must(store::add_client(book, named("Still Open")));
    BOOST_TEST((must_fail(restore(file, path("c.kempt"))).kind == ErrorKind::busy));
    BOOST_TEST(listing(book).size() == before.size() + 1);
}

BOOST_AUTO_TEST_CASE(every_old_book_opens_upgrades_and_keeps_its_records) {
    const QStringList books = QDir(old_books).entryList({"*.kempt"}, QDir::Files, QDir::Name);
    BOOST_REQUIRE(books.size() == Book::newest_version());  // one for each shipped schema
    Book fresh = must(Book::create(path("fresh.kempt")));
    for (const QString& name : books) {
        const QString here = path(name);
        write_content(here, content_of(old_books + "/" + name));
        Book book = must(Book::open(here));
        BOOST_TEST(book.version() == Book::newest_version());
        BOOST_TEST(must(check(book)).sound());
        BOOST_TEST((schema_of(book) == schema_of(fresh)), name.toStdString());
        // A later step may add columns at the end of a row and rows of its own; what was there stays.
        const QStringList now = listing(book);
        QFile listed(old_books + "/" + name + ".listing");
        BOOST_REQUIRE(listed.open(QIODevice::ReadOnly));
        for (const QString& line : QString::fromUtf8(listed.readAll()).split('\n', Qt::SkipEmptyParts))
            BOOST_TEST(std::any_of(now.begin(), now.end(),
                                   [&](const QString& row) { return row == line || row.startsWith(line + " | "); }),
                       (name + ": " + line).toStdString());
        const bool old = name != books.last();
        BOOST_TEST(book.upgraded_from().isEmpty() == !old);
    }
}

// Run by hand when a schema step ships: KEMPT_WRITE_OLD_BOOK=1 tests/app/book/test_book --run_test=copies
// writes the book and the listing of the newest schema, unless they are there.
BOOST_AUTO_TEST_CASE(a_book_of_this_schema_is_the_same_each_time_it_is_made) {
    const QString name = QString("schema-%1.kempt").arg(Book::newest_version());
    {
        Book book = must(Book::create(path("made.kempt")));
        fill(book);
        if (qEnvironmentVariableIsSet("KEMPT_WRITE_OLD_BOOK") && !QFile::exists(old_books + "/" + name)) {
            must(backup(book, old_books + "/" + name));
            write_content(old_books + "/" + name + ".listing", (listing(book).join("\n") + "\n").toUtf8());
        }
    }
    Book made = must(Book::open(path("made.kempt")));
    write_content(path(name), content_of(old_books + "/" + name));
    Book stored = must(Book::open(path(name)));
    BOOST_TEST((listing(made) == listing(stored)));
    BOOST_TEST((schema_of(made) == schema_of(stored)));
}

// A stop may hang on what was written for a day until today, so it goes on counting; what is to come is planned.
BOOST_AUTO_TEST_CASE(of_an_older_book_what_has_had_its_day_is_done_and_the_rest_is_planned) {
    const QDate today = Clock().today();
    {
        QFile::copy(old_books + "/schema-5.kempt", file);
        auto old = must(sql::Connection::open(file, sql::Access::write));
        for (const int days : {-400, -1, 0, 1, 30})
            must(sql::change(*old, "INSERT INTO service (client, done_on, kind, note) VALUES (1, ?, ?, '')",
                             sql::values(today.addDays(days), QString("cut"))));
    }
    Book book = must(Book::open(file));
    int seen = 0;
    for (const Service& service : must(store::services_of_client(book, 1))) {
        BOOST_TEST(service.done == (service.date <= today));
        ++seen;
    }
    BOOST_TEST(seen == 6);
    // Nobody knows when it was told how far back the record goes.
    const ClientProfile profile = must(store::profile_of(book, 1));
    BOOST_TEST((profile.history_from == QDate(2019, 1, 1)));
    BOOST_TEST(!profile.history_told_on.has_value());
}

BOOST_AUTO_TEST_SUITE_END()

namespace {

// The step that a later Kempt might ship: rebuilds a table that others point at.
sql::Step later_step(int version, bool good) {
    QString text =
        "CREATE TABLE visit_new (id {identity}, client BIGINT NOT NULL REFERENCES client (id) ON DELETE CASCADE, "
        "visited_on TEXT NOT NULL, wet INTEGER NOT NULL, styled INTEGER NOT NULL, product INTEGER NOT NULL, "
        "note TEXT NOT NULL, mood TEXT NOT NULL DEFAULT ';''--'); -- a comment; with 'marks'\n"
        "INSERT INTO visit_new (id, client, visited_on, wet, styled, product, note) SELECT * FROM visit;"
        "DROP TABLE visit; ALTER TABLE visit_new RENAME TO visit;";
    if (!good) text += "INSERT INTO photo_bytes (photo, bytes) VALUES (12345, 'x');";  // points nowhere
    return {version, "later", text};
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(upgrading, Shelf)

BOOST_AUTO_TEST_CASE(an_upgrade_keeps_a_copy_first_and_every_record) {
    const int next = Book::newest_version() + 1;
    Book book = must(Book::create(file));
    fill(book);
    const QStringList before = listing(book);
    auto steps = sql::shipped_steps();
    steps.append(later_step(next, true));
    const QString kept = must(sql::bring_up_to_date(book.connection(), steps));
    BOOST_TEST((kept == file + QString(".version-%1").arg(next - 1)));
    BOOST_TEST(book.version() == next);
    QStringList after = listing(book);
    for (QString& line : after) line.remove(" | mood=;'--");
    BOOST_TEST((after == before));
    BOOST_TEST(must(check(book)).sound());
    Book older = must(Book::open(kept));
    BOOST_TEST((listing(older) == before));
    // Links are kept again afterwards.
    BOOST_TEST(must_fail(sql::change(book.connection(), "UPDATE visit SET client = 99")).code == "missing-link");
}

BOOST_AUTO_TEST_CASE(an_upgrade_that_fails_leaves_the_book_as_it_was) {
    const int next = Book::newest_version() + 1;
    Book book = must(Book::create(file));
    fill(book);
    const QStringList before = listing(book), schema = schema_of(book);
    for (const bool syntax : {true, false}) {
        auto steps = sql::shipped_steps();
        steps.append(later_step(next, true));
        sql::Step bad = later_step(next + 1, false);
        if (syntax) bad.text = "CREATE TABLE good (id INTEGER); CREATE NONSENSE;";
        steps.append(bad);
        const Error error = must_fail(sql::bring_up_to_date(book.connection(), steps));
        BOOST_TEST(error.kept == "Nothing in the book was changed.");
        BOOST_TEST(book.version() == next - 1);
        BOOST_TEST((listing(book) == before));
        BOOST_TEST((schema_of(book) == schema));
        BOOST_TEST((names() == QStringList{"a.kempt", "a.kempt-shm", "a.kempt-wal"}));
    }
    BOOST_TEST(must_fail(sql::change(book.connection(), "UPDATE visit SET client = 99")).code == "missing-link");
}

BOOST_AUTO_TEST_SUITE_END()
