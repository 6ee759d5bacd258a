#include "work/real_photo.h"

#include <QCryptographicHash>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>

#include "domain/marks_json.h"

namespace kempt::work {

namespace {

std::optional<QByteArray> bytes_of(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    return file.readAll();
}

}  // namespace

QString fixtures_folder() {
    return qEnvironmentVariable("KEMPT_FIXTURES");
}

QString find_portrait(const QString& folder) {
    if (folder.isEmpty()) return {};
    QStringList found;
    QDirIterator below(folder, {QStringLiteral("astronaut.png")}, QDir::Files, QDirIterator::Subdirectories);
    while (below.hasNext()) found.append(below.next());
    found.sort();  // the same one on every run
    return found.isEmpty() ? QString() : QFileInfo(found.front()).absoluteFilePath();
}

Status add_photo_without_card(Scenario& scenario, const QString& samples, const QString& fixtures) {
    const QString portrait = find_portrait(fixtures);
    const auto photo = portrait.isEmpty() ? std::nullopt : bytes_of(portrait);
    const auto json = bytes_of(QDir(samples).filePath(QStringLiteral("without-card/portrait.marks.json")));
    if (!photo || !json) return Done{};
    auto marks = marks_from_json(*json);
    if (!marks) {
        Error error = marks.error();
        error.kind = ErrorKind::damaged;
        error.what = "without-card/portrait.marks.json cannot be used. " + error.what;
        return error;
    }
    ScenarioClient client;
    client.client.name = QStringLiteral("Photo without a card (example)");
    client.client.note = QStringLiteral(
        "A public-domain portrait (Debian's python3-skimage). Its scale comes from two points: the pupils, assumed to "
        "be "
        "62 mm apart (anthropometry, from memory).");
    client.client.since = scenario.today;
    ScenarioVisit visit;
    visit.visit.date = scenario.today;
    visit.visit.note = QStringLiteral("What a photo without a gauge card, taken from afar, can and cannot give.");
    const View view = marks->view;
    visit.photos.append({portrait, view, std::move(marks).value()});
    client.visits.append(visit);
    scenario.clients.append(client);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const QByteArray& part : {scenario.digest, *photo, *json}) hash.addData(part);
    scenario.digest = hash.result().toHex();
    return Done{};
}

}  // namespace kempt::work
