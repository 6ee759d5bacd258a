#include "desk/window/trail_bar.h"

#include <QHBoxLayout>
#include <QTimer>

#include "desk/look/look.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
TrailBar::TrailBar(const QString& book_name, QWidget* parent) : QFrame(parent), book_name_(book_name) {
    setProperty("panel", "bar");
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(measures().gap(2), measures().gap(1), measures().gap(2), measures().gap(1));
    row->setSpacing(measures().gap(1));
    back_ = sign_button(Sign::back, tr("Back to where you were (Alt+Left)"));
    row->addWidget(back_);
    box_ = new QWidget;
    box_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);  // a long way here never widens the window
    auto* steps = new QHBoxLayout(box_);
    steps->setContentsMargins(0, 0, 0, 0);
    steps->setSpacing(measures().gap(0.5));
    steps_ = steps;
    steps->setAlignment(Qt::AlignLeft);
    row->addWidget(box_, 1);
    undo_ = sign_button(Sign::undo, {});
    row->addWidget(undo_);
    inbox_ = sign_button(Sign::picture, {});
    inbox_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    row->addWidget(inbox_);
    auto* book = sign_button(Sign::book, tr("Another book (this one is %1)").arg(book_name));
    auto* settings = sign_button(Sign::settings, tr("Settings (Ctrl+,)"));
    row->addWidget(book);
    row->addWidget(settings);
    connect(back_, &QToolButton::clicked, this, &TrailBar::back);
    connect(undo_, &QToolButton::clicked, this, &TrailBar::undo_asked);
    connect(inbox_, &QToolButton::clicked, this, &TrailBar::inbox_asked);
    connect(book, &QToolButton::clicked, this, &TrailBar::another_book_asked);
    connect(settings, &QToolButton::clicked, this, &TrailBar::settings_asked);
    set_undo({});
    set_new_photos(0);
    show_trail({});
}

// What waits is a figure beside the sign; nothing jumps up while she works.
void TrailBar::set_new_photos(int count) {
    const QString words = count == 0 ? tr("New photos") : tr("New photos: %1").arg(count);
    inbox_->setToolTip(words);
    inbox_->setAccessibleName(words);
    inbox_->setText(count == 0 ? QString() : QString::number(count));
    inbox_->setToolButtonStyle(count == 0 ? Qt::ToolButtonIconOnly : Qt::ToolButtonTextBesideIcon);
}

void TrailBar::set_undo(const QString& words) {
    undo_->setVisible(!words.isEmpty());
    undo_->setToolTip(tr("Take back: %1 (Ctrl+Z)").arg(words));
    undo_->setAccessibleName(undo_->toolTip());
}

void TrailBar::set_back_possible(bool possible) {
    back_->setEnabled(possible);
}

void TrailBar::show_trail(const Trail& trail) {
    empty_layout(steps_);
    Trail whole{{tr("Clients"), {}}};
    whole += trail;
    for (qsizetype i = 0; i < whole.size(); ++i) {
        if (i > 0) {
            auto* between = text(QStringLiteral("›"), "soft");
            between->setContentsMargins(measures().gap(1), 0, measures().gap(1), 0);
            between->setWordWrap(false);
            steps_->addWidget(between);
        }
        const QString words = shortened(whole[i].text);  // the page's own title has it whole
        if (i + 1 == whole.size()) {
            auto* here = text(words, "strong");
            here->setWordWrap(false);
            steps_->addWidget(here);
            break;
        }
        auto* step = button(words, "trail");
        step->setToolTip(whole[i].text);
        step->setAccessibleName(tr("Go to %1").arg(whole[i].text));
        steps_->addWidget(step);
        connect(step, &QPushButton::clicked, this, [this, place = whole[i].place] { emit go(place); });
    }
    // Measured once the new labels have their style.
    QTimer::singleShot(0, this, &TrailBar::fit);
}

void TrailBar::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fit();
}

void TrailBar::fit() {
    int needed = 0;
    QVector<QWidget*> shown;
    for (int i = 0; i < steps_->count(); ++i) {
        QWidget* step = steps_->itemAt(i)->widget();
        if (step == nullptr) continue;
        shown.append(step);
        needed += step->sizeHint().width() + steps_->spacing();
    }
    for (qsizetype i = 0; i < shown.size(); ++i) {
        const bool room = needed <= box_->width() || i + 1 == shown.size();
        shown[i]->setVisible(room);
        if (!room) needed -= shown[i]->sizeHint().width() + steps_->spacing();
    }
}

}  // namespace kempt::desk
