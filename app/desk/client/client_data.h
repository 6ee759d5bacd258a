// Everything the client page shows but the progress, read in one go on the records' worker.
#pragma once

#include <QVector>

#include "core/progress.h"
#include "core/result.h"
#include "work/face_keep.h"
#include "work/keep_records.h"

namespace kempt::desk {

struct VisitOnPage {
    Visit visit;
    QVector<work::PhotoRow> best;  // one a view: the best shot
    int photos = 0;
};

struct ClientData {
    Client client;
    work::FaceWish face = work::FaceWish::not_asked;
    QVector<VisitOnPage> visits;  // newest first, not more than were asked for
    qsizetype all_visits = 0;
    QVector<Service> services;  // newest first
};

[[nodiscard]] Result<ClientData> client_data(Book& book, Id client, qsizetype most_visits, const Progress& progress);

// Good before usable before not looked at before refused; measured before not measured; then by shot.
[[nodiscard]] const work::PhotoRow* better_of(const work::PhotoRow* a, const work::PhotoRow* b);

}  // namespace kempt::desk
