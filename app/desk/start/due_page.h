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
    [[nodiscard]] bool settled() const { return settled_ && !pause_.isActive() && !filling_.isActive(); }

  signals:
    void go(const kempt::desk::Place& place);

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    using Lines = std::vector<const work::DueLine*>;  // all dates of one client; they lie in list_
    void take(work::DueList list);
    void fill();
    void fill_some();
    void put_row(int index);
    QWidget* client_row(const Lines& lines);
    [[nodiscard]] int rows_wanted() const;

    Session& session_;
    work::DueList list_;
    bool settled_ = true, stale_ = true, filled_ = true;
    int shown_ = 0;               // clients
    std::vector<Lines> clients_;  // in the order of their first dates
    int next_ = 0;                // the row that is looked at next
    QTimer pause_, filling_;
    QLabel* sum_;
    QBoxLayout* rows_;
    QPushButton *more_, *save_;
    QCheckBox* with_names_;
    QWidget* box_;
};

}  // namespace kempt::desk
