// Keeps name, note, consent and wish of a client so that it can be taken back.
#pragma once

#include "desk/session/session.h"
#include "work/put_back.h"

namespace kempt::desk {

void keep_client(Session& session, QObject* receiver, const work::ClientEntry& entry);
// She agrees that photos leave the book: from today on.
void keep_consent(Session& session, QObject* receiver, const Client& client);

}  // namespace kempt::desk
