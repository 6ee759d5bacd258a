// One subject of the settings: its name, in a few words how it stands, and its controls, which show only while it is
// open. So the window is a list of subjects and never a wall of controls.
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;
class QBoxLayout;

namespace kempt::desk {

class Section : public QFrame {
    Q_OBJECT
  public:
    explicit Section(const QString& name, QWidget* parent = nullptr);
    [[nodiscard]] QBoxLayout* column() const { return column_; }  // for its controls
    void set_state(const QString& words);                         // "100 %, light room"
    void set_open(bool open);
    [[nodiscard]] bool is_open() const;

  signals:
    void opened();

  private:
    QString name_;
    QPushButton* head_;
    QLabel* state_;
    QWidget* body_;
    QBoxLayout* column_;
};

}  // namespace kempt::desk
