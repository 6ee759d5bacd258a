#include "desk/widgets/confirm.h"

#include <QMessageBox>
#include <QPushButton>

namespace kempt::desk {

void ask_before_erasing(QWidget* parent, const QString& question, const QString& warning, std::function<void()> erase) {
    auto* box = new QMessageBox(QMessageBox::NoIcon, QObject::tr("Erase"), question, QMessageBox::NoButton, parent);
    box->setInformativeText(warning);
    auto* yes = box->addButton(QObject::tr("Erase"), QMessageBox::DestructiveRole);
    auto* no = box->addButton(QObject::tr("Keep"), QMessageBox::RejectRole);
    box->setDefaultButton(no);
    box->setEscapeButton(no);
    box->setAttribute(Qt::WA_DeleteOnClose);
    QObject::connect(box, &QMessageBox::buttonClicked, parent,
                     [yes, erase = std::move(erase)](QAbstractButton* pressed) {
                         if (pressed == yes) erase();
                     });
    box->open();
}

}  // namespace kempt::desk
