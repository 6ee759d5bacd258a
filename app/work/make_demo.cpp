#include "work/make_demo.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "book/book.h"
#include "book/setting_store.h"
#include "core/version.h"
#include "work/demo_output.h"
#include "work/due_list.h"
#include "work/errors.h"
#include "work/export_book.h"
#include "work/import_photos.h"
#include "work/keep_care.h"
#include "work/keep_records.h"
#include "work/measure_in_book.h"
#include "work/open_book.h"
#include "work/real_photo.h"
#include "work/scenario.h"
#include "work/set_marks.h"

namespace kempt::work {

namespace {

const QString demo_key = QStringLiteral("demo");           // what it was made from
const QString done_key = QStringLiteral("demo-complete");  // "yes" when everything had been written

QString source_of(const Scenario& scenario) {
    return QStringLiteral("%1 %2 %3")
        .arg(QString::fromLatin1(scenario.digest), QStringLiteral(KEMPT_VERSION))
        .arg(analysis_version);
}

QJsonObject json_of(const DemoReport& report) {
    return {{"book", QFileInfo(report.book).fileName()},
            {"clients", report.clients},
            {"visits", report.visits},
            {"photos", report.photos},
            {"measured", report.measured},
            {"refused", report.refused},
            {"problems", QJsonArray::fromStringList(report.problems)},
            {"files", QJsonArray::fromStringList(report.files)}};
}

// The report of an earlier run, when it was made from the same scenario by the same methods and is still complete.
std::optional<DemoReport> still_there(const QString& book_path, const QString& source, const QDir& out) {
    auto book = Book::open(book_path);
    if (!book) return std::nullopt;
    const auto from = store::get_setting(book.value(), demo_key), done = store::get_setting(book.value(), done_key);
    if (!from || from.value() != source || !done || !done.value()) return std::nullopt;
    QFile file(out.filePath(QStringLiteral("demo.json")));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    const QJsonObject json = QJsonDocument::fromJson(file.readAll()).object();
    DemoReport report;
    report.book = book_path;
    for (const QJsonValue& name : json["files"].toArray()) {
        report.files.append(name.toString());
        if (!QFileInfo::exists(out.filePath(name.toString()))) return std::nullopt;
    }
    for (const QJsonValue& problem : json["problems"].toArray()) report.problems.append(problem.toString());
    report.clients = json["clients"].toInt();
    report.visits = json["visits"].toInt();
    report.photos = json["photos"].toInt();
    report.measured = json["measured"].toInt();
    report.refused = json["refused"].toInt();
    report.as_it_was = true;
    return report;
}

// Removes an earlier demo's book; a book that is not a demo's is never touched.
Status clear_way(const QString& book_path) {
    if (!QFileInfo::exists(book_path)) return Done{};
    {
        auto book = Book::open(book_path);
        if (!book) return book.error();
        const auto demo = store::get_setting(book.value(), demo_key);
        if (!demo) return demo.error();
        if (!demo.value())
            return Error{ErrorKind::invalid, "not-a-demo",
                         "There is already a book at " + book_path.toStdString() + " that is not the demo's.",
                         "It was left as it is.", "Choose another folder for the demo."};
    }
    for (const char* ending : {"", "-wal", "-shm"}) {
        const QString path = book_path + QLatin1String(ending);
        if (QFileInfo::exists(path) && !QFile::remove(path))
            return disk(path, QStringLiteral("it could not be replaced"));
    }
    return Done{};
}

struct Filler {
    Book& book;
    QDir samples;
    DemoReport& report;

    void problem(const QString& file, const Error& error) {
        report.problems.append(file + QStringLiteral(": ") + QString::fromStdString(error.sentence()));
    }

    Status add_photo(Id visit, const ScenarioPhoto& photo) {
        ImportOptions options;
        options.visit = visit;
        options.view = photo.view;
        options.paths = {samples.filePath(photo.file)};
        const auto taken = import_photos(book, options);
        if (!taken) return taken.error();
        const ImportedFile& file = taken->files.front();
        if (file.what == ImportedFile::What::failed) {
            problem(photo.file, file.error);
            return Done{};
        }
        ++report.photos;
        if (!photo.marks) return Done{};
        const auto marks = set_marks(book, file.photo, *photo.marks);
        if (!marks) {
            problem(photo.file, marks.error());
            return Done{};
        }
        const auto measured = measure_in_book(book, file.photo);
        if (!measured) {
            problem(photo.file, measured.error());
            return Done{};
        }
        ++(measured->photo.quality_level == u"refused" ? report.refused : report.measured);
        return Done{};
    }

    Result<Client> add(const ScenarioClient& from, QDate today, const Progress& progress) {
        auto client = add_client(book, from.client);
        if (!client) return client.error();
        ++report.clients;
        const double steps = static_cast<double>(std::max<qsizetype>(1, from.visits.size()));
        for (qsizetype v = 0; v < from.visits.size(); ++v) {
            const ScenarioVisit& one = from.visits[v];
            const std::string words = "measuring " + from.client.name.toStdString() + ", visit of " +
                                      one.visit.date.toString(Qt::ISODate).toStdString();
            Visit to_add = one.visit;
            to_add.client = client->id;
            const auto visit = add_visit(book, to_add);
            if (!visit) return visit.error();
            ++report.visits;
            for (qsizetype p = 0; p < one.photos.size(); ++p) {
                const double part = static_cast<double>(p) / static_cast<double>(one.photos.size());
                if (tell(progress, (static_cast<double>(v) + part) / steps, words) == Go::stop) return stopped();
                if (const Status status = add_photo(visit->id, one.photos[p]); !status) return status.error();
            }
            for (Grade grade : one.grades) {
                grade.visit = visit->id;
                if (const auto kept = add_grade(book, grade); !kept) return kept.error();
            }
        }
        for (Service service : from.services) {
            service.client = client->id;
            if (const auto kept = add_service(book, service, today); !kept) return kept.error();
        }
        if (from.profile) {
            ClientProfile profile = *from.profile;
            profile.client = client->id;
            if (const Status kept = set_profile(book, profile, today); !kept) return kept.error();
        }
        for (DailyLife life : from.daily_life) {
            life.client = client->id;
            if (const auto kept = set_daily_life(book, life, today); !kept) return kept.error();
        }
        QVector<ClientAnswer> answers = from.answers;
        for (ClientAnswer& answer : answers) answer.client = client->id;
        if (const auto kept = set_answers(book, answers, today); !kept) return kept.error();
        for (Target target : from.targets) {
            target.client = client->id;
            if (const auto kept = set_target(book, target); !kept) return kept.error();
        }
        return client;
    }
};

// Who is due, as of the scenario's day.
Status write_calendar(Book& book, QDate today, const QDir& out, DemoReport& report) {
    DueOptions options;
    options.today = today;
    const auto list = due_list(book, options);
    if (!list) return list.error();
    const auto calendar = calendar_of(book, *list, {false, QDateTime(today, QTime(12, 0), Qt::UTC)});
    if (!calendar) return calendar.error();
    const QString name = QStringLiteral("due.ics");
    if (const Status status = write_file(out.filePath(name), *calendar); !status) return status.error();
    report.files.append(name);
    return Done{};
}

}  // namespace

QString find_samples() {
    const QString beside = QCoreApplication::applicationDirPath();
    const QStringList places{qEnvironmentVariable("KEMPT_SAMPLES"), beside + QStringLiteral("/sample-images"),
                             beside + QStringLiteral("/../share/kempt/sample-images"),
                             QStringLiteral(KEMPT_SOURCE_SAMPLES)};
    for (const QString& place : places)
        if (!place.isEmpty() && QFileInfo::exists(place + QStringLiteral("/scenario.json")))
            return QDir(place).absolutePath();
    return {};
}

Result<DemoReport> make_demo(const DemoOptions& options, const Progress& progress) {
    const QString samples = options.samples.isEmpty() ? find_samples() : options.samples;
    if (samples.isEmpty())
        return missing("no-samples", "The demo's photos were not found.",
                       "Set KEMPT_SAMPLES to the folder sample-images of Kempt.");
    if (options.out.isEmpty()) return invalid("no-folder", "Say into which folder the demo goes.");
    auto scenario = read_scenario(samples);
    if (!scenario) return scenario.error();
    if (const Status status = add_photo_without_card(*scenario, samples, fixtures_folder()); !status)
        return status.error();
    const QDir out(options.out);
    if (!out.exists() && !QDir().mkpath(options.out)) return disk(options.out, QStringLiteral("it could not be made"));
    DemoReport report;
    report.book = out.absoluteFilePath(QStringLiteral("demo.kempt"));
    const QString source = source_of(scenario.value());
    if (QFileInfo::exists(report.book))
        if (auto earlier = still_there(report.book, source, out)) return *earlier;
    if (const Status status = clear_way(report.book); !status) return status.error();
    const auto book = create_book(report.book);
    if (!book) return book.error();
    if (const Status status = store::put_setting(**book, demo_key, source); !status) return status.error();
    if (const Status status = set_printer_scale(**book, scenario->printer_scale); !status) return status.error();
    Filler filler{**book, QDir(samples), report};
    QVector<Client> clients;
    const double count = static_cast<double>(scenario->clients.size());
    for (const ScenarioClient& from : scenario->clients) {
        const double done = static_cast<double>(clients.size());
        auto client =
            filler.add(from, scenario->today, part_of(progress, 0.7 * done / count, 0.7 * (done + 1) / count));
        if (!client) return client.error();
        clients.append(std::move(client).value());
    }
    for (qsizetype i = 0; i < clients.size(); ++i) {
        const double done = static_cast<double>(i);
        const auto files =
            write_client_files(**book, clients[i], scenario.value(), options.out,
                               part_of(progress, 0.7 + 0.28 * done / count, 0.7 + 0.28 * (done + 1) / count));
        if (!files) return files.error();
        report.files += files->files;
        report.problems += files->problems;
    }
    if (const Status status = write_calendar(**book, scenario->today, out, report); !status) return status.error();
    ExportOptions readings;
    readings.folder = out.filePath(QStringLiteral("readings"));
    const auto exported = export_book(**book, readings);
    if (!exported) return exported.error();
    for (const QString& name : exported->files) report.files.append(QStringLiteral("readings/") + name);
    if (const Status status =
            write_file(out.filePath(QStringLiteral("demo.json")), QJsonDocument(json_of(report)).toJson());
        !status)
        return status.error();
    if (const Status status = store::put_setting(**book, done_key, QStringLiteral("yes")); !status)
        return status.error();
    tell(progress, 1, "the demo is complete");
    return report;
}

}  // namespace kempt::work
