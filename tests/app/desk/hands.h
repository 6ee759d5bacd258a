// A desk that is worked by the keyboard, each entry waited for until it is kept.
#pragma once

#include <QRadioButton>

#include "desk/plan/entry_fields.h"
#include "room.h"

namespace kempt::test {

struct Hands : Desk {
    void settle() {
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
        QTest::qWait(20);  // what was made anew is shown in the next turn of the event loop
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
    }
    // By the row's own letter.
    void press(desk::ChoiceRow* row, Qt::Key key) {
        BOOST_REQUIRE(row != nullptr);
        row->focus_chosen();
        QTest::keyClick(row->findChildren<QRadioButton*>().first(), key);
        settle();
    }
    void type(desk::NumberField* field, const QString& text) {
        BOOST_REQUIRE(field != nullptr);
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, text);
        settle();
    }
};

}  // namespace kempt::test
