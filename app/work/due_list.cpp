#include "work/due_list.h"

#include <QUuid>
#include <algorithm>

#include "book/setting_store.h"
#include "work/calendar.h"
#include "work/due_states.h"
#include "work/errors.h"
#include "work/plan_words.h"

namespace kempt::work {

namespace {

// A patch test that was put on within its range needs no reminder.
bool is_done(const DueState& client, const care::DateRange& range) {
    if (range.sort != care::DateSort::patch_test || !client.patch_tested) return false;
    const care::Day put_on = care_day(*client.patch_tested);
    return put_on >= range.from && put_on <= range.to;
}

DueList list_of(const std::vector<DueState>& clients, const DueOptions& options) {
    DueList list;
    list.today = options.today;
    list.clients = static_cast<int>(clients.size());
    const care::Day today = care_day(options.today);
    for (const DueState& client : clients) {
        for (const Service& service : client.unanswered)
            list.unanswered.push_back({client.client, client.name, service});
        const auto day = [](const std::optional<QDate>& date) {
            return date ? std::optional(care_day(*date)) : std::nullopt;
        };
        for (const care::DateRange& range :
             care::next_dates(client.state, day(client.photographed), day(client.dye_day), options.dates)) {
            if (range.from > today + options.within_days || is_done(client, range)) continue;
            if (range.to < today - options.overdue_days)
                ++list.long_overdue;
            else
                list.lines.push_back({client.client, client.name, range, range.to < today});
        }
    }
    std::stable_sort(list.lines.begin(), list.lines.end(),
                     [](const DueLine& a, const DueLine& b) { return a.range.from < b.range.from; });
    std::stable_sort(list.unanswered.begin(), list.unanswered.end(),
                     [](const UnansweredLine& a, const UnansweredLine& b) { return a.service.date < b.service.date; });
    return list;
}

// What makes this book's events its own. Random, so that it tells nothing of the book.
Result<QUuid> seed_of(Book& book) {
    const QString key = QStringLiteral("calendar-seed");
    const auto kept = store::get_setting(book, key);
    if (!kept) return kept.error();
    if (const QUuid seed = QUuid::fromString(kept->value_or(QString())); !seed.isNull()) return seed;
    const QUuid seed = QUuid::createUuid();
    if (const Status status = store::put_setting(book, key, seed.toString(QUuid::WithoutBraces)); !status)
        return status.error();
    return seed;
}

CalendarEvent event_of(const QUuid& seed, Id client, const QString& name, const care::DateRange& range,
                       const CalendarOptions& options) {
    const QString sort = QString::fromUtf8(word_of(range.sort).data());
    const speech::Speech& say = options.speech;
    CalendarEvent event;
    event.uid = QUuid::createUuidV5(seed, QStringLiteral("%1/%2").arg(client).arg(sort)).toString(QUuid::WithoutBraces);
    event.from = date_of(range.from);
    event.to = date_of(range.to);
    const QString who = options.names ? name.simplified() : say("Client %1").arg(client);
    event.summary = QStringLiteral("%1: %2").arg(who, say(sort));
    event.description = say(QString::fromStdString(range.reason));
    if (range.expected)
        event.description += QLatin1Char(' ') + say("Likeliest %1.").arg(say(text_of(date_of(*range.expected))));
    event.description += QLatin1Char('\n') + say("A reminder; it clears no service.");
    return event;
}

}  // namespace

Result<DueList> due_list(Book& book, const DueOptions& options, const Progress& progress) {
    return guarded([&]() -> Result<DueList> {
        if (!options.today.isValid() || options.within_days < 0 || options.overdue_days < 0)
            return invalid("due-days", "The days of the due list are none.", "Give a date and days from 0 on.");
        const auto clients = due_states(book, options.today, progress);
        if (!clients) return clients.error();
        return list_of(*clients, options);
    });
}

Result<QByteArray> calendar_of(Book& book, const DueList& list, const CalendarOptions& options) {
    const auto seed = seed_of(book);
    if (!seed) return seed.error();
    QVector<CalendarEvent> events;
    for (const DueLine& line : list.lines) events.append(event_of(*seed, line.client, line.name, line.range, options));
    return calendar_bytes(events, options.stamp);
}

Result<QByteArray> calendar_of(Book& book, const Client& client, const std::vector<care::DateRange>& dates,
                               const CalendarOptions& options) {
    const auto seed = seed_of(book);
    if (!seed) return seed.error();
    QVector<CalendarEvent> events;
    for (const care::DateRange& range : dates) events.append(event_of(*seed, client.id, client.name, range, options));
    return calendar_bytes(events, options.stamp);
}

QString line_of(const DueLine& line) {
    return QStringLiteral("%1  %2 (%3)%4")
        .arg(line_of(line.range), line.name.simplified())
        .arg(line.client)
        .arg(line.overdue ? QStringLiteral(", overdue") : QString());
}

QString line_of(const UnansweredLine& line) {
    return QStringLiteral("%1  %2 (%3)").arg(was_it_done(line.service), line.name.simplified()).arg(line.client);
}

}  // namespace kempt::work
