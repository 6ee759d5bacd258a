#include "desk/widgets/notice.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QStyle>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

Notice::Notice(QWidget* parent) : QFrame(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(measures().gap(4), measures().gap(2), measures().gap(2), measures().gap(2));
    label_ = text({});
    action_ = button({}, "quiet");
    auto* close = sign_button(Sign::remove, tr("Put this message away"));
    row->addWidget(label_, 1);
    row->addWidget(action_);
    row->addWidget(close);
    connect(close, &QToolButton::clicked, this, &QWidget::hide);
    connect(action_, &QPushButton::clicked, this, [this] {
        hide();
        if (act_) act_();
    });
    hide();
}

void Notice::say(Tone tone, const QString& sentence, const QString& action, std::function<void()> act) {
    setProperty("panel", tone == Tone::trouble ? "worse" : tone == Tone::news ? "better" : "caution");
    style()->unpolish(this);
    style()->polish(this);
    label_->setText(sentence);
    action_->setText(action);
    action_->setAccessibleName(action);
    action_->setVisible(!action.isEmpty());
    act_ = std::move(act);
    setAccessibleName(sentence);
    show();
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

QString Notice::sentence() const {
    return label_->text();
}

}  // namespace kempt::desk
