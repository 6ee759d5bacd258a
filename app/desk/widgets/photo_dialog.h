// The dialog in which photo files are chosen, one or many.
#pragma once

#include <QStringList>
#include <functional>

class QFileDialog;
class QWidget;

namespace kempt::desk {

// Shown at once; deletes itself. `chosen` runs as long as `parent` lives.
QFileDialog* ask_for_photos(QWidget* parent, const QString& title, std::function<void(const QStringList&)> chosen);
// The same for a folder of photos.
QFileDialog* ask_for_photo_folder(QWidget* parent, const QString& title,
                                  std::function<void(const QStringList&)> chosen);

}  // namespace kempt::desk
