#include "whole_round.h"

#include <QCheckBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>

#include "desk/client/client_form.h"
#include "desk/client/client_list.h"
#include "desk/client/client_page.h"
#include "desk/compare/compare_page.h"
#include "desk/consultation/days_panel.h"
#include "desk/consultation/grades_page.h"
#include "desk/consultation/profile_page.h"
#include "desk/consultation/profile_panel.h"
#include "desk/consultation/service_page.h"
#include "desk/consultation/service_record.h"
#include "desk/inbox/inbox.h"
#include "desk/inbox/inbox_page.h"
#include "desk/inbox/inbox_row.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/photo/readings_panel.h"
#include "desk/plan/dates_panel.h"
#include "desk/plan/entry_fields.h"
#include "desk/plan/findings_panel.h"
#include "desk/plan/plan_page.h"
#include "desk/plan/questions_panel.h"
#include "desk/report/page_view.h"
#include "desk/report/report_page.h"
#include "desk/session/session.h"
#include "desk/start/start_page.h"
#include "desk/visit/view_tray.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/notice.h"
#include "desk/widgets/parts.h"
#include "desk/window/book_view.h"
#include "domain/clock.h"
#include "domain/marks_json.h"
#include "domain/questions.h"
#include "work/keep_records.h"
#include "work/plan_care.h"
#include "work/plan_draft.h"
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

QString words_in(const QWidget* widget) {
    QStringList words;
    for (const QLabel* label : widget->findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    return words.join(QLatin1Char(' ')).simplified();
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

void WholeRound::plan() {
    hands.press("Next dates: See");
    auto* page = hands.arrive<PlanPage>("the plan");
    hands.choose("Add a service", {"Colour, lighten", "Permanent colour"});
    hands.wait([&] { return page->planned() == 1; }, "it is on the plan");
    hands.settle("what speaks against it");
    const QStringList before = page->findings()->rules();
    // The first question that is answered by a press.
    ChoiceRow* row = nullptr;
    for (const Question& one : questions()) {
        row = page->questions()->choice(one.name);
        if (row == nullptr || !row->isVisible()) continue;
        answered = one.name;
        break;
    }
    BOOST_TEST_REQUIRE(!answered.isEmpty());
    const int open = page->questions()->open_questions();
    QRadioButton* yes = nullptr;
    for (QRadioButton* one : row->findChildren<QRadioButton*>())
        if (one->text() == "yes") yes = one;
    hands.click(yes);
    answer = 1;
    hands.settle("the answer is kept");
    BOOST_TEST(page->findings()->rules().size() > before.size());  // what she told speaks against it
    BOOST_TEST(page->questions()->open_questions() < open);
    const QString dates = words_in(page->dates());
    const auto planned = read<work::CarePlan>(book_path, [&](Book& b) -> Result<work::CarePlan> {
        const auto clients = work::list_clients(b);
        if (!clients.ok()) return clients.error();
        work::PlanOptions options{clients->first().client.id, Clock().today(), {}};
        const auto draft = work::plan_draft_of(b, options.client);
        if (!draft.ok()) return draft.error();
        if (*draft)
            for (const work::DraftItem& one : (*draft)->items) options.request.services.push_back(one.item);
        return work::plan_care(b, options);
    });
    BOOST_TEST_REQUIRE(planned.dates.size() >= 2);  // a patch test before the colour, the next photographs
    for (const care::DateRange& one : planned.dates)
        for (const care::Day day : {one.from, one.to}) {
            const QString words = date_words(work::date_of(day));
            BOOST_TEST(dates.contains(words), "the dates lack " << words.toStdString());
        }
    hands.key(Qt::Key_Left, Qt::AltModifier);
    hands.arrive<VisitPage>("back on the visit");
    hands.press("Go to " + name);
    hands.arrive<ClientPage>("her page");
}

void WholeRound::second_visit() {
    second_files = from_phone({sample(2, 1, ".jpg"), sample(2, 2, ".jpg")}, folder.path());
    hands.drop(second_files);
    hands.arrive<InboxPage>("the tray");
    Inbox* inbox = &Inbox::of(*hands.window().session());
    hands.wait([&] { return inbox->settled() && inbox->waiting() == 2; }, "the photos are looked at");
    for (const InboxSitting& sitting : inbox->sittings())
        for (const int one : sitting.keys)
            BOOST_TEST((inbox->photo(one)->view == std::optional(View::left_temple)));  // told by laying skin on skin
    hands.settle("the tray");
    hands.key(Qt::Key_A);
    auto* visit = hands.arrive<VisitPage>("the second visit");
    hands.type_into(visit->findChild<QPlainTextEdit*>(), second_note);
    hands.press("Readings: Draw");
    auto* photo = hands.arrive<PhotoPage>("the first photo of the second visit");
    hands.press("Bring the marks from the last visit");
    hands.wait([&] { return !photo->canvas()->marks().edge_line.isEmpty(); }, "the last visit's marks are brought");
    left_line = photo->canvas()->marks().edge_line;
    const Place left = hands.window().book()->place();
    hands.close();  // at once: neither the pause before keeping nor the readings are waited for

    hands.open_anew();
    hands.press("Open the book " + book_path);
    hands.wait([this] { return hands.window().book() != nullptr; }, "the book opens again");
    hands.settle("the book");
    hands.key(Qt::Key_F, Qt::ControlModifier);
    hands.type("cast");
    hands.settle("the search");
    QListView* list = hands.window().book()->clients()->view();
    BOOST_TEST_REQUIRE(list->model()->rowCount() == 1);
    hands.click(list->viewport(), list->visualRect(list->model()->index(0, 0)).center());
    hands.arrive<ClientPage>("her page");
    hands.press("Open the visit of " + date_words(second_day));
    visit = hands.arrive<VisitPage>("the second visit, resumed");
    BOOST_TEST(visit->findChild<QPlainTextEdit*>()->toPlainText() == second_note);
    BOOST_TEST(visit->tray(View::left_temple)->shots() == 2);
    BOOST_TEST((hands.window().book()->place().visit == left.visit));
    hands.press("Readings: Draw");  // the next that has no marks
    photo = hands.arrive<PhotoPage>("the second photo of the second visit");
    BOOST_TEST((hands.window().book()->place().photo != left.photo));
    hands.press("Take over the marks from shot 1");
    hands.wait([&] { return !photo->canvas()->marks().edge_line.isEmpty(); }, "the marks are carried over");
    hands.settle("readings of the last photo");
    hands.key(Qt::Key_PageUp, Qt::ControlModifier);
    hands.wait([&] { return hands.window().book()->place().photo == left.photo; }, "the photo that was left");
    photo = hands.arrive<PhotoPage>("the photo that was left");
    BOOST_TEST((photo->canvas()->marks().edge_line == left_line));
    BOOST_TEST(!photo->readings()->shown("edge_coverage").isEmpty());
    hands.press("Go to " + name);
    hands.arrive<ClientPage>("her page");
}

void WholeRound::compare() {
    hands.press("Before and after");
    auto* page = hands.arrive<ComparePage>("before and after");
    BOOST_TEST((page->mode() == ComparePage::Mode::parting));  // laid over each other, not side by side
    verdict_shown = hands.seen().simplified();
    hands.press("Go to " + name);
    hands.arrive<ClientPage>("her page");
}

void WholeRound::report() {
    hands.press("Report");
    auto* page = hands.arrive<ReportPage>("the report");
    BOOST_TEST(page->pages()->count() > 0);
    const auto saved = [&](const char* words, const std::function<void()>& as_the_dialog_does) {
        hands.reach(hands.button(words));
        hands.window().book()->notice()->hide();
        as_the_dialog_does();
        hands.settle(words);
        hands.wait([&] { return hands.window().book()->notice()->isVisible(); }, words);
        BOOST_TEST(hands.window().book()->notice()->sentence().contains("saved"));
    };
    saved("Save the report…", [&] { page->write_to(pdf); });
    saved("Save its pictures…", [&] { page->write_pictures_to(pictures); });
    saved("Save the readings…", [&] { page->write_readings_to(table); });
}

}  // namespace kempt::test
