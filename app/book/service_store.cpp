#include "book/service_store.h"

#include <QJsonArray>
#include <QJsonDocument>

#include "book/store_help.h"
#include "domain/words.h"

namespace kempt::store {

namespace {

const QString details = QStringLiteral(
    "from_mm, to_mm, sections, strength, minutes, most_minutes, temperature_c, passes, strand_test, patch_test, "
    "patch_test_on, patch_test_where, result, reaction, at_home, line_mm, line_on, done");
const QString columns = QStringLiteral("id, client, visit, done_on, kind, note, ") + details;

QString json_of(const QStringList& sections) {
    return QString::fromUtf8(QJsonDocument(QJsonArray::fromStringList(sections)).toJson(QJsonDocument::Compact));
}

QStringList sections_of(sql::Row& row) {
    const QJsonDocument json = QJsonDocument::fromJson(row.text().toUtf8());
    if (!json.isArray()) row.mark_broken();
    QStringList sections;
    for (const QJsonValue& section : json.array()) {
        if (!head_sections().contains(section.toString())) row.mark_broken();
        sections.append(section.toString());
    }
    return sections;
}

Service service_of(sql::Row& row) {
    Service service;
    service.id = row.number();
    service.client = row.number();
    service.visit = row.number_or_null();
    service.date = row.date();
    service.kind = row.text();
    service.note = row.text();
    service.from_mm = row.real();
    service.to_mm = row.real_or_null();
    service.sections = sections_of(row);
    service.strength = row.text();
    service.minutes = row.real_or_null();
    service.most_minutes = row.real_or_null();
    service.temperature_c = row.real_or_null();
    service.passes = row.small_or_null();
    service.strand_test = row.text();
    service.patch_test = row.text();
    service.patch_test_on = row.date_or_null();
    service.patch_test_where = row.text();
    service.result = row.text();
    service.reaction = row.flag_or_null();
    service.at_home = row.flag_or_null();
    service.line_mm = row.real_or_null();
    service.line_on = row.date_or_null();
    service.done = row.flag();
    return service;
}

// In the order of `details`.
QVariantList detail_values(const Service& s) {
    return sql::values(s.from_mm, s.to_mm, json_of(s.sections), s.strength, s.minutes, s.most_minutes, s.temperature_c,
                       s.passes, s.strand_test, s.patch_test, s.patch_test_on, s.patch_test_where, s.result, s.reaction,
                       s.at_home, s.line_mm, s.line_on, s.done);
}

Status sensible_line(const Service& s) {
    constexpr double longest_mm = 6000;
    if (s.line_mm.has_value() != s.line_on.has_value())
        return invalid("day-missing", "A line of demarcation and the day on which it was measured go together.",
                       "Give both or neither.");
    if (!s.line_mm) return Done{};
    if (Status number = need_up_to(s.line_mm, longest_mm, "line, in mm from the scalp,"); !number) return number;
    if (Status dated = need_date(*s.line_on, "line"); !dated) return dated;
    if (*s.line_on < s.date)
        return invalid("line-early", "The line was measured before the service.", "Correct one of the days.");
    return Done{};
}

// The bounds are those of care::checked: what the book holds can always be asked about.
Status sensible_details(const Service& s) {
    constexpr double longest_mm = 6000, day_minutes = 24 * 60, hottest_c = 1000, most_passes = 1000;
    for (const Status& status :
         {need_up_to(s.from_mm, longest_mm, "beginning, in mm from the scalp,"),
          need_up_to(s.to_mm, longest_mm, "end, in mm from the scalp,"), need_up_to(s.minutes, day_minutes, "minutes"),
          need_up_to(s.most_minutes, day_minutes, "maker's minutes"),
          need_up_to(s.temperature_c, hottest_c, "temperature"),
          need_up_to(s.passes ? std::optional<double>(*s.passes) : std::nullopt, most_passes, "number of passes"),
          need_word(s.strength, strengths(), "strength"), need_word(s.strand_test, test_results(), "strand test"),
          need_word(s.patch_test, test_results(), "patch test")})
        if (!status) return status;
    for (const QString& section : s.sections)
        if (Status known = need_word(section, head_sections(), "head section"); !known || section.isEmpty())
            return known ? invalid("word-unknown", "A head section has no name.", "Leave it out.") : known;
    if (s.to_mm && *s.to_mm < s.from_mm)
        return invalid("service-stretch", "The service ends before it begins.", "Give the end beyond the beginning.");
    if (Status line = sensible_line(s); !line) return line;
    if (!s.patch_test_on) return Done{};
    if (Status dated = need_date(*s.patch_test_on, "patch test"); !dated) return dated;
    if (*s.patch_test_on > s.date)
        return invalid("patch-test-late", "The patch test was put on after the service.", "Correct one of the days.");
    return Done{};
}

// A visit, when named, is one of the same client.
Status sensible(Book& book, const Service& s, Id client) {
    if (s.kind.trimmed().isEmpty())
        return invalid("service-kind", "The service does not say what was done.", "Choose its kind.");
    if (Status dated = need_date(s.date, "service"); !dated) return dated;
    if (Status good = sensible_details(s); !good) return good;
    if (!s.visit) return Done{};
    auto visit = sql::first<qint64>(
        book.connection(), "SELECT id FROM visit WHERE id = ? AND client = ?", sql::values(*s.visit, client),
        +[](sql::Row& row) { return row.number(); });
    if (!visit) return visit.error();
    if (!visit->has_value()) return missing("visit", *s.visit);
    return Done{};
}

}  // namespace

Result<Id> add_service(Book& book, const Service& s) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    if (Status good = sensible(book, s, s.client); !good) return good.error();
    auto id = sql::insert(book.connection(),
                          "INSERT INTO service (client, visit, done_on, kind, note, " + details +
                              ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                          sql::values(s.client, s.visit, s.date, s.kind, s.note) + detail_values(s));
    if (!id) return told(id.error(), "missing-link", missing("client", s.client));
    if (Status done = transaction->commit(); !done) return done.error();
    return id;
}

Status update_service(Book& book, const Service& s) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    auto before = get_service(book, s.id);
    if (!before) return before.error();
    if (Status good = sensible(book, s, before->client); !good) return good;
    Status done = change_one(
        book, "service", s.id,
        "UPDATE service SET visit = ?, done_on = ?, kind = ?, note = ?, from_mm = ?, to_mm = ?, sections = ?, "
        "strength = ?, minutes = ?, most_minutes = ?, temperature_c = ?, passes = ?, strand_test = ?, patch_test = ?, "
        "patch_test_on = ?, patch_test_where = ?, result = ?, reaction = ?, at_home = ?, line_mm = ?, line_on = ?, "
        "done = ? "
        "WHERE id = ?",
        sql::values(s.visit, s.date, s.kind, s.note) + detail_values(s) + sql::values(s.id));
    if (!done) return done;
    return transaction->commit();
}

Result<Service> get_service(Book& book, Id id) {
    return get_one<Service>(book, "service", id, "SELECT " + columns + " FROM service WHERE id = ?", service_of);
}

Result<QVector<Service>> services_of_client(Book& book, Id client) {
    return sql::all<Service>(book.connection(),
                             "SELECT " + columns + " FROM service WHERE client = ? ORDER BY done_on, id",
                             sql::values(client), service_of);
}

Status each_service(Book& book, const std::function<void(Service&&)>& take) {
    return sql::each(book.connection(), "SELECT " + columns + " FROM service", {}, service_of, take);
}

Result<std::optional<Service>> last_service(Book& book, Id client, const QString& kind) {
    return sql::first<Service>(
        book.connection(),
        "SELECT " + columns + " FROM service WHERE client = ? AND kind = ? ORDER BY done_on DESC, id DESC LIMIT 1",
        sql::values(client, kind), service_of);
}

Status erase_service(Book& book, Id id) {
    return erase_one(book, "service", "service", id);
}

}  // namespace kempt::store
