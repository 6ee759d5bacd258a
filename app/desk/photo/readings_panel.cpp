#include "desk/photo/readings_panel.h"

#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>
#include <cmath>

#include "desk/look/look.h"
#include "desk/photo/legend.h"
#include "desk/photo/shine_plot.h"
#include "desk/photo/strand_box.h"
#include "desk/photo/tone_details.h"
#include "desk/photo/tools.h"
#include "desk/photo/whole_figure.h"
#include "desk/translations/said.h"
#include "desk/visit/view_tray.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {

ReadingsPanel::ReadingsPanel(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("Readings"), "heading"));
    state_ = text(QStringLiteral(" "), "caption");
    column->addWidget(state_);
    hint_ = text({});
    column->addWidget(hint_);
    curl_ = text({}, "lead");
    tone_ = new ToneDetails;
    shine_ = new ShinePlot;
    for (const ReadingGroup group : all_reading_groups()) {
        const Section section = make_section(group);
        column->addWidget(section.box);
        sections_.insert(group, section);
    }
    else_ = text({}, "caption");
    column->addWidget(else_);
    scale_ = text({}, "caption");
    column->addWidget(scale_);
    findings_ = new QVBoxLayout;
    findings_->setSpacing(measures().gap(1));
    column->addLayout(findings_);
    column->addStretch();
    scale_->hide();
}

ReadingsPanel::Section ReadingsPanel::make_section(ReadingGroup group) {
    Section section;
    section.box = new QWidget;
    auto* column = column_in(section.box, 0, 0.5);
    section.heading = text(title_of(group), "lead");
    column->addWidget(section.heading);
    if (group == ReadingGroup::pattern) column->addWidget(curl_);
    for (const QString& name : reading_names_of(group)) {
        Row row{text(beginning(said(title_of_reading(name))), "soft"), text({}, "figure"), text({}, "caption")};
        row.title->setToolTip(said(meaning_of_reading(name)));
        for (QLabel* label : {row.title, row.figure, row.below}) column->addWidget(label);
        column->addSpacing(measures().gap(1.5));
        rows_.insert(name, row);
    }
    add_details(group, section, column);
    column->addSpacing(measures().gap(1));
    section.legend = new Legend(group);
    column->addWidget(section.legend);
    column->addSpacing(measures().gap(2));
    section.box->hide();
    section.legend->hide();
    return section;
}

void ReadingsPanel::add_details(ReadingGroup group, Section& section, QBoxLayout* column) {
    if (group == ReadingGroup::tone) column->addWidget(tone_);
    if (group == ReadingGroup::shine) {
        light_ = new QWidget;
        auto* inside = column_in(light_, 0, 0.5);
        column->addWidget(light_);
        inside->addWidget(shine_);
        inside->addWidget(
            text(tr("Light along the fibres. Dark line: all of it; mulberry: the surface highlight; dashed: "
                    "the dull light below it; bar: its width at half height."),
                 "caption"));
    }
    if (group == ReadingGroup::combings || group == ReadingGroup::pattern) {
        section.strands = new StrandBox(group == ReadingGroup::combings);
        column->addWidget(section.strands);
        connect(section.strands, &StrandBox::pointed_at, this, &ReadingsPanel::strand_pointed);
        connect(section.strands, &StrandBox::chosen, this, &ReadingsPanel::strand_chosen);
        connect(section.strands, &StrandBox::drop_asked, this, &ReadingsPanel::strand_dropped);
        connect(section.strands, &StrandBox::join_asked, this, &ReadingsPanel::strands_joined);
        connect(section.strands, &StrandBox::whole_asked, this, &ReadingsPanel::strand_whole);
        connect(section.strands, &StrandBox::clear_asked, this, &ReadingsPanel::corrections_cleared);
    }
}

void ReadingsPanel::set_view(View view) {
    view_ = view;
    say_what_else({});
}

void ReadingsPanel::set_measuring(bool measuring) {
    measuring_ = measuring;
    state_->setText(measuring ? tr("measuring…") : QStringLiteral(" "));
}

void ReadingsPanel::set_legend_shown(bool shown) {
    legend_shown_ = shown;
    for (const Section& section : std::as_const(sections_)) section.legend->setVisible(shown);
}

void ReadingsPanel::choose_strand(int strand) {
    for (const Section& section : std::as_const(sections_))
        if (section.strands != nullptr && section.box->isVisibleTo(this)) section.strands->choose(strand);
}

void ReadingsPanel::show_nothing(const QString& sentence) {
    hint_->setText(sentence);
    hint_->setVisible(!sentence.isEmpty());
    for (const Section& section : std::as_const(sections_)) section.box->hide();
    say_what_else({});
}

void ReadingsPanel::show_measured(const Measured& measured, bool current) {
    hint_->setVisible(measured.readings.isEmpty());
    if (measured.readings.isEmpty()) hint_->setText(tr("No readings from this drawing."));
    for (const ReadingGroup group : all_reading_groups()) {
        const Section& section = sections_[group];
        section.box->setVisible(measured.asked.contains(group));
        section.heading->setVisible(measured.asked.size() > 1);
        section.legend->setVisible(legend_shown_);
    }
    show_rows(measured, current);
    show_details(measured);
    state_->setText(current && !measuring_ ? QStringLiteral(" ")
                    : current              ? tr("measuring…")
                                           : tr("following your hand…"));
    show_quality(measured);
    say_what_else(measured.asked);
}

void ReadingsPanel::show_rows(const Measured& measured, bool current) {
    for (Row& row : rows_)
        for (QLabel* label : {row.title, row.figure, row.below}) label->hide();
    for (const ShownReading& reading : measured.readings) {
        const auto found = rows_.find(reading.name);
        if (found == rows_.end()) continue;
        Row& row = *found;
        row.title->show();
        row.below->show();
        row.figure->setVisible(!reading.refused);
        if (reading.refused) {
            row.figure->clear();
            row.below->setText(tr("Not given: %1").arg(said(reading.refusal)));
            continue;
        }
        const double half = (reading.high - reading.low) / 2;
        row.figure->setText(in_figures(plain_value(reading.value, half, reading.unit, look().length())));
        row.figure->setEnabled(current);
        const auto whole = [&](double value) { return whole_figure(value, half, reading.unit); };
        row.below->setText(tr("95\u00a0%: between %1 and %2").arg(whole(reading.low), whole(reading.high)));
    }
}

void ReadingsPanel::show_details(const Measured& measured) {
    const Overlay& found = measured.overlay;
    curl_->setText(beginning(said(measured.curl)));
    curl_->setVisible(!measured.curl.isEmpty());
    tone_->setVisible(found.tone.has_value());
    if (found.tone) tone_->show_tone(*found.tone);
    const bool light = found.shine && found.shine->total.size() > 1;
    light_->setVisible(light);
    if (light) shine_->show_shine(*found.shine);
    for (const auto& [group, strands] :
         {std::pair{ReadingGroup::combings, &found.combings}, {ReadingGroup::pattern, &found.pattern}}) {
        StrandBox* box = sections_[group].strands;
        box->setVisible(strands->has_value());
        if (strands->has_value()) box->show_strands(**strands, measured.marks);
    }
}

void ReadingsPanel::say_what_else(const QVector<ReadingGroup>& asked) {
    QStringList words;
    for (const Tool tool : first_tools(view_))
        if (const auto group = group_of(tool); group && !asked.contains(*group)) {
            const QString word = title_of(*group).toLower();
            if (!words.contains(word)) words.append(word);
        }
    // Sheets are one or the other: what is laid on them is measured as one thing.
    const bool sheet = asked.contains(ReadingGroup::ends) || asked.contains(ReadingGroup::combings) ||
                       asked.contains(ReadingGroup::pattern);
    if (sheet && view_ == View::ends) words.clear();
    else_->setVisible(!words.isEmpty());
    else_->setText(tr("Could be measured on this photo: %1.").arg(words.join(tr(" or "))));
}

void ReadingsPanel::show_quality(const Measured& measured) {
    const QLocale locale;
    QStringList words;
    if (measured.px_per_mm > 0) {
        const QString source = measured.scale_from == "points"  ? tr("two points")
                               : measured.scale_from == "sheet" ? tr("the gauge sheet")
                                                                : tr("the gauge card");
        words.append(tr("%1 pixels a mm, from %2").arg(locale.toString(measured.px_per_mm, 'f', 1), source));
        if (measured.scale_from != "points") words.append(tr("tilted %1°").arg(std::lround(measured.tilt_deg)));
        if (measured.line_length_mm > 0)
            words.append(tr("line %1").arg(
                in_figures(plain_value(measured.line_length_mm, 0.5, QStringLiteral("mm"), look().length()))));
    } else {
        words.append(tr("No scale: neither card nor ruler"));
    }
    scale_->setText(words.join(QStringLiteral(", ")));
    scale_->show();
    QString key;
    for (const ShownFinding& f : measured.findings) key += f.code + f.text + f.remedy;
    if (key == findings_shown_) return;
    findings_shown_ = key;
    empty_layout(findings_);
    for (const ShownFinding& finding : measured.findings) findings_->addWidget(finding_panel(finding, {}));
}

QString ReadingsPanel::shown(const QString& name) const {
    const auto found = rows_.find(name);
    return found == rows_.end() || !found->figure->isVisibleTo(this) ? QString() : found->figure->text();
}

QString ReadingsPanel::curl() const {
    return curl_->isVisibleTo(this) ? curl_->text() : QString();
}

}  // namespace kempt::desk
