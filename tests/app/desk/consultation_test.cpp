// The consultation's pages, driven as a person drives them, and what is then in the book.
#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <boost/test/unit_test.hpp>

#include "desk/client/client_page.h"
#include "desk/client/services_panel.h"
#include "desk/consultation/day_field.h"
#include "desk/consultation/days_panel.h"
#include "desk/consultation/heat_row.h"
#include "desk/consultation/kept_strip.h"
#include "desk/consultation/profile_page.h"
#include "desk/consultation/profile_panel.h"
#include "desk/consultation/service_page.h"
#include "desk/consultation/service_record.h"
#include "desk/plan/entry_fields.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "domain/clock.h"
#include "domain/words.h"
#include "hands.h"
#include "work/keep_care.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

struct Talk : test::Hands {
    const QDate today = Clock().today();
    using test::Hands::type;
    void type(DayField* field, const QString& text) {
        field->line()->setFocus();
        field->line()->selectAll();
        QTest::keyClick(field->line(), Qt::Key_Delete);
        QTest::keyClicks(field->line(), text);
        settle();
    }
    [[nodiscard]] QVector<Service> services() const {
        return read<QVector<Service>>(book.path, [this](Book& b) { return work::list_services(b, book.client); });
    }
    [[nodiscard]] Service only() const {
        const QVector<Service> all = services();
        BOOST_REQUIRE_EQUAL(all.size(), 1);
        return all.first();
    }
    ServicePage* add(const QString& kind) {
        go({Where::client, book.client});
        page<ClientPage>()->findChild<ServicesPanel*>()->add(kind);
        BOOST_REQUIRE(wait_until([this] { return window->book()->place().where == Where::service && settled(); }));
        settle();
        auto* shown = page<ServicePage>();
        BOOST_REQUIRE(shown != nullptr && shown->record() != nullptr);
        return shown;
    }
    ProfilePage* talk() {
        go({Where::profile, book.client});
        return page<ProfilePage>();
    }
    [[nodiscard]] ClientProfile profile() const {
        return read<ClientProfile>(book.path, [this](Book& b) { return work::profile_of(b, book.client); });
    }
    [[nodiscard]] QVector<DailyLife> lives() const {
        return read<QVector<DailyLife>>(book.path, [this](Book& b) { return work::list_daily_life(b, book.client); });
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(consultation, Talk)

BOOST_AUTO_TEST_CASE(every_field_of_a_colour_is_in_the_book_without_a_save_button) {
    ServicePage* page = add("permanent colour");
    BOOST_TEST((only().date == today));
    press(page->record()->where(), Qt::Key_R);
    QTest::mouseClick(page->record()->section("nape"), Qt::LeftButton, {}, {8, 18});
    QTest::mouseClick(page->record()->section("crown"), Qt::LeftButton, {}, {8, 18});
    press(page->record()->choice(RecordField::strength), Qt::Key_R);
    type(page->record()->number(RecordField::minutes), "35");
    press(page->record()->choice(RecordField::strand_test), Qt::Key_P);
    press(page->record()->choice(RecordField::patch_test), Qt::Key_F);
    type(page->record()->patch_days(), "2");
    page->record()->patch_where()->setFocus();
    QTest::keyClicks(page->record()->patch_where(), "behind the left ear");
    page->record()->result()->setFocus();
    QTest::keyClicks(page->record()->result(), "even");
    press(page->record()->choice(RecordField::reaction), Qt::Key_N);
    press(page->record()->at_home(), Qt::Key_A);
    const Service kept = only();
    BOOST_TEST(kept.from_mm == 0);
    BOOST_TEST((kept.to_mm == std::optional(20.0)));  // care::roots_mm
    BOOST_TEST(kept.sections.join(",").toStdString() == "crown,nape");
    BOOST_TEST(kept.strength.toStdString() == "regular");
    BOOST_TEST((kept.minutes == std::optional(35.0)));
    BOOST_TEST(!kept.most_minutes);
    BOOST_TEST(kept.strand_test.toStdString() == "passed");
    BOOST_TEST(kept.patch_test.toStdString() == "failed");
    BOOST_TEST((kept.patch_test_on == std::optional(today.addDays(-2))));
    BOOST_TEST(kept.patch_test_where.toStdString() == "behind the left ear");
    BOOST_TEST(kept.result.toStdString() == "even");
    BOOST_TEST((kept.reaction == std::optional(false)));
    BOOST_TEST((kept.at_home == std::optional(true)));
    BOOST_TEST(!kept.temperature_c);
    BOOST_TEST(page->strip()->words().toStdString() == "Kept.");
}

BOOST_AUTO_TEST_CASE(only_the_fields_that_the_kind_needs_are_shown_and_what_is_held_stays_in_sight) {
    ServicePage* page = add("cut");
    BOOST_TEST(page->record()->where() == nullptr);
    BOOST_TEST(page->record()->choice(RecordField::strength) == nullptr);
    type(page->record()->to(), "250");
    BOOST_TEST((only().to_mm == std::optional(250.0)));
    page->kind()->setCurrentIndex(page->kind()->findData("heat styling"));
    settle();
    BOOST_TEST(only().kind.toStdString() == "heat styling");
    BOOST_TEST(page->record()->choice(RecordField::patch_test) == nullptr);
    type(page->record()->number(RecordField::temperature), "180");
    type(page->record()->number(RecordField::passes), "2");
    page->kind()->setCurrentIndex(page->kind()->findData("gloss"));
    settle();
    BOOST_TEST(page->record()->number(RecordField::temperature) != nullptr);
    BOOST_TEST((only().temperature_c == std::optional(180.0)));
    BOOST_TEST((only().passes == std::optional(2)));
    // Each kind of the record is offered once.
    QStringList offered;
    for (int i = 0; i < page->kind()->count(); ++i) offered.append(page->kind()->itemData(i).toString());
    QStringList known = service_kinds();
    offered.sort();
    known.sort();
    BOOST_TEST((offered == known));
}

BOOST_AUTO_TEST_CASE(mid_shaft_and_ends_are_named_by_the_length_of_that_day) {
    ClientProfile told;
    told.client = book.client;
    told.length_mm = 300;
    told.length_on = today;
    (void)read<Done>(book.path, [&](Book& b) { return work::set_profile(b, told); });
    ServicePage* page = add("protein treatment");
    press(page->record()->where(), Qt::Key_E);
    // The last 5 cm are ends (care::ends_mm, common practice).
    BOOST_TEST(only().from_mm == 250);
    BOOST_TEST(!only().to_mm);
    press(page->record()->where(), Qt::Key_M);
    BOOST_TEST(only().from_mm == 20);
    BOOST_TEST((only().to_mm == std::optional(250.0)));
    type(page->record()->to(), "120");
    BOOST_TEST((only().to_mm == std::optional(120.0)));
}

BOOST_AUTO_TEST_CASE(one_end_is_changed_without_rounding_the_other_and_a_patch_test_keeps_its_day) {
    Service old;
    old.client = book.client;
    old.kind = "permanent colour";
    old.date = today.addDays(-30);
    old.from_mm = 12.4;
    old.minutes = 300;  // more than a field takes
    old.patch_test_on = old.date.addDays(-3);
    const Id id = read<Service>(book.path, [&](Book& b) { return work::add_service(b, old); }).id;
    go({Where::service, book.client, 0, 0, View::left_temple, 0, 0, id});
    auto* page = this->page<ServicePage>();
    type(page->record()->to(), "80");
    BOOST_TEST(only().from_mm == 12.4);
    BOOST_TEST((only().to_mm == std::optional(80.0)));
    BOOST_TEST((only().minutes == std::optional(300.0)));
    BOOST_TEST((page->record()->number(RecordField::minutes)->number() == std::optional(300.0)));
    page->day()->setDate(old.date.addDays(2));
    settle();
    BOOST_TEST((only().date == old.date.addDays(2)));
    BOOST_TEST((only().patch_test_on == old.patch_test_on));
    BOOST_TEST((page->record()->patch_days()->number() == std::optional(5.0)));
    page->day()->setDate(old.date.addDays(-10));  // before the patch test: the book refuses it
    settle();
    BOOST_TEST(page->strip()->tells_trouble());
    BOOST_TEST((only().date == old.date.addDays(2)));
}

BOOST_AUTO_TEST_CASE(a_service_is_planned_ahead_and_done_on_its_page) {
    ServicePage* page = add("gloss");
    BOOST_TEST(page->record()->state()->chosen() == 0);
    press(page->record()->state(), Qt::Key_P);
    settle();
    BOOST_TEST(!only().done);
    press(page->record()->state(), Qt::Key_D);
    settle();
    BOOST_TEST(only().done);
    page->record()->set_day(Clock().today().addDays(7));
    BOOST_TEST(page->record()->state()->chosen() == 1);  // what is to come cannot be done yet
    BOOST_TEST(!page->record()->state()->isEnabled());
    BOOST_TEST(!page->record()->service().done);
}

BOOST_AUTO_TEST_CASE(the_last_change_of_a_service_is_taken_back) {
    ServicePage* page = add("gloss");
    BOOST_TEST(!page->strip()->undo_button()->isEnabled());
    type(page->record()->number(RecordField::minutes), "20");
    type(page->record()->number(RecordField::minutes), "90");
    BOOST_TEST((only().minutes == std::optional(90.0)));
    page->take_back();
    settle();
    BOOST_TEST((only().minutes == std::optional(20.0)));
    BOOST_TEST((page->record()->number(RecordField::minutes)->number() == std::optional(20.0)));
    page->take_back();
    settle();
    BOOST_TEST(!only().minutes.has_value());
    BOOST_TEST(!page->strip()->undo_button()->isEnabled());  // that it was added is undone where it is listed
    page->do_again();
    settle();
    BOOST_TEST((only().minutes == std::optional(20.0)));
}

BOOST_AUTO_TEST_CASE(what_the_book_refuses_is_told_and_the_book_holds_what_it_held) {
    ServicePage* page = add("gloss");
    type(page->record()->to(), "100");
    type(page->record()->from(), "200");
    BOOST_TEST(page->strip()->tells_trouble());
    BOOST_TEST(page->strip()->words().contains("ends before it begins"), page->strip()->words().toStdString());
    // In sight also when the page is scrolled: what happened, what was kept, what to do.
    BOOST_TEST(window->book()->notice()->isVisible());
    for (const char* words : {"ends before it begins", "book holds what stood there", "beyond the beginning"})
        BOOST_TEST(window->book()->notice()->sentence().contains(words), words);
    BOOST_TEST(only().from_mm == 0);
    page->take_back();
    settle();
    BOOST_TEST(!page->strip()->tells_trouble());
    BOOST_TEST(!page->record()->from()->mm());
    type(page->record()->from(), "40");
    BOOST_TEST(only().from_mm == 40);
}

BOOST_AUTO_TEST_CASE(what_is_typed_last_is_kept_when_the_page_is_left_at_once) {
    ServicePage* page = add("gloss");
    page->record()->note()->setFocus();
    QTest::keyClicks(page->record()->note(), "mixed one to one");
    go({Where::client, book.client});
    settle();
    BOOST_TEST(only().note.toStdString() == "mixed one to one");
}

BOOST_AUTO_TEST_CASE(an_erased_service_is_put_back_whole) {
    ServicePage* page = add("gloss");
    type(page->record()->number(RecordField::minutes), "20");
    Service before = only();
    for (QPushButton* b : page->findChildren<QPushButton*>())
        if (b->accessibleName() == "Erase this service") QTest::mouseClick(b, Qt::LeftButton);
    BOOST_TEST(wait_until([this] { return window->book()->place().where == Where::client && settled(); }));
    BOOST_TEST(services().isEmpty());
    auto* put_back = this->page<ClientPage>()->findChild<ServicesPanel*>()->put_back_button();
    BOOST_TEST_REQUIRE(put_back->isVisible());
    QTest::mouseClick(put_back, Qt::LeftButton);
    BOOST_TEST(wait_until([this] { return settled() && services().size() == 1; }));
    before.id = only().id;
    BOOST_TEST((only() == before));
}

BOOST_AUTO_TEST_CASE(what_she_is_like_is_kept_and_unknown_takes_it_back) {
    ProfilePage* page = talk();
    press(page->profile()->texture(), Qt::Key_F);
    press(page->profile()->group(), Qt::Key_A);
    type(page->profile()->length(), "240");
    type(page->profile()->born(), "4 may 1990");
    const ClientProfile kept = profile();
    BOOST_TEST(kept.texture.toStdString() == "fine");
    BOOST_TEST(kept.hair_group.toStdString() == "african");
    BOOST_TEST((kept.length_mm == std::optional(240.0)));
    BOOST_TEST((kept.length_on == std::optional(today)));
    BOOST_TEST((kept.born == std::optional(QDate(1990, 5, 4))));
    press(page->profile()->texture(), Qt::Key_U);
    BOOST_TEST(profile().texture.isEmpty());
    page->take_back();
    settle();
    BOOST_TEST(profile().texture.toStdString() == "fine");
    press(page->profile()->history(), Qt::Key_S);
    type(page->profile()->history_from(), "2020");
    BOOST_TEST((profile().history_from == std::optional(QDate(2020, 1, 1))));
    press(page->profile()->history(), Qt::Key_A);
    BOOST_TEST(profile().whole_history);
    BOOST_TEST(!profile().history_from);
}

BOOST_AUTO_TEST_CASE(her_days_are_of_today_go_on_from_what_she_told_before_and_open_stays_open) {
    DailyLife before;
    before.client = book.client;
    before.date = today.addDays(-90);
    before.washes_a_week = 2;
    before.tight_styles = true;
    (void)read<DailyLife>(book.path, [&](Book& b) { return work::set_daily_life(b, before); });
    ProfilePage* page = talk();
    BOOST_TEST((page->days()->number("Washes")->number() == std::optional(2.0)));
    press(page->days()->choice("Is the water at home hard?"), Qt::Key_Y);
    BOOST_REQUIRE_EQUAL(lives().size(), 2);
    const DailyLife now = lives().last();
    BOOST_TEST((now.date == today));
    BOOST_TEST((now.hard_water == std::optional(true)));
    BOOST_TEST((now.washes_a_week == std::optional(2.0)));
    BOOST_TEST((now.tight_styles == std::optional(true)));
    BOOST_TEST(!now.added_hair);
    BOOST_TEST(!now.heat);
    BOOST_TEST(!now.swims_a_week);
    page->take_back();  // today's goes, what she told before stays
    settle();
    BOOST_REQUIRE_EQUAL(lives().size(), 1);
    BOOST_TEST((lives().first().date == before.date));
    type(page->days()->number("Swims"), "0");  // none is not the same as not known
    BOOST_TEST((lives().last().swims_a_week == std::optional(0.0)));
}

BOOST_AUTO_TEST_CASE(days_told_too_long_ago_are_asked_anew_and_stay_in_the_book) {
    DailyLife before;
    before.client = book.client;
    before.date = today.addDays(-200);
    before.washes_a_week = 2;
    (void)read<DailyLife>(book.path, [&](Book& b) { return work::set_daily_life(b, before); });
    ProfilePage* page = talk();
    BOOST_TEST(!page->days()->number("Washes")->number());
    press(page->days()->choice("Is the water at home hard?"), Qt::Key_Y);
    BOOST_REQUIRE_EQUAL(lives().size(), 2);
    BOOST_TEST((lives().first().washes_a_week == std::optional(2.0)));
    BOOST_TEST((lives().last().date == today && !lives().last().washes_a_week));
}

BOOST_AUTO_TEST_CASE(heat_is_none_some_or_not_known) {
    ProfilePage* page = talk();
    press(page->days()->heat(), Qt::Key_N);
    BOOST_REQUIRE(lives().last().heat.has_value());
    BOOST_TEST(lives().last().heat->isEmpty());
    press(page->days()->heat(), Qt::Key_Y);
    BOOST_REQUIRE_EQUAL(page->days()->tools().size(), 1);
    type(page->days()->tools()[0]->temperature(), "185");
    type(page->days()->tools()[0]->times(), "3");
    press(page->days()->tools()[0]->wet(), Qt::Key_N);
    QTest::mouseClick(page->days()->add_tool(), Qt::LeftButton);
    settle();
    const auto heat = lives().last().heat.value_or(QVector<HeatTool>());
    BOOST_REQUIRE_EQUAL(heat.size(), 2);
    BOOST_TEST((heat[0] == HeatTool{"flat iron", 185, 3, false}));
    BOOST_TEST(heat[1].name != heat[0].name);
    press(page->days()->heat(), Qt::Key_U);
    BOOST_TEST(!lives().last().heat);
}

BOOST_AUTO_TEST_CASE(days_are_read_in_words_and_figures_and_never_guessed) {
    const QDate now(2026, 11, 25);
    const auto day = [&](const char* words, bool coarse = false) { return day_from(words, now, coarse); };
    const auto same = std::optional(QDate(2026, 9, 4));
    for (const char* words :
         {"4 Sept 2026", "4 sep 2026", "4. September 2026", "2026-09-04", "4.9.2026", " 4  SEP 2026"})
        BOOST_TEST((day(words) == same), words);
    BOOST_TEST((day("yesterday") == std::optional(QDate(2026, 11, 24))));
    for (const char* words : {"4/9/2026", "31 Feb 2026", "Sept 2026", "2026", "4 Sex 2026", "4 Sep 26", ""})
        BOOST_TEST(!day(words), words);
    BOOST_TEST((day("Sept 2026", true) == std::optional(QDate(2026, 9, 1))));
    BOOST_TEST((day("2026", true) == std::optional(QDate(2026, 1, 1))));
}

BOOST_AUTO_TEST_CASE(a_day_that_cannot_be_read_or_is_to_come_is_told_and_changes_nothing) {
    ProfilePage* page = talk();
    type(page->profile()->born(), "4 May 1990");
    type(page->profile()->born(), "4/5/90");
    BOOST_TEST(page->profile()->born()->told().contains("stays"));
    type(page->profile()->born(), "4 May 2190");
    BOOST_TEST(page->profile()->born()->told().contains("still to come"));
    go({Where::client, book.client});
    settle();
    BOOST_TEST((profile().born == std::optional(QDate(1990, 5, 4))));
    page = talk();
    page->profile()->born()->line()->setFocus();
    page->profile()->born()->line()->selectAll();
    QTest::keyClick(page->profile()->born()->line(), Qt::Key_Delete);
    go({Where::client, book.client});
    settle();
    BOOST_TEST(!profile().born);
}

BOOST_AUTO_TEST_SUITE_END()
