// Grades of the book as the care rules ask for them.
#include <algorithm>
#include <map>

#include "book/grade_store.h"
#include "domain/words.h"
#include "work/care_freshness.h"
#include "work/care_parts.h"
#include "work/care_put.h"

namespace kempt::work {

namespace {

bool is_part(const std::string& zone) {
    return zone == care::word_of(care::Part::roots) || zone == care::word_of(care::Part::mid_shaft) ||
           zone == care::word_of(care::Part::ends);
}

// What the book calls a place, in the words of the rules: a part of the strand, a head section, or empty for the head.
std::string zone_of(const QString& words) {
    const auto zone = grade_zone_from_word(words);
    // A place of an earlier Kempt's book that the rules do not know may be anywhere; kempt check names it.
    if (!zone || *zone == u"whole head") return {};
    return zone->toStdString();
}

// Qualities of the hair itself, which a chemical service changes.
bool ends_with_service(const QString& quality) {
    return quality == u"porosity" || quality == u"elasticity" || quality == u"breakage";
}

// The worst grades, from which on stops speak. A service that was perhaps done since made nothing better, so they stay;
// a better one is asked for again.
constexpr int stopping_grade = 2;

// A service on the day of the grade came after it (grades are given at the consultation), unless that day is today.
bool changed_since(const care::ClientState& state, care::Day graded, int value) {
    const auto& all = state.history.services;
    return std::any_of(all.begin(), all.end(), [&](const care::PastService& service) {
        if (!care::belongs(*care::find_family("chemical"), service.kind)) return false;
        if (service.unsure && value <= stopping_grade) return false;
        return service.day > graded || (service.day == graded && graded < state.today);
    });
}

}  // namespace

void put_grades(const QVector<store::DatedGrade>& grades, QDate today, care::ClientState& state) {
    std::map<std::pair<QString, std::string>, store::DatedGrade> newest;
    for (const store::DatedGrade& dated : grades) {
        if (dated.date > today) continue;
        auto& kept = newest[{dated.grade.quality, zone_of(dated.grade.zone)}];
        // A second grading of the same day tells how steady the eye is; the worse of the two counts.
        if (kept.date != dated.date || dated.grade.value < kept.grade.value) kept = dated;
    }
    for (auto& [place, dated] : newest) {
        if (!is_part(place.second)) continue;
        const auto whole = newest.find({place.first, std::string()});
        if (whole == newest.end() || whole->second.date < dated.date) continue;
        // The whole head's grade is newer, or of the same day and worse.
        if (whole->second.date > dated.date || whole->second.grade.value < dated.grade.value) dated = whole->second;
    }
    for (const auto& [place, dated] : newest) {
        const QString& quality = place.first;
        const qint64 age = dated.date.daysTo(today);
        if (age > (quality == u"scalp" ? scalp_grade_days : grade_days)) continue;
        if (ends_with_service(quality) && changed_since(state, care_day(dated.date), dated.grade.value)) continue;
        state.grades.push_back({quality.toStdString(), place.second, dated.grade.value});
    }
}

Status add_grades(Book& book, Id client, QDate today, care::ClientState& state) {
    const auto stored = store::grades_of_client(book, client);
    if (!stored) return stored.error();
    put_grades(stored.value(), today, state);
    return Done{};
}

}  // namespace kempt::work
