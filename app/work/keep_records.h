// Adding, listing, changing and erasing the records of a book. Every function is one transaction. Errors are always
// among not_found (the id), invalid (the sentence names the field) and io.
#pragma once

#include <QByteArray>
#include <QStringList>
#include <QVector>
#include <optional>

#include "core/result.h"
#include "domain/clock.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

// ---- clients -------------------------------------------------------------------------------------------------------
struct ClientRow {
    Client client;
    int visits = 0, photos = 0;
    std::optional<QDate> last_visit;
};
[[nodiscard]] Result<QVector<ClientRow>> list_clients(Book& book, const QString& search = {});  // by name; words of it
[[nodiscard]] Result<Client> client_of(Book& book, Id client);
[[nodiscard]] Result<Client> add_client(Book& book, Client client);
[[nodiscard]] Status change_client(Book& book, const Client& client);
// Erasure on request: the client with visits, photo bytes, marks, readings, services and targets, beyond recovery
// from the book file. Backups are the stylist's to erase; the sentence of the caller must say so.
[[nodiscard]] Status erase_client(Book& book, Id client);

// ---- visits --------------------------------------------------------------------------------------------------------
[[nodiscard]] Result<QVector<Visit>> list_visits(Book& book, Id client);  // by date
[[nodiscard]] Result<Visit> visit_of(Book& book, Id visit);
[[nodiscard]] Result<Visit> add_visit(Book& book, Visit visit);
[[nodiscard]] Status change_visit(Book& book, const Visit& visit);
[[nodiscard]] Status erase_visit(Book& book, Id visit);

// ---- photos --------------------------------------------------------------------------------------------------------
struct PhotoRow {
    PhotoRecord photo;  // with its thumbnail
    bool has_marks = false;
    QVector<ReadingRecord> readings;  // of the newest measuring, refused ones too
};
[[nodiscard]] Result<QVector<PhotoRow>> list_photos(Book& book, Id visit);  // by view, then shot
[[nodiscard]] Result<PhotoRow> photo_of(Book& book, Id photo);
[[nodiscard]] Result<QByteArray> photo_bytes(Book& book, Id photo);  // the original bytes
[[nodiscard]] Status erase_photo(Book& book, Id photo);
// Of the newest measuring of a photo, refused ones too; empty before it was measured.
[[nodiscard]] Result<QVector<ReadingRecord>> readings_of(Book& book, Id photo);

// ---- grades --------------------------------------------------------------------------------------------------------
[[nodiscard]] Result<QVector<Grade>> list_grades(Book& book, Id visit);
[[nodiscard]] Result<Grade> grade_of(Book& book, Id grade);
// Of one of grade_zones(), however it is typed: a place that the care rules do not know would count as the whole head.
[[nodiscard]] Result<Grade> add_grade(Book& book, Grade grade);
// Adds it, or replaces the value that the same zone, quality and round of that visit have.
[[nodiscard]] Result<Grade> set_grade(Book& book, Grade grade);
[[nodiscard]] Status erase_grade(Book& book, Id grade);

// ---- services ------------------------------------------------------------------------------------------------------
[[nodiscard]] Result<QVector<Service>> list_services(Book& book, Id client);  // by date
[[nodiscard]] Result<Service> service_of(Book& book, Id service);
// Of one of service_kinds(). One of a day that is still to come is added as planned; an added or changed one that is
// done on such a day is none (invalid, day-to-come).
[[nodiscard]] Result<Service> add_service(Book& book, Service service, QDate today = Clock().today());
[[nodiscard]] Status change_service(Book& book, const Service& service, QDate today = Clock().today());
// A planned one was done: on that day, else on the day for which it was planned, or today where that is still to come.
[[nodiscard]] Result<Service> mark_done(Book& book, Id service, const std::optional<QDate>& on = {},
                                        QDate today = Clock().today());
// The planned ones of a client whose day has passed. By date.
[[nodiscard]] Result<QVector<Service>> unanswered_services(Book& book, Id client, QDate today);
[[nodiscard]] Status erase_service(Book& book, Id service);

// ---- targets -------------------------------------------------------------------------------------------------------
[[nodiscard]] Result<QVector<Target>> list_targets(Book& book, Id client);
[[nodiscard]] Result<Target> target_of(Book& book, Id target);
// One target for each view and reading: a second one replaces the first.
[[nodiscard]] Result<Target> set_target(Book& book, Target target);
[[nodiscard]] Status erase_target(Book& book, Id target);

}  // namespace kempt::work
