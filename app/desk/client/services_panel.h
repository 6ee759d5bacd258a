// What was done to the hair and when: the list, and a line for adding one.
#pragma once

#include <QFrame>

#include "desk/session/session.h"

class QBoxLayout;
class QComboBox;
class QDateEdit;
class QLineEdit;

namespace kempt::desk {

class ServicesPanel : public QFrame {
    Q_OBJECT
  public:
    explicit ServicesPanel(Session& session, QWidget* parent = nullptr);
    // visit 0: all services of the client; else new ones belong to that visit and only its own are listed.
    void show_services(Id client, Id visit, const QDate& day, const QVector<Service>& services);

  private:
    void add();
    Session& session_;
    Id client_ = 0, visit_ = 0;
    QBoxLayout* rows_;
    QComboBox* kind_;
    QDateEdit* date_;
    QLineEdit* note_;
};

}  // namespace kempt::desk
