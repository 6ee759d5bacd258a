#include "desk/start/due_page.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHash>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/plan/calendar_file.h"
#include "desk/plan/plan_words.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/fringe_bar.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "work/care_state.h"

namespace kempt::desk {
namespace {

constexpr int clients_at_once = 30;  // a screen and a half; the rest is asked for
constexpr int pause_ms = 400;        // several changes in a row are read once
constexpr int rows_a_turn = 3;       // own choice: making and laying out three takes less than a frame of the screen
constexpr auto content_name = "due-content";

QString words_of(const work::DueLine& line) {
    QString when = DuePage::tr("%1: %2 to %3")
                       .arg(beginning(said(word_of(line.range.sort))), short_date_words(work::date_of(line.range.from)),
                            short_date_words(work::date_of(line.range.to)));
    if (line.overdue) when += DuePage::tr(", passed");
    return when;
}

// Everything that a row says: two rows with the same are the same.
QString content_of(const std::vector<const work::DueLine*>& lines) {
    QStringList parts{QString::number(lines.front()->client), lines.front()->name};
    for (const work::DueLine* line : lines)
        parts << said(word_of(line->range.sort)) << QString::number(line->range.from) << QString::number(line->range.to)
              << (line->overdue ? QStringLiteral("passed") : QString()) << QString::fromStdString(line->range.reason);
    return parts.join(QChar(0x1F));
}

void drop_row(QBoxLayout* rows, int index) {
    QLayoutItem* item = rows->takeAt(index);
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
}

}  // namespace

DuePage::DuePage(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    setProperty("page", true);
    setAttribute(Qt::WA_StyledBackground);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* inside = new QWidget;
    outer->addWidget(scroll_area(inside));
    auto* column = column_in(inside, 6, 3);
    column->addWidget(text(tr("Who is in the chair?"), "title"));
    auto* fringe = new FringeBar;
    fringe->set_share(0.6);
    fringe->setAccessibleName(tr("A row of strands coming back, for decoration"));
    fringe->setMaximumWidth(measures().px(320));
    column->addWidget(fringe);
    column->addWidget(
        text(tr("Pick her on the left, or find her by a few letters (Ctrl+F). A new client takes two fields (Ctrl+N)."),
             "soft"));
    box_ = panel("surface");
    box_->setMaximumWidth(measures().px(980));
    auto* due = column_in(box_, 4, 2);
    due->addWidget(text(tr("Who is due"), "heading"));
    sum_ = text({}, "soft");
    due->addWidget(sum_);
    rows_ = new QVBoxLayout;
    rows_->setSpacing(measures().gap(1));
    due->addLayout(rows_);
    auto* acts = new FlowLayout(measures().gap(3));
    more_ = button({}, "quiet");
    save_ = button(tr("Save for a calendar…"), "", Sign::report);
    with_names_ = new QCheckBox(tr("with names"));
    with_names_->setAccessibleName(tr("The calendar file carries the clients' names"));
    with_names_->setToolTip(tr("The file leaves the book. Without names it says the clients' numbers."));
    for (QWidget* w : std::initializer_list<QWidget*>{more_, save_, with_names_}) acts->addWidget(w);
    due->addLayout(acts);
    column->addWidget(box_);
    column->addStretch();
    more_->hide();
    save_->hide();
    with_names_->hide();
    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, &DuePage::refresh);
    connect(&session_, &Session::clients_changed, this, [this] {
        stale_ = true;
        if (isVisible()) pause_.start();
    });
    filling_.setInterval(0);
    connect(&filling_, &QTimer::timeout, this, &DuePage::fill_some);
    connect(more_, &QPushButton::clicked, this, [this] {
        shown_ += clients_at_once;
        fill();
    });
    connect(save_, &QPushButton::clicked, this, [this] {
        choose_calendar_file(this, tr("who is due.ics"), [this](const QString& path) { write_to(path); });
    });
}

void DuePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!filled_) filling_.start();
    if (stale_ || list_.today != Clock().today()) refresh();
}

void DuePage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    filling_.stop();
}

void DuePage::refresh() {
    stale_ = false;
    settled_ = false;
    if (list_.clients == 0) sum_->setText(tr("Reading the book…"));
    work::DueOptions options;
    options.today = Clock().today();
    session_.ask(
        session_.bench(), tr("Looking up who is due"), this,
        [options](Book& book, const Progress& progress) { return work::due_list(book, options, progress); },
        [this](work::DueList list) {
            settled_ = true;
            take(std::move(list));
        },
        [this] {
            settled_ = true;
            sum_->setText(tr("Who is due could not be read."));
        });
}

void DuePage::take(work::DueList list) {
    filling_.stop();
    clients_.clear();  // they point into the list
    list_ = std::move(list);
    shown_ = clients_at_once;
    const auto late =
        std::count_if(list_.lines.begin(), list_.lines.end(), [](const work::DueLine& line) { return line.overdue; });
    QString words;
    if (list_.lines.empty()) {
        words = tr("Nobody in the next fortnight. Dates are counted from services and photos that are in the book.");
    } else {
        QStringList parts;
        const auto soon = static_cast<qsizetype>(list_.lines.size()) - late;
        if (late > 0) parts.append(tr("%1 past the last day").arg(counted(late, tr("date"), tr("dates"))));
        if (soon > 0) parts.append(tr("%1 now or within a fortnight").arg(soon));
        words = beginning(parts.join(QStringLiteral(", "))) + QLatin1Char('.');
    }
    if (list_.long_overdue > 0)
        words += tr(" %1 more passed over a quarter of a year ago and are not listed.").arg(list_.long_overdue);
    sum_->setText(words);
    fill();
}

// All dates of one client: she is rung up once.
QWidget* DuePage::client_row(const Lines& lines) {
    auto* row = new Columns(measures().px(420));
    row->set_shares(2, 5);
    row->expect_width(rows_->geometry().width());
    row->layout()->setSpacing(measures().gap(2));
    row->left()->setSpacing(0);
    row->right()->setSpacing(measures().gap(0.5));
    row->right()->addStretch();  // one date stands level with the name
    QStringList dates;
    for (const work::DueLine* line : lines) {
        const QString when = words_of(*line);
        auto* words = text(when);
        if (line->overdue) words->setProperty("tone", "caution");
        words->setToolTip(said(line->range.reason));
        row->right()->addWidget(words);
        dates.append(when);
    }
    auto* name = button(shortened(lines.front()->name), "trail");
    name->setToolTip(lines.front()->name);
    name->setAccessibleName(tr("Open %1. %2").arg(lines.front()->name, dates.join(QStringLiteral(". "))));
    connect(name, &QPushButton::clicked, this, [this, id = lines.front()->client] { emit go({Where::client, id}); });
    row->left()->addStretch();
    row->left()->addWidget(name, 0, Qt::AlignLeft);
    row->left()->addStretch();
    row->right()->addStretch();
    row->setProperty(content_name, content_of(lines));
    return row;
}

int DuePage::rows_wanted() const {
    return std::min(shown_, static_cast<int>(clients_.size()));
}

// A few rows in each turn of the event loop, so that no key waits for a screen of them; none while nobody looks.
void DuePage::fill() {
    clients_.clear();
    QHash<Id, std::size_t> at;
    for (const work::DueLine& line : list_.lines) {
        if (!at.contains(line.client)) {
            at.insert(line.client, clients_.size());
            clients_.emplace_back();
        }
        clients_[at[line.client]].push_back(&line);
    }
    next_ = 0;
    filled_ = false;
    if (isVisible()) filling_.start();
}

// Rows that say the same stay; others are put in their places, so that the list never vanishes while it is read.
void DuePage::fill_some() {
    const int wanted = rows_wanted();
    for (int made = 0; next_ < wanted && made < rows_a_turn; ++next_) {
        const QLayoutItem* there = rows_->itemAt(next_);
        if (there != nullptr &&
            there->widget()->property(content_name) == content_of(clients_[static_cast<std::size_t>(next_)]))
            continue;
        put_row(next_);
        ++made;
    }
    if (next_ < wanted) return;
    filling_.stop();
    filled_ = true;
    while (rows_->count() > wanted) drop_row(rows_, wanted);
    const auto left = clients_.size() - static_cast<std::size_t>(wanted);
    more_->setText(tr("%1 more").arg(left));
    more_->setAccessibleName(tr("Show %1 more clients").arg(left));
    more_->setVisible(left > 0);
    save_->setVisible(!list_.lines.empty());
    with_names_->setVisible(!list_.lines.empty());
    tidy_focus_order_later(this);
}

void DuePage::put_row(int index) {
    QWidget* row = client_row(clients_[static_cast<std::size_t>(index)]);
    const QLayoutItem* there = rows_->itemAt(index);
    const bool held = there != nullptr && there->widget()->isAncestorOf(focusWidget());
    rows_->insertWidget(index, row);
    if (there == nullptr) return;
    if (held) {
        row->show();  // what is hidden takes no keyboard
        row->findChild<QPushButton*>()->setFocus();
    }
    drop_row(rows_, index + 1);
}

void DuePage::write_to(const QString& path) {
    write_calendar(
        session_, path,
        [list = list_](Book& book, const work::CalendarOptions& options) {
            return work::calendar_of(book, list, options);
        },
        with_names_->isChecked());
}

}  // namespace kempt::desk
