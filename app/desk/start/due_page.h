// What is shown while nobody is in the chair: who is due, and how to find or add a client.
#pragma once

#include <QTimer>
#include <QWidget>

#include "desk/session/session.h"
#include "desk/window/place.h"
#include "work/due_list.h"

class QBoxLayout;
class QCheckBox;
class QLabel;
class QPushButton;

namespace kempt::desk {

class DuePage : public QWidget {
    Q_OBJECT
  public:
    explicit DuePage(Session& session, QWidget* parent = nullptr);
    // Reads the list anew.
    void refresh();
    // Writes all of it as a calendar file; what came of it is told in the window.
    void write_to(const QString& path);
    [[nodiscard]] const work::DueList& list() const { return list_; }
    [[nodiscard]] bool settled() const { return settled_ && !pause_.isActive(); }

  signals:
    void go(const kempt::desk::Place& place);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void take(work::DueList list);
    void fill();
    QWidget* client_row(const std::vector<const work::DueLine*>& lines);

    Session& session_;
    work::DueList list_;
    bool settled_ = true, stale_ = true;
    int shown_ = 0;  // clients
    QTimer pause_;
    QLabel* sum_;
    QBoxLayout* rows_;
    QPushButton *more_, *save_;
    QCheckBox* with_names_;
    QWidget* box_;
};

}  // namespace kempt::desk
