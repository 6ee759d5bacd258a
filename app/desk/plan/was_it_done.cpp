#include "desk/plan/was_it_done.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
WasItDone::WasItDone(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "caution");
    auto* column = column_in(this, 4, 2);
    heading_ = text({}, "heading");
    column->addWidget(heading_);
    caption_ = text({}, "caption");
    column->addWidget(caption_);
    rows_ = new QVBoxLayout;
    rows_->setSpacing(measures().gap(2));
    column->addLayout(rows_);
    hide();
}

void WasItDone::show_open(const QVector<Service>& planned, const QString& history) {
    if (planned == shown_ && history == history_) return;  // the focus stays
    shown_ = planned;
    history_ = history;
    empty_layout(rows_);
    done_.clear();
    all_there_ = nullptr;
    answers_.clear();
    heading_->setText(planned.isEmpty() ? tr("Is the record complete?") : tr("Was it done?"));
    caption_->setText(planned.isEmpty()
                          ? tr("Until somebody says so, this hair may have been through anything. D answers too.")
                          : tr("Until somebody says so, the rules take it as perhaps done. D answers too."));
    for (const Service& service : planned) {
        const QString named = tr("%1, planned for %2").arg(said(service.kind), date_words(service.date));
        auto* yes = button(tr("Done"));
        yes->setAccessibleName(tr("It was done: %1").arg(named));
        auto* open = button(tr("Open it"), "quiet");
        open->setAccessibleName(tr("Open it, to move its day or erase it: %1").arg(named));
        auto* row = new QWidget;
        for (QPushButton* one : {yes, open}) answer_with_d(one, yes);
        auto* inside = column_in(row, 0, 1);
        inside->addWidget(text(beginning(named)));
        auto* acts = new FlowLayout(measures().gap(2));
        acts->addWidget(yes);
        acts->addWidget(open);
        inside->addLayout(acts);
        rows_->addWidget(row);
        done_.append(yes);
        connect(yes, &QPushButton::clicked, this, [this, service] { emit done(service); });
        connect(open, &QPushButton::clicked, this, [this, id = service.id] { emit opened(id); });
    }
    if (!history.isEmpty()) {
        all_there_ = button(tr("Every service is in the record"));
        auto* row = new QWidget;
        answer_with_d(all_there_, all_there_);
        auto* inside = column_in(row, 0, 1);
        inside->addWidget(text(history));
        auto* acts = new FlowLayout(measures().gap(2));
        acts->addWidget(all_there_);
        inside->addLayout(acts);
        rows_->addWidget(row);
        connect(all_there_, &QPushButton::clicked, this, &WasItDone::all_there);
    }
    setVisible(!planned.isEmpty() || !history.isEmpty());
}

void WasItDone::answer_with_d(QPushButton* focused, QPushButton* answer) {
    answers_.insert(focused, answer);
    focused->installEventFilter(this);
}

bool WasItDone::eventFilter(QObject* object, QEvent* event) {
    if (event->type() == QEvent::KeyPress && answers_.contains(object)) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_D && key->modifiers() == Qt::NoModifier) {
            answers_.value(object)->click();
            return true;
        }
    }
    return QFrame::eventFilter(object, event);
}

}  // namespace kempt::desk
