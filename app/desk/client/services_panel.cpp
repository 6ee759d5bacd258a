#include "desk/client/services_panel.h"

#include <QComboBox>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"
#include "work/keep_records.h"

namespace kempt::desk {

ServicesPanel::ServicesPanel(Session& session, QWidget* parent) : QFrame(parent), session_(session) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("Services"), "heading"));
    rows_ = new QVBoxLayout;
    rows_->setSpacing(measures().gap(1));
    column->addLayout(rows_);
    auto* line = new FlowLayout(measures().gap(2), true);
    kind_ = new QComboBox;
    kind_->setAccessibleName(tr("Kind of service"));
    kind_->setPlaceholderText(tr("Add a service"));
    kind_->addItems(service_kinds());
    kind_->setCurrentIndex(-1);
    kind_->setMinimumContentsLength(16);
    date_ = new QDateEdit;
    date_->setAccessibleName(tr("Day of the service"));
    date_->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    date_->setCalendarPopup(true);
    date_->setMinimumWidth(measures().px(140));
    note_ = new QLineEdit;
    note_->setAccessibleName(tr("Note on the service"));
    note_->setPlaceholderText(tr("strength, minutes, where"));
    note_->setMinimumWidth(measures().px(180));
    auto* add_button = button(tr("Add"), "", Sign::add);
    add_button->setAccessibleName(tr("Add this service"));
    add_button->setEnabled(false);
    for (QWidget* w : std::initializer_list<QWidget*>{kind_, date_, note_, add_button}) line->addWidget(w);
    column->addLayout(line);
    connect(kind_, &QComboBox::currentIndexChanged, this,
            [add_button](int index) { add_button->setEnabled(index >= 0); });
    connect(add_button, &QPushButton::clicked, this, &ServicesPanel::add);
    connect(note_, &QLineEdit::returnPressed, this, &ServicesPanel::add);
}

void ServicesPanel::show_services(Id client, Id visit, const QDate& day, const QVector<Service>& services) {
    client_ = client;
    visit_ = visit;
    date_->setDate(day);
    empty_layout(rows_);
    int shown = 0;
    for (const Service& service : services) {
        if (visit > 0 && service.visit != visit && service.date != day) continue;
        ++shown;
        auto* line = new QHBoxLayout;
        line->addWidget(text(beginning(service.kind), "lead"), 2);
        auto* when = text(date_words(service.date), "soft");
        line->addWidget(when, 1);
        auto* erase = sign_button(Sign::remove, tr("Erase %1 of %2").arg(service.kind, date_words(service.date)));
        line->addWidget(erase);
        rows_->addLayout(line);
        if (!service.note.isEmpty()) rows_->addWidget(text(service.note, "caption"));
        connect(erase, &QToolButton::clicked, this, [this, id = service.id] {
            session_.keep(tr("Erasing a service"), this, client_, visit_,
                          [id](Book& book, const Progress&) { return work::erase_service(book, id); });
        });
    }
    if (shown == 0)
        rows_->addWidget(text(visit > 0 ? tr("None at this visit.") : tr("None written down yet."), "soft"));
}

void ServicesPanel::add() {
    if (kind_->currentIndex() < 0 || client_ == 0) return;
    Service service;
    service.client = client_;
    if (visit_ > 0) service.visit = visit_;
    service.date = date_->date();
    service.kind = kind_->currentText();
    service.note = note_->text().trimmed();
    kind_->setCurrentIndex(-1);
    note_->clear();
    session_.keep(tr("Keeping the service"), this, client_, visit_,
                  [service](Book& book, const Progress&) { return work::add_service(book, service); });
}

}  // namespace kempt::desk
