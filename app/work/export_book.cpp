#include "work/export_book.h"

#include <QDir>
#include <QFileInfo>
#include <QJsonDocument>

#include "book/client_store.h"
#include "book/grade_store.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/profile_store.h"
#include "book/reading_store.h"
#include "book/service_store.h"
#include "book/target_store.h"
#include "book/visit_store.h"
#include "domain/marks_json.h"
#include "domain/words.h"
#include "report/export_csv.h"
#include "report/export_json.h"
#include "work/care_json.h"
#include "work/care_tables.h"
#include "work/errors.h"
#include "work/keep_records.h"
#include "work/record_json.h"

namespace kempt::work {

namespace {

QString yes(bool value) {
    return value ? QStringLiteral("yes") : QStringLiteral("no");
}
QString day(const QDate& date) {
    return date.toString(Qt::ISODate);
}
QString plain(double value) {
    return QString::number(value, 'g', 10);
}

QStringList names(const char* words) {
    return QString::fromLatin1(words).split(u' ');
}

// Nested in the client's own object.
QJsonObject without_client(QJsonObject object) {
    object.remove(QStringLiteral("client"));
    return object;
}

// The tables as they grow, client by client.
struct Tables {
    QByteArray clients = report::csv_line(names("id name note since photo_consent consent_on"));
    QByteArray visits = report::csv_line(names("id client date wet styled product note"));
    QByteArray photos =
        report::csv_line(names("id visit view shot file format width height sha256 taken quality exported_as"));
    QByteArray grades = report::csv_line(names("id visit date zone quality value round"));
    CareTables care;
    QByteArray targets = report::csv_line(names("id client view reading value"));
    QVector<report::ExportedReading> readings;
    QJsonArray json;
};

struct Exporter {
    Book& book;
    const ExportOptions& options;
    Tables tables;
    QStringList files;

    Status write(const QString& name, const QByteArray& bytes) {
        if (const Status status = write_file(QDir(options.folder).filePath(name), bytes); !status)
            return status.error();
        files.append(name);
        return Done{};
    }

    // The original bytes under a name that says where they belong and clashes with none.
    Result<QString> export_bytes(const PhotoRecord& photo) {
        if (!options.photos) return QString();
        const auto bytes = store::photo_bytes(book, photo.id);
        if (!bytes) return bytes.error();
        const QString name = QStringLiteral("photos/%1-%2-%3.%4")
                                 .arg(photo.id)
                                 .arg(word_of(photo.view).replace(u' ', u'-'))
                                 .arg(photo.shot)
                                 .arg(photo.format);
        if (const Status status = write(name, bytes.value()); !status) return status.error();
        return name;
    }

    Result<QJsonObject> photo_json(const Client& client, const Visit& visit, const PhotoRecord& photo) {
        const auto name = export_bytes(photo);
        if (!name) return name.error();
        const QString taken = photo.taken ? photo.taken->toString(Qt::ISODate) : QString();
        tables.photos += report::csv_line({QString::number(photo.id), QString::number(visit.id), word_of(photo.view),
                                           QString::number(photo.shot), photo.file_name, photo.format,
                                           QString::number(photo.size.width()), QString::number(photo.size.height()),
                                           photo.sha256, taken, photo.quality_level, name.value()});
        QJsonArray marks_json;
        const auto marks = store::marks_of_photo(book, photo.id);
        if (!marks) return marks.error();
        for (const Marks& one : marks.value()) {
            QJsonObject object = json_of_marks(one);
            object["id"] = one.id;
            marks_json.append(object);
        }
        const auto readings = store::all_readings(book, photo.id);
        if (!readings) return readings.error();
        QVector<report::ExportedReading> of_photo;
        for (const ReadingRecord& reading : readings.value())
            of_photo.append({client.name, visit.date, photo.view, photo.shot, photo.file_name, reading});
        tables.readings += of_photo;
        QJsonObject object = json_of_photo_file(photo);
        object["quality"] = photo.quality_level;
        object["exported_as"] = name->isEmpty() ? QJsonValue::Null : QJsonValue(name.value());
        object["marks"] = marks_json;
        object["readings"] = report::readings_json(of_photo);
        return object;
    }

    Result<QJsonObject> visit_json(const Client& client, const Visit& visit) {
        tables.visits +=
            report::csv_line({QString::number(visit.id), QString::number(client.id), day(visit.date),
                              yes(visit.hair.wet), yes(visit.hair.styled), yes(visit.hair.product), visit.note});
        QJsonArray photos_json, grades_json;
        const auto photos = store::photos_of_visit(book, visit.id);
        if (!photos) return photos.error();
        for (const PhotoRecord& photo : photos.value()) {
            const auto object = photo_json(client, visit, photo);
            if (!object) return object.error();
            photos_json.append(object.value());
        }
        const auto grades = store::grades_of_visit(book, visit.id);
        if (!grades) return grades.error();
        for (const Grade& grade : grades.value()) {
            tables.grades +=
                report::csv_line({QString::number(grade.id), QString::number(visit.id), day(visit.date), grade.zone,
                                  grade.quality, QString::number(grade.value), QString::number(grade.round)});
            grades_json.append(QJsonObject{{"id", grade.id},
                                           {"zone", grade.zone},
                                           {"quality", grade.quality},
                                           {"value", grade.value},
                                           {"round", grade.round}});
        }
        return QJsonObject{{"id", visit.id},     {"date", day(visit.date)}, {"hair", json_of_hair(visit.hair)},
                           {"note", visit.note}, {"photos", photos_json},   {"grades", grades_json}};
    }

    Status add_client(const Client& client) {
        const QString consent_on = client.consent_on ? day(*client.consent_on) : QString();
        tables.clients += report::csv_line({QString::number(client.id), client.name, client.note, day(client.since),
                                            yes(client.photo_consent), consent_on});
        QJsonArray visits_json, services_json, targets_json;
        const auto visits = store::visits_of_client(book, client.id);
        if (!visits) return visits.error();
        for (const Visit& visit : visits.value()) {
            const auto object = visit_json(client, visit);
            if (!object) return object.error();
            visits_json.append(object.value());
        }
        const auto services = store::services_of_client(book, client.id);
        if (!services) return services.error();
        for (const Service& service : services.value()) {
            tables.care.add(service);
            services_json.append(without_client(json_of_service(service)));
        }
        const auto profile = store::profile_of(book, client.id);
        if (!profile) return profile.error();
        tables.care.add(profile.value());
        QJsonArray daily_json, answers_json;
        const auto lives = store::daily_life_of_client(book, client.id);
        if (!lives) return lives.error();
        for (const DailyLife& life : lives.value()) {
            tables.care.add(life);
            daily_json.append(without_client(json_of_daily_life(life)));
        }
        const auto answers = store::answers_of_client(book, client.id);
        if (!answers) return answers.error();
        for (const ClientAnswer& answer : answers.value()) {
            tables.care.add(answer);
            answers_json.append(without_client(json_of_answer(answer)));
        }
        const auto targets = store::targets_of_client(book, client.id);
        if (!targets) return targets.error();
        for (const Target& target : targets.value()) {
            tables.targets += report::csv_line({QString::number(target.id), QString::number(client.id),
                                                word_of(target.view), target.reading, plain(target.value)});
            targets_json.append(QJsonObject{{"id", target.id},
                                            {"view", word_of(target.view)},
                                            {"reading", target.reading},
                                            {"value", target.value}});
        }
        tables.json.append(QJsonObject{{"id", client.id},
                                       {"name", client.name},
                                       {"note", client.note},
                                       {"since", day(client.since)},
                                       {"photo_consent", client.photo_consent},
                                       {"consent_on", client.consent_on ? QJsonValue(consent_on) : QJsonValue::Null},
                                       {"visits", visits_json},
                                       {"services", services_json},
                                       {"profile", without_client(json_of_profile(profile.value()))},
                                       {"daily_life", daily_json},
                                       {"answers", answers_json},
                                       {"targets", targets_json}});
        return Done{};
    }

    Status write_all() {
        const QByteArray json =
            QJsonDocument(QJsonObject{{"kempt", QStringLiteral(KEMPT_VERSION)}, {"clients", tables.json}}).toJson();
        const std::pair<const char*, QByteArray> all[] = {{"book.json", json},
                                                          {"clients.csv", tables.clients},
                                                          {"visits.csv", tables.visits},
                                                          {"photos.csv", tables.photos},
                                                          {"grades.csv", tables.grades},
                                                          {"readings.csv", report::readings_csv(tables.readings)},
                                                          {"services.csv", tables.care.services()},
                                                          {"profiles.csv", tables.care.profiles()},
                                                          {"daily_life.csv", tables.care.daily_life()},
                                                          {"answers.csv", tables.care.answers()},
                                                          {"targets.csv", tables.targets}};
        for (const auto& [name, bytes] : all)
            if (const Status status = write(QString::fromLatin1(name), bytes); !status) return status.error();
        return Done{};
    }
};

}  // namespace

Result<ExportReport> export_book(Book& book, const ExportOptions& options, const Progress& progress) {
    if (options.folder.isEmpty()) return invalid("no-folder", "Say into which folder to export.");
    QVector<Client> clients;
    if (options.client != 0) {
        const auto client = store::get_client(book, options.client);
        if (!client) return client.error();
        clients.append(client.value());
    } else {
        const auto rows = store::list_clients(book);
        if (!rows) return rows.error();
        for (const store::ClientRow& row : rows.value()) clients.append(row.client);
    }
    Exporter exporter{book, options, {}, {}};
    for (qsizetype i = 0; i < clients.size(); ++i) {
        if (tell(progress, static_cast<double>(i) / static_cast<double>(clients.size()), "writing out the book") ==
            Go::stop)
            return stopped("The book is unchanged; photos written so far stay in the folder.");
        if (const Status status = exporter.add_client(clients[i]); !status) return status.error();
    }
    if (const Status status = exporter.write_all(); !status) return status.error();
    tell(progress, 1, "the book is written out");
    return ExportReport{exporter.files};
}

}  // namespace kempt::work
