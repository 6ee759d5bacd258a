#include "room.h"

#include <QApplication>
#include <QBuffer>
#include <QElapsedTimer>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QStandardPaths>
#include <QThread>
#include <boost/test/unit_test.hpp>

#include "desk/client/client_list.h"
#include "desk/look/look.h"
#include "desk/session/session.h"
#include "desk/window/book_view.h"
#include "desk/window/page.h"
#include "domain/clock.h"
#include "work/import_photos.h"
#include "work/keep_records.h"
#include "work/open_book.h"
#include "work/set_marks.h"

namespace kempt::test {
namespace {

// Made before the first test, gone after the last one.
struct Application {
    Application() {
        static int argc = 1;
        static char name[] = "test_desk";
        static char* argv[] = {name, nullptr};
        if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
        qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
        qputenv("XDG_DATA_HOME", settings.path().toUtf8());
        app = std::make_unique<QApplication>(argc, argv);
        QApplication::setOrganizationName(QStringLiteral("KemptTest"));
        QApplication::setApplicationName(QStringLiteral("desk"));
        desk::look().apply({});
        // It was noon when the tests began: no day ends while they run.
        const QDateTime began = QDateTime::currentDateTime(), noon(began.date(), QTime(12, 0));
        Clock::set_usual([ahead = began.msecsTo(noon)] { return QDateTime::currentDateTimeUtc().addMSecs(ahead); });
    }
    ~Application() { app.reset(); }
    QTemporaryDir settings;
    std::unique_ptr<QApplication> app;
};

template <class T>
T must(Result<T> result) {
    const std::string trouble = result.ok() ? std::string() : result.error().sentence();
    BOOST_REQUIRE_MESSAGE(result.ok(), trouble);
    return std::move(result.value());
}

}  // namespace

BOOST_TEST_GLOBAL_FIXTURE(Application);

bool wait_until(const std::function<bool()>& so, int limit_ms) {
    return QTest::qWaitFor(so, limit_ms);
}

namespace {

// Something of everything that a group shows beside its readings.
void add_details(ReadingGroup group, desk::Measured& out) {
    if (group == ReadingGroup::edges) return;
    for (const QString& name : reading_names_of(group)) out.readings.append({name, "mm", 12, 11, 13, false, {}});
    const QPolygonF box{{80, 60}, {300, 60}, {300, 240}, {80, 240}};
    if (group == ReadingGroup::shine)
        out.overlay.shine = desk::ShineOverlay{box, {}, {}, {}, {0.1, 0.4, 0.1}, {0, 0.3, 0}, 10, 0.1, 0.1, 5, 15};
    if (group == ReadingGroup::tone) {
        out.overlay.tone.emplace();
        out.overlay.tone->root = desk::ToneSwatch{QColor(60, 45, 38), 22, 7, 10};
        out.overlay.tone->profile = {QColor(60, 45, 38), QColor(110, 80, 60)};
        out.overlay.tone->length_mm = 100;
        out.overlay.tone->lines = {{9, 8, 10, 38, 36, 40, 5, {{100, 100}, {140, 100}}, 11, 19}};
    }
    if (group == ReadingGroup::ends) out.overlay.ends = desk::EndsOverlay{{}, {}, box, {}};
    if (group == ReadingGroup::combings || group == ReadingGroup::pattern) {
        desk::StrandsOverlay strands;
        for (int i = 0; i < 12; ++i) {
            desk::ShownStrand strand;
            strand.path = {{60, 20.0 + 20 * i}, {340, 30.0 + 20 * i}};
            strand.length_mm = 150 - 10 * i;
            strand.low = strand.length_mm - 2;
            strand.high = strand.length_mm + 2;
            strand.colour = i;
            strand.doubtful = i % 5 == 1;
            strand.cut_off = i % 5 == 2;
            strand.perhaps_longer = strand.looks_torn = i % 5 == 3;
            strands.strands.append(strand);
        }
        (group == ReadingGroup::combings ? out.overlay.combings : out.overlay.pattern) = strands;
        if (group == ReadingGroup::pattern) out.curl = "loose curl";
    }
}

}  // namespace

Result<desk::Measured> FakeAnalysis::measure(const Marks& marks, const Progress& progress) {
    QElapsedTimer clock;
    clock.start();
    do {
        if (tell(progress, 0.5, "measuring") == Go::stop) {
            ++stopped;
            return Error{ErrorKind::cancelled, "cancelled", "Measuring was stopped.", "", ""};
        }
        if (slow_ms > 0) QThread::msleep(5);
    } while (clock.elapsed() < slow_ms);
    ++measured;
    desk::Measured out;
    out.asked = groups_asked_by(marks);
    const double value = 10.0 * static_cast<double>(marks.edge_line.size());
    if (out.asked.contains(ReadingGroup::edges)) {
        out.readings.append({"edge_coverage", "%", value, value - 2, value + 2, false, {}});
        out.readings.append({"edge_strands", "1/cm", 0, 0, 0, true, "Single strands need a closer photo."});
    }
    for (const ReadingGroup group : out.asked) add_details(group, out);
    out.quality = "usable";
    out.findings.append(
        {"tilted", desk::ShownFinding::Level::warning, "The card is tilted.", "Hold the camera straight above it."});
    out.px_per_mm = 20;
    out.scale_from = "card";
    return out;
}

desk::OpenFunction fake_open(const std::shared_ptr<FakeAnalysis>& analysis) {
    return [analysis](const QByteArray& bytes, double, const Progress&) -> Result<desk::OpenedPhoto> {
        desk::OpenedPhoto photo;
        photo.picture = desk::picture_from(QImage::fromData(bytes));
        photo.measure = [analysis](const Marks& marks, bool, const Progress& progress) {
            return analysis->measure(marks, progress);
        };
        return photo;
    };
}

Marks some_marks(int points) {
    Marks marks;
    marks.view = View::left_temple;
    for (int i = 0; i < points; ++i) marks.edge_line.append({60.0 + 60 * i, 100.0});
    marks.hair_side = QPointF(150, 180);
    return marks;
}

SeededBook::SeededBook() {
    path = folder.filePath(QStringLiteral("book.kempt"));
    const auto book = must(work::create_book(path));
    Client one;
    one.name = QStringLiteral("Ada Holloway");
    one.since = QDate(2026, 3, 2);
    client = must(work::add_client(*book, one)).id;
    Client two;
    two.name = QStringLiteral("Élodie Marsh");
    two.since = QDate(2026, 4, 2);
    other = must(work::add_client(*book, two)).id;
    Visit visit;
    visit.client = client;
    visit.date = QDate(2026, 3, 2);
    first_visit = must(work::add_visit(*book, visit)).id;
    visit.date = QDate(2026, 5, 4);
    second_visit = must(work::add_visit(*book, visit)).id;
    work::ImportOptions options;
    options.visit = first_visit;
    options.view = View::left_temple;
    options.paths = {picture_file(0)};
    const work::ImportReport report = must(work::import_photos(*book, options));
    BOOST_REQUIRE_EQUAL(report.imported, 1);
    photo = report.files.front().photo;
}

Id SeededBook::add_photo(View view, const Marks& marks) const {
    const auto book = must(work::open_book(path));
    work::ImportOptions options;
    options.visit = second_visit;
    options.view = view;
    options.paths = {picture_file(next_picture_++)};
    const Id id = must(work::import_photos(*book, options)).files.front().photo;
    BOOST_REQUIRE(id > 0);
    Marks drawn = marks;
    drawn.view = view;
    if (!groups_asked_by(marks).isEmpty()) must(work::set_marks(*book, id, drawn));
    return id;
}

QString SeededBook::picture_file(int number) const {
    const QString file = folder.filePath(QStringLiteral("picture-%1.png").arg(number));
    if (QFile::exists(file)) return file;
    QImage image(400, 300, QImage::Format_RGB32);
    image.fill(QColor(178, 132, 108));
    QPainter painter(&image);
    painter.fillRect(0, 110, 400, 190, QColor(30 + number, 24, 22));
    painter.end();
    BOOST_REQUIRE(image.save(file));
    return file;
}

std::optional<Marks> SeededBook::marks_in_book(Id of) const {
    const auto book = must(work::open_book(path));
    return must(work::marks_of(*book, of));
}

Desk::Desk() {
    window = std::make_unique<desk::MainWindow>(fake_open(analysis));
    window->resize(1280, 800);
    window->show();
    window->activateWindow();
    window->open_book(book.path);
    BOOST_REQUIRE(wait_until([this] { return window->book() != nullptr && settled(); }));
}

bool Desk::settled() const {
    desk::Session& s = *window->session();
    const desk::Page* page = window->book()->page();
    return window->book()->clients()->settled() && (page == nullptr || page->settled()) &&
           s.records().unfinished() == 0 && s.bench().unfinished() == 0 && s.live().unfinished() == 0;
}

void Desk::go(const desk::Place& place) {
    window->book()->go(place);
    BOOST_REQUIRE(wait_until([&] { return window->book()->place() == place && settled(); }));
    QTest::qWait(20);
}

QWidget* Desk::current() const {
    return window->book()->page();
}

}  // namespace kempt::test
