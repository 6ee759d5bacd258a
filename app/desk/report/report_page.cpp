#include "desk/report/report_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QLocale>
#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/compare/compare_choices.h"
#include "desk/look/look.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "work/make_report.h"

namespace kempt::desk {

ReportPage::ReportPage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* page = scrolled();
    title_ = text({}, "title");
    page->addWidget(title_);
    auto* columns = new Columns(measures().px(760));
    auto* choices = panel("surface");
    auto* column = column_in(choices, 4, 1);
    const auto field = [column](const QString& words, QWidget* widget) {
        auto* label = text(words, "caption");
        label->setBuddy(widget);
        widget->setAccessibleName(words);
        column->addWidget(label);
        column->addWidget(widget);
        column->addSpacing(measures().gap(1));
    };
    const auto combo = [] {
        auto* c = new QComboBox;
        c->setMinimumContentsLength(12);
        return c;
    };
    from_ = combo();
    to_ = combo();
    copy_ = combo();
    copy_->addItem(tr("for the client to take home"), static_cast<int>(report::Copy::client));
    copy_->addItem(tr("for the salon's own file, with every reading"), static_cast<int>(report::Copy::record));
    paper_ = combo();
    paper_->addItem(tr("A4"), static_cast<int>(report::Paper::a4));
    paper_->addItem(tr("US Letter"), static_cast<int>(report::Paper::letter));
    salon_ = new QLineEdit(QSettings().value("report/salon").toString());
    salon_->setPlaceholderText(tr("your name or your salon's"));
    const QSettings settings;
    const bool letter =
        settings.value("report/letter", QLocale::system().measurementSystem() == QLocale::ImperialUSSystem).toBool();
    paper_->setCurrentIndex(letter ? 1 : 0);
    column->addWidget(text(tr("What it compares"), "heading"));
    field(tr("Visit before"), from_);
    field(tr("Visit after"), to_);
    column->addWidget(text(tr("How it is made"), "heading"));
    field(tr("This copy is"), copy_);
    field(tr("Paper"), paper_);
    field(tr("Prepared by"), salon_);
    pictures_ = new QCheckBox(tr("with before and after photos"));
    pictures_->setAccessibleName(pictures_->text());
    pictures_->setChecked(true);
    column->addWidget(pictures_);
    columns->left()->addWidget(choices);
    columns->left()->addStretch();

    consent_box_ = panel("caution");
    auto* consent = column_in(consent_box_, 4, 2);
    consent_words_ = text({});
    agree_ = button(tr("She agrees today"));
    consent->addWidget(consent_words_);
    consent->addWidget(agree_, 0, Qt::AlignLeft);
    columns->right()->addWidget(consent_box_);
    auto* holds = panel("surface");
    auto* list = column_in(holds, 4, 2);
    list->addWidget(text(tr("What it will say"), "heading"));
    for (const QString& words : {tr("Each view before and after, side by side at one scale."),
                                 tr("Every reading with its 95 % interval, and whether the change is real."),
                                 tr("A chart for each target, with the noise band and the services."),
                                 tr("How it was measured, and the cautions that belong to the work."),
                                 tr("It never says that a service is safe. Scalp disease, sudden or patchy loss, pain "
                                    "or scarring belong to a doctor.")})
        list->addWidget(text(words));
    write_ = button(tr("Save the report…"), "primary", Sign::report);
    list->addSpacing(measures().gap(2));
    list->addWidget(write_, 0, Qt::AlignLeft);
    columns->right()->addWidget(holds);
    columns->right()->addStretch();
    page->addWidget(columns);
    page->addStretch();
    connect(agree_, &QPushButton::clicked, this, &ReportPage::keep_consent);
    connect(write_, &QPushButton::clicked, this, &ReportPage::choose_file);
    connect(pictures_, &QCheckBox::toggled, this, &ReportPage::show_consent);
    connect(&session_, &Session::client_changed, this, [this](Id client) {
        if (client == place_.client && isVisible()) show_place(place_);
    });
}

void ReportPage::show_place(const Place& place) {
    place_ = place;
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading the visits"), this,
        [client = place.client](Book& book, const Progress& progress) {
            return compare_choices(book, client, progress);
        },
        [this](const CompareChoices& found) {
            settled_ = true;
            if (found.client.id == place_.client) take(found);
        },
        [this] { settled_ = true; });
}

void ReportPage::take(const CompareChoices& found) {
    client_ = found.client;
    title_->setText(tr("Report for %1").arg(client_.name));
    for (QComboBox* combo : {from_, to_}) {
        const QVariant before = combo->currentData();
        combo->clear();
        combo->addItem(combo == from_ ? tr("the first that compares") : tr("the last that compares"),
                       QVariant::fromValue<Id>(0));
        for (const Visit& visit : found.visits) combo->addItem(date_words(visit.date), visit.id);
        combo->setCurrentIndex(std::max(0, combo->findData(before)));
    }
    write_->setEnabled(!found.visits.isEmpty());
    show_consent();
    emit trail_changed({{client_.name, {Where::client, client_.id}}, {tr("Report"), place_}});
}

void ReportPage::show_consent() {
    consent_box_->setVisible(!client_.photo_consent && pictures_->isChecked());
    consent_words_->setText(
        tr("%1 has not agreed that photos leave this book. Ask her: without her yes the report is made "
           "without photos and says so.")
            .arg(client_.name));
}

void ReportPage::keep_consent() {
    Client client = client_;
    client.photo_consent = true;
    client.consent_on = Clock().today();
    session_.keep(tr("Keeping her consent"), this, client.id, 0,
                  [client](Book& book, const Progress&) { return work::change_client(book, client); });
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

void ReportPage::write_to(const QString& path) {
    work::ReportOptions options;
    options.client = place_.client;
    if (const Id from = from_->currentData().toLongLong(); from > 0) options.from_visit = from;
    if (const Id to = to_->currentData().toLongLong(); to > 0) options.to_visit = to;
    options.path = path;
    options.salon = salon_->text().trimmed();
    options.look.copy = static_cast<report::Copy>(copy_->currentData().toInt());
    options.look.paper = static_cast<report::Paper>(paper_->currentData().toInt());
    options.look.length = look().length();
    options.with_pictures = pictures_->isChecked();
    QSettings settings;
    settings.setValue("report/salon", options.salon);
    settings.setValue("report/letter", options.look.paper == report::Paper::letter);
    write_->setEnabled(false);
    session_.ask(
        session_.bench(), tr("Making the report"), this,
        [options, today = Clock().today()](Book& book, const Progress& progress) {
            return work::make_report(book, options, today, progress);
        },
        [this, path](Done) {
            write_->setEnabled(true);
            emit session_.made_file(tr("The report is saved as %1.").arg(path), path);
        },
        [this] { write_->setEnabled(true); });
}

}  // namespace kempt::desk
