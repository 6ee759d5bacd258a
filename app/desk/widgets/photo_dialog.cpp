#include "desk/widgets/photo_dialog.h"

#include <QFileDialog>

#include "work/import_photos.h"

namespace kempt::desk {
namespace {

QFileDialog* shown(QWidget* parent, const QString& title, QFileDialog::FileMode mode,
                   std::function<void(const QStringList&)> chosen) {
    auto* dialog = new QFileDialog(parent, title);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(mode);
    if (mode == QFileDialog::Directory)
        dialog->setOption(QFileDialog::ShowDirsOnly);
    else
        dialog->setNameFilter(
            QObject::tr("Photos (%1);;All files (*)").arg(work::picture_endings().join(QLatin1Char(' '))));
    QObject::connect(dialog, &QFileDialog::filesSelected, parent, std::move(chosen));
    dialog->open();
    return dialog;
}

}  // namespace

QFileDialog* ask_for_photos(QWidget* parent, const QString& title, std::function<void(const QStringList&)> chosen) {
    return shown(parent, title, QFileDialog::ExistingFiles, std::move(chosen));
}

QFileDialog* ask_for_photo_folder(QWidget* parent, const QString& title,
                                  std::function<void(const QStringList&)> chosen) {
    return shown(parent, title, QFileDialog::Directory, std::move(chosen));
}

}  // namespace kempt::desk
