// What is entered of whole services, wherever that is done: each can be taken back.
#pragma once

#include <functional>

#include "desk/session/session.h"

namespace kempt::desk {

// Steps that change one service are about "service/ID/", its erasing about "erased/ID/".
[[nodiscard]] QString about_service(Id service);
[[nodiscard]] QString about_erased_service(Id service = 0);  // 0: of any

// visit: whose page is told besides the client's; 0: none. `then` runs as long as the receiver lives.
void add_service(Session& session, QObject* receiver, const Service& service, Id visit,
                 std::function<void(const Service&)> then);
void erase_service(Session& session, QObject* receiver, const Service& service, Id visit,
                   std::function<void()> then = {});
// A planned one was done. failed: it could not be kept, and was told.
void mark_service_done(Session& session, QObject* receiver, const Service& service, Id visit,
                       std::function<void()> failed = {});

}  // namespace kempt::desk
