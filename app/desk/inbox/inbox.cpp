#include "desk/inbox/inbox.h"

#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <algorithm>

#include "desk/inbox/camera_files.h"
#include "desk/translations/said.h"
#include "domain/clock.h"
#include "work/import_photos.h"
#include "work/sort_views.h"

namespace kempt::desk {
namespace {

// The watcher tells at once on most disks; the poll is for those that tell nothing (network, phone mounts), and to see
// whether a file stands still.
constexpr int poll_ms = 5000, poll_while_waiting_ms = 500;
constexpr int arrange_after_ms = 120;  // several files that come together are sorted together

}  // namespace

// Both workers give way to the windows.
Inbox::Inbox(Session& session)
    : QObject(&session),
      session_(session),
      reading_(session.book_path(), nullptr, jobs::JobRunner::Pace::behind),
      comparing_(session.book_path(), nullptr, jobs::JobRunner::Pace::behind) {
    clock_.start();
    poll_.setInterval(poll_ms);
    connect(&poll_, &QTimer::timeout, this, &Inbox::look_round);
    connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, &Inbox::look_round);
    arrange_pause_.setSingleShot(true);
    arrange_pause_.setInterval(arrange_after_ms);
    connect(&arrange_pause_, &QTimer::timeout, this, &Inbox::arrange);
}

Inbox& Inbox::of(Session& session) {
    auto* inbox = session.findChild<Inbox*>({}, Qt::FindDirectChildrenOnly);
    return inbox != nullptr ? *inbox : *new Inbox(session);
}

void Inbox::follow_settings() {
    following_ = true;
    poll_.start();
    look_round();
    if (left_overs_asked_) return;
    left_overs_asked_ = true;
    for (const QFileInfo& file : QDir(camera_folder()).entryInfoList(work::picture_endings(), QDir::Files, QDir::Name))
        look_at(file.absoluteFilePath(), false, {});
}

// ---- the watched folder --------------------------------------------------------------------------------------------

void Inbox::look_round() {
    if (!following_ || listing_) return;
    const QString wanted = QSettings().value(QLatin1String(watched_folder_key)).toString();
    if (wanted != folder_) {
        if (!watcher_.directories().isEmpty()) watcher_.removePaths(watcher_.directories());
        folder_ = wanted;
        settled_files_.forget();
        older_ = 0;
        all_ages_ = false;
        folder_trouble_.clear();
        emit rearranged();
    }
    if (folder_.isEmpty()) return;
    listing_ = true;
    const QDateTime since = all_ages_ ? QDateTime() : QDateTime::currentDateTime().addDays(-work::watched_days);
    reading_.start_without_book(
        tr("Looking into the watched folder"), this,
        [folder = folder_, since](const Progress&) { return work::look_into_folder(folder, since); },
        [this, folder = folder_](Result<work::FolderLook> look) {
            listing_ = false;
            if (folder == folder_) seen(look);
        });
}

void Inbox::seen(const Result<work::FolderLook>& look) {
    const QString trouble = look.ok() ? QString() : said(look.error().sentence());
    const bool told_anew = trouble != folder_trouble_ || (look.ok() && look->older != older_);
    folder_trouble_ = trouble;
    if (look.ok()) {
        if (watcher_.directories().isEmpty()) watcher_.addPath(folder_);
        older_ = look->older;
        for (const QString& path : settled_files_.settled(look->files, clock_.elapsed())) look_at(path, false, {});
    }
    poll_.setInterval(settled_files_.waiting() ? poll_while_waiting_ms : poll_ms);
    if (told_anew) emit rearranged();
}

void Inbox::look_at_older() {
    all_ages_ = true;
    look_round();
}

// ---- coming in -----------------------------------------------------------------------------------------------------

void Inbox::set_open(const Place& place) {
    if (place.where == Where::inbox) return;
    const bool other = place.client != open_.client || place.visit != open_.visit;
    open_ = place;
    if (other && !photos_.isEmpty()) arrange_soon();
}

void Inbox::bring(const QStringList& paths, const Place& on) {
    ++reading_now_;
    reading_.start_without_book(
        tr("Looking at the files"), this,
        [paths](const Progress&) -> Result<QStringList> { return work::picture_files_of(paths); },
        [this, on](Result<QStringList> files) {
            --reading_now_;
            if (!files.ok()) return session_.tell(files.error());
            if (files->isEmpty()) emit session_.trouble(tr("There is no picture among what was dropped or chosen."));
            for (const QString& path : files.value()) look_at(path, true, on);
            emit rearranged();
        });
}

void Inbox::look_at(const QString& path, bool by_hand, const Place& on) {
    ++reading_now_;
    reading_.start(
        tr("Looking at a new photo"), this,
        [path](Book& book, const Progress&) { return work::look_at_incoming(book, path); },
        [this, path, by_hand, on](Result<work::IncomingPhoto> looked) {
            --reading_now_;
            if (looked.ok()) {
                unreadable_.remove(path);
                add(looked.value(), by_hand, on);
            } else if (looked.error().kind != ErrorKind::cancelled) {
                unreadable_.insert(path, said(looked.error().sentence()));
            }
            if (reading_now_ == 0) emit rearranged();
        });
}

bool Inbox::known(const QString& sha256) const {
    return std::any_of(photos_.begin(), photos_.end(),
                       [&](const InboxPhoto& one) { return one.photo.sha256 == sha256; });
}

void Inbox::add(const work::IncomingPhoto& photo, bool by_hand, const Place& on) {
    const bool by_camera = photo.path.startsWith(camera_folder() + QLatin1Char('/'));
    if (photo.in_record && by_camera) return drop_camera_file(photo.path);  // kept just before the window closed
    if (photo.in_record) {
        const bool told = std::any_of(in_record_.begin(), in_record_.end(),
                                      [&](const work::IncomingPhoto& one) { return one.sha256 == photo.sha256; });
        if (!told) in_record_.append(photo);
        return;
    }
    // What she left alone comes again only when she brings it herself.
    if (known(photo.sha256) || (photo.left_before && !by_hand)) return;
    InboxPhoto one;
    one.key = next_key_++;
    one.photo = photo;
    one.put_on = on;
    one.by_hand = by_hand;
    if (by_camera) one.view = view_of_camera_file(photo.path);
    if (one.view) {
        one.view_by_hand = true;
        one.view_why = tr("The view that it was taken for.");
    }
    photos_.insert(one.key, one);
    arrange_soon();
}

QStringList Inbox::unreadable() const {
    QStringList out;
    for (auto it = unreadable_.begin(); it != unreadable_.end(); ++it)
        out.append(tr("%1: %2").arg(QFileInfo(it.key()).fileName(), it.value()));
    out.sort();
    return out;
}

void Inbox::put_away_told() {
    in_record_.clear();
    unreadable_.clear();
    emit rearranged();
}

// ---- sorting -------------------------------------------------------------------------------------------------------

void Inbox::arrange_soon() {
    if (!arrange_pause_.isActive()) arrange_pause_.start();
}

namespace {

struct Asked {
    work::SittingTimes times;
    work::SortContext context;
    Id client_by_hand = 0;
};
struct Answered {
    work::VisitProposal proposal;
    QVector<View> missing;
};

Result<QVector<Answered>> answers_to(Book& book, const QVector<Asked>& all) {
    QVector<Answered> out;
    for (const Asked& asked : all) {
        const auto proposal = asked.client_by_hand > 0 ? work::visit_of_day(book, asked.client_by_hand, asked.times.day)
                                                       : work::propose_visit(book, asked.times, asked.context);
        if (!proposal.ok() && proposal.error().kind == ErrorKind::not_found) {  // erased meanwhile: she says whose
            out.append(Answered{{0, {}, 0, asked.times.day, work::ProposedBy::nothing}, {}});
            continue;
        }
        if (!proposal.ok()) return proposal.error();
        Answered answer{proposal.value(), {}};
        if (answer.proposal.client > 0) {
            const auto missing =
                work::views_missing(book, answer.proposal.client, answer.proposal.visit, answer.proposal.day);
            if (!missing.ok()) return missing.error();
            answer.missing = missing.value();
        }
        out.append(answer);
    }
    return out;
}

}  // namespace

// Photos that were put on the same place, or given to the same client, are sorted among themselves.
void Inbox::arrange() {
    const QDate today = Clock().today();
    QMap<std::tuple<Id, Id, Id, bool>, QVector<int>> heaps;
    for (const InboxPhoto& one : photos_)
        heaps[{one.client_by_hand, one.put_on.client, one.put_on.visit, one.put_on.where != Where::nobody}].append(
            one.key);
    QVector<InboxSitting> sittings;
    QVector<Asked> asked;
    for (auto heap = heaps.begin(); heap != heaps.end(); ++heap) {
        std::sort(heap->begin(), heap->end());
        QVector<QDateTime> taken;
        for (const int key : *heap) taken.append(photos_[key].photo.taken);
        const InboxPhoto& first = photos_[heap->first()];
        const bool put = first.put_on.client > 0;
        for (const QVector<int>& places : work::sittings_of(taken)) {
            InboxSitting sitting;
            for (const int place : places) sitting.keys.append(heap->at(place));
            sitting.from = taken[places.first()];
            sitting.to = taken[places.last()];
            sitting.day = photos_[sitting.keys.first()].photo.day(today);
            const bool of_files = std::any_of(sitting.keys.begin(), sitting.keys.end(), [this](int key) {
                return photos_[key].photo.from == work::TakenFrom::file;
            });
            asked.append(
                {{sitting.from, sitting.to, sitting.day, of_files},
                 {put ? first.put_on.client : open_.client, put ? first.put_on.visit : open_.visit, put, today},
                 first.client_by_hand});
            sittings.append(sitting);
        }
    }
    const int generation = ++generation_;
    ++arranging_;
    session_.records().start(
        tr("Sorting new photos"), this, [asked](Book& book, const Progress&) { return answers_to(book, asked); },
        [this, generation, sittings, asked](Result<QVector<Answered>> answers) mutable {
            --arranging_;
            if (generation != generation_) return;  // a newer one is under way
            for (qsizetype i = 0; i < sittings.size(); ++i) {
                if (!answers.ok()) {
                    sittings[i].proposal.day = sittings[i].day;
                    continue;
                }
                sittings[i].proposal = answers.value()[i].proposal;
                sittings[i].missing = answers.value()[i].missing;
            }
            if (!answers.ok()) session_.tell(answers.error());
            std::stable_sort(sittings.begin(), sittings.end(),
                             [](const InboxSitting& a, const InboxSitting& b) { return a.from < b.from; });
            sittings_ = sittings;
            recognise();
            emit rearranged();
        });
}

const InboxPhoto* Inbox::photo(int key) const {
    const auto it = photos_.constFind(key);
    return it == photos_.constEnd() ? nullptr : &*it;
}

const InboxSitting* Inbox::sitting_of(int key) const {
    for (const InboxSitting& sitting : sittings_)
        if (sitting.keys.contains(key)) return &sitting;
    return nullptr;
}

bool Inbox::settled() const {
    return reading_now_ == 0 && arranging_ == 0 && taking_ == 0 && !arrange_pause_.isActive() &&
           std::none_of(photos_.begin(), photos_.end(), [](const InboxPhoto& one) { return one.looking; });
}

void Inbox::remove(int key) {
    const auto it = photos_.find(key);
    if (it == photos_.end()) return;
    if (it->job) it->job->cancel();
    photos_.erase(it);
    for (InboxSitting& sitting : sittings_) sitting.keys.removeAll(key);
    sittings_.removeIf([](const InboxSitting& sitting) { return sitting.keys.isEmpty(); });
}

}  // namespace kempt::desk
