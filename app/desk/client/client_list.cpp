#include "desk/client/client_list.h"

#include <QLineEdit>
#include <QListView>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"
#include "work/keep_records.h"

namespace kempt::desk {
namespace {

constexpr int reload_pause_ms = 300;
constexpr int below_role = Qt::UserRole, id_role = Qt::UserRole + 1, shorter_role = Qt::UserRole + 2;

// Accents and case do not count in a search.
QString folded(const QString& words) {
    QString out;
    for (const QChar c : words.normalized(QString::NormalizationForm_KD))
        if (c.category() != QChar::Mark_NonSpacing) out += c;
    return out.toCaseFolded();
}

class TwoLines : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
        const Measures& m = measures();
        return {m.px(120), static_cast<int>((m.body + m.caption) * 1.35) + m.gap(4)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const Colours& c = colours();
        const Measures& m = measures();
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRectF box = QRectF(option.rect).adjusted(1, 1, -1, -1);
        const bool picked = option.state & QStyle::State_Selected;
        if (picked || option.state & QStyle::State_MouseOver) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(picked ? c.accent_wash : c.raised_over);
            painter->drawRoundedRect(box, m.radius, m.radius);
        }
        if (picked) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(c.accent);
            painter->drawRoundedRect(QRectF(box.left(), box.top() + m.gap(2), 4, box.height() - m.gap(4)), 2, 2);
        }
        if (option.state & QStyle::State_HasFocus) {
            painter->setBrush(Qt::NoBrush);
            painter->setPen(QPen(c.focus, 2));
            painter->drawRoundedRect(box, m.radius, m.radius);
        }
        QFont font = option.font;
        QRect line = option.rect.adjusted(m.gap(3), m.gap(2), -m.gap(2), 0);
        const auto write = [&](const QString& words, int px, bool bold, const QColor& colour) {
            font.setPixelSize(px);
            font.setBold(bold);
            painter->setFont(font);
            painter->setPen(colour);
            const QFontMetrics metrics(font);
            line.setHeight(metrics.height());
            // A name that is written from the right is read, and shortened, from there; it stands where the others do.
            painter->setLayoutDirection(words.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
            painter->drawText(
                line,
                Qt::AlignAbsolute | Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip,  // other scripts reach farther
                metrics.elidedText(words, Qt::ElideRight, line.width()));
            line.translate(0, metrics.height());
        };
        write(index.data(Qt::DisplayRole).toString(), m.body, true, c.ink);
        font.setPixelSize(m.caption);
        font.setBold(false);
        QString below = index.data(below_role).toString();
        // The day is told whole: where both do not fit, it stands alone.
        if (QFontMetrics(font).horizontalAdvance(below) > line.width()) below = index.data(shorter_role).toString();
        write(below, m.caption, false, c.ink_soft);
        painter->restore();
    }
};

}  // namespace

void ClientModel::set_clients(QVector<ListedClient> clients) {
    beginResetModel();
    all_ = std::move(clients);
    filter();
    endResetModel();
}

void ClientModel::set_search(const QString& letters) {
    beginResetModel();
    letters_ = folded(letters.trimmed());
    filter();
    endResetModel();
}

void ClientModel::filter() {
    shown_.clear();
    for (int i = 0; i < all_.size(); ++i)
        if (letters_.isEmpty() || all_[i].folded.contains(letters_)) shown_.append(i);
}

int ClientModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

// Made when a row is shown: thousands of dates in words would hold the window up.
QString ClientModel::below(const ListedClient& client) {
    return client.last_visit ? ClientList::tr("%1, last %2")
                                   .arg(counted(client.visits, ClientList::tr("visit"), ClientList::tr("visits")),
                                        short_date_words(*client.last_visit))
                             : ClientList::tr("no visit yet");
}

QVariant ClientModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= shown_.size()) return {};
    const ListedClient& client = all_[shown_[index.row()]];
    switch (role) {
        case Qt::DisplayRole:
            return client.name;
        case Qt::ToolTipRole:
            return client.name;
        case Qt::AccessibleTextRole:
            return client.name + QStringLiteral(", ") + below(client);
        case below_role:
            return below(client);
        case shorter_role:
            return client.last_visit ? ClientList::tr("last %1").arg(short_date_words(*client.last_visit))
                                     : below(client);
        case id_role:
            return client.id;
        default:
            return {};
    }
}

Id ClientModel::id_at(int row) const {
    return row >= 0 && row < shown_.size() ? all_[shown_[row]].id : 0;
}

int ClientModel::row_of(Id id) const {
    for (int row = 0; row < shown_.size(); ++row)
        if (all_[shown_[row]].id == id) return row;
    return -1;
}

ClientList::ClientList(Session& session, QWidget* parent)
    : QFrame(parent), session_(session), model_(new ClientModel(this)) {
    setProperty("panel", "side");
    auto* column = column_in(this, 4, 3);
    auto* heading = text(tr("Clients"), "heading");
    search_ = new QLineEdit;
    search_->setPlaceholderText(tr("Find by name"));
    search_->setAccessibleName(tr("Find a client by a few letters of the name"));
    search_->setClearButtonEnabled(true);
    view_ = new QListView;
    view_->setModel(model_);
    view_->setItemDelegate(new TwoLines(view_));
    view_->setAccessibleName(tr("Clients"));
    view_->setMouseTracking(true);
    view_->setUniformItemSizes(true);
    view_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->setTabKeyNavigation(false);
    empty_ = text({}, "soft");
    auto* add = button(tr("New client"), "", Sign::add);
    column->addWidget(heading);
    column->addWidget(search_);
    column->addWidget(empty_);
    column->addWidget(view_, 1);
    column->addStretch(0);  // takes the room where there is no list
    column->addWidget(add);

    connect(add, &QPushButton::clicked, this, &ClientList::add_asked);
    connect(search_, &QLineEdit::textChanged, this, [this](const QString& letters) {
        model_->set_search(letters);
        pick(picked_);
        show_emptiness();
    });
    const auto choose = [this](const QModelIndex& index) {
        if (const Id id = model_->id_at(index.row()); id > 0) emit chosen(id);
    };
    connect(view_, &QListView::clicked, this, choose);
    connect(view_, &QListView::activated, this, choose);
    connect(search_, &QLineEdit::returnPressed, this, [this] {
        if (const Id id = model_->id_at(0); id > 0) emit chosen(id);
    });
    // What is entered changes the list at most in one row; several changes in a row are read once.
    pause_.setSingleShot(true);
    pause_.setInterval(reload_pause_ms);
    connect(&pause_, &QTimer::timeout, this, &ClientList::load);
    connect(&session_, &Session::clients_changed, this, [this] { pause_.start(); });
    load();
}

void ClientList::load() {
    session_.ask(
        session_.records(), tr("Reading the clients"), this,
        [](Book& book, const Progress&) -> Result<QVector<ListedClient>> {
            const auto rows = work::list_clients(book);
            if (!rows) return rows.error();
            QVector<ListedClient> clients;
            clients.reserve(rows->size());
            for (const work::ClientRow& row : *rows)
                clients.append({row.client.id, row.client.name, folded(row.client.name), row.visits, row.last_visit});
            return clients;
        },
        [this](QVector<ListedClient> clients) {
            model_->set_clients(std::move(clients));
            loaded_ = true;
            pick(picked_);
            show_emptiness();
        });
}

void ClientList::show_emptiness() {
    const bool none = model_->rowCount() == 0;
    empty_->setVisible(none && loaded_);
    view_->setVisible(!none);
    if (none)
        empty_->setText(search_->text().isEmpty() ? tr("Nobody is in this book yet.")
                                                  : tr("No name here has “%1” in it.").arg(search_->text()));
}

void ClientList::pick(Id client) {
    picked_ = client;
    const int row = model_->row_of(client);
    if (row >= 0)
        view_->setCurrentIndex(model_->index(row));
    else
        view_->clearSelection();
}

void ClientList::focus_search() {
    search_->setFocus(Qt::ShortcutFocusReason);
    search_->selectAll();
}

}  // namespace kempt::desk
