#include "desk/look/look.h"

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>
#include <QSettings>
#include <QStyleFactory>

#include "desk/look/style_sheet.h"

// The room is a static library: its compiled-in files must be asked for, outside any namespace.
static void take_compiled_in_files() {
    Q_INIT_RESOURCE(desk);
}

namespace kempt::desk {
namespace {

QPalette palette_of(const Colours& c) {
    QPalette p;
    p.setColor(QPalette::Window, c.ground);
    p.setColor(QPalette::WindowText, c.ink);
    p.setColor(QPalette::Base, c.raised);
    p.setColor(QPalette::AlternateBase, c.surface);
    p.setColor(QPalette::Text, c.ink);
    p.setColor(QPalette::PlaceholderText, c.ink_soft);
    p.setColor(QPalette::Button, c.raised);
    p.setColor(QPalette::ButtonText, c.ink);
    p.setColor(QPalette::BrightText, c.worse);
    p.setColor(QPalette::Highlight, c.accent);
    p.setColor(QPalette::HighlightedText, c.on_accent);
    p.setColor(QPalette::Link, c.accent);
    p.setColor(QPalette::LinkVisited, c.accent);
    p.setColor(QPalette::ToolTipBase, c.ink);
    p.setColor(QPalette::ToolTipText, c.ground);
    p.setColor(QPalette::Light, c.surface);
    p.setColor(QPalette::Mid, c.line);
    p.setColor(QPalette::Dark, c.outline);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, c.outline);
    return p;
}

}  // namespace

Look& look() {
    static Look the_look;
    return the_look;
}

void Look::apply(const LookChoice& choice) {
    if (!styled_ || choice.language != choice_.language) speak(choice.language);
    choice_ = choice;
    measures_ = Measures(choice.text_scale);
    choice_.text_scale = measures_.text;
    take_compiled_in_files();
    if (!styled_) QApplication::setStyle(QStyleFactory::create("Fusion"));
    styled_ = true;
    QApplication::setPalette(palette_of(colours()));
    QFont font("DejaVu Sans");
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(measures_.body);
    QApplication::setFont(font);
    qApp->setStyleSheet(style_sheet(colours(), measures_));
    emit changed();
}

LookChoice stored_look() {
    const QSettings settings;
    LookChoice choice;
    choice.dark = settings.value("look/dark", false).toBool();
    choice.text_scale = Measures(settings.value("look/text_scale", 1.0).toDouble()).text;
    choice.length = settings.value("look/inches", false).toBool() ? LengthUnit::inches : LengthUnit::millimetres;
    choice.language = language_from(settings.value("look/language").toString());
    return choice;
}

void store_look(const LookChoice& choice) {
    QSettings settings;
    settings.setValue("look/dark", choice.dark);
    settings.setValue("look/text_scale", choice.text_scale);
    settings.setValue("look/inches", choice.length == LengthUnit::inches);
    settings.setValue("look/language", code_of(choice.language));
}

}  // namespace kempt::desk
