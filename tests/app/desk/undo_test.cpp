// Ctrl+Z on the pages of a client: entry by entry, whatever it was, each out of the book; Ctrl+Shift+Z puts it in
// again.
#include "desk/session/undo.h"

#include <QAction>
#include <QCheckBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QToolButton>

#include "desk/client/client_form.h"
#include "desk/client/client_page.h"
#include "desk/client/progress_panel.h"
#include "desk/client/services_panel.h"
#include "desk/consultation/grades_page.h"
#include "desk/plan/plan_page.h"
#include "desk/plan/questions_panel.h"
#include "desk/session/session.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "desk/window/trail_bar.h"
#include "domain/clock.h"
#include "domain/questions.h"
#include "hands.h"
#include "work/keep_care.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

struct Regrets : test::Hands {
    void undo() {
        BOOST_REQUIRE(window->book()->page() != nullptr);
        window->activateWindow();
        BOOST_REQUIRE(wait_until([this] { return window->isActiveWindow(); }));
        window->book()->page()->setFocus();
        QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
        settle();
    }
    void redo() {
        QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        settle();
    }
    [[nodiscard]] Visit visit() const {
        return read<Visit>(book.path, [this](Book& b) { return work::visit_of(b, book.second_visit); });
    }
    [[nodiscard]] QVector<Service> services() const {
        return read<QVector<Service>>(book.path, [this](Book& b) { return work::list_services(b, book.client); });
    }
    [[nodiscard]] QVector<Grade> grades() const {
        return read<QVector<Grade>>(book.path, [this](Book& b) { return work::list_grades(b, book.second_visit); });
    }
    [[nodiscard]] Client client() const {
        return read<Client>(book.path, [this](Book& b) { return work::client_of(b, book.client); });
    }
    [[nodiscard]] QToolButton* sign() const { return window->book()->trail()->undo_button(); }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(undo, Regrets)

BOOST_AUTO_TEST_CASE(entries_of_a_visit_go_back_one_by_one_the_last_first_and_come_again) {
    go({Where::visit, book.client, book.second_visit});
    BOOST_TEST(!sign()->isVisible());
    page<VisitPage>()->wet()->click();
    settle();
    page<VisitPage>()->findChild<ServicesPanel*>()->add("gloss");
    BOOST_REQUIRE(wait_until([this] { return window->book()->place().where == Where::service && settled(); }));
    go({Where::grades, book.client, book.second_visit});
    page<GradesPage>()->grade(3);
    settle();
    go({Where::visit, book.client, book.second_visit});
    BOOST_TEST_REQUIRE(sign()->isVisible());
    BOOST_TEST(sign()->accessibleName().contains("grade of scalp"), sign()->accessibleName().toStdString());
    BOOST_TEST(grades().size() == 1);
    undo();
    BOOST_TEST(grades().isEmpty());
    BOOST_TEST(window->book()->notice()->sentence().contains("grade of scalp"));
    BOOST_TEST(services().size() == 1);
    undo();
    BOOST_TEST(services().isEmpty());
    BOOST_TEST(visit().hair.wet);
    undo();
    BOOST_TEST(!visit().hair.wet);
    BOOST_TEST(!page<VisitPage>()->wet()->isChecked());
    BOOST_TEST(!sign()->isVisible());
    undo();  // nothing is left
    redo();
    BOOST_TEST(visit().hair.wet);
    redo();
    BOOST_TEST(services().size() == 1);
    redo();
    BOOST_TEST(grades().size() == 1);
    redo();
    BOOST_TEST(grades().size() == 1);
}

BOOST_AUTO_TEST_CASE(a_note_that_is_still_being_typed_goes_first_and_then_what_was_kept_of_it) {
    go({Where::visit, book.client, book.second_visit});
    auto* note = page<VisitPage>()->findChild<QPlainTextEdit*>();
    note->setFocus();
    QTest::keyClicks(note, "softer");
    BOOST_TEST(wait_until([this] { return visit().note == "softer"; }));
    settle();
    note->setFocus();
    note->moveCursor(QTextCursor::End);
    QTest::keyClicks(note, " ends");
    undo();
    BOOST_TEST(note->toPlainText().toStdString() == "softer");
    BOOST_TEST(visit().note.toStdString() == "softer");
    undo();
    BOOST_TEST(visit().note.isEmpty());
    BOOST_TEST(note->toPlainText().isEmpty());
}

BOOST_AUTO_TEST_CASE(another_clients_entries_are_left_alone) {
    go({Where::visit, book.client, book.second_visit});
    page<VisitPage>()->wet()->click();
    settle();
    go({Where::client, book.other});
    BOOST_TEST(!sign()->isVisible());
    undo();
    BOOST_TEST(visit().hair.wet);
    go({Where::client, book.client});
    BOOST_TEST_REQUIRE(sign()->isVisible());
    QTest::mouseClick(sign(), Qt::LeftButton);
    settle();
    BOOST_TEST(!visit().hair.wet);
}

BOOST_AUTO_TEST_CASE(what_was_changed_elsewhere_since_is_not_overwritten_and_it_is_said) {
    go({Where::visit, book.client, book.second_visit});
    page<VisitPage>()->wet()->click();
    settle();
    Visit newer = visit();
    newer.note = "written by another window";
    (void)read<Done>(book.path, [&](Book& b) { return work::change_visit(b, newer); });
    undo();
    BOOST_TEST(visit().hair.wet);
    BOOST_TEST(visit().note.toStdString() == "written by another window");
    BOOST_TEST(window->book()->notice()->sentence().contains("changed since"),
               window->book()->notice()->sentence().toStdString());
    BOOST_TEST(!sign()->isVisible());
}

BOOST_AUTO_TEST_CASE(a_consent_that_was_ticked_by_mistake_goes_back) {
    go({Where::client, book.client});
    const Client before = client();
    for (QAction* act : page<ClientPage>()->findChildren<QAction*>())
        if (act->text().startsWith("Change name")) act->trigger();
    auto* form = page<ClientPage>()->findChild<ClientForm*>();
    BOOST_TEST_REQUIRE(form != nullptr);
    form->consent()->setChecked(true);
    emit form->ready([&] {
        Client agreed = before;
        agreed.photo_consent = true;
        agreed.consent_on = Clock().today();
        return agreed;
    }());
    form->close();
    settle();
    BOOST_TEST(client().photo_consent);
    undo();
    BOOST_TEST(!client().photo_consent);
    BOOST_TEST((client().consent_on == before.consent_on));
}

BOOST_AUTO_TEST_CASE(an_answer_before_a_service_is_taken_back_as_if_nobody_had_asked) {
    go({Where::plan, book.client});
    page<PlanPage>()->add_service(care::Kind::permanent);
    settle();
    ChoiceRow* row = nullptr;
    for (const Question& one : questions()) {
        row = page<PlanPage>()->questions()->choice(one.name);
        if (row != nullptr && row->isVisible()) break;
    }
    BOOST_TEST_REQUIRE(row != nullptr);
    const auto answers = [this] {
        return read<QVector<ClientAnswer>>(book.path, [this](Book& b) { return work::list_answers(b, book.client); });
    };
    press(row, Qt::Key_Y);
    BOOST_TEST(answers().size() == 1);
    undo();
    BOOST_TEST(answers().isEmpty(), window->book()->notice()->sentence().toStdString());
    redo();
    BOOST_TEST(answers().size() == 1);
}

BOOST_AUTO_TEST_CASE(a_planned_service_that_was_marked_as_done_is_planned_again) {
    Service planned;
    planned.client = book.client;
    planned.kind = "gloss";
    planned.date = Clock().today().addDays(-1);
    planned.done = false;
    planned = read<Service>(book.path, [&](Book& b) { return work::add_service(b, planned); });
    go({Where::client, book.client});
    for (QPushButton* b : page<ClientPage>()->findChildren<QPushButton*>())
        if (b->property("done_of").toLongLong() == planned.id) QTest::mouseClick(b, Qt::LeftButton);
    settle();
    BOOST_TEST(services().first().done);
    undo();
    BOOST_TEST((services().first() == planned));
}

BOOST_AUTO_TEST_SUITE_END()
