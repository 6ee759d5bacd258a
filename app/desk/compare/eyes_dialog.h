// Goes through the photos of a picture, one after the other, and keeps what hides the eyes in each.
#pragma once

#include <QDialog>
#include <QVector>

#include "desk/session/session.h"
#include "work/face_look.h"

class QLabel;
class QPushButton;

namespace kempt::desk {

class EyeBands;

class EyesDialog : public QDialog {
    Q_OBJECT
  public:
    EyesDialog(Session& session, Id client, QVector<Id> photos, QWidget* parent = nullptr);
    [[nodiscard]] EyeBands* canvas() const { return canvas_; }
    [[nodiscard]] bool settled() const { return settled_; }

  signals:
    void kept();  // for one photo or more

  protected:
    void done(int result) override;

  private:
    void open_next();
    void take(const work::FaceLook& look);
    void keep();
    Session& session_;
    Id client_;
    QVector<Id> photos_;
    int at_ = -1;
    bool settled_ = true, any_kept_ = false;
    jobs::JobHandle job_;
    QLabel *where_, *told_;
    EyeBands* canvas_;
    QPushButton *keep_, *forget_;
    QVector<QPushButton*> tools_;
};

}  // namespace kempt::desk
