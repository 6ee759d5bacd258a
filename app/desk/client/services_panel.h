// What was done to the hair and when: the list, each with what was written down of it; adding one opens its page. Of
// one that is planned it is asked whether it was done; one press says so.
#pragma once

#include <QFrame>

#include "desk/session/session.h"
#include "desk/window/place.h"

class QBoxLayout;
class QPushButton;

namespace kempt::desk {

class RowsAnew;

class ServicesPanel : public QFrame {
    Q_OBJECT
  public:
    explicit ServicesPanel(Session& session, QWidget* parent = nullptr);
    // visit 0: all services of the client; else new ones belong to that visit and only its own are listed.
    void show_services(Id client, Id visit, const QDate& day, const QVector<Service>& services);
    // Writes one of that kind into the book, of the day that is shown, and opens it.
    void add(const QString& kind);
    [[nodiscard]] QPushButton* put_back_button() const { return put_back_; }

  signals:
    void go(const kempt::desk::Place& place);

  private:
    void fill();
    void add_row(const Service& service, QBoxLayout* rows);
    void put_back();
    void show_put_back();
    Session& session_;
    Id client_ = 0, visit_ = 0;
    QDate day_;
    QVector<Service> services_;  // the newest first
    qsizetype most_ = 0;         // shown
    RowsAnew* rows_;
    QPushButton *add_, *put_back_, *more_;
};

}  // namespace kempt::desk
