#include "desk/settings/settings_dialog.h"

#include <QButtonGroup>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLocale>
#include <QPointer>
#include <QRadioButton>
#include <QScrollArea>
#include <QSlider>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/session/session.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "work/open_book.h"
#include "work/print_card.h"

namespace kempt::desk {
namespace {

constexpr double check_line_mm = 50;  // printed on the card

// Applied after the click has been dealt with: a new text size rebuilds the window that was clicked in.
void apply_later(const LookChoice& choice) {
    store_look(choice);
    QTimer::singleShot(0, qApp, [choice] { look().apply(choice); });
}

}  // namespace

SettingsDialog::SettingsDialog(Session* session, QWidget* parent) : QDialog(parent), session_(session) {
    setWindowTitle(tr("Settings"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* whole = column_in(this, 0, 0);
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* inside = new QWidget;
    inside->setProperty("clear", true);
    auto* outer = column_in(inside, 6, 3);
    area->setWidget(inside);
    whole->addWidget(area);
    outer->addWidget(text(tr("Settings"), "heading"));
    const auto pair = [outer](const QString& caption, const QString& one, const QString& other, bool second,
                              auto choose) {
        outer->addWidget(text(caption, "lead"));
        auto* row = new FlowLayout(measures().gap(4));
        auto* group = new QButtonGroup(row);
        for (const auto& [words, on] : {QPair<QString, bool>{one, false}, {other, true}}) {
            auto* radio = new QRadioButton(words);
            radio->setAccessibleName(caption + QStringLiteral(": ") + words);
            radio->setChecked(on == second);
            group->addButton(radio);
            row->addWidget(radio);
            connect(radio, &QRadioButton::clicked, radio, [choose, chosen = on] { choose(chosen); });
        }
        outer->addLayout(row);
    };
    outer->addWidget(text(tr("Text size"), "lead"));
    auto* line = new QHBoxLayout;
    auto* slider = new QSlider(Qt::Horizontal);
    slider->setRange(static_cast<int>(least_text_scale * 10), static_cast<int>(greatest_text_scale * 10));
    slider->setPageStep(2);
    slider->setValue(static_cast<int>(std::lround(look().choice().text_scale * 10)));
    slider->setAccessibleName(tr("Text size in per cent"));
    auto* size = text(tr("%1 %").arg(slider->value() * 10));
    size->setWordWrap(false);
    line->addWidget(slider, 1);
    line->addWidget(size);
    outer->addLayout(line);
    auto* settle = new QTimer(this);
    settle->setSingleShot(true);
    settle->setInterval(250);
    connect(slider, &QSlider::valueChanged, this, [size, settle](int v) {
        size->setText(tr("%1 %").arg(v * 10));
        settle->start();
    });
    connect(settle, &QTimer::timeout, this, [slider] {
        LookChoice choice = look().choice();
        choice.text_scale = slider->value() / 10.0;
        apply_later(choice);
    });
    pair(tr("Colours for a"), tr("light room"), tr("dim room"), look().choice().dark, [](bool dark) {
        LookChoice choice = look().choice();
        choice.dark = dark;
        apply_later(choice);
    });
    pair(tr("Lengths in"), tr("millimetres"), tr("inches"), look().choice().length == LengthUnit::inches,
         [](bool inches) {
             LookChoice choice = look().choice();
             choice.length = inches ? LengthUnit::inches : LengthUnit::millimetres;
             apply_later(choice);
         });
    if (session_ != nullptr) build_printer(outer);
    auto* close = button(tr("Done"), "primary");
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    outer->addWidget(close, 0, Qt::AlignRight);
    // As high as it needs, but never higher than the window behind it.
    const int width = measures().px(440);
    const int wanted = inside->heightForWidth(width) > 0 ? inside->heightForWidth(width) : inside->sizeHint().height();
    resize(width, parent != nullptr ? std::min(wanted, parent->height() - measures().gap(6)) : wanted);
}

void SettingsDialog::choose_gauge_file(card::Kind kind) {
    const bool sheet = kind == card::Kind::sheet;
    auto* dialog = new QFileDialog(this, sheet ? tr("Save the gauge sheet") : tr("Save the gauge card"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(tr("PDF (*.pdf)"));
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(sheet ? tr("gauge sheet.pdf") : tr("gauge card.pdf"));
    connect(dialog, &QFileDialog::fileSelected, this, [this, kind, sheet](const QString& path) {
        work::PrintCardOptions options;
        options.kind = kind;
        options.path = path;
        options.paper =
            QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? card::Paper::letter : card::Paper::a4;
        session_->ask(
            session_->bench(), sheet ? tr("Drawing the gauge sheet") : tr("Drawing the gauge card"), session_,
            [options](Book&, const Progress&) { return work::print_card(options); },
            [session = session_, path, sheet](Done) {
                const QString what =
                    sheet ? tr("The gauge sheet is saved as %1.") : tr("The gauge card is saved as %1.");
                emit session->made_file(what.arg(path), path);
            });
        accept();
    });
    dialog->open();
}

void SettingsDialog::build_printer(QBoxLayout* column) {
    column->addWidget(text(tr("Gauge card"), "lead"));
    column->addWidget(
        text(tr("Print it at 100 %, without fitting to the page, on matt card, and cut it out."), "caption"));
    auto* save = button(tr("Save the card to print…"), "", Sign::ruler);
    column->addWidget(save, 0, Qt::AlignLeft);
    connect(save, &QPushButton::clicked, this, [this] { choose_gauge_file(card::Kind::card); });
    column->addWidget(
        text(tr("The gauge sheet lies behind ends and combed-out strands. It is a whole page."), "caption"));
    auto* save_sheet = button(tr("Save the sheet to print…"), "", Sign::picture);
    column->addWidget(save_sheet, 0, Qt::AlignLeft);
    connect(save_sheet, &QPushButton::clicked, this, [this] { choose_gauge_file(card::Kind::sheet); });
    column->addWidget(text(tr("Check line of the printed gauge card"), "lead"));
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
            line_words_->setText(QString::fromStdString(scale.error().sentence()));
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
