#include "desk/consultation/keep_told.h"

#include "desk/session/keep_entry.h"

namespace kempt::desk {

QString about_told(Id client) {
    return QStringLiteral("told/%1/").arg(client);
}

void keep_told(Session& session, QObject* receiver, Id client, const QString& words, std::function<Status(Book&)> write,
               std::function<void(const Status&)> then) {
    keep_entry(
        session, QObject::tr("Keeping what she told"), receiver, {words, about_told(client), client, 0, {}},
        [client](Book& book) { return work::told_entry_of(book, client); }, std::move(write), std::move(then));
}

}  // namespace kempt::desk
