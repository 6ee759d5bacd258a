#include "desk/photo/readings_panel.h"

#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>
#include <cmath>

#include "desk/look/look.h"
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
    table_ = new QWidget;
    auto* rows = column_in(table_, 0, 0.5);
    for (const QString& name : edge_reading_names()) {
        Row row{text(beginning(title_of_reading(name)), "soft"), text({}, "figure"), text({}, "caption")};
        row.title->setToolTip(meaning_of_reading(name));
        for (QLabel* label : {row.title, row.figure, row.below}) rows->addWidget(label);
        rows->addSpacing(measures().gap(1.5));
        rows_.insert(name, row);
    }
    column->addWidget(table_);
    scale_ = text({}, "caption");
    column->addWidget(scale_);
    findings_ = new QVBoxLayout;
    findings_->setSpacing(measures().gap(1));
    column->addLayout(findings_);
    column->addStretch();
    table_->hide();
    scale_->hide();
}

void ReadingsPanel::set_measuring(bool measuring) {
    measuring_ = measuring;
    state_->setText(measuring ? tr("measuring…") : QStringLiteral(" "));
}

void ReadingsPanel::show_hint(const QString& sentence) {
    hint_->setText(sentence);
    hint_->show();
    table_->hide();
}

void ReadingsPanel::show_failed(const QString& sentence) {
    show_hint(sentence);
}

void ReadingsPanel::show_measured(const Measured& measured, bool current) {
    hint_->setVisible(measured.readings.isEmpty());
    if (measured.readings.isEmpty()) hint_->setText(tr("No readings from this drawing."));
    table_->setVisible(!measured.readings.isEmpty());
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
            row.below->setText(tr("Not given: %1").arg(reading.refusal));
            continue;
        }
        const double half = (reading.high - reading.low) / 2;
        row.figure->setText(plain_value(reading.value, half, reading.unit, look().length()));
        row.figure->setEnabled(current);
        // A unit never stands alone on the next line.
        const auto whole = [&](double value) {
            return plain_value(value, half, reading.unit, look().length()).replace(u' ', QChar(QChar::Nbsp));
        };
        row.below->setText(tr("95\u00a0%: between %1 and %2").arg(whole(reading.low), whole(reading.high)));
    }
    state_->setText(current && !measuring_ ? QStringLiteral(" ")
                    : current              ? tr("measuring…")
                                           : tr("following your hand…"));
    show_quality(measured);
}

void ReadingsPanel::show_quality(const Measured& measured) {
    const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    QStringList words;
    if (measured.px_per_mm > 0) {
        const QString source = measured.scale_from == "points"  ? tr("two points")
                               : measured.scale_from == "sheet" ? tr("the gauge sheet")
                                                                : tr("the gauge card");
        words.append(tr("%1 pixels a mm, from %2").arg(locale.toString(measured.px_per_mm, 'f', 1), source));
        if (measured.scale_from != "points") words.append(tr("tilted %1°").arg(std::lround(measured.tilt_deg)));
        if (measured.line_length_mm > 0)
            words.append(
                tr("line %1").arg(plain_value(measured.line_length_mm, 0.5, QStringLiteral("mm"), look().length())));
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
    return found == rows_.end() || found->figure->isHidden() || table_->isHidden() ? QString() : found->figure->text();
}

}  // namespace kempt::desk
