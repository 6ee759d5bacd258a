// From the plan to the report, with the second visit between.
#include "whole_round.h"

#include <QLabel>
#include <QListView>
#include <QPlainTextEdit>
#include <QRadioButton>

#include "desk/client/client_list.h"
#include "desk/client/client_page.h"
#include "desk/compare/compare_page.h"
#include "desk/inbox/inbox.h"
#include "desk/inbox/inbox_page.h"
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
#include "desk/visit/view_tray.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/notice.h"
#include "desk/widgets/parts.h"
#include "desk/window/book_view.h"
#include "domain/clock.h"
#include "domain/questions.h"
#include "work/keep_records.h"
#include "work/plan_care.h"
#include "work/plan_draft.h"

namespace kempt::test {
namespace {

using namespace desk;

QString words_in(const QWidget* widget) {
    QStringList words;
    for (const QLabel* label : widget->findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    return words.join(QLatin1Char(' ')).simplified();
}

}  // namespace

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
