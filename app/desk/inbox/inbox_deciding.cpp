// What the tray proposes as view, and what she decides.
#include <algorithm>

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
                                                 .arg(*found->residual_mm, 0, 'f', 1)
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
            [this, taking, name = sitting.proposal.client_name, day = options.day](Result<work::TakeReport> report) {
                --taking_;
                for (const int key : taking)
                    if (const auto it = photos_.find(key); it != photos_.end()) it->taking = false;
                if (!report.ok()) {
                    session_.tell(report.error());
                    arrange();
                    return;
                }
                const int count = report->import.imported;
                if (count > 0)
                    emit session_.news(tr("%1 taken into %2’s visit of %3.")
                                           .arg(counted(count, tr("photo"), tr("photos")), name, date_words(day)));
                took(taking, report.value());
            });
    }
}

void Inbox::took(const QVector<int>& keys, const work::TakeReport& report) {
    QStringList errors;
    for (const work::ImportedFile& file : report.import.files) {
        if (file.what == work::ImportedFile::What::failed)
            errors.append(said(file.error.sentence()));
        else if (file.path.startsWith(camera_folder() + QLatin1Char('/')))
            drop_camera_file(file.path);
        for (const int key : keys)
            if (const InboxPhoto* one = photo(key); one != nullptr && one->photo.path == file.path) remove(key);
    }
    if (!errors.isEmpty()) emit session_.trouble(errors.join(QLatin1Char(' ')));
    session_.changed(report.client, report.visit);
    arrange();
    if (report.visit > 0) emit taken({Where::visit, report.client, report.visit});
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

}  // namespace kempt::desk
