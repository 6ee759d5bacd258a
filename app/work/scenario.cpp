#include "work/scenario.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "domain/marks_json.h"
#include "domain/questions.h"
#include "domain/words.h"
#include "work/care_json.h"

namespace kempt::work {

namespace {

Error wrong(const QString& where, const QString& what) {
    return {ErrorKind::damaged, "bad-scenario", ("In scenario.json, " + where + " " + what + ".").toStdString(), "",
            "Correct the file; sample-images/README.md describes it."};
}

class Reader {
  public:
    explicit Reader(QString folder) : folder_(std::move(folder)), hash_(QCryptographicHash::Sha256) {}

    Result<Scenario> read() {
        QFile file(QDir(folder_).filePath(QStringLiteral("scenario.json")));
        if (!file.open(QIODevice::ReadOnly))
            return Error{ErrorKind::not_found, "no-scenario",
                         "There is no readable scenario.json in " + folder_.toStdString() + ".", "",
                         "Point to the folder sample-images of Kempt."};
        const QByteArray bytes = file.readAll();
        hash_.addData(bytes);
        QJsonParseError problem;
        const QJsonObject root = QJsonDocument::fromJson(bytes, &problem).object();
        if (problem.error != QJsonParseError::NoError)
            return wrong(QStringLiteral("byte %1").arg(problem.offset), problem.errorString());
        Scenario scenario;
        scenario.printer_scale = root["printer_scale"].toDouble(1);
        scenario.salon = root["salon"].toString();
        scenario.today = day(root, QStringLiteral("the scenario"), "today");
        for (const QJsonValue& client : root["clients"].toArray())
            scenario.clients.append(read_client(client.toObject()));
        if (error_) return *error_;
        if (scenario.clients.isEmpty()) return wrong(QStringLiteral("\"clients\""), QStringLiteral("is empty"));
        scenario.digest = hash_.result().toHex();
        return scenario;
    }

  private:
    void fail(const Error& error) {
        if (!error_) error_ = error;
    }

    // Its bytes belong to the digest.
    std::optional<QByteArray> read_file(const QString& name, const QString& where) {
        QFile file(QDir(folder_).filePath(name));
        if (!file.open(QIODevice::ReadOnly)) {
            fail(wrong(where, QStringLiteral("names a file that is not there")));
            return std::nullopt;
        }
        QByteArray bytes = file.readAll();
        hash_.addData(bytes);
        return bytes;
    }

    QDate day(const QJsonObject& object, const QString& where, const char* name) {
        const QDate date = QDate::fromString(object[QLatin1String(name)].toString(), Qt::ISODate);
        if (!date.isValid())
            fail(wrong(QStringLiteral("\"%1\" of %2").arg(QLatin1String(name), where),
                       QStringLiteral("is not a date like 2026-03-14")));
        return date;
    }

    View view(const QJsonObject& object, const QString& where) {
        const auto view = view_from_word(object["view"].toString());
        if (!view) fail(wrong(QStringLiteral("\"view\" of %1").arg(where), QStringLiteral("is not a standard view")));
        return view.value_or(View::left_temple);
    }

    std::optional<Marks> marks(const QJsonObject& photo, const QString& where) {
        const QJsonValue value = photo["marks"];
        if (value.isUndefined() || value.isNull()) return std::nullopt;
        QByteArray json = QJsonDocument(value.toObject()).toJson();
        if (value.isString()) {
            const auto bytes = read_file(value.toString(), QStringLiteral("\"marks\" of %1").arg(where));
            if (!bytes) return std::nullopt;
            json = *bytes;
        }
        auto read = marks_from_json(json);
        if (!read) {
            fail(wrong(QStringLiteral("\"marks\" of %1").arg(where),
                       QStringLiteral("cannot be used: ") + QString::fromStdString(read.error().what)));
            return std::nullopt;
        }
        return std::move(read).value();
    }

    ScenarioVisit read_visit(const QJsonObject& object, const QString& client) {
        ScenarioVisit to;
        const QString where = QStringLiteral("a visit of %1").arg(client);
        to.visit.date = day(object, where, "date");
        to.visit.note = object["note"].toString();
        const QJsonObject hair = object["hair"].toObject();
        to.visit.hair = {hair["wet"].toBool(), hair["styled"].toBool(), hair["product"].toBool()};
        for (const QJsonValue& value : object["photos"].toArray()) {
            const QJsonObject photo = value.toObject();
            const QString file = photo["file"].toString();
            if (file.isEmpty())
                fail(wrong(QStringLiteral("a photo of %1").arg(where), QStringLiteral("has no \"file\"")));
            to.photos.append({file, view(photo, file), marks(photo, file)});
        }
        for (const QJsonValue& value : object["grades"].toArray()) {
            const QJsonObject grade = value.toObject();
            to.grades.append({0, 0, grade["zone"].toString(), grade["quality"].toString(), grade["value"].toInt(),
                              grade["round"].toInt(1)});
        }
        return to;
    }

    template <class T>
    void take(Result<T> read, const QString& where, QVector<T>& list) {
        if (read)
            list.append(std::move(read).value());
        else
            fail(wrong(where, QStringLiteral("cannot be used: ") + QString::fromStdString(read.error().what)));
    }

    // What was done and what she told, in the client's own object or in the file of her record.
    void add_told(const QJsonObject& object, ScenarioClient& to) {
        const QString& name = to.client.name;
        for (const QJsonValue& value : object["services"].toArray())
            take(service_from_json(value.toObject()), QStringLiteral("a service of %1").arg(name), to.services);
        for (const QJsonValue& value : object["daily_life"].toArray())
            take(daily_life_from_json(value.toObject()), QStringLiteral("the daily life of %1").arg(name),
                 to.daily_life);
        for (const QJsonValue& value : object["answers"].toArray()) add_answers(value.toObject(), to);
        QVector<ClientProfile> profile;
        if (object["profile"].isObject())
            take(profile_from_json(object["profile"].toObject()), QStringLiteral("the profile of %1").arg(name),
                 profile);
        if (!profile.isEmpty()) to.profile = profile.front();
    }

    // {"date": , "yes": [names], "no": [names], "pull_test_hairs": , "comb_count": }
    void add_answers(const QJsonObject& object, ScenarioClient& to) {
        const QString where = QStringLiteral("answers of %1").arg(to.client.name);
        const QDate date = day(object, where, "date");
        for (const auto& [member, value] : {std::pair("yes", 1), std::pair("no", 0)})
            for (const QJsonValue& name : object[QLatin1String(member)].toArray())
                to.answers.append({0, 0, date, name.toString(), value});
        for (const Question& question : questions())
            if (question.sort == AnswerSort::count && object[question.name].isDouble())
                to.answers.append({0, 0, date, question.name, object[question.name].toInt()});
    }

    // Visits of the record: those without photos are added, the grades of the others join theirs.
    void add_visits(const QJsonObject& record, ScenarioClient& to) {
        for (const QJsonValue& value : record["visits"].toArray()) {
            ScenarioVisit visit = read_visit(value.toObject(), to.client.name);
            const auto same = std::find_if(to.visits.begin(), to.visits.end(), [&](const ScenarioVisit& one) {
                return one.visit.date == visit.visit.date;
            });
            if (same == to.visits.end())
                to.visits.append(visit);
            else
                same->grades += visit.grades;
        }
        std::stable_sort(to.visits.begin(), to.visits.end(),
                         [](const ScenarioVisit& a, const ScenarioVisit& b) { return a.visit.date < b.visit.date; });
    }

    ScenarioClient read_client(const QJsonObject& object) {
        ScenarioClient to;
        Client& client = to.client;
        client.name = object["name"].toString();
        client.note = object["note"].toString();
        client.photo_consent = object["photo_consent"].toBool();
        for (const QJsonValue& visit : object["visits"].toArray())
            to.visits.append(read_visit(visit.toObject(), client.name));
        if (object.contains(QLatin1String("since")))
            client.since = day(object, client.name, "since");
        else if (!to.visits.isEmpty())
            client.since = to.visits.front().visit.date;
        if (client.photo_consent) client.consent_on = client.since;
        add_told(object, to);
        if (object["record"].isString()) {
            const QString where = QStringLiteral("\"record\" of %1").arg(client.name);
            if (const auto bytes = read_file(object["record"].toString(), where)) {
                const QJsonDocument record = QJsonDocument::fromJson(*bytes);
                if (!record.isObject()) fail(wrong(where, QStringLiteral("is no JSON object")));
                add_visits(record.object(), to);
                add_told(record.object(), to);
            }
        }
        for (const QJsonValue& value : object["targets"].toArray()) {
            const QJsonObject target = value.toObject();
            to.targets.append({0, 0, view(target, QStringLiteral("a target of %1").arg(client.name)),
                               target["reading"].toString(), target["value"].toDouble()});
        }
        return to;
    }

    QString folder_;
    QCryptographicHash hash_;
    std::optional<Error> error_;
};

}  // namespace

Result<Scenario> read_scenario(const QString& folder) {
    return Reader(folder).read();
}

}  // namespace kempt::work
