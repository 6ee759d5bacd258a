#include "desk/client/keep_service.h"

#include <memory>

#include "desk/session/keep_entry.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "work/keep_records.h"

namespace kempt::desk {
namespace {

QString named(const Service& service) {
    return QObject::tr("%1 of %2").arg(said(service.kind), date_words(service.date));
}

Status put_in(Book& book, Service& service) {
    const auto kept = work::add_service(book, service);
    if (!kept) return kept.error();
    service = kept.value();  // it has another number now
    return Done{};
}

}  // namespace

QString about_service(Id service) {
    return QStringLiteral("service/%1/").arg(service);
}

QString about_erased_service(Id service) {
    return service > 0 ? QStringLiteral("erased/%1/").arg(service) : QStringLiteral("erased/");
}

void add_service(Session& session, QObject* receiver, const Service& service, Id visit,
                 std::function<void(const Service&)> then) {
    session.ask(
        session.records(), QObject::tr("Adding a service"), receiver,
        [service](Book& book, const Progress&) { return work::add_service(book, service); },
        [&session, visit, then = std::move(then)](const Service& kept) {
            const auto there = std::make_shared<Service>(kept);
            UndoStep step{QObject::tr("adding the %1").arg(named(kept)),
                          QStringLiteral("added/%1/").arg(kept.id),
                          kept.client,
                          visit,
                          {}};
            step.back = [there](Book& book) { return work::erase_service(book, there->id); };
            step.again = [there](Book& book) { return put_in(book, *there); };
            session.undo().add(step);
            session.changed(kept.client, visit);
            if (then) then(kept);
        });
}

void erase_service(Session& session, QObject* receiver, const Service& service, Id visit, std::function<void()> then) {
    session.ask(
        session.records(), QObject::tr("Erasing a service"), receiver,
        [id = service.id](Book& book, const Progress&) -> Result<Service> {
            auto last = work::service_of(book, id);
            if (!last) return last.error();
            if (const Status gone = work::erase_service(book, id); !gone) return gone.error();
            return last;
        },
        [&session, visit, then = std::move(then)](const Service& last) {
            const auto there = std::make_shared<Service>(last);
            UndoStep step{
                QObject::tr("erasing the %1").arg(named(last)), about_erased_service(last.id), last.client, visit, {}};
            step.back = [there](Book& book) { return put_in(book, *there); };
            step.again = [there](Book& book) { return work::erase_service(book, there->id); };
            session.undo().forget(about_service(last.id));
            session.undo().forget(QStringLiteral("added/%1/").arg(last.id));
            session.undo().add(step);
            session.changed(last.client, visit);
            if (then) then();
        });
}

void mark_service_done(Session& session, QObject* receiver, const Service& service, Id visit,
                       std::function<void()> failed) {
    keep_entry(
        session, QObject::tr("Marking a service as done"), receiver,
        {QObject::tr("“done” of the %1").arg(named(service)), about_service(service.id), service.client, visit, {}},
        [id = service.id](Book& book) { return work::service_of(book, id); },
        [id = service.id](Book& book) -> Status {
            const auto kept = work::mark_done(book, id);
            return kept.ok() ? Status(Done{}) : Status(kept.error());
        },
        [&session, client = service.client, visit, failed = std::move(failed)](const Status& kept) {
            if (kept.ok()) return session.changed(client, visit);
            session.tell(kept.error());
            if (failed) failed();
        });
}

}  // namespace kempt::desk
