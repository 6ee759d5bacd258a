// scenario.json of the demo, read and checked. sample-images/README.md describes the format.
#pragma once

#include <QByteArray>
#include <QDate>
#include <QString>
#include <QVector>

#include "core/result.h"
#include "domain/records.h"

namespace kempt::work {

struct ScenarioPhoto {
    QString file;  // relative to the samples folder
    View view = View::left_temple;
    std::optional<Marks> marks;
};
struct ScenarioVisit {
    Visit visit;
    QVector<ScenarioPhoto> photos;
    QVector<Grade> grades;
};
struct ScenarioClient {
    Client client;
    QVector<ScenarioVisit> visits;  // by date
    QVector<Service> services;
    QVector<Target> targets;
    std::optional<ClientProfile> profile;
    QVector<DailyLife> daily_life;
    QVector<ClientAnswer> answers;
};
struct Scenario {
    QDate today;  // of the reports
    double printer_scale = 1;
    QString salon;
    QVector<ScenarioClient> clients;
    QByteArray digest;  // SHA-256 over scenario.json, the marks and the records
};

// Errors: not_found (no scenario.json), damaged (naming the member and where).
[[nodiscard]] Result<Scenario> read_scenario(const QString& folder);

}  // namespace kempt::work
