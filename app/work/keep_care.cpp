#include "work/keep_care.h"

#include "book/client_store.h"
#include "book/profile_store.h"
#include "book/transaction.h"
#include "care/facts.h"
#include "work/care_freshness.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

Status until(const QDate& today, const std::optional<QDate>& day, const char* what) {
    if (!day || !(*day > today)) return Done{};
    return invalid(
        "day-to-come",
        "The day of the " + std::string(what) + ", " + day->toString(Qt::ISODate).toStdString() + ", is still to come.",
        "Give a day until today.");
}

// A yes that is kept for good, of the day on which a no is to be written down.
Status no_yes_before(Book& book, const ClientAnswer& answer) {
    const Question* question = find_question(answer.question);
    if (question == nullptr || question->lasting != Lasting::yes_for_good || answer.value != 0) return Done{};
    const auto all = store::answers_of_client(book, answer.client);
    if (!all) return all.error();
    for (const ClientAnswer& other : *all)
        if (other.question == answer.question && other.date == answer.date && other.value != 0)
            return invalid(
                "yes-for-good",
                "On that day " + answer.question.toStdString() + " was answered with yes, which is kept for good.",
                "If it was written down wrongly, erase it first: kempt client forget BOOK --answer " +
                    std::to_string(other.id) + ".");
    return Done{};
}

Status put(Book& book, ClientAnswer& answer, QDate today) {
    if (Status past = until(today, answer.date, "answer"); !past) return past;
    const auto id = store::put_answer(book, answer);
    if (!id) return id.error();
    answer.id = id.value();
    return Done{};
}

}  // namespace

Result<ClientProfile> profile_of(Book& book, Id client) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    return store::profile_of(book, client);
}

Status set_profile(Book& book, const ClientProfile& profile, QDate today) {
    for (const auto& [day, what] :
         {std::pair(profile.born, "birth"), std::pair(profile.age_on, "age"),
          std::pair(profile.length_on, "measured length"), std::pair(profile.history_from, "beginning of the record"),
          std::pair(profile.history_told_on, "telling how far the record goes back")})
        if (Status past = until(today, day, what); !past) return past;
    return store::put_profile(book, profile);
}

Status confirm_history(Book& book, Id client, QDate today) {
    auto profile = profile_of(book, client);
    if (!profile) return profile.error();
    if (!profile->whole_history && !profile->history_from)
        return invalid("history-untold", "How far back the record goes was not told yet.",
                       "Say since when every service is in it.");
    profile->history_told_on = today;
    return set_profile(book, profile.value(), today);
}

Result<QVector<DailyLife>> list_daily_life(Book& book, Id client) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    return store::daily_life_of_client(book, client);
}

Result<std::optional<DailyLife>> daily_life_of(Book& book, Id client, QDate today) {
    auto all = list_daily_life(book, client);
    if (!all) return all.error();
    std::optional<DailyLife> newest;
    for (const DailyLife& life : *all)
        if (life.date <= today) newest = life;
    return newest;
}

std::optional<DailyLife> fresh_life(const std::optional<DailyLife>& life, QDate today) {
    if (!life || life->date.daysTo(today) > daily_life_days) return std::nullopt;
    return life;
}

Result<DailyLife> set_daily_life(Book& book, DailyLife life, QDate today) {
    if (Status past = until(today, life.date, "daily life"); !past) return past.error();
    const auto id = store::put_daily_life(book, life);
    if (!id) return id.error();
    life.id = id.value();
    return life;
}

Status erase_daily_life(Book& book, Id life) {
    return store::erase_daily_life(book, life);
}

Result<QVector<ClientAnswer>> list_answers(Book& book, Id client) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    return store::answers_of_client(book, client);
}

Result<QVector<CurrentAnswer>> answers_of(Book& book, Id client, QDate today) {
    const auto all = list_answers(book, client);
    if (!all) return all.error();
    QVector<CurrentAnswer> current;
    for (const Question& question : questions()) {
        std::optional<ClientAnswer> newest;
        for (const ClientAnswer& answer : all.value()) {
            if (answer.question != question.name || answer.date > today) continue;
            // What once happened is not undone by a later no; a mistake is erased.
            const bool stays = question.lasting == Lasting::yes_for_good && newest && newest->value != 0;
            if (!stays || answer.value != 0) newest = answer;
        }
        if (newest) current.push_back({*newest, still_counts(*newest, today)});
    }
    return current;
}

Result<QVector<ClientAnswer>> set_answers(Book& book, QVector<ClientAnswer> answers, QDate today) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    for (ClientAnswer& answer : answers) {
        if (const Status free = no_yes_before(book, answer); !free) return free.error();
        if (const Status kept = put(book, answer, today); !kept) return kept.error();
    }
    if (const Status done = transaction->commit(); !done) return done.error();
    return answers;
}

Result<ClientAnswer> correct_answer(Book& book, ClientAnswer answer, QDate today) {
    if (const Status kept = put(book, answer, today); !kept) return kept.error();
    return answer;
}

Status erase_answer(Book& book, Id answer) {
    return store::erase_answer(book, answer);
}

QString sentence_of(const Question& question) {
    const care::Fact* fact = care::find_fact(question.name.toStdString());
    return fact ? QString::fromUtf8(fact->question.data(), static_cast<qsizetype>(fact->question.size())) : QString();
}

QString words_of(const ClientAnswer& answer) {
    const Question* question = find_question(answer.question);
    if (question && question->sort == AnswerSort::count)
        return QStringLiteral("%1 %2")
            .arg(answer.value)
            .arg(answer.value == 1 ? QStringLiteral("hair") : QStringLiteral("hairs"));
    return answer.value != 0 ? QStringLiteral("yes") : QStringLiteral("no");
}

}  // namespace kempt::work
