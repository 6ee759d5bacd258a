#include "desk/safe/safe_dialog.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QProgressBar>
#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/safe/backup_log.h"
#include "desk/session/session.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

constexpr auto folder_key = "safe/folder";

QString last_folder() {
    return QSettings().value(QLatin1String(folder_key)).toString();
}

}  // namespace

SafeDialog::SafeDialog(Session* session, QWidget* parent) : QDialog(parent), session_(session) {
    setWindowTitle(tr("Safe keeping"));
    setAttribute(Qt::WA_DeleteOnClose);
    build();
    const int width = measures().px(560), wanted = measures().px(600);
    resize(parent != nullptr ? std::min(width, parent->width() - measures().gap(6)) : width,
           parent != nullptr ? std::min(wanted, parent->height() - measures().gap(6)) : wanted);
    tell_last();
}

void SafeDialog::build() {
    auto* whole = column_in(this, 0, 0);
    auto* inside = new QWidget;
    auto* column = column_in(inside, 5, 3);
    whole->addWidget(scroll_area(inside), 1);
    column->addWidget(text(tr("Safe keeping"), "heading"));
    acts_ = new QWidget;
    auto* acts = column_in(acts_, 0, 3);
    const auto part = [acts](const QString& head, const QString& words, QPushButton* act, QLabel* more = nullptr) {
        auto* box = panel("surface");
        auto* lines = column_in(box, 4, 2);
        lines->addWidget(text(head, "lead"));
        if (more != nullptr) lines->addWidget(more);
        lines->addWidget(text(words, "caption"));
        lines->addWidget(act, 0, Qt::AlignLeft);
        acts->addWidget(box);
    };
    if (session_ != nullptr) {
        auto* make = button(tr("Back up to a folder…"), "primary", Sign::folder);
        connect(make, &QPushButton::clicked, this, [this] {
            auto* dialog = new QFileDialog(this, tr("The folder for the backup"), last_folder());
            dialog->setAttribute(Qt::WA_DeleteOnClose);
            dialog->setFileMode(QFileDialog::Directory);
            dialog->setOption(QFileDialog::ShowDirsOnly);
            connect(dialog, &QFileDialog::fileSelected, this, &SafeDialog::back_up_to);
            dialog->open();
        });
        last_ = text({}, "strong");
        part(
            tr("Backup"),
            tr("A whole copy of the book with every photo, made while it stays open, and read back at once. On another "
               "disk it also outlives this computer. Whoever has the copy can read it: keep it as you keep the book."),
            make, last_);
    }
    auto* look = button(tr("Check a backup…"), "", Sign::search);
    connect(look, &QPushButton::clicked, this,
            [this] { choose_backup(tr("The backup to check"), [this](const QString& file) { check(file); }); });
    part(tr("Is a backup sound?"),
         tr("Reads all of it through, every photo against its fingerprint. The backup is only read."), look);
    auto* back = button(tr("Bring a backup back…"), "", Sign::undo);
    connect(back, &QPushButton::clicked, this, [this] {
        choose_backup(tr("The backup to bring back"), [this](const QString& file) { choose_new_book(file); });
    });
    part(tr("Bring a backup back"),
         tr("It becomes a new book under a name that you choose. No book that is there already is replaced, the open "
            "one "
            "neither."),
         back);
    column->addWidget(acts_);
    busy_ = panel("sunken");
    auto* waiting = column_in(busy_, 4, 2);
    busy_words_ = text({}, "strong");
    bar_ = new QProgressBar;
    bar_->setRange(0, 1000);
    bar_->setTextVisible(false);
    bar_->setAccessibleName(tr("How far the work is"));
    stop_ = button(tr("Stop"));
    waiting->addWidget(busy_words_);
    waiting->addWidget(bar_);
    waiting->addWidget(stop_, 0, Qt::AlignLeft);
    connect(stop_, &QPushButton::clicked, this, &SafeDialog::stop);
    busy_->hide();
    column->addWidget(busy_);
    auto* place = new QWidget;
    result_place_ = column_in(place, 0, 0);
    column->addWidget(place);
    column->addStretch();
    auto* foot = new QWidget;
    auto* close = button(tr("Done"));
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    column_in(foot, 3, 0)->addWidget(close, 0, Qt::AlignRight);
    whole->addWidget(foot);
}

jobs::JobRunner& SafeDialog::runner() {
    return session_ != nullptr ? session_->bench() : own_;
}

void SafeDialog::tell_last() {
    if (last_ == nullptr) return;
    const auto made = last_backup(session_->book_path());
    QString words = beginning(last_backup_words(session_->book_path())) + QLatin1Char('.');
    if (made) words = tr("Last one: %1").arg(words);
    if (made && !QFileInfo::exists(made->file))
        words += QLatin1Char(' ') + tr("It is not there any more, or its disk is not connected: %1").arg(made->file);
    else if (made)
        words += QLatin1Char(' ') + made->file;
    last_->setText(words);
}

void SafeDialog::choose_backup(const QString& title, std::function<void(const QString&)> then) {
    auto* dialog = new QFileDialog(this, title, last_folder());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::ExistingFile);
    dialog->setNameFilter(tr("Kempt books (*.kempt);;All files (*)"));
    connect(dialog, &QFileDialog::fileSelected, this, std::move(then));
    dialog->open();
}

void SafeDialog::choose_new_book(const QString& backup) {
    auto* dialog = new QFileDialog(this, tr("Name of the new book"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setOption(
        QFileDialog::DontConfirmOverwrite);  // nothing is ever overwritten: a name that is taken is refused
    dialog->setNameFilter(tr("Kempt books (*.kempt);;All files (*)"));
    dialog->setDefaultSuffix(QStringLiteral("kempt"));
    dialog->selectFile(tr("brought back.kempt"));
    connect(dialog, &QFileDialog::fileSelected, this, [this, backup](const QString& to) { bring_back(backup, to); });
    dialog->open();
}

void SafeDialog::begin(const QString& words) {
    empty_layout(result_place_);
    result_ = nullptr;
    acts_->setEnabled(false);
    busy_words_->setText(words);
    bar_->setValue(0);
    stop_->setEnabled(true);
    busy_->show();
    stop_->setFocus();
}

void SafeDialog::end() {
    job_.reset();
    busy_->hide();
    acts_->setEnabled(true);
    tell_last();
    if (leaving_) QDialog::done(Accepted);
}

void SafeDialog::stop() {
    if (!job_) return;
    job_->cancel();
    stop_->setEnabled(false);
    busy_words_->setText(tr("Stopping: what was begun is taken away again"));
}

void SafeDialog::done(int result) {
    if (!job_) return QDialog::done(result);
    leaving_ = true;
    stop();
}

void SafeDialog::back_up_to(const QString& folder) {
    if (session_ == nullptr || job_) return;
    QSettings().setValue(QLatin1String(folder_key), folder);
    const QDateTime now = QDateTime::currentDateTime();
    begin(tr("Copying the book"));
    const CopyOptions options{session_->book_path(), folder, backup_name(session_->book_path(), now)};
    job_ = session_->bench().start(
        tr("Backup"), this,
        [options](Book& book, const Progress& progress) { return make_backup(book, options, progress); },
        [this, now](Result<QString> made) {
            if (made.ok()) {
                remember_backup(session_->book_path(), {now, made.value()});
                say("better", tr("The backup is made and was read back."), {made.value()});
            } else if (made.error().kind == ErrorKind::cancelled) {
                say("plain", tr("Stopped. No copy was kept; the book is as it was."), {});
            } else {
                tell_error(tr("No backup was made"), made.error());
            }
            end();
        },
        [this](double share, const QString&) { bar_->setValue(static_cast<int>(share * 1000)); });
}

void SafeDialog::check(const QString& file) {
    if (job_) return;
    begin(tr("Reading the backup through"));
    job_ = runner().start_without_book(
        tr("Checking a backup"), this, [file](const Progress& progress) { return check_backup(file, progress); },
        [this, file](Result<CheckedBackup> checked) {
            if (!checked.ok()) {
                if (checked.error().kind == ErrorKind::cancelled)
                    say("plain", tr("Stopped. The backup was not touched."), {});
                else
                    tell_error(tr("This backup cannot be used"), checked.error());
            } else if (checked->sound) {
                say("better", tr("This backup is sound."),
                    {tr("%1, %2, %3, %4.")
                         .arg(counted(checked->clients, tr("client"), tr("clients")),
                              counted(checked->visits, tr("visit"), tr("visits")),
                              counted(checked->photos, tr("photo"), tr("photos")),
                              counted(checked->readings, tr("reading"), tr("readings"))),
                     file});
            } else {
                say("worse", tr("This backup is damaged."),
                    {tr("The first of what was found (%1): %2")
                         .arg(checked->problems)
                         .arg(said(checked->first_problem)),
                     tr("It was not touched. Make a new backup of the book, on another disk.")});
            }
            end();
        },
        [this](double share, const QString&) { bar_->setValue(static_cast<int>(share * 1000)); });
}

void SafeDialog::bring_back(const QString& file, const QString& to) {
    if (job_) return;
    begin(tr("Checking the backup and bringing it back"));
    bar_->setRange(0, 0);  // one piece of work, of which nothing is told on the way
    stop_->setEnabled(false);
    job_ = runner().start_without_book(
        tr("Bringing a backup back"), this,
        [file, to](const Progress& progress) { return restore_backup(file, to, progress); },
        [this](Result<QString> restored) {
            bar_->setRange(0, 1000);
            if (restored.ok()) {
                restored_ = restored.value();
                say("better", tr("The backup stands as a new book."), {restored_});
                auto* open = button(tr("Open it"));
                connect(open, &QPushButton::clicked, this, [this] {
                    const QString book = restored_;
                    accept();
                    emit open_asked(book);
                });
                result_place_->addWidget(open, 0, Qt::AlignLeft);
            } else if (restored.error().kind != ErrorKind::cancelled) {
                tell_error(tr("The backup was not brought back"), restored.error());
            }
            end();
        });
}

void SafeDialog::say(const char* tone, const QString& head, const QStringList& lines) {
    empty_layout(result_place_);
    auto* box = panel(tone);
    auto* column = column_in(box, 4, 1);
    column->addWidget(text(head, "lead"));
    for (const QString& line : lines) column->addWidget(text(line));
    box->setAccessibleName((QStringList{head} + lines).join(QLatin1Char(' ')));
    result_ = box;
    result_place_->addWidget(box);
}

// What happened, what was kept, what to do: each in a line of its own.
void SafeDialog::tell_error(const QString& head, const Error& error) {
    QStringList lines{said(error.what)};
    if (!error.kept.empty()) lines.append(said(error.kept));
    if (!error.remedy.empty()) lines.append(said(error.remedy));
    say("worse", head, lines);
}

QString SafeDialog::outcome() const {
    return result_ != nullptr ? result_->accessibleName() : QString();
}

}  // namespace kempt::desk
