// The plan of a client whose record is in the book.
#include "book/photo_store.h"
#include "book/profile_store.h"
#include "book/service_store.h"
#include "book/visit_store.h"
#include "work/errors.h"
#include "work/plan_care.h"

namespace kempt::work {

namespace {

// The last day on which photos were taken.
Result<std::optional<QDate>> photographed_on(Book& book, Id client, QDate today) {
    const auto visits = store::visits_of_client(book, client);
    if (!visits) return visits.error();
    for (auto visit = visits->crbegin(); visit != visits->crend(); ++visit) {
        if (visit->date > today) continue;
        const auto photos = store::photos_of_visit(book, visit->id);
        if (!photos) return photos.error();
        if (!photos->isEmpty()) return std::optional(visit->date);
    }
    return std::optional<QDate>();
}

// A strand test that was written down for this service, as take_patch_test does with its patch test. One that failed
// counts before one that passed; it may be why the service was not done, so it goes on after its day until a later test
// of that kind passed. services: by day.
void take_strand_test(const QVector<Service>& services, QDate today, care::PlannedService& planned) {
    if (planned.strand_tested || planned.strand_test) return;
    bool failed_before = false, failed = false, passed = false;
    for (const Service& service : services) {
        if (care::kind_from_word(service.kind.toStdString()) != planned.kind) continue;
        const bool bad = service.strand_test == u"failed", good = service.strand_test == u"passed";
        if (service.date < today) {
            if (good) failed_before = false;
            if (bad && !service.done) failed_before = true;
        } else {
            failed = failed || bad;
            passed = passed || good;
        }
    }
    failed = failed || (failed_before && !passed);
    if (!failed && !passed) return;
    planned.strand_tested = true;
    planned.strand_test = failed ? care::TestResult::failed : care::TestResult::passed;
}

}  // namespace

bool needs_patch_test(care::Kind kind) {
    return care::belongs(*care::find_family("dye"), kind) || care::belongs(*care::find_family("oxidative"), kind);
}

std::optional<Service> next_dye(const QVector<Service>& services, QDate today) {
    for (const Service& service : services) {
        const auto kind = care::kind_from_word(service.kind.toStdString());
        const bool planned = service.date > today || (!service.done && service.date == today);
        if (planned && kind && needs_patch_test(*kind)) return service;
    }
    return std::nullopt;
}

void take_patch_test(const QVector<Service>& services, QDate today, care::PlannedService& planned) {
    if (planned.patch_tested || planned.patch_test || planned.patch_test_hours) return;
    // A result that is written down has happened, also without its day; one that failed counts before all others.
    const Service* tested = nullptr;
    for (const Service& service : services) {
        if (service.date < today || care::kind_from_word(service.kind.toStdString()) != planned.kind) continue;
        if (service.patch_test_on && *service.patch_test_on > today) continue;
        const bool failed = service.patch_test == u"failed";
        if (failed || (!tested && service.patch_test_on)) tested = &service;
        if (failed) break;
    }
    if (!tested) return;
    planned.patch_tested = true;
    if (tested->patch_test == u"passed") planned.patch_test = care::TestResult::passed;
    if (tested->patch_test == u"failed") planned.patch_test = care::TestResult::failed;
    if (!tested->patch_test_on) return;
    // Of a test put on two days ago nobody knows whether 48 hours have passed: asked. From three days on they have.
    if (const qint64 days = tested->patch_test_on->daysTo(today); days >= 3)
        planned.patch_test_hours = static_cast<double>(24 * (days - 1));
}

Result<PlanRequest> completed(Book& book, const PlanOptions& options) {
    PlanRequest request = options.request;
    const auto services = store::services_of_client(book, options.client);
    if (!services) return services.error();
    for (PlannedItem& item : request.services) {
        take_patch_test(services.value(), options.today, item.service);
        take_strand_test(services.value(), options.today, item.service);
    }
    for (const Service& service : services.value())
        if (asks_whether_done(service, options.today)) request.unanswered.append(service);
    const auto profile = store::profile_of(book, options.client);
    if (!profile) return profile.error();
    if (profile->whole_history || profile->history_from)
        if (!tells_history(*profile, options.today))
            request.history_told_on = profile->history_told_on.value_or(QDate());
    if (!request.photographed) {
        const auto day = photographed_on(book, options.client, options.today);
        if (!day) return day.error();
        request.photographed = *day;
    }
    if (!request.dye_day)
        if (const auto dye = next_dye(services.value(), options.today)) request.dye_day = dye->date;
    return request;
}

Result<CarePlan> plan_care(Book& book, const PlanOptions& options, const Progress& progress) {
    return guarded([&]() -> Result<CarePlan> {
        const auto state = care_state(book, options.client, options.today);
        if (!state) return state.error();
        const auto request = completed(book, options);
        if (!request) return request.error();
        return plan_care(*state, *request, progress);
    });
}

}  // namespace kempt::work
