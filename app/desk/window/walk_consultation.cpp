#include "desk/window/walk_consultation.h"

#include <QScrollArea>
#include <QScrollBar>

#include "desk/consultation/grades_page.h"
#include "desk/window/book_view.h"
#include "desk/window/main_window.h"
#include "desk/window/page.h"
#include "domain/clock.h"
#include "domain/service_words.h"
#include "work/keep_care.h"
#include "work/keep_records.h"

namespace kempt::desk {

Result<ConsultationSights> consultation_sights(Book& book) {
    ConsultationSights sights;
    const auto clients = work::list_clients(book);
    if (!clients) return clients.error();
    qsizetype services_most = -1, grades_most = 0, told_most = -1;
    for (const work::ClientRow& row : *clients) {
        const Id client = row.client.id;
        const auto services = work::list_services(book, client);
        if (!services) return services.error();
        const auto profile = work::profile_of(book, client);
        if (!profile) return profile.error();
        for (const Service& one : *services) {
            // Where the length was known, every part of the hair has its name.
            const bool length_known = profile->length_on && one.date >= *profile->length_on;
            const qsizetype told = details_of(one).size() + (length_known ? 4 : 0);
            if (told <= services_most) continue;
            services_most = told;
            sights.service = {Where::service, client};
            sights.service.service = one.id;
        }
        const auto visits = work::list_visits(book, client);
        if (!visits) return visits.error();
        for (const Visit& visit : *visits) {
            const auto grades = work::list_grades(book, visit.id);
            if (!grades) return grades.error();
            if (grades->size() <= grades_most) continue;
            grades_most = grades->size();
            sights.grades = {Where::grades, client, visit.id};
        }
        const auto life = work::daily_life_of(book, client, Clock().today());
        if (!life) return life.error();
        const qsizetype told = *life ? details_of(**life).size() : 0;
        if (told <= told_most) continue;
        told_most = told;
        sights.profile = {Where::profile, client};
    }
    return sights;
}

QVector<PlanStep> consultation_steps(MainWindow& window, const ConsultationSights& sights) {
    const auto to = [&window](const Place& place) { return [&window, place] { window.book()->go(place); }; };
    const auto lower = [&window] {
        if (window.book()->page() == nullptr) return;  // the step before was left out
        for (QScrollArea* area : window.book()->page()->findChildren<QScrollArea*>())
            area->verticalScrollBar()->setValue(area->verticalScrollBar()->maximum());
    };
    QVector<PlanStep> steps;
    if (sights.service.client > 0) {
        steps.append({QStringLiteral("consultation-service"), to(sights.service)});
        steps.append({QStringLiteral("consultation-service-lower"), lower});
    }
    if (sights.grades.client > 0) {
        steps.append({QStringLiteral("consultation-grades"), to(sights.grades)});
        steps.append({QStringLiteral("consultation-grades-second"), [&window] {
                          if (auto* page = qobject_cast<GradesPage*>(window.book()->page())) page->set_round(2);
                      }});
    }
    if (sights.profile.client > 0) {
        steps.append({QStringLiteral("consultation-profile"), to(sights.profile)});
        steps.append({QStringLiteral("consultation-profile-lower"), lower});
    }
    return steps;
}

}  // namespace kempt::desk
