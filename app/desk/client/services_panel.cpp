#include "desk/client/services_panel.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/client/keep_service.h"
#include "desk/consultation/record_fields.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "desk/widgets/rows_anew.h"
#include "domain/clock.h"
#include "domain/service_words.h"
#include "work/care_state.h"

namespace kempt::desk {
namespace {

constexpr qsizetype first_services = 12, more_services_step = 24;  // own choice: a year's; as with visits, asked for

}  // namespace

ServicesPanel::ServicesPanel(Session& session, QWidget* parent) : QFrame(parent), session_(session) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("Services"), "heading"));
    auto* acts = new FlowLayout(measures().gap(2));
    add_ = button(tr("Add a service"), "", Sign::add);
    auto* menu = new QMenu(add_);
    for (const RecordGroup& group : record_groups()) {
        auto* of = menu->addMenu(group.name);
        for (const QString& kind : group.kinds) of->addAction(beginning(said(kind)), this, [this, kind] { add(kind); });
    }
    add_->setMenu(menu);
    put_back_ = button({}, "quiet", Sign::undo);
    acts->addWidget(add_);
    acts->addWidget(put_back_);
    column->addLayout(acts);
    rows_ = new RowsAnew(measures().gap(2));
    column->addWidget(rows_);
    more_ = button({}, "quiet");
    more_->hide();
    column->addWidget(more_, 0, Qt::AlignLeft);
    connect(more_, &QPushButton::clicked, this, [this] {
        most_ += more_services_step;
        fill();
    });
    connect(put_back_, &QPushButton::clicked, this, &ServicesPanel::put_back);
    connect(&session_.undo(), &Undo::changed, this, &ServicesPanel::show_put_back);
    show_put_back();
}

void ServicesPanel::show_services(Id client, Id visit, const QDate& day, const QVector<Service>& services) {
    if (client != client_ || visit != visit_) most_ = first_services;
    client_ = client;
    visit_ = visit;
    day_ = day;
    services_ = services;
    if (visit > 0)
        services_.removeIf([&](const Service& service) { return service.visit != visit && service.date != day; });
    show_put_back();
    fill();
}

void ServicesPanel::fill() {
    QBoxLayout* rows = rows_->begin();
    const qsizetype shown = std::min(most_, services_.size()), left = services_.size() - shown;
    for (qsizetype i = 0; i < shown; ++i) add_row(services_[i], rows);
    more_->setVisible(left > 0);
    more_->setText(tr("Earlier services (%1 more)").arg(left));
    more_->setAccessibleName(more_->text());
    if (shown == 0)
        rows->addWidget(text(visit_ > 0 ? tr("None at this visit.") : tr("None written down yet."), "soft"));
    rows_->show_rows();
}

void ServicesPanel::add_row(const Service& service, QBoxLayout* rows) {
    auto* item = new QVBoxLayout;
    item->setSpacing(0);
    auto* line = new QHBoxLayout;
    const QString named = tr("%1 of %2").arg(said(service.kind), date_words(service.date));
    auto* open = button(beginning(said(service.kind)), "trail");
    open->setAccessibleName(tr("Open %1").arg(named));
    line->addWidget(open);
    line->addStretch(1);
    auto* when = text(short_date_words(service.date), "soft");
    when->setWordWrap(false);
    line->addWidget(when);
    if (!service.done && service.date <= Clock().today()) {
        auto* done = button(tr("Done"));
        done->setAccessibleName(tr("It was done: %1").arg(named));
        done->setProperty("done_of", service.id);
        line->addWidget(done);
        connect(done, &QPushButton::clicked, this,
                [this, service] { mark_service_done(session_, this, service, visit_); });
    }
    auto* erase_button = sign_button(Sign::remove, tr("Erase %1").arg(named));
    line->addWidget(erase_button);
    item->addLayout(line);
    Service facts = service;
    facts.result.clear();  // her own words, as the note: never looked up
    QStringList words = said(details_of(facts, look().length()));
    if (!service.result.isEmpty()) words.append(service.result.simplified());
    if (!service.note.isEmpty()) words.append(service.note.simplified());
    if (work::asks_whether_done(service, Clock().today()))
        item->addWidget(text(tr("Planned for %1. Was it done?").arg(date_words(service.date)), "strong"));
    if (!words.isEmpty()) item->addWidget(text(beginning(words.join(QStringLiteral("\u00a0\u00a0·  "))), "caption"));
    rows->addLayout(item);
    connect(open, &QPushButton::clicked, this, [this, id = service.id] {
        Place place{Where::service, client_, visit_};
        place.service = id;
        emit go(place);
    });
    connect(erase_button, &QToolButton::clicked, this,
            [this, service] { erase_service(session_, this, service, visit_); });
}

void ServicesPanel::add(const QString& kind) {
    if (client_ == 0) return;
    Service service;
    service.client = client_;
    if (visit_ > 0) service.visit = visit_;
    service.date = day_;
    service.kind = kind;
    add_service(session_, this, service, visit_, [this, visit = visit_](const Service& kept) {
        Place place{Where::service, kept.client, visit};
        place.service = kept.id;
        emit go(place);
    });
}

void ServicesPanel::put_back() {
    session_.undo().take_back(client_, about_erased_service());
}

void ServicesPanel::show_put_back() {
    const QString words = session_.undo().words(client_, about_erased_service());
    put_back_->setVisible(!words.isEmpty());
    if (words.isEmpty()) return;
    put_back_->setText(QLatin1Char(' ') + tr("Put back what was erased"));
    put_back_->setAccessibleName(tr("Put back what was erased: %1").arg(words));
    put_back_->setToolTip(put_back_->accessibleName());
}

}  // namespace kempt::desk
