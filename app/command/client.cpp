#include "command/client_care.h"
#include "command/commands.h"
#include "command/options.h"
#include "command/records_json.h"
#include "domain/clock.h"
#include "domain/service_words.h"
#include "work/care_json.h"
#include "work/keep_care.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

Result<Answer> add(const Arguments& arguments, const Progress&) {
    const auto book = arguments.has(q("new")) ? work::create_book(arguments.book()) : work::open_book(arguments.book());
    if (!book) return book.error();
    Client client;
    client.name = arguments.text(q("name"));
    client.note = arguments.text(q("note"));
    client.since = arguments.has(q("since")) ? arguments.day(q("since")) : Clock().today();
    client.photo_consent = arguments.has(q("photo-consent"));
    const auto added = work::add_client(**book, client);
    if (!added) return added.error();
    return Answer{json_of(added.value()), {line_of(added.value())}, {}};
}

Result<Answer> list(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto rows = work::list_clients(**book, arguments.text(q("search")));
    if (!rows) return rows.error();
    Answer answer;
    QJsonArray array;
    for (const work::ClientRow& row : rows.value()) {
        QJsonObject object = json_of(row.client);
        object["visits"] = row.visits;
        object["photos"] = row.photos;
        object["last_visit"] = row.last_visit ? QJsonValue(row.last_visit->toString(Qt::ISODate)) : QJsonValue::Null;
        array.append(object);
        answer.lines.append(q("%1  (%2)").arg(line_of(row.client), counted(row.visits, "visit")));
    }
    answer.json = {{"clients", array}};
    return answer;
}

Result<Answer> show(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("client"));
    const auto client = work::client_of(**book, id);
    if (!client) return client.error();
    const auto visits = work::list_visits(**book, id);
    if (!visits) return visits.error();
    const auto services = work::list_services(**book, id);
    if (!services) return services.error();
    const auto targets = work::list_targets(**book, id);
    if (!targets) return targets.error();
    const auto profile = work::profile_of(**book, id);
    if (!profile) return profile.error();
    const auto life = work::daily_life_of(**book, id, Clock().today());
    if (!life) return life.error();
    const auto told = work::answers_of(**book, id, Clock().today());
    if (!told) return told.error();
    Answer answer;
    answer.json = json_of(client.value());
    answer.json["visits"] = array_of(visits.value());
    answer.json["services"] = array_of(services.value());
    answer.json["targets"] = array_of(targets.value());
    answer.json["profile"] = work::json_of_profile(profile.value());
    answer.json["daily_life"] =
        life.value() ? QJsonValue(work::json_of_daily_life(*life.value())) : QJsonValue(QJsonValue::Null);
    answer.json["answers"] = answers_json(told.value());
    const QStringList days = life.value() ? details_of(*life.value()) : QStringList();
    answer.lines = QStringList{line_of(client.value()), q("Profile:")} + details_of(profile.value()) +
                   QStringList{q("Daily life:")} + days + QStringList{q("Answers:")} + answer_lines(told.value()) +
                   QStringList{q("Visits:")} + lines_of(visits.value()) + QStringList{q("Services:")} +
                   lines_of(services.value()) + QStringList{q("Targets:")} + lines_of(targets.value());
    return answer;
}

Result<Answer> change(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    auto client = work::client_of(**book, arguments.id(q("client")));
    if (!client) return client.error();
    if (arguments.has(q("name"))) client->name = arguments.text(q("name"));
    if (arguments.has(q("note"))) client->note = arguments.text(q("note"));
    if (arguments.has(q("consent"))) {
        client->photo_consent = arguments.text(q("consent")) == u"yes";
        client->consent_on = client->photo_consent ? std::optional(Clock().today()) : std::nullopt;
    }
    if (const Status status = work::change_client(**book, client.value()); !status) return status.error();
    return Answer{json_of(client.value()), {line_of(client.value())}, {}};
}

Result<Answer> erase(const Arguments& arguments, const Progress&) {
    if (!arguments.has(q("yes")))
        return usage_error(
            q("Erasing takes the client's visits, photos, readings, services and what she told with it and cannot be "
              "undone: add '--yes'."));
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("client"));
    if (const Status status = work::erase_client(**book, id); !status) return status.error();
    return Answer{
        {{"erased", id}},
        {q("Erased client %1 with all visits, photos, readings, services and what she told. Backups made earlier still "
           "hold them, and "
           "so do copies kept by a restore (%2.before-restore) or an upgrade (%2.version-N): erase those too.")
             .arg(QString::number(id), arguments.book())},
        {}};
}

}  // namespace

Command client_command() {
    Command command{
        q("client"),
        q("add, list, show, change or erase a client; what she told"),
        false,
        {{q("add"),
          q("Adds a client; --new makes the book first."),
          {book_taken()},
          {needed("name", Type::text, "NAME", "as she is called"), may("note", Type::text, "TEXT", "for the stylist"),
           may("since", Type::day, "DAY", "first visit (today)"),
           flag("photo-consent", "she agreed that pictures may leave the book"), flag("new", "make a new book")},
          add},
         {q("list"), q("By name."), {book_taken()}, {may("search", Type::text, "WORDS", "parts of the name")}, list},
         {q("show"), q("With what she told, visits, services and targets."), {book_taken()}, {client_option()}, show},
         {q("change"),
          q("Name, note or photo consent."),
          {book_taken()},
          {client_option(), may("name", Type::text, "NAME", "new name"), may("note", Type::text, "TEXT", "new note"),
           may("consent", Type::text, "YES", "pictures may leave the book", {q("yes"), q("no")})},
          change},
         {q("erase"),
          q("Everything of this client, beyond recovery; not in backups, exports, BOOK.before-restore, "
            "BOOK.version-N."),
          {book_taken()},
          {client_option(), flag("yes", "yes, erase")},
          erase}}};
    command.verbs += care_verbs();
    return command;
}

}  // namespace kempt::command
