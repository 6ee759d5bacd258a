// The plan of a client whose record is in the book.
#include "book/photo_store.h"
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

}  // namespace

bool needs_patch_test(care::Kind kind) {
    return care::belongs(*care::find_family("dye"), kind) || care::belongs(*care::find_family("oxidative"), kind);
}

std::optional<Service> next_dye(const QVector<Service>& services, QDate today) {
    for (const Service& service : services) {
        const auto kind = care::kind_from_word(service.kind.toStdString());
        if (service.date > today && kind && needs_patch_test(*kind)) return service;
    }
    return std::nullopt;
}

Result<PlanRequest> completed(Book& book, const PlanOptions& options) {
    PlanRequest request = options.request;
    if (!request.photographed) {
        const auto day = photographed_on(book, options.client, options.today);
        if (!day) return day.error();
        request.photographed = *day;
    }
    if (!request.dye_day) {
        const auto services = store::services_of_client(book, options.client);
        if (!services) return services.error();
        if (const auto dye = next_dye(services.value(), options.today)) request.dye_day = dye->date;
    }
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
