#include "desk/photo/tool_row.h"

#include <QAction>
#include <QMenu>

#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

QToolButton* worded(Sign sign, const QString& words, const QString& help) {
    QToolButton* b = sign_button(sign, help);
    b->setText(QLatin1Char(' ') + words);
    b->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    return b;
}

}  // namespace

ToolRow::ToolRow(FlowLayout* row, QObject* parent) : QObject(parent) {
    auto* menu = new QMenu;
    for (const Tool tool : all_tools()) {
        QToolButton* b =
            worded(sign_of(tool), name_of(tool), QStringLiteral("%1: %2").arg(name_of(tool), help_of(tool)));
        b->setCheckable(true);
        buttons_.insert(tool, b);
        row->addWidget(b);
        connect(b, &QToolButton::clicked, this, [this, tool] { choose(tool); });
        QAction* entry = menu->addAction(icon_of(sign_of(tool)), name_of(tool), this, [this, tool] { choose(tool); });
        entry->setToolTip(help_of(tool));
        entries_.insert(tool, entry);
    }
    menu->setToolTipsVisible(true);
    more_ = worded(Sign::more, tr("More"), tr("More to measure on this photo"));
    more_->setPopupMode(QToolButton::InstantPopup);
    menu->setParent(more_, menu->windowFlags());
    more_->setMenu(menu);
    row->addWidget(more_);
    turn_ = worded(Sign::flip, turn_words(Tool::edge_line), {});
    row->addWidget(turn_);
    connect(turn_, &QToolButton::clicked, this, &ToolRow::turn_asked);
    refresh({}, false);
}

bool ToolRow::in_row(Tool tool) const {
    return tool == tool_ || first_tools(view_).contains(tool) || has_drawn(tool, marks_) ||
           (tool == Tool::ruler && scale_missing_);
}

void ToolRow::begin(View view, const Marks& marks) {
    view_ = view;
    marks_ = marks;
    scale_missing_ = false;
    // What was drawn before goes on; a fresh photo begins with what its view is for.
    Tool first = first_tools(view).first();
    for (const Tool tool : first_tools(view))
        if (!has_drawn(first, marks) && has_drawn(tool, marks)) first = tool;
    take(first, false);
}

void ToolRow::choose(Tool tool) {
    take(tool, true);
}

void ToolRow::take(Tool tool, bool by_hand) {
    tool_ = tool;
    refresh(marks_, scale_missing_);
    emit chosen(tool, by_hand);
}

void ToolRow::refresh(const Marks& marks, bool scale_missing) {
    marks_ = marks;
    scale_missing_ = scale_missing;
    int waiting = 0;
    for (const Tool tool : all_tools()) {
        const bool here = in_row(tool);
        buttons_[tool]->setVisible(here);
        buttons_[tool]->setChecked(tool == tool_);
        entries_[tool]->setVisible(!here);
        if (!here) ++waiting;
    }
    more_->setVisible(waiting > 0);
    const QString words = turn_words(tool_);
    turn_->setVisible(!words.isEmpty());
    turn_->setEnabled(can_turn(tool_, marks_));
    turn_->setText(QLatin1Char(' ') + words);
    const QString help = tool_ == Tool::tone ? tr("The scalp is at the other end of the line (F)")
                         : tool_ == Tool::shine || tool_ == Tool::hem
                             ? tr("The next side lies towards the roots (F)")
                             : tr("The hair is on the other side of the line (F)");
    turn_->setToolTip(help);
    turn_->setAccessibleName(help);
}

}  // namespace kempt::desk
