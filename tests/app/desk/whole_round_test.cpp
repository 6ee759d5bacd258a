// The whole round by mouse and keys, from an empty start page to the PDF, and what is then in the book: asked through a
// connection of its own, and against the files, the marks that were clicked, and the analysis run again on both.
#include "whole_round.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QLineF>
#include <QProcess>
#include <boost/test/unit_test.hpp>
#include <iostream>

#include "desk/look/look.h"
#include "desk/photo/line_geometry.h"
#include "domain/clock.h"
#include "domain/marks_json.h"
#include "work/keep_care.h"
#include "work/keep_records.h"
#include "work/measure_photo.h"
#include "work/plan_draft.h"
#include "work/progress_of.h"
#include "work/set_marks.h"

using namespace kempt;
using test::read;
using test::WholeRound;

namespace {

struct InBook {
    Client client;
    QVector<Visit> visits;
    QVector<QVector<work::PhotoRow>> photos;  // of each visit
};

InBook in_book(const QString& path) {
    InBook all;
    const auto clients = read<QVector<work::ClientRow>>(path, [](Book& b) { return work::list_clients(b); });
    BOOST_TEST_REQUIRE(clients.size() == 1);
    all.client = clients.first().client;
    all.visits = read<QVector<Visit>>(path, [&](Book& b) { return work::list_visits(b, all.client.id); });
    for (const Visit& visit : all.visits)
        all.photos.append(read<QVector<work::PhotoRow>>(path, [&](Book& b) { return work::list_photos(b, visit.id); }));
    return all;
}

Marks marks_in(const QString& path, Id photo) {
    const auto marks = read<std::optional<Marks>>(path, [&](Book& b) { return work::marks_of(b, photo); });
    BOOST_TEST_REQUIRE(marks.has_value());
    return *marks;
}

void bytes_are_those_of_the_files(const QString& book, const InBook& there, const WholeRound& round) {
    const QVector<QStringList> dropped{round.first_files, round.second_files};
    for (int v = 0; v < 2; ++v) {
        BOOST_TEST_REQUIRE(there.photos[v].size() == 2);
        for (int i = 0; i < 2; ++i) {
            const work::PhotoRow& row = there.photos[v][i];
            BOOST_TEST((row.photo.view == View::left_temple));
            BOOST_TEST(row.photo.shot == i + 1);
            QFile file(dropped[v][i]);
            BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));  // the file stays where it was
            const QByteArray bytes = file.readAll();
            const auto kept = read<QByteArray>(book, [&](Book& b) { return work::photo_bytes(b, row.photo.id); });
            const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex();
            BOOST_TEST((kept == bytes));
            BOOST_TEST((row.photo.sha256.toLatin1() == hash));
            BOOST_TEST((QCryptographicHash::hash(kept, QCryptographicHash::Sha256).toHex() == hash));
        }
    }
}

void marks_are_those_that_were_clicked(const QString& book, const InBook& there, const WholeRound& round) {
    const Marks first = marks_in(book, there.photos[0][0].photo.id);
    BOOST_TEST_REQUIRE(first.edge_line.size() == round.clicked_line.size());
    QFile file(test::sample(1, 1, ".marks.json"));
    BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
    const auto wanted = marks_from_json(file.readAll());
    BOOST_TEST_REQUIRE(wanted.ok());
    for (qsizetype i = 0; i < first.edge_line.size(); ++i) {
        BOOST_TEST(QLineF(first.edge_line[i], round.clicked_line[i]).length() < 0.01);
        // A click is on a whole pixel of the screen: off by half of one at most, in x and in y.
        BOOST_TEST(QLineF(first.edge_line[i], wanted->edge_line[i]).length() <= 0.71 * round.pixel + 0.01);
    }
    BOOST_TEST_REQUIRE(first.hair_side.has_value());
    BOOST_TEST(QLineF(*first.hair_side, round.dragged_side).length() < 0.01);
    BOOST_TEST(QLineF(*first.hair_side, *wanted->hair_side).length() <= 2 * round.pixel);  // gripped beside its middle
    BOOST_TEST(round.nudged_by.x() == 3 * round.pixel, boost::test_tools::tolerance(1e-6));
    BOOST_TEST(round.nudged_by.y() == round.pixel, boost::test_tools::tolerance(1e-6));
    const Marks resumed = marks_in(book, there.photos[1][0].photo.id);
    BOOST_TEST((resumed.edge_line == round.left_line));
}

// Marks that were carried lie where the edge is drawn by hand. The laying is within 0.5 mm in 98 of 100 pairs
// (docs/accuracy.md); twice that here, on this one.
void carried_marks_lie_on_the_edge(const QString& book, const InBook& there) {
    for (int v = 0; v < 2; ++v)
        for (int i = 0; i < 2; ++i) {
            if (v == 0 && i == 0) continue;
            QFile file(test::sample(v + 1, i + 1, ".marks.json"));
            BOOST_TEST_REQUIRE(file.open(QIODevice::ReadOnly));
            const auto by_hand = marks_from_json(file.readAll());
            BOOST_TEST_REQUIRE(by_hand.ok());
            const Marks carried = marks_in(book, there.photos[v][i].photo.id);
            BOOST_TEST_REQUIRE(carried.edge_line.size() >= 2);
            constexpr double px_per_mm = 20.4;  // of these photos, from their truth files: 20.0 to 20.9
            for (const QPointF& p : carried.edge_line)
                BOOST_TEST(desk::nearest_stretch(by_hand->edge_line, p).distance < 1.0 * px_per_mm);
        }
}

// The same bytes with the same marks, measured here without a book or a window.
void readings_are_those_of_the_analysis(const QString& book, const InBook& there) {
    for (const auto& visit : there.photos)
        for (const work::PhotoRow& row : visit) {
            const auto bytes = read<QByteArray>(book, [&](Book& b) { return work::photo_bytes(b, row.photo.id); });
            const Marks marks = marks_in(book, row.photo.id);
            const auto measured = work::measure_photo(bytes, marks);
            BOOST_TEST_REQUIRE(measured.ok());
            BOOST_TEST_REQUIRE(measured->readings.size() >= 3);
            BOOST_TEST(row.readings.size() ==
                       static_cast<qsizetype>(measured->readings.size() + measured->refused.size()));
            for (const Quantity& wanted : measured->readings) {
                const auto found = std::find_if(row.readings.begin(), row.readings.end(), [&](const ReadingRecord& r) {
                    return r.name.toStdString() == wanted.name;
                });
                BOOST_TEST_REQUIRE((found != row.readings.end() && !found->refused), wanted.name);
                BOOST_TEST(found->marks == marks.id);
                BOOST_TEST(found->value == wanted.value, boost::test_tools::tolerance(1e-9));
                BOOST_TEST(found->low == wanted.low, boost::test_tools::tolerance(1e-9));
                BOOST_TEST(found->high == wanted.high, boost::test_tools::tolerance(1e-9));
            }
        }
}

void what_was_told_and_done_is_kept(const QString& book, const InBook& there, const WholeRound& round) {
    const QDate today = Clock().today();
    BOOST_TEST((there.client.name == round.name));
    BOOST_TEST((there.client.note == round.note));
    BOOST_TEST(there.client.photo_consent);
    BOOST_TEST((there.client.consent_on == std::optional(today)));
    const Id id = there.client.id;
    const auto profile = read<ClientProfile>(book, [&](Book& b) { return work::profile_of(b, id); });
    BOOST_TEST((profile.texture == "coarse"));
    BOOST_TEST((profile.length_mm == std::optional(240.0)));
    BOOST_TEST((profile.length_on == std::optional(today)));
    const auto days = read<QVector<DailyLife>>(book, [&](Book& b) { return work::list_daily_life(b, id); });
    BOOST_TEST_REQUIRE(days.size() == 1);
    BOOST_TEST((days[0].date == today && days[0].washes_a_week == std::optional(2.0)));
    BOOST_TEST((days[0].tight_styles == std::optional(true)));
    BOOST_TEST(!days[0].hard_water.has_value());
    const auto answers = read<QVector<ClientAnswer>>(book, [&](Book& b) { return work::list_answers(b, id); });
    BOOST_TEST_REQUIRE(answers.size() == 1);
    BOOST_TEST((answers[0].question == round.answered && answers[0].value == round.answer && answers[0].date == today));
    BOOST_TEST((there.visits[0].date == round.first_day));
    BOOST_TEST((there.visits[1].date == round.second_day));
    BOOST_TEST((there.visits[1].note == round.second_note));
    const auto grades = read<QVector<Grade>>(book, [&](Book& b) { return work::list_grades(b, there.visits[0].id); });
    BOOST_TEST_REQUIRE(grades.size() == 3);
    const QVector<QPair<QString, QPair<QString, int>>> given{
        {"scalp", {"front hairline", 4}}, {"edges", {"left temple", 1}}, {"edges", {"right temple", 2}}};
    for (const auto& [quality, at] : given)
        BOOST_TEST(std::any_of(grades.begin(), grades.end(), [&](const Grade& g) {
            return g.quality == quality && g.zone == at.first && g.value == at.second && g.round == 1;
        }));
    const auto services = read<QVector<Service>>(book, [&](Book& b) { return work::list_services(b, id); });
    BOOST_TEST_REQUIRE(services.size() == 2);
    const Service &done = services[0], &planned = services[1];
    BOOST_TEST((done.kind == "protein treatment" && done.done && done.date == round.first_day));
    BOOST_TEST((done.minutes == std::optional(15.0) && done.result == "stronger, not stiff"));
    BOOST_TEST((done.visit == std::optional(there.visits[0].id)));
    BOOST_TEST((planned.kind == "permanent colour" && !planned.done && planned.date == round.planned_day));
    const auto draft = read<std::optional<work::PlanDraft>>(book, [&](Book& b) { return work::plan_draft_of(b, id); });
    BOOST_TEST_REQUIRE((draft.has_value() && draft->items.size() == 1));
    BOOST_TEST((draft->items[0].item.service.kind == care::Kind::permanent));
}

QString text_of(const QString& pdf) {
    QProcess reader;
    reader.start("pdftotext", {pdf, "-"});
    BOOST_TEST_REQUIRE((reader.waitForStarted(10000) && reader.waitForFinished(30000)),
                       "pdftotext is not there: " << reader.errorString().toStdString());
    BOOST_TEST_REQUIRE(reader.exitCode() == 0);
    return QString::fromUtf8(reader.readAllStandardOutput()).simplified();
}

void the_report_says_what_the_book_says(const QString& book, const InBook& there, const WholeRound& round) {
    work::ProgressOptions options;
    options.client = there.client.id;
    const auto progress = read<work::ClientProgress>(book, [&](Book& b) { return work::progress_of(b, options); });
    const work::Series* cover = progress.find(View::left_temple, "edge_coverage");
    BOOST_TEST_REQUIRE(cover != nullptr);
    const work::PairVerdict* verdict = cover->verdict(there.visits[0].id, there.visits[1].id);
    BOOST_TEST_REQUIRE(verdict != nullptr);
    const QString reason = QString::fromStdString(verdict->judgement.reason).simplified();
    BOOST_TEST_REQUIRE(reason.size() > 20);
    BOOST_TEST(verdict->judgement.difference > 0);  // 8.4 to 11.6 % in the truth beside the photos
    const QString told = text_of(round.pdf);
    for (const QString& words :
         {round.name, QString("3 Mar 2026"), QString("14 Apr 2026"), reason,
          QString("Protein treatment 15 min; stronger, not stiff"), QString("Permanent colour (planned)")})
        BOOST_TEST(told.contains(words), "the report has no \"" << words.toStdString() << "\"");
    BOOST_TEST(round.verdict_shown.contains(reason.left(30), Qt::CaseInsensitive), round.verdict_shown.toStdString());
    QFile table(round.table);
    BOOST_TEST_REQUIRE(table.open(QIODevice::ReadOnly));
    const QString rows = QString::fromUtf8(table.readAll());
    for (const auto& visit : there.photos)
        for (const work::PhotoRow& row : visit)
            for (const ReadingRecord& reading : row.readings) BOOST_TEST(rows.contains(reading.name));
    BOOST_TEST(rows.count(round.name) >= 4 * 3);
    const QStringList names = QDir(round.pictures).entryList({"*.png"}, QDir::Files);
    BOOST_TEST_REQUIRE(names.size() == 1);
    const QImage picture(round.pictures + "/" + names.first());
    BOOST_TEST((picture.width() > 400 && picture.height() > 200));
}

void go_through(WholeRound& round) {
    round.start_book();
    round.add_client();
    round.tell_hair_and_days();
    round.first_visit();
    round.first_photos(2);
    round.draw_first();
    round.nudge_and_undo();
    round.carry_to_second();
    round.grade();
    round.services();
    round.plan();
    round.second_visit();
    round.compare();
    round.report();
    std::cout << "whole round on " << QGuiApplication::platformName().toStdString() << ": " << round.hands.presses
              << " presses\n";
    round.hands.close();
}

void all_of_it_is_in_the_book(const WholeRound& round) {
    const InBook there = in_book(round.book_path);
    BOOST_TEST_REQUIRE(there.visits.size() == 2);
    bytes_are_those_of_the_files(round.book_path, there, round);
    marks_are_those_that_were_clicked(round.book_path, there, round);
    carried_marks_lie_on_the_edge(round.book_path, there);
    readings_are_those_of_the_analysis(round.book_path, there);
    what_was_told_and_done_is_kept(round.book_path, there, round);
    the_report_says_what_the_book_says(round.book_path, there, round);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(whole_round)

BOOST_AUTO_TEST_CASE(a_new_client_from_the_start_page_to_the_report_and_all_of_it_is_in_the_book) {
    WholeRound round;
    go_through(round);
    all_of_it_is_in_the_book(round);
}

BOOST_AUTO_TEST_CASE(with_text_of_twice_the_size_the_round_goes_to_the_report_and_no_control_is_out_of_reach) {
    struct Large {
        Large() { desk::look().apply({false, 2.0}); }
        ~Large() { desk::look().apply({}); }
    } large;
    WholeRound round;
    go_through(round);
    all_of_it_is_in_the_book(round);
}

BOOST_AUTO_TEST_SUITE_END()
