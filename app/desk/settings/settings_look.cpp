// Text size, light and dark, units; language.
#include <QHBoxLayout>
#include <QSlider>
#include <QTimer>
#include <cmath>

#include "desk/look/look.h"
#include "desk/settings/choice_of.h"
#include "desk/settings/section.h"
#include "desk/settings/settings_dialog.h"
#include "desk/translations/language.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

void SettingsDialog::build_look() {
    Section* section = add_section(tr("Look and units"));
    QBoxLayout* column = section->column();
    const auto tell = [section] {
        const LookChoice& now = look().choice();
        section->set_state(QStringList{tr("text %1 %").arg(std::lround(now.text_scale * 100)),
                                       now.dark ? tr("dim room") : tr("light room"),
                                       now.length == LengthUnit::inches ? tr("inches") : tr("millimetres")}
                               .join(QStringLiteral(", ")));
    };
    tell();
    connect(&look(), &Look::changed, section, tell);
    column->addWidget(text(tr("Text size"), "strong"));
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
    column->addLayout(line);
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
    add_choice(column, tr("Colours for a"), {tr("light room"), tr("dim room")}, look().choice().dark ? 1 : 0,
               [](int chosen) {
                   LookChoice choice = look().choice();
                   choice.dark = chosen == 1;
                   apply_later(choice);
               });
    add_choice(column, tr("Lengths in"), {tr("millimetres"), tr("inches")},
               look().choice().length == LengthUnit::inches ? 1 : 0, [](int chosen) {
                   LookChoice choice = look().choice();
                   choice.length = chosen == 1 ? LengthUnit::inches : LengthUnit::millimetres;
                   apply_later(choice);
               });
}

// Each language is written in itself, so that it is found by whoever cannot read the one in force.
void SettingsDialog::build_language() {
    Section* section = add_section(tr("Language"));
    const QStringList words{tr("as the system"), QStringLiteral("English"), QStringLiteral("Español")};
    const int chosen = static_cast<int>(look().choice().language);
    section->set_state(chosen == 0 ? tr("as the system: %1").arg(words[spoken() == Language::spanish ? 2 : 1])
                                   : words[chosen]);
    add_choice(section->column(), tr("Language of the windows"), words, chosen, [this](int which) {
        LookChoice choice = look().choice();
        choice.language = static_cast<Language>(which);
        apply_later(choice);
        accept();  // the pages are made anew in the other language, this window too when it is opened again
    });
    section->column()->addWidget(
        text(tr("It changes at once, and the pages are made anew. Dates and numbers follow it. What you and your "
                "clients wrote stays as it is."),
             "caption"));
    section->column()->addWidget(
        text(tr("Each client's report has a language of its own, chosen on its page. Still English in every language: "
                "saved tables, the names of published sources and the command line. Answer keys stay Y, N and U."),
             "caption"));
}

}  // namespace kempt::desk
