// Everything the client page shows but the progress, read in one go on the records' worker.
#pragma once

#include <QVector>

#include "core/progress.h"
#include "core/result.h"
#include "work/keep_records.h"

namespace kempt::desk {

struct VisitOnPage {
    Visit visit;
    QVector<work::PhotoRow> best;  // one a view: the best shot
    int photos = 0;
};

struct ClientData {
    Client client;
    QVector<VisitOnPage> visits;  // newest first
    QVector<Service> services;    // newest first
};

[[nodiscard]] Result<ClientData> client_data(Book& book, Id client, const Progress& progress);

// Good before usable before not looked at before refused; measured before not measured; then by shot.
[[nodiscard]] const work::PhotoRow* better_of(const work::PhotoRow* a, const work::PhotoRow* b);

}  // namespace kempt::desk
