#include "desk/session/session.h"
#include "desk/translations/said.h"

namespace kempt::desk {

Session::Session(const QString& book_path, OpenFunction open, QObject* parent)
    : QObject(parent),
      path_(book_path),
      open_(std::move(open)),
      undo_(*this),
      records_(book_path),
      bench_(book_path, nullptr, jobs::JobRunner::Pace::behind),
      live_(QString()) {}

void Session::changed(Id client, Id visit) {
    if (visit > 0) emit visit_changed(visit);
    if (client > 0) emit client_changed(client);
    emit clients_changed();
}

void Session::tell(const Error& error) {
    if (error.kind != ErrorKind::cancelled) emit trouble(said(error.sentence()));
}

}  // namespace kempt::desk
