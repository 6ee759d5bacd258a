#include "desk/window/main_window.h"

#include <QCloseEvent>
#include <QFileInfo>
#include <QSettings>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>

#include "desk/inbox/inbox.h"
#include "desk/look/icons.h"
#include "desk/look/look.h"
#include "desk/safe/backup_log.h"
#include "desk/safe/safe_dialog.h"
#include "desk/session/session.h"
#include "desk/settings/settings_dialog.h"
#include "desk/start/start_page.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"

namespace kempt::desk {
namespace {

constexpr int closing_step_ms = 40, closing_limit_ms = 15000;  // a reading under way takes a few seconds at most

}  // namespace

MainWindow::MainWindow(OpenFunction open, QWidget* parent)
    : QMainWindow(parent),
      open_(std::move(open)),
      text_scale_(look().choice().text_scale),
      inches_(look().length() == LengthUnit::inches),
      language_(spoken()) {
    setWindowTitle(tr("Kempt"));
    setWindowIcon(QIcon::fromTheme(QStringLiteral("kempt"), icon_of(Sign::hair)));
    stack_ = new QStackedWidget;
    setCentralWidget(stack_);
    make_start();
    setMinimumSize(640, 480);
    resize(1280, 800);
    restoreGeometry(QSettings().value("window/geometry").toByteArray());
    add_shortcuts();
    connect(&look(), &Look::changed, this, [this] {
        const bool inches = look().length() == LengthUnit::inches;
        if (text_scale_ == look().choice().text_scale && inches_ == inches && language_ == spoken()) return;
        language_ = spoken();
        text_scale_ = look().choice().text_scale;
        inches_ = inches;
        rebuild();
    });
}

MainWindow::~MainWindow() {
    // Before the session that they work with; one that a new text size or language has just replaced is still there.
    for (BookView* view : findChildren<BookView*>()) delete view;
    view_ = nullptr;
}

void MainWindow::make_start() {
    start_ = new StartPage;
    stack_->addWidget(start_);
    stack_->setCurrentWidget(start_);
    connect(start_, &StartPage::book_ready, this, &MainWindow::show_book);
    connect(start_, &StartPage::settings_asked, this, &MainWindow::show_settings);
    connect(start_, &StartPage::safe_keeping_asked, this, &MainWindow::show_safe_keeping);
}

void MainWindow::add_shortcuts() {
    const auto key = [this](const QKeySequence& keys, auto act) {
        auto* shortcut = new QShortcut(keys, this);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    key(QKeySequence(QStringLiteral("Ctrl+,")), [this] { show_settings(); });
    key(QKeySequence(QStringLiteral("Ctrl+B")), [this] { show_safe_keeping(); });
    key(QKeySequence::Quit, [this] { close(); });
    key(QKeySequence(Qt::ALT | Qt::Key_Left), [this] {
        if (view_) view_->back();
    });
    key(QKeySequence(Qt::Key_Back), [this] {
        if (view_) view_->back();
    });
    key(QKeySequence::Undo, [this] {
        if (view_) view_->undo();
    });
    // Of the system, and Ctrl+Shift+Z wherever that names another one alone.
    QList<QKeySequence> again = QKeySequence::keyBindings(QKeySequence::Redo);
    if (const QKeySequence usual(Qt::CTRL | Qt::SHIFT | Qt::Key_Z); !again.contains(usual)) again.append(usual);
    for (const QKeySequence& keys : again)
        key(keys, [this] {
            if (view_) view_->redo();
        });
    key(QKeySequence::Find, [this] {
        if (view_) view_->find_client();
    });
    key(QKeySequence::New, [this] {
        if (view_) view_->add_client();
    });
    key(QKeySequence::Open, [this] {
        if (view_) leave_book();
    });
}

void MainWindow::open_book(const QString& path) {
    start_->open_book(path);
}

void MainWindow::show_book(const QString& path) {
    delete view_;
    if (session_) retire(std::move(session_));
    session_ = std::make_unique<Session>(path, open_);
    view_ = new BookView(*session_);
    stack_->addWidget(view_);
    stack_->setCurrentWidget(view_);
    setWindowTitle(tr("%1 – Kempt").arg(QFileInfo(path).completeBaseName()));
    connect(view_, &BookView::settings_asked, this, &MainWindow::show_settings);
    connect(view_, &BookView::another_book_asked, this, &MainWindow::leave_book);
    if (const QString reminder = reminder_for(path, QDateTime::currentDateTime()); !reminder.isEmpty())
        view_->notice()->say(Notice::Tone::caution, reminder, tr("Back up now…"), [this] { show_safe_keeping(); });
}

// A book that is left goes on until what was entered is written.
void MainWindow::retire(std::shared_ptr<Session> session) {
    if (session->records().unfinished() == 0 && session->bench().unfinished() == 0) return;
    QTimer::singleShot(closing_step_ms, this, [this, session] { retire(session); });
}

void MainWindow::leave_book() {
    if (view_ == nullptr) return;
    view_->put_away([this] {
        // Not from within the page that is going away.
        QTimer::singleShot(0, this, [this] {
            start_->refresh();
            stack_->setCurrentWidget(start_);
            setWindowTitle(tr("Kempt"));
        });
    });
}

// A new text size, unit or language reaches every margin, figure and word: the pages are made anew, at the same place.
void MainWindow::rebuild() {
    const bool in_book = view_ != nullptr && stack_->currentWidget() == view_;
    if (!start_->busy()) {
        StartPage* old = start_;
        make_start();
        old->deleteLater();
    }
    if (view_ == nullptr) return;
    BookView* old_view = view_;
    const Place place = old_view->place();
    old_view->put_away([this, old_view, place, in_book] {
        view_ = new BookView(*session_);
        stack_->addWidget(view_);
        connect(view_, &BookView::settings_asked, this, &MainWindow::show_settings);
        connect(view_, &BookView::another_book_asked, this, &MainWindow::leave_book);
        if (in_book) stack_->setCurrentWidget(view_);
        view_->go(place);
        old_view->deleteLater();
    });
}

void MainWindow::show_settings() {
    auto* dialog = new SettingsDialog(session_.get(), this);
    connect(dialog, &SettingsDialog::safe_keeping_asked, this, &MainWindow::show_safe_keeping);
    connect(dialog, &SettingsDialog::watched_folder_changed, this, [this] {
        if (session_) Inbox::of(*session_).follow_settings();
    });
    dialog->open();
}

void MainWindow::show_safe_keeping() {
    auto* dialog = new SafeDialog(session_.get(), this);
    connect(dialog, &SafeDialog::open_asked, this, [this](const QString& book) {
        if (view_ == nullptr) return open_book(book);
        view_->put_away([this, book] { QTimer::singleShot(0, this, [this, book] { open_book(book); }); });
    });
    dialog->open();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    QSettings().setValue("window/geometry", saveGeometry());
    if (view_ == nullptr || kept_) return event->accept();
    event->ignore();
    view_->put_away([this] { QTimer::singleShot(0, this, [this] { close_when_kept(); }); });
}

// What was entered is written before the program ends; the window is out of the way meanwhile.
void MainWindow::close_when_kept() {
    hide();
    const bool busy = session_->records().unfinished() > 0 || session_->bench().unfinished() > 0;
    if (busy && waited_ms_ < closing_limit_ms) {
        waited_ms_ += closing_step_ms;
        QTimer::singleShot(closing_step_ms, this, [this] { close_when_kept(); });
        return;
    }
    kept_ = true;
    close();
    QCoreApplication::quit();
}

}  // namespace kempt::desk
