// New photos sorted: when they were taken, by sitting, whose they are, which view, and into the record.
#include <QFileInfo>

#include "app/work/book_photos.h"
#include "app/work/exif_photo.h"
#include "book/sql.h"
#include "domain/marks_json.h"
#include "work/sort_incoming.h"
#include "work/sort_sittings.h"
#include "work/sort_take.h"
#include "work/sort_views.h"

using namespace kempt;
using tests::taken_at;
using tests::TemporaryBook;
using work::ProposedBy;

namespace {

const QDate day(2026, 5, 4);

QDateTime at(int hour, int minute, QDate on = day) {
    return {on, QTime(hour, minute)};
}

QByteArray picture(unsigned seed) {
    static const QByteArray plain = tests::photo_bytes_of(tests::small_photo(10, 1));
    return taken_at(plain, "2026:05:04 10:" + QByteArray::number(10 + seed) + ":00");
}

struct Sorting : TemporaryBook {
    Client bea;
    Sorting() {
        Client other;
        other.name = "Bea Olsson";
        other.since = day;
        bea = required(work::add_client(*book, other));
    }
    [[nodiscard]] Visit visit_of(const Client& who, QDate on = day) const {
        Visit made;
        made.client = who.id;
        made.date = on;
        return required(work::add_visit(*book, made));
    }
    [[nodiscard]] work::VisitProposal proposed(const work::SortContext& context, const QDateTime& from,
                                               const QDateTime& to) const {
        return required(work::propose_visit(*book, {from, to, from.date()}, context));
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(sort_photos, Sorting)

BOOST_AUTO_TEST_CASE(the_capture_time_says_where_it_comes_from) {
    const QByteArray plain = tests::photo_bytes_of(tests::small_photo(10, 1));
    const auto look = [&](const QString& name, const QByteArray& bytes) {
        return required(work::look_at_incoming(*book, write(name, bytes)));
    };
    // 23:30 five hours behind Greenwich is the next day there: her day is the one on the camera.
    const auto zoned = look("a.jpg", taken_at(plain, "2026:05:04 23:30:00", "-05:00"));
    BOOST_TEST((zoned.from == work::TakenFrom::camera_with_zone));
    BOOST_TEST((zoned.taken.toUTC() == QDateTime(QDate(2026, 5, 5), QTime(4, 30), Qt::UTC)));
    BOOST_TEST((zoned.day(QDate(2026, 10, 1)) == day));
    const auto local = look("b.jpg", taken_at(plain, "2026:05:04 10:10:00"));
    BOOST_TEST((local.from == work::TakenFrom::camera));
    BOOST_TEST((local.taken == at(10, 10)));
    const auto bare = look("c.jpg", plain);
    BOOST_TEST((bare.from == work::TakenFrom::file));
    BOOST_TEST((bare.taken == QFileInfo(bare.path).lastModified()));
    // A camera whose clock runs ahead opens no visit of a day to come.
    BOOST_TEST((look("d.jpg", taken_at(plain, "2030:01:01 10:00:00")).day(day) == day));
    BOOST_TEST(!local.thumbnail.isEmpty());
    BOOST_TEST(local.size.width() == 1900);
}

BOOST_AUTO_TEST_CASE(half_a_file_is_damaged_and_not_a_photo_to_come) {
    const QByteArray plain = picture(1);
    const auto half = work::look_at_incoming(*book, write("half.jpg", plain.left(plain.size() / 2)));
    BOOST_TEST_REQUIRE(!half.ok());
    BOOST_TEST((half.error().kind == ErrorKind::damaged));
}

BOOST_AUTO_TEST_CASE(a_photo_of_the_book_is_told_with_client_day_and_view) {
    const QString file_path = write("one.jpg", picture(1));
    required(work::import_photos(*book, {visit.id, View::nape, {file_path}, true, {}}));
    const auto again = required(work::look_at_incoming(*book, write("copy.jpg", picture(1))));
    BOOST_TEST_REQUIRE(again.in_record.has_value());
    BOOST_TEST(again.in_record->client_name.toStdString() == "Ada Lindqvist");
    BOOST_TEST((again.in_record->day == visit.date));
    BOOST_TEST((again.in_record->view == View::nape));
}

BOOST_AUTO_TEST_CASE(what_was_left_alone_is_remembered_by_its_hash_until_it_is_brought_back) {
    const QString file_path = write("one.jpg", picture(1));
    const auto first = required(work::look_at_incoming(*book, file_path));
    BOOST_TEST(!first.left_before);
    required(work::leave_alone(*book, first.sha256, day));
    BOOST_TEST(required(work::look_at_incoming(*book, write("renamed.jpg", picture(1)))).left_before);
    BOOST_TEST(!required(work::look_at_incoming(*book, write("other.jpg", picture(2)))).left_before);
    required(work::bring_back(*book, first.sha256));
    BOOST_TEST(!required(work::look_at_incoming(*book, file_path)).left_before);
    BOOST_TEST(QFile::exists(file_path));
    BOOST_TEST(!work::leave_alone(*book, "no hash", day).ok());
}

BOOST_AUTO_TEST_CASE(a_quarter_of_an_hour_without_a_photo_or_a_new_day_ends_a_sitting) {
    const QVector<QDateTime> taken{at(11, 0), at(10, 0), at(10, 15), at(10, 31), at(10, 1), at(11, 1, day.addDays(1))};
    const auto sittings = work::sittings_of(taken);
    BOOST_TEST_REQUIRE(sittings.size() == 4);
    BOOST_TEST((sittings[0] == QVector<int>{1, 4, 2}));
    BOOST_TEST((sittings[1] == QVector<int>{3}));
    BOOST_TEST((sittings[2] == QVector<int>{0}));
    BOOST_TEST((sittings[3] == QVector<int>{5}));
    // The same moment on two clocks.
    const QDateTime there(day, QTime(12, 3), Qt::OffsetFromUTC, 7200), utc(day, QTime(10, 0), Qt::UTC);
    BOOST_TEST(work::sittings_of({there, utc}).size() == 1);
    BOOST_TEST(work::sittings_of({}).isEmpty());
}

BOOST_AUTO_TEST_CASE(what_she_drops_on_a_client_or_a_visit_goes_there) {
    const Visit today = visit_of(client);
    (void)visit_of(bea);
    work::SortContext context{client.id, 0, true, day};
    auto p = proposed(context, at(10, 0), at(10, 5));
    BOOST_TEST(p.client == client.id);
    BOOST_TEST(p.visit == today.id);
    BOOST_TEST((p.by == ProposedBy::dropped));
    p = proposed(context, at(10, 0, day.addDays(-3)), at(10, 5, day.addDays(-3)));
    BOOST_TEST(p.visit == 0);  // a new one of the day they were taken
    BOOST_TEST((p.day == day.addDays(-3)));
    // On a visit: that one, whatever the day.
    context.visit = visit.id;
    p = proposed(context, at(10, 0), at(10, 5));
    BOOST_TEST(p.visit == visit.id);
    BOOST_TEST((p.day == visit.date));
}

BOOST_AUTO_TEST_CASE(watched_photos_are_proposed_by_sitting_then_by_what_is_open_then_by_the_only_visit) {
    work::SortContext context{0, 0, false, day};
    BOOST_TEST((proposed(context, at(10, 12), at(10, 14)).by == ProposedBy::nothing));
    const Visit adas = visit_of(client);
    BOOST_TEST((proposed(context, at(10, 12), at(10, 14)).by == ProposedBy::only_visit));
    // The time of a file is that of a sync, perhaps: no guess by it.
    const auto by_files = [&] {
        return required(work::propose_visit(*book, {at(10, 12), at(10, 14), day, true}, context));
    };
    BOOST_TEST((by_files().by == ProposedBy::nothing));
    const Visit beas = visit_of(bea);
    BOOST_TEST((proposed(context, at(10, 12), at(10, 14)).by == ProposedBy::nothing));
    context.client = bea.id;
    context.visit = beas.id;
    auto p = proposed(context, at(10, 12), at(10, 14));
    BOOST_TEST((p.by == ProposedBy::open_visit));
    BOOST_TEST(p.client_name.toStdString() == "Bea Olsson");
    // Ada has a photo of 10:11: what was taken a minute later is hers, whatever is open by now.
    required(work::import_photos(*book, {adas.id, View::nape, {write("one.jpg", picture(1))}, true, {}}));
    p = proposed(context, at(10, 12), at(10, 14));
    BOOST_TEST((p.by == ProposedBy::same_sitting));
    BOOST_TEST(p.client == client.id);
    BOOST_TEST((by_files().by == ProposedBy::open_visit));
    BOOST_TEST((proposed(context, at(10, 27), at(10, 40)).by == ProposedBy::open_visit));
    // A visit of another day that lies open says nothing of today's photos.
    context.visit = visit.id;
    context.client = client.id;
    BOOST_TEST((proposed(context, at(15, 0), at(15, 2)).by == ProposedBy::nothing));
    // Her page, and photos of today: hers. Of another day: not.
    context.visit = 0;
    BOOST_TEST((proposed(context, at(15, 0), at(15, 2)).by == ProposedBy::open_client));
    context.today = day.addDays(1);
    BOOST_TEST((proposed(context, at(15, 0), at(15, 2)).by == ProposedBy::nothing));
}

BOOST_AUTO_TEST_CASE(the_only_visit_is_no_guess_any_more_when_it_has_photos_of_another_time) {
    const Visit adas = visit_of(client);
    const work::SortContext context{0, 0, false, day};
    BOOST_TEST((proposed(context, at(16, 0), at(16, 2)).by == ProposedBy::only_visit));
    required(work::import_photos(*book, {adas.id, View::nape, {write("one.jpg", picture(1))}, true, {}}));
    BOOST_TEST((proposed(context, at(16, 0), at(16, 2)).by == ProposedBy::nothing));
    BOOST_TEST((proposed(context, at(10, 12), at(10, 14)).by == ProposedBy::same_sitting));
}

BOOST_AUTO_TEST_CASE(a_take_goes_back_with_the_visit_it_opened_unless_something_else_is_in_it) {
    const auto take_one = [&](const QString& name, unsigned seed) {
        const QString file_path = write(name, picture(seed));
        const QString sha = required(work::look_at_incoming(*book, file_path)).sha256;
        const auto report =
            required(work::take_sorted(*book, {client.id, 0, day, {{file_path, View::nape, sha, {}}}, {}}));
        return work::TakenBack{
            report.visit, report.visit_opened, {{report.import.files.front().photo, file_path, sha}}};
    };
    auto back = take_one("one.jpg", 1);
    BOOST_TEST(required(work::take_back(*book, back)));
    BOOST_TEST((work::visit_of(*book, back.visit).error().kind == ErrorKind::not_found));
    BOOST_TEST(QFile::exists(back.photos.first().path));
    // Something was written down in the visit since: it stays.
    back = take_one("one.jpg", 1);
    Visit noted = required(work::visit_of(*book, back.visit));
    noted.note = "came late";
    required(work::change_visit(*book, noted));
    BOOST_TEST(!required(work::take_back(*book, back)));
    BOOST_TEST(required(work::list_photos(*book, back.visit)).isEmpty());
}

BOOST_AUTO_TEST_CASE(a_take_does_not_go_back_when_a_photo_would_be_lost_or_was_worked_on) {
    const QString file_path = write("one.jpg", picture(1));
    const QString sha = required(work::look_at_incoming(*book, file_path)).sha256;
    const auto report = required(work::take_sorted(*book, {client.id, 0, day, {{file_path, View::nape, sha, {}}}, {}}));
    const work::TakenBack back{report.visit, true, {{report.import.files.front().photo, file_path, sha}}};
    write("one.jpg", picture(2));  // other bytes by now
    BOOST_TEST(work::take_back(*book, back).error().code == "only-copy");
    QFile::remove(file_path);
    BOOST_TEST(work::take_back(*book, back).error().code == "only-copy");
    write("one.jpg", picture(1));
    Marks marks;
    marks.view = View::nape;
    marks.edge_line = {{10, 10}, {50, 12}};
    marks.hair_side = QPointF(30, 60);
    required(work::set_marks(*book, back.photos.first().photo, marks));
    BOOST_TEST(work::take_back(*book, back).error().code == "worked-on");
    BOOST_TEST(required(work::list_photos(*book, report.visit)).size() == 1);
}

BOOST_AUTO_TEST_CASE(a_take_that_breaks_off_while_it_goes_back_stays_in_the_book_whole) {
    work::TakeOptions take;
    take.client = client.id;
    take.day = day;
    for (const unsigned seed : {1u, 2u}) {
        const QString file_path = write(QString("photo %1.jpg").arg(seed), picture(seed));
        take.photos.append({file_path, View::nape, required(work::look_at_incoming(*book, file_path)).sha256, {}});
    }
    const auto report = required(work::take_sorted(*book, take));
    BOOST_REQUIRE_EQUAL(report.import.imported, 2);
    work::TakenBack back{report.visit, true, {}};
    for (int i = 0; i < 2; ++i)
        back.photos.append(
            {report.import.files[static_cast<std::size_t>(i)].photo, take.photos[i].path, take.photos[i].sha256});
    required(sql::change(book->connection(),
                         QString("CREATE TRIGGER broken BEFORE DELETE ON photo WHEN OLD.id = %1 BEGIN SELECT "
                                 "RAISE(ABORT, 'the disk'); END")
                             .arg(back.photos.last().photo)));
    BOOST_TEST(!work::take_back(*book, back).ok());
    BOOST_TEST(required(work::list_photos(*book, report.visit)).size() == 2);
    required(sql::change(book->connection(), "DROP TRIGGER broken"));
    BOOST_TEST(required(work::take_back(*book, back)));
    BOOST_TEST((work::visit_of(*book, report.visit).error().kind == ErrorKind::not_found));
}

BOOST_AUTO_TEST_CASE(three_photos_open_a_visit_of_their_day_with_three_views_filled) {
    work::TakeOptions take;
    take.client = client.id;
    take.day = day;
    const QVector<View> views{View::left_temple, View::right_temple, View::nape};
    for (unsigned i = 0; i < 3; ++i) {
        const QString file_path = write(QString("p%1.jpg").arg(i), picture(i));
        take.photos.append({file_path, views[i], required(work::look_at_incoming(*book, file_path)).sha256, {}});
    }
    const auto report = required(work::take_sorted(*book, take));
    BOOST_TEST(report.visit_opened);
    BOOST_TEST(report.import.imported == 3);
    BOOST_TEST((required(work::visit_of(*book, report.visit)).date == day));
    const auto photos = required(work::list_photos(*book, report.visit));
    BOOST_TEST_REQUIRE(photos.size() == 3);
    for (int i = 0; i < 3; ++i) BOOST_TEST((photos[i].photo.view == views[i]));
    for (const work::SortedPhoto& photo : take.photos) BOOST_TEST(QFile::exists(photo.path));
    // Later ones of that day go into the same visit.
    take.photos = {{write("more.jpg", picture(7)), View::nape, {}, {}}};
    const auto more = required(work::take_sorted(*book, take));
    BOOST_TEST(!more.visit_opened);
    BOOST_TEST(more.visit == report.visit);
}

BOOST_AUTO_TEST_CASE(a_file_that_changed_since_it_was_shown_is_not_taken_and_leaves_no_bare_visit) {
    const QString file_path = write("one.jpg", picture(1));
    const QString seen = required(work::look_at_incoming(*book, file_path)).sha256;
    write("one.jpg", picture(2));
    const auto before = required(work::list_visits(*book, client.id)).size();
    const auto report =
        required(work::take_sorted(*book, {client.id, 0, day, {{file_path, View::nape, seen, {}}}, {}}));
    BOOST_TEST(report.import.failed == 1);
    BOOST_TEST(report.import.files.front().error.code == "photo-changed-since");
    BOOST_TEST(report.visit == 0);
    BOOST_TEST(required(work::list_visits(*book, client.id)).size() == before);
    const Visit beas = visit_of(bea);
    const auto wrong = work::take_sorted(*book, {client.id, beas.id, day, {{file_path, View::nape, {}, {}}}, {}});
    BOOST_TEST_REQUIRE(!wrong.ok());
    BOOST_TEST(wrong.error().code == "other-client");
}

BOOST_AUTO_TEST_CASE(a_capture_time_that_only_the_camera_page_knows_is_kept) {
    const QString file_path = write("take.jpg", tests::photo_bytes_of(tests::small_photo(10, 5)));
    const auto report =
        required(work::take_sorted(*book, {client.id, 0, day, {{file_path, View::crown, {}, at(9, 30)}}, {}}));
    const auto photos = required(work::list_photos(*book, report.visit));
    BOOST_TEST((photos.first().photo.taken == std::optional(at(9, 30))));
}

BOOST_AUTO_TEST_CASE(the_only_view_that_is_left_is_proposed_and_two_are_not) {
    using Views = QVector<std::optional<View>>;
    const QVector<View> missing{View::left_temple, View::nape};
    BOOST_TEST((work::fill_last_view({View::nape, std::nullopt}, missing) == Views{View::nape, View::left_temple}));
    BOOST_TEST((work::fill_last_view({std::nullopt, View::crown}, missing) == Views{std::nullopt, View::crown}));
    BOOST_TEST((work::fill_last_view({std::nullopt}, {}) == Views{std::nullopt}));
    // Three shots of it may be; four photos are of something else as well.
    BOOST_TEST((work::fill_last_view(Views(3), {View::nape}) == Views(3, View::nape)));
    BOOST_TEST((work::fill_last_view(Views(4), {View::nape}) == Views(4)));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_FIXTURE_TEST_SUITE(sort_views, Sorting)

BOOST_AUTO_TEST_CASE(the_skin_tells_which_view_a_new_photo_shows) {
    const QString samples = QStringLiteral(KEMPT_SAMPLES_FOLDER "/imani/");
    const QVector<QPair<QString, View>> views{
        {"left-temple", View::left_temple}, {"right-temple", View::right_temple}, {"nape", View::nape}};
    for (const auto& [name, view] : views) {
        const auto report =
            required(work::import_photos(*book, {visit.id, view, {samples + "01-" + name + "-1.jpg"}, true, {}}));
        QFile file(samples + "01-" + name + "-1.marks.json");
        BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
        required(work::set_marks(*book, report.files.front().photo, required(marks_from_json(file.readAll()))));
    }
    for (const auto& [name, view] : views) {
        const auto found =
            required(work::recognise_view(*book, {samples + "02-" + name + "-1.jpg", client.id, day, {}, {}}));
        BOOST_TEST_REQUIRE(found.view.has_value(), name.toStdString());
        BOOST_TEST((*found.view == view), name.toStdString());
        BOOST_TEST(*found.residual_mm < 1.0);
        BOOST_TEST((found.from_date == visit.date));
    }
    // Of somebody without marks, and before the first visit: nothing is claimed.
    BOOST_TEST(required(work::recognise_view(*book, {samples + "02-nape-1.jpg", bea.id, day, {}, {}})).tried == 0);
    const QDate before = visit.date.addDays(-1);
    BOOST_TEST(!required(work::recognise_view(*book, {samples + "02-nape-1.jpg", client.id, before, {}, {}})).view);
    // Another head.
    const QString stranger = QStringLiteral(KEMPT_SAMPLES_FOLDER "/freya/02-front-1.jpg");
    BOOST_TEST(!required(work::recognise_view(*book, {stranger, client.id, day, {}, {}})).view);
    BOOST_TEST(required(work::views_expected(*book, client.id, 0, day)).size() == 3);
    const Visit today = visit_of(client);
    required(work::import_photos(*book, {today.id, View::nape, {samples + "02-nape-1.jpg"}, true, {}}));
    BOOST_TEST((required(work::views_missing(*book, client.id, today.id, day)) ==
                QVector<View>{View::left_temple, View::right_temple}));
    BOOST_TEST(required(work::views_expected(*book, bea.id, 0, day)).size() == 4);
}

BOOST_AUTO_TEST_SUITE_END()
