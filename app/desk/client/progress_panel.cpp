#include "desk/client/progress_panel.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

#include "desk/look/look.h"
#include "desk/settings/target_defaults.h"
#include "desk/translations/said.h"
#include "desk/widgets/chart_view.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/fringe_bar.h"
#include "desk/widgets/parts.h"
#include "desk/widgets/rows_anew.h"
#include "domain/measure_units.h"
#include "domain/words.h"
#include "work/chart_of.h"
#include "work/progress_json.h"
#include "work/progress_of.h"
#include "work/put_back.h"

namespace kempt::desk {
namespace {

// One unit of the reading as the person reads it.
double shown_factor(const QString& unit) {
    return conversion_of(unit, look().length()).factor;
}

QString shown_unit(const QString& unit) {
    return charts::unit_for_people(conversion_of(unit, look().length()).unit, speech_now());
}

// How much of the way to the target lies behind her.
QString way_words(const std::optional<double>& share) {
    if (!share) return ProgressPanel::tr("not yet");
    const long percent = std::lround(*share * 100);
    return percent < 0 ? ProgressPanel::tr("%1 % behind the start").arg(-percent)
                       : ProgressPanel::tr("%1 % of the way").arg(percent);
}

}  // namespace

ProgressPanel::ProgressPanel(Session& session, QWidget* parent) : QFrame(parent), session_(session) {
    setProperty("panel", "surface");
    auto* outer = column_in(this, 4, 3);
    outer->addWidget(text(tr("Progress"), "heading"));
    empty_ = text({}, "soft");
    outer->addWidget(empty_);
    body_ = new QWidget;
    auto* column = column_in(body_, 0, 3);
    outer->addWidget(body_);
    targets_ = new RowsAnew(measures().gap(2));
    column->addWidget(targets_);
    auto* choices = new FlowLayout(measures().gap(2), true);
    view_ = new QComboBox;
    view_->setAccessibleName(tr("View of the chart"));
    reading_ = new QComboBox;
    reading_->setAccessibleName(tr("Reading of the chart"));
    choices->addWidget(view_);
    choices->addWidget(reading_);
    column->addLayout(choices);
    meaning_ = text({}, "caption");
    column->addWidget(meaning_);
    chart_ = new ChartView;
    column->addWidget(chart_);
    words_ = new RowsAnew(measures().gap(2));
    column->addWidget(words_);
    auto* wish = new FlowLayout(measures().gap(2));
    target_label_ = text(tr("Her target"), "lead");
    target_label_->setWordWrap(false);
    target_ = new QDoubleSpinBox;
    target_->setAccessibleName(tr("Target for this reading"));
    set_ = button(tr("Set target"));
    clear_ = button(tr("Drop target"), "quiet");
    compare_ = button(tr("Before and after"), "", Sign::compare);
    for (QWidget* w : std::initializer_list<QWidget*>{target_label_, target_, set_, clear_, compare_})
        wish->addWidget(w);
    column->addLayout(wish);
    body_->hide();

    connect(view_, &QComboBox::currentIndexChanged, this, [this] {
        if (progress_) fill_readings(reading_->currentData().toString());
        show_series();
    });
    connect(reading_, &QComboBox::currentIndexChanged, this, &ProgressPanel::show_series);
    connect(set_, &QPushButton::clicked, this, &ProgressPanel::keep_target);
    connect(clear_, &QPushButton::clicked, this, &ProgressPanel::drop_target);
    connect(compare_, &QPushButton::clicked, this, [this] { emit compare_asked(chosen_view()); });
    connect(&session_, &Session::client_changed, this, [this](Id client) {
        if (client == client_ && isVisible()) load();
    });
}

void ProgressPanel::show_client(Id client) {
    if (client != client_) {
        progress_.reset();
        body_->hide();
        empty_->setText(tr("Reading…"));
        empty_->show();
    }
    client_ = client;
    load();
}

void ProgressPanel::load() {
    settled_ = false;
    const Id client = client_;
    session_.ask(
        session_.records(), tr("Reading the progress"), this,
        [client, length = look().length()](
            Book& book, const Progress& progress) -> Result<std::shared_ptr<const work::ClientProgress>> {
            auto read = work::progress_of(book, {client, {}, {}, length, work::Pairs::ends}, progress);
            if (!read.ok()) return read.error();
            return std::make_shared<const work::ClientProgress>(std::move(read.value()));
        },
        [this, client](std::shared_ptr<const work::ClientProgress> progress) {
            if (client == client_) take(std::move(progress));
        },
        [this] { settled_ = true; });
}

void ProgressPanel::take(std::shared_ptr<const work::ClientProgress> progress) {
    progress_ = std::move(progress);
    settled_ = true;
    const bool any = !progress_->series.empty();
    empty_->setVisible(!any);
    if (!any) {
        body_->hide();
        empty_->setText(
            tr("Nothing to show yet. Take photos at a visit and draw the edge line on them: from the second visit on, "
               "Kempt says whether the change is real."));
        emit shown_anew();
        return;
    }
    fill_choices();
    fill_targets();
    show_series();
    body_->show();  // when it is whole: laid out once
}

void ProgressPanel::fill_choices() {
    const QSignalBlocker one(view_), two(reading_);
    const QVariant view = view_->currentData(), reading = reading_->currentData();
    view_->clear();
    reading_->clear();
    const work::Series* first = &progress_->series.front();
    for (const work::Series& s : progress_->series) {
        if (view_->findData(static_cast<int>(s.view)) < 0)
            view_->addItem(beginning(said(word_of(s.view))), static_cast<int>(s.view));
        if (s.target && !first->target) first = &s;
    }
    const int v = view_->findData(view.isValid() ? view : QVariant(static_cast<int>(first->view)));
    view_->setCurrentIndex(std::max(0, v));
    fill_readings(reading.isValid() ? reading.toString() : first->reading);
}

// The readings that the chosen view has.
void ProgressPanel::fill_readings(const QString& wanted) {
    const QSignalBlocker block(reading_);
    reading_->clear();
    for (const work::Series& s : progress_->series)
        if (s.view == chosen_view()) reading_->addItem(beginning(said(title_of_reading(s.reading))), s.reading);
    reading_->setCurrentIndex(std::max(0, reading_->findData(wanted)));
}

void ProgressPanel::fill_targets() {
    QBoxLayout* targets = targets_->begin();
    bool any = false;
    for (const work::Series& s : progress_->series) {
        if (!s.target) continue;
        const QString wanted =
            tr("%1, %2: target %3 %4")
                .arg(beginning(said(word_of(s.view))), said(title_of_reading(s.reading)),
                     in_figures(plain_value(s.target->target.value * shown_factor(s.unit), 0, QString())),
                     shown_unit(s.unit));
        auto* box = panel("sunken");
        auto* column = column_in(box, 3, 1);
        auto* line = new QHBoxLayout;
        auto* show = button(wanted, "trail");
        show->setAccessibleName(tr("Show the chart of %1").arg(wanted));
        auto* bar = new FringeBar;
        bar->set_share(s.target->share);
        line->addWidget(bar, 1);
        auto* share = text(way_words(s.target->share), "lead");
        share->setWordWrap(false);
        line->addWidget(share);
        column->addWidget(show, 0, Qt::AlignLeft);
        column->addLayout(line);
        if (const work::PairVerdict* v = s.first_to_last()) {
            const QString verdict = work::word_of(v->judgement.verdict);
            auto* words = text(tr("%1 since the first visit").arg(beginning(said(verdict))), "strong");
            if (verdict == "improved" || verdict == "worse")
                words->setProperty("tone", verdict == "worse" ? "worse" : "better");
            words->setToolTip(said(v->judgement.reason));
            column->addWidget(words);
        }
        if (!s.target->forecast_text.isEmpty()) column->addWidget(text(said(s.target->forecast_text), "caption"));
        targets->addWidget(box);
        any = true;
        connect(show, &QPushButton::clicked, this, [this, view = static_cast<int>(s.view), reading = s.reading] {
            view_->setCurrentIndex(view_->findData(view));
            reading_->setCurrentIndex(reading_->findData(reading));
        });
    }
    targets_->show_rows();
    targets_->setVisible(any);  // an empty one would take the gap beside it
}

const work::Series* ProgressPanel::series() const {
    return progress_ ? progress_->find(chosen_view(), reading_->currentData().toString()) : nullptr;
}

View ProgressPanel::chosen_view() const {
    return static_cast<View>(view_->currentData().toInt());
}

void ProgressPanel::add_verdict(QBoxLayout* words, const QString& since, const QString& verdict,
                                const QString& reason) {
    const char* tone = verdict == "improved" ? "better" : verdict == "worse" ? "worse" : "plain";
    auto* box = panel(tone);
    auto* column = column_in(box, 3, 0.5);
    auto* head = text(tr("%1: %2").arg(since, said(verdict)), "lead");
    if (QByteArray(tone) != "plain") head->setProperty("tone", QString::fromLatin1(tone));
    column->addWidget(head);
    column->addWidget(text(reason));
    words->addWidget(box);
}

void ProgressPanel::show_series() {
    QBoxLayout* said_below = words_->begin();
    const work::Series* s = series();
    meaning_->setText(said(meaning_of_reading(reading_->currentData().toString())));
    for (QWidget* w : std::initializer_list<QWidget*>{target_, set_, clear_}) w->setEnabled(s != nullptr);
    if (s == nullptr) {
        chart_->set_data({});
        words_->show_rows();
        return;
    }
    chart_->set_data(work::chart_of(*s, progress_->services, look().length()));
    if (const work::PairVerdict* v = s->first_to_last()) {
        add_verdict(said_below, tr("Since the first visit"), work::word_of(v->judgement.verdict),
                    said(v->judgement.reason));
        const auto& visits = s->visits;
        if (visits.size() > 2) {
            const work::PairVerdict* last = s->verdict(visits[visits.size() - 2].visit, visits.back().visit);
            if (last != nullptr && last != v)
                add_verdict(said_below, tr("Since the visit before"), work::word_of(last->judgement.verdict),
                            said(last->judgement.reason));
        }
    }
    for (const QString& words : {s->trend_text, s->spread_from})
        if (!words.isEmpty()) said_below->addWidget(text(said(words), "caption"));
    words_->show_rows();
    const double k = shown_factor(s->unit);
    const QSignalBlocker block(target_);
    target_->setSuffix(QLatin1Char(' ') + shown_unit(s->unit));
    target_->setDecimals(s->unit == "%" ? 0 : k == 1 ? 1 : 2);
    target_->setRange(0, s->unit == "%" ? 100 : 1000);
    const auto& visits = s->visits;
    target_->setValue(s->target                               ? s->target->target.value * k
                      : default_target(s->reading)            ? *default_target(s->reading) * k
                      : visits.empty() || !visits.back().mean ? 0
                                                              : *visits.back().mean * k);
    clear_->setVisible(s->target.has_value());
    set_->setText(s->target ? tr("Change target") : tr("Set target"));
    set_->setAccessibleName(set_->text());
    emit shown_anew();
}

void ProgressPanel::keep_target() {
    if (const work::Series* s = series()) set_target(*s, target_->value() / shown_factor(s->unit));
}

void ProgressPanel::drop_target() {
    const work::Series* s = series();
    if (s != nullptr && s->target) set_target(*s, {});
}

// Nothing: no target any more. Going there and taking it back are the same act with both sides exchanged.
void ProgressPanel::set_target(const work::Series& s, const std::optional<double>& value) {
    const Target at{0, client_, s.view, s.reading, 0};
    const work::TargetEntry now{at, value}, before{at, s.target ? std::optional(s.target->target.value) : std::nullopt};
    UndoStep step{tr("target of %1, %2").arg(said(word_of(s.view)), said(title_of_reading(s.reading))),
                  QStringLiteral("target/%1/%2").arg(word_of(s.view), s.reading),
                  client_,
                  0,
                  {}};
    step.back = [now, before](Book& book) { return work::put_back(book, now, before); };
    step.again = [now, before](Book& book) { return work::put_back(book, before, now); };
    session_.keep(value ? tr("Keeping the target") : tr("Dropping the target"), this, step,
                  [again = step.again](Book& book, const Progress&) { return again(book); });
}

}  // namespace kempt::desk
