// Targets that are proposed, the watched folder, safe keeping.
#include <QFileDialog>
#include <QLineEdit>
#include <QSettings>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/safe/backup_log.h"
#include "desk/session/session.h"
#include "desk/settings/section.h"
#include "desk/settings/settings_dialog.h"
#include "desk/settings/target_defaults.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/measure_units.h"
#include "domain/readings.h"

namespace kempt::desk {
namespace {

constexpr auto watched_key = "desk.watched_folder";

struct Proposed {
    const char* reading;
    bool percent;
    double most, step;
};
// In per cent, or in mm; the fields go as far as a head of hair does.
constexpr Proposed proposed[] = {{"edge_coverage", true, 100, 5},  {"bare_length", false, 200, 1},
                                 {"fill_depth", false, 20, 0.5},   {"see_through", true, 100, 5},
                                 {"hem_unevenness", false, 50, 1}, {"short_share", true, 100, 5}};

QString defaults_words() {
    qsizetype set = 0;
    for (const QString& reading : readings_with_default()) set += default_target(reading) ? 1 : 0;
    return set == 0 ? SettingsDialog::tr("none proposed")
                    : SettingsDialog::tr("%n proposed", nullptr, static_cast<int>(set));
}

}  // namespace

void SettingsDialog::build_targets() {
    Section* section = add_section(tr("Targets"));
    section->set_state(defaults_words());
    section->column()->addWidget(
        text(tr("What is proposed for a client who has no target yet. It counts for nobody until you set it on her "
                "page."),
             "caption"));
    for (const Proposed& one : proposed) {
        const QString reading = QString::fromLatin1(one.reading), title = beginning(said(title_of_reading(reading)));
        const bool inches = !one.percent && look().length() == LengthUnit::inches;
        const double factor = inches ? conversion_of(QStringLiteral("mm"), LengthUnit::inches).factor : 1;
        NumberRange range;
        range.most = one.most * factor;
        range.decimals = one.percent ? 0 : inches ? 2 : 1;
        range.step = inches ? 0.05 : one.step;
        range.unit = one.percent ? QStringLiteral("%") : inches ? tr("in") : tr("mm");
        range.nothing = tr("none");
        range.zero_counts = true;
        auto* field = new NumberField(tr("Proposed target: %1").arg(title), range);
        const auto kept = default_target(reading);
        field->set_number(kept ? std::optional(*kept * factor) : std::nullopt);
        section->column()->addWidget(labelled(title, field));
        connect(field, &NumberField::entered, section, [section, field, reading, factor] {
            const auto number = field->number();
            set_default_target(reading, number ? std::optional(*number / factor) : std::nullopt);
            section->set_state(defaults_words());
        });
    }
}

void SettingsDialog::build_photos() {
    Section* section = add_section(tr("Photos from the phone"));
    const auto folder = [] { return QSettings().value(QLatin1String(watched_key)).toString(); };
    auto* path = new QLineEdit(folder());
    path->setReadOnly(true);
    path->setPlaceholderText(tr("no folder is watched"));
    path->setAccessibleName(tr("Watched folder"));
    auto* row = new FlowLayout(measures().gap(2));
    auto* choose = button(tr("Choose the folder…"), "", Sign::folder);
    auto* none = button(tr("Watch none"), "quiet");
    row->addWidget(choose);
    row->addWidget(none);
    const auto show = [this, section, path, none, folder] {
        path->setText(folder());
        none->setEnabled(!folder().isEmpty());
        section->set_state(folder().isEmpty() ? tr("no folder is watched") : folder());
    };
    show();
    section->column()->addWidget(text(
        tr("The folder that your phone copies its pictures to. New ones come up for you to sort; nothing goes into "
           "a record by itself, and the files stay where they are."),
        "caption"));
    section->column()->addWidget(path);
    section->column()->addLayout(row);
    const auto keep = [this, show](const QString& chosen) {
        QSettings().setValue(QLatin1String(watched_key), chosen);
        show();
        emit watched_folder_changed();
    };
    connect(choose, &QPushButton::clicked, this, [this, keep, folder] {
        auto* dialog = new QFileDialog(this, tr("The folder that your phone copies to"), folder());
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->setFileMode(QFileDialog::Directory);
        dialog->setOption(QFileDialog::ShowDirsOnly);
        connect(dialog, &QFileDialog::fileSelected, this, keep);
        dialog->open();
    });
    connect(none, &QPushButton::clicked, this, [keep] { keep({}); });
}

void SettingsDialog::build_safe() {
    Section* section = add_section(tr("Safe keeping"));
    section->set_state(session_ != nullptr ? last_backup_words(session_->book_path()) : tr("no book is open"));
    section->column()->addWidget(text(
        tr("A backup is a whole copy of the book, made while it stays open. Keep it on another disk."), "caption"));
    NumberRange range;
    range.most = most_reminder_days;
    range.unit = tr("days");
    range.nothing = tr("never");
    auto* days = new NumberField(tr("Remind me when the last backup is older than"), range);
    days->set_number(reminder_days() > 0 ? std::optional<double>(reminder_days()) : std::nullopt);
    connect(days, &NumberField::entered, section,
            [days] { set_reminder_days(static_cast<int>(days->number().value_or(0))); });
    section->column()->addWidget(labelled(tr("Remind me when the last backup is older than"), days));
    section->column()->addWidget(
        text(tr("A week to begin with: what a week brought is still remembered and can be entered again."), "caption"));
    auto* open = button(tr("Backup and restore…"), "", Sign::book);
    section->column()->addWidget(open, 0, Qt::AlignLeft);
    connect(open, &QPushButton::clicked, this, [this] {
        accept();
        emit safe_keeping_asked();
    });
}

}  // namespace kempt::desk
