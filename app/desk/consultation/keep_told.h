// Keeps what a client told, wherever it is entered, so that it can be taken back exactly.
#pragma once

#include <functional>

#include "desk/session/session.h"

namespace kempt::desk {

// The steps of undo for one client.
[[nodiscard]] QString about_told(Id client);
// write: on the records' worker; all that it changes of what she told is one step of undo, named by `words`. then: what
// came of it, on the window's thread as long as the receiver lives; it tells the other pages and says errors.
void keep_told(Session& session, QObject* receiver, Id client, const QString& words, std::function<Status(Book&)> write,
               std::function<void(const Status&)> then);

}  // namespace kempt::desk
