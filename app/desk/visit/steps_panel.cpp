#include "desk/visit/steps_panel.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

using State = VisitStep::State;
using What = VisitStep::What;

// A tick, a bar half filled, a ring, a dot: a shape for each, so that it does not rest on colour.
class StepMark : public QWidget {
  public:
    explicit StepMark(State state) : state_(state) {
        const int side = measures().px(22);
        setFixedSize(side, side);
        setAccessibleName(said(word_of(state)));
        setToolTip(said(word_of(state)));
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter p(this);
        p.setRenderHint(QPainter::Antialiasing);
        const Colours& c = colours();
        const double s = width();
        const QRectF ring(0.14 * s, 0.14 * s, 0.72 * s, 0.72 * s);
        const QColor colour = state_ == State::done ? c.better : state_ == State::optional ? c.ink_soft : c.accent;
        p.setPen(QPen(colour, 0.09 * s, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        if (state_ == State::done) {
            p.drawPolyline(QPolygonF({{0.2 * s, 0.55 * s}, {0.42 * s, 0.76 * s}, {0.82 * s, 0.26 * s}}));
            return;
        }
        if (state_ == State::optional) {
            p.setBrush(colour);
            p.drawEllipse(ring.center(), 0.08 * s, 0.08 * s);
            return;
        }
        p.drawEllipse(ring);
        if (state_ != State::begun) return;
        p.setPen(Qt::NoPen);
        p.setBrush(colour);
        p.drawPie(ring, 90 * 16, -180 * 16);
    }

  private:
    State state_;
};

QString press_words(const VisitStep& step) {
    switch (step.what) {
        case What::told:
            return QObject::tr("Ask");
        case What::scalp:
        case What::grades:
            return QObject::tr("Grade");
        case What::photos:
        case What::after:
            return QObject::tr("Add photos…");
        case What::readings:
            return step.photo == 0          ? QObject::tr("Add photos…")
                   : step.missing.isEmpty() ? QObject::tr("Look")
                                            : QObject::tr("Draw");
        case What::services:
            return QObject::tr("Write down");
        case What::dates:
            break;
    }
    return QObject::tr("See");
}

}  // namespace

StepsPanel::StepsPanel(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "surface");
    setAccessibleName(tr("Steps of this visit, and what is still missing"));
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("This visit, step by step"), "heading"));
    column->addWidget(text(tr("Leave it at any step; what was entered is kept."), "caption"));
    rows_ = new QVBoxLayout;
    rows_->setSpacing(measures().gap(1));
    column->addLayout(rows_);
    column->addStretch();
}

QPushButton* StepsPanel::press_of(What what) const {
    return presses_.value(static_cast<int>(what));
}

void StepsPanel::show_steps(const QVector<VisitStep>& steps) {
    const QWidget* had = window()->focusWidget();
    int focused = -1;
    for (auto it = presses_.begin(); it != presses_.end(); ++it)
        if (it.value() == had) focused = it.key();
    empty_layout(rows_);
    presses_.clear();
    bool next_found = false;
    for (const VisitStep& step : steps) {
        const bool next = !next_found && step.state == State::open;
        next_found = next_found || next;
        add_step(step, next);
        for (const Missing& missing : step.missing) add_missing(missing);
    }
    if (QPushButton* again = presses_.value(focused)) again->setFocus();
}

// next: the first step that nothing was done for; its press is the filled one.
void StepsPanel::add_step(const VisitStep& step, bool next) {
    auto* row = new QHBoxLayout;
    row->setSpacing(measures().gap(2));
    row->addWidget(new StepMark(step.state), 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(text(tr("%1: %2").arg(step.name, said(word_of(step.state))), "strong"));
    words->addWidget(text(step.words, "caption"));
    row->addLayout(words, 1);
    auto* press = button(press_words(step), next ? "primary" : "");
    press->setAccessibleName(tr("%1: %2").arg(step.name, press_words(step)));
    connect(press, &QPushButton::clicked, this, [this, step] { emit step_asked(step); });
    presses_.insert(static_cast<int>(step.what), press);
    row->addWidget(press, 0, Qt::AlignTop);
    rows_->addLayout(row);
}

void StepsPanel::add_missing(const Missing& missing) {
    auto* row = new QHBoxLayout;
    row->setContentsMargins(measures().px(22) + measures().gap(2), 0, 0, 0);
    row->addWidget(text(missing.words), 1);
    const bool draw = missing.what == Missing::What::edge_line;
    auto* act = button(draw ? tr("Draw it") : tr("Add"), "quiet");
    act->setAccessibleName(draw ? tr("Draw the edge line: %1").arg(missing.words)
                                : tr("Add photos of the %1").arg(said(word_of(missing.view))));
    connect(act, &QPushButton::clicked, this, [this, missing] { emit missing_asked(missing); });
    row->addWidget(act);
    rows_->addLayout(row);
}

}  // namespace kempt::desk
