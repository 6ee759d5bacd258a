// Nothing is half written, nothing that was committed is lost, and what is erased is gone.
#include <signal.h>
#include <unistd.h>

#include <atomic>
#include <thread>

#include "book/check.h"
#include "book/client_store.h"
#include "book/photo_store.h"
#include "book/sql.h"
#include "book/transaction.h"
#include "book/visit_store.h"
#include "room.h"

using namespace kempt;
using namespace kempt::test;

namespace {

struct Bench : Room {
    QString file = path("a.kempt");
    [[nodiscard]] Book fresh() const { return must(Book::create(file)); }
};

Client named(const QString& name) {
    return {0, name, "", QDate(2025, 1, 1), false, {}};
}

int clients_in(Book& book) {
    return int(must(store::list_clients(book)).size());
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(safety, Bench)

BOOST_AUTO_TEST_CASE(a_transaction_that_is_not_committed_leaves_no_trace) {
    Book book = fresh();
    fill(book);
    const QStringList before = listing(book);
    {
        auto transaction = must(Transaction::begin(book));
        const Id client = must(store::add_client(book, named("Half Done")));
        const Id visit = must(store::add_visit(book, {0, client, QDate(2025, 1, 1), {}, ""}));
        must(store::add_photo(book, sample_photo(visit), noise(100, 2)));
        must_fail(store::add_photo(book, sample_photo(visit), noise(100, 2)));
    }
    BOOST_TEST((listing(book) == before));
}

BOOST_AUTO_TEST_CASE(an_inner_transaction_is_undone_alone_and_kept_only_by_the_outer_one) {
    Book book = fresh();
    {
        auto outer = must(Transaction::begin(book));
        must(store::add_client(book, named("Kept")));
        {
            auto inner = must(Transaction::begin(book));
            must(store::add_client(book, named("Undone")));
        }
        auto second = must(Transaction::begin(book));
        must(store::add_client(book, named("Joined")));
        must(second.commit());
        must(outer.commit());
        BOOST_TEST(must_fail(outer.commit()).code == "transaction-ended");
    }
    BOOST_TEST(clients_in(book) == 2);
    {
        auto outer = must(Transaction::begin(book));
        auto inner = must(Transaction::begin(book));
        must(store::add_client(book, named("Lost With The Outer")));
        must(inner.commit());
        outer.roll_back();
    }
    BOOST_TEST(clients_in(book) == 2);
}

BOOST_AUTO_TEST_CASE(a_photo_whose_bytes_cannot_be_stored_leaves_no_record) {
    Book book = fresh();
    const Filled f = fill(book);
    must(sql::change(book.connection(),
                     "CREATE TEMP TRIGGER no_bytes BEFORE INSERT ON photo_bytes BEGIN SELECT "
                     "RAISE(ABORT, 'no'); END"));
    const QStringList before = listing(book);
    must_fail(store::add_photo(book, sample_photo(f.visit, View::nape), noise(100, 4)));
    BOOST_TEST((listing(book) == before));
}

BOOST_AUTO_TEST_CASE(a_killed_program_loses_only_what_it_had_not_committed) {
    { Book book = fresh(); }
    const int outcome = in_child([&] {
        auto book = Book::open(file);
        if (!book || !store::add_client(*book, named("Committed"))) return 1;
        auto transaction = Transaction::begin(*book);
        if (!transaction) return 2;
        for (int i = 0; i < 20; ++i) {
            auto client = store::add_client(*book, named("Uncommitted"));
            if (!client) return 3;
            auto visit = store::add_visit(*book, {0, *client, QDate(2025, 1, 1), {}, ""});
            // Large enough that pages are spilled to the write-ahead file before any commit.
            if (!visit || !store::add_photo(*book, sample_photo(*visit), noise(500000, 900u + unsigned(i)))) return 4;
        }
        ::kill(::getpid(), SIGKILL);
        return 5;
    });
    BOOST_TEST(outcome == -1);
    BOOST_TEST(QFile(file + "-wal").size() > 0);
    Book book = must(Book::open(file));
    BOOST_TEST(must(check(book)).sound());
    const auto rows = must(store::list_clients(book));
    BOOST_REQUIRE(rows.size() == 1);
    BOOST_TEST((rows[0].client.name == "Committed"));
}

BOOST_AUTO_TEST_CASE(erasing_a_client_removes_every_record_and_every_byte_from_the_files) {
    const QByteArray secret = "Zephyrine Secretname";
    QByteArray bytes = noise(300000, 7), other_bytes = noise(3000, 8);
    Id other_photo = 0;
    {
        Book book = fresh();
        const Id client = must(store::add_client(book, named(secret)));
        const Filled f = fill(book);
        const Id visit = must(store::add_visit(book, {0, client, QDate(2025, 1, 1), {}, secret + " note"}));
        PhotoRecord photo = sample_photo(visit);
        photo.thumbnail = noise(20000, 11);
        photo.file_name = secret + ".jpg";
        must(store::add_photo(book, photo, bytes));
        other_photo = must(store::add_photo(book, sample_photo(f.visit, View::nape), other_bytes));
        must(store::erase_client(book, client));
        BOOST_TEST((must_fail(store::erase_client(book, client)).kind == ErrorKind::not_found));
        // Before closing: the main file and the write-ahead file.
        for (const QString& name : {file, file + "-wal"}) {
            const QByteArray content = content_of(name);
            BOOST_TEST(!content.contains(secret));
            BOOST_TEST(!content.contains("zephyrine"));
            for (int at = 0; at + 32 <= bytes.size(); at += 4096) BOOST_TEST(!content.contains(bytes.mid(at, 32)));
            for (int at = 0; at + 32 <= photo.thumbnail.size(); at += 4096)
                BOOST_TEST(!content.contains(photo.thumbnail.mid(at, 32)));
        }
        BOOST_TEST(content_of(file).contains(other_bytes.left(32)));
        BOOST_TEST(must(check(book)).sound());
    }
    Book book = must(Book::open(file));
    BOOST_TEST((must(store::photo_bytes(book, other_photo)) == other_bytes));
    BOOST_TEST(clients_in(book) == 1);
}

BOOST_AUTO_TEST_CASE(erasing_leaves_no_orphans_in_any_table) {
    Book book = fresh();
    const Filled f = fill(book);
    must(store::erase_client(book, f.client));
    for (const QString& line : listing(book))
        BOOST_TEST((line.startsWith("reading_name") || line.startsWith("setting")), line.toStdString());
    // A number is never given twice.
    BOOST_TEST(must(store::add_client(book, named("Next"))) > f.client);
}

BOOST_AUTO_TEST_CASE(two_threads_with_a_connection_each_write_and_read_together) {
    Book book = fresh();
    std::atomic<int> failures = 0;
    const auto write = [&](Book& mine, const QString& name) {
        for (int i = 0; i < 40; ++i) {
            if (!store::add_client(mine, named(name + QString::number(i)))) ++failures;
            if (!store::list_clients(mine, name)) ++failures;
        }
    };
    std::thread other([&] {
        auto mine = Book::open(file);
        if (!mine)
            failures = 1000;
        else
            write(*mine, "other");
    });
    write(book, "this");
    other.join();
    BOOST_TEST(failures == 0);
    BOOST_TEST(clients_in(book) == 80);
}

BOOST_AUTO_TEST_CASE(a_book_used_from_another_thread_says_so) {
    Book book = fresh();
    std::string code;
    std::thread([&] { code = must_fail(store::list_clients(book)).code; }).join();
    BOOST_TEST(code == "wrong-thread");
}

BOOST_AUTO_TEST_CASE(a_second_writer_waits_and_then_is_told_that_the_book_is_busy) {
    Book book = fresh();
    Book second = must(Book::open(file));
    must(sql::select(second.connection(), "PRAGMA busy_timeout=50"));
    auto transaction = must(Transaction::begin(book));
    must(store::add_client(book, named("Writing")));
    const Error error = must_fail(store::add_client(second, named("Waiting")));
    BOOST_TEST((error.kind == ErrorKind::busy));
    BOOST_TEST(error.kept == "Nothing in the book was changed.");
    BOOST_TEST(clients_in(second) == 0);  // readers go on meanwhile
    must(transaction.commit());
    BOOST_TEST(clients_in(second) == 1);
}

BOOST_AUTO_TEST_CASE(a_full_disk_gives_an_error_and_keeps_what_was_there) {
    Book book = fresh();
    const Filled f = fill(book);
    const QStringList before = listing(book);
    auto pages = must(sql::select(book.connection(), "PRAGMA page_count"));
    BOOST_REQUIRE(pages.next());
    const int room = pages.value(0).toInt() + 4;
    pages.finish();
    must(sql::select(book.connection(), QString("PRAGMA max_page_count=%1").arg(room)));
    const Error error = must_fail(store::add_photo(book, sample_photo(f.visit, View::nape), noise(500000, 6)));
    BOOST_TEST((error.kind == ErrorKind::io));
    BOOST_TEST(error.code == "disk-full");
    BOOST_TEST(error.kept == "Nothing in the book was changed.");
    BOOST_TEST((listing(book) == before));
    must(store::add_client(book, named("Still Works")));
    BOOST_TEST(must(check(book)).sound());
}

BOOST_AUTO_TEST_CASE(the_schema_itself_refuses_what_stores_would_never_write) {
    Book book = fresh();
    const Filled f = fill(book);
    const QStringList before = listing(book);
    for (const char* statement : {"UPDATE grade SET value = 5",
                                  "UPDATE grade SET value = -1",
                                  "UPDATE photo SET view = 'forehead'",
                                  "UPDATE visit SET visited_on = 'yesterday'",
                                  "UPDATE visit SET wet = 2",
                                  "UPDATE client SET name = ''",
                                  "UPDATE photo SET sha256 = 'x'",
                                  "UPDATE photo SET shot = 0",
                                  "UPDATE photo SET format = 'gif'",
                                  "UPDATE marks SET scale_mm = 0",
                                  "UPDATE marks SET hair_side_x = NULL",
                                  "UPDATE marks SET sheet = 'letter'",
                                  "UPDATE reading SET low = value + 1",
                                  "UPDATE reading SET refusal_code = 'both' WHERE value IS NOT NULL",
                                  "UPDATE reading SET value = 1",
                                  "UPDATE reading SET name = 'score'",
                                  "UPDATE run SET marks = 99",
                                  "UPDATE target SET value = -1",
                                  "UPDATE service SET client = 99",
                                  "DELETE FROM reading_name"}) {
        const Error error = must_fail(sql::change(book.connection(), statement));
        BOOST_TEST((error.kind == ErrorKind::invalid), statement);
    }
    BOOST_TEST((listing(book) == before));
    BOOST_TEST(f.client > 0);
}

BOOST_AUTO_TEST_SUITE_END()
