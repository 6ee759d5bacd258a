#include "work/due_states.h"

#include <QHash>
#include <algorithm>
#include <tuple>

#include "book/client_store.h"
#include "book/due_store.h"
#include "book/grade_store.h"
#include "book/profile_store.h"
#include "book/reading_store.h"
#include "book/service_store.h"
#include "work/care_freshness.h"
#include "work/care_put.h"
#include "work/errors.h"
#include "work/plan_care.h"

namespace kempt::work {

namespace {

struct Read {
    QHash<Id, ClientProfile> profiles;
    QHash<Id, QVector<Service>> services;
    QHash<Id, std::vector<ToneShot>> tones;
    QHash<Id, QVector<store::DatedGrade>> grades;
    QHash<Id, store::HeatTold> heat;
    QHash<Id, QDate> photographed;
};

// Of each client the shots by view, date, visit and shot.
Result<QHash<Id, std::vector<ToneShot>>> tones_of_book(Book& book) {
    struct Ordered {
        Id client, visit;
        int shot;
        ToneShot tone;
    };
    std::vector<Ordered> all;
    const Status read =
        store::each_sound_details(book, QStringLiteral("tone_spread"), [&](const store::SoundDetails& one) {
            all.push_back({one.client, one.visit, one.shot, tone_shot(one.date, one.view, one.details)});
        });
    if (!read) return read.error();
    std::sort(all.begin(), all.end(), [](const Ordered& a, const Ordered& b) {
        return std::tuple(a.client, a.tone.view, a.tone.date, a.visit, a.shot) <
               std::tuple(b.client, b.tone.view, b.tone.date, b.visit, b.shot);
    });
    QHash<Id, std::vector<ToneShot>> tones;
    for (Ordered& one : all) tones[one.client].push_back(std::move(one.tone));
    return tones;
}

Result<Read> read_all(Book& book, QDate today) {
    Read read;
    const auto profiles = store::all_profiles(book);
    if (!profiles) return profiles.error();
    for (const ClientProfile& profile : profiles.value()) read.profiles[profile.client] = profile;
    const Status services =
        store::each_service(book, [&](Service&& service) { read.services[service.client].append(std::move(service)); });
    if (!services) return services.error();
    for (QVector<Service>& of_client : read.services)  // oldest first, as services_of_client has them
        std::sort(of_client.begin(), of_client.end(),
                  [](const Service& a, const Service& b) { return std::tie(a.date, a.id) < std::tie(b.date, b.id); });
    auto tones = tones_of_book(book);
    if (!tones) return tones.error();
    read.tones = std::move(tones).value();
    const auto grades = store::grades_between(book, today.addDays(-grade_days), today);
    if (!grades) return grades.error();
    for (const store::ClientGrade& grade : grades.value()) read.grades[grade.client].append(grade.dated);
    const auto heat = store::heat_told(book, today);
    if (!heat) return heat.error();
    for (const store::HeatTold& told : heat.value()) read.heat[told.client] = told;
    const auto photographed = store::last_photographed(book, today);
    if (!photographed) return photographed.error();
    read.photographed = photographed.value();
    return read;
}

// The dates ask whether heat tools are used at all, not which.
std::optional<DailyLife> daily_of(const Read& read, Id client) {
    const auto told = read.heat.constFind(client);
    if (told == read.heat.cend()) return std::nullopt;
    DailyLife life;
    life.client = client;
    life.date = told->date;
    if (told->asked) life.heat = QVector<HeatTool>(told->tools, HeatTool{QStringLiteral("heat tool"), {}, 1, {}});
    return life;
}

DueState state_of(const Read& read, const Client& client, QDate today) {
    DueState due{client.id, client.name, {}, {}, {}, {}, {}};
    ClientProfile none;
    none.client = client.id;
    const ClientProfile profile = read.profiles.value(client.id, none);
    const QVector<Service> services = read.services.value(client.id);
    due.state.today = care_day(today);
    put_profile(profile, today, due.state);
    put_daily(daily_of(read, client.id), today, due.state);
    put_history(profile, services, today, due.state);
    put_lines(read.tones.value(client.id), today, due.state);
    put_length(profile, today, due.state);
    put_grades(read.grades.value(client.id), today, due.state);
    if (const QDate day = read.photographed.value(client.id); day.isValid()) due.photographed = day;
    for (const Service& service : services)
        if (asks_whether_done(service, today)) due.unanswered.append(service);
    if (const auto dye = next_dye(services, today)) {
        due.dye_day = dye->date;
        due.patch_tested = dye->patch_test_on;
    }
    return due;
}

}  // namespace

Result<std::vector<DueState>> due_states(Book& book, QDate today, const Progress& progress) {
    const auto clients = store::list_clients(book);
    if (!clients) return clients.error();
    if (tell(progress, 0.3, "reading services and visits") == Go::stop) return stopped();
    const auto read = read_all(book, today);
    if (!read) return read.error();
    if (tell(progress, 0.7, "counting the days") == Go::stop) return stopped();
    std::vector<DueState> states;
    states.reserve(static_cast<std::size_t>(clients->size()));
    for (const store::ClientRow& row : clients.value()) states.push_back(state_of(*read, row.client, today));
    return states;
}

}  // namespace kempt::work
