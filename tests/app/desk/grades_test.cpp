// Grades by zone on the real page: one key a grade, what is then in the book, the second look.
#include <QLabel>
#include <QPushButton>
#include <boost/test/unit_test.hpp>

#include "desk/consultation/anchor_button.h"
#include "desk/consultation/grades_page.h"
#include "desk/consultation/kept_strip.h"
#include "desk/window/book_view.h"
#include "domain/words.h"
#include "room.h"
#include "work/grade_agreement.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

struct Grading : test::Desk {
    GradesPage* shown = nullptr;
    void open() {
        go({Where::grades, book.client, book.first_visit});
        shown = page<GradesPage>();
        BOOST_REQUIRE(shown != nullptr);
        BOOST_REQUIRE(window->focusWidget() != nullptr);
    }
    void settle() {
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
        QTest::qWait(20);
    }
    void press(const char* keys) {
        for (const char* key = keys; *key != '\0'; ++key) QTest::keyClick(window->focusWidget(), *key);
        settle();
    }
    [[nodiscard]] QVector<Grade> kept() const {
        return read<QVector<Grade>>(book.path, [this](Book& b) { return work::list_grades(b, book.first_visit); });
    }
    [[nodiscard]] int value(const char* quality, const char* zone, int round = 1) const {
        const QVector<Grade> all = kept();
        const Grade* found = grade_of(all, {quality, zone}, round);
        return found == nullptr ? -1 : found->value;
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(grades, Grading)

BOOST_AUTO_TEST_CASE(one_key_a_grade_and_the_next_zone_follows) {
    open();
    BOOST_TEST((shown->step() == std::optional(GradeStep{"scalp", "front hairline"})));
    press("43n2");
    BOOST_TEST(value("scalp", "front hairline") == 4);
    BOOST_TEST(value("scalp", "left temple") == 3);
    BOOST_TEST(value("scalp", "right temple") == -1);  // left open
    BOOST_TEST(value("scalp", "crown") == 2);
    BOOST_TEST((shown->step() == std::optional(GradeStep{"scalp", "nape"})));
    BOOST_TEST(kept().size() == 3);
}

BOOST_AUTO_TEST_CASE(the_anchors_are_those_of_the_quality_that_is_shown) {
    open();
    for (const GradeStep& step : first_steps({})) {
        shown->pick(step);
        for (int value = 0; value <= 4; ++value) {
            const QString anchor = grade_anchor(step.quality, value).section(": ", 1);
            BOOST_TEST(shown->anchors()[value]->accessibleName().contains(anchor, Qt::CaseInsensitive));
        }
    }
}

BOOST_AUTO_TEST_CASE(a_whole_grading_by_keys_alone_and_it_is_there_again_when_the_page_is_opened) {
    open();
    const qsizetype all = first_steps({}).size();
    for (int i = 0; i < all; ++i) QTest::keyClick(window->focusWidget(), static_cast<char>('0' + i % 5));
    settle();
    BOOST_TEST(kept().size() == all);
    BOOST_TEST(!shown->step());
    BOOST_TEST(!shown->told().isEmpty());
    go({Where::visit, book.client, book.first_visit});
    open();
    shown->pick({"scalp", "left temple"});
    BOOST_TEST(shown->anchors()[1]->isChecked());
    press("4");  // changed, not added
    BOOST_TEST(kept().size() == all);
    BOOST_TEST(value("scalp", "left temple") == 4);
}

BOOST_AUTO_TEST_CASE(the_last_grade_is_taken_back_whether_it_was_new_or_changed) {
    open();
    press("4");
    QTest::keyClick(window->focusWidget(), Qt::Key_Z, Qt::ControlModifier);
    settle();
    BOOST_TEST(kept().isEmpty());
    BOOST_TEST((shown->step() == std::optional(GradeStep{"scalp", "front hairline"})));
    press("4");
    shown->pick({"scalp", "front hairline"});
    press("1");
    BOOST_TEST(value("scalp", "front hairline") == 1);
    shown->take_back();
    settle();
    BOOST_TEST(value("scalp", "front hairline") == 4);
    BOOST_TEST(shown->strip()->undo_button()->isEnabled());
    QTest::keyClick(window->focusWidget(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    settle();
    BOOST_TEST(value("scalp", "front hairline") == 1);
    shown->take_back();
    shown->take_back();
    settle();
    BOOST_TEST(kept().isEmpty());
    BOOST_TEST(!shown->strip()->undo_button()->isEnabled());
}

BOOST_AUTO_TEST_CASE(the_second_grading_does_not_show_the_first_and_ends_with_the_agreement) {
    open();
    press("0123");  // scalp of four zones
    shown->set_round(2);
    settle();
    BOOST_TEST((shown->step() == std::optional(GradeStep{"scalp", "crown"})));  // from the last to the first
    for (const AnchorButton* anchor : shown->anchors()) BOOST_TEST(!anchor->isChecked());
    for (const QPushButton* chip : shown->findChildren<QPushButton*>())
        if (chip->isVisible() && chip->isCheckable())
            BOOST_TEST(chip->accessibleName().endsWith(": open"), chip->accessibleName().toStdString());
    press("321");
    BOOST_TEST(shown->told().isEmpty());  // no figure before the last one
    press("1");
    BOOST_TEST(value("scalp", "crown", 1) == 3);
    BOOST_TEST(value("scalp", "crown", 2) == 3);
    BOOST_TEST(value("scalp", "front hairline", 1) == 0);
    BOOST_TEST(value("scalp", "front hairline", 2) == 1);
    // Pairs (3,3) (2,2) (1,1) (0,1), linear weights: a quarter of a step of disagreement on average; by chance that of
    // the two margins.
    const double rows[4] = {0.25, 0.25, 0.25, 0.25}, columns[4] = {0, 0.5, 0.25, 0.25};
    double chance = 0;
    for (int i = 0; i < 4; ++i)
        for (int j = 0; j < 4; ++j) chance += rows[i] * columns[j] * std::abs(i - j);
    const double kappa = 1 - 0.25 / chance;  // Cohen 1968
    BOOST_TEST(shown->told().contains(QString::number(kappa, 'f', 2)), shown->told().toStdString());
    BOOST_TEST(shown->told().contains("4 grades, 3 of them alike"), shown->told().toStdString());
    const auto agreement =
        read<work::GradeAgreement>(book.path, [this](Book& b) { return work::grade_agreement_of(b, book.client); });
    BOOST_TEST(agreement.pairs == 4);
    BOOST_TEST(agreement.kappa.value_or(0) == kappa, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(grades_of_other_zones_are_shown_and_can_be_changed) {
    (void)read<Grade>(book.path, [this](Book& b) {
        return work::add_grade(b, {0, book.first_visit, "whole head", "scalp", 2, 1});
    });
    open();
    shown->pick({"scalp", "whole head"});
    BOOST_TEST(shown->anchors()[2]->isChecked());
    press("3");
    BOOST_TEST(value("scalp", "whole head") == 3);
    BOOST_TEST(kept().size() == 1);
}

BOOST_AUTO_TEST_SUITE_END()
