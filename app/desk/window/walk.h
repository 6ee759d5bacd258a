// Walks every window on a book and keeps a picture of each: for docs/screens and for looking at them.
#pragma once

#include <QObject>
#include <QSize>
#include <QString>
#include <QTimer>
#include <functional>

#include "desk/window/place.h"

namespace kempt::desk {

class MainWindow;

class Walk : public QObject {
    Q_OBJECT
  public:
    // Pictures are NAME-WxH[-TTT][-dark].png (.jpg where it is mostly a photo) in `folder`.
    Walk(MainWindow& window, const QString& book, const QString& folder, QSize size, QObject* parent = nullptr);
    // Only the windows whose names begin so.
    void set_only(const QString& beginning) { only_ = beginning; }
    void begin();

  signals:
    void done(int exit_code);  // 0 when every picture was written

  private:
    struct Step {
        QString name;
        std::function<void()> act;
        std::function<QWidget*()> shown;  // what is grabbed
    };
    void plan();
    void next();
    void wait_then_grab();
    [[nodiscard]] bool settled() const;

    MainWindow& window_;
    QString book_, folder_, ending_, only_;
    QVector<Step> steps_;
    QTimer poll_;
    int at_ = -1, quiet_ = 0, waited_ = 0, failed_ = 0;
};

}  // namespace kempt::desk
