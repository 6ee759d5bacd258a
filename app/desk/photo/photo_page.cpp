#include "desk/photo/photo_page.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/photo/hint_box.h"
#include "desk/photo/mark_parts.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_data.h"
#include "desk/photo/readings_panel.h"
#include "desk/photo/tool_row.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {

PhotoPage::PhotoPage(Session& session, QWidget* parent) : Page(session, parent), meter_(session.live()) {
    auto* outer = new QVBoxLayout(this);
    const int margin = measures().gap(4);
    outer->setContentsMargins(margin, measures().gap(3), margin, margin);
    outer->setSpacing(measures().gap(2));
    auto* tools = new FlowLayout(measures().gap(1));
    outer->addLayout(tools);
    canvas_ = new PhotoCanvas;
    build_tools(tools);
    auto* row = new QHBoxLayout;
    row->setSpacing(measures().gap(4));
    outer->addLayout(row, 1);
    row->addWidget(canvas_, 1);
    row->addWidget(build_side());
    keep_pause_.setSingleShot(true);
    keep_pause_.setInterval(1200);
    connect_parts();
}

QWidget* PhotoPage::build_side() {
    auto* side = new QWidget;
    auto* column = column_in(side, 0, 3);
    title_ = text({}, "lead");
    column->addWidget(title_);
    hint_ = new HintBox;
    column->addWidget(hint_);
    carry_ = button(tr("Take over the marks"), "primary");
    carry_->hide();
    column->addWidget(carry_);
    build_ruler(column);
    panel_ = new ReadingsPanel;
    column->addWidget(panel_);
    column->addWidget(text(tr("Click to add points, drag to move them. Keys: A adds, N and P pick, arrows nudge "
                              "(Shift: by ten), Delete removes, F turns the side, + − 0 zoom."),
                           "caption"));
    column->addStretch();
    side_ = scroll_area(side);
    side_->setFixedWidth(static_cast<int>(300 * measures().space));
    return side_;
}

void PhotoPage::undo(const Place&) {
    canvas_->undo();
}

void PhotoPage::redo(const Place&) {
    canvas_->redo();
}

void PhotoPage::connect_parts() {
    connect(&keep_pause_, &QTimer::timeout, this, [this] { keep({}); });
    connect(canvas_, &PhotoCanvas::marks_changed, this, &PhotoPage::drawn);
    connect(canvas_, &PhotoCanvas::strand_chosen, panel_, &ReadingsPanel::choose_strand);
    connect(panel_, &ReadingsPanel::strand_pointed, canvas_, &PhotoCanvas::point_at_strand);
    connect(panel_, &ReadingsPanel::strand_chosen, canvas_, &PhotoCanvas::set_strand);
    connect(panel_, &ReadingsPanel::strand_dropped, canvas_, &PhotoCanvas::drop_strand);
    connect(panel_, &ReadingsPanel::strands_joined, canvas_, &PhotoCanvas::join_strands);
    connect(panel_, &ReadingsPanel::strand_whole, canvas_, &PhotoCanvas::mark_whole);
    connect(panel_, &ReadingsPanel::corrections_cleared, canvas_, &PhotoCanvas::clear_corrections);
    connect(carry_, &QPushButton::clicked, this, &PhotoPage::carry);
    connect(hint_, &HintBox::sheet_asked, this, [this] { canvas_->ask_for_sheet(canvas_->tool()); });
    connect(hint_, &HintBox::clear_asked, this, [this] { canvas_->clear(canvas_->tool()); });
    connect(&meter_, &LiveMeter::measured, this, &PhotoPage::measured);
    connect(&meter_, &LiveMeter::failed, panel_, &ReadingsPanel::show_nothing);
    connect(&meter_, &LiveMeter::measuring_changed, panel_, &ReadingsPanel::set_measuring);
}

void PhotoPage::build_tools(FlowLayout* row) {
    const auto apart = [row] {
        auto* space = new QWidget;
        space->setFixedSize(measures().gap(3), 1);
        row->addWidget(space);
    };
    const auto act = [&](Sign sign, const QString& words, auto run) {
        auto* b = sign_button(sign, words);
        connect(b, &QToolButton::clicked, this, run);
        row->addWidget(b);
        return b;
    };
    tools_ = new ToolRow(row, this);
    connect(tools_, &ToolRow::chosen, this, [this](Tool tool, bool by_hand) {
        canvas_->set_tool(tool);
        refresh_tools();
        if (by_hand) canvas_->setFocus();
    });
    connect(tools_, &ToolRow::turn_asked, this, [this] { canvas_->turn(); });
    apart();
    undo_ = act(Sign::undo, tr("Take the last change back (Ctrl+Z)"), [this] { canvas_->undo(); });
    redo_ = act(Sign::redo, tr("Do it again (Ctrl+Shift+Z)"), [this] { canvas_->redo(); });
    apart();
    act(Sign::closer, tr("Nearer (+)"), [this] { canvas_->zoom_by(1.4); });
    act(Sign::farther, tr("Farther (−)"), [this] { canvas_->zoom_by(1 / 1.4); });
    act(Sign::fit, tr("The whole photo (0)"), [this] { canvas_->fit(); });
    apart();
    overlay_ = sign_button(Sign::measured, tr("Show what was measured"));
    overlay_->setText(QLatin1Char(' ') + tr("Measured"));
    overlay_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    overlay_->setCheckable(true);
    row->addWidget(overlay_);
    apart();
    before_ = act(Sign::back, tr("The photo before (Ctrl+Page up)"), [this] { step(-1); });
    before_->setShortcut(QKeySequence(QStringLiteral("Ctrl+PgUp")));
    after_ = act(Sign::forward, tr("The next photo (Ctrl+Page down)"), [this] { step(1); });
    after_->setShortcut(QKeySequence(QStringLiteral("Ctrl+PgDown")));
    connect(overlay_, &QToolButton::clicked, this, [this](bool on) { overlay_wish_ = on; });
    connect(overlay_, &QToolButton::toggled, this, [this](bool on) {
        canvas_->set_overlay_shown(on);
        panel_->set_legend_shown(on);
        meter_.set_with_cover(on);
    });
}

void PhotoPage::build_ruler(QLayout* side) {
    ruler_ = panel("plain");
    auto* column = column_in(ruler_, 3, 1);
    column->addWidget(text(tr("Distance between the ruler's two points")));
    ruler_mm_ = new QDoubleSpinBox;
    ruler_mm_->setAccessibleName(tr("Distance between the two points"));
    const bool inches = look().length() == LengthUnit::inches;
    ruler_mm_->setSuffix(inches ? tr(" in") : tr(" mm"));
    ruler_mm_->setDecimals(inches ? 3 : 1);
    ruler_mm_->setRange(0, inches ? 20 : 500);
    ruler_mm_->setSpecialValueText(tr("not set"));
    column->addWidget(ruler_mm_);
    ruler_->hide();
    side->addWidget(ruler_);
    connect(ruler_mm_, &QDoubleSpinBox::valueChanged, this,
            [this, inches](double v) { canvas_->set_scale_mm(inches ? v * 25.4 : v); });
}

void PhotoPage::show_place(const Place& place) {
    place_ = place;
    read(place.photo);
}

void PhotoPage::read(Id photo) {
    settled_ = false;
    dirty_ = false;
    meter_.set_photo({});
    canvas_->set_picture({});
    canvas_->set_marks({});
    panel_->show_nothing(tr("Opening the photo…"));
    side_->verticalScrollBar()->setValue(0);
    session_.ask(
        session_.records(), tr("Reading the photo"), this,
        [photo](Book& book, const Progress& progress) { return photo_data(book, photo, progress); },
        [this](const PhotoData& found) {
            if (found.row.photo.id == place_.photo) open(found);
        },
        [this] { settled_ = true; });
}

void PhotoPage::open(const PhotoData& found) {
    photo_ = found.row.photo;
    kept_marks_ = found.marks.value_or(Marks{});
    kept_marks_.view = photo_.view;
    const QString shot = tr("%1, shot %2").arg(beginning(said(word_of(photo_.view)))).arg(photo_.shot);
    title_->setText(shot);
    canvas_->setAccessibleName(tr("Photo: %1").arg(shot));
    shots_.clear();
    carry_from_ = 0;
    for (const work::PhotoRow& row : found.siblings) {
        shots_.append({Where::photo, found.client.id, found.visit.id, row.photo.id, row.photo.view});
        if (!found.marks && row.has_marks && row.photo.view == photo_.view && carry_from_ == 0) {
            carry_from_ = row.photo.id;
            offer_to_carry(tr("Take over the marks from shot %1").arg(row.photo.shot));
        }
    }
    // By the skin beside the edge: a view without an edge has nothing to lay over each other.
    bring_from_.reset();
    if (carry_from_ == 0 && found.marked_before && first_tools(photo_.view).contains(Tool::edge_line)) {
        bring_from_ = found.marked_before->date;
        offer_to_carry(tr("Bring the marks from the last visit"));
        carry_->setToolTip(
            tr("As they were drawn on %1; you look at them before they count").arg(date_words(*bring_from_)));
    }
    emit trail_changed({{found.client.name, {Where::client, found.client.id}},
                        {date_words(found.visit.date), {Where::visit, found.client.id, found.visit.id}},
                        {shot, place_}});
    session_.live().start_latest(
        QStringLiteral("open"), tr("Opening the photo"), this,
        [open = session_.open_photo(), bytes = found.bytes, scale = found.printer_scale](const Progress& progress) {
            return open(bytes, scale, progress);
        },
        [this, id = photo_.id](Result<OpenedPhoto> result) {
            if (id != place_.photo) return;
            settled_ = true;
            if (result.ok()) return opened(result.value());
            panel_->show_nothing(said(result.error().sentence()));
        });
}

void PhotoPage::offer_to_carry(const QString& words) {
    carry_->setText(words);
    if (carry_->sizeHint().width() > side_->viewport()->width()) carry_->setText(in_two_lines(words));
    carry_->setAccessibleName(words);
    carry_->setToolTip({});
}

void PhotoPage::opened(const OpenedPhoto& photo) {
    canvas_->set_picture(photo.picture);
    canvas_->set_marks(kept_marks_);
    {
        const QSignalBlocker block(ruler_mm_);
        ruler_mm_->setValue(look().length() == LengthUnit::inches ? kept_marks_.scale_mm / 25.4 : kept_marks_.scale_mm);
    }
    scale_missing_ = false;
    panel_->set_view(photo_.view);
    tools_->begin(photo_.view, canvas_->marks());
    // Over an edge the tint hides what is being drawn; elsewhere what was found is what there is to look at.
    set_overlay_shown(overlay_wish_.value_or(photo_.view == View::lengths || photo_.view == View::ends));
    meter_.set_photo(photo.measure);
    meter_.set_marks(canvas_->marks(), false);
    say_nothing_asked();
    refresh_tools();
    if (!canvas_->window()->focusWidget() || canvas_->window()->focusWidget() == canvas_->window()) canvas_->setFocus();
}

void PhotoPage::drawn(bool dragging) {
    dirty_ = true;
    if (dragging)
        keep_pause_.stop();
    else
        keep_pause_.start();
    meter_.set_marks(canvas_->marks(), dragging);
    say_nothing_asked();
    refresh_tools();
}

void PhotoPage::measured(const Measured& measured, bool current) {
    panel_->show_measured(measured, current);
    if (!current) return;
    canvas_->set_overlay(measured.overlay, measured.marks);
    panel_->choose_strand(canvas_->strand());
    scale_missing_ = measured.scale_from == QStringLiteral("none");
    refresh_tools();
}

void PhotoPage::say_nothing_asked() {
    if (!ready_to_measure(canvas_->marks())) panel_->show_nothing(tr("Nothing is measured yet."));
}

void PhotoPage::refresh_tools() {
    const MarksEditor& editor = canvas_->editor();
    undo_->setEnabled(editor.can_undo());
    redo_->setEnabled(editor.can_redo());
    tools_->refresh(editor.marks(), scale_missing_);
    hint_->show_tool(canvas_->tool(), editor.marks());
    ruler_->setVisible(canvas_->tool() == Tool::ruler || !editor.marks().scale_points.isEmpty());
    carry_->setVisible(can_carry());
    qsizetype at = -1;
    for (qsizetype i = 0; i < shots_.size(); ++i)
        if (shots_[i].photo == place_.photo) at = i;
    before_->setEnabled(at > 0);
    after_->setEnabled(at >= 0 && at + 1 < shots_.size());
}

void PhotoPage::set_overlay_shown(bool shown) {
    overlay_->setChecked(shown);
}

void PhotoPage::step(int by) {
    for (qsizetype i = 0; i < shots_.size(); ++i) {
        if (shots_[i].photo != place_.photo) continue;
        if (i + by >= 0 && i + by < shots_.size()) emit go(shots_[i + by]);
        return;
    }
}

}  // namespace kempt::desk
