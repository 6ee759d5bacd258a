// The fields of a planned service by name: whether they are there and open, and filling them from elsewhere.
#include <QComboBox>

#include "desk/plan/entry_fields.h"
#include "desk/plan/service_form.h"

namespace kempt::desk {

ServiceForm::Truth ServiceForm::truth_of(PlanField field) {
    using P = care::PlannedService;
    switch (field) {
        case PlanField::scalp:
            return &P::touches_scalp;
        case PlanField::wet:
            return &P::hair_is_wet;
        case PlanField::protectant:
            return &P::heat_protectant;
        case PlanField::formaldehyde:
            return &P::releases_formaldehyde;
        case PlanField::data_sheet:
            return &P::data_sheet;
        case PlanField::at_home:
            return &P::at_home;
        case PlanField::tight:
            return &P::tight;
        case PlanField::adds_hair:
            return &P::adds_hair;
        default:
            return nullptr;
    }
}

bool ServiceForm::focus_field(PlanField field) {
    if (ChoiceRow* choice = choices_.value(static_cast<int>(field))) {
        choice->focus_chosen();
        return true;
    }
    QWidget* widget = fields_.value(static_cast<int>(field));
    if (widget == nullptr) return false;
    widget->setFocus(Qt::OtherFocusReason);
    return true;
}

bool ServiceForm::shows(PlanField field) const {
    return choices_.contains(static_cast<int>(field)) || fields_.contains(static_cast<int>(field));
}

bool ServiceForm::has_open(PlanField field) const {
    if (!shows(field)) return false;
    const care::PlannedService& s = service_;
    switch (field) {
        case PlanField::strength:
            return !s.strength;
        case PlanField::minutes:
            return !s.minutes || !s.most_minutes;
        case PlanField::temperature:
            return !s.temperature_c;
        case PlanField::passes:
            return !s.passes;
        case PlanField::strand_test:
            return !s.strand_tested || (*s.strand_tested && !s.strand_test);
        case PlanField::patch_test:
            return !s.patch_tested || (*s.patch_tested && (!s.patch_test || !s.patch_test_hours));
        default:
            if (const auto member = truth_of(field)) return !(s.*member);
            return false;
    }
}

void ServiceForm::answer(PlanField field, const std::optional<bool>& yes) {
    const auto member = truth_of(field);
    if (member == nullptr) return;
    service_.*member = yes;
    if (ChoiceRow* choice = this->choice(field)) choice->set_chosen(index_of(yes));
    emit entered();
}

void ServiceForm::set_strength(const std::optional<care::Strength>& strength) {
    if (strength_ != nullptr) strength_->setCurrentIndex(strength ? 1 + static_cast<int>(*strength) : 0);
}

void ServiceForm::clear_strand_test() {
    service_.strand_test = std::nullopt;
    service_.strand_tested = std::nullopt;
    if (ChoiceRow* choice = this->choice(PlanField::strand_test)) choice->set_chosen(3);
    emit entered();
}

}  // namespace kempt::desk
