// Up to the services of the first visit.
#include "whole_round.h"

#include <QCheckBox>
#include <QFile>
#include <QPlainTextEdit>

#include "desk/client/client_form.h"
#include "desk/client/client_page.h"
#include "desk/consultation/days_panel.h"
#include "desk/consultation/grades_page.h"
#include "desk/consultation/profile_page.h"
#include "desk/consultation/profile_panel.h"
#include "desk/consultation/service_page.h"
#include "desk/consultation/service_record.h"
#include "desk/inbox/inbox.h"
#include "desk/inbox/inbox_page.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/photo/readings_panel.h"
#include "desk/plan/entry_fields.h"
#include "desk/session/session.h"
#include "desk/start/start_page.h"
#include "desk/visit/visit_page.h"
#include "desk/window/book_view.h"
#include "domain/clock.h"
#include "domain/marks_json.h"
#include "work/set_marks.h"

namespace kempt::test {
namespace {

using namespace desk;

Marks marks_of_sample(int day, int shot) {
    QFile file(sample(day, shot, ".marks.json"));
    BOOST_REQUIRE_MESSAGE(file.open(QIODevice::ReadOnly), "no " << file.fileName().toStdString());
    const auto marks = marks_from_json(file.readAll());
    BOOST_REQUIRE(marks.ok());
    return *marks;
}

}  // namespace

QString sample(int day, int shot, const char* ending) {
    // Tests run in the root of the sources.
    return QString("sample-images/imani/0%1-left-temple-%2%3").arg(day).arg(shot).arg(ending);
}

WholeRound::WholeRound() : planned_day(Clock().today().addDays(16)) {
    book_path = folder.filePath("whole round.kempt");
    pdf = folder.filePath("report.pdf");
    table = folder.filePath("readings.csv");
    pictures = folder.filePath("pictures");
}

void WholeRound::start_book() {
    BOOST_TEST_REQUIRE(hands.window().book() == nullptr);
    hands.reach(hands.button("Start a new book…"));  // asks for a file; what it does with the answer is the next line
    hands.window().start()->create_book(book_path);
    hands.wait([this] { return hands.window().book() != nullptr; }, "the new book opens");
    hands.settle("the new book");
}

void WholeRound::add_client() {
    hands.press("New client");
    ClientForm* form = nullptr;
    hands.wait([&] { return (form = hands.window().findChild<ClientForm*>()) != nullptr && form->isVisible(); },
               "the form of a new client");
    hands.type(name);  // it has the keyboard
    hands.key(Qt::Key_Tab);
    hands.type(note);
    hands.key(Qt::Key_Tab);
    hands.key(Qt::Key_Space);
    BOOST_TEST(form->consent()->isChecked());
    hands.press("Add client");
    hands.arrive<ClientPage>("her page");
    BOOST_TEST(hands.seen().contains(name));
    BOOST_TEST(hands.seen().contains("photos may leave the book"));
}

void WholeRound::tell_hair_and_days() {
    hands.press("Hair and days");
    auto* page = hands.arrive<ProfilePage>("what she told");
    hands.press("How thick are single hairs?: coarse");
    hands.type_into(page->profile()->length(), "240");
    hands.type_into(page->days()->number("Washes"), "2");
    hands.press("Styles that pull?: unknown");
    hands.key(Qt::Key_Y);  // by the answer's letter
    hands.settle("what she told is kept");
    hands.key(Qt::Key_Left, Qt::AltModifier);
    hands.arrive<ClientPage>("back on her page");
}

void WholeRound::first_visit() {
    hands.press("New visit");
    auto* page = hands.arrive<VisitPage>("a new visit");
    hands.type_day(page->findChild<QDateEdit*>(), first_day);
    hands.settle("the visit's day is kept");
}

void WholeRound::first_photos(int shots) {
    QStringList photos;
    for (int shot = 1; shot <= shots; ++shot) photos.append(sample(1, shot, ".jpg"));
    first_files = from_phone(photos, folder.path());
    hands.drop(first_files);
    auto* page = hands.arrive<InboxPage>("the tray");
    Inbox& inbox = Inbox::of(*hands.window().session());
    hands.wait([&] { return inbox.settled() && inbox.waiting() == shots; }, "the photos are looked at");
    hands.settle("the tray");
    for (int i = 0; i < shots; ++i) {
        // The row that is open has the keyboard; taken, it passes it on to the next.
        const int left = inbox.waiting();
        hands.key(Qt::Key_2);  // left temple
        hands.settle("its view");
        BOOST_TEST(page->isVisible());
        hands.key(Qt::Key_T);
        hands.wait([&] { return inbox.waiting() < left; }, "a photo is taken");
        hands.settle("what is left in the tray");
    }
    hands.arrive<VisitPage>("the visit with its photos");
}

void WholeRound::draw_first() {
    hands.press("Readings: Draw");
    auto* page = hands.arrive<PhotoPage>("the first photo");
    PhotoCanvas* canvas = page->canvas();
    const Marks wanted = marks_of_sample(1, 1);
    pixel = 1 / canvas->map().zoom();
    const auto at = [&](QPointF p) { return canvas->map().window_from_photo(p).toPoint(); };
    for (const QPointF& p : wanted.edge_line) {
        hands.click(canvas, at(p));
        clicked_line.append(canvas->map().photo_from_window(at(p)));
    }
    BOOST_TEST_REQUIRE(canvas->marks().edge_line.size() == wanted.edge_line.size());
    BOOST_TEST_REQUIRE(canvas->marks().hair_side.has_value());
    const QPoint ring = at(*canvas->marks().hair_side);
    hands.drag(canvas, ring, at(*wanted.hair_side));
    dragged_side = *canvas->marks().hair_side;
    hands.settle("readings of the first photo");
    BOOST_TEST(!page->readings()->shown("edge_coverage").isEmpty());
}

void WholeRound::nudge_and_undo() {
    auto* page = hands.arrive<PhotoPage>("the first photo");
    const QVector<QPointF> before = page->canvas()->marks().edge_line;
    hands.key(Qt::Key_Escape);
    hands.key(Qt::Key_N);
    for (int i = 0; i < 3; ++i) hands.key(Qt::Key_Right);
    hands.key(Qt::Key_Down);
    BOOST_TEST((page->canvas()->marks().edge_line != before));
    hands.settle("the nudged point is kept");
    const Id photo = hands.window().book()->place().photo;
    const auto kept = read<std::optional<Marks>>(book_path, [&](Book& b) { return work::marks_of(b, photo); });
    BOOST_TEST_REQUIRE(kept.has_value());
    nudged_by = kept->edge_line.first() - before.first();
    hands.key(Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST((page->canvas()->marks().edge_line == before));
    hands.settle("the point as it was before is kept");
}

void WholeRound::carry_to_second() {
    const Id first = hands.window().book()->place().photo;
    hands.key(Qt::Key_PageDown, Qt::ControlModifier);
    hands.wait([&] { return hands.window().book()->place().photo != first; }, "the second shot");
    auto* page = hands.arrive<PhotoPage>("the second shot");
    hands.press("Take over the marks from shot 1");
    hands.wait([&] { return !page->canvas()->marks().edge_line.isEmpty(); }, "the marks are carried over");
    hands.settle("readings of the second photo");
    BOOST_TEST(!page->readings()->shown("edge_coverage").isEmpty());
    hands.key(Qt::Key_Left, Qt::AltModifier);
    hands.key(Qt::Key_Left, Qt::AltModifier);
    hands.arrive<VisitPage>("back on the visit");
}

void WholeRound::grade() {
    hands.press("Scalp check: Grade");
    hands.arrive<GradesPage>("the grades");
    hands.key(Qt::Key_4);  // scalp, front hairline
    hands.settle("the scalp's grade");
    hands.press("Edges, left temple: open");
    hands.key(Qt::Key_1);
    hands.settle("a grade");
    hands.press("Edges, right temple: open");
    hands.key(Qt::Key_2);
    hands.settle("a grade");
    hands.key(Qt::Key_Left, Qt::AltModifier);
    hands.arrive<VisitPage>("back on the visit");
}

void WholeRound::services() {
    hands.choose("Add a service", {"Treat", "Protein treatment"});
    auto* page = hands.arrive<ServicePage>("a service");
    hands.type_into(page->record()->number(RecordField::minutes), "15");
    hands.type_into(page->record()->result(), "stronger, not stiff");
    hands.settle("the done service is kept");
    hands.key(Qt::Key_Left, Qt::AltModifier);
    hands.arrive<VisitPage>("back on the visit");
    hands.choose("Add a service", {"Colour, lighten", "Permanent colour"});
    page = hands.arrive<ServicePage>("another service");
    hands.type_day(page->day(), planned_day);
    BOOST_TEST(page->record()->state()->chosen() == 1);  // planned, by its day
    hands.settle("the planned service is kept");
    hands.key(Qt::Key_Left, Qt::AltModifier);
    hands.arrive<VisitPage>("back on the visit");
}

}  // namespace kempt::test
