#include "work/keep_records.h"

#include "book/client_store.h"
#include "book/grade_store.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/service_store.h"
#include "book/target_store.h"
#include "book/transaction.h"
#include "book/visit_store.h"
#include "domain/words.h"
#include "work/care_state.h"
#include "work/errors.h"
#include "work/face_keep.h"
#include "work/plan_draft.h"

namespace kempt::work {

namespace {

// The record with the id that the store gave it.
template <class Record>
Result<Record> kept(Record record, const Result<Id>& id) {
    if (!id) return id.error();
    record.id = id.value();
    return record;
}

// The care rules know these kinds only, and a service that they do not see would speak against nothing.
Status known_kind(const Service& service) {
    if (service_kinds().contains(service.kind)) return Done{};
    return invalid("unknown-kind", "There is no kind of service called '" + service.kind.toStdString() + "'.",
                   "Kinds: " + service_kinds().join(QStringLiteral(", ")).toStdString() + ".");
}

// In the words of the list.
Status name_zone(Grade& grade) {
    if (grade.zone.trimmed().isEmpty()) return Done{};  // the book says what is missing
    const auto zone = grade_zone_from_word(grade.zone);
    if (!zone)
        return invalid("unknown-zone", "There is no zone of the hair called '" + grade.zone.toStdString() + "'.",
                       "Zones: " + grade_zones().join(QStringLiteral(", ")).toStdString() + ".");
    grade.zone = *zone;
    return Done{};
}

Result<PhotoRow> row_of(Book& book, PhotoRecord photo) {
    PhotoRow row;
    const auto marks = store::latest_marks(book, photo.id);
    if (!marks) return marks.error();
    const auto readings = store::latest_readings(book, photo.id);
    if (!readings) return readings.error();
    row.photo = std::move(photo);
    row.has_marks = marks->has_value();
    row.readings = readings.value();
    return row;
}

}  // namespace

Result<QVector<ClientRow>> list_clients(Book& book, const QString& search) {
    const auto stored = store::list_clients(book, search);
    if (!stored) return stored.error();
    QVector<ClientRow> rows;
    for (const store::ClientRow& row : stored.value())
        rows.push_back({row.client, row.visits, row.photos, row.last_visit});
    return rows;
}

Result<Client> client_of(Book& book, Id client) {
    return store::get_client(book, client);
}

Result<Client> add_client(Book& book, Client client) {
    if (client.photo_consent && !client.consent_on) client.consent_on = client.since;
    return kept(client, store::add_client(book, client));
}

Status change_client(Book& book, const Client& client) {
    return store::update_client(book, client);
}
Status erase_client(Book& book, Id client) {
    if (const Status erased = store::erase_client(book, client); !erased) return erased;
    if (const Status forgotten = forget_lost_faces(book); !forgotten) return forgotten;
    return forget_plan_draft(book, client);  // no row of hers, and the next client may get her number
}

Result<QVector<Visit>> list_visits(Book& book, Id client) {
    const auto known = store::get_client(book, client);
    if (!known) return known.error();
    return store::visits_of_client(book, client);
}

Result<Visit> visit_of(Book& book, Id visit) {
    return store::get_visit(book, visit);
}
Result<Visit> add_visit(Book& book, Visit visit) {
    return kept(visit, store::add_visit(book, visit));
}
Status change_visit(Book& book, const Visit& visit) {
    return store::update_visit(book, visit);
}
Status erase_visit(Book& book, Id visit) {
    if (const Status erased = store::erase_visit(book, visit); !erased) return erased;
    return forget_lost_faces(book);
}

Result<QVector<PhotoRow>> list_photos(Book& book, Id visit) {
    const auto known = store::get_visit(book, visit);
    if (!known) return known.error();
    const auto photos = store::photos_of_visit(book, visit);
    if (!photos) return photos.error();
    QVector<PhotoRow> rows;
    for (const PhotoRecord& photo : photos.value()) {
        auto row = row_of(book, photo);
        if (!row) return row.error();
        rows.push_back(std::move(row).value());
    }
    return rows;
}

Result<PhotoRow> photo_of(Book& book, Id photo) {
    auto record = store::get_photo(book, photo);
    if (!record) return record.error();
    return row_of(book, std::move(record).value());
}

Result<QByteArray> photo_bytes(Book& book, Id photo) {
    return store::photo_bytes(book, photo);
}
Status erase_photo(Book& book, Id photo) {
    if (const Status erased = store::erase_photo(book, photo); !erased) return erased;
    return forget_lost_faces(book);
}

Result<QVector<ReadingRecord>> readings_of(Book& book, Id photo) {
    const auto record = store::get_photo(book, photo);
    if (!record) return record.error();
    return store::latest_readings(book, photo);
}

Result<QVector<Grade>> list_grades(Book& book, Id visit) {
    const auto known = store::get_visit(book, visit);
    if (!known) return known.error();
    return store::grades_of_visit(book, visit);
}

Result<Grade> grade_of(Book& book, Id grade) {
    return store::get_grade(book, grade);
}

Result<Grade> add_grade(Book& book, Grade grade) {
    if (!grade_qualities().contains(grade.quality))
        return invalid("unknown-quality", "There is no grade for '" + grade.quality.toStdString() + "'.",
                       "Grades are given for: " + grade_qualities().join(QStringLiteral(", ")).toStdString() + ".");
    if (const Status named = name_zone(grade); !named) return named.error();
    return kept(grade, store::add_grade(book, grade));
}

Result<Grade> set_grade(Book& book, Grade grade) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    const auto there = list_grades(book, grade.visit);
    if (!there) return there.error();
    for (const Grade& one : *there) {
        if (one.zone != grade.zone || one.quality != grade.quality || one.round != grade.round) continue;
        grade.id = one.id;
        if (const Status changed = store::update_grade(book, grade); !changed) return changed.error();
        if (const Status done = transaction->commit(); !done) return done.error();
        return grade;
    }
    auto added = add_grade(book, grade);
    if (!added) return added.error();
    if (const Status done = transaction->commit(); !done) return done.error();
    return added;
}

Status erase_grade(Book& book, Id grade) {
    return store::erase_grade(book, grade);
}

Result<QVector<Service>> list_services(Book& book, Id client) {
    const auto known = store::get_client(book, client);
    if (!known) return known.error();
    return store::services_of_client(book, client);
}

Result<Service> service_of(Book& book, Id service) {
    return store::get_service(book, service);
}

Result<Service> add_service(Book& book, Service service, QDate today) {
    if (const Status known = known_kind(service); !known) return known.error();
    if (service.date > today) service.done = false;
    return kept(service, store::add_service(book, service));
}

Status change_service(Book& book, const Service& service, QDate today) {
    if (const Status known = known_kind(service); !known) return known;
    if (service.done && service.date > today)
        return invalid(
            "day-to-come",
            "Nothing is done on a day that is still to come, " + service.date.toString(Qt::ISODate).toStdString() + ".",
            "Give the day on which it was done, or plan it for that day.");
    return store::update_service(book, service);
}

Result<Service> mark_done(Book& book, Id id, const std::optional<QDate>& on, QDate today) {
    auto service = store::get_service(book, id);
    if (!service) return service;
    service->done = true;
    service->date = on ? *on : std::min(service->date, today);
    if (const Status kept = change_service(book, service.value(), today); !kept) return kept.error();
    return service;
}

Result<QVector<Service>> unanswered_services(Book& book, Id client, QDate today) {
    const auto all = list_services(book, client);
    if (!all) return all.error();
    QVector<Service> open;
    for (const Service& service : all.value())
        if (asks_whether_done(service, today)) open.append(service);
    return open;
}
Status erase_service(Book& book, Id service) {
    return store::erase_service(book, service);
}

Result<QVector<Target>> list_targets(Book& book, Id client) {
    const auto known = store::get_client(book, client);
    if (!known) return known.error();
    return store::targets_of_client(book, client);
}

Result<Target> target_of(Book& book, Id target) {
    return store::get_target(book, target);
}

Result<Target> set_target(Book& book, Target target) {
    return kept(target, store::put_target(book, target));
}
Status erase_target(Book& book, Id target) {
    return store::erase_target(book, target);
}

}  // namespace kempt::work
