// Services of the book as the care rules ask for them, and how long the hair is.
#include <algorithm>
#include <cmath>

#include "book/service_store.h"
#include "work/care_freshness.h"
#include "work/care_parts.h"
#include "work/care_put.h"
#include "work/keep_care.h"

namespace kempt::work {

namespace {

std::optional<care::Strength> strength_of(const QString& word) {
    for (const auto strength : {care::Strength::mild, care::Strength::regular, care::Strength::super})
        if (word.toStdString() == care::word_of(strength)) return strength;
    return std::nullopt;
}

std::optional<care::TestResult> test_of(const QString& word) {
    if (word == u"passed") return care::TestResult::passed;
    if (word == u"failed") return care::TestResult::failed;
    return std::nullopt;
}

}  // namespace

// 95 %: a tape is read to a millimetre, and the hairs of one parting differ by about as much (own choice).
constexpr double tape_mm = 2;

std::optional<care::PastService> past_service(const Service& service) {
    const auto kind = care::kind_from_word(service.kind.toStdString());
    if (!kind) return std::nullopt;
    care::PastService past;
    past.kind = *kind;
    past.day = care_day(service.date);
    past.from_mm = service.from_mm;
    past.to_mm = service.to_mm;
    for (const QString& section : service.sections) past.sections.push_back(section.toStdString());
    past.strength = strength_of(service.strength);
    past.minutes = service.minutes;
    past.temperature_c = service.temperature_c;
    past.passes = service.passes;
    past.strand_test = test_of(service.strand_test);
    past.patch_test = test_of(service.patch_test);
    if (service.patch_test_on) past.patch_test_day = care_day(*service.patch_test_on);
    past.result = service.result.toStdString();
    past.reaction = service.reaction;
    past.at_home = service.at_home;
    if (service.line_mm && service.line_on) {
        past.line_mm = {*service.line_mm, std::max(0.0, *service.line_mm - tape_mm), *service.line_mm + tape_mm};
        past.line_day = care_day(*service.line_on);
        past.line_by_tape = true;
    }
    return past;
}

namespace {

// A reaction in the record, or a patch test that failed, is an answer, whatever she remembers. The test was put on
// before the service, which may only be planned yet: what is written down of a planned one has happened, on the day of
// the test where that is known.
void heed_reaction(const Service& service, QDate today, care::Answers& answers) {
    const auto kind = care::kind_from_word(service.kind.toStdString());
    const bool told = service.date <= today || !service.done;
    const bool failed = service.patch_test == u"failed" &&
                        (service.date <= today || (service.patch_test_on ? *service.patch_test_on <= today : told));
    if (!kind || !(failed || (told && service.reaction.value_or(false)))) return;
    const auto of = [&](const char* family) { return care::belongs(*care::find_family(family), *kind); };
    if (of("dye") || of("oxidative")) answers.dye_reaction = true;
    if (of("texture")) answers.straightener_burn = true;
    if (of("treatment") || of("smoothing")) answers.treatment_reaction = true;
}

}  // namespace

bool tells_history(const ClientProfile& profile, QDate today) {
    if (!profile.history_told_on || *profile.history_told_on > today) return false;
    return profile.history_told_on->daysTo(today) <= history_days;
}

bool asks_whether_done(const Service& service, QDate today) {
    return !service.done && service.date < today;
}

void put_history(const ClientProfile& profile, const QVector<Service>& services, QDate today,
                 care::ClientState& state) {
    auto& since = state.history.complete_since;
    if (tells_history(profile, today)) {
        if (profile.whole_history)
            since = care::whole_life;
        else if (profile.history_from && *profile.history_from <= today)
            since = care_day(*profile.history_from);
    }
    for (const Service& service : services) {
        heed_reaction(service, today, state.answers);
        // One planned for today is not done yet.
        if (service.done ? service.date > today : service.date >= today) continue;
        if (auto past = past_service(service)) {
            if (past->line_day > state.today) past->line_mm.reset();
            past->unsure = !service.done;
            state.history.services.push_back(std::move(*past));
        } else if (since)  // nobody knows what it did: the record tells all only since then
            since = std::max(*since, care_day(service.date) + 1);
    }
}

Status add_history(Book& book, Id client, QDate today, care::ClientState& state) {
    const auto profile = profile_of(book, client);
    if (!profile) return profile.error();
    const auto services = store::services_of_client(book, client);
    if (!services) return services.error();
    put_history(profile.value(), services.value(), today, state);
    return Done{};
}

void put_length(const ClientProfile& profile, QDate today, care::ClientState& state) {
    std::optional<double> length;
    care::Day measured = 0;
    if (profile.length_mm && *profile.length_on <= today) {
        length = profile.length_mm;
        measured = care_day(*profile.length_on);
    }
    // On one day the cut came after the tape: what it left counts. A cut of some sections tells nothing of the others.
    for (const care::PastService& cut : state.history.services) {
        if (cut.kind != care::Kind::cut || cut.unsure || !cut.sections.empty() || cut.day < measured) continue;
        if (cut.day == measured && !cut.to_mm) continue;
        length = cut.to_mm;
        measured = cut.day;
    }
    if (!length || state.today - measured > length_days) return;
    state.length_mm = std::round(*length + (state.today - measured) * care::rate_of(state).um_per_day / 1000);
}

Status add_length(Book& book, Id client, QDate today, care::ClientState& state) {
    const auto profile = profile_of(book, client);
    if (!profile) return profile.error();
    put_length(profile.value(), today, state);
    return Done{};
}

}  // namespace kempt::work
