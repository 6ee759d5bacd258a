#include "desk/consultation/kept_strip.h"

#include <QHBoxLayout>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

KeptStrip::KeptStrip(QWidget* parent) : QFrame(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    words_ = text({}, "soft");
    undo_ = button(tr("Take back"), "quiet", Sign::undo);
    row->addWidget(words_, 1);
    row->addWidget(undo_);
    connect(undo_, &QPushButton::clicked, this, &KeptStrip::undo_asked);
    set_undo({});
    say_nothing_yet();
}

QString KeptStrip::words() const {
    return words_->text();
}

void KeptStrip::say(bool trouble, const QString& words) {
    trouble_ = trouble;
    set_panel_tone(this, trouble ? "worse" : "");
    layout()->setContentsMargins(trouble ? measures().gap(3) : 0, 0, 0, 0);
    words_->setText(words);
}

void KeptStrip::say_nothing_yet() {
    say(false, tr("Kept as you enter it. What is left open stays not known."));
}

void KeptStrip::say_kept() {
    say(false, tr("Kept."));
}

void KeptStrip::say_not_kept(const QString& why) {
    say(true, tr("Not kept: %1 The book holds what stood here before. Correct it, or take it back.").arg(why));
}

void KeptStrip::set_undo(const QString& words) {
    undo_->setEnabled(!words.isEmpty());
    const QString name =
        words.isEmpty() ? tr("Take the last change back: there is none yet") : tr("Take back: %1 (Ctrl+Z)").arg(words);
    undo_->setAccessibleName(name);
    undo_->setToolTip(name);
}

void tell_not_kept(Session& session, Error error) {
    error.kept = "The book holds what stood there before.";
    session.tell(error);
}

}  // namespace kempt::desk
