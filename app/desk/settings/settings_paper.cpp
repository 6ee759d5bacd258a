// Paper, gauge card and sheet, and what the printer did to them.
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QTimer>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/session/session.h"
#include "desk/settings/choice_of.h"
#include "desk/settings/paper_choice.h"
#include "desk/settings/section.h"
#include "desk/settings/settings_dialog.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "speech/speech.h"
#include "work/open_book.h"
#include "work/print_card.h"

namespace kempt::desk {
namespace {

constexpr double check_line_mm = 50;  // printed on the card

}  // namespace

void SettingsDialog::build_paper() {
    Section* section = add_section(tr("Paper and gauge card"));
    QBoxLayout* column = section->column();
    const auto tell = [section] { section->set_state(letter_paper() ? tr("US Letter") : tr("A4")); };
    tell();
    add_choice(column, tr("Paper of reports, card and sheet"), {tr("A4"), tr("US Letter")}, letter_paper() ? 1 : 0,
               [tell](int chosen) {
                   set_letter_paper(chosen == 1);
                   tell();
               });
    if (session_ == nullptr) {
        column->addWidget(
            text(tr("Card and sheet are printed, and the printer corrected, with a book open."), "caption"));
        return;
    }
    column->addWidget(text(tr("Gauge card and gauge sheet"), "strong"));
    column->addWidget(text(
        tr("Print at 100 %, without fitting to the page: the card on matt card, to cut out; the sheet, "
           "a whole page, lies behind ends and combed-out strands: the white one, or, behind grey and white ends, the "
           "blue one, printed in colour."),
        "caption"));
    auto* row = new FlowLayout(measures().gap(2));
    auto* save = button(tr("Save the card to print…"), "", Sign::ruler);
    auto* save_sheet = button(tr("Save the sheet to print…"), "", Sign::picture);
    row->addWidget(save);
    auto* save_blue = button(tr("Save the blue sheet to print…"), "", Sign::picture);
    row->addWidget(save_sheet);
    row->addWidget(save_blue);
    column->addLayout(row);
    connect(save, &QPushButton::clicked, this, [this] { choose_gauge_file(card::Kind::card); });
    connect(save_sheet, &QPushButton::clicked, this, [this] { choose_gauge_file(card::Kind::sheet); });
    connect(save_blue, &QPushButton::clicked, this,
            [this] { choose_gauge_file(card::Kind::sheet, card::Ground::blue); });
    build_check_line(column);
}

void SettingsDialog::choose_gauge_file(card::Kind kind, card::Ground ground) {
    const bool sheet = kind == card::Kind::sheet, blue = ground == card::Ground::blue;
    auto* dialog = new QFileDialog(this, blue    ? tr("Save the blue gauge sheet")
                                         : sheet ? tr("Save the gauge sheet")
                                                 : tr("Save the gauge card"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(tr("PDF (*.pdf)"));
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(blue ? tr("blue gauge sheet.pdf") : sheet ? tr("gauge sheet.pdf") : tr("gauge card.pdf"));
    connect(dialog, &QFileDialog::fileSelected, this, [this, kind, ground, sheet, blue](const QString& path) {
        work::PrintCardOptions options;
        options.kind = kind;
        options.ground = ground;
        options.path = path;
        options.speech = speech_now();
        options.paper = letter_paper() ? card::Paper::letter : card::Paper::a4;
        session_->ask(
            session_->bench(), sheet ? tr("Drawing the gauge sheet") : tr("Drawing the gauge card"), session_,
            [options](Book&, const Progress&) { return work::print_card(options); },
            [session = session_, path, sheet, blue](Done) {
                const QString what = blue    ? tr("The blue gauge sheet is saved as %1.")
                                     : sheet ? tr("The gauge sheet is saved as %1.")
                                             : tr("The gauge card is saved as %1.");
                emit session->made_file(what.arg(path), path);
            });
        accept();
    });
    dialog->open();
}

void SettingsDialog::build_check_line(QBoxLayout* column) {
    column->addWidget(text(tr("Check line of the printed gauge card"), "strong"));
    column->addWidget(text(
        tr("Measure the long check line on your print with a ruler. It should be 50 mm; type what it is."), "caption"));
    line_ = new QDoubleSpinBox;
    line_->setRange(45, 55);  // more than a tenth off is another print setting, not a printer's tolerance
    line_->setDecimals(1);
    line_->setSingleStep(0.1);
    line_->setSuffix(tr(" mm"));
    line_->setValue(check_line_mm);
    line_->setAccessibleName(tr("Measured length of the check line"));
    line_words_ = text(QStringLiteral(" "), "caption");
    column->addWidget(line_);
    column->addWidget(line_words_);
    auto* settle = new QTimer(this);
    settle->setSingleShot(true);
    settle->setInterval(500);
    session_->ask(
        session_->records(), tr("Reading the settings"), this,
        [](Book& book, const Progress&) { return work::printer_scale_of(book); },
        [this, settle](double scale) {
            line_->setValue(scale * check_line_mm);
            connect(line_, &QDoubleSpinBox::valueChanged, settle, qOverload<>(&QTimer::start));
        });
    connect(settle, &QTimer::timeout, this, [this] {
        const auto scale = work::printer_scale_from(line_->value());
        if (!scale.ok()) {
            line_words_->setText(said(scale.error().sentence()));
            return;
        }
        session_->ask(
            session_->records(), tr("Keeping the settings"), this,
            [s = scale.value()](Book& book, const Progress&) { return work::set_printer_scale(book, s); },
            [this](Done) {
                line_words_->setText(
                    tr("Kept. Readings from now on are corrected by it; older ones stay as they were measured."));
            });
    });
}

}  // namespace kempt::desk
