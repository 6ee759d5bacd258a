// The next dates as ranges with their reasons, and what the client can do at home.
#pragma once

#include <QFrame>

#include "desk/session/session.h"
#include "work/plan_care.h"

class QBoxLayout;
class QCheckBox;
class QLabel;
class QPushButton;

namespace kempt::desk {

class DatesPanel : public QFrame {
    Q_OBJECT
  public:
    explicit DatesPanel(Session& session, QWidget* parent = nullptr);
    void show_dates(const Client& client, const work::CarePlan& plan);
    // Writes them as a calendar file; what came of it is told in the window.
    void write_to(const QString& path);
    [[nodiscard]] QPushButton* save_button() const { return save_; }

  private:
    void choose_file();
    Session& session_;
    Client client_;
    std::vector<care::DateRange> dates_;
    QBoxLayout* rows_;
    QCheckBox* with_name_;
    QPushButton* save_;
};

class HomeCarePanel : public QFrame {
    Q_OBJECT
  public:
    explicit HomeCarePanel(QWidget* parent = nullptr);
    void show_care(const care::HomeCarePlan& plan);

  private:
    QLabel* sum_;
    QBoxLayout *rows_, *left_out_;
    QPushButton* more_;
    QWidget* more_box_;
};

}  // namespace kempt::desk
