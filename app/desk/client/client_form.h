// Who a client is: for adding one (two fields) and for changing one.
#pragma once

#include <QDialog>

#include "domain/records.h"
#include "work/face_keep.h"

class QLineEdit;
class QPlainTextEdit;
class QCheckBox;
class QComboBox;
class QPushButton;

namespace kempt::desk {

class ClientForm : public QDialog {
    Q_OBJECT
  public:
    // client.id 0: a new one. today dates a consent that is given now.
    ClientForm(const Client& client, const QDate& today, QWidget* parent = nullptr);
    [[nodiscard]] QLineEdit* name() const { return name_; }
    [[nodiscard]] QCheckBox* consent() const { return consent_; }
    // Of her face in pictures that leave; asked of a client who is in the book already.
    void set_face_wish(work::FaceWish wish);
    [[nodiscard]] work::FaceWish face_wish() const;

  signals:
    void ready(const kempt::Client& client);

  private:
    void give();
    Client client_;
    QDate today_;
    QLineEdit* name_;
    QPlainTextEdit* note_;
    QCheckBox* consent_;
    QComboBox* face_;
    QWidget* face_box_;
    QPushButton* done_;
};

}  // namespace kempt::desk
