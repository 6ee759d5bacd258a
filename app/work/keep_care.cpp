#include "work/keep_care.h"

#include "book/client_store.h"
#include "book/profile_store.h"
#include "book/transaction.h"
#include "care/facts.h"
#include "work/errors.h"

namespace kempt::work {

Result<ClientProfile> profile_of(Book& book, Id client) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    return store::profile_of(book, client);
}

Status set_profile(Book& book, const ClientProfile& profile) {
    return store::put_profile(book, profile);
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

Result<DailyLife> set_daily_life(Book& book, DailyLife life) {
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

Result<QVector<ClientAnswer>> set_answers(Book& book, QVector<ClientAnswer> answers) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    for (ClientAnswer& answer : answers) {
        const auto id = store::put_answer(book, answer);
        if (!id) return id.error();
        answer.id = id.value();
    }
    if (const Status done = transaction->commit(); !done) return done.error();
    return answers;
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
