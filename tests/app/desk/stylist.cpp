#include "stylist.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <QScrollArea>
#include <QTimer>
#include <QUrl>
#include <QWindow>
#include <iostream>

#include "desk/client/client_list.h"
#include "desk/session/session.h"
#include "desk/start/start_page.h"
#include "desk/window/book_view.h"
#include "desk/window/page.h"

namespace kempt::test {
namespace {

constexpr int menu_limit_ms = 10000, menu_step_ms = 20;

std::string named(const QWidget* w) {
    return std::string(w->metaObject()->className()) + " \"" + w->accessibleName().toStdString() + "\"";
}

}  // namespace

Stylist::Stylist() {
    open_anew();
}

void Stylist::open_anew() {
    window_ = std::make_unique<desk::MainWindow>();
    window_->resize(1280, 800);
    window_->move(0, 0);
    window_->show();
    wait([this] { return window_->windowHandle() != nullptr && window_->windowHandle()->isExposed(); },
         "the window is on the screen");
    have_keyboard();
}

Stylist::~Stylist() = default;

void Stylist::close() {
    window_->close();
    // Closed again by itself, and accepted, once the workers are through; hidden before.
    wait(
        [this] {
            const desk::Session* s = window_->session();
            auto* mine = const_cast<desk::Session*>(s);
            return !window_->isVisible() &&
                   (s == nullptr || (mine->records().unfinished() == 0 && mine->bench().unfinished() == 0));
        },
        "the window closes and keeps what was entered");
    QTest::qWait(100);
    window_.reset();
}

void Stylist::wait(const std::function<bool()>& so, const std::string& what, int limit_ms) {
    BOOST_REQUIRE_MESSAGE(wait_until(so, limit_ms), "it does not come to this: " << what);
}

void Stylist::settle(const std::string& what) {
    const auto quiet = [this] {
        if (window_->book() == nullptr) return !window_->start()->busy();
        desk::Session& s = *window_->session();
        const desk::Page* page = window_->book()->page();
        return window_->book()->clients()->settled() && (page == nullptr || page->settled()) &&
               s.records().unfinished() == 0 && s.bench().unfinished() == 0 && s.live().unfinished() == 0;
    };
    wait(quiet, what);
    QTest::qWait(20);  // what was made anew is shown in the next turn of the event loop
    wait(quiet, what);
}

QWidget* Stylist::shown_page() const {
    return window_->book() != nullptr ? window_->book()->page() : nullptr;
}

QWidget* Stylist::front() const {
    QWidget* dialog = QApplication::activeModalWidget();
    return dialog != nullptr ? dialog : window_.get();
}

void Stylist::have_keyboard() {
    QWidget* top = front();
    if (top->isActiveWindow()) return;
    wait([top] { return top->windowHandle() != nullptr && top->windowHandle()->isExposed(); },
         "what is in front shows");
    top->activateWindow();
    wait([top] { return top->isActiveWindow(); }, "what is in front has the keyboard");
}

QAbstractButton* Stylist::button(const QString& words) {
    QAbstractButton* found = nullptr;
    const auto look = [&] {
        for (QAbstractButton* b : front()->findChildren<QAbstractButton*>())
            if (b->isVisible() && b->isEnabled() && b->window() == front() &&
                (b->accessibleName() == words || b->text().trimmed() == words)) {
                found = b;
                return true;
            }
        return false;
    };
    wait(look, "there is a button \"" + words.toStdString() + "\"", 20000);
    return found;
}

void Stylist::press(const QString& words) {
    click(button(words));
}

void Stylist::reach(QWidget* on, QPoint at, bool whole) {
    BOOST_REQUIRE_MESSAGE(on != nullptr && on->isVisible() && on->isEnabled(),
                          (on != nullptr ? named(on) : std::string("nothing")) << " is not there to be pressed");
    have_keyboard();
    QWidget* top = on->window();
    QRect place;
    // What was laid out a moment ago may still move.
    for (int turn = 0; turn < 10; ++turn) {
        for (QWidget* up = on->parentWidget(); up != nullptr; up = up->parentWidget()) {
            auto* area = qobject_cast<QScrollArea*>(up);
            if (area == nullptr || !area->widget()->isAncestorOf(on)) continue;
            const QPoint middle = on->mapTo(area->widget(), whole ? on->rect().center() : at);
            const QSize room = whole ? on->size() / 2 : QSize(0, 0);
            area->ensureVisible(middle.x(), middle.y(), room.width() + 8, room.height() + 8);
        }
        QTest::qWait(turn == 0 ? 0 : 20);
        place = whole ? QRect(on->mapTo(top, QPoint(0, 0)), on->size()) : QRect(on->mapTo(top, at), QSize(1, 1));
        if (top->rect().contains(place)) break;
    }
    BOOST_REQUIRE_MESSAGE(top->rect().contains(place), named(on)
                                                           << " is out of reach at " << place.x() << ", " << place.y()
                                                           << ", " << place.width() << " x " << place.height());
    QWidget* hit = top->childAt(on->mapTo(top, at));
    BOOST_REQUIRE_MESSAGE(hit == on || on->isAncestorOf(hit),
                          named(on) << " is covered by " << (hit != nullptr ? named(hit) : std::string("nothing")));
}

void Stylist::reach(QWidget* on) {
    BOOST_REQUIRE(on != nullptr);
    reach(on, on->rect().center(), true);
}

void Stylist::click(QWidget* on) {
    reach(on);
    ++presses;
    QTest::mouseClick(on->window()->windowHandle(), Qt::LeftButton, {}, on->mapTo(on->window(), on->rect().center()));
}

void Stylist::click(QWidget* on, QPoint at) {
    reach(on, at, false);
    ++presses;
    QTest::mouseClick(on->window()->windowHandle(), Qt::LeftButton, {}, on->mapTo(on->window(), at));
}

void Stylist::drag(QWidget* on, QPoint from, QPoint to) {
    reach(on, from, false);
    reach(on, to, false);
    ++presses;
    QWindow* window = on->window()->windowHandle();
    const QPoint a = on->mapTo(on->window(), from), b = on->mapTo(on->window(), to);
    QTest::mousePress(window, Qt::LeftButton, {}, a);
    for (int step = 1; step <= 4; ++step) QTest::mouseMove(window, a + (b - a) * step / 4);
    QTest::mouseRelease(window, Qt::LeftButton, {}, b);
}

// A menu has an event loop of its own, so it is gone through from a timer.
void Stylist::choose(const QString& words, const QStringList& entries) {
    QAbstractButton* opener = button(words);
    QString trouble = "no menu opened";
    qsizetype at = 0;
    int waited_ms = 0;
    QTimer hand;
    QObject::connect(&hand, &QTimer::timeout, &hand, [&] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        if (waited_ms > menu_limit_ms || at == entries.size()) {
            hand.stop();
            if (menu != nullptr) menu->close();
            return;
        }
        waited_ms += menu_step_ms;
        if (menu == nullptr || !menu->isVisible()) return;
        for (QAction* one : menu->actions()) {
            if (one->text() != entries[at] || !one->isEnabled()) continue;
            ++at;
            ++presses;
            if (at == entries.size()) hand.stop();
            QTest::mouseClick(menu->windowHandle(), Qt::LeftButton, {}, menu->actionGeometry(one).center());
            return;
        }
        trouble = QString("its menu has no \"%1\"").arg(entries[at]);
    });
    hand.start(menu_step_ms);
    click(opener);
    wait([&] { return !hand.isActive(); }, "a menu is gone through", 2 * menu_limit_ms);
    BOOST_REQUIRE_MESSAGE(at == entries.size(), words.toStdString() << ": " << trouble.toStdString());
}

void Stylist::key(Qt::Key key, Qt::KeyboardModifiers with) {
    have_keyboard();
    ++presses;
    QTest::keyClick(front()->windowHandle(), key, with);
}

void Stylist::type(const QString& words) {
    have_keyboard();
    ++presses;
    for (const QChar c : words) QTest::keyClick(front()->windowHandle(), c.toLatin1());
}

void Stylist::type_into(QWidget* field, const QString& words) {
    click(field, QPoint(field->width() / 4, field->height() / 2));
    BOOST_REQUIRE_MESSAGE(field->hasFocus() || field->isAncestorOf(QApplication::focusWidget()),
                          named(field) << " has not got the keyboard");
    key(Qt::Key_A, Qt::ControlModifier);
    type(words);
}

// Part by part; one that is full goes on to the next by itself.
void Stylist::type_day(QDateEdit* field, const QDate& day) {
    click(field, QPoint(field->width() / 4, field->height() / 2));
    key(Qt::Key_Home);
    const QVector<QPair<QDateTimeEdit::Section, QString>> parts{
        {QDateTimeEdit::YearSection, QString::number(day.year())},
        {QDateTimeEdit::MonthSection, field->locale().toString(day, "MMM")},
        {QDateTimeEdit::DaySection, QString::number(day.day())}};
    // The year first and the day last: no day of the way there is one that its month lacks.
    for (const auto& [section, words] : parts) {
        for (int i = 0; i < 3 && field->currentSection() != section; ++i)
            key(section == QDateTimeEdit::YearSection ? Qt::Key_Right : Qt::Key_Left);
        field->setSelectedSection(section);
        type(words);
    }
    key(Qt::Key_Tab);
    BOOST_REQUIRE_MESSAGE(field->date() == day, named(field)
                                                    << " takes " << day.toString(Qt::ISODate).toStdString() << " for "
                                                    << field->date().toString(Qt::ISODate).toStdString());
}

void Stylist::drop(const QStringList& paths) {
    ++presses;
    QMimeData mime;
    QList<QUrl> urls;
    for (const QString& path : paths) urls.append(QUrl::fromLocalFile(path));
    mime.setUrls(urls);
    QWidget* on = window_->book();
    QDragEnterEvent enter(on->rect().center(), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(on, &enter);
    BOOST_REQUIRE_MESSAGE(enter.isAccepted(), "the page does not take what is held over it");
    QDropEvent fall(on->rect().center(), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(on, &fall);
}

QString Stylist::seen() const {
    QStringList words;
    for (const QLabel* label : front()->findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    return words.join(QLatin1Char('\n'));
}

QStringList from_phone(const QStringList& photos, const QString& folder) {
    QStringList copies;
    for (const QString& photo : photos) {
        copies.append(folder + "/" + QFileInfo(photo).fileName());
        BOOST_REQUIRE_MESSAGE(QFile::copy(photo, copies.last()), "no copy of " << photo.toStdString());
    }
    return copies;
}

}  // namespace kempt::test
