#include "desk/inbox/inbox_row.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QPixmap>
#include <QShortcut>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/numbered_views.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
QString taken_words(const work::IncomingPhoto& photo) {
    return QStringLiteral("%1, %2").arg(date_words(photo.taken.date()),
                                        photo.taken.time().toString(QStringLiteral("HH:mm")));
}

QString taken_from_words(const work::IncomingPhoto& photo) {
    switch (photo.from) {
        case work::TakenFrom::camera_with_zone: {
            const int minutes = photo.taken.offsetFromUtc() / 60;
            return QObject::tr("as the camera says (UTC%1%2:%3)")
                .arg(minutes < 0 ? QStringLiteral("−") : QStringLiteral("+"))
                .arg(std::abs(minutes) / 60, 2, 10, QLatin1Char('0'))
                .arg(std::abs(minutes) % 60, 2, 10, QLatin1Char('0'));
        }
        case work::TakenFrom::camera:
            return QObject::tr("by the camera’s clock");
        case work::TakenFrom::file:
            break;
    }
    return QObject::tr("the time of the file: the photo does not say when it was taken");
}

InboxRow::InboxRow(const InboxPhoto& photo, QWidget* parent) : QFrame(parent), key_(photo.key) {
    setProperty("panel", "sunken");
    const QString name = QFileInfo(photo.photo.path).fileName();
    setAccessibleName(tr("New photo %1").arg(name));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(measures().gap(2), measures().gap(2), measures().gap(3), measures().gap(2));
    row->setSpacing(measures().gap(3));
    auto* picture = new QLabel;
    QPixmap shown;
    shown.loadFromData(photo.photo.thumbnail);
    const QSize room(static_cast<int>(196 * measures().space), static_cast<int>(148 * measures().space));
    picture->setPixmap(shown.scaled(room, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    picture->setFixedWidth(room.width());
    picture->setAlignment(Qt::AlignCenter);
    picture->setAccessibleName(tr("Picture of %1").arg(name));
    row->addWidget(picture, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout;
    column->setSpacing(measures().gap(1));
    row->addLayout(column, 1);
    column->addWidget(text(taken_words(photo.photo), "strong"));
    column->addWidget(text(QStringLiteral("%1\u00a0\u00a0·  %2").arg(taken_from_words(photo.photo), name), "caption"));
    views_ = new ChoiceRow(tr("View of %1").arg(name), numbered_views());
    column->addWidget(views_);
    why_ = text({}, "soft");
    column->addWidget(why_);
    auto* acts = new FlowLayout(measures().gap(2));
    take_ = button(tr("Take it (T)"));
    take_->setAccessibleName(tr("Take %1 into the record").arg(name));
    leave_ = button(tr("Leave it (L)"), "quiet");
    leave_->setAccessibleName(tr("Leave %1 alone: it does not come again").arg(name));
    leave_->setToolTip(tr("It stays where it is and does not come again"));
    acts->addWidget(take_);
    acts->addWidget(leave_);
    column->addLayout(acts);

    connect(take_, &QPushButton::clicked, this, [this] { emit take_asked(key_); });
    connect(leave_, &QPushButton::clicked, this, [this] { emit leave_asked(key_); });
    connect(views_, &ChoiceRow::picked, this, [this](int index) { emit view_chosen(key_, all_views()[index]); });
    const auto on_key = [this](int pressed, auto act) {
        auto* shortcut = new QShortcut(QKeySequence(pressed), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    on_key(Qt::Key_T, [this] {
        if (take_->isEnabled()) emit take_asked(key_);
    });
    on_key(Qt::Key_L, [this] { emit leave_asked(key_); });
    for (int i = 0; i < all_views().size(); ++i)
        on_key(Qt::Key_1 + i, [this, i] { emit view_chosen(key_, all_views()[i]); });
}

void InboxRow::show_photo(const InboxPhoto& photo, bool ready, bool client_known) {
    if (photo.view) views_->set_chosen(static_cast<int>(all_views().indexOf(*photo.view)));
    why_->setText(photo.taking               ? tr("Taking it in…")
                  : !photo.trouble.isEmpty() ? tr("It could not be taken: %1").arg(photo.trouble)
                  : photo.looking            ? tr("Looking which view it is…")
                  : photo.view               ? photo.view_why
                  : client_known             ? tr("Which view is it? Keys 1 to 7.")
                                             : tr("First whose it is, then which view (1 to 7)."));
    take_->setEnabled(ready);
    take_->setToolTip(ready ? QString() : tr("Client and view come first"));
    leave_->setEnabled(!photo.taking);
    views_->setEnabled(!photo.taking);
}

void InboxRow::focus_first() {
    if (take_->isEnabled())
        take_->setFocus(Qt::OtherFocusReason);
    else
        views_->focus_chosen();
}

}  // namespace kempt::desk
