#include "desk/compare/strip_panel.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "desk/compare/strip_filler.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "domain/measure_units.h"
#include "domain/readings.h"

namespace kempt::desk {
namespace {

QString value_words(const work::StripPlace& place) {
    if (!place.reading) return QObject::tr("not measured");
    const ReadingRecord& r = *place.reading;
    return in_figures(with_interval(r.value, r.low, r.high, r.unit, look().length()));
}

}  // namespace

StripPanel::StripPanel(Session& session, QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(measures().gap(2));
    auto* row = new QHBoxLayout;
    state_ = text({}, "caption");
    stop_ = button(tr("Stop"), "quiet");
    row->addWidget(state_, 1);
    row->addWidget(stop_);
    column->addLayout(row);
    strip_ = new TimeStrip;
    column->addWidget(strip_, 1);
    filler_ = new StripFiller(session, this);
    connect(stop_, &QPushButton::clicked, this, [this] {
        if (filler_->stopped())
            filler_->go_on();
        else
            filler_->stop();
        show_progress();
    });
    connect(filler_, &StripFiller::planned, this, [this](QSize size) {
        if (!strip_->cells().isEmpty() && !size.isEmpty()) strip_->set_picture_size(size);
        if (!strip_->cells().isEmpty()) return;
        QVector<TimeStrip::Cell> cells;
        const work::StripPlan& plan = filler_->plan();
        for (int i = 0; i < plan.places.size(); ++i) {
            const work::StripPlace& place = plan.places[i];
            TimeStrip::Cell cell;
            cell.date = date_words(place.date);
            cell.leads = i == plan.reference;
            if (place.photo == 0) {
                cell.state = TimeStrip::Cell::State::none;
            } else {
                cell.value = value_words(place);
                cell.reading = place.reading ? tr("%1 %2").arg(said(title_of_reading(place.reading->name)), cell.value)
                                             : cell.value;
                cell.picture.loadFromData(place.thumbnail);
            }
            cells.append(cell);
        }
        strip_->set_cells(cells, size);
        show_progress();
    });
    connect(filler_, &StripFiller::picture_ready, this, [this](int place, const work::StripPicture& picture) {
        if (place >= strip_->cells().size()) return;
        TimeStrip::Cell cell = strip_->cells()[place];
        cell.picture = QPixmap::fromImage(picture.picture);
        cell.told = said(picture.told);
        cell.state = picture.laid ? TimeStrip::Cell::State::laid : TimeStrip::Cell::State::apart;
        strip_->set_cell(place, cell);
        show_progress();
    });
    connect(filler_, &StripFiller::failed, this, [this](int place, const QString& sentence) {
        if (place >= 0 && place < strip_->cells().size()) {
            TimeStrip::Cell cell = strip_->cells()[place];
            cell.told = sentence;
            cell.state = TimeStrip::Cell::State::apart;
            strip_->set_cell(place, cell);
        } else {
            state_->setText(sentence);
        }
    });
    connect(filler_, &StripFiller::finished, this, &StripPanel::show_progress);
    connect(strip_, &TimeStrip::current_changed, this, &StripPanel::picked_changed);
    connect(strip_, &TimeStrip::opened, this, [this](int place) {
        const work::StripPlan& plan = filler_->plan();
        if (plan.reference < 0 || place == plan.reference || plan.places.value(place).photo == 0) return;
        const int first = std::min(place, plan.reference), last = std::max(place, plan.reference);
        emit compare_asked(plan.places[first].visit, plan.places[last].visit);
    });
}

void StripPanel::show_view(Id client, View view, Id reference_visit) {
    strip_->set_cells({}, {});
    state_->setText(tr("Reading…"));
    filler_->show(client, view, reference_visit);
}

void StripPanel::stop() {
    filler_->stop();
}

bool StripPanel::settled() const {
    return filler_->settled();
}

void StripPanel::show_progress() {
    const work::StripPlan& plan = filler_->plan();
    qsizetype photos = 0;
    for (const work::StripPlace& place : plan.places) photos += place.photo > 0 ? 1 : 0;
    const qsizetype waiting = filler_->waiting();
    stop_->setVisible(waiting > 0);
    stop_->setText(filler_->stopped() ? tr("Go on") : tr("Stop"));
    stop_->setAccessibleName(filler_->stopped() ? tr("Go on laying the photos") : tr("Stop laying the photos"));
    if (plan.reference < 0)
        state_->setText(tr("No visit has a photo of this view."));
    else if (waiting > 0)
        state_->setText(tr("%1 of %2 photos are laid over that of %3.")
                            .arg(photos - waiting)
                            .arg(photos)
                            .arg(date_words(plan.places[plan.reference].date)));
    else
        state_->setText(tr("All laid over the photo of %1. Enter, or two clicks, compares one with it.")
                            .arg(date_words(plan.places[plan.reference].date)));
}

QString StripPanel::picked_words() const {
    if (strip_->cells().isEmpty()) return {};
    const TimeStrip::Cell& cell = strip_->cells()[strip_->current()];
    return cell.reading.isEmpty() ? cell.date : tr("%1: %2").arg(cell.date, cell.reading);
}

QString StripPanel::picked_told() const {
    return strip_->cells().isEmpty() ? QString() : strip_->cells()[strip_->current()].told;
}

bool StripPanel::picked_apart() const {
    return !strip_->cells().isEmpty() && strip_->cells()[strip_->current()].state == TimeStrip::Cell::State::apart;
}

}  // namespace kempt::desk
