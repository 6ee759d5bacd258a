#include "book/profile_store.h"

#include "book/store_help.h"
#include "domain/questions.h"
#include "domain/words.h"

namespace kempt::store {

namespace {

// As care::checked: what the book holds can always be asked about.
constexpr double oldest_years = 130, longest_mm = 6000, most_hairs = 1000;

Status pair(bool one, bool other, const std::string& what) {
    if (one == other) return Done{};
    return invalid("day-missing", "The " + what + " and the day on which it was told go together.",
                   "Give both or neither.");
}

Status day(const std::optional<QDate>& date, const std::string& of) {
    return date ? need_date(*date, of) : Status(Done{});
}

Status sensible(const ClientProfile& p) {
    for (const Status& status :
         {day(p.born, "birth"), day(p.age_on, "age"), day(p.length_on, "measured length"),
          day(p.history_from, "beginning of the record"), day(p.history_told_on, "telling"),
          need_up_to(p.age_years, oldest_years, "age"), need_up_to(p.length_mm, longest_mm, "length in mm"),
          pair(p.age_years.has_value(), p.age_on.has_value(), "age"),
          pair(p.length_mm.has_value(), p.length_on.has_value(), "length"),
          need_word(p.texture, hair_textures(), "texture"), need_word(p.hair_group, hair_groups(), "group of hair")})
        if (!status) return status;
    if (p.history_told_on && !p.whole_history && !p.history_from)
        return invalid("day-missing",
                       "A day is given on which it was told how far the record goes back, but not how far.",
                       "Give both or neither.");
    if (p.length_mm && !(*p.length_mm > 0))
        return invalid("number-impossible", "Hair has a length above 0 mm.", "Leave the length out.");
    return Done{};
}

const QString profile_columns = QStringLiteral(
    "SELECT client, born, age_years, age_on, length_mm, length_on, texture, hair_group, whole_history, history_from, "
    "history_told_on FROM client_profile");
ClientProfile profile_from(sql::Row& row) {
    ClientProfile p;
    p.client = row.number();
    p.born = row.date_or_null();
    p.age_years = row.real_or_null();
    p.age_on = row.date_or_null();
    p.length_mm = row.real_or_null();
    p.length_on = row.date_or_null();
    p.texture = row.text();
    p.hair_group = row.text();
    p.whole_history = row.flag();
    p.history_from = row.date_or_null();
    p.history_told_on = row.date_or_null();
    return p;
}

ClientAnswer answer_from(sql::Row& row) {
    ClientAnswer answer;
    answer.id = row.number();
    answer.client = row.number();
    answer.date = row.date();
    answer.question = row.text();
    answer.value = row.small();
    return answer;
}

}  // namespace

Result<ClientProfile> profile_of(Book& book, Id client) {
    auto found = sql::first<ClientProfile>(book.connection(), profile_columns + " WHERE client = ?",
                                           sql::values(client), profile_from);
    if (!found) return found.error();
    if (found->has_value()) return **found;
    ClientProfile none;
    none.client = client;
    return none;
}

Result<QVector<ClientProfile>> all_profiles(Book& book) {
    return sql::all<ClientProfile>(book.connection(), profile_columns + " ORDER BY client", {}, profile_from);
}

Status put_profile(Book& book, const ClientProfile& p) {
    if (Status good = sensible(p); !good) return good;
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    if (auto gone =
            sql::change(book.connection(), "DELETE FROM client_profile WHERE client = ?", sql::values(p.client));
        !gone)
        return gone.error();
    auto kept = sql::change(book.connection(),
                            "INSERT INTO client_profile (client, born, age_years, age_on, length_mm, length_on, "
                            "texture, hair_group, whole_history, history_from, history_told_on) "
                            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                            sql::values(p.client, p.born, p.age_years, p.age_on, p.length_mm, p.length_on, p.texture,
                                        p.hair_group, p.whole_history, p.history_from, p.history_told_on));
    if (!kept) return told(kept.error(), "missing-link", missing("client", p.client));
    return transaction->commit();
}

Result<Id> put_answer(Book& book, const ClientAnswer& a) {
    if (Status dated = need_date(a.date, "answer"); !dated) return dated.error();
    const Question* question = find_question(a.question);
    if (!question)
        return invalid("question-unknown", "There is no question called " + in_quotes(a.question) + ".",
                       "Use one of their names.");
    const double most = question->sort == AnswerSort::yes_or_no ? 1 : most_hairs;
    if (Status number = need_up_to(a.value, most, "answer"); !number) return number.error();
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    if (auto gone =
            sql::change(book.connection(), "DELETE FROM answer WHERE client = ? AND question = ? AND answered_on = ?",
                        sql::values(a.client, a.question, a.date));
        !gone)
        return gone.error();
    auto id =
        sql::insert(book.connection(), "INSERT INTO answer (client, answered_on, question, value) VALUES (?, ?, ?, ?)",
                    sql::values(a.client, a.date, a.question, a.value));
    if (!id) return told(id.error(), "missing-link", missing("client", a.client));
    if (Status done = transaction->commit(); !done) return done.error();
    return id;
}

Result<QVector<ClientAnswer>> answers_of_client(Book& book, Id client) {
    return sql::all<ClientAnswer>(book.connection(),
                                  "SELECT id, client, answered_on, question, value FROM answer WHERE client = ? "
                                  "ORDER BY answered_on, question",
                                  sql::values(client), answer_from);
}

Status erase_answer(Book& book, Id id) {
    return erase_one(book, "answer", "answer", id);
}

}  // namespace kempt::store
