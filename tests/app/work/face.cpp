#include <QDir>
#include <QImage>
#include <QPainter>
#include <cmath>

#include "app/work/book_photos.h"
#include "book/sql.h"
#include "work/compare_pictures.h"
#include "work/face_find.h"
#include "work/face_keep.h"
#include "work/make_report.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

// Debian's python3-skimage carries it (public domain); tests/support/fetch_fixtures.sh fetches it.
QString portrait() {
    const QDir cache(qEnvironmentVariable("KEMPT_FIXTURES", QStringLiteral("build/release/fixtures")));
    for (const QString& path : {cache.filePath(QStringLiteral("portrait/astronaut.png")),
                                QStringLiteral("/usr/lib/python3/dist-packages/skimage/data/astronaut.png")})
        if (QFile::exists(path)) return path;
    return {};
}

cv::Mat pixels_of(const QImage& image) {
    const QImage rgb = image.convertToFormat(QImage::Format_RGB888);
    return cv::Mat(rgb.height(), rgb.width(), CV_8UC3, const_cast<uchar*>(rgb.constBits()),
                   static_cast<std::size_t>(rgb.bytesPerLine()))
        .clone();
}

bool inside(const work::EyeBand& band, QPointF p) {
    const double angle = band.turn_deg * M_PI / 180;
    const QPointF off = p - band.middle;
    const double along = off.x() * std::cos(angle) + off.y() * std::sin(angle);
    const double across = -off.x() * std::sin(angle) + off.y() * std::cos(angle);
    return std::abs(along) <= band.length / 2 && std::abs(across) <= band.height / 2;
}

// Pupils, set by hand on the picture of 512 px.
constexpr QPointF left_eye(202, 101), right_eye(246, 102);

}  // namespace

BOOST_AUTO_TEST_SUITE(face)

BOOST_AUTO_TEST_CASE(the_band_covers_both_eyes_of_a_real_face_at_every_size_and_turn) {
    if (portrait().isEmpty()) {
        BOOST_TEST_MESSAGE("skipped: the portrait could not be fetched");
        return;
    }
    const QImage whole(portrait());
    // The head alone, larger, mirrored, and a head laid on its side by 25 degrees.
    for (const double turn : {0.0, 25.0, -25.0})
        for (const bool mirrored : {false, true}) {
            const QRectF head(110, 20, 240, 240);
            QImage image(720, 720, QImage::Format_RGB888);
            image.fill(Qt::gray);
            QTransform to;
            to.translate(360, 360);
            to.rotate(turn);
            to.scale(mirrored ? -3 : 3, 3);
            to.translate(-head.center().x(), -head.center().y());
            QPainter painter(&image);
            painter.setRenderHint(QPainter::SmoothPixmapTransform);
            painter.setTransform(to);
            painter.drawImage(0, 0, whole);
            painter.end();
            const auto bands = TemporaryBook::required(work::find_eyes(pixels_of(image)));
            BOOST_TEST_CONTEXT("turned by " << turn << (mirrored ? ", mirrored" : "")) {
                BOOST_REQUIRE_EQUAL(bands.size(), 1);
                BOOST_TEST(inside(bands.front(), to.map(left_eye)));
                BOOST_TEST(inside(bands.front(), to.map(right_eye)));
                BOOST_TEST(bands.front().height < 720 / 4);  // a band, not the face
            }
        }
}

BOOST_AUTO_TEST_CASE(a_photo_of_an_edge_has_no_face) {
    tests::application();
    const auto bands = work::find_eyes(pixels_of(tests::draw(tests::small_photo(12, 3))));
    BOOST_REQUIRE(bands.ok() || bands.error().code == "no-cascades");
    if (bands.ok()) BOOST_TEST(bands->isEmpty());
    BOOST_TEST(TemporaryBook::required(work::find_eyes(cv::Mat())).isEmpty());
}

BOOST_AUTO_TEST_CASE(corners_of_a_turned_band_lie_where_they_should) {
    const work::EyeBand band{QPointF(100, 50), 40, 10, 90};
    const auto corners = band.corners();
    BOOST_TEST(std::hypot(corners[0].x() - 105, corners[0].y() - 30) < 1e-9);
    BOOST_TEST(std::hypot(corners[2].x() - 95, corners[2].y() - 70) < 1e-9);
}

BOOST_AUTO_TEST_CASE(what_was_set_for_a_photo_is_remembered_and_goes_with_it) {
    TemporaryBook in;
    const Id photo = tests::add_photo(in, in.visit, tests::small_photo(8, 1));
    BOOST_TEST(!TemporaryBook::required(work::kept_bands(*in.book, photo)).has_value());
    const QVector<work::EyeBand> bands = {{QPointF(300, 200), 180, 60, -12.5}};
    TemporaryBook::required(work::keep_bands(*in.book, photo, bands));
    const auto kept = TemporaryBook::required(work::kept_bands(*in.book, photo));
    BOOST_REQUIRE(kept.has_value());
    BOOST_TEST((*kept == bands));
    BOOST_TEST(!work::keep_bands(*in.book, photo, {{QPointF(0, 0), 0, 10, 0}}).ok());
    BOOST_TEST(!work::keep_bands(*in.book, photo + 1, bands).ok());
    TemporaryBook::required(work::erase_photo(*in.book, photo));
    BOOST_TEST(!TemporaryBook::required(work::kept_bands(*in.book, photo)).has_value());
}

BOOST_AUTO_TEST_CASE(the_wish_goes_with_the_client) {
    TemporaryBook in;
    TemporaryBook::required(work::keep_face_wish(*in.book, in.client.id, work::FaceWish::hidden));
    BOOST_TEST((TemporaryBook::required(work::face_wish_of(*in.book, in.client.id)) == work::FaceWish::hidden));
    TemporaryBook::required(work::erase_client(*in.book, in.client.id));
    BOOST_TEST((TemporaryBook::required(work::face_wish_of(*in.book, in.client.id)) == work::FaceWish::not_asked));
}

BOOST_AUTO_TEST_CASE(a_wish_outlives_a_book_that_cannot_be_read_for_a_moment) {
    TemporaryBook in;
    const Id photo = tests::add_photo(in, in.visit, tests::small_photo(8, 1));
    TemporaryBook::required(work::keep_face_wish(*in.book, in.client.id, work::FaceWish::hidden));
    TemporaryBook::required(work::keep_bands(*in.book, photo, {{QPointF(300, 200), 180, 60, 0}}));
    const auto rename = [&](const QString& from, const QString& to) {
        TemporaryBook::required(
            sql::change(in.book->connection(), QStringLiteral("ALTER TABLE %1 RENAME TO %2").arg(from, to)));
    };
    for (const QString& table : {QStringLiteral("client"), QStringLiteral("photo")}) {
        rename(table, QStringLiteral("away"));  // reading fails as from a bad disk
        const Status failed = work::forget_lost_faces(*in.book);
        rename(QStringLiteral("away"), table);
        BOOST_REQUIRE(!failed.ok());
        BOOST_TEST((failed.error().kind != ErrorKind::not_found));
        BOOST_TEST((TemporaryBook::required(work::face_wish_of(*in.book, in.client.id)) == work::FaceWish::hidden));
        BOOST_TEST(TemporaryBook::required(work::kept_bands(*in.book, photo)).has_value());
    }
}

BOOST_AUTO_TEST_CASE(no_picture_leaves_unlooked_at_when_she_wants_her_face_hidden) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    const Id one = tests::add_measured(in, in.visit, tests::small_photo(8, 1));
    const Id other = tests::add_measured(in, later, tests::small_photo(14, 2));
    work::CompareOptions options;
    options.client = in.client.id;
    options.from_visit = in.visit.id;
    options.to_visit = later.id;
    const QString path = in.folder.filePath(QStringLiteral("pair.png"));
    const auto write = [&] { return work::write_pair(*in.book, options, path); };
    TemporaryBook::required(work::keep_face_wish(*in.book, in.client.id, work::FaceWish::hidden));
    const auto unlooked = write();
    BOOST_REQUIRE(!unlooked.ok());
    BOOST_TEST(unlooked.error().code == "look-at-face");
    BOOST_TEST(!QFile::exists(path));
    TemporaryBook::required(work::keep_bands(*in.book, one, {}));
    BOOST_TEST(!write().ok());  // the other one was not looked at
    TemporaryBook::required(work::keep_bands(*in.book, other, {}));
    const auto compared = work::compare_pictures(*in.book, options);
    BOOST_REQUIRE(compared.ok());
    BOOST_TEST(!compared->must_look());
}

BOOST_AUTO_TEST_CASE(no_picture_leaves_without_her_consent) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    tests::add_measured(in, in.visit, tests::small_photo(8, 1));
    tests::add_measured(in, later, tests::small_photo(14, 2));
    work::CompareOptions options;
    options.client = in.client.id;
    options.from_visit = in.visit.id;
    options.to_visit = later.id;
    const QString path = in.folder.filePath(QStringLiteral("pair.png"));
    in.client.photo_consent = false;
    in.client.consent_on.reset();
    TemporaryBook::required(work::change_client(*in.book, in.client));
    const auto refused = work::write_pair(*in.book, options, path);
    BOOST_REQUIRE(!refused.ok());
    BOOST_TEST(refused.error().code == "no-photo-consent");
    BOOST_TEST(!QFile::exists(path));
    // The report goes by the same word.
    work::ReportOptions report;
    report.client = in.client.id;
    const auto model = TemporaryBook::required(work::report_model_of(*in.book, report, QDate(2026, 3, 12)));
    BOOST_TEST(model.pairs.isEmpty());
    BOOST_TEST(model.pictures_withheld.toStdString() == refused.error().what);
}

BOOST_AUTO_TEST_CASE(where_faces_cannot_be_searched_for_the_picture_says_so) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    tests::add_measured(in, in.visit, tests::small_photo(8, 1));
    const Id other = tests::add_measured(in, later, tests::small_photo(14, 2));
    work::CompareOptions options;
    options.client = in.client.id;
    options.from_visit = in.visit.id;
    options.to_visit = later.id;
    options.find_eyes = [](const cv::Mat&, double, const Progress&) -> Result<QVector<work::EyeBand>> {
        return Error{ErrorKind::unsupported, "no-cascades", "The files are not installed.", "", "Install them."};
    };
    const auto notes_of = [&] {
        const auto pictures = TemporaryBook::required(work::compare_pictures(*in.book, options));
        return pictures.pair.notes.join(u' ');
    };
    const QString words = notes_of();
    BOOST_TEST(words.contains(QStringLiteral("not searched for faces")));
    BOOST_TEST(words.contains(QStringLiteral("Install them.")));
    BOOST_TEST(words.count(QStringLiteral("not searched")) == 1);  // of both photos once
    // Somebody looked, or she agrees to be seen: there was nothing to search for.
    TemporaryBook::required(work::keep_bands(*in.book, other, {}));
    BOOST_TEST(notes_of().contains(QStringLiteral("not searched")));
    TemporaryBook::required(work::keep_face_wish(*in.book, in.client.id, work::FaceWish::shown));
    BOOST_TEST(!notes_of().contains(QStringLiteral("not searched")));
}

BOOST_AUTO_TEST_CASE(a_band_is_filled_in_both_pictures_of_the_pair) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    const tests::CardPhoto what = tests::small_photo(8, 1);
    const Id one = tests::add_measured(in, in.visit, what);
    const Id other = tests::add_measured(in, later, tests::small_photo(14, 2));
    const Marks marks = tests::marks_for(what);
    const QPointF middle = marks.edge_line.at(marks.edge_line.size() / 2);
    for (const Id photo : {one, other})
        TemporaryBook::required(work::keep_bands(*in.book, photo, {{middle, 200, 80, 10}}));
    work::CompareOptions options;
    options.client = in.client.id;
    options.from_visit = in.visit.id;
    options.to_visit = later.id;
    const auto hidden = TemporaryBook::required(work::compare_pictures(*in.book, options));
    options.hide_eyes = false;
    const auto open = TemporaryBook::required(work::compare_pictures(*in.book, options));
    for (const auto& [with, without, line] : {std::tuple(hidden.pair.before, open.pair.before, hidden.pair.before_line),
                                              {hidden.pair.after, open.pair.after, hidden.pair.after_line}}) {
        const QPoint at = line.at(line.size() / 2).toPoint();
        const QRgb first = with.pixel(at);
        int same = 0, differs = 0;
        for (int dy = -15; dy <= 15; ++dy)
            for (int dx = -15; dx <= 15; ++dx) {
                same += with.pixel(at + QPoint(dx, dy)) == first;
                differs += without.pixel(at + QPoint(dx, dy)) != first;
            }
        BOOST_TEST(same == 31 * 31);  // filled, nothing shows through
        BOOST_TEST(differs > 31 * 25);
    }
}

BOOST_AUTO_TEST_SUITE_END()
