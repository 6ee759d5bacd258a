#include "desk/client/client_page.h"

#include <QAction>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QMenu>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "desk/client/client_data.h"
#include "desk/client/client_form.h"
#include "desk/client/keep_client.h"
#include "desk/client/progress_panel.h"
#include "desk/client/services_panel.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/confirm.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "desk/widgets/photo_tile.h"
#include "domain/clock.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

constexpr int two_columns_from = 840;  // px at 100 %
constexpr qsizetype first_visits = 4;  // about as high as the progress beside them
constexpr qsizetype more_visits_step = 12;
constexpr int left_share = 5, right_share = 6;  // of the width: visits, progress
constexpr int two_cards_from = 840;             // two cards of three pictures each and the gap between

QString hair_words(const HairState& hair) {
    QStringList words{hair.wet ? QObject::tr("wet") : QObject::tr("dry")};
    words.append(hair.styled ? QObject::tr("styled") : QObject::tr("unstyled"));
    words.append(hair.product ? QObject::tr("with product") : QObject::tr("no product"));
    return words.join(QStringLiteral(", "));
}

}  // namespace

ClientPage::ClientPage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* page = scrolled();
    name_ = text({}, "title");
    name_->setAlignment(Qt::AlignLeft | Qt::AlignAbsolute);  // also a name that is written from the right
    below_ = text({}, "soft");
    note_ = text({});
    note_->setAlignment(Qt::AlignLeft | Qt::AlignAbsolute);
    auto* acts = new FlowLayout(measures().gap(2));
    auto* visit = button(tr("New visit"), "primary", Sign::add);
    auto* plan = button(tr("Plan"), "", Sign::plan);
    plan->setAccessibleName(tr("Plan: what can this hair take today"));
    auto* compare = button(tr("Before and after"), "", Sign::compare);
    auto* report = button(tr("Report"), "", Sign::report);
    auto* profile = button(tr("Hair and days"), "", Sign::hair);
    profile->setAccessibleName(tr("Hair and days: what she told of her hair and her daily life"));
    auto* more = sign_button(Sign::more, tr("More about this client"));
    auto* menu = new QMenu(more);
    menu->addAction(tr("Change name, note or consent"), this, &ClientPage::edit);
    menu->addAction(tr("Erase this client…"), this, &ClientPage::ask_to_erase);
    more->setMenu(menu);
    more->setPopupMode(QToolButton::InstantPopup);
    for (QWidget* w : std::initializer_list<QWidget*>{visit, profile, plan, compare, report, more}) acts->addWidget(w);
    page->addWidget(name_);
    page->addWidget(below_);
    page->addWidget(note_);
    page->addLayout(acts);
    columns_ = new Columns(measures().px(two_columns_from));
    columns_->set_shares(left_share, right_share);
    columns_->left()->addWidget(text(tr("Visits"), "heading"));
    visits_ = new QGridLayout;
    visits_->setContentsMargins(0, 0, 0, 0);
    visits_->setSpacing(measures().gap(3));
    columns_->left()->addLayout(visits_);
    more_visits_ = button({}, "quiet");
    columns_->left()->addWidget(more_visits_, 0, Qt::AlignLeft);
    columns_->left()->addStretch();
    progress_ = new ProgressPanel(session_);
    services_ = new ServicesPanel(session_);
    columns_->right()->addWidget(progress_);
    columns_->right()->addWidget(services_);
    columns_->right()->addStretch();
    page->addWidget(columns_);
    page->addStretch();

    connect(more_visits_, &QPushButton::clicked, this, &ClientPage::show_more);
    connect(progress_, &ProgressPanel::shown_anew, this, &ClientPage::balance, Qt::QueuedConnection);
    connect(visit, &QPushButton::clicked, this, &ClientPage::add_visit);
    connect(compare, &QPushButton::clicked, this, [this] {
        emit go({Where::compare, client_id_, 0, 0, progress_->chosen_view()});
    });
    connect(plan, &QPushButton::clicked, this, [this] { emit go({Where::plan, client_id_}); });
    connect(report, &QPushButton::clicked, this, [this] { emit go({Where::report, client_id_}); });
    connect(profile, &QPushButton::clicked, this, [this] { emit go({Where::profile, client_id_}); });
    connect(services_, &ServicesPanel::go, this, &Page::go);
    connect(progress_, &ProgressPanel::compare_asked, this, [this](View view) {
        emit go({Where::compare, client_id_, 0, 0, view});
    });
    connect(&session_, &Session::client_changed, this, [this](Id client) {
        if (client == client_id_ && isVisible()) load();  // else when it is shown again
    });
}

bool ClientPage::settled() const {
    return settled_ && progress_->settled();
}

void ClientPage::show_place(const Place& place) {
    if (client_id_ != place.client) {
        to_top();
        most_visits_ = first_visits;
    }
    client_id_ = place.client;
    load();
    progress_->show_client(client_id_);
}

void ClientPage::load() {
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading the client"), this,
        [id = client_id_, most = most_visits_](Book& book, const Progress& progress) {
            return client_data(book, id, most, progress);
        },
        [this](const ClientData& read) {
            settled_ = true;
            if (read.client.id == client_id_) take(read);
        },
        [this] { settled_ = true; });
}

void ClientPage::take(const ClientData& read) {
    client_ = read.client;
    face_ = read.face;
    name_->setText(breakable(client_.name));
    QStringList words;
    if (client_.since.isValid()) words.append(tr("since %1").arg(date_words(client_.since)));
    words.append(counted(read.all_visits, tr("visit"), tr("visits")));
    words.append(client_.photo_consent ? tr("photos may leave the book") : tr("photos stay in the book"));
    below_->setText(beginning(words.join(QStringLiteral("\u00a0\u00a0·  "))));
    note_->setText(breakable(client_.note));
    note_->setVisible(!client_.note.isEmpty());
    empty_layout(visits_);
    cards_.clear();
    for (const VisitOnPage& visit : read.visits) cards_.append(visit_card(visit));
    const qsizetype hidden = read.all_visits - read.visits.size();
    more_visits_->setVisible(hidden > 0);
    more_visits_->setText(tr("Earlier visits (%1 more)").arg(hidden));
    more_visits_->setAccessibleName(more_visits_->text());
    if (read.visits.isEmpty())
        cards_.append(text(tr("No visit yet. “New visit” opens one for today, ready for photos."), "soft"));
    lay_cards();
    services_->show_services(client_id_, 0, Clock().today(), read.services);
    emit trail_changed({{client_.name, {Where::client, client_id_}}});
    QMetaObject::invokeMethod(this, &ClientPage::balance, Qt::QueuedConnection);
}

void ClientPage::show_more() {
    most_visits_ += more_visits_step;
    load();
}

// Newest first, along the rows; two beside each other where both have room for three pictures.
void ClientPage::lay_cards() {
    const bool beside = columns_->width() >= measures().px(two_columns_from);
    const int width = beside ? columns_->width() * left_share / (left_share + right_share) : columns_->width();
    const int across = cards_.size() > 1 && width >= measures().px(two_cards_from) ? 2 : 1;
    if (visits_->count() == cards_.size() && visits_->columnStretch(1) == across - 1) return;
    for (QWidget* card : cards_) visits_->removeWidget(card);
    visits_->setColumnStretch(0, 1);
    visits_->setColumnStretch(1, across - 1);
    for (int i = 0; i < cards_.size(); ++i) visits_->addWidget(cards_[i], i / across, i % across);
}

// Visits on the left and progress on the right are seldom of one height; the services are set below the shorter one, so
// that no column ends halfway down the page.
void ClientPage::balance() {
    const bool beside = columns_->width() >= measures().px(two_columns_from);
    const auto height = [](QWidget* widget) {
        const int width = widget->width();
        return widget->hasHeightForWidth() ? widget->heightForWidth(width) : widget->sizeHint().height();
    };
    lay_cards();
    visits_->activate();
    int visits = more_visits_->isHidden() ? 0 : more_visits_->height();
    const int across = visits_->columnStretch(1) + 1;
    for (int i = 0; i < cards_.size(); i += across) {
        int tallest = height(cards_[i]);
        if (across > 1 && i + 1 < cards_.size()) tallest = std::max(tallest, height(cards_[i + 1]));
        visits += tallest + visits_->verticalSpacing();
    }
    const bool left = beside && visits < height(progress_);
    QBoxLayout* wanted = left ? columns_->left() : columns_->right();
    if (wanted->indexOf(services_) >= 0) return;
    (left ? columns_->right() : columns_->left())->removeWidget(services_);
    wanted->insertWidget(wanted->count() - 1, services_);  // before the stretch
    tidy_focus_order_later(columns_);
}

void ClientPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    QMetaObject::invokeMethod(this, &ClientPage::balance, Qt::QueuedConnection);
}

QWidget* ClientPage::visit_card(const VisitOnPage& visit) {
    auto* card = panel("surface");
    auto* column = column_in(card, 3, 2);
    const Place place{Where::visit, client_id_, visit.visit.id};
    auto* head = new QHBoxLayout;
    auto* open = button(date_words(visit.visit.date), "trail");
    open->setAccessibleName(tr("Open the visit of %1").arg(date_words(visit.visit.date)));
    connect(open, &QPushButton::clicked, this, [this, place] { emit go(place); });
    head->addWidget(open);
    head->addStretch();
    auto* count = text(counted(visit.photos, tr("photo"), tr("photos")), "caption");
    count->setWordWrap(false);
    head->addWidget(count);
    column->addLayout(head);
    column->addWidget(text(hair_words(visit.visit.hair), "caption"));
    if (!visit.visit.note.isEmpty()) column->addWidget(text(breakable(visit.visit.note)));
    if (!visit.best.isEmpty()) {
        auto* tiles = new FlowLayout(measures().gap(1));
        for (const work::PhotoRow& row : visit.best) {
            const auto cover = std::find_if(row.readings.begin(), row.readings.end(), [](const ReadingRecord& r) {
                return r.name == "edge_coverage" && !r.refused;
            });
            const QString reading =
                cover != row.readings.end()
                    ? tr("covered %1–%2 %").arg(std::lround(cover->low)).arg(std::lround(cover->high))
                    : QString();
            const auto stand =
                row.photo.quality_level == "refused" ? PhotoTile::Stand::refused : PhotoTile::Stand::none;
            auto* tile = new PhotoTile(row.photo.thumbnail, beginning(said(word_of(row.photo.view))), reading, stand);
            tile->set_picture_size({116, 80});
            const Place photo{Where::photo, client_id_, visit.visit.id, row.photo.id, row.photo.view};
            connect(tile, &PhotoTile::clicked, this, [this, photo] { emit go(photo); });
            tiles->addWidget(tile);
        }
        column->addLayout(tiles);
    }
    return card;
}

void ClientPage::add_visit() {
    Visit visit;
    visit.client = client_id_;
    visit.date = Clock().today();
    session_.ask(
        session_.records(), tr("Opening a visit"), this,
        [visit](Book& book, const Progress&) { return work::add_visit(book, visit); },
        [this](const Visit& kept) {
            session_.changed(kept.client, kept.id);
            emit go({Where::visit, kept.client, kept.id});
        });
}

void ClientPage::edit() {
    auto* form = new ClientForm(client_, Clock().today(), this);
    form->set_face_wish(face_);
    connect(form, &ClientForm::ready, this, [this, form](const Client& client) {
        keep_client(session_, this, {client, form->face_wish()});
    });
    form->open();
}

void ClientPage::ask_to_erase() {
    ask_before_erasing(this, tr("Erase %1 with every visit, photo and reading?").arg(name_within(client_.name)),
                       tr("This cannot be taken back. Backups of the book that you made earlier still hold her: erase "
                          "those yourself."),
                       [this] {
                           session_.ask(
                               session_.records(), tr("Erasing a client"), this,
                               [id = client_id_](Book& book, const Progress&) { return work::erase_client(book, id); },
                               [this](Done) {
                                   emit session_.clients_changed();
                                   emit go({});
                               });
                       });
}

}  // namespace kempt::desk
