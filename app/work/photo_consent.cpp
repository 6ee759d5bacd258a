#include "work/photo_consent.h"

#include "book/client_store.h"

namespace kempt::work {

Status pictures_may_leave(const Client& client) {
    if (client.photo_consent) return Done{};
    return Error{ErrorKind::refused, "no-photo-consent", "The client has not agreed that pictures leave the book.",
                 "Nothing was written.", "Ask her, and write down that she agrees."};
}

Status pictures_may_leave(Book& book, Id client) {
    const auto known = store::get_client(book, client);
    if (!known) return known.error();
    return pictures_may_leave(known.value());
}

}  // namespace kempt::work
