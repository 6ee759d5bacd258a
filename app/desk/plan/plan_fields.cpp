#include "desk/plan/plan_fields.h"

#include <QObject>

namespace kempt::desk {
namespace {

bool of(const char* family, care::Kind kind) {
    const care::Family* found = care::find_family(family);
    return found != nullptr && care::belongs(*found, kind);
}

}  // namespace

bool wants(care::Kind kind, PlanField field) {
    const bool chemical = of("chemical", kind), colour = of("colour", kind), heat = of("heat", kind),
               style = of("style", kind), treatment = of("treatment", kind), texture = of("texture", kind);
    switch (field) {
        case PlanField::stretch:
            return kind != care::Kind::cut && !style;
        case PlanField::new_growth:
            return texture || colour;
        case PlanField::sections:
            return kind != care::Kind::cut;
        case PlanField::strength:
            return texture || of("oxidative", kind);
        case PlanField::minutes:
            return chemical || colour || treatment;
        case PlanField::strand_test:
            return chemical || colour;
        case PlanField::patch_test:
            return of("dye", kind) || of("oxidative", kind);
        case PlanField::temperature:
        case PlanField::passes:
        case PlanField::wet:
        case PlanField::protectant:
            return heat;
        case PlanField::scalp:
            return texture;
        case PlanField::formaldehyde:
            return kind == care::Kind::smoothing;
        case PlanField::data_sheet:
            return chemical;
        case PlanField::at_home:
            return texture || kind == care::Kind::lightening || kind == care::Kind::smoothing;
        case PlanField::tight:
        case PlanField::adds_hair:
            return style;
        case PlanField::order:
            return (texture || colour || treatment);
    }
    return false;
}

bool is_yes_no(PlanField field) {
    switch (field) {
        case PlanField::scalp:
        case PlanField::wet:
        case PlanField::protectant:
        case PlanField::formaldehyde:
        case PlanField::data_sheet:
        case PlanField::at_home:
        case PlanField::tight:
        case PlanField::adds_hair:
            return true;
        default:
            return false;
    }
}

QVector<KindGroup> kind_groups() {
    using enum care::Kind;
    return {{QObject::tr("Straighten, perm"),
             {hydroxide_lye, hydroxide_no_lye, thioglycolate_straightener, thioglycolate_perm, smoothing}},
            {QObject::tr("Colour, lighten"), {gloss, semi_permanent, demi_permanent, permanent, henna, lightening}},
            {QObject::tr("Treat"), {bond_building, protein, moisture}},
            {QObject::tr("Cut, style"), {cut, heat_styling, protective_style}}};
}

}  // namespace kempt::desk
