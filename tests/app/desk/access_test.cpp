// Every control of every page has a name and is reached with the Tab key; every label can be read.
#include <QAccessible>
#include <QButtonGroup>
#include <QFile>
#include <QLabel>
#include <QRadioButton>
#include <QSet>
#include <boost/test/unit_test.hpp>

#include "desk/inbox/inbox.h"
#include "desk/look/look.h"
#include "desk/photo/photo_page.h"
#include "desk/session/session.h"
#include "desk/settings/settings_dialog.h"
#include "desk/window/book_view.h"
#include "desk/window/page.h"
#include "domain/clock.h"
#include "room.h"
#include "work/keep_care.h"
#include "work/keep_records.h"
#include "work/plan_draft.h"

using namespace kempt;
using namespace kempt::desk;

namespace {

QVector<QWidget*> controls(QWidget* root) {
    QVector<QWidget*> out;
    for (QWidget* w : root->findChildren<QWidget*>())
        if (w->isVisibleTo(root) && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) && w->focusProxy() == nullptr &&
            !w->inherits("QMenu"))
            out.append(w);
    return out;
}

std::string named(const QWidget* w) {
    return std::string(w->metaObject()->className()) + " \"" + w->accessibleName().toStdString() + "\"";
}

void every_control_has_a_name(QWidget* root, const std::string& where) {
    for (QWidget* w : controls(root)) {
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(w);
        BOOST_REQUIRE(face != nullptr);
        BOOST_TEST(!face->text(QAccessible::Name).trimmed().isEmpty(), where << ": " << w->metaObject()->className()
                                                                             << " in " << named(w->parentWidget())
                                                                             << " has no name");
    }
}

void every_control_is_reached(QWidget* window, const std::string& where) {
    const QVector<QWidget*> wanted = controls(window);
    BOOST_TEST_REQUIRE(!wanted.isEmpty());
    wanted.first()->setFocus(Qt::TabFocusReason);
    QSet<QWidget*> seen{window->focusWidget()};
    for (qsizetype i = 0; i < 2 * wanted.size() + 10; ++i) {
        QWidget* now = window->focusWidget();
        BOOST_TEST_REQUIRE(now != nullptr);
        QTest::keyClick(now, Qt::Key_Tab);
        seen.insert(window->focusWidget());
    }
    for (QWidget* w : wanted) {
        bool reached = seen.contains(w);
        // A set of radio buttons is one stop; the arrow keys walk it (common practice).
        if (const auto* radio = qobject_cast<QRadioButton*>(w); radio != nullptr && radio->group() != nullptr)
            for (QAbstractButton* other : radio->group()->buttons()) reached = reached || seen.contains(other);
        BOOST_TEST(reached, where << ": Tab does not reach " << named(w));
    }
}

// Labels against what lies behind them, as painted: the ground is the most frequent colour of the label's picture.
void every_label_can_be_read(QWidget* root, const std::string& where) {
    for (const QLabel* label : root->findChildren<QLabel*>()) {
        if (!label->isVisibleTo(root) || label->text().trimmed().isEmpty() || !label->isEnabled()) continue;
        const QRect area(label->mapTo(root, QPoint(0, 0)), label->size());
        if (!root->rect().contains(area)) continue;
        const QImage image = root->grab(area).toImage().convertToFormat(QImage::Format_RGB32);
        QHash<QRgb, int> counts;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) ++counts[image.pixel(x, y)];
        QRgb ground = 0;
        int most = 0;
        for (auto it = counts.begin(); it != counts.end(); ++it)
            if (it.value() > most) {
                most = it.value();
                ground = it.key();
            }
        double best = 1;
        for (auto it = counts.begin(); it != counts.end(); ++it)
            best = std::max(best, contrast(QColor(it.key()), QColor(ground)));
        BOOST_TEST(best >= 4.5, where << ": \"" << label->text().toStdString() << "\" has only " << best);
    }
}

struct EveryPage : test::Desk {
    EveryPage() {
        const QVector<QPointF> region = {{80, 60}, {300, 60}, {300, 240}, {80, 240}};
        Marks marks;
        marks.shine_region = region;
        marks.strand_line = {{150, 20}, {150, 280}};
        lengths = book.add_photo(View::lengths, marks);
        marks = {};
        marks.sheet = "hem";
        marks.region = region;
        ends = book.add_photo(View::ends, marks);
        marks = {};
        marks.sheet = "combings";
        comb_out = book.add_photo(View::ends, marks);
        // A plan with an order of work that fails, so that every part of the plan page is there.
        work::PlanDraft draft{Clock().today(), {}};
        draft.items.resize(2);
        care::PlannedService& gloss = draft.items[0].item.service;
        gloss.kind = care::Kind::protein;
        gloss.most_minutes = 20;
        draft.items[0].item.setting = care::Setting{};
        draft.items[0].item.setting->strand_minutes = 20;
        draft.items[0].item.setting->sections = {{"nape", 3, 4, 5}, {"crown", 3, 4, 5}};
        draft.items[1].item.service.kind = care::Kind::smoothing;
        // A service that shows every field, and days with a heat tool.
        Service colour;
        colour.client = book.client;
        colour.date = Clock().today().addDays(-40);
        colour.kind = "permanent colour";
        colour.temperature_c = 180;
        colour.passes = 2;
        service = test::read<Service>(book.path, [&](Book& b) { return work::add_service(b, colour); }).id;
        DailyLife life;
        life.client = book.client;
        life.date = colour.date;
        life.heat = QVector<HeatTool>{{"dryer", 90, 2, true}};
        (void)test::read<DailyLife>(book.path, [&](Book& b) { return work::set_daily_life(b, life); });
        (void)test::read<Grade>(book.path, [&](Book& b) {
            return work::set_grade(b, {0, book.first_visit, "crown", "scalp", 3, 1});
        });
        (void)test::read<Done>(book.path, [&](Book& b) { return work::keep_plan_draft(b, book.client, draft); });
        // New photos of somebody and of nobody, one that cannot be read, one that the book has.
        Inbox& inbox = Inbox::of(*window->session());
        QFile broken(book.folder.filePath("broken.jpg"));
        BOOST_REQUIRE(broken.open(QIODevice::WriteOnly));
        broken.write("no picture");
        broken.close();
        inbox.bring({book.picture_file(90)}, {Where::client, book.client});
        inbox.bring({book.picture_file(91), broken.fileName(), book.picture_file(0)}, {});
        BOOST_REQUIRE(test::wait_until([&] { return inbox.waiting() == 2 && inbox.settled(); }));
    }
    Id lengths = 0, ends = 0, comb_out = 0, service = 0;

    [[nodiscard]] QVector<QPair<std::string, Place>> places() const {
        return {{"nobody", {}},
                {"client", {Where::client, book.client}},
                {"visit", {Where::visit, book.client, book.first_visit}},
                {"photo", {Where::photo, book.client, book.first_visit, book.photo, View::left_temple}},
                {"photo of lengths", {Where::photo, book.client, book.second_visit, lengths, View::lengths}},
                {"photo of ends", {Where::photo, book.client, book.second_visit, ends, View::ends}},
                {"photo of a comb-out", {Where::photo, book.client, book.second_visit, comb_out, View::ends}},
                {"compare", {Where::compare, book.client, 0, 0, View::left_temple}},
                {"report", {Where::report, book.client}},
                {"plan", {Where::plan, book.client}},
                {"service", {Where::service, book.client, book.first_visit, 0, View::left_temple, 0, 0, service}},
                {"grades", {Where::grades, book.client, book.first_visit}},
                {"hair and days", {Where::profile, book.client}},
                {"new photos", {Where::inbox}},
                {"camera", {Where::camera, book.client, book.first_visit}}};
    }
    void each(const std::function<void(QWidget*, const std::string&)>& check) {
        for (const auto& [name, place] : places()) {
            if (!(place == window->book()->place())) go(place);
            // What was shown last is laid out in turns of the event loop, from the inside outwards.
            for (int i = 0; i < 5; ++i) QApplication::processEvents();
            check(window.get(), name);
        }
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(within_reach, EveryPage)

BOOST_AUTO_TEST_CASE(every_control_of_every_page_has_an_accessible_name) {
    each(every_control_has_a_name);
}

BOOST_AUTO_TEST_CASE(tab_reaches_every_control_of_every_page) {
    each(every_control_is_reached);
}

BOOST_AUTO_TEST_CASE(every_label_of_every_page_can_be_read_in_the_light_and_in_the_dark) {
    for (const bool dark : {false, true}) {
        LookChoice choice;
        choice.dark = dark;
        look().apply(choice);
        each([dark](QWidget* root, const std::string& name) {
            every_label_can_be_read(root, name + (dark ? " dark" : " light"));
        });
    }
    look().apply({});
}

BOOST_AUTO_TEST_CASE(settings_have_names_and_are_reached) {
    window->show_settings();
    auto* dialog = window->findChild<SettingsDialog*>();
    BOOST_TEST_REQUIRE(dialog != nullptr);
    BOOST_TEST(test::wait_until([this] { return settled(); }));
    every_control_has_a_name(dialog, "settings");
    dialog->activateWindow();
    every_control_is_reached(dialog, "settings");
    dialog->close();
}

BOOST_AUTO_TEST_CASE(nothing_is_cut_off_sideways_at_the_largest_text) {
    LookChoice choice;
    choice.text_scale = 2.0;
    look().apply(choice);
    BOOST_TEST(test::wait_until([this] { return settled(); }));
    each([](QWidget* root, const std::string& name) {
        for (QWidget* w : controls(root)) {
            const QRect area(w->mapTo(root, QPoint(0, 0)), w->size());
            BOOST_TEST((area.left() >= 0 && area.right() < root->width()),
                       name << ": " << named(w) << " reaches from " << area.left() << " to " << area.right());
        }
    });
    look().apply({});
}

BOOST_AUTO_TEST_SUITE_END()
