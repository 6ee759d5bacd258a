// The ways in which a report leaves: PDF, paper, pictures, a table. Each reads the book anew, so that nothing goes out
// that she has taken back since the pages were shown.
#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QSettings>

#include "desk/client/keep_client.h"
#include "desk/compare/eyes_dialog.h"
#include "desk/look/look.h"
#include "desk/report/report_page.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "report/report_pages.h"
#include "work/keep_records.h"
#include "work/make_report.h"
#include "work/report_outputs.h"

namespace kempt::desk {
namespace {

constexpr double points_per_inch = 72;  // by definition of the point in PDF and Qt

Status print_report(const report::Model& model, const report::Options& look, QPrinter& printer,
                    const Progress& progress) {
    const auto pages = report::ReportPages::lay_out(std::make_shared<const report::Model>(model), look);
    if (!pages.ok()) return pages.error();
    const Error failed{ErrorKind::io, "not-printed", "The printer could not be reached.", "Nothing was printed.",
                       "Look whether it is switched on and has paper, or save the report and print the file."};
    QPainter painter;
    if (!painter.begin(&printer)) return failed;
    int from = 0, to = (*pages)->count() - 1;
    if (printer.printRange() == QPrinter::PageRange) {
        from = std::max(0, printer.fromPage() - 1);
        to = std::min(to, printer.toPage() - 1);
    }
    for (int page = from; page <= to; ++page) {
        if (tell(progress, 1.0 * page / std::max(1, (*pages)->count()), "printing") == Go::stop) {
            printer.abort();
            return Error{ErrorKind::cancelled, "cancelled", "Printing was stopped.", "", ""};
        }
        if (page > from && !printer.newPage()) return failed;
        (*pages)->paint(painter, page, printer.resolution() / points_per_inch);
    }
    return painter.end() ? Status(Done{}) : Status(failed);
}

}  // namespace

void ReportPage::keep_consent() {
    desk::keep_consent(session_, this, client_);
}

void ReportPage::choose_file() {
    auto* dialog = new QFileDialog(this, tr("Save the report"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(tr("PDF (*.pdf)"));
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(tr("report %1.pdf").arg(Clock().today().toString(Qt::ISODate)));
    connect(dialog, &QFileDialog::fileSelected, this, &ReportPage::write_to);
    dialog->open();
}

void ReportPage::choose_folder() {
    auto* dialog = new QFileDialog(this, tr("Save its pictures"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setFileMode(QFileDialog::Directory);
    connect(dialog, &QFileDialog::fileSelected, this, &ReportPage::write_pictures_to);
    dialog->open();
}

void ReportPage::choose_table() {
    auto* dialog = new QFileDialog(this, tr("Save the readings"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(tr("Table (*.csv)"));
    dialog->setDefaultSuffix(QStringLiteral("csv"));
    dialog->selectFile(tr("readings %1.csv").arg(Clock().today().toString(Qt::ISODate)));
    connect(dialog, &QFileDialog::fileSelected, this, &ReportPage::write_readings_to);
    dialog->open();
}

void ReportPage::choose_printer() {
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setFullPage(true);  // the pages have margins of their own
    printer->setPageSize(QPageSize(options().look.paper == report::Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    printer->setDocName(tr("Condition report"));
    auto* dialog = new QPrintDialog(printer.get(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setOption(QAbstractPrintDialog::PrintPageRange, true);
    if (report_) dialog->setMinMax(1, report_->count());
    connect(dialog, qOverload<QPrinter*>(&QPrintDialog::accepted), this,
            [this, printer](QPrinter*) { print_on(printer); });
    connect(dialog, &QObject::destroyed, this, [printer] {});  // as long as the dialog lives
    dialog->open();
}

void ReportPage::busy(bool writing) {
    for (QPushButton* b : {write_, print_, save_pictures_, save_table_}) b->setEnabled(!writing);
}

void ReportPage::write_to(const QString& path) {
    work::ReportOptions options = this->options();
    options.path = path;
    QSettings settings;
    settings.setValue("report/salon", options.salon);
    settings.setValue("report/letter", options.look.paper == report::Paper::letter);
    busy(true);
    session_.ask(
        session_.bench(), tr("Making the report"), this,
        [options, today = Clock().today()](Book& book, const Progress& progress) {
            return work::make_report(book, options, today, progress);
        },
        [this, path](Done) {
            busy(false);
            emit session_.made_file(tr("The report is saved as %1.").arg(path), path);
        },
        [this] { busy(false); });
}

void ReportPage::print_on(std::shared_ptr<QPrinter> to) {
    busy(true);
    session_.ask(
        session_.bench(), tr("Printing the report"), this,
        [options = options(), today = Clock().today(), to](Book& book, const Progress& progress) -> Status {
            const auto model = work::report_model_of(book, options, today, progress);
            if (!model.ok()) return model.error();
            return print_report(model.value(), options.look, *to, progress);
        },
        [this](Done) {
            busy(false);
            emit session_.news(tr("The report is on its way to the printer."));
        },
        [this] { busy(false); });
}

void ReportPage::write_pictures_to(const QString& folder) {
    busy(true);
    work::ReportOptions options = this->options();
    options.with_pictures = true;
    session_.ask(
        session_.bench(), tr("Saving the pictures"), this,
        [options, folder, today = Clock().today()](Book& book, const Progress& progress) -> Result<QStringList> {
            const auto model = work::report_model_of(book, options, today, progress);
            if (!model.ok()) return model.error();
            return work::write_report_pictures(model.value(), options.look, folder);
        },
        [this, folder](const QStringList& names) {
            busy(false);
            emit session_.news(tr("%1 saved in %2.").arg(counted(names.size(), tr("picture"), tr("pictures")), folder));
        },
        [this] { busy(false); });
}

void ReportPage::write_readings_to(const QString& path) {
    busy(true);
    session_.ask(
        session_.bench(), tr("Saving the readings"), this,
        [client = place_.client, path](Book& book, const Progress& progress) {
            return work::write_readings_csv(book, client, path, progress);
        },
        [this, path](Done) {
            busy(false);
            emit session_.made_file(tr("The readings are saved as %1.").arg(path), path);
        },
        [this] { busy(false); });
}

EyesDialog* ReportPage::open_eyes() {
    if (!model_ || model_->photos.isEmpty()) return nullptr;
    // Those that nobody has looked at come first.
    QVector<Id> photos = model_->to_look_at;
    for (const Id photo : model_->photos)
        if (!photos.contains(photo)) photos.append(photo);
    auto* dialog = new EyesDialog(session_, place_.client, photos, this);
    connect(dialog, &EyesDialog::kept, this, [this] {
        model_old_ = true;
        make_model();
    });
    dialog->open();
    return dialog;
}

}  // namespace kempt::desk
