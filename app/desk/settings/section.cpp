#include "desk/settings/section.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

Section::Section(const QString& name, QWidget* parent) : QFrame(parent), name_(name) {
    setProperty("panel", "surface");
    auto* outer = column_in(this, 2, 1);
    head_ = button(name, "quiet");
    head_->setCheckable(true);
    state_ = text({}, "caption");
    state_->setContentsMargins(measures().gap(3), 0, measures().gap(3), measures().gap(1));
    body_ = new QWidget;
    column_ = column_in(body_, 3, 2);
    outer->addWidget(head_, 0, Qt::AlignLeft);
    outer->addWidget(state_);
    outer->addWidget(body_);
    body_->hide();
    connect(head_, &QPushButton::toggled, this, [this](bool open) {
        body_->setVisible(open);
        state_->setVisible(!open && !state_->text().isEmpty());
        if (open) emit opened();
    });
}

void Section::set_state(const QString& words) {
    state_->setText(words);
    state_->setVisible(!is_open() && !words.isEmpty());
    head_->setAccessibleName(words.isEmpty() ? name_ : QStringLiteral("%1: %2").arg(name_, words));
}

void Section::set_open(bool open) {
    head_->setChecked(open);
}

bool Section::is_open() const {
    return head_->isChecked();
}

}  // namespace kempt::desk
