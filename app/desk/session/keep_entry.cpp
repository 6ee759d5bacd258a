#include "desk/session/keep_entry.h"

#include <memory>

namespace kempt::desk {

void keep_step(Session& session, const QString& title, QObject* receiver, const UndoStep& step, KeepStep keep,
               AfterKeeping then) {
    const auto kept = std::make_shared<UndoStep>(step);
    session.records().start(
        title, receiver,
        [kept, keep = std::move(keep)](Book& book, const Progress&) -> Status { return keep(book, *kept); },
        [&session, kept, then = std::move(then)](const Status& done) {
            if (done.ok()) session.undo().add(*kept);
            if (then) return then(done);
            if (done.ok())
                session.changed(kept->client, kept->visit);
            else
                session.tell(done.error());
        });
}

}  // namespace kempt::desk
