// The windows on a large book: how soon they can be used, how long each key and page takes, whether the event loop ever
// stands still, and how much memory they take.
//   bench_desk_book FOLDER [CLIENTS VISITS PHOTOS]   makes FOLDER/large-....kempt when it is not there and prints the
//                                                    page docs/desk-speed.md
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QTest>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <random>
#include <sstream>

#include "bench/desk/tour.h"
#include "bench/support/timing.h"
#include "desk/look/look.h"

namespace {

using namespace bench;

double status_mb(const char* member) {
    std::ifstream file("/proc/self/status");
    std::string line;
    while (std::getline(file, line))
        if (line.rfind(member, 0) == 0) return std::atof(line.c_str() + std::strlen(member) + 1) / 1024;
    return 0;
}

double load() {
    double one = 0;
    std::ifstream("/proc/loadavg") >> one;
    return one;
}

// The peer: the same rows by plain SQL on a connection of its own, read and thrown away.
double bare_ms(QSqlDatabase& database, const QString& statement, const std::vector<kempt::Id>& ids = {0}) {
    std::vector<double> ms;
    for (const kempt::Id id : ids) {
        const double begun = now_s();
        QSqlQuery query(database);
        query.setForwardOnly(true);
        if (!query.prepare(statement)) std::exit(1);
        for (int i = 0; i < statement.count(QLatin1Char('?')); ++i) query.addBindValue(id);
        if (!query.exec()) std::exit(1);
        while (query.next())
            for (int column = 0; column < query.record().count(); ++column) (void)query.value(column);
        ms.push_back((now_s() - begun) * 1e3);
    }
    return median(ms);
}

const char* const list_rows =
    "SELECT c.id, c.name, c.note, (SELECT MAX(visited_on) FROM visit v WHERE v.client = c.id), (SELECT COUNT(*) FROM "
    "visit v WHERE v.client = c.id) FROM client c ORDER BY c.folded_name";
const char* const client_rows =
    "SELECT v.*, p.id, p.view, p.shot, p.quality_level, p.thumbnail, r.name, r.value, r.low, r.high FROM visit v JOIN "
    "photo p ON p.visit = v.id LEFT JOIN run m ON m.photo = p.id LEFT JOIN reading r ON r.run = m.id WHERE v.client = "
    "?";
const char* const due_rows =
    "SELECT s.client, s.kind, s.done_on, c.name FROM service s JOIN client c ON c.id = s.client";
const char* const like_rows = "SELECT id FROM client WHERE folded_name LIKE '%hollow%'";

void line(const char* what, double got, const char* unit, const char* limit, double most, double peer,
          const char* peer_words) {
    std::ostringstream ratio;
    if (peer > 0) {
        ratio.precision(2);
        ratio << got / peer << " x " << peer_words;
    }
    std::fprintf(stderr, "%s: %.0f %s\n", what, got, unit);
    std::printf("| %s | %.0f %s | %s | %s | %s |\n", what, got, unit, limit,
                most <= 0     ? ""
                : got <= most ? "yes"
                              : "**no**",
                ratio.str().c_str());
    std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) return 2;
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("KemptBench"));
    kempt::desk::look().apply({});
    const QDir folder(QString::fromLocal8Bit(argv[1]));
    LargeBookOptions options;
    options.today = QDate::currentDate();
    if (argc > 4)
        options.clients = std::atoi(argv[2]), options.visits = std::atoi(argv[3]), options.photos = std::atoi(argv[4]);
    const QString kept = folder.filePath(QStringLiteral("large-%1.kempt").arg(options.photos));
    if (!QFile::exists(kept)) {
        QFile::remove(kept + ".part");
        const double begun = now_s();
        const LargeBook made = make_large_book(kept + ".part", options);
        std::fprintf(stderr, "made in %.0f s: %lld readings, %lld MB\n", now_s() - begun, made.readings,
                     made.bytes >> 20);
        QFile::rename(kept + ".part", kept);
    }
    const QString path = kept;
    const LargeBook book = look_at_large_book(path);
    std::mt19937 random(5);
    std::vector<kempt::Id> ids, busy{book.many_visits, book.many_photos};
    for (int i = 0; i < 40; ++i)
        ids.push_back(3 + static_cast<int>(random() % static_cast<unsigned>(options.clients - 3)));

    Watchdog watchdog;
    watchdog.begin("nothing");
    QTest::qWait(2000);
    const Watchdog::Gaps idle = watchdog.end();
    const double before_mb = status_mb("VmRSS:"), load_before = load();

    Tour tour(path, book, watchdog);
    watchdog.begin("opening");
    const double usable = tour.open(), due_first = tour.wait_for_due();
    const Watchdog::Gaps opening = watchdog.end();
    const double open_mb = status_mb("VmRSS:");
    const Times search = tour.search();
    (void)tour.clients({ids.front()});  // the page is made
    const Tour::Page pages = tour.clients(ids);
    const Tour::Page long_page = tour.one_client(book.many_visits, ids.front());
    const Tour::Page none_page = tour.one_client(book.no_visits, ids.back());
    const kempt::desk::Place big{kempt::desk::Where::visit, book.many_photos, book.many_photos_visit};
    const Times big_visit = tour.visits({big});
    const double due_later = tour.due_again();
    const double work_begun = now_s();
    const int measured = tour.import_and_measure({ids[1], ids[2], book.many_visits, ids[3]});
    const Watchdog::Gaps working = watchdog.end();
    const double work_s = now_s() - work_begun;

    QSqlDatabase bare = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("bare"));
    bare.setDatabaseName(path);
    if (!bare.open()) return 1;
    const double list_ms = bare_ms(bare, list_rows), page_ms = bare_ms(bare, client_rows, ids);
    const double due_ms = bare_ms(bare, due_rows), like_ms = bare_ms(bare, like_rows);
    const double long_ms = bare_ms(bare, client_rows, {book.many_visits});

    std::printf("# How quick the windows are on a large book\n\n");
    std::printf(
        "Written by `bench_desk_book` (`tests/bench/desk_book.cpp`): %d clients, %d visits, %d photos, %lld "
        "readings in a book of %lld MB that was read once before (its pages lie in the system's cache). Real "
        "windows, 1280 x 800, offscreen. Load of the machine (2 cores) when it began %.1f, at the end %.1f: %s\n\n",
        options.clients, options.visits, options.photos, static_cast<long long>(book.readings),
        static_cast<long long>(book.bytes >> 20), load_before, load(),
        load_before < 0.5 ? "quiet." : "**other programs were running; take the ratios, not the times.**");
    std::printf("| what | time | asked | kept | against a peer in the same run |\n| --- | --- | --- | --- | --- |\n");
    line("window usable: list of clients filled, search takes letters", usable, "ms", "<= 1500", 1500, list_ms,
         "the bare query of the list");
    line("who is due known, from the start", due_first, "ms", "", 0, due_ms, "a bare read of all services");
    line("who is due, read anew", due_later, "ms", "", 0, due_ms, "a bare read of all services");
    std::printf("| search, %d keys: median | %.1f ms | | | %.2g x a bare LIKE |\n", search.n, search.median,
                search.median / like_ms);
    line("search: slowest key", search.worst, "ms", "<= 50", 50, like_ms, "a bare LIKE");
    line("search: slowest key, work of its own", search.worst_work, "ms", "<= 50", 50, like_ms, "a bare LIKE");
    line("client page, visits and photos painted: median of 40", pages.shown.median, "ms", "<= 150", 150, page_ms,
         "the bare query of its rows");
    line("client page, visits and photos painted: slowest of 40", pages.shown.worst, "ms", "<= 150", 150, page_ms,
         "the bare query of a usual one");
    line("client page with the progress chart: median of 40", pages.whole.median, "ms", "<= 150", 150, page_ms,
         "the bare query of its rows");
    line("client page with the progress chart: slowest of 40", pages.whole.worst, "ms", "", 0, page_ms,
         "the bare query of a usual one");
    line("client with 60 visits: painted", long_page.shown.worst, "ms", "<= 150", 150, long_ms,
         "the bare query of its rows");
    line("client with 60 visits: with the progress chart", long_page.whole.worst, "ms", "", 0, long_ms,
         "the bare query of its rows");
    line("client without visits", none_page.whole.worst, "ms", "<= 150", 150, 0, "");
    line("visit with 40 photos", big_visit.worst, "ms", "<= 150", 150, 0, "");
    std::printf("\n%d photos taken in and %d measured in %.0f s while pages were opened and letters typed.\n\n", 20,
                measured, work_s);
    std::printf(
        "| event loop held up | longest | of it work of its own | over 100 ms (work of its own) |\n| --- | --- | --- | "
        "--- |\n");
    const auto gaps = [](const char* what, const Watchdog::Gaps& g) {
        std::printf("| %s | %.0f ms | %.0f ms | %d (%d) |\n", what, g.worst_ms, g.worst_work_ms, g.beyond_100,
                    g.beyond_100_work);
    };
    gaps("no window, nothing to do (the machine itself)", idle);
    gaps("opening the book", opening);
    gaps("taking photos in and measuring (asked: none over 100 ms)", working);
    std::printf(
        "\nThe longest came while %s. Work of its own is the processor time of the windows' thread in such a gap; "
        "the rest is time in which other programs had the processor.\n\n",
        working.doing.c_str());
    std::printf("| memory | MB | asked | kept |\n| --- | --- | --- | --- |\n");
    std::printf("| application without a window | %.0f | | |\n| book open | %.0f | | |\n", before_mb, open_mb);
    std::printf("| peak of the whole run, measuring included | %.0f | <= 300 | %s |\n", status_mb("VmHWM:"),
                status_mb("VmHWM:") <= 300 ? "yes" : "**no**");
    tour.tidy();
    return 0;
}
