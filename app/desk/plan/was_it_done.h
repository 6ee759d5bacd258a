// What the record has to be asked for before it is trusted: services planned for a day that has passed, and whether
// every service is still in it. One press, or D beside it, answers.
#pragma once

#include <QFrame>
#include <QHash>
#include <QVector>
#include <optional>

#include "domain/records.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace kempt::desk {

class WasItDone : public QFrame {
    Q_OBJECT
  public:
    explicit WasItDone(QWidget* parent = nullptr);
    // Hidden when there is nothing to ask. history: the sentence that asks whether every service is in the record, or
    // empty.
    void show_open(const QVector<Service>& planned, const QString& history);
    [[nodiscard]] QPushButton* done_button(int index) const { return done_.value(index); }
    [[nodiscard]] QPushButton* all_there_button() const { return all_there_; }
    [[nodiscard]] int asked() const { return static_cast<int>(done_.size()); }

  signals:
    void done(const kempt::Service& service);
    void opened(kempt::Id service);  // to move its day, or to take it out of the record
    void all_there();                // every service is in the record, as of today

  protected:
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    void answer_with_d(QPushButton* focused, QPushButton* answer);
    QLabel *heading_, *caption_;
    QBoxLayout* rows_;
    QVector<QPushButton*> done_;
    QHash<QObject*, QPushButton*> answers_;  // of the button that has the focus
    QPushButton* all_there_ = nullptr;
    QVector<Service> shown_;
    QString history_;
};

}  // namespace kempt::desk
