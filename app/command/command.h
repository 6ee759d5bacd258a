// A command of `kempt`: its verbs, what they take, and what they do. Usage and help follow from these.
#pragma once

#include <QJsonObject>
#include <QStringList>
#include <QVector>
#include <functional>

#include "command/arguments.h"
#include "core/progress.h"
#include "core/result.h"

namespace kempt::command {

// What a verb has to say: `json` with --json, else `lines`.
struct Answer {
    QJsonObject json;
    QStringList lines;
    QString failure;  // not empty: the work was done in part, or the answer is a no; exit status 1, this on stderr
};

struct Verb {
    QString name;  // empty for a command without verbs
    QString summary;
    QVector<Taken> taken;
    QVector<Option> options;  // --json is added to all
    std::function<Result<Answer>(const Arguments&, const Progress&)> run;
};

struct Command {
    QString name;
    QString summary;
    bool paints = false;  // needs fonts and a painter
    QVector<Verb> verbs;
};

// In the order of the help.
[[nodiscard]] const QVector<Command>& all_commands();
[[nodiscard]] const Command* find_command(const QString& name);
// "kempt visit add BOOK --client N --date DAY [--note TEXT]"
[[nodiscard]] QString usage_of(const Command& command, const Verb& verb);
// Several lines: summary, usage of every verb, options.
[[nodiscard]] QStringList help_of(const Command& command);
[[nodiscard]] QStringList help_of_all();

// The whole program. Exit status: 0 done, 1 the work could not be done, 2 wrong usage.
[[nodiscard]] int run(int argc, char** argv);

// A sentence with the code "usage": exit status 2.
[[nodiscard]] Error usage_error(const QString& what);
// What a use case would not take of the values that the options gave: wrong usage too. Other errors stay.
[[nodiscard]] Error said_wrong(const Error& error);

}  // namespace kempt::command
