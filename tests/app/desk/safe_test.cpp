// Safe keeping by the window: a backup beside others, its check, and bringing it back as a new book; settings by
// subject.
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <boost/test/unit_test.hpp>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/safe/backup_log.h"
#include "desk/safe/safe_dialog.h"
#include "desk/session/session.h"
#include "desk/settings/section.h"
#include "desk/settings/settings_dialog.h"
#include "desk/settings/target_defaults.h"
#include "desk/start/start_page.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "room.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;

namespace {

struct Safe : test::Desk {
    Safe() {
        QSettings().clear();
        window->show_safe_keeping();
        dialog = window->findChild<SafeDialog*>();
        BOOST_REQUIRE(dialog != nullptr);
        QDir(book.folder.path()).mkdir("copies");
        folder = book.folder.filePath("copies");
    }
    ~Safe() { QSettings().clear(); }
    void finish() {
        BOOST_REQUIRE(test::wait_until([this] { return !dialog->busy(); }));
    }
    [[nodiscard]] QStringList copies() const { return QDir(folder).entryList(QDir::Files, QDir::Name); }
    QString make_one() {
        dialog->back_up_to(folder);
        finish();
        const auto made = last_backup(book.path);
        BOOST_REQUIRE(made.has_value());
        return made->file;
    }
    SafeDialog* dialog = nullptr;
    QString folder;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(safe_keeping, Safe)

BOOST_AUTO_TEST_CASE(a_backup_holds_the_book_and_is_remembered) {
    const QString file = make_one();
    BOOST_TEST(copies().size() == 1);
    BOOST_TEST(dialog->outcome().contains(file));
    const auto clients = test::read<QVector<work::ClientRow>>(file, [](Book& b) { return work::list_clients(b); });
    BOOST_TEST(clients.size() == 2);
    BOOST_TEST(last_backup_words(book.path).contains("today"));
}

BOOST_AUTO_TEST_CASE(a_second_backup_in_the_same_minute_leaves_the_first_one_alone) {
    const QString one = make_one(), other = make_one();
    BOOST_TEST(one != other);
    BOOST_TEST(copies().size() == 2);
}

BOOST_AUTO_TEST_CASE(a_folder_that_is_not_there_is_told_and_nothing_is_kept) {
    dialog->back_up_to(book.folder.filePath("nowhere"));
    finish();
    BOOST_TEST(!last_backup(book.path).has_value());
    BOOST_TEST(dialog->outcome().contains("no folder"));
    BOOST_TEST(dialog->outcome().contains("Choose another place"));
}

BOOST_AUTO_TEST_CASE(a_stopped_backup_leaves_no_file) {
    dialog->back_up_to(folder);
    dialog->stop();
    finish();
    BOOST_TEST(copies().isEmpty());
    BOOST_TEST(!last_backup(book.path).has_value());
    BOOST_TEST(dialog->outcome().contains("Stopped"));
}

BOOST_AUTO_TEST_CASE(a_sound_backup_is_found_sound_with_what_it_holds_and_stays_as_it_is) {
    const QString file = make_one();
    QFile before(file);
    BOOST_REQUIRE(before.open(QIODevice::ReadOnly));
    const QByteArray bytes = before.readAll();
    dialog->check(file);
    finish();
    BOOST_TEST(dialog->outcome().contains("sound"));
    BOOST_TEST(dialog->outcome().contains("2 clients, 2 visits, 1 photo"));
    QFile after(file);
    BOOST_REQUIRE(after.open(QIODevice::ReadOnly));
    BOOST_TEST((after.readAll() == bytes));
    BOOST_TEST(copies().size() == 1);  // nor does anything lie beside it
}

BOOST_AUTO_TEST_CASE(a_damaged_backup_is_told_and_not_brought_back) {
    const QString file = make_one();
    QFile damaged(file);
    BOOST_REQUIRE(damaged.open(QIODevice::ReadWrite));
    const qint64 whole = damaged.size();
    for (qint64 at = 8192; at < whole; at += 4096) {  // behind the first page, so that it still says what it is
        damaged.seek(at);
        damaged.write(QByteArray(64, '\x5a'));
    }
    damaged.close();
    dialog->check(file);
    finish();
    BOOST_TEST(!dialog->outcome().contains("This backup is sound"));
    BOOST_TEST(!dialog->outcome().isEmpty());
    const QString to = book.folder.filePath("back.kempt");
    dialog->bring_back(file, to);
    finish();
    BOOST_TEST(!QFile::exists(to));
    BOOST_TEST(dialog->outcome().contains("not brought back"));
}

BOOST_AUTO_TEST_CASE(a_backup_comes_back_as_a_new_book_which_can_be_opened) {
    const QString file = make_one(), to = book.folder.filePath("back.kempt");
    dialog->bring_back(file, to);
    finish();
    BOOST_TEST(QFile::exists(to));
    QTest::qWait(20);  // what was just laid out is shown in the next turn of the event loop
    QPushButton* open = nullptr;
    for (QPushButton* one : dialog->findChildren<QPushButton*>())
        if (one->isVisibleTo(dialog) && one->text() == "Open it") open = one;
    BOOST_TEST_REQUIRE(open != nullptr);
    open->click();
    BOOST_TEST(test::wait_until([&] { return window->session()->book_path() == to; }));
}

BOOST_AUTO_TEST_CASE(bringing_back_never_replaces_a_file_the_open_book_least_of_all) {
    const QString file = make_one();
    for (const QString& taken : {book.path, file}) {
        const qint64 size = QFileInfo(taken).size();
        dialog->bring_back(file, taken);
        finish();
        BOOST_TEST(dialog->outcome().contains("There already is a file"));
        BOOST_TEST(QFileInfo(taken).size() == size);
    }
    BOOST_TEST(book.marks_in_book(book.photo).has_value() == false);  // the book still answers
}

BOOST_AUTO_TEST_CASE(a_reminder_comes_after_the_days_that_were_chosen) {
    QSettings().clear();
    const QDateTime now(QDate(2026, 5, 20), QTime(9, 0));
    BOOST_TEST(reminder_for(book.path, now).isEmpty());  // seen for the first time
    BOOST_TEST(reminder_for(book.path, now.addDays(6)).isEmpty());
    BOOST_TEST(reminder_for(book.path, now.addDays(7)).contains("no backup"));
    remember_backup(book.path, {now.addDays(7), "x.kempt"});
    BOOST_TEST(reminder_for(book.path, now.addDays(13)).isEmpty());
    BOOST_TEST(reminder_for(book.path, now.addDays(16)).contains("9 days ago"));
    set_reminder_days(0);
    BOOST_TEST(reminder_for(book.path, now.addDays(500)).isEmpty());
}

BOOST_AUTO_TEST_CASE(the_reminder_stands_on_the_page_when_the_book_is_opened) {
    dialog->close();
    remember_backup(book.path, {QDateTime::currentDateTime().addDays(-8), "x.kempt"});
    window->open_book(book.path);
    BOOST_TEST(test::wait_until([this] { return window->book() != nullptr && window->book()->notice()->isVisible(); }));
    BOOST_TEST(window->book()->notice()->sentence().contains("8 days ago"));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_FIXTURE_TEST_SUITE(settings_by_subject, test::Desk)

BOOST_AUTO_TEST_CASE(one_subject_is_open_at_a_time_and_closed_ones_say_how_they_stand) {
    window->show_settings();
    auto* dialog = window->findChild<SettingsDialog*>();
    BOOST_TEST_REQUIRE(dialog != nullptr);
    for (Section* section : dialog->sections()) BOOST_TEST(!section->is_open());
    for (Section* section : dialog->sections()) {
        section->set_open(true);
        for (Section* other : dialog->sections()) BOOST_TEST(other->is_open() == (other == section));
    }
    dialog->close();
}

BOOST_AUTO_TEST_CASE(a_proposed_target_is_kept_and_dropped) {
    QSettings().clear();
    window->show_settings();
    auto* dialog = window->findChild<SettingsDialog*>();
    BOOST_TEST_REQUIRE(dialog != nullptr);
    NumberField* field = nullptr;
    for (NumberField* one : dialog->findChildren<NumberField*>())
        if (one->accessibleName() == "Proposed target: Edge coverage") field = one;
    BOOST_TEST_REQUIRE(field != nullptr);
    BOOST_TEST(!default_target("edge_coverage").has_value());
    field->setValue(80);
    BOOST_TEST(default_target("edge_coverage").value_or(0) == 80);
    field->setValue(field->minimum());
    BOOST_TEST(!default_target("edge_coverage").has_value());
    dialog->close();
}

BOOST_AUTO_TEST_CASE(the_language_that_was_chosen_is_kept) {
    LookChoice choice;
    choice.language = Language::spanish;
    store_look(choice);
    BOOST_TEST((stored_look().language == Language::spanish));
    choice.language = Language::system;
    store_look(choice);
    BOOST_TEST((stored_look().language == Language::system));
    QSettings().clear();
}

BOOST_AUTO_TEST_SUITE_END()
