#include "bench/desk/large_book.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSqlQuery>
#include <QVariant>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <random>

#include "book/book.h"
#include "book/fold.h"
#include "book/sql.h"
#include "book/transaction.h"
#include "domain/words.h"

namespace bench {
namespace {

using namespace kempt;

[[noreturn]] void stop(const QString& why) {
    std::fprintf(stderr, "desk_book: %s\n", qPrintable(why));
    std::exit(1);
}

class Rows {  // one prepared INSERT
  public:
    Rows(QSqlDatabase& database, const QString& table, const QStringList& columns) : query_(database) {
        QStringList marks(columns.size(), QStringLiteral("?"));
        if (!query_.prepare(QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
                                .arg(table, columns.join(QLatin1Char(',')), marks.join(QLatin1Char(',')))))
            stop(query_.lastError().text());
    }
    Id add(const QVariantList& values) {
        for (int i = 0; i < values.size(); ++i) query_.bindValue(i, values[i]);
        if (!query_.exec()) stop(query_.lastError().text());
        ++rows;
        return query_.lastInsertId().toLongLong();
    }
    qint64 rows = 0;

  private:
    QSqlQuery query_;
};

QByteArray jpeg_of(const QSize& size, int number, int quality) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(QColor(178 - number % 40, 132, 108));
    QPainter painter(&image);
    std::mt19937 random(static_cast<unsigned>(number));
    for (int x = 0; x < size.width(); x += 3) {
        painter.setPen(QColor(30 + static_cast<int>(random() % 30), 24, 22));
        painter.drawLine(x, size.height() / 3 + static_cast<int>(random() % 20), x + 8, size.height());
    }
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly) || !image.save(&buffer, "JPG", quality)) stop("no JPEG could be written");
    return bytes;
}

// A JPEG comment (FF FE, length) right after the start of the image: other bytes, another hash, the same picture.
QByteArray with_comment(const QByteArray& jpeg, int number) {
    return jpeg.left(2) + QByteArray("\xff\xfe\x00\x0a", 4) + QByteArray::number(number).rightJustified(8, '0') +
           jpeg.mid(2);
}

QString name_of(int number) {
    static const QStringList first = {"Ada",       "Bea",     "Chiara",  "Dilek", "Élodie", "Fatou",   "Greta",
                                      "Hana",      "Imani",   "José",    "Kezia", "Leïla",  "Marisol", "Noor",
                                      "Oluchi",    "Priya",   "Quiana",  "Rosa",  "Søren",  "Thandi",  "Ursula",
                                      "Valentina", "Wanjiru", "Xiomara", "Yara",  "Zuzana", "نور",     "שירה"};
    static const QStringList last = {"Achterberg",  "Brightwell",  "Castellanos",   "Delacroix-Montgomery",
                                     "Eriksdotter", "Fairweather", "Gunnarsdóttir", "Holloway",
                                     "Ikande",      "Jankowska",   "Kaltenbrunn",   "Lindqvist",
                                     "Marsh",       "Niño",        "Okonjo",        "Palmgren",
                                     "Quintero",    "Rosewood",    "Szabados",      "Thistleton",
                                     "Ulloa",       "Vandersteen", "Whitlock",      "Ximenes",
                                     "Yildirim",    "Zamorano",    "الهاشمي",       "ברקוביץ"};
    return first[number % first.size()] + QLatin1Char(' ') + last[(number / first.size() + number) % last.size()] +
           (number >= first.size() * last.size() ? QStringLiteral(" %1").arg(number) : QString());
}

// As many rows for each client as the sum asks for: 1 to 23, one client with 60, one with none.
std::vector<int> visits_of_clients(const LargeBookOptions& options, std::mt19937& random) {
    std::vector<int> count(static_cast<std::size_t>(options.clients));
    int sum = 0;
    for (int& one : count) sum += one = 1 + static_cast<int>(random() % 23);
    sum += 60 - count[0] - count[1];
    count[0] = 60;
    count[1] = 0;
    for (std::size_t i = 2; sum != options.visits; i = i + 1 < count.size() ? i + 1 : 2) {
        const int step = sum < options.visits ? 1 : -1;
        if (count[i] + step < 1) continue;
        count[i] += step;
        sum += step;
    }
    return count;
}

struct Named {
    const char* name;
    double value, half, refused;  // refused: share of the photos
};

std::vector<Named> readings_for(View view) {
    if (view == View::lengths)
        return {{"shine_contrast", 0.4, 0.03, 0}, {"shine_width", 14, 1, 0},     {"luster", 0.03, 0.004, 0},
                {"alignment", 0.7, 0.05, 0},      {"tone_spread", 9, 1.5, 0.05}, {"tone_level", 4, 0.6, 0.05}};
    if (view == View::ends)
        return {{"hem_unevenness", 8, 1, 0.05}, {"see_through", 22, 3, 0.05}, {"flyaway", 3, 0.8, 0.1}};
    return {{"edge_coverage", 40, 2.5, 0.02},
            {"edge_strands", 14, 2, 0.4},
            {"fill_depth", 6, 0.8, 0.1},
            {"bare_length", 9, 1.5, 0.02},
            {"length_density", 1.2, 0.15, 0.4}};
}

// Views of a visit's first photos: two shots of the left temple, then what is followed beside it.
View view_of(int visit, int photo) {
    static const View beside[] = {View::right_temple, View::right_temple, View::front_hairline,
                                  View::nape,         View::lengths,      View::ends};
    return photo < 2 ? View::left_temple : beside[(visit + photo) % 6];
}

class Maker {
  public:
    Maker(QSqlDatabase& database, const LargeBookOptions& options) : database_(database), options_(options) {
        for (int i = 0; i < 12; ++i) {
            thumbnails_.append(jpeg_of({320, 240}, i, 70));
            photos_.append(jpeg_of({64, 48}, i, 50));
        }
    }
    LargeBook make();

  private:
    void fill_client(Id client, int number, int visits);
    void add_visit(Id client, QDate date, int photos, double share);
    void add_photo(Id visit, QDate date, View view, int shot, double share);
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(random_); }

    QSqlDatabase& database_;
    LargeBookOptions options_;
    std::mt19937 random_{options_.seed};
    QVector<QByteArray> thumbnails_, photos_;
    LargeBook made_;
    int visit_number_ = 0, photo_number_ = 0, left_over_ = 0;
    Rows clients_{database_, "client", {"name", "folded_name", "note", "since", "photo_consent", "consent_on"}};
    Rows visits_{database_, "visit", {"client", "visited_on", "wet", "styled", "product", "note"}};
    Rows photo_rows_{database_,
                     "photo",
                     {"visit", "view", "shot", "file_name", "format", "sha256", "width", "height", "taken",
                      "quality_level", "quality_findings", "thumbnail"}};
    Rows bytes_{database_, "photo_bytes", {"photo", "bytes"}};
    Rows marks_{database_,
                "marks",
                {"photo", "view", "edge_line", "hair_side_x", "hair_side_y", "hair_taps", "scalp_taps", "shine_region",
                 "strand_line", "region", "anchors", "sheet", "scale_points", "scale_mm"}};
    Rows runs_{database_,
               "run",
               {"photo", "marks", "analysis_version", "options", "card", "photo_sha256", "measured_at", "details"}};
    Rows readings_{database_, "reading", {"run", "name", "value", "low", "high", "refusal_code", "refusal_text"}};
    Rows grades_{database_, "grade", {"visit", "zone", "quality", "value", "round"}};
    Rows services_{database_, "service", {"client", "visit", "done_on", "kind", "note"}};
    Rows targets_{database_, "target", {"client", "view", "reading", "value"}};
    Rows profiles_{database_,
                   "client_profile",
                   {"client", "born", "length_mm", "length_on", "texture", "hair_group", "whole_history"}};
    Rows days_{database_, "daily_life", {"client", "told_on", "minutes_a_day", "heat_asked", "washes_a_week"}};
};

void Maker::add_photo(Id visit, QDate date, View view, int shot, double share) {
    const int number = photo_number_++;
    const QByteArray bytes = with_comment(photos_[number % photos_.size()], number);
    const QString hash = QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
    const bool measured = number % 10 < 8, refused = number % 25 == 24;  // the rest only to be looked at
    const QString day = date.toString(Qt::ISODate), word = word_of(view);
    const QString level = !measured ? QString("") : refused ? "refused" : number % 3 == 0 ? "usable" : "good";
    const QString findings =
        level == "usable"
            ? QStringLiteral(R"([{"code":"tilted","level":"warning","text":"The card is tilted by 14 degrees.",)"
                             R"("remedy":"Hold the camera straight above it."}])")
            : QStringLiteral("[]");
    const Id photo = photo_rows_.add({visit, word, shot, QStringLiteral("IMG_%1.jpg").arg(number), "jpeg", hash, 64, 48,
                                      day + "T10:00:00", level, measured ? findings : QString(""),
                                      thumbnails_[number % thumbnails_.size()]});
    bytes_.add({photo, bytes});
    if (!measured) return;
    static const QString line = [] {
        QStringList points;
        for (int i = 0; i < 14; ++i) points.append(QStringLiteral("[%1.5,%2.25]").arg(100 + 40 * i).arg(300 + i));
        return '[' + points.join(',') + ']';
    }();
    const bool edge = view != View::lengths && view != View::ends;
    const QString none = "[]", box = "[[80,60],[300,60],[300,240],[80,240]]";
    const Id marks = marks_.add({photo, word, edge ? line : none, edge ? QVariant(150) : QVariant(),
                                 edge ? QVariant(180) : QVariant(), none, none, view == View::lengths ? box : none,
                                 view == View::lengths ? line : none, view == View::ends ? box : none, none,
                                 view == View::ends ? QString("hem") : QString(""), none, 0});
    static const QString card = '{' + QString(QStringLiteral(R"("gain":[1.02,1,0.97],)")).repeated(30) + R"("n":1})";
    static const QString how = R"({"printer_scale":1,"with_sha256":true,"depth_mm":20})";
    const Id run = runs_.add({photo, marks, 3, how, card, hash, day + "T11:00:00.000Z", QStringLiteral("{}")});
    for (const Named& one : readings_for(view)) {
        if (refused || between(0, 1) < one.refused) {
            readings_.add({run, one.name, QVariant(), QVariant(), QVariant(), "too-coarse",
                           "Single strands need a closer photo than this one."});
            continue;
        }
        const double value = one.value * (1 + 0.5 * share) + between(-1, 1) * one.half;
        const double bounded = std::clamp(value, 0.01, QByteArray(one.name) == "tone_level" ? 10.0 : 99.0);
        const double half = std::min(one.half, bounded);
        readings_.add({run, one.name, bounded, bounded - half, bounded + half, QVariant(), QVariant()});
    }
}

void Maker::add_visit(Id client, QDate date, int photos, double share) {
    const int number = visit_number_++;
    const Id visit = visits_.add({client, date.toString(Qt::ISODate), 0, number % 4 == 0, 0,
                                  number % 5 == 0 ? QString("Left temple calmer, wore a loose plait all week.") : ""});
    if (photos >= 40) made_.many_photos_visit = visit;
    int shots[16] = {};
    for (int i = 0; i < photos; ++i) {
        const View view = view_of(number, i);
        add_photo(visit, date, view, ++shots[static_cast<int>(view)], share);
    }
    static const QString zones[] = {"left temple", "right temple", "nape"};
    if (number % 2 == 0)
        for (const QString& zone : zones) grades_.add({visit, zone, "edges", static_cast<int>(random_() % 5), 1});
    static const QString kinds[] = {"permanent colour",   "cut",
                                    "protein treatment",  "gloss",
                                    "moisture treatment", "hydroxide straightener without lye"};
    services_.add({client, visit, date.toString(Qt::ISODate), kinds[random_() % 6], ""});
}

void Maker::fill_client(Id client, int number, int visits) {
    const QDate last = options_.today.addDays(-1 - static_cast<int>(random_() % 300));
    for (int i = 0; i < visits; ++i) {
        int photos = 3 + (visit_number_ < (options_.photos - 3 * options_.visits) * 3 && visit_number_ % 3 == 0);
        // Of 37 visits the fourth photo goes to one that has 40.
        if (photos == 4 && left_over_ < 37 && number > 2) ++left_over_, photos = 3;
        if (number == options_.clients - 1 && i == visits - 1) photos += left_over_, made_.many_photos = client;
        add_visit(client, last.addDays(-42 * (visits - 1 - i)), photos, static_cast<double>(i) / visits);
    }
    if (number % 10 < 6) {
        profiles_.add({client, QDate(1950 + number % 55, 1 + number % 12, 5).toString(Qt::ISODate), 200 + number % 300,
                       last.toString(Qt::ISODate), "medium", "", 1});
        days_.add({client, last.toString(Qt::ISODate), 10 + number % 30, 1, 2});
    }
    for (const char* view : {"left temple", "right temple"})
        if (visits > 3) targets_.add({client, QString::fromLatin1(view), "edge_coverage", 80});
}

LargeBook Maker::make() {
    const std::vector<int> visits = visits_of_clients(options_, random_);
    for (int i = 0; i < options_.clients; ++i) {
        const QString name = name_of(i), since = options_.today.addDays(-3000).toString(Qt::ISODate);
        const Id client =
            clients_.add({name, sql::folded(name), "", since, i % 3 == 0, i % 3 == 0 ? since : QVariant()});
        if (i == 0) made_.many_visits = client;
        if (i == 1) made_.no_visits = client;
        fill_client(client, i, visits[static_cast<std::size_t>(i)]);
    }
    if (visits_.rows != options_.visits || photo_rows_.rows != options_.photos)
        stop(QStringLiteral("%1 visits and %2 photos were made").arg(visits_.rows).arg(photo_rows_.rows));
    made_.readings = readings_.rows;
    return made_;
}

Id asked(Book& book, const QString& statement) {
    auto query = sql::select(book.connection(), statement);
    if (!query || !query->next()) stop("the book does not answer: " + statement);
    return query->value(0).toLongLong();
}

}  // namespace

LargeBook make_large_book(const QString& path, const LargeBookOptions& options) {
    auto book = Book::create(path);
    if (!book) stop(QString::fromStdString(book.error().sentence()));
    QSqlDatabase& database = book->connection().database;
    // Pages of the indexes stay in memory while 200,000 scattered hashes go in; a book that was not made whole is
    // thrown away, so nothing has to be written twice.
    for (const char* quick : {"cache_size=-400000", "journal_mode=OFF", "synchronous=OFF"})
        QSqlQuery(database).exec(QStringLiteral("PRAGMA ") + QLatin1String(quick));
    auto transaction = Transaction::begin(*book);
    if (!transaction) stop(QString::fromStdString(transaction.error().sentence()));
    LargeBook made = Maker(database, options).make();
    if (const Status done = transaction->commit(); !done) stop(QString::fromStdString(done.error().sentence()));
    QSqlQuery(database).exec(QStringLiteral("PRAGMA journal_mode=WAL"));
    made.bytes = QFileInfo(path).size();
    return made;
}

LargeBook look_at_large_book(const QString& path) {
    auto book = Book::open(path);
    if (!book) stop(QString::fromStdString(book.error().sentence()));
    LargeBook found;
    found.many_visits = asked(*book, "SELECT client FROM visit GROUP BY client ORDER BY COUNT(*) DESC, client LIMIT 1");
    found.no_visits = asked(*book, "SELECT id FROM client WHERE id NOT IN (SELECT client FROM visit) LIMIT 1");
    found.many_photos_visit =
        asked(*book, "SELECT visit FROM photo GROUP BY visit ORDER BY COUNT(*) DESC, visit LIMIT 1");
    found.many_photos =
        asked(*book, QStringLiteral("SELECT client FROM visit WHERE id = %1").arg(found.many_photos_visit));
    found.readings = asked(*book, "SELECT COUNT(*) FROM reading");
    found.bytes = QFileInfo(path).size();
    return found;
}

}  // namespace bench
