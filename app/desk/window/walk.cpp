#include "desk/window/walk.h"

#include <QApplication>
#include <QBuffer>
#include <QDialog>
#include <QDir>
#include <QMap>
#include <QPixmap>
#include <QSaveFile>
#include <QScrollArea>
#include <QScrollBar>
#include <QTextStream>
#include <algorithm>

#include "desk/client/client_list.h"
#include "desk/look/look.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/photo/readings_panel.h"
#include "desk/photo/strand_box.h"
#include "desk/photo/strand_list.h"
#include "desk/session/session.h"
#include "desk/settings/section.h"
#include "desk/settings/settings_dialog.h"
#include "desk/start/due_page.h"
#include "desk/start/start_page.h"
#include "desk/window/book_view.h"
#include "desk/window/main_window.h"
#include "desk/window/page.h"
#include "desk/window/walk_compare.h"
#include "desk/window/walk_consultation.h"
#include "desk/window/walk_photos.h"
#include "desk/window/walk_plan.h"
#include "work/keep_records.h"
#include "work/set_marks.h"

namespace kempt::desk {
namespace {

constexpr int poll_ms = 60, quiet_polls = 5, longest_ms = 120000, opening_limit_ms = 30000;
constexpr qsizetype largest_png = 120000;

// The places worth a picture: the client with most visits, her last visit, a marked photo of it, the same photo's page;
// a photo of each other kind of marks; then a client with a photo that the gate refused and one without visits, when
// there are such.
struct Sights {
    Place client, visit, photo, compare, report, refused, bare, plan;
    ConsultationSights consultation;
    PhotoSights photos;
    QMap<ReadingGroup, Place> measured;
};

// A photo whose marks ask for a group that has no picture yet.
Status look_for_groups(Book& book, const Place& photo, Sights& sights) {
    const auto marks = work::marks_of(book, photo.photo);
    if (!marks.ok()) return marks.error();
    if (marks.value())
        for (const ReadingGroup group : groups_asked_by(*marks.value()))
            if (!sights.measured.contains(group)) sights.measured.insert(group, photo);
    return Done{};
}

Result<Sights> sights(Book& book) {
    Sights s;
    auto clients = work::list_clients(book);
    if (!clients.ok()) return clients.error();
    int most = -1;
    for (const work::ClientRow& row : clients.value()) {
        auto visits = work::list_visits(book, row.client.id);
        if (!visits.ok()) return visits.error();
        if (row.visits == 0) s.bare = {Where::client, row.client.id};
        const bool best = row.visits > most;
        if (best) {
            most = row.visits;
            s.client = {Where::client, row.client.id};
            s.compare = {Where::compare, row.client.id};
            s.report = {Where::report, row.client.id};
        }
        for (const Visit& visit : visits.value()) {
            auto photos = work::list_photos(book, visit.id);
            if (!photos.ok()) return photos.error();
            if (best) s.visit = {Where::visit, row.client.id, visit.id};
            for (const work::PhotoRow& photo : photos.value()) {
                const Place here{Where::photo, row.client.id, visit.id, photo.photo.id, photo.photo.view};
                if (best && photo.has_marks && photo.photo.shot == 1) s.photo = here;
                if (photo.has_marks && photo.photo.quality_level != "refused")
                    if (const Status looked = look_for_groups(book, here, s); !looked) return looked.error();
                if (photo.photo.quality_level == "refused") s.refused = {Where::visit, row.client.id, visit.id};
            }
        }
    }
    const auto plan = plan_sight(book);
    if (!plan) return plan.error();
    s.plan = *plan;
    const auto consultation = consultation_sights(book);
    if (!consultation) return consultation.error();
    s.consultation = *consultation;
    const auto photos = photo_sights(book, s.visit, s.refused);
    if (!photos) return photos.error();
    s.photos = *photos;
    return s;
}

// PNG, or JPEG where that would be large: a window that is mostly a photo. The pictures are kept with the sources.
bool keep(const QPixmap& picture, const QString& stem) {
    QByteArray png;
    QBuffer buffer(&png);
    if (!buffer.open(QIODevice::WriteOnly) || !picture.save(&buffer, "PNG", 0)) return false;
    if (png.size() > largest_png) return picture.save(stem + QStringLiteral(".jpg"), "JPG", 90);
    QSaveFile file(stem + QStringLiteral(".png"));
    return file.open(QIODevice::WriteOnly) && file.write(png) == png.size() && file.commit();
}

}  // namespace

Walk::Walk(MainWindow& window, const QString& book, const QString& folder, QSize size, QObject* parent)
    : QObject(parent), window_(window), book_(book), folder_(folder) {
    ending_ = QStringLiteral("-%1x%2").arg(size.width()).arg(size.height());
    if (look().choice().text_scale > 1.001)
        ending_ += QStringLiteral("-%1").arg(qRound(look().choice().text_scale * 100));
    if (look().choice().dark) ending_ += QStringLiteral("-dark");
    if (spoken() != Language::english) ending_ += QLatin1Char('-') + code_of(spoken());
    poll_.setInterval(poll_ms);
    connect(&poll_, &QTimer::timeout, this, &Walk::wait_then_grab);
}

void Walk::begin() {
    QDir().mkpath(folder_);
    const auto whole = [this]() -> QWidget* { return &window_; };
    steps_.append({QStringLiteral("start"), [] {}, whole});
    next();
}

bool Walk::settled() const {
    BookView* view = window_.book();
    if (view == nullptr) return true;
    Session& s = *window_.session();
    return view->clients()->settled() && view->due()->settled() &&
           (view->page() == nullptr || view->page()->settled()) && s.records().unfinished() == 0 &&
           s.bench().unfinished() == 0 && s.live().unfinished() == 0;
}

void Walk::next() {
    ++at_;
    if (at_ == 1 && steps_.size() == 1) return plan();
    if (at_ >= steps_.size()) {
        emit done(failed_ == 0 ? 0 : 1);
        return;
    }
    if (at_ > 0 && !steps_[at_].name.isEmpty() && !steps_[at_].name.startsWith(only_)) return next();
    steps_[at_].act();
    quiet_ = waited_ = 0;
    poll_.start();
}

void Walk::plan() {
    if (window_.book() == nullptr) {
        connect(window_.start(), &StartPage::book_ready, this, &Walk::plan, Qt::QueuedConnection);
        window_.open_book(book_);
        QTimer::singleShot(opening_limit_ms, this, [this] {
            if (window_.book() == nullptr) emit done(1);
        });
        return;
    }
    window_.session()->records().start(
        QStringLiteral("sights"), this, [](Book& book, const Progress&) { return sights(book); },
        [this](Result<Sights> result) {
            if (!result.ok()) {
                QTextStream(stderr) << QString::fromStdString(result.error().sentence()) << '\n';
                emit done(1);
                return;
            }
            const Sights s = result.value();
            const auto whole = [this]() -> QWidget* { return &window_; };
            const auto dialog = []() -> QWidget* { return QApplication::activeModalWidget(); };
            const auto to = [this](const Place& place) { return [this, place] { window_.book()->go(place); }; };
            steps_.append({QStringLiteral("clients"), [] {}, whole});
            const auto lower = [this] {
                if (window_.book()->page() == nullptr) return;  // the step before was left out
                for (QScrollArea* area : window_.book()->page()->findChildren<QScrollArea*>())
                    area->verticalScrollBar()->setValue(area->verticalScrollBar()->maximum());
            };
            steps_.append({QStringLiteral("client"), to(s.client), whole});
            steps_.append({QStringLiteral("client-lower"), lower, whole});
            steps_.append({QStringLiteral("visit"), to(s.visit), whole});
            steps_.append({QStringLiteral("visit-lower"), lower, whole});
            if (s.refused.visit > 0) steps_.append({QStringLiteral("visit-refused"), to(s.refused), whole});
            if (s.photo.photo > 0) {
                steps_.append({QStringLiteral("photo"), to(s.photo), whole});
                steps_.append({QStringLiteral("photo-cover"),
                               [this] {
                                   if (auto* page = qobject_cast<PhotoPage*>(window_.book()->page()))
                                       page->set_overlay_shown(true);
                               },
                               whole});
                steps_.append({QStringLiteral("photo-near"),
                               [this] {
                                   auto* page = qobject_cast<PhotoPage*>(window_.book()->page());
                                   if (page == nullptr) return;
                                   page->set_overlay_shown(false);
                                   QKeyEvent key(QEvent::KeyPress, Qt::Key_N, Qt::NoModifier);
                                   page->canvas()->setFocus();
                                   for (int i = 0; i < 3; ++i) QApplication::sendEvent(page->canvas(), &key);
                                   page->canvas()->zoom_by(2.5);
                               },
                               whole});
            }
            const QVector<QPair<ReadingGroup, QString>> kinds = {
                {ReadingGroup::shine, QStringLiteral("photo-lengths")},
                {ReadingGroup::ends, QStringLiteral("photo-ends")},
                {ReadingGroup::combings, QStringLiteral("photo-comb-out")},
                {ReadingGroup::pattern, QStringLiteral("photo-pattern")}};
            for (const auto& [group, name] : kinds) {
                if (!s.measured.contains(group)) continue;
                steps_.append({name, to(s.measured[group]), whole});
                if (group == ReadingGroup::shine || group == ReadingGroup::combings)
                    steps_.append({name + QStringLiteral("-lower"),
                                   [this, lower, group = group] {
                                       lower();
                                       auto* page = qobject_cast<PhotoPage*>(window_.book()->page());
                                       if (page == nullptr) return;
                                       if (StrandBox* box = page->readings()->strands(group))
                                           box->list()->setCurrentRow(2);
                                   },
                                   whole});
            }
            if (s.plan.client > 0)
                for (const PlanStep& step : plan_steps(window_, s.plan)) steps_.append({step.name, step.act, whole});
            for (const PlanStep& step : consultation_steps(window_, s.consultation))
                steps_.append({step.name, step.act, whole});
            for (const PlanStep& step : photo_steps(window_, s.photos)) steps_.append({step.name, step.act, whole});
            for (const PlanStep& step : compare_steps(window_, s.compare) + report_steps(window_, s.report))
                steps_.append({step.name, step.act, whole});
            if (s.bare.client > 0) steps_.append({QStringLiteral("client-without-visits"), to(s.bare), whole});
            steps_.append({QStringLiteral("settings"), [this] { window_.show_settings(); }, dialog});
            const auto open_section = [](qsizetype index) {
                return [index] {
                    if (auto* open = qobject_cast<SettingsDialog*>(QApplication::activeModalWidget()))
                        open->sections().value(index)->set_open(true);
                };
            };
            for (const auto& [name, index] : {QPair<const char*, qsizetype>{"settings-look", 0},
                                              {"settings-language", 1},
                                              {"settings-targets", 2},
                                              {"settings-photos", 3},
                                              {"settings-paper", 4},
                                              {"settings-safe", 5}})
                steps_.append({QString::fromLatin1(name), open_section(index), dialog});
            steps_.append({QStringLiteral("safe-keeping"),
                           [this] {
                               if (QWidget* open = QApplication::activeModalWidget()) open->close();
                               window_.show_safe_keeping();
                           },
                           dialog});
            steps_.append({QStringLiteral("new-client"),
                           [this] {
                               if (QWidget* open = QApplication::activeModalWidget()) open->close();
                               window_.book()->add_client();
                           },
                           dialog});
            --at_;
            next();
        });
}

void Walk::wait_then_grab() {
    waited_ += poll_ms;
    quiet_ = settled() ? quiet_ + 1 : 0;
    if (quiet_ < quiet_polls && waited_ < longest_ms) return;
    poll_.stop();
    const Step& step = steps_[at_];
    if (step.name.isEmpty()) return next();
    QWidget* shown = step.shown();
    if (shown == nullptr || !keep(shown->grab(), folder_ + QLatin1Char('/') + step.name + ending_)) {
        ++failed_;
        QTextStream(stderr) << "No picture of " << step.name << '\n';
    }
    next();
}

}  // namespace kempt::desk
