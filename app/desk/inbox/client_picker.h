// Whose photos are these? The clients of the book, found by a few letters.
#pragma once

#include <QDialog>

#include "desk/session/session.h"

namespace kempt::desk {

class ClientList;

class ClientPicker : public QDialog {
    Q_OBJECT
  public:
    explicit ClientPicker(Session& session, QWidget* parent = nullptr);
    [[nodiscard]] ClientList* list() const { return list_; }

  signals:
    void chosen(kempt::Id client);

  private:
    ClientList* list_;
};

}  // namespace kempt::desk
