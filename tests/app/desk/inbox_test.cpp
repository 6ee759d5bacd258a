// The tray of new photos: dropped, chosen, or come into the watched folder.
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSettings>
#include <boost/test/unit_test.hpp>

#include "desk/client/client_list.h"
#include "desk/inbox/client_picker.h"
#include "desk/inbox/inbox_page.h"
#include "desk/inbox/inbox_row.h"
#include "desk/plan/entry_fields.h"
#include "desk/session/session.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "domain/clock.h"
#include "room.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

struct Tray : test::Desk {
    Tray() { inbox = &Inbox::of(*window->session()); }
    ~Tray() { QSettings().remove(QLatin1String(watched_folder_key)); }
    Inbox* inbox;

    void drop(const QStringList& paths) {
        QMimeData mime;
        QList<QUrl> urls;
        for (const QString& one : paths) urls.append(QUrl::fromLocalFile(one));
        mime.setUrls(urls);
        QWidget* on = window->book();
        QDragEnterEvent enter(on->rect().center(), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(on, &enter);
        BOOST_TEST(enter.isAccepted());
        QDropEvent fall(on->rect().center(), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(on, &fall);
        wait();
    }
    void wait() {
        BOOST_REQUIRE(wait_until([this] { return inbox->settled() && settled(); }));
        QTest::qWait(20);
        BOOST_REQUIRE(wait_until([this] { return inbox->settled() && settled(); }));
    }
    // A press on whatever has the keyboard.
    void key(int key) {
        QWidget* at = window->focusWidget();
        QTest::keyClick(at != nullptr ? at : window.get(), static_cast<Qt::Key>(key));
        wait();
    }
    [[nodiscard]] QVector<int> keys() const {
        QVector<int> all;
        for (const InboxSitting& sitting : inbox->sittings()) all += sitting.keys;
        return all;
    }
    [[nodiscard]] QStringList words() const {
        QStringList out;
        for (const QLabel* label : window->book()->page()->findChildren<QLabel*>())
            if (label->isVisible()) out.append(label->text());
        return out;
    }
    [[nodiscard]] QVector<Visit> visits(Id client) const {
        return read<QVector<Visit>>(book.path, [client](Book& b) { return work::list_visits(b, client); });
    }
    [[nodiscard]] QVector<work::PhotoRow> photos(Id visit) const {
        return read<QVector<work::PhotoRow>>(book.path, [visit](Book& b) { return work::list_photos(b, visit); });
    }
    void set_time(const QString& path, const QDateTime& time) const {
        QFile file(path);
        BOOST_REQUIRE(file.open(QIODevice::ReadWrite));
        BOOST_REQUIRE(file.setFileTime(time, QFileDevice::FileModificationTime));
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(new_photos, Tray)

BOOST_AUTO_TEST_CASE(photos_dropped_on_a_client_are_shown_first_and_taken_by_one_key_each) {
    go({Where::client, book.client});
    const QDateTime morning(QDate(2026, 6, 1), QTime(10, 0));
    const QStringList files{book.picture_file(1), book.picture_file(2)};
    for (const QString& file : files) set_time(file, morning);
    drop(files);
    BOOST_TEST((window->book()->place().where == Where::inbox));
    BOOST_TEST_REQUIRE(keys().size() == 2);
    BOOST_TEST(visits(book.client).size() == 2);  // nothing is in the record yet
    BOOST_TEST(words().join(' ').contains("Ada Holloway, a new visit of 1 June 2026"));
    BOOST_TEST(words().join(' ').contains("the time of the file"));
    auto* page = this->page<InboxPage>();
    // The last visit had the left temple only.
    BOOST_TEST((inbox->photo(keys()[0])->view == std::optional(View::left_temple)));
    page->row(keys()[0])->focus_first();
    key(Qt::Key_5);
    BOOST_TEST(page->row(keys()[0])->views()->chosen() == 4);
    key(Qt::Key_T);
    BOOST_TEST_REQUIRE(keys().size() == 1);
    key(Qt::Key_2);  // the keyboard has gone on to the next one
    key(Qt::Key_A);
    BOOST_TEST(keys().isEmpty());
    BOOST_TEST((window->book()->place().where == Where::visit));
    const auto all = visits(book.client);
    BOOST_TEST_REQUIRE(all.size() == 3);
    BOOST_TEST((all.last().date == morning.date()));
    const auto kept = photos(all.last().id);
    BOOST_TEST_REQUIRE(kept.size() == 2);
    BOOST_TEST((kept[0].photo.view == View::left_temple));
    BOOST_TEST((kept[1].photo.view == View::nape));
    for (const QString& file : files) BOOST_TEST(QFile::exists(file));
}

BOOST_AUTO_TEST_CASE(what_is_dropped_on_a_visit_goes_into_that_visit) {
    go({Where::visit, book.client, book.second_visit});
    drop({book.picture_file(1)});
    BOOST_TEST(words().join(' ').contains("visit of 4 May 2026: you put them there."));
    BOOST_TEST(words().join(' ').contains("taken on another day"));
    // The visit before had the left temple only: the one view that is missing.
    BOOST_TEST((inbox->photo(keys()[0])->view == std::optional(View::left_temple)));
    key(Qt::Key_A);
    BOOST_TEST(photos(book.second_visit).size() == 1);
    BOOST_TEST(visits(book.client).size() == 2);
}

BOOST_AUTO_TEST_CASE(what_is_in_the_book_already_is_told_with_whose_it_is) {
    go({Where::client, book.other});
    drop({book.picture_file(0)});
    BOOST_TEST(keys().isEmpty());
    bool told = false;
    for (const QAbstractButton* tile : page<InboxPage>()->findChildren<QAbstractButton*>())
        told = told ||
               tile->accessibleName() == "already in the record of Ada Holloway on 2 March 2026: left temple, shot 1";
    BOOST_TEST(told);
}

BOOST_AUTO_TEST_CASE(without_a_client_nothing_can_be_taken_until_she_is_named) {
    drop({book.picture_file(1)});
    BOOST_TEST(words().contains("Nothing tells whose they are."));
    auto* row = page<InboxPage>()->row(keys()[0]);
    row->focus_first();
    key(Qt::Key_6);
    BOOST_TEST(!row->take_button()->isEnabled());
    key(Qt::Key_C);
    auto* picker = window->findChild<ClientPicker*>();
    BOOST_TEST_REQUIRE(picker != nullptr);
    QTest::keyClicks(picker->list()->search(), "elo");
    QTest::keyClick(picker->list()->search(), Qt::Key_Return);
    window->activateWindow();
    BOOST_TEST(wait_until([this] { return window->isActiveWindow(); }));
    wait();
    BOOST_TEST(words().join(' ').contains("Élodie Marsh, a new visit of"), words().join('|').toStdString());
    key(Qt::Key_A);
    BOOST_TEST_REQUIRE(visits(book.other).size() == 1);
    BOOST_TEST((photos(visits(book.other).first().id).first().photo.view == View::lengths));
}

BOOST_AUTO_TEST_CASE(the_client_that_is_picked_goes_to_the_photos_that_were_asked_about_whatever_has_come_since) {
    const QString late = book.picture_file(1), early = book.picture_file(2);
    set_time(late, QDateTime(QDate(2026, 6, 1), QTime(15, 0)));
    set_time(early, QDateTime(QDate(2026, 6, 1), QTime(9, 0)));
    drop({late});
    BOOST_TEST_REQUIRE(keys().size() == 1);
    const int asked = keys()[0];
    page<InboxPage>()->ask_client(keys());
    auto* picker = window->findChild<ClientPicker*>();
    BOOST_TEST_REQUIRE(picker != nullptr);
    inbox->bring({early}, {});  // its sitting comes before the one that she is asked about
    wait();
    BOOST_TEST_REQUIRE(inbox->sittings().size() == 2);
    BOOST_TEST(inbox->sittings()[1].keys.contains(asked));
    emit picker->chosen(book.other);
    wait();
    for (const InboxSitting& sitting : inbox->sittings())
        BOOST_TEST(sitting.proposal.client == (sitting.keys.contains(asked) ? book.other : 0));
    picker->close();
}

BOOST_AUTO_TEST_CASE(all_are_those_that_are_shown) {
    go({Where::visit, book.client, book.second_visit});
    QStringList files;
    for (int i = 1; i <= 23; ++i) files.append(book.picture_file(i));
    drop(files);
    BOOST_TEST_REQUIRE(keys().size() == 23);
    for (const int key : keys()) inbox->choose_view(key, View::nape);
    wait();
    auto* page = this->page<InboxPage>();
    BOOST_TEST(page->take_all_button()->text().toStdString() == "Take the 20 sorted ones shown here (A)");
    QTest::keyClick(page, Qt::Key_A);
    wait();
    BOOST_TEST(photos(book.second_visit).size() == 20);
    BOOST_TEST(keys().size() == 3);
}

BOOST_AUTO_TEST_CASE(a_take_is_undone_from_the_tray_and_the_photos_go_to_another_client) {
    go({Where::client, book.client});
    drop({book.picture_file(1)});
    inbox->choose_view(keys()[0], View::nape);
    wait();
    key(Qt::Key_A);
    BOOST_TEST_REQUIRE(visits(book.client).size() == 3);
    BOOST_TEST((window->book()->place().where == Where::visit));
    go({Where::inbox});
    BOOST_TEST(words().join('|').contains("Taken last: 1 photo of Ada Holloway"), words().join('|').toStdString());
    QTest::keyClick(page<InboxPage>(), Qt::Key_Z, Qt::ControlModifier);
    wait();
    BOOST_TEST(visits(book.client).size() == 2);  // the visit that was opened for it is gone too
    BOOST_TEST_REQUIRE(keys().size() == 1);
    BOOST_TEST(!inbox->can_undo());
    BOOST_TEST((inbox->photo(keys()[0])->view == std::optional(View::nape)));
    inbox->choose_client(keys(), book.other);
    wait();
    inbox->take(keys());
    wait();
    BOOST_TEST(visits(book.other).size() == 1);
}

BOOST_AUTO_TEST_CASE(what_could_not_be_taken_stays_with_its_reason) {
    go({Where::visit, book.client, book.second_visit});
    const QString path = book.folder.filePath("changing.png");
    BOOST_REQUIRE(QFile::copy(book.picture_file(1), path));
    drop({path});
    inbox->choose_view(keys()[0], View::nape);
    BOOST_REQUIRE(QFile::remove(path));
    BOOST_REQUIRE(QFile::copy(book.picture_file(2), path));
    inbox->take(keys());
    wait();
    BOOST_TEST_REQUIRE(keys().size() == 1);
    BOOST_TEST(!inbox->photo(keys()[0])->trouble.isEmpty());
    BOOST_TEST(words().join('|').contains("It could not be taken:"), words().join('|').toStdString());
    BOOST_TEST(photos(book.second_visit).isEmpty());
}

BOOST_AUTO_TEST_CASE(a_photo_left_alone_does_not_come_again_unless_it_is_brought) {
    drop({book.picture_file(1), book.picture_file(2)});
    const int first = keys()[0];
    page<InboxPage>()->row(first)->focus_first();
    key(Qt::Key_L);
    BOOST_TEST(keys().size() == 1);
    BOOST_TEST(inbox->can_bring_back());
    inbox->bring_back_last();
    wait();
    BOOST_TEST(keys().size() == 2);
    inbox->leave(first);
    wait();
    // In the watched folder it stays out, in another window on the same book too.
    QSettings().setValue(QLatin1String(watched_folder_key), book.folder.path());
    MainWindow later(test::fake_open(analysis));
    later.show();
    later.open_book(book.path);
    BOOST_REQUIRE(wait_until([&] { return later.book() != nullptr; }));
    Inbox& again = Inbox::of(*later.session());
    BOOST_TEST(wait_until([&] { return again.waiting() == 1 && again.in_record().size() == 1 && again.settled(); }));
    QTest::qWait(50);
    BOOST_TEST(again.waiting() == 1);
}

BOOST_AUTO_TEST_CASE(the_watched_folder_waits_for_the_last_piece_and_is_left_as_it_is) {
    const QString folder = book.folder.filePath("phone");
    QDir().mkpath(folder);
    QFile whole(book.picture_file(3));
    BOOST_REQUIRE(whole.open(QIODevice::ReadOnly));
    const QByteArray bytes = whole.readAll();
    QSettings().setValue(QLatin1String(watched_folder_key), folder);
    QFile coming(folder + "/IMG_1.png");
    BOOST_REQUIRE(coming.open(QIODevice::WriteOnly));
    coming.write(bytes.left(bytes.size() / 2));
    coming.flush();
    go({Where::client, book.client});
    // Half of it stands still for longer than a file has to: it cannot be read, is not shown, and is no photo yet.
    BOOST_TEST(wait_until([this] { return !inbox->unreadable().isEmpty(); }));
    BOOST_TEST(inbox->waiting() == 0);
    coming.write(bytes.mid(bytes.size() / 2));
    coming.close();
    const QDateTime changed = QFileInfo(coming).lastModified();
    BOOST_TEST(wait_until([this] { return inbox->waiting() == 1 && inbox->settled(); }));
    BOOST_TEST(inbox->unreadable().isEmpty());
    BOOST_TEST_REQUIRE(inbox->sittings().size() == 1);
    BOOST_TEST(inbox->sittings()[0].proposal.client == book.client);  // her page is open, the photo is of today
    BOOST_TEST((inbox->sittings()[0].proposal.by == work::ProposedBy::open_client));
    go({Where::inbox});
    page<InboxPage>()->row(keys()[0])->focus_first();
    key(Qt::Key_4);
    key(Qt::Key_A);
    BOOST_TEST((visits(book.client).last().date == Clock().today()));
    BOOST_TEST(QDir(folder).entryList(QDir::Files).size() == 1);
    BOOST_TEST((QFileInfo(coming).lastModified() == changed));
    BOOST_TEST(QFileInfo(coming).size() == bytes.size());
}

BOOST_AUTO_TEST_CASE(a_watched_folder_that_is_gone_is_told_where_the_photos_would_be) {
    QSettings().setValue(QLatin1String(watched_folder_key), book.folder.filePath("nowhere"));
    go({Where::inbox});
    BOOST_TEST(wait_until([this] { return !inbox->folder_trouble().isEmpty(); }));
    QTest::qWait(30);
    BOOST_TEST(words().join(' ').contains("cannot be read"));
}

BOOST_AUTO_TEST_SUITE_END()
