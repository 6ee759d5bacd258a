#include "desk/client/client_form.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>

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
