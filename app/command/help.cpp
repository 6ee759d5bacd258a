#include <QJsonArray>

#include "command/commands.h"
#include "command/options.h"

namespace kempt::command {

namespace {

Result<Answer> help(const Arguments& arguments, const Progress&) {
    QStringList lines = help_of_all();
    if (!arguments.rest().isEmpty()) {
        const Command* command = find_command(arguments.rest().front());
        if (!command) return usage_error(q("There is no command '%1'.").arg(arguments.rest().front()));
        lines = help_of(*command);
    }
    return Answer{{{"help", QJsonArray::fromStringList(lines)}}, lines, {}};
}

}  // namespace

Command help_command() {
    return {q("help"),
            q("what the commands take"),
            false,
            {{q(""), q("Of one command, or all."), {{q("COMMAND"), false, true}}, {}, help}}};
}

}  // namespace kempt::command
