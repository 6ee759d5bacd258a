#include <QDir>
#include <QJsonArray>

#include "command/commands.h"
#include "command/options.h"
#include "work/make_demo.h"

namespace kempt::command {

namespace {

Result<Answer> demo(const Arguments& arguments, const Progress& progress) {
    const QString out = arguments.text(q("out"));
    const auto made = work::make_demo({arguments.text(q("samples")), out}, progress);
    if (!made) return made.error();
    const QDir folder(out);
    QStringList lines{
        q("Book: %1").arg(made->book),
        q("%1, %2, %3: %4 measured, %5 refused at the gate.")
            .arg(counted(made->clients, "client"), counted(made->visits, "visit"), counted(made->photos, "photo"))
            .arg(made->measured)
            .arg(made->refused)};
    for (const QString& file : made->files)
        if (file.endsWith(u"report.pdf")) lines.append(q("Report: %1").arg(folder.absoluteFilePath(file)));
    lines.append(q("Pictures, charts and readings: %1").arg(folder.absolutePath()));
    for (const QString& problem : made->problems) lines.append(q("Note: %1").arg(problem));
    return Answer{{{"book", made->book},
                   {"folder", folder.absolutePath()},
                   {"clients", made->clients},
                   {"visits", made->visits},
                   {"photos", made->photos},
                   {"measured", made->measured},
                   {"refused", made->refused},
                   {"as_it_was", made->as_it_was},
                   {"problems", QJsonArray::fromStringList(made->problems)},
                   {"files", QJsonArray::fromStringList(made->files)}},
                  lines,
                  {}};
}

}  // namespace

Command demo_command() {
    return {q("demo"),
            q("a filled book, its reports, pictures, chart data"),
            true,
            {{q(""),
              q("Takes the sample photos through the whole round. A complete earlier demo is left as it is."),
              {},
              {needed("out", Type::text, "DIR", "folder to fill"),
               may("samples", Type::text, "DIR", "folder with scenario.json")},
              demo}}};
}

}  // namespace kempt::command
