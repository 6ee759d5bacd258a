#include "desk/start/start_page.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QProgressBar>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/start/recent_books.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/fringe_bar.h"
#include "desk/widgets/notice.h"
#include "desk/widgets/parts.h"
#include "work/make_demo.h"
#include "work/open_book.h"

namespace kempt::desk {

QString demo_folder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/demo");
}

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
    setProperty("page", true);
    setAttribute(Qt::WA_StyledBackground);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    notice_ = new Notice;
    outer->addWidget(notice_);
    auto* inside = new QWidget;
    outer->addWidget(scroll_area(inside));
    auto* centre = new QHBoxLayout(inside);
    auto* middle = new QWidget;
    middle->setMaximumWidth(measures().px(780));
    centre->addStretch(1);
    centre->addWidget(middle, 8);
    centre->addStretch(1);
    auto* column = column_in(middle, 6, 4);
    column->addStretch(1);
    auto* name = text(tr("Kempt"), "title");
    name->setStyleSheet(QStringLiteral("font-size: %1px").arg(measures().px(44)));
    column->addWidget(name);
    auto* fringe = new FringeBar;
    fringe->set_share(0.72);
    fringe->setAccessibleName(tr("A row of strands coming back, for decoration"));
    column->addWidget(fringe);
    column->addWidget(text(tr("Dated, calibrated photographs of hair that is coming back:\nwhat it is like today, and "
                              "whether the change is real."),
                           "soft"));

    acts_ = new QWidget;
    auto* acts = column_in(acts_, 0, 3);
    auto* row = new FlowLayout(measures().gap(2));
    auto* open = button(tr("Open a book…"), "primary", Sign::book);
    auto* fresh = button(tr("Start a new book…"), "", Sign::add);
    auto* demo = button(tr("Look round in the demo"));
    auto* settings = button(tr("Settings"), "quiet", Sign::settings);
    auto* safe = button(tr("Bring a backup back…"), "quiet", Sign::undo);
    for (QWidget* w : std::initializer_list<QWidget*>{open, fresh, demo, settings, safe}) row->addWidget(w);
    connect(safe, &QPushButton::clicked, this, &StartPage::safe_keeping_asked);
    acts->addLayout(row);
    recent_ = new QVBoxLayout;
    recent_->setSpacing(measures().gap(1));
    acts->addLayout(recent_);
    column->addWidget(acts_);
    busy_ = new QWidget;
    auto* waiting = column_in(busy_, 0, 2);
    busy_words_ = text({});
    bar_ = new QProgressBar;
    bar_->setRange(0, 1000);
    bar_->setTextVisible(false);
    auto* stop = button(tr("Stop"));
    waiting->addWidget(busy_words_);
    waiting->addWidget(bar_);
    waiting->addWidget(stop, 0, Qt::AlignLeft);
    column->addWidget(busy_);
    column->addStretch(2);
    busy_->hide();
    connect(open, &QPushButton::clicked, this, [this] { choose(false); });
    connect(fresh, &QPushButton::clicked, this, [this] { choose(true); });
    connect(demo, &QPushButton::clicked, this, [this] { open_demo(demo_folder()); });
    connect(settings, &QPushButton::clicked, this, &StartPage::settings_asked);
    connect(stop, &QPushButton::clicked, this, [this] {
        if (job_) job_->cancel();
    });
    refresh();
}

void StartPage::refresh() {
    empty_layout(recent_);
    QStringList books = recent_books();
    books.removeIf([](const QString& path) { return !QFileInfo::exists(path); });  // a drive that is not plugged in
    if (!books.isEmpty()) recent_->addWidget(text(tr("Opened lately"), "lead"));
    for (const QString& path : books) {
        const QFileInfo file(path);
        auto* b = button(file.completeBaseName(), "quiet", Sign::book);
        b->setToolTip(path);
        b->setAccessibleName(tr("Open the book %1").arg(path));
        recent_->addWidget(b, 0, Qt::AlignLeft);
        connect(b, &QPushButton::clicked, this, [this, path] { open_book(path); });
    }
}

void StartPage::choose(bool fresh) {
    auto* dialog = new QFileDialog(this, fresh ? tr("Start a new book") : tr("Open a book"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setNameFilter(tr("Kempt books (*.kempt);;All files (*)"));
    if (fresh) {
        dialog->setAcceptMode(QFileDialog::AcceptSave);
        dialog->setDefaultSuffix(QStringLiteral("kempt"));
        dialog->selectFile(tr("my clients.kempt"));
    } else {
        dialog->setFileMode(QFileDialog::ExistingFile);
    }
    connect(dialog, &QFileDialog::fileSelected, this, [this, fresh](const QString& path) {
        if (fresh)
            create_book(path);
        else
            open_book(path);
    });
    dialog->open();
}

void StartPage::set_busy(bool busy, const QString& words) {
    busy_words_->setText(words);
    busy_->setVisible(busy);
    acts_->setEnabled(!busy);
}

void StartPage::open_book(const QString& path) {
    set_busy(true, tr("Opening %1").arg(QFileInfo(path).fileName()));
    job_ = runner_.start_without_book(
        tr("Opening the book"), this,
        [path](const Progress&) -> Status {
            auto book = work::open_book(path);
            if (!book.ok()) return book.error();
            return Done{};
        },
        [this, path](Status result) {
            set_busy(false, {});
            if (result.ok()) {
                remember_book(path);
                emit book_ready(path);
                return;
            }
            if (result.error().kind == ErrorKind::not_found) forget_book(path);
            refresh();
            notice_->say(Notice::Tone::trouble, said(result.error().sentence()));
        });
}

void StartPage::create_book(const QString& path) {
    set_busy(true, tr("Making %1").arg(QFileInfo(path).fileName()));
    job_ = runner_.start_without_book(
        tr("Making the book"), this,
        [path](const Progress&) -> Status {
            auto book = work::create_book(path);
            if (!book.ok()) return book.error();
            return Done{};
        },
        [this, path](Status result) {
            set_busy(false, {});
            if (!result.ok()) return notice_->say(Notice::Tone::trouble, said(result.error().sentence()));
            remember_book(path);
            emit book_ready(path);
        });
}

void StartPage::open_demo(const QString& folder) {
    const QStringList made = QDir(folder).entryList({QStringLiteral("*.kempt")}, QDir::Files);
    if (!made.isEmpty()) return open_book(folder + QLatin1Char('/') + made.first());
    // Filled beside its place and moved there when it is whole: a demo that was stopped half-way is never opened.
    work::DemoOptions options;
    options.out = folder + QStringLiteral(".filling");
    set_busy(true, tr("Filling the demo's book: photos are taken in and measured once"));
    job_ = runner_.start_without_book(
        tr("Filling the demo"), this,
        [options, folder](const Progress& progress) -> Result<QString> {
            auto demo = work::make_demo(options, progress);
            if (!demo.ok()) return demo.error();
            QDir(folder).removeRecursively();
            if (!QDir().rename(options.out, folder))
                return Error{ErrorKind::io, "demo-not-moved", "The demo could not be put into its place.",
                             "It is kept in " + options.out.toStdString() + ".", "Open its book from there."};
            return folder + QLatin1Char('/') + QFileInfo(demo->book).fileName();
        },
        [this](Result<QString> book) {
            set_busy(false, {});
            if (book.ok())
                emit book_ready(book.value());
            else if (book.error().kind != ErrorKind::cancelled)
                notice_->say(Notice::Tone::trouble, said(book.error().sentence()));
        },
        [this](double fraction, const QString& step) {
            bar_->setValue(static_cast<int>(fraction * 1000));
            busy_words_->setText(tr("Filling the demo's book: %1").arg(said(step)));
        });
}

}  // namespace kempt::desk
