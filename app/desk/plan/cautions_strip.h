// The usual cautions, always in sight while a service is planned. Nothing puts them away.
#pragma once

#include <QFrame>

namespace kempt::desk {

class CautionsStrip : public QFrame {
    Q_OBJECT
  public:
    explicit CautionsStrip(QWidget* parent = nullptr);
    [[nodiscard]] QString words() const { return words_; }

  private:
    QString words_;
};

}  // namespace kempt::desk
