#include "desk/client/keep_client.h"

#include "desk/session/keep_entry.h"
#include "domain/clock.h"
#include "work/keep_records.h"

namespace kempt::desk {
namespace {

UndoStep step_of(const QString& words, Id client) {
    return {words, QStringLiteral("client/%1/").arg(client), client, 0, {}};
}

auto entry_of(Id client) {
    return [client](Book& book) { return work::client_entry_of(book, client); };
}

}  // namespace

void keep_client(Session& session, QObject* receiver, const work::ClientEntry& entry) {
    const Id id = entry.client.id;
    keep_entry(session, QObject::tr("Keeping the client"), receiver, step_of(QObject::tr("name, note or consent"), id),
               entry_of(id), [entry](Book& book) { return work::change_client_entry(book, entry); });
}

void keep_consent(Session& session, QObject* receiver, const Client& client) {
    Client agreed = client;
    agreed.photo_consent = true;
    agreed.consent_on = Clock().today();
    keep_entry(session, QObject::tr("Keeping her consent"), receiver, step_of(QObject::tr("her consent"), client.id),
               entry_of(client.id), [agreed](Book& book) { return work::change_client(book, agreed); });
}

}  // namespace kempt::desk
