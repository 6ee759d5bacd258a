#include "work/keep_safe.h"

#include "book/backup.h"
#include "book/check.h"
#include "book/client_store.h"
#include "book/reading_store.h"
#include "book/visit_store.h"
#include "work/errors.h"

namespace kempt::work {

Result<CheckReport> check_book(Book& book, const Progress& progress) {
    const auto checked = check(book, progress);
    if (!checked) return checked.error();
    CheckReport report;
    report.sound = checked->sound();
    report.problems = checked->problems;
    report.unknown_words = checked->unknown;
    report.photos = checked->photos;
    const auto clients = store::list_clients(book);
    if (!clients) return report;  // the problems above say why
    report.clients = static_cast<int>(clients->size());
    for (const store::ClientRow& row : clients.value()) report.visits += row.visits;
    const auto names = store::reading_names(book);
    if (!names) return report;
    for (const store::ReadingName& name : names.value())
        if (const auto readings = store::readings_of_book(book, name.name); readings)
            report.readings += static_cast<int>(readings->size());
    return report;
}

Status backup_book(Book& book, const QString& to, const Progress& progress) {
    if (tell(progress, 0, "copying the book") == Go::stop) return stopped();
    if (const Status status = backup(book, to); !status) return status.error();
    tell(progress, 1, "the copy is complete");  // it stands: too late to stop
    return Done{};
}

Result<Restored> restore_book(const QString& from, const QString& book, const Progress& progress) {
    if (tell(progress, 0, "checking the backup") == Go::stop) return stopped();
    const auto kept = restore(from, book);
    if (!kept) return kept.error();
    tell(progress, 1, "the book is restored");
    return Restored{book, kept.value()};
}

}  // namespace kempt::work
