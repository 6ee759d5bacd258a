// Fills a new book from sample-images/scenario.json, measures everything and writes reports, pictures, chart data and
// readings into one folder. Where $KEMPT_FIXTURES leads to it, a real portrait without a card comes with it
// (real_photo.h). The format of scenario.json is described in sample-images/README.md.
#pragma once

#include <QString>
#include <QStringList>

#include "core/progress.h"
#include "core/result.h"
#include "work/book_fwd.h"

namespace kempt::work {

struct DemoOptions {
    QString samples;  // folder with scenario.json; empty: looked for beside the program
    QString out;      // made when missing; a book that is already there is replaced only if it is a demo's
};
struct DemoReport {
    QString book;       // path of the filled book
    QStringList files;  // everything that was written, relative to `out`
    int clients = 0, visits = 0, photos = 0, measured = 0, refused = 0;
    bool as_it_was = false;  // an earlier run of the same demo was complete and stands
    QStringList problems;    // photos that could not be taken or measured, one sentence each
};
// Needs a QGuiApplication. Errors: not_found (samples), damaged (scenario.json), io, cancelled.
[[nodiscard]] Result<DemoReport> make_demo(const DemoOptions& options, const Progress& progress = {});

// Where the samples are: $KEMPT_SAMPLES, beside the executable, ../share/kempt/sample-images, or the source tree it was
// built from. Empty when nowhere.
[[nodiscard]] QString find_samples();

}  // namespace kempt::work
