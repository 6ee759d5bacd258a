// Keeps an entry so that it can be taken back exactly: it is read before and after it is written, in the same job.
#pragma once

#include <functional>

#include "desk/session/session.h"
#include "work/put_back.h"

namespace kempt::desk {

// Runs on the records' worker; gives the step its way back and again.
using KeepStep = std::function<Status(Book&, UndoStep&)>;
// Runs on the window's thread as long as the receiver lives. Without one the pages are told, and an error in the
// window.
using AfterKeeping = std::function<void(const Status&)>;
void keep_step(Session& session, const QString& title, QObject* receiver, const UndoStep& step, KeepStep keep,
               AfterKeeping then);

// read: Result<Entry>(Book&), where work::put_back() knows Entry. write: Status(Book&).
template <class Read, class Write>
void keep_entry(Session& session, const QString& title, QObject* receiver, const UndoStep& step, Read read, Write write,
                AfterKeeping then = {}) {
    keep_step(
        session, title, receiver, step,
        [read, write](Book& book, UndoStep& kept) -> Status {
            const auto before = read(book);
            if (!before.ok()) return before.error();
            if (const Status done = write(book); !done.ok()) return done;
            const auto now = read(book);
            if (!now.ok()) return now.error();
            kept.back = [from = now.value(), to = before.value()](Book& b) { return work::put_back(b, from, to); };
            kept.again = [from = before.value(), to = now.value()](Book& b) { return work::put_back(b, from, to); };
            return Done{};
        },
        std::move(then));
}

}  // namespace kempt::desk
