// The plan page, driven as a person drives it, and what is then in the book.
#include <QCheckBox>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QPointer>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QScrollBar>
#include <boost/test/unit_test.hpp>

#include "desk/client/client_page.h"
#include "desk/client/services_panel.h"
#include "desk/look/look.h"
#include "desk/plan/answering.h"
#include "desk/plan/cautions_strip.h"
#include "desk/plan/dates_panel.h"
#include "desk/plan/entry_fields.h"
#include "desk/plan/findings_panel.h"
#include "desk/plan/hair_panel.h"
#include "desk/plan/plan_fields.h"
#include "desk/plan/plan_page.h"
#include "desk/plan/questions_panel.h"
#include "desk/plan/service_form.h"
#include "desk/plan/timeline_view.h"
#include "desk/plan/was_it_done.h"
#include "desk/plan/work_panel.h"
#include "desk/session/session.h"
#include "desk/start/due_page.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "domain/clock.h"
#include "domain/words.h"
#include "hands.h"
#include "work/keep_care.h"
#include "work/keep_records.h"
#include "work/make_report.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

struct PlanDesk : test::Hands {
    PlanPage* plan = nullptr;
    void open_plan() {
        go({Where::plan, book.client});
        plan = page<PlanPage>();
        BOOST_REQUIRE(plan != nullptr);
    }
    void add(care::Kind kind) {
        plan->add_service(kind);
        settle();
    }
    [[nodiscard]] bool speaks(const QString& rule) const { return plan->findings()->rules().contains(rule); }
    void keep(Service service) {
        service.client = book.client;
        const auto kept = read<Service>(book.path, [&](Book& b) { return work::add_service(b, service); });
        BOOST_REQUIRE(kept.id > 0);
    }
    [[nodiscard]] std::optional<work::PlanDraft> draft() const {
        return read<std::optional<work::PlanDraft>>(book.path,
                                                    [this](Book& b) { return work::plan_draft_of(b, book.client); });
    }
};

Service past(const char* kind, int days_ago) {
    Service service;
    service.kind = QString::fromLatin1(kind);
    service.date = Clock().today().addDays(-days_ago);
    return service;
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(plan_page, PlanDesk)

BOOST_AUTO_TEST_CASE(a_service_brings_its_findings_an_answer_changes_them_and_both_are_in_the_book) {
    open_plan();
    add(care::Kind::permanent);
    BOOST_TEST(!speaks("patch-test-missing"));
    press(plan->form(0)->choice(PlanField::patch_test), Qt::Key_N);
    BOOST_TEST(speaks("patch-test-missing"));
    BOOST_TEST(plan->shown()->plan.advice.stopped);

    BOOST_TEST(!speaks("dye-reaction-before"));
    const int open = plan->questions()->open_questions();
    press(plan->questions()->choice("dye_reaction"), Qt::Key_Y);
    BOOST_TEST(speaks("dye-reaction-before"));
    BOOST_TEST(plan->questions()->open_questions() < open);
    const auto told = read<QVector<work::CurrentAnswer>>(
        book.path, [this](Book& b) { return work::answers_of(b, book.client, Clock().today()); });
    BOOST_REQUIRE_EQUAL(told.size(), 1);
    BOOST_TEST(told[0].answer.question.toStdString() == "dye_reaction");
    BOOST_TEST(told[0].answer.value == 1);
    BOOST_TEST((told[0].answer.date == Clock().today()));

    const auto kept = draft();
    BOOST_REQUIRE(kept.has_value());
    BOOST_TEST((kept->day == Clock().today()));
    BOOST_REQUIRE_EQUAL(kept->items.size(), 1u);
    BOOST_TEST((kept->items[0].item.service.kind == care::Kind::permanent));
    BOOST_TEST((kept->items[0].item.service.patch_tested == std::optional(false)));

    // The row stays where it is, and takes the answer back.
    press(plan->questions()->choice("dye_reaction"), Qt::Key_U);
    BOOST_TEST(!speaks("dye-reaction-before"));
    BOOST_TEST(read<QVector<ClientAnswer>>(book.path, [this](Book& b) {
                   return work::list_answers(b, book.client);
               }).isEmpty());
}

BOOST_AUTO_TEST_CASE(a_yes_that_was_pressed_by_mistake_becomes_a_no_on_its_day) {
    open_plan();
    add(care::Kind::permanent);
    press(plan->questions()->choice("dye_reaction"), Qt::Key_Y);
    BOOST_TEST(speaks("dye-reaction-before"));
    press(plan->questions()->choice("dye_reaction"), Qt::Key_N);
    BOOST_TEST(!speaks("dye-reaction-before"));
    const auto told =
        read<QVector<ClientAnswer>>(book.path, [this](Book& b) { return work::list_answers(b, book.client); });
    BOOST_REQUIRE_EQUAL(told.size(), 1);
    BOOST_TEST(told[0].value == 0);
}

BOOST_AUTO_TEST_CASE(a_yes_that_is_kept_for_good_is_not_undone_by_a_single_press) {
    const ClientAnswer old{0, book.client, Clock().today().addDays(-200), "straightener_burn", 1};
    (void)read<QVector<ClientAnswer>>(book.path, [&](Book& b) { return work::set_answers(b, {old}); });
    open_plan();
    add(care::Kind::hydroxide_no_lye);
    BOOST_TEST(speaks("straightener-burn-before"));
    ChoiceRow* row = plan->questions()->choice("straightener_burn");
    BOOST_REQUIRE(row != nullptr);
    BOOST_TEST(row->chosen() == 0);
    BOOST_TEST(!row->isEnabled());
    plan->questions()->erase_button("straightener_burn")->click();
    QWidget* asked = nullptr;
    BOOST_TEST(wait_until([&] { return (asked = QApplication::activeModalWidget()) != nullptr; }));
    BOOST_REQUIRE(asked != nullptr);
    QTest::keyClick(asked, Qt::Key_Escape);
    settle();
    BOOST_TEST(speaks("straightener-burn-before"));
    // What the question does when she says so.
    emit plan->questions()->answered(*answering_of_fact("straightener_burn"), std::nullopt);
    settle();
    BOOST_TEST(!speaks("straightener-burn-before"));
    BOOST_TEST(row->isEnabled());
}

BOOST_AUTO_TEST_CASE(no_question_that_a_stop_hangs_on_is_folded_away) {
    open_plan();
    add(care::Kind::hydroxide_no_lye);
    add(care::Kind::lightening);
    QStringList visible;
    for (const QLabel* label : plan->questions()->findChildren<QLabel*>())
        if (label->isVisible()) visible.append(label->text());
    int asked = 0;
    for (const care::Finding& finding : plan->shown()->plan.advice.findings) {
        if (finding.level != care::RuleLevel::stop) continue;
        for (const std::string& question : finding.questions) {
            ++asked;
            BOOST_TEST(visible.contains(QString::fromStdString(question)), question);
        }
    }
    BOOST_TEST(asked > 5);
}

BOOST_AUTO_TEST_CASE(every_service_can_be_added_from_the_menu) {
    open_plan();
    QPushButton* add_button = nullptr;
    for (QPushButton* one : plan->findChildren<QPushButton*>())
        if (one->accessibleName() == "Add a service") add_button = one;
    BOOST_REQUIRE(add_button != nullptr);
    int expected = 0;
    for (const QAction* group : add_button->menu()->actions()) {
        BOOST_REQUIRE(group->menu() != nullptr);
        for (QAction* action : group->menu()->actions()) {
            action->trigger();
            ++expected;
        }
    }
    settle();
    BOOST_TEST(plan->planned() == expected);
    BOOST_TEST(expected >= 15);
    BOOST_TEST(plan->shown()->plan.services.size() == static_cast<std::size_t>(expected));
    BOOST_TEST(draft()->items.size() == static_cast<std::size_t>(expected));
}

BOOST_AUTO_TEST_CASE(lengths_are_entered_in_inches_and_kept_in_millimetres) {
    LookChoice choice;
    choice.length = LengthUnit::inches;
    look().apply(choice);
    settle();
    open_plan();
    add(care::Kind::protein);
    QList<LengthField*> fields = plan->form(0)->findChildren<LengthField*>();
    BOOST_REQUIRE_EQUAL(fields.size(), 2);
    BOOST_TEST(fields[0]->suffix().contains("in"));
    fields[0]->setValue(2);
    fields[1]->setValue(10);
    settle();
    BOOST_TEST(draft()->items[0].item.service.from_mm == 50.8, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(draft()->items[0].item.service.to_mm.value_or(0) == 254, boost::test_tools::tolerance(1e-9));
    look().apply({});
    settle();
    plan = page<PlanPage>();
    BOOST_REQUIRE(plan != nullptr);
    BOOST_TEST(plan->form(0)->service().from_mm == 50.8, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(stops_come_before_cautions_and_cautions_before_notes) {
    open_plan();
    add(care::Kind::hydroxide_no_lye);
    add(care::Kind::permanent);
    const auto& findings = plan->shown()->plan.advice.findings;
    QStringList expected;
    for (const auto level : {care::RuleLevel::stop, care::RuleLevel::caution, care::RuleLevel::note})
        for (const care::Finding& finding : findings)
            if (finding.level == level && finding.sort == care::FindingSort::speaks_against)
                expected.append(QString::fromStdString(finding.rule));
    BOOST_TEST(!expected.isEmpty());
    BOOST_TEST((plan->findings()->rules() == expected));
    BOOST_TEST(speaks("straightener-and-colour-today"));
}

BOOST_AUTO_TEST_CASE(what_was_planned_today_is_there_again) {
    open_plan();
    add(care::Kind::gloss);
    type(plan->form(0)->minutes(), "20");
    add(care::Kind::cut);
    type(plan->work(0)->strand(), "18");
    type(plan->work(0)->minutes(head_sections().first(), care::Part::roots), "2");
    go({Where::client, book.client});
    window->book()->go({Where::client, book.other});
    settle();
    open_plan();
    BOOST_REQUIRE_EQUAL(plan->planned(), 2);
    BOOST_TEST((plan->form(0)->kind() == care::Kind::gloss));
    BOOST_TEST(plan->form(0)->minutes()->number().value_or(0) == 20);
    BOOST_TEST(plan->work(0)->strand()->number().value_or(0) == 18);
    BOOST_TEST(plan->work(0)->minutes(head_sections().first(), care::Part::roots)->number().value_or(0) == 2);
    // Fields without a moment's rest before the page is left are kept as well.
    plan->form(0)->most_minutes()->setFocus();
    plan->form(0)->most_minutes()->selectAll();
    QTest::keyClicks(plan->form(0)->most_minutes(), "33");
    go({Where::client, book.client});
    BOOST_TEST(draft()->items[0].item.service.most_minutes.value_or(0) == 33);
}

BOOST_AUTO_TEST_CASE(a_service_is_taken_off_and_put_back) {
    open_plan();
    add(care::Kind::gloss);
    type(plan->form(0)->minutes(), "20");
    add(care::Kind::cut);
    emit plan->form(0)->remove_asked();
    settle();
    BOOST_TEST(plan->planned() == 1);
    BOOST_TEST(draft()->items.size() == 1);
    QPushButton* back = nullptr;
    for (QPushButton* one : plan->findChildren<QPushButton*>())
        if (one->isVisible() && one->accessibleName().startsWith("Put gloss back")) back = one;
    BOOST_REQUIRE(back != nullptr);
    QTest::keyClick(back, Qt::Key_Space);
    settle();
    BOOST_REQUIRE_EQUAL(plan->planned(), 2);
    BOOST_TEST((plan->form(0)->kind() == care::Kind::gloss));
    BOOST_TEST(plan->form(0)->minutes()->number().value_or(0) == 20);
    BOOST_TEST(draft()->items.size() == 2);
}

BOOST_AUTO_TEST_CASE(yesterdays_plan_is_offered_without_its_tests) {
    work::PlanDraft before{Clock().today().addDays(-30), {}};
    before.items.resize(1);
    before.items[0].item.service.kind = care::Kind::permanent;
    before.items[0].item.service.patch_tested = true;
    before.items[0].item.service.patch_test = care::TestResult::passed;
    (void)read<Done>(book.path, [&](Book& b) { return work::keep_plan_draft(b, book.client, before); });
    open_plan();
    BOOST_TEST(plan->planned() == 0);
    QPushButton* again = nullptr;
    for (QPushButton* one : plan->findChildren<QPushButton*>())
        if (one->isVisible() && one->text().startsWith("As planned on")) again = one;
    BOOST_REQUIRE(again != nullptr);
    again->click();
    settle();
    BOOST_REQUIRE_EQUAL(plan->planned(), 1);
    BOOST_TEST(!plan->form(0)->service().patch_tested.has_value());
    BOOST_TEST((draft()->day == Clock().today()));
}

BOOST_AUTO_TEST_CASE(the_order_of_work_is_drawn_as_planned_and_a_remedy_is_taken_over_at_once) {
    open_plan();
    add(care::Kind::protein);
    WorkPanel* work = plan->work(0);
    BOOST_TEST(work->timelines().isEmpty());
    type(plan->form(0)->most_minutes(), "15");
    type(work->strand(), "10");
    for (const QString& section : head_sections()) {
        work->minutes(section, care::Part::roots)->setValue(1);
        work->minutes(section, care::Part::mid_shaft)->setValue(2);
    }
    settle();
    const auto& planned = plan->shown()->plan.services[0].timeline;
    BOOST_REQUIRE(planned.has_value());
    BOOST_TEST(!planned->timeline.works);
    BOOST_REQUIRE_EQUAL(work->timelines().size(), 1);
    const TimelinePicture& picture = work->timelines()[0]->picture();
    BOOST_REQUIRE_EQUAL(picture.strips.size(), static_cast<qsizetype>(planned->timeline.order.size()));
    for (const TimelineStrip& strip : picture.strips) {
        const care::Placed& placed = planned->timeline.order[strip.placed];
        BOOST_TEST(strip.start == picture.x_of(placed.start_minutes), boost::test_tools::tolerance(1e-9));
        BOOST_TEST(strip.within == placed.within);
    }
    BOOST_REQUIRE(!work->remedies().isEmpty());
    BOOST_TEST(work->remedies().size() == static_cast<qsizetype>(planned->would_help.size()));
    BOOST_REQUIRE((planned->would_help[0].remedy.sort == care::RemedySort::more_hands));
    const int hands = planned->would_help[0].remedy.rounds.front().hands;
    work->remedies()[0]->click();
    settle();
    BOOST_TEST(work->setting().hands == hands);
    BOOST_TEST(plan->shown()->plan.services[0].timeline->timeline.works);
    BOOST_TEST(draft()->items[0].item.setting->hands == hands);
}

BOOST_AUTO_TEST_CASE(rounds_are_taken_over_and_given_up_again) {
    open_plan();
    add(care::Kind::protein);
    WorkPanel* work = plan->work(0);
    plan->form(0)->most_minutes()->setValue(15);
    work->strand()->setValue(10);
    for (const QString& section : head_sections()) {
        work->minutes(section, care::Part::roots)->setValue(1);
        work->minutes(section, care::Part::mid_shaft)->setValue(2);
    }
    settle();
    const auto& help = plan->shown()->plan.services[0].timeline->would_help;
    qsizetype rounds = -1, count = 0;
    for (std::size_t i = 0; i < help.size(); ++i)
        if (help[i].remedy.sort == care::RemedySort::rounds) {
            rounds = static_cast<qsizetype>(i);
            count = static_cast<qsizetype>(help[i].rounds.size());
        }
    BOOST_REQUIRE(rounds >= 0);
    work->remedies()[rounds]->click();
    settle();
    BOOST_TEST(work->timelines().size() == count);
    BOOST_TEST(draft()->items[0].in_rounds);
    for (const TimelineView* view : work->timelines())
        for (const TimelineStrip& strip : view->picture().strips) BOOST_TEST(strip.within);
    for (QPushButton* one : work->findChildren<QPushButton*>())
        if (one->isVisible() && one->text() == "All in one go instead") one->click();
    settle();
    BOOST_TEST(!draft()->items[0].in_rounds);
}

BOOST_AUTO_TEST_CASE(a_milder_strength_is_planned_one_step_down_and_has_to_be_tested_anew) {
    open_plan();
    add(care::Kind::hydroxide_no_lye);
    ServiceForm* form = plan->form(0);
    WorkPanel* work = plan->work(0);
    form->set_strength(care::Strength::super);
    press(form->choice(PlanField::strand_test), Qt::Key_P);
    form->most_minutes()->setValue(60);
    work->strand()->setValue(10);
    for (const QString& section : head_sections()) work->minutes(section, care::Part::roots)->setValue(1);
    settle();
    BOOST_REQUIRE(plan->shown()->plan.services[0].timeline.has_value());
    const auto& help = plan->shown()->plan.services[0].timeline->would_help;
    qsizetype milder = -1;
    for (std::size_t i = 0; i < help.size(); ++i)
        if (help[i].remedy.sort == care::RemedySort::milder) milder = static_cast<qsizetype>(i);
    BOOST_REQUIRE(milder >= 0);
    work->remedies()[milder]->click();
    settle();
    BOOST_TEST((form->service().strength == care::Strength::regular));
    BOOST_TEST(!form->service().strand_tested.has_value());
    BOOST_TEST(!work->strand()->number().has_value());
    BOOST_TEST(!plan->shown()->plan.services[0].timeline.has_value());
    QStringList words;
    for (const QLabel* label : work->findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    BOOST_TEST(words.join(' ').contains("strand test takes"));
}

BOOST_AUTO_TEST_CASE(the_cautions_stay_in_sight_wherever_the_page_is_scrolled) {
    open_plan();
    add(care::Kind::permanent);
    auto* area = plan->findChild<QScrollArea*>();
    for (const int at : {0, area->verticalScrollBar()->maximum()}) {
        area->verticalScrollBar()->setValue(at);
        QTest::qWait(20);
        const QRect strip(plan->cautions()->mapTo(window.get(), QPoint(0, 0)), plan->cautions()->size());
        BOOST_TEST(plan->cautions()->isVisible());
        BOOST_TEST(window->rect().contains(strip));
        BOOST_TEST(plan->cautions()->height() > 20);
    }
    for (const care::Caution& caution : plan->shown()->plan.advice.always)
        BOOST_TEST(plan->cautions()->sentences().contains(QString::fromStdString(caution.text)));
    // In a small window at large text they are shorter, and still all there.
    plan->cautions()->fit(640, 300);
    BOOST_TEST(plan->cautions()->words().size() < plan->cautions()->sentences().size());
    BOOST_TEST(plan->cautions()->words().count(QStringLiteral("·")) + 1 ==
               static_cast<qsizetype>(plan->shown()->plan.advice.always.size()));
    // Nothing in it puts it away.
    for (QPushButton* one : plan->cautions()->findChildren<QPushButton*>()) one->click();
    BOOST_TEST(plan->cautions()->isVisible());
    BOOST_TEST(!plan->cautions()->words().isEmpty());
}

BOOST_AUTO_TEST_CASE(a_centimetre_tells_what_it_has_been_through) {
    keep(past("permanent colour", 100));
    open_plan();
    StrandView* strand = plan->hair()->strand();
    BOOST_REQUIRE_EQUAL(strand->picture().lanes.size(), 1);
    BOOST_TEST(strand->picked().from_mm == 0);
    BOOST_TEST(!plan->hair()->listed().join(' ').contains("ermanent colour"));
    strand->setFocus();
    for (int i = 0; i < 6; ++i) QTest::keyClick(strand, Qt::Key_Right);
    BOOST_TEST(strand->picked().from_mm == 60);
    BOOST_TEST(plan->hair()->listed().join(' ').contains("Permanent colour"));
    QTest::keyClick(strand, Qt::Key_Home);
    BOOST_TEST(strand->picked().from_mm == 0);
    const QPoint at(static_cast<int>(strand->picture().x_of(72)), strand->height() / 2);
    QTest::mouseClick(strand, Qt::LeftButton, {}, at);
    BOOST_TEST(strand->picked().from_mm == 70);
    BOOST_TEST(strand->accessibleDescription().contains("ermanent colour"));
}

BOOST_AUTO_TEST_CASE(a_retouch_is_proposed_where_there_is_something_to_grow_away_from) {
    keep(past("permanent colour", 100));
    open_plan();
    add(care::Kind::permanent);
    BOOST_TEST(plan->form(0)->service().new_growth_only);
    add(care::Kind::hydroxide_no_lye);
    BOOST_TEST(!plan->form(1)->service().new_growth_only);
}

BOOST_AUTO_TEST_CASE(a_kind_is_not_asked_for_what_it_does_not_have) {
    open_plan();
    add(care::Kind::heat_styling);
    for (const QPushButton* one : plan->questions()->findChildren<QPushButton*>())
        if (one->isVisible() && one->text() == "Enter it") {
            const QString asked = one->accessibleName();
            BOOST_TEST(!asked.contains("patch test"), asked.toStdString());
            BOOST_TEST(!asked.contains("strand test"), asked.toStdString());
            BOOST_TEST(!asked.contains("longest time"), asked.toStdString());
        }
    BOOST_TEST((plan->questions()->choice("at_home") == nullptr));
    // What it does have leads to its field.
    QPushButton* protectant = nullptr;
    for (QPushButton* one : plan->questions()->findChildren<QPushButton*>())
        if (one->accessibleName().contains("heat protectant")) protectant = one;  // folded away: a note
    BOOST_REQUIRE(protectant != nullptr);
    protectant->click();
    BOOST_TEST(plan->form(0)->choice(PlanField::protectant)->isAncestorOf(window->focusWidget()));
}

// Of every kind: what is asked of the planned service has its field on the form, or is answered in the question itself.
BOOST_AUTO_TEST_CASE(every_question_of_every_kind_can_be_answered) {
    open_plan();
    for (const KindGroup& group : kind_groups())
        for (const care::Kind kind : group.kinds) {
            add(kind);
            for (const std::string& question : plan->shown()->plan.questions) {
                const auto answering = answering_of(QString::fromStdString(question));
                BOOST_REQUIRE_MESSAGE(answering.has_value(), question);
                if (!answering->field || is_yes_no(*answering->field)) continue;
                BOOST_TEST(plan->form(0)->shows(*answering->field), word_of(kind) << ": " << question);
            }
            emit plan->form(0)->remove_asked();
            settle();
        }
}

BOOST_AUTO_TEST_CASE(what_was_planned_is_asked_for_and_done_with_one_key) {
    Service planned = past("hydroxide straightener", 5);
    planned.done = false;
    keep(planned);
    open_plan();
    add(care::Kind::permanent);
    WasItDone* asks = plan->was_it_done();
    BOOST_REQUIRE_EQUAL(asks->asked(), 1);
    BOOST_TEST(asks->isVisible());
    BOOST_TEST(!speaks("colour-after-straightening"));  // perhaps: it is asked
    const auto& before = plan->shown()->plan.advice.findings;
    BOOST_TEST(std::any_of(before.begin(), before.end(), [](const care::Finding& finding) {
        return finding.rule == "colour-after-straightening" && finding.sort == care::FindingSort::check_first;
    }));
    BOOST_TEST(asks->done_button(0)->accessibleName().contains("hydroxide straightener"));
    asks->done_button(0)->setFocus();
    QTest::keyClick(asks->done_button(0), Qt::Key_D);
    settle();
    BOOST_TEST(speaks("colour-after-straightening"));
    BOOST_TEST(!asks->isVisible());
    const auto services =
        read<QVector<Service>>(book.path, [this](Book& b) { return work::list_services(b, book.client); });
    BOOST_TEST(std::all_of(services.begin(), services.end(), [](const Service& one) { return one.done; }));
}

BOOST_AUTO_TEST_CASE(that_all_is_in_the_record_is_asked_again_and_told_with_one_press) {
    const auto told = [this] {
        return read<ClientProfile>(book.path, [this](Book& b) { return work::profile_of(b, book.client); });
    };
    (void)read<bool>(book.path, [this](Book& b) -> Result<bool> {
        ClientProfile profile;
        profile.client = book.client;
        profile.whole_history = true;
        profile.history_told_on = Clock().today().addDays(-30);
        if (const Status kept = work::set_profile(b, profile); !kept) return kept.error();
        return true;
    });
    open_plan();
    BOOST_REQUIRE(plan->was_it_done()->all_there_button() != nullptr);
    BOOST_TEST(!plan->shown()->plan.hair.front().complete);
    plan->was_it_done()->all_there_button()->click();
    settle();
    BOOST_TEST((told().history_told_on == Clock().today()));
    BOOST_TEST(plan->shown()->plan.hair.front().complete);
    BOOST_TEST(!plan->was_it_done()->isVisible());
}

BOOST_AUTO_TEST_CASE(the_clients_page_asks_whether_it_was_done) {
    Service planned = past("cut", 3);
    planned.done = false;
    keep(planned);
    go({Where::client, book.client});
    auto* panel = page<ClientPage>()->findChild<ServicesPanel*>();
    BOOST_REQUIRE(panel != nullptr);
    QPushButton* done = nullptr;
    for (QPushButton* one : panel->findChildren<QPushButton*>())
        if (one->property("done_of").isValid()) done = one;
    BOOST_REQUIRE(done != nullptr);
    BOOST_TEST(done->accessibleName().startsWith("It was done: cut of"));
    done->setFocus();
    QTest::keyClick(done, Qt::Key_Space);
    settle();
    const auto services =
        read<QVector<Service>>(book.path, [this](Book& b) { return work::list_services(b, book.client); });
    BOOST_TEST(std::all_of(services.begin(), services.end(), [](const Service& one) { return one.done; }));
}

// What is planned in the window is in the report of that day.
BOOST_AUTO_TEST_CASE(the_plan_of_the_day_reaches_the_report) {
    open_plan();
    add(care::Kind::gloss);
    work::ReportOptions options;
    options.client = book.client;
    const auto planned = [&](QDate day) {
        return read<report::Model>(book.path, [&](Book& b) { return work::report_model_of(b, options, day); })
            .planned.services.size();
    };
    BOOST_TEST(planned(Clock().today()) == 0);
    options.plan_of_desk = true;
    BOOST_TEST(planned(Clock().today()) == 1);
    BOOST_TEST(planned(Clock().today().addDays(1)) == 0);
    // What the command asks for goes before it.
    options.plan.services.resize(2);
    BOOST_TEST(planned(Clock().today()) == 2);
}

BOOST_AUTO_TEST_CASE(numbers_and_habits_that_are_told_are_kept) {
    open_plan();
    add(care::Kind::permanent);
    type(plan->questions()->number("age_years"), "15");
    BOOST_TEST(wait_until([this] { return settled() && speaks("under-sixteen-dye"); }));
    const auto profile = read<ClientProfile>(book.path, [this](Book& b) { return work::profile_of(b, book.client); });
    BOOST_TEST(profile.age_years.value_or(0) == 15);
    // None is a number, too.
    NumberField* pulled = plan->questions()->number("pull_test_hairs");
    BOOST_REQUIRE(pulled != nullptr);
    BOOST_TEST(!pulled->number().has_value());
    type(pulled, "0");
    BOOST_TEST(wait_until([this] {
        return settled() && !read<QVector<ClientAnswer>>(book.path, [this](Book& b) {
                                 return work::list_answers(b, book.client);
                             }).isEmpty();
    }));
}

BOOST_AUTO_TEST_CASE(what_cannot_be_is_told_with_what_to_do_and_stays_as_entered) {
    ClientProfile profile;
    profile.client = book.client;
    profile.length_mm = 100;
    profile.length_on = Clock().today();
    (void)read<Done>(book.path, [&](Book& b) { return work::set_profile(b, profile); });
    work::PlanDraft beyond{Clock().today(), {}};
    beyond.items.resize(1);
    beyond.items[0].item.service.kind = care::Kind::protein;
    beyond.items[0].item.service.from_mm = 150;
    (void)read<Done>(book.path, [&](Book& b) { return work::keep_plan_draft(b, book.client, beyond); });
    open_plan();
    QStringList words;
    for (const QLabel* label : plan->findings()->findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    BOOST_TEST(words.join(' ').contains("beyond the end of the hair"));
    BOOST_TEST(words.join(' ').contains("kept"));
    BOOST_TEST(plan->form(0)->service().from_mm == 150);
}

BOOST_AUTO_TEST_CASE(dates_are_written_as_a_calendar_without_her_name_unless_asked) {
    Service cut = past("cut", 60);
    cut.to_mm = 250;
    keep(cut);
    open_plan();
    BOOST_TEST(!plan->shown()->plan.dates.empty());
    BOOST_TEST(plan->dates()->save_button()->isEnabled());
    const QString path = book.folder.filePath("dates.ics");
    plan->dates()->write_to(path);
    BOOST_TEST(wait_until([&] { return QFile::exists(path) && settled(); }));
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    BOOST_TEST(text.startsWith("BEGIN:VCALENDAR\r\n"));
    BOOST_TEST(text.contains("BEGIN:VEVENT"));
    BOOST_TEST(!text.contains("Holloway"));
    BOOST_TEST(window->book()->notice()->sentence().contains("dates.ics"));
}

BOOST_AUTO_TEST_CASE(a_calendar_that_cannot_be_written_is_told) {
    keep(past("cut", 60));
    open_plan();
    plan->dates()->write_to(book.folder.filePath("no/such/folder/dates.ics"));
    BOOST_TEST(wait_until([&] { return window->book()->notice()->isVisible() && settled(); }));
    BOOST_TEST(window->book()->notice()->sentence().contains("still in the book"));
}

BOOST_AUTO_TEST_CASE(who_is_due_is_listed_while_nobody_is_in_the_chair_and_opens) {
    keep(past("cut", 80));
    window->book()->go({Where::client, book.other});
    settle();
    window->session()->changed(book.client, 0);
    window->book()->go({});
    BOOST_TEST(wait_until([this] { return settled() && window->book()->due()->settled(); }));
    settle();
    DuePage* due = window->book()->due();
    BOOST_REQUIRE(!due->list().lines.empty());
    QPushButton* name = nullptr;
    for (QPushButton* one : due->findChildren<QPushButton*>())
        if (one->isVisible() && one->accessibleName().contains("Holloway")) name = one;
    BOOST_REQUIRE(name != nullptr);
    BOOST_TEST(name->accessibleName().contains("Trim"));
    name->click();
    BOOST_TEST(wait_until([this] { return window->book()->place().client == book.client && settled(); }));
}

BOOST_AUTO_TEST_CASE(who_is_due_is_read_anew_with_the_keyboard_where_it_was) {
    keep(past("cut", 80));
    window->session()->changed(book.client, 0);
    window->book()->go({});
    DuePage* due = window->book()->due();
    const auto read_anew = [&] {
        due->refresh();
        return wait_until([&] { return settled() && due->settled(); });
    };
    const auto name = [&]() -> QPushButton* {
        for (QPushButton* one : due->findChildren<QPushButton*>())
            if (one->isVisible() && one->accessibleName().contains("Holloway")) return one;
        return nullptr;
    };
    BOOST_TEST(read_anew());
    const QPointer<QPushButton> before = name();
    BOOST_REQUIRE(!before.isNull());
    before->setFocus();
    BOOST_TEST(read_anew());
    BOOST_TEST(name() == before.data());  // says the same: the same row
    BOOST_TEST(window->focusWidget() == before.data());
    const QString said_before = before->accessibleName();
    keep(past("cut", 70));  // the trim moves by ten days
    BOOST_TEST(read_anew());
    BOOST_REQUIRE(name() != nullptr);
    BOOST_TEST((name()->accessibleName() != said_before));
    BOOST_TEST(window->focusWidget() == name());
}

BOOST_AUTO_TEST_CASE(a_client_who_is_erased_leaves_no_plan_behind) {
    open_plan();
    add(care::Kind::gloss);
    BOOST_TEST(draft().has_value());
    (void)read<Done>(book.path, [this](Book& b) { return work::erase_client(b, book.client); });
    Client next;
    next.name = "Somebody Else";
    next.since = Clock().today();
    const auto kept = read<Client>(book.path, [&](Book& b) { return work::add_client(b, next); });
    BOOST_TEST(!read<std::optional<work::PlanDraft>>(book.path, [&](Book& b) {
                    return work::plan_draft_of(b, kept.id);
                }).has_value());
}

BOOST_AUTO_TEST_SUITE_END()
