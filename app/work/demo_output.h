// What the demo writes for one client: reports, pictures, chart data, readings.
#pragma once

#include <QStringList>

#include "core/progress.h"
#include "core/result.h"
#include "work/book_fwd.h"
#include "work/scenario.h"

namespace kempt::work {

struct DemoFiles {
    QStringList files;     // relative to the folder
    QStringList problems;  // one sentence each
};
// "ada-okafor" from "Ada Okafor"; "client-N" when no letter is left.
[[nodiscard]] QString folder_name_of(const Client& client);
// report.pdf, report-record.pdf, progress.json, plan.json (no service planned), charts/*.png, before-after-*.png, all under the client's folder.
[[nodiscard]] Result<DemoFiles> write_client_files(Book& book, const Client& client, const Scenario& scenario,
                                                   const QString& out, const Progress& progress);

}  // namespace kempt::work
