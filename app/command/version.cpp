#include "core/version.h"

#include "command/commands.h"
#include "command/options.h"

namespace kempt::command {

namespace {

Result<Answer> version(const Arguments&, const Progress&) {
    return Answer{{{"kempt", q(KEMPT_VERSION)}, {"analysis", analysis_version}},
                  {q("Kempt %1, methods version %2").arg(q(KEMPT_VERSION)).arg(analysis_version)},
                  {}};
}

}  // namespace

Command version_command() {
    return {q("version"), q("program and methods version"), false, {{q(""), {}, {}, {}, version}}};
}

}  // namespace kempt::command
