#include "desk/settings/settings_dialog.h"

#include <QApplication>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/settings/section.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

void apply_later(const LookChoice& choice) {
    store_look(choice);
    QTimer::singleShot(0, qApp, [choice] { look().apply(choice); });
}

SettingsDialog::SettingsDialog(Session* session, QWidget* parent) : QDialog(parent), session_(session) {
    setWindowTitle(tr("Settings"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* whole = column_in(this, 0, 0);
    auto* inside = new QWidget;
    column_ = column_in(inside, 5, 2);
    whole->addWidget(scroll_area(inside), 1);
    column_->addWidget(text(tr("Settings"), "heading"));
    build_look();
    build_language();
    build_targets();
    build_photos();
    build_paper();
    build_safe();
    column_->addStretch();
    auto* foot = new QWidget;
    auto* close = button(tr("Done"), "primary");
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    column_in(foot, 3, 0)->addWidget(close, 0, Qt::AlignRight);
    whole->addWidget(foot);
    // One subject open beside the closed ones; never higher than the window behind it.
    const int width = measures().px(520), wanted = measures().px(640);
    resize(parent != nullptr ? std::min(width, parent->width() - measures().gap(6)) : width,
           parent != nullptr ? std::min(wanted, parent->height() - measures().gap(6)) : wanted);
}

Section* SettingsDialog::add_section(const QString& name) {
    auto* section = new Section(name);
    column_->addWidget(section);
    sections_.append(section);
    connect(section, &Section::opened, this, [this, section] {
        for (Section* other : sections_)
            if (other != section) other->set_open(false);
        // Its beginning is seen, once the others have closed above it.
        QTimer::singleShot(0, section, [this, section] {
            if (auto* area = findChild<QScrollArea*>())
                area->verticalScrollBar()->setValue(section->y() - measures().gap(3));
        });
    });
    return section;
}

}  // namespace kempt::desk
