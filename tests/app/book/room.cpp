#include "room.h"

#include <sys/wait.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QTimeZone>
#include <random>

#include "book/client_store.h"
#include "book/grade_store.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/profile_store.h"
#include "book/reading_store.h"
#include "book/service_store.h"
#include "book/setting_store.h"
#include "book/sql.h"
#include "book/target_store.h"
#include "book/visit_store.h"

namespace {

struct Application {
    int count = 1;
    char name[5] = "test";
    char* words[2] = {name, nullptr};
    QCoreApplication application{count, words};
};
BOOST_TEST_GLOBAL_FIXTURE(Application);

}  // namespace

namespace kempt {

bool operator==(const Client& a, const Client& b) {
    return a.id == b.id && a.name == b.name && a.note == b.note && a.since == b.since &&
           a.photo_consent == b.photo_consent && a.consent_on == b.consent_on;
}
bool operator==(const Visit& a, const Visit& b) {
    return a.id == b.id && a.client == b.client && a.date == b.date && a.hair == b.hair && a.note == b.note;
}
bool operator==(const PhotoRecord& a, const PhotoRecord& b) {
    const bool same_taken = a.taken == b.taken && (!a.taken || (a.taken->timeSpec() == b.taken->timeSpec() &&
                                                                a.taken->offsetFromUtc() == b.taken->offsetFromUtc()));
    return a.id == b.id && a.visit == b.visit && a.view == b.view && a.shot == b.shot && a.file_name == b.file_name &&
           a.format == b.format && a.sha256 == b.sha256 && a.size == b.size && same_taken &&
           a.thumbnail == b.thumbnail && a.quality_level == b.quality_level && a.quality_findings == b.quality_findings;
}
bool operator==(const Marks& a, const Marks& b) {
    return a.id == b.id && a.photo == b.photo && a.view == b.view && a.edge_line == b.edge_line &&
           a.hair_side == b.hair_side && a.hair_taps == b.hair_taps && a.scalp_taps == b.scalp_taps &&
           a.shine_region == b.shine_region && a.strand_line == b.strand_line && a.region == b.region &&
           a.anchors == b.anchors && a.sheet == b.sheet && a.scale_points == b.scale_points &&
           a.scale_mm == b.scale_mm && a.not_hair == b.not_hair && a.joined == b.joined && a.whole == b.whole;
}
bool operator==(const ReadingRecord& a, const ReadingRecord& b) {
    return a.id == b.id && a.photo == b.photo && a.marks == b.marks && a.name == b.name && a.unit == b.unit &&
           a.value == b.value && a.low == b.low && a.high == b.high && a.refused == b.refused &&
           a.refusal_code == b.refusal_code && a.refusal_text == b.refusal_text &&
           a.analysis_version == b.analysis_version && a.options == b.options && a.card == b.card &&
           a.photo_sha256 == b.photo_sha256 && a.measured_at == b.measured_at;
}
bool operator==(const Grade& a, const Grade& b) {
    return a.id == b.id && a.visit == b.visit && a.zone == b.zone && a.quality == b.quality && a.value == b.value &&
           a.round == b.round;
}
bool operator==(const Target& a, const Target& b) {
    return a.id == b.id && a.client == b.client && a.view == b.view && a.reading == b.reading && a.value == b.value;
}

}  // namespace kempt

namespace kempt::test {

QByteArray content_of(const QString& path) {
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

void write_content(const QString& path, const QByteArray& content) {
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    BOOST_REQUIRE(file.write(content) == content.size());
}

QByteArray noise(int size, unsigned seed) {
    std::mt19937 random(seed);
    QByteArray bytes(size, '\0');
    for (char& byte : bytes) byte = char(random() & 0xFF);
    return bytes;
}

PhotoRecord sample_photo(Id visit, View view, int shot) {
    PhotoRecord photo;
    photo.visit = visit;
    photo.view = view;
    photo.shot = shot;
    photo.file_name = "IMG 0001.jpg";
    photo.format = "jpeg";
    photo.size = QSize(3024, 4032);
    photo.thumbnail = QByteArray("\xFF\xD8\x00small\xFF\xD9", 10);
    return photo;
}

Marks sample_marks(Id photo) {
    Marks marks;
    marks.photo = photo;
    marks.view = View::left_temple;
    marks.edge_line = {{10.25, 20.0}, {1.0 / 3.0, 1e-9}, {-4, 3023.999999}};
    marks.hair_side = QPointF(100, 0);
    marks.hair_taps = {{1, 2}};
    marks.scalp_taps = {{3, 4}, {5, 6}};
    marks.shine_region = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    marks.strand_line = {{7, 8}, {9, 10}};
    marks.region = {{0, 0}, {2, 0}, {2, 2}, {0, 2}};
    marks.anchors = {{11, 12}};
    marks.sheet = "hem";
    marks.scale_points = {{0, 0}, {500, 0}};
    marks.scale_mm = 50;
    marks.not_hair = {{21, 22}};
    marks.joined = {{31, 32}, {41.5, 42}};
    marks.whole = {{51.25, 52}};
    return marks;
}

QVector<ReadingRecord> sample_readings(Id photo, Id marks, const QString& photo_sha256, double coverage) {
    ReadingRecord a;
    a.photo = photo;
    a.marks = marks;
    a.name = "edge_coverage";
    a.unit = "%";
    a.value = coverage;
    a.low = coverage - 2.75;
    a.high = coverage + 3.1;
    a.analysis_version = 1;
    a.options = R"({"depth_mm":20})";
    a.card = R"({"px_per_mm":21.5})";
    a.photo_sha256 = photo_sha256;
    a.measured_at = QDateTime(QDate(2025, 3, 4), QTime(10, 11, 12, 345), Qt::UTC);
    ReadingRecord b = a;
    b.name = "edge_strands";
    b.unit = "1/cm";
    b.value = b.low = b.high = 0;
    b.refused = true;
    b.refusal_code = "too-coarse";
    b.refusal_text = "The photo is too coarse to count strands.";
    return {a, b};
}

Service sample_service(Id client, std::optional<Id> visit) {
    Service s{0, client, visit, QDate(2025, 3, 4), "gloss", "clear"};
    s.from_mm = 12.5;
    s.to_mm = 240;
    s.sections = {"crown", "left temple"};
    s.strength = "mild";
    s.minutes = 18;
    s.most_minutes = 30;
    s.temperature_c = 21.5;
    s.passes = 0;
    s.strand_test = "passed";
    s.patch_test = "failed";
    s.patch_test_on = QDate(2025, 3, 1);
    s.patch_test_where = "behind the left ear";
    s.result = "even, a little warm at the ends";
    s.reaction = false;
    s.at_home = true;
    s.line_mm = 18.5;
    s.line_on = QDate(2025, 5, 6);
    return s;
}

ClientProfile sample_profile(Id client) {
    return {client,
            QDate(1990, 5, 6),
            34.0,
            QDate(2025, 1, 2),
            251.5,
            QDate(2025, 3, 4),
            "fine",
            "african",
            false,
            QDate(2019, 1, 1),
            QDate(2025, 3, 4)};
}

DailyLife sample_daily_life(Id client) {
    DailyLife d;
    d.client = client;
    d.date = QDate(2025, 3, 4);
    d.minutes_a_day = 12;
    d.heat = QVector<HeatTool>{{"flat iron", 185, 2.5, false}, {"dryer", {}, 4, {}}};
    d.washes_a_week = 1;
    d.hard_water = true;
    d.tight_styles = false;
    d.style_weeks = 6;
    return d;
}

Filled fill(Book& book) {
    Filled f;
    f.client = must(store::add_client(
        book, {0, "Zoë Example", "Edges after tight styles", QDate(2025, 1, 2), true, QDate(2025, 1, 3)}));
    f.visit = must(store::add_visit(book, {0, f.client, QDate(2025, 3, 4), {true, false, true}, "first"}));
    f.bytes = noise(70000, 1);
    PhotoRecord photo = sample_photo(f.visit);
    photo.taken = QDateTime(QDate(2025, 3, 4), QTime(9, 30), Qt::OffsetFromUTC, 2 * 3600);
    photo.quality_level = "usable";
    photo.quality_findings = "[]";
    f.photo = must(store::add_photo(book, photo, f.bytes));
    f.marks = must(store::add_marks(book, sample_marks(f.photo)));
    f.run = must(
        store::add_readings(book, sample_readings(f.photo, f.marks, must(store::get_photo(book, f.photo)).sha256)));
    f.grade = must(store::add_grade(book, {0, f.visit, "left temple", "edges", 2, 1}));
    f.service = must(store::add_service(book, sample_service(f.client, f.visit)));
    Service planned{0, f.client, {}, QDate(2025, 4, 8), "cut", ""};
    planned.done = false;
    must(store::add_service(book, planned));
    must(store::put_profile(book, sample_profile(f.client)));
    f.daily = must(store::put_daily_life(book, sample_daily_life(f.client)));
    f.answer = must(store::put_answer(book, {0, f.client, QDate(2025, 3, 4), "takes_medication", 1}));
    f.target = must(store::add_target(book, {0, f.client, View::left_temple, "edge_coverage", 80}));
    must(store::put_setting(book, "paper", "a4"));
    return f;
}

QStringList listing(Book& book) {
    QStringList lines;
    for (const char* table :
         {"client", "visit", "photo", "photo_bytes", "marks", "reading_name", "run", "reading", "grade", "service",
          "target", "setting", "client_profile", "daily_life", "heat_tool", "answer"}) {
        auto query = must(sql::select(book.connection(), QString("SELECT * FROM %1 ORDER BY 1").arg(table)));
        while (query.next()) {
            QStringList fields{table};
            for (int i = 0; i < query.record().count(); ++i) {
                const QVariant value = query.value(i);
                if (value.typeId() == QMetaType::QByteArray)
                    fields << QCryptographicHash::hash(value.toByteArray(), QCryptographicHash::Sha256).toHex();
                else
                    fields << query.record().fieldName(i) + "=" + (value.isNull() ? "none" : value.toString());
            }
            lines << fields.join(" | ");
        }
    }
    return lines;
}

QStringList schema_of(Book& book) {
    auto query = must(sql::select(
        book.connection(), "SELECT type, name, sql FROM sqlite_master WHERE name NOT LIKE 'sqlite_%' ORDER BY 1, 2"));
    QStringList lines;
    while (query.next())
        lines << QStringList{query.value(0).toString(), query.value(1).toString(),
                             query.value(2).toString().simplified()}
                     .join(" | ");
    return lines;
}

int in_child(const std::function<int()>& body) {
    const pid_t child = ::fork();
    BOOST_REQUIRE(child >= 0);
    if (child == 0) ::_exit(body());
    int status = 0;
    BOOST_REQUIRE(::waitpid(child, &status, 0) == child);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace kempt::test
