// A sentence across the top of the page: what went wrong and what to do, or that something is done. Never a box that
// has to be clicked away before work goes on.
#pragma once

#include <QFrame>
#include <functional>

class QLabel;
class QPushButton;

namespace kempt::desk {

class Notice : public QFrame {
    Q_OBJECT
  public:
    enum class Tone { trouble, news, caution };
    explicit Notice(QWidget* parent = nullptr);
    // action: words of one button and what it does; empty: none.
    void say(Tone tone, const QString& sentence, const QString& action = {}, std::function<void()> act = {});
    [[nodiscard]] QString sentence() const;

  private:
    QLabel* label_;
    QPushButton* action_;
    std::function<void()> act_;
};

}  // namespace kempt::desk
