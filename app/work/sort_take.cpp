#include "work/sort_take.h"

#include <QCryptographicHash>
#include <algorithm>

#include "book/transaction.h"
#include "work/errors.h"
#include "work/keep_records.h"
#include "work/sort_sittings.h"

namespace kempt::work {

namespace {

Result<TakeReport> take_into(Book& book, Id visit, const TakeOptions& options, const Progress& progress) {
    TakeReport report;
    report.client = options.client;
    report.visit = visit;
    QVector<View> views;
    for (const SortedPhoto& photo : options.photos)
        if (!views.contains(photo.view)) views.append(photo.view);
    for (qsizetype i = 0; i < views.size(); ++i) {
        ImportOptions into;
        into.visit = visit;
        into.view = views[i];
        into.limits = options.limits;
        for (const SortedPhoto& photo : options.photos) {
            if (photo.view != views[i]) continue;
            into.paths.append(photo.path);
            into.as_seen.insert(photo.path, {photo.sha256, photo.taken});
        }
        const double step = 1.0 / static_cast<double>(views.size());
        auto part = import_photos(
            book, into, part_of(progress, step * static_cast<double>(i), step * (static_cast<double>(i) + 1)));
        if (!part) {
            if (part.error().kind == ErrorKind::cancelled && report.import.imported > 0)
                return stopped(std::to_string(report.import.imported) + " photos and more were kept before that.");
            return part.error();
        }
        report.import.imported += part->imported;
        report.import.duplicates += part->duplicates;
        report.import.failed += part->failed;
        report.import.files.insert(report.import.files.end(), part->files.begin(), part->files.end());
    }
    return report;
}

bool same_bytes(const TakenPhoto& one) {
    const auto bytes = intake::read_file(one.path, {});
    return bytes && one.sha256 == QString::fromLatin1(
                                      QCryptographicHash::hash(bytes.value(), QCryptographicHash::Sha256).toHex());
}

// No photo, grade, service or word in it.
Result<bool> is_bare(Book& book, Id id) {
    const auto visit = visit_of(book, id);
    if (!visit) return visit.error();
    const auto photos = list_photos(book, id);
    if (!photos) return photos.error();
    const auto grades = list_grades(book, id);
    if (!grades) return grades.error();
    const auto services = list_services(book, visit->client);
    if (!services) return services.error();
    const bool served = std::any_of(services->begin(), services->end(),
                                    [id](const Service& one) { return one.visit == std::optional(id); });
    return photos->isEmpty() && grades->isEmpty() && !served && visit->note.isEmpty() && visit->hair == HairState{};
}

}  // namespace

Result<TakeReport> take_sorted(Book& book, const TakeOptions& options, const Progress& progress) {
    if (options.photos.isEmpty()) return missing("no-pictures", "There is no photo to take in.");
    Id visit = options.visit;
    bool opened = false;
    if (visit > 0) {
        const auto known = visit_of(book, visit);
        if (!known) return known.error();
        if (known->client != options.client)
            return invalid("other-client", "This visit belongs to another client.", "Choose one of her own visits.");
    } else {
        const auto of_day = visit_of_day(book, options.client, options.day);
        if (!of_day) return of_day.error();
        visit = of_day->visit;
        if (visit == 0) {
            Visit made;
            made.client = options.client;
            made.date = options.day;
            const auto kept = add_visit(book, made);
            if (!kept) return kept.error();
            visit = kept->id;
            opened = true;
        }
    }
    auto report = take_into(book, visit, options, progress);
    const auto photos = list_photos(book, visit);
    const bool bare = opened && photos.ok() && photos->isEmpty();
    if (bare)
        if (const Status gone = erase_visit(book, visit); !gone) return gone.error();
    if (!report) return report.error();
    report->visit_opened = opened && !bare;
    if (bare) report->visit = 0;
    return report;
}

Result<bool> take_back(Book& book, const TakenBack& taken) {
    // The files are read before the book is held: reading many photos takes seconds.
    QVector<Id> lost;
    for (const TakenPhoto& one : taken.photos)
        if (!same_bytes(one)) lost.append(one.photo);
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    for (const TakenPhoto& one : taken.photos) {
        const auto kept = photo_of(book, one.photo);
        if (!kept && kept.error().kind == ErrorKind::not_found) continue;
        if (!kept) return kept.error();
        if (kept->has_marks)
            return Error{ErrorKind::refused, "worked-on", "Marks have been drawn on one of these photos since.",
                         "The photos stay in the record.", "Erase those that do not belong there on the visit's page."};
        if (lost.contains(one.photo))
            return Error{ErrorKind::refused, "only-copy",
                         "The file of one of these photos is gone or changed: the book has the only copy.",
                         "The photos stay in the record.", "Save the photo first, then erase it on the visit's page."};
        if (const Status gone = erase_photo(book, one.photo); !gone) return gone.error();
    }
    bool visit_gone = false;
    if (taken.visit_opened) {
        const auto bare = is_bare(book, taken.visit);
        if (!bare && bare.error().kind != ErrorKind::not_found) return bare.error();
        visit_gone = !bare || bare.value();
        if (bare && bare.value())
            if (const Status gone = erase_visit(book, taken.visit); !gone) return gone.error();
    }
    if (const Status done = transaction->commit(); !done) return done.error();
    return visit_gone;
}

}  // namespace kempt::work
