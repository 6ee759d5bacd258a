// What can this hair take: the rules' word on planned services, which hair they go on, in which order and when, the
// next dates and the home care. Nothing here says that a service is safe.
//
// plan_care(state, request) is pure: a form reads the state once (care_state) and asks again at each change.
#pragma once

#include <QDate>
#include <optional>
#include <string>
#include <vector>

#include "care/coverage.h"
#include "care/dates.h"
#include "care/evaluate.h"
#include "care/home_care.h"
#include "care/timeline.h"
#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/care_state.h"

namespace kempt::work {

struct PlannedItem {
    care::PlannedService service;
    // What the application timeline asks for; not set: none is wanted. A maximum of 0 minutes is taken from the
    // service, porosity of the ends that is not set from the newest grade.
    std::optional<care::Setting> setting;
};

struct PlanRequest {
    std::vector<PlannedItem> services;  // none: what is known of the client alone, with dates and home care
    std::optional<QDate> photographed;  // last visit with photos; dates of the next ones count from it
    std::optional<QDate> dye_day;       // day of a dye that is being planned: its patch test gets a date
    // Of the timeline's needed minutes that are tolerated to either side (timeline.h says where 0.2 comes from).
    double under = 0.2, over = 0.2;
    care::DateOptions dates;
    care::HomeCareOptions home_care;
    QVector<Service> unanswered = {};  // planned for a day that has passed: was it done?
    // When she told how far back the record goes, where that is too long ago to count; no valid day: it was not kept.
    std::optional<QDate> history_told_on = {};
};

// A remedy with the order of work of each of its rounds: solved, so that it can be followed.
struct ProvenRemedy {
    care::Remedy remedy;
    std::vector<care::Timeline> rounds;  // as many as remedy.rounds; all of them work
};

struct PlannedTimeline {
    care::Application application;  // what was solved
    care::Timeline timeline;        // why_not when no order works
    std::vector<ProvenRemedy> would_help;
};

struct ServicePlan {
    care::PlannedService service;
    care::Coverage coverage;
    std::optional<PlannedTimeline> timeline;
    std::string no_timeline;  // a sentence when one was asked for and there is none: what is missing, or the stop
    bool stopped = false;     // a stop holds that concerns this service or the client as a whole
};

// Since a service whose beginning is still on the hair.
struct GrowthNow {
    care::Kind kind = care::Kind::hydroxide;
    care::Day since = 0;
    care::GrowthRange new_growth_mm;
    bool measured = false;  // from its line of demarcation; else from the rate alone
    bool by_tape = false;   // when measured; else on a photo
    std::string source;     // of the rate, and of the line when there is one
};

// What one part of today's hair has been through, newest first.
struct Past {
    std::size_t service = 0;  // index into the state's record
    care::Kind kind = care::Kind::cut;
    care::Day day = 0;
    bool surely = false;  // else perhaps: the rate of growth leaves it open
    care::Span span;      // of this part: the hair it surely, or else perhaps, covers
};
struct PartRecord {
    care::Part part = care::Part::roots;
    care::Span span;
    std::vector<Past> been_through;
    bool complete = false;  // the record reaches back as far as this hair; else it may have been through more
};

struct CarePlan {
    QDate today;
    care::Advice advice;                 // stops first; advice.always has to be shown with everything else
    std::vector<std::string> questions;  // of all findings, each once, those of stops first
    std::vector<ServicePlan> services;   // as requested
    std::vector<PartRecord> hair;        // roots, mid-shaft, ends, as far as there are any
    care::GrowthRate rate;               // of this client
    std::string rate_from;               // whose rate that is, one sentence
    std::vector<GrowthNow> growth;       // since the last straightening or perm, the last colour that stays
    std::vector<care::DateRange> dates;
    care::HomeCarePlan home_care;
    QVector<Service> unanswered;           // was it done? Until then the rules take it as perhaps done
    std::optional<QDate> history_told_on;  // too long ago to count: ask again whether every service is in the record
};

// Errors: invalid (state or services that cannot be, as care::checked; the sentence names what), cancelled. A timeline
// with its remedies took 8 ms at the most when it was measured (eight sections of three parts, two people, no order);
// progress is told once a service.
[[nodiscard]] Result<CarePlan> plan_care(const care::ClientState& state, const PlanRequest& request,
                                         const Progress& progress = {});

// A dye, or colour mixed with peroxide.
[[nodiscard]] bool needs_patch_test(care::Kind kind);
// The first of them that is planned for today or a later day. Services by date.
[[nodiscard]] std::optional<Service> next_dye(const QVector<Service>& services, QDate today);

struct PlanOptions {
    Id client = 0;
    QDate today;
    PlanRequest request;  // photographed and dye_day are taken from the book where they are not set
};
// The request with `photographed`, `dye_day`, `unanswered` and `history_told_on` from the book: the last visit with
// photos; the next dye that is planned. A form reads this once, with the state. Errors: not_found (client), io.
[[nodiscard]] Result<PlanRequest> completed(Book& book, const PlanOptions& options);
// The state is read from the book. Errors: those of plan_care and care_state; not_found (client).
[[nodiscard]] Result<CarePlan> plan_care(Book& book, const PlanOptions& options, const Progress& progress = {});

}  // namespace kempt::work
