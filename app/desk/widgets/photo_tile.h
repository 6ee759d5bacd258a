// A photo as a button: its thumbnail, what it is, and how it stands.
#pragma once

#include <QAbstractButton>
#include <QPixmap>

namespace kempt::desk {

class PhotoTile : public QAbstractButton {
    Q_OBJECT
  public:
    enum class Stand { none, good, attention, refused };
    // thumbnail: the JPEG bytes of the record; empty: none. first, second: the two lines below it.
    PhotoTile(const QByteArray& thumbnail, const QString& first, const QString& second, Stand stand,
              QWidget* parent = nullptr);
    void set_picture_size(QSize at_100);
    [[nodiscard]] QSize sizeHint() const override;

  signals:
    void asked_to_erase();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

  private:
    // The picture as the frame shows it, decoded when it is first seen: most tiles of a long page never are.
    const QPixmap& picture_for(QSize frame);
    QByteArray thumbnail_;
    QPixmap picture_;
    QSize made_for_;
    QString first_, second_;
    Stand stand_;
    QSize picture_size_{148, 104};
};

}  // namespace kempt::desk
