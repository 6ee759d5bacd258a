// The steps of the visit, and the ways from it.
#include <QScrollArea>

#include "desk/client/services_panel.h"
#include "desk/inbox/inbox.h"
#include "desk/visit/steps_panel.h"
#include "desk/visit/visit_data.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/photo_dialog.h"

namespace kempt::desk {

void VisitPage::fill_steps(const VisitData& read) {
    VisitFacts facts;
    facts.day = read.visit.date;
    facts.life_told = read.life_told;
    facts.profile_told = read.profile_told;
    facts.photos = read.photos;
    facts.followed = read.followed;
    facts.grades = read.grades;
    for (const Service& service : read.services)
        if (service.done && service.visit == std::optional(read.visit.id)) facts.services.append(service);
    steps_->show_steps(steps_of(facts));
}

void VisitPage::go_to_step(const VisitStep& step) {
    using What = VisitStep::What;
    switch (step.what) {
        case What::told:
            return emit go({Where::profile, client_, visit_id_});
        case What::scalp:
        case What::grades:
            return emit go({Where::grades, client_, visit_id_});
        case What::photos:
        case What::after:
            return choose_to_sort();
        case What::readings:
            if (step.photo > 0) return emit go({Where::photo, client_, visit_id_, step.photo, step.view});
            return choose_to_sort();
        case What::services:
            for (QScrollArea* area : findChildren<QScrollArea*>()) area->ensureWidgetVisible(services_);
            if (auto* first = services_->findChild<QPushButton*>()) first->setFocus(Qt::OtherFocusReason);
            return;
        case What::dates:
            return emit go({Where::plan, client_, visit_id_});
    }
}

void VisitPage::go_to_missing(const Missing& missing) {
    if (missing.what == Missing::What::edge_line)
        emit go({Where::photo, client_, visit_id_, missing.photo, missing.view});
    else
        choose(missing.view, false);
}

// Any number of photos of any views: they are sorted in the tray.
void VisitPage::choose_to_sort() {
    ask_for_photos(this, tr("Photos of this visit"), [this](const QStringList& paths) {
        Inbox::of(session_).bring(paths, {Where::visit, client_, visit_id_});
        emit go({Where::inbox});
    });
}

}  // namespace kempt::desk
