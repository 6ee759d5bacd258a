#include "desk/client/client_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

ClientForm::ClientForm(const Client& client, const QDate& today, QWidget* parent)
    : QDialog(parent), client_(client), today_(today) {
    const bool fresh = client.id == 0;
    setWindowTitle(fresh ? tr("New client") : tr("About %1").arg(client.name));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* column = column_in(this, 6, 2);
    column->addWidget(text(fresh ? tr("New client") : tr("About this client"), "heading"));
    const auto field = [column](const QString& words, QWidget* widget) {
        auto* label = text(words, "caption");
        label->setBuddy(widget);
        widget->setAccessibleName(words);
        column->addWidget(label);
        column->addWidget(widget);
    };
    name_ = new QLineEdit(client.name);
    note_ = new QPlainTextEdit(client.note);
    note_->setTabChangesFocus(true);
    note_->setMinimumHeight(measures().px(80));
    field(tr("Name"), name_);
    field(tr("Note"), note_);
    consent_ = new QCheckBox(tr("Agrees that photos may leave this book"));
    consent_->setAccessibleName(consent_->text());
    consent_->setChecked(client.photo_consent);
    column->addWidget(consent_);
    column->addWidget(text(client.consent_on && client.photo_consent
                               ? tr("Agreed on %1. Untick when she takes it back.").arg(date_words(*client.consent_on))
                               : tr("Without it, reports and saved pictures leave her photos out."),
                           "caption"));
    face_box_ = new QWidget;
    auto* face = column_in(face_box_, 0, 1);
    auto* face_label = text(tr("Her face in pictures that leave"), "caption");
    face_ = new QComboBox;
    face_->setAccessibleName(face_label->text());
    face_->addItem(tr("not asked: found eyes are hidden"), static_cast<int>(work::FaceWish::not_asked));
    face_->addItem(tr("hidden: every photo is looked at first"), static_cast<int>(work::FaceWish::hidden));
    face_->addItem(tr("may be seen"), static_cast<int>(work::FaceWish::shown));
    face_label->setBuddy(face_);
    face->addWidget(face_label);
    face->addWidget(face_);
    face_box_->setVisible(!fresh);
    column->addWidget(face_box_);
    auto* row = new QHBoxLayout;
    auto* cancel = button(tr("Leave it"));
    done_ = button(fresh ? tr("Add client") : tr("Keep"), "primary");
    done_->setDefault(true);
    row->addStretch();
    row->addWidget(cancel);
    row->addWidget(done_);
    column->addSpacing(measures().gap(2));
    column->addLayout(row);
    resize(measures().px(440), sizeHint().height());
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(done_, &QPushButton::clicked, this, &ClientForm::give);
    connect(name_, &QLineEdit::textChanged, this, [this] { done_->setEnabled(!name_->text().trimmed().isEmpty()); });
    done_->setEnabled(!name_->text().trimmed().isEmpty());
    name_->setFocus();
}

void ClientForm::set_face_wish(work::FaceWish wish) {
    face_->setCurrentIndex(std::max(0, face_->findData(static_cast<int>(wish))));
}

work::FaceWish ClientForm::face_wish() const {
    return static_cast<work::FaceWish>(face_->currentData().toInt());
}

void ClientForm::give() {
    client_.name = name_->text().trimmed();
    client_.note = note_->toPlainText().trimmed();
    if (consent_->isChecked() != client_.photo_consent) {
        client_.photo_consent = consent_->isChecked();
        client_.consent_on = client_.photo_consent ? std::optional(today_) : std::nullopt;
    }
    if (!client_.since.isValid()) client_.since = today_;
    emit ready(client_);
    accept();
}

}  // namespace kempt::desk
