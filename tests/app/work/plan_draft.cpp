// What is being planned is kept as it was entered, every field of it.
#include "work/plan_draft.h"

#include <boost/test/unit_test.hpp>

#include "book/setting_store.h"
#include "temporary_book.h"

using namespace kempt;
using namespace kempt::work;

namespace {

PlanDraft everything() {
    PlanDraft draft{QDate(2026, 3, 14), {}};
    DraftItem one;
    care::PlannedService& s = one.item.service;
    s.kind = care::Kind::permanent;
    s.from_mm = 12.5;
    s.to_mm = 210;
    s.new_growth_only = true;
    s.sections = {"nape", "crown"};
    s.strength = care::Strength::super;
    s.minutes = 25;
    s.most_minutes = 30;
    s.temperature_c = 165;
    s.passes = 2;
    s.at_home = false;
    s.touches_scalp = true;
    s.releases_formaldehyde = false;
    s.data_sheet = true;
    s.hair_is_wet = false;
    s.heat_protectant = true;
    s.strand_tested = true;
    s.strand_test = care::TestResult::failed;
    s.patch_tested = true;
    s.patch_test = care::TestResult::passed;
    s.patch_test_hours = 60;
    s.tight = true;
    s.adds_hair = false;
    care::Setting setting;
    setting.strand_minutes = 20;
    setting.most_minutes = 28;
    setting.hands = 2;
    setting.roots_minutes = 9;
    setting.ends_minutes = 15;
    setting.ends_porosity = 1;
    setting.sections = {{"nape, first half", 0.5, 1, 1.5}, {"crown", 2, 0, 0}};
    one.item.setting = setting;
    one.in_rounds = true;
    DraftItem other;
    other.item.service.kind = care::Kind::cut;
    draft.items = {one, other};
    return draft;
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(plan_draft, tests::TemporaryBook)

BOOST_AUTO_TEST_CASE(every_field_comes_back_as_it_was_entered) {
    const PlanDraft draft = everything();
    BOOST_REQUIRE(keep_plan_draft(*book, client.id, draft).ok());
    const auto kept = plan_draft_of(*book, client.id);
    BOOST_REQUIRE(kept.ok());
    BOOST_REQUIRE(kept->has_value());
    BOOST_TEST((kept.value()->day == draft.day));
    BOOST_REQUIRE_EQUAL(kept.value()->items.size(), 2u);
    const DraftItem &is = kept.value()->items[0], &was = draft.items[0];
    const care::PlannedService &a = is.item.service, &b = was.item.service;
    BOOST_TEST((a.kind == b.kind && a.from_mm == b.from_mm && a.to_mm == b.to_mm));
    BOOST_TEST((a.new_growth_only == b.new_growth_only && a.sections == b.sections && a.strength == b.strength));
    BOOST_TEST((a.minutes == b.minutes && a.most_minutes == b.most_minutes));
    BOOST_TEST((a.temperature_c == b.temperature_c && a.passes == b.passes && a.at_home == b.at_home));
    BOOST_TEST((a.touches_scalp == b.touches_scalp && a.releases_formaldehyde == b.releases_formaldehyde));
    BOOST_TEST((a.data_sheet == b.data_sheet && a.hair_is_wet == b.hair_is_wet));
    BOOST_TEST((a.heat_protectant == b.heat_protectant && a.tight == b.tight && a.adds_hair == b.adds_hair));
    BOOST_TEST((a.strand_tested == b.strand_tested && a.strand_test == b.strand_test));
    BOOST_TEST((a.patch_tested == b.patch_tested && a.patch_test == b.patch_test));
    BOOST_TEST((a.patch_test_hours == b.patch_test_hours));
    BOOST_REQUIRE(is.item.setting.has_value());
    const care::Setting &c = *is.item.setting, &d = *was.item.setting;
    BOOST_TEST((c.strand_minutes == d.strand_minutes && c.most_minutes == d.most_minutes && c.hands == d.hands));
    BOOST_TEST((c.roots_minutes == d.roots_minutes && c.ends_minutes == d.ends_minutes));
    BOOST_TEST((c.ends_porosity == d.ends_porosity));
    BOOST_REQUIRE_EQUAL(c.sections.size(), 2u);
    BOOST_TEST(c.sections[0].name == d.sections[0].name);
    BOOST_TEST((c.sections[0].roots == 0.5 && c.sections[0].mid_shaft == 1 && c.sections[0].ends == 1.5));
    BOOST_TEST(is.in_rounds);
    // Nothing was entered here, and nothing is made up.
    const DraftItem& cut = kept.value()->items[1];
    BOOST_TEST(!cut.in_rounds);
    BOOST_TEST(!cut.item.setting.has_value());
    BOOST_TEST((!cut.item.service.to_mm && !cut.item.service.strand_tested && !cut.item.service.minutes));
}

BOOST_AUTO_TEST_CASE(one_without_services_is_put_away) {
    BOOST_REQUIRE(keep_plan_draft(*book, client.id, everything()).ok());
    BOOST_REQUIRE(keep_plan_draft(*book, client.id, {QDate(2026, 3, 15), {}}).ok());
    BOOST_TEST(!plan_draft_of(*book, client.id)->has_value());
    BOOST_TEST(store::list_settings(*book)->isEmpty());
}

BOOST_AUTO_TEST_CASE(an_erased_client_leaves_none_and_an_unknown_one_has_none) {
    BOOST_REQUIRE(keep_plan_draft(*book, client.id, everything()).ok());
    BOOST_REQUIRE(erase_client(*book, client.id).ok());
    BOOST_TEST(store::list_settings(*book)->isEmpty());
    BOOST_TEST((plan_draft_of(*book, client.id).error().kind == ErrorKind::not_found));
    BOOST_TEST((keep_plan_draft(*book, client.id, everything()).error().kind == ErrorKind::not_found));
}

BOOST_AUTO_TEST_CASE(what_a_later_kempt_wrote_is_none_and_a_day_has_to_be_a_day) {
    BOOST_REQUIRE(store::put_setting(*book, QStringLiteral("plan-of-client-%1").arg(client.id),
                                     QStringLiteral("{\"day\": \"2026-03-14\", \"request\": {\"what\": 1}}"))
                      .ok());
    BOOST_REQUIRE(plan_draft_of(*book, client.id).ok());
    BOOST_TEST(!plan_draft_of(*book, client.id)->has_value());
    PlanDraft draft = everything();
    draft.day = QDate();
    BOOST_TEST((keep_plan_draft(*book, client.id, draft).error().kind == ErrorKind::invalid));
}

BOOST_AUTO_TEST_SUITE_END()
