#include <unistd.h>

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include "command/commands.h"
#include "command/options.h"

namespace kempt::command {

namespace {

// Becomes the window's program; comes back only when that could not be started.
Result<Answer> open_desk(const Arguments& arguments, const Progress&) {
    const QString program = QCoreApplication::applicationDirPath() + q("/kempt-desk");
    if (QFileInfo(program).isExecutable()) {
        QByteArray path = QFile::encodeName(program), book = QFile::encodeName(arguments.book());
        char* words[] = {path.data(), book.isEmpty() ? nullptr : book.data(), nullptr};
        ::execv(path.constData(), words);
    }
    return Error{ErrorKind::not_found, "no-desk",
                 "The window's program was not found beside this one (" + program.toStdString() + ").", "",
                 "Build or install kempt-desk."};
}

}  // namespace

Command desk_command() {
    return {q("desk"),
            q("open the window"),
            false,
            {{q(""), q("Opens the window, on BOOK when given."), {{q("BOOK"), false, true}}, {}, open_desk}}};
}

}  // namespace kempt::command
