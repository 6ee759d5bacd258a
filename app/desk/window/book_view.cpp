#include "desk/window/book_view.h"

#include <QDesktopServices>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMimeData>
#include <QProgressBar>
#include <QResizeEvent>
#include <QStackedWidget>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/camera/camera_page.h"
#include "desk/client/client_form.h"
#include "desk/client/client_list.h"
#include "desk/client/client_page.h"
#include "desk/compare/compare_page.h"
#include "desk/consultation/grades_page.h"
#include "desk/consultation/profile_page.h"
#include "desk/consultation/service_page.h"
#include "desk/inbox/inbox_page.h"
#include "desk/look/look.h"
#include "desk/photo/photo_page.h"
#include "desk/plan/plan_page.h"
#include "desk/report/report_page.h"
#include "desk/start/due_page.h"
#include "desk/translations/said.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/notice.h"
#include "desk/widgets/parts.h"
#include "desk/window/trail_bar.h"
#include "domain/clock.h"
#include "work/keep_records.h"

namespace kempt::desk {
namespace {

constexpr int most_behind = 50;     // places that "back" remembers
constexpr int busy_after_ms = 400;  // work that is done sooner is not worth a flicker
constexpr int busy_step_ms = 100;   // own choice: each step of the bar lays the strip out and paints at once

QStringList local_files(const QMimeData* mime) {
    QStringList paths;
    for (const QUrl& url : mime->urls())
        if (url.isLocalFile()) paths.append(url.toLocalFile());
    return paths;
}

}  // namespace

BookView::BookView(Session& session, QWidget* parent) : QWidget(parent), session_(session), inbox_(Inbox::of(session)) {
    setAcceptDrops(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    trail_ = new TrailBar(QFileInfo(session.book_path()).completeBaseName());
    notice_ = new Notice;
    column->addWidget(trail_);
    column->addWidget(notice_);
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    clients_ = new ClientList(session_);
    clients_->setFixedWidth(static_cast<int>(260 * measures().space));
    pages_ = new QStackedWidget;
    nobody_ = new DuePage(session_);
    connect(nobody_, &DuePage::go, this, &BookView::go);
    pages_->addWidget(nobody_);
    row->addWidget(clients_);
    row->addWidget(pages_, 1);
    column->addLayout(row, 1);
    busy_ = panel("side");
    auto* strip = new QHBoxLayout(busy_);
    strip->setContentsMargins(measures().gap(4), measures().gap(1), measures().gap(4), measures().gap(1));
    busy_words_ = text({}, "caption");
    busy_bar_ = new QProgressBar;
    busy_bar_->setRange(0, 1000);
    busy_bar_->setTextVisible(false);
    busy_bar_->setFixedWidth(measures().px(160));
    strip->addWidget(busy_words_, 1);
    strip->addWidget(busy_bar_);
    busy_->hide();
    drop_hint_ = panel("better");
    column_in(drop_hint_, 2, 0)
        ->addWidget(text(tr("Let go: the photos are sorted, and you say what is taken."), "lead"));
    drop_hint_->hide();
    column->addWidget(drop_hint_);
    column->addWidget(busy_);
    busy_pause_.setSingleShot(true);
    busy_pause_.setInterval(busy_after_ms);
    connect(&busy_pause_, &QTimer::timeout, busy_, &QWidget::show);
    busy_step_.setSingleShot(true);
    busy_step_.setInterval(busy_step_ms);
    connect(&busy_step_, &QTimer::timeout, this, [this] {
        busy_words_->setText(busy_now_.step.isEmpty() ? busy_now_.title
                                                      : tr("%1: %2").arg(busy_now_.title, said(busy_now_.step)));
        busy_bar_->setValue(static_cast<int>(busy_now_.fraction * 1000));
    });
    watch(session_.bench());

    connect(trail_, &TrailBar::back, this, &BookView::back);
    connect(trail_, &TrailBar::go, this, &BookView::go);
    connect(trail_, &TrailBar::undo_asked, this, &BookView::undo);
    connect(&session_.undo(), &Undo::changed, this, &BookView::show_undo);
    connect(trail_, &TrailBar::settings_asked, this, &BookView::settings_asked);
    connect(trail_, &TrailBar::another_book_asked, this, &BookView::another_book_asked);
    connect(trail_, &TrailBar::inbox_asked, this, [this] { go({Where::inbox}); });
    connect(&inbox_, &Inbox::rearranged, this, [this] { trail_->set_new_photos(inbox_.waiting()); });
    trail_->set_new_photos(inbox_.waiting());
    inbox_.follow_settings();
    connect(clients_, &ClientList::chosen, this, [this](Id id) { go({Where::client, id}); });
    connect(clients_, &ClientList::add_asked, this, &BookView::add_client);
    connect(&session_, &Session::trouble, this, [this](const QString& s) { notice_->say(Notice::Tone::trouble, s); });
    connect(&session_, &Session::news, this, [this](const QString& s) { notice_->say(Notice::Tone::news, s); });
    connect(&session_, &Session::made_file, this, [this](const QString& s, const QString& path) {
        notice_->say(Notice::Tone::news, s, tr("Open it"),
                     [path] { QDesktopServices::openUrl(QUrl::fromLocalFile(path)); });
    });
    trail_->set_back_possible(false);
}

void BookView::watch(jobs::JobRunner& runner) {
    connect(&runner, &jobs::JobRunner::job_progress, this,
            [this](const QString& title, double fraction, const QString& step) {
                busy_now_ = {title, step, fraction};
                if (!busy_step_.isActive()) busy_step_.start();
            });
    connect(&runner, &jobs::JobRunner::busy_changed, this, [this](bool busy) {
        if (busy) {
            busy_words_->setText(tr("Working"));
            busy_bar_->setValue(0);
            busy_pause_.start();
        } else {
            busy_step_.stop();
            busy_pause_.stop();
            busy_->hide();
        }
    });
}

Page* BookView::page() const {
    return qobject_cast<Page*>(pages_->currentWidget());
}

Page* BookView::page_for(Where where) {
    Page*& page = made_[static_cast<int>(where)];
    if (page != nullptr) return page;
    switch (where) {
        case Where::client:
            page = new ClientPage(session_);
            break;
        case Where::visit:
            page = new VisitPage(session_);
            break;
        case Where::photo:
            page = new PhotoPage(session_);
            break;
        case Where::compare:
            page = new ComparePage(session_);
            break;
        case Where::report:
            page = new ReportPage(session_);
            break;
        case Where::plan:
            page = new PlanPage(session_);
            break;
        case Where::service:
            page = new ServicePage(session_);
            break;
        case Where::grades:
            page = new GradesPage(session_);
            break;
        case Where::profile:
            page = new ProfilePage(session_);
            break;
        case Where::inbox:
            page = new InboxPage(session_);
            break;
        case Where::camera:
            page = new CameraPage(session_);
            break;
        case Where::nobody:
            return nullptr;
    }
    pages_->addWidget(page);
    connect(page, &Page::go, this, &BookView::go);
    connect(page, &Page::trail_changed, this, [this, page](const Trail& trail) {
        if (pages_->currentWidget() == page) trail_->show_trail(trail);
    });
    return page;
}

void BookView::put_away(std::function<void()> then) {
    if (Page* now = page())
        now->put_away(std::move(then));
    else
        then();
}

void BookView::go(const Place& place) {
    if (place == place_) return;
    notice_->hide();  // what putting the page away has to say comes after this
    put_away([this, self = QPointer<BookView>(this), place] {
        if (!self) return;
        behind_.append(place_);
        if (behind_.size() > most_behind) behind_.removeFirst();
        show_place(place);
    });
}

void BookView::back() {
    if (behind_.isEmpty()) return;
    notice_->hide();
    put_away([this, self = QPointer<BookView>(this)] {
        if (!self || behind_.isEmpty()) return;
        show_place(behind_.takeLast());
    });
}

void BookView::show_place(const Place& place) {
    place_ = place;
    inbox_.set_open(place);
    trail_->set_back_possible(!behind_.isEmpty());
    Page* page = page_for(place.where);
    clients_->pick(place.client);
    if (page == nullptr) {
        trail_->show_trail({});
        pages_->setCurrentWidget(nobody_);
    } else {
        pages_->setCurrentWidget(page);
        page->show_place(place);
    }
    show_undo();
    share_width();
}

void BookView::undo() {
    if (Page* now = page()) now->undo(place_);
}

void BookView::redo() {
    if (Page* now = page()) now->redo(place_);
}

void BookView::show_undo() {
    const Page* now = page();
    trail_->set_undo(now != nullptr ? now->undo_words(place_) : QString());
}

// Beside the page where both have room; alone where nobody is chosen and there is not.
void BookView::share_width() {
    const bool narrow = width() < clients_->width() + measures().px(560);
    const bool nobody = place_.where == Where::nobody;
    const Page* now = page();
    clients_->setVisible(nobody || (!narrow && now != nullptr && !now->wants_whole_width()));
}

void BookView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    share_width();
}

void BookView::dragEnterEvent(QDragEnterEvent* event) {
    if (local_files(event->mimeData()).isEmpty()) return;
    drop_hint_->show();
    event->acceptProposedAction();
}

void BookView::dragLeaveEvent(QDragLeaveEvent*) {
    drop_hint_->hide();
}

void BookView::dropEvent(QDropEvent* event) {
    drop_hint_->hide();
    const QStringList paths = local_files(event->mimeData());
    if (paths.isEmpty()) return;
    event->acceptProposedAction();
    inbox_.bring(paths, place_.where == Where::inbox ? Place{} : place_);
    go({Where::inbox});
}

void BookView::find_client() {
    if (!clients_->isVisible()) go({});
    clients_->focus_search();
}

void BookView::add_client() {
    auto* form = new ClientForm({}, Clock().today(), this);
    connect(form, &ClientForm::ready, this, [this](const Client& client) {
        session_.ask(
            session_.records(), tr("Adding a client"), this,
            [client](Book& book, const Progress&) { return work::add_client(book, client); },
            [this](const Client& kept) {
                session_.changed(kept.id, 0);
                go({Where::client, kept.id});
            });
    });
    form->open();
}

}  // namespace kempt::desk
