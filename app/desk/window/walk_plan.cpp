#include "desk/window/walk_plan.h"

#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <algorithm>
#include <memory>

#include "desk/plan/dates_panel.h"
#include "desk/plan/hair_panel.h"
#include "desk/plan/plan_page.h"
#include "desk/plan/questions_panel.h"
#include "desk/plan/work_panel.h"
#include "desk/session/session.h"
#include "desk/window/book_view.h"
#include "desk/window/main_window.h"
#include "domain/clock.h"
#include "domain/words.h"
#include "work/keep_records.h"
#include "work/plan_draft.h"

namespace kempt::desk {
namespace {

using Kept = std::shared_ptr<std::optional<work::PlanDraft>>;

// Both tests passed, and the same minutes to apply for every section.
void prepare(work::DraftItem& draft, double patch_hours, double strand_minutes, care::SectionMinutes each) {
    care::PlannedService& service = draft.item.service;
    service.strand_tested = service.patch_tested = true;
    service.strand_test = service.patch_test = care::TestResult::passed;
    service.patch_test_hours = patch_hours;
    care::Setting& setting = draft.item.setting.emplace();
    setting.strand_minutes = strand_minutes;
    for (const QString& section : head_sections()) {
        each.name = section.toStdString();
        setting.sections.push_back(each);
    }
}

// An iron that is far too hot, a gloss over all of the hair, and a retouch that no one person can do in one go.
work::PlanDraft draft_to_show() {
    work::PlanDraft draft{Clock().today(), {}};
    work::DraftItem iron;
    iron.item.service.kind = care::Kind::heat_styling;
    iron.item.service.temperature_c = 230;
    iron.item.service.passes = 2;
    iron.item.service.hair_is_wet = false;
    iron.item.service.heat_protectant = true;
    work::DraftItem gloss;
    gloss.item.service.kind = care::Kind::gloss;
    gloss.item.service.minutes = 20;
    gloss.item.service.most_minutes = 30;
    prepare(gloss, 60, 20, {{}, 0.5, 0.5, 0.5});
    work::DraftItem retouch;
    retouch.item.service.kind = care::Kind::permanent;
    retouch.item.service.new_growth_only = true;
    retouch.item.service.strength = care::Strength::regular;
    retouch.item.service.minutes = 35;
    retouch.item.service.most_minutes = 45;
    prepare(retouch, 200, 35, {{}, 3, 2, 0});
    draft.items = {iron, gloss, retouch};
    return draft;
}

PlanPage* page_of(MainWindow& window) {
    return window.book() == nullptr ? nullptr : qobject_cast<PlanPage*>(window.book()->page());
}

void scroll_to(MainWindow& window, QWidget* widget) {
    PlanPage* page = page_of(window);
    if (page == nullptr || widget == nullptr) return;
    if (auto* area = page->findChild<QScrollArea*>())
        area->verticalScrollBar()->setValue(widget->mapTo(area->widget(), QPoint(0, 0)).y() - 12);
}

}  // namespace

Result<Place> plan_sight(Book& book) {
    Place best;
    std::ptrdiff_t most = 0;
    auto clients = work::list_clients(book);
    if (!clients) return clients.error();
    for (const work::ClientRow& row : *clients) {
        auto services = work::list_services(book, row.client.id);
        if (!services) return services.error();
        const auto colours = std::count_if(services->begin(), services->end(), [](const Service& service) {
            const auto kind = care::kind_from_word(service.kind.toStdString());
            return kind && (sort_of(*kind) == LaneSort::colour || sort_of(*kind) == LaneSort::lightening);
        });
        if (colours <= most) continue;
        most = colours;
        best = {Where::plan, row.client.id};
    }
    return best;
}

QVector<PlanStep> plan_steps(MainWindow& window, const Place& place) {
    const Kept before = std::make_shared<std::optional<work::PlanDraft>>();
    const auto put = [&window, client = place.client](std::function<work::PlanDraft()> draft) {
        window.session()->records().start(
            QStringLiteral("plan"), &window,
            [client, draft](Book& book, const Progress&) { return work::keep_plan_draft(book, client, draft()); },
            [](Status) {});
    };
    return {{{},
             [&window, before, client = place.client] {
                 window.session()->records().start(
                     QStringLiteral("plan"), &window,
                     [client](Book& book, const Progress&) { return work::plan_draft_of(book, client); },
                     [before](Result<std::optional<work::PlanDraft>> kept) {
                         if (kept.ok()) *before = *kept;
                     });
             }},
            {QStringLiteral("plan"),
             [&window, put, place] {
                 put([] { return draft_to_show(); });
                 window.book()->go(place);
             }},
            {QStringLiteral("plan-questions"),
             [&window] {
                 if (PlanPage* page = page_of(window)) scroll_to(window, page->questions());
             }},
            {QStringLiteral("plan-order"),
             [&window] {
                 if (PlanPage* page = page_of(window)) scroll_to(window, page->work(1));
             }},
            {QStringLiteral("plan-remedies"),
             [&window] {
                 if (PlanPage* page = page_of(window)) scroll_to(window, page->work(2));
             }},
            {QStringLiteral("plan-rounds"),
             [&window] {
                 PlanPage* page = page_of(window);
                 if (page == nullptr || page->work(2) == nullptr || page->work(2)->remedies().isEmpty()) return;
                 page->work(2)->remedies().last()->click();
                 scroll_to(window, page->work(2));
             }},
            {QStringLiteral("plan-hair"),
             [&window] {
                 PlanPage* page = page_of(window);
                 if (page == nullptr) return;
                 page->hair()->strand()->pick(205);
                 scroll_to(window, page->hair());
             }},
            {QStringLiteral("plan-dates"),
             [&window] {
                 if (PlanPage* page = page_of(window)) scroll_to(window, page->dates());
             }},
            {{}, [put, before] { put([before] {
                                     return before->value_or(work::PlanDraft{Clock().today(), {}});
                                 }); }}};
}

}  // namespace kempt::desk
