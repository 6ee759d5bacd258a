#include "desk/consultation/service_page.h"

#include <QComboBox>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/client/keep_service.h"
#include "desk/consultation/kept_strip.h"
#include "desk/consultation/service_record.h"
#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/session/keep_entry.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "work/care_state.h"
#include "work/keep_records.h"

namespace kempt::desk {
namespace {

constexpr int pause_ms = 500;  // after the last key: between two words, not between two letters

}  // namespace

Result<ServiceData> service_data(Book& book, Id id) {
    ServiceData data;
    auto service = work::service_of(book, id);
    if (!service) return service.error();
    data.service = std::move(service).value();
    auto client = work::client_of(book, data.service.client);
    if (!client) return client.error();
    data.client = std::move(client).value();
    const auto state = work::care_state_for_dates(book, data.client.id, data.service.date);
    if (!state) return state.error();
    data.length_mm = state->length_mm;
    return data;
}

ServicePage::ServicePage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* page = scrolled();
    title_ = text({}, "title");
    below_ = text({}, "soft");
    page->addWidget(title_);
    page->addWidget(below_);
    kind_ = new QComboBox;
    kind_->setAccessibleName(tr("What was done"));
    kind_->setFocusPolicy(Qt::StrongFocus);
    kind_->setMaxVisibleItems(24);
    kind_->setMinimumContentsLength(14);
    kind_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    kind_->setMinimumWidth(measures().px(320));
    for (const RecordGroup& group : record_groups())
        for (const QString& kind : group.kinds) kind_->addItem(beginning(said(kind)), kind);
    day_ = new QDateEdit;
    day_->setAccessibleName(tr("Day of the service"));
    day_->setLocale(QLocale());  // as date_words
    day_->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    day_->setCalendarPopup(true);
    day_->setMinimumWidth(measures().px(150));
    auto* erase_button = button(tr("Erase"), "quiet", Sign::remove);
    erase_button->setAccessibleName(tr("Erase this service"));
    auto* row = new FlowLayout(measures().gap(3));
    row->addWidget(labelled(tr("What was done"), kind_));
    row->addWidget(labelled(tr("Day"), day_));
    row->addWidget(labelled(QStringLiteral(" "), erase_button));
    page->addLayout(row);
    strip_ = new KeptStrip;
    page->addWidget(strip_);
    body_ = new QVBoxLayout;
    page->addLayout(qobject_cast<QVBoxLayout*>(body_));
    page->addStretch();

    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, &ServicePage::keep);
    connect(strip_, &KeptStrip::undo_asked, this, &ServicePage::take_back);
    connect(&session_.undo(), &Undo::changed, this, &ServicePage::show_undo);
    connect(erase_button, &QPushButton::clicked, this, &ServicePage::erase);
    connect(kind_, &QComboBox::currentIndexChanged, this, [this] {
        if (filling_) return;
        Service service = record_ != nullptr ? record_->service() : shown_;
        service.kind = kind_->currentData().toString();
        show_service(service);  // other fields
        kind_->setFocus(Qt::OtherFocusReason);
        entered();
    });
    connect(day_, &QDateEdit::dateChanged, this, [this](const QDate& day) {
        if (filling_ || record_ == nullptr) return;
        record_->set_day(day);
        entered();
    });
    connect(&session_, &Session::client_changed, this, [this](Id client) {
        if (client == place_.client && isVisible() && !keeping_ && !pause_.isActive()) load();
    });
}

bool ServicePage::settled() const {
    return settled_ && !keeping_ && !pause_.isActive();
}

void ServicePage::show_place(const Place& place) {
    if (place.service != place_.service) {
        to_top();
        strip_->say_nothing_yet();
    }
    place_ = place;
    load();
}

void ServicePage::put_away(std::function<void()> then) {
    if (QWidget* typed_in = focusWidget()) typed_in->clearFocus();  // a day that was emptied is none from here on
    if (pause_.isActive()) {
        pause_.stop();
        keep();
    }
    then();
}

void ServicePage::load() {
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading the service"), this,
        [id = place_.service](Book& book, const Progress&) { return service_data(book, id); },
        [this](const ServiceData& read) {
            settled_ = true;
            if (read.service.id == place_.service && !pause_.isActive() && !keeping_) take(read);
        },
        [this] { settled_ = true; });
}

void ServicePage::take(const ServiceData& read) {
    const bool fresh = data_.service.id != read.service.id;
    const bool same_fields = record_ != nullptr && data_.length_mm == read.length_mm;
    data_ = read;
    if (!same_fields || !(record_->service() == read.service)) show_service(read.service);
    if (fresh) record_->focus_first();
    show_undo();
    Trail trail{{data_.client.name, {Where::client, data_.client.id}}};
    if (place_.visit > 0) trail.append({tr("Visit"), {Where::visit, place_.client, place_.visit}});
    trail.append({tr("Service"), place_});
    emit trail_changed(trail);
}

void ServicePage::show_service(const Service& service) {
    filling_ = true;
    shown_ = service;
    title_->setText(beginning(said(service.kind)));
    below_->setText(tr("%1  ·  %2").arg(name_within(data_.client.name), date_words(service.date)));
    const int index = kind_->findData(service.kind);
    kind_->setCurrentIndex(index);
    day_->setMaximumDate(std::max(Clock().today().addYears(1), service.date));  // planned ahead
    day_->setDate(service.date);
    empty_layout(body_);
    record_ = new ServiceRecord(service, data_.length_mm);
    body_->addWidget(record_);
    connect(record_, &ServiceRecord::entered, this, &ServicePage::entered);
    filling_ = false;
    tidy_focus_order_later(this);
}

void ServicePage::entered() {
    if (filling_ || record_ == nullptr) return;
    shown_ = record_->service();
    below_->setText(tr("%1  ·  %2").arg(name_within(data_.client.name), date_words(shown_.date)));
    pause_.start();
}

void ServicePage::keep() {
    if (shown_ == data_.service || shown_.id == 0) return strip_->say_kept();
    keeping_ = true;
    const Service service = shown_;
    const Id visit = service.visit.value_or(0);
    keep_entry(
        session_, tr("Keeping the service"), this,
        {tr("the last change of the %1 of %2").arg(said(service.kind), date_words(service.date)),
         about_service(service.id),
         service.client,
         visit,
         {}},
        [id = service.id](Book& book) { return work::service_of(book, id); },
        [service](Book& book) { return work::change_service(book, service); },
        [this, service, visit](const Status& kept) {
            if (!kept.ok()) {
                keeping_ = false;
                tell_not_kept(session_, kept.error());     // the line above the fields may be out of sight
                if (place_.service != service.id) return;  // she has gone on
                strip_->say_not_kept(said(kept.error().what));
                return show_undo();
            }
            if (place_.service == service.id) {
                data_.service = service;
                strip_->say_kept();
                show_undo();
            }
            session_.changed(service.client, visit);  // the other pages read it anew
            keeping_ = false;
        });
}

void ServicePage::show_undo() {
    if (!(shown_ == data_.service)) return strip_->set_undo(tr("what was entered last"));
    strip_->set_undo(session_.undo().words(place_.client, about_service(place_.service)));
}

void ServicePage::take_back() {
    if (!(shown_ == data_.service)) {  // not in the book yet, or refused by it
        pause_.stop();
        show_service(data_.service);
        strip_->say_kept();
        return show_undo();
    }
    session_.undo().take_back(place_.client, about_service(place_.service));
}

void ServicePage::do_again() {
    if (shown_ == data_.service) session_.undo().do_again(place_.client, about_service(place_.service));
}

// The panel that lists services offers to put it back.
void ServicePage::erase() {
    pause_.stop();
    const Id client = place_.client, visit = place_.visit;
    erase_service(session_, this, data_.service, data_.service.visit.value_or(0), [this, client, visit] {
        if (visit > 0)
            emit go({Where::visit, client, visit});
        else
            emit go({Where::client, client});
    });
}

}  // namespace kempt::desk
