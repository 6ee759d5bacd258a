// What the tray proposes as view, and what she decides.
#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "desk/inbox/camera_files.h"
#include "desk/inbox/inbox.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "domain/words.h"
#include "work/sort_views.h"

namespace kempt::desk {

// One job a photo, so that each answer is shown as it comes. Views that the visit lacks are tried first.
void Inbox::recognise() {
    for (const InboxSitting& sitting : sittings_) {
        const Id client = sitting.proposal.client;
        for (const int key : sitting.keys) {
            InboxPhoto& one = photos_[key];
            if (one.view_by_hand || one.looked_for == client) continue;
            if (one.job) one.job->cancel();  // compared with somebody else's
            one.view.reset();
            one.view_why.clear();
            one.looking = false;
            one.looked_for = client;
            if (client == 0) continue;
            one.looking = true;
            work::RecogniseOptions options;
            options.path = one.photo.path;
            options.client = client;
            options.day = sitting.proposal.day;
            options.likely = sitting.missing;
            one.job = comparing_.start(
                tr("Looking which view it is"), this,
                [options](Book& book, const Progress& progress) {
                    return work::recognise_view(book, options, progress);
                },
                [this, key, client](Result<work::RecognisedView> found) {
                    const auto it = photos_.find(key);
                    if (it == photos_.end() || it->looked_for != client) return;
                    it->looking = false;
                    if (found.ok() && found->view && !it->view_by_hand) {
                        it->view = found->view;
                        it->view_why = found->residual_mm
                                           ? tr("The skin fits the photo of %1 to %2 mm.")
                                                 .arg(date_words(found->from_date))
                                                 .arg(QLocale().toString(*found->residual_mm, 'f', 1))
                                           : tr("It fits the photo of %1.").arg(date_words(found->from_date));
                    }
                    if (const InboxSitting* where = sitting_of(key)) recognised(*where);
                    emit photo_changed(key);
                });
        }
    }
}

// All of a sitting were compared: what is left of the views goes to what is left of the photos.
void Inbox::recognised(const InboxSitting& sitting) {
    QVector<std::optional<View>> views;
    for (const int key : sitting.keys) {
        const InboxPhoto& one = photos_[key];
        if (one.looking) return;
        views.append(one.view);
    }
    const auto filled = work::fill_last_view(views, sitting.missing);
    for (qsizetype i = 0; i < views.size(); ++i) {
        if (views[i] || !filled[i]) continue;
        InboxPhoto& one = photos_[sitting.keys[i]];
        one.view = filled[i];
        one.view_why = tr("The one view that is still missing.");
        emit photo_changed(one.key);
    }
}

// By key: sittings come, go and change places while she looks for the name.
void Inbox::choose_client(const QVector<int>& keys, Id client) {
    if (client == 0) return;
    for (const int key : keys)
        if (const auto it = photos_.find(key); it != photos_.end() && !it->taking) it->client_by_hand = client;
    arrange();
}

void Inbox::choose_view(int key, View view) {
    const auto it = photos_.find(key);
    if (it == photos_.end()) return;
    if (it->job) it->job->cancel();
    it->view = view;
    it->view_by_hand = true;
    it->view_why = tr("As you chose.");
    emit photo_changed(key);
}

bool Inbox::ready(int key) const {
    const InboxPhoto* one = photo(key);
    const InboxSitting* sitting = sitting_of(key);
    return one != nullptr && sitting != nullptr && !one->taking && one->view && sitting->proposal.client > 0;
}

void Inbox::take(const QVector<int>& keys) {
    for (const InboxSitting& sitting : sittings_) {
        work::TakeOptions options;
        options.client = sitting.proposal.client;
        options.visit = sitting.proposal.visit;
        options.day = sitting.proposal.day;
        QVector<int> taking;
        for (const int key : sitting.keys) {
            if (!keys.contains(key) || !ready(key)) continue;
            InboxPhoto& one = photos_[key];
            one.taking = true;
            one.trouble.clear();
            // A file that the camera page wrote was changed last when it was taken.
            const bool ours = one.photo.path.startsWith(camera_folder() + QLatin1Char('/'));
            options.photos.append(
                {one.photo.path, *one.view, one.photo.sha256, ours ? std::optional(one.photo.taken) : std::nullopt});
            taking.append(key);
            emit photo_changed(key);
        }
        if (taking.isEmpty()) continue;
        ++taking_;
        session_.bench().start(
            tr("Taking photos in"), this,
            [options](Book& book, const Progress& progress) { return work::take_sorted(book, options, progress); },
            [this, taking, into = sitting.proposal](Result<work::TakeReport> report) {
                --taking_;
                for (const int key : taking)
                    if (const auto it = photos_.find(key); it != photos_.end()) it->taking = false;
                if (!report.ok()) {
                    session_.tell(report.error());
                    arrange();
                    return;
                }
                took(taking, report.value(), into);
            });
    }
}

// What could not be taken stays, and says why.
void Inbox::took(const QVector<int>& keys, const work::TakeReport& report, const work::VisitProposal& into) {
    Take take{into, {report.visit, report.visit_opened, {}}, {}};
    QStringList errors;
    for (const work::ImportedFile& file : report.import.files) {
        const bool failed = file.what == work::ImportedFile::What::failed;
        if (failed) errors.append(said(file.error.sentence()));
        const bool ours = file.path.startsWith(camera_folder() + QLatin1Char('/'));
        if (!failed && ours) drop_camera_file(file.path);
        for (const int key : keys) {
            const auto it = photos_.find(key);
            if (it == photos_.end() || it->photo.path != file.path) continue;
            if (failed) {
                it->trouble = errors.last();
                continue;
            }
            if (file.what == work::ImportedFile::What::imported && !ours) {  // the camera's: no file is left
                take.back.photos.append({file.photo, file.path, it->photo.sha256});
                take.photos.append(*it);
            }
            remove(key);
        }
    }
    if (!take.photos.isEmpty()) takes_.append(take);
    if (report.import.imported > 0) {
        const QString words = tr("%1 taken into %2’s visit of %3.")
                                  .arg(counted(report.import.imported, tr("photo"), tr("photos")), into.client_name,
                                       date_words(into.day));
        emit session_.news(take.photos.isEmpty()
                               ? words
                               : words + QLatin1Char(' ') + tr("It can be undone under New photos (Ctrl+Z)."));
    }
    if (!errors.isEmpty()) emit session_.trouble(errors.join(QLatin1Char(' ')));
    session_.changed(report.client, report.visit);
    arrange();
    if (report.visit > 0) emit taken({Where::visit, report.client, report.visit});
}

QString Inbox::last_take() const {
    if (takes_.isEmpty()) return {};
    const Take& last = takes_.last();
    return tr("Taken last: %1 of %2, visit of %3.")
        .arg(counted(static_cast<int>(last.photos.size()), tr("photo"), tr("photos")), last.into.client_name,
             date_words(last.into.day));
}

void Inbox::undo_last_take() {
    if (!can_undo()) return;
    const Take last = takes_.last();
    undoing_ = true;
    ++taking_;
    session_.bench().start(
        tr("Undoing a take"), this,
        [back = last.back](Book& book, const Progress&) { return work::take_back(book, back); },
        [this, last](const Result<bool>& gone) {
            undoing_ = false;
            --taking_;
            if (!gone.ok()) {
                session_.tell(gone.error());
                emit rearranged();
                return;
            }
            takes_.removeLast();
            for (InboxPhoto one : last.photos) {
                one.job.reset();
                one.taking = one.looking = false;
                one.looked_for = 0;
                if (!known(one.photo.sha256)) photos_.insert(one.key, one);
            }
            session_.changed(last.into.client, last.back.visit);
            arrange();
        });
}

void Inbox::leave(int key) {
    const InboxPhoto* one = photo(key);
    if (one == nullptr || one->taking) return;
    InboxPhoto left = *one;
    left.job.reset();
    left.looking = false;
    left.looked_for = 0;
    left_.append(left);
    session_.ask(
        session_.records(), tr("Leaving a photo alone"), this,
        [sha = left.photo.sha256](Book& book, const Progress&) {
            return work::leave_alone(book, sha, Clock().today());
        },
        [](Done) {});
    remove(key);
    arrange();
}

void Inbox::bring_back_last() {
    if (left_.isEmpty()) return;
    const InboxPhoto back = left_.takeLast();
    session_.ask(
        session_.records(), tr("Bringing a photo back"), this,
        [sha = back.photo.sha256](Book& book, const Progress&) { return work::bring_back(book, sha); }, [](Done) {});
    photos_.insert(back.key, back);
    arrange();
}

QString Inbox::camera_folder() const {
    const QFileInfo book(session_.book_path());
    return book.absoluteDir().filePath(book.completeBaseName() + QStringLiteral(" camera"));
}

}  // namespace kempt::desk
