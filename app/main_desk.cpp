// kempt-desk [BOOK]: the windows.
#include <QApplication>
#include <QCommandLineParser>
#include <QSettings>
#include <QTimer>
#include <cstdio>

#include "desk/look/look.h"
#include "desk/window/main_window.h"
#include "desk/window/walk.h"
#include "intake/picture_memory.h"

namespace {

// "1280x800"
QSize size_from(const QString& words) {
    const QStringList parts = words.split(QLatin1Char('x'));
    return parts.size() == 2 ? QSize(parts[0].toInt(), parts[1].toInt()) : QSize();
}

}  // namespace

int main(int argc, char** argv) {
    kempt::intake::use_large_pages();
    QApplication app(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Kempt"));
    QApplication::setApplicationName(QStringLiteral("kempt"));
    QApplication::setApplicationDisplayName(QStringLiteral("Kempt"));
    QApplication::setDesktopFileName(QStringLiteral("kempt-desk"));

    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Dated, calibrated photographs of recovering hair."));
    parser.addHelpOption();
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book to open"), QStringLiteral("[BOOK]"));
    const auto hidden = [&parser](const QString& name, const QString& words, const QString& value,
                                  const QString& otherwise) {
        QCommandLineOption option(name, words, value, otherwise);
        option.setFlags(QCommandLineOption::HiddenFromHelp);
        parser.addOption(option);
    };
    hidden(QStringLiteral("screenshots"), QStringLiteral("write a picture of every window into DIR and end"),
           QStringLiteral("DIR"), {});
    hidden(QStringLiteral("size"), QStringLiteral("size of the window"), QStringLiteral("WxH"),
           QStringLiteral("1280x800"));
    hidden(QStringLiteral("only"), QStringLiteral("windows whose names begin so"), QStringLiteral("NAME"), {});
    hidden(QStringLiteral("language"), QStringLiteral("en or es"), QStringLiteral("CODE"), {});
    hidden(QStringLiteral("text-scale"), QStringLiteral("1 to 2"), QStringLiteral("N"), {});
    QCommandLineOption dark(QStringLiteral("dark"));
    dark.setFlags(QCommandLineOption::HiddenFromHelp);
    parser.addOption(dark);
    parser.process(app);

    const bool walking = parser.isSet(QStringLiteral("screenshots"));
    if (walking)
        QApplication::setApplicationName(QStringLiteral("kempt-screens"));  // leaves the person's settings alone
    if (walking) QSettings().clear();
    kempt::desk::LookChoice choice = walking ? kempt::desk::LookChoice{} : kempt::desk::stored_look();
    if (parser.isSet(QStringLiteral("text-scale")))
        choice.text_scale = parser.value(QStringLiteral("text-scale")).toDouble();
    if (parser.isSet(dark)) choice.dark = true;
    if (parser.isSet(QStringLiteral("language")))
        choice.language = kempt::desk::language_from(parser.value(QStringLiteral("language")));
    kempt::desk::look().apply(choice);

    kempt::desk::MainWindow window;
    const QStringList books = parser.positionalArguments();
    if (!walking) {
        window.show();
        if (!books.isEmpty()) window.open_book(books.first());
        return QApplication::exec();
    }
    const QSize size = size_from(parser.value(QStringLiteral("size")));
    if (books.isEmpty() || size.isEmpty()) {
        std::fputs("--screenshots needs a BOOK and a --size like 1280x800\n", stderr);
        return 2;
    }
    window.resize(size);
    window.show();
    kempt::desk::Walk walk(window, books.first(), parser.value(QStringLiteral("screenshots")), size);
    walk.set_only(parser.value(QStringLiteral("only")));
    QObject::connect(&walk, &kempt::desk::Walk::done, &app, [](int code) { QApplication::exit(code); });
    QTimer::singleShot(300, &walk, &kempt::desk::Walk::begin);
    return QApplication::exec();
}
