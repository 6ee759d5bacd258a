// A table of cases: every rule once where it is silent, and once after the one change that makes it speak. A rule
// without a case fails.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <functional>
#include <map>

#include "people.h"

using namespace kempt::care;
using namespace people;

namespace {

struct Scene {
    ClientState state = sound();
    Plan plan;
    PlannedService& first() { return plan.services.at(0); }
    Answers& answers() { return state.answers; }
    void did(Kind kind, int days_ago, double from_mm = 0, std::optional<double> to_mm = {}) {
        state.history.services.push_back(past(kind, days_ago, from_mm, to_mm));
    }
    void also(Kind kind) { plan.services.push_back(prepared(kind)); }
    void iron(double celsius, double times, bool wet) { state.daily.heat = {{"iron", celsius, times, wet}}; }
    void worse(const char* name, const char* zone) {
        state.readings.push_back({name, zone, 30, 28, 32, Direction::worse});
    }
};

struct Case {
    std::string rule;
    std::optional<Kind> planned;         // with everything done that belongs to it
    std::function<void(Scene&)> before;  // may be empty; the rule is silent after it
    std::function<void(Scene&)> change;  // and speaks after this
    std::string where;                   // that the finding names, "": not looked at
};

using enum Kind;
using S = Scene&;

const std::vector<Case>& cases() {
    static const std::vector<Case> all = {
        // Scalp.
        {"scalp-open-place", hydroxide, {}, [](S s) { s.answers().scalp_wound = true; }, ""},
        {"scalp-grade-sore",
         demi_permanent,
         {},
         [](S s) { set_grade(s.state, "scalp", "nape", 1); },
         "demi-permanent colour, nape"},
        {"scalp-grade-itching", hydroxide, {}, [](S s) { set_grade(s.state, "scalp", "", 2); }, ""},
        {"scalp-pain", lightening, {}, [](S s) { s.answers().scalp_pain = true; }, ""},
        {"scalp-tingling", semi_permanent, {}, [](S s) { s.answers().tingling_with_thinning = true; }, ""},
        {"scratched-before-straightening", thioglycolate_perm, {}, [](S s) { s.answers().scratched_scalp = true; }, ""},
        {"scratched-before-colour", permanent, {}, [](S s) { s.answers().scratched_scalp = true; }, ""},
        {"washed-before-chemistry", lightening, {}, [](S s) { s.answers().washed_scalp = true; }, ""},
        {"straightener-burn-before", hydroxide_lye, {}, [](S s) { s.answers().straightener_burn = true; }, ""},
        {"shield-the-scalp", hydroxide_no_lye, {}, [](S s) { s.first().touches_scalp = true; }, ""},
        {"hydroxide-is-corrosive", thioglycolate_straightener, {}, [](S s) { s.first().kind = hydroxide; }, ""},
        // Patch test.
        {"patch-test-missing", gloss, {}, [](S s) { s.first().patch_tested = false; }, ""},
        {"patch-test-too-short", permanent, [](S s) { s.first().patch_test_hours = 48; },
         [](S s) { s.first().patch_test_hours = 47; }, ""},
        {"patch-test-old", permanent, [](S s) { s.first().patch_test_hours = 168; },
         [](S s) { s.first().patch_test_hours = 169; }, ""},
        {"patch-test-reacted", permanent, {}, [](S s) { s.first().patch_test = TestResult::failed; }, ""},
        {"dye-reaction-before", semi_permanent, {}, [](S s) { s.answers().dye_reaction = true; }, ""},
        {"black-henna-reaction", permanent, {}, [](S s) { s.answers().black_henna_reaction = true; }, ""},
        {"face-rash", lightening, {}, [](S s) { s.answers().face_rash = true; }, ""},
        {"under-sixteen-dye", permanent, [](S s) { s.state.age_years = 16; }, [](S s) { s.state.age_years = 15; }, ""},
        // Chemistries.
        {"thioglycolate-on-hydroxide", thioglycolate_perm, [](S s) { s.did(protein, 200); },
         [](S s) { s.did(hydroxide_no_lye, 200); }, "thioglycolate perm, ends"},
        {"hydroxide-on-thioglycolate", hydroxide, [](S s) { s.did(moisture, 200); },
         [](S s) { s.did(thioglycolate_straightener, 200); }, "hydroxide straightener, mid-shaft"},
        {"both-chemistries-today", hydroxide, {}, [](S s) { s.also(thioglycolate_perm); }, ""},
        {"chemistry-on-metallic-dye", permanent, {}, [](S s) { s.did(metallic_dye, 300); }, ""},
        {"straighten-or-lighten-on-henna", lightening, {}, [](S s) { s.did(henna, 300); }, ""},
        {"colour-on-henna", permanent, {}, [](S s) { s.did(henna, 300); }, ""},
        {"lightening-on-weak-hydroxide", lightening, [](S s) { s.did(hydroxide, 300); },
         [](S s) { set_grade(s.state, "elasticity", "ends", 2); }, "lightening, ends"},
        {"lightening-on-hydroxide", lightening, {}, [](S s) { s.did(hydroxide, 300); }, ""},
        {"straightening-on-lightened", hydroxide, {}, [](S s) { s.did(lightening, 300); }, ""},
        {"thioglycolate-on-lightened", thioglycolate_perm, {}, [](S s) { s.did(lightening, 300); }, ""},
        {"smoothing-on-straightened", smoothing, {}, [](S s) { s.did(thioglycolate_straightener, 300); }, ""},
        // Overlap and waiting.
        {"hydroxide-overlap", hydroxide,
         [](S s) {
             s.did(hydroxide, 100);
             s.first().new_growth_only = true;
         },
         [](S s) { s.first().new_growth_only = false; }, "hydroxide straightener, mid-shaft"},
        {"thioglycolate-overlap", thioglycolate_straightener, {}, [](S s) { s.did(thioglycolate_perm, 100); }, ""},
        {"lightening-overlap", lightening, {}, [](S s) { s.did(lightening, 200); }, ""},
        {"colour-overlap", permanent, {}, [](S s) { s.did(permanent, 200); }, ""},
        {"straightened-lately", hydroxide, [](S s) { s.did(hydroxide, 56); },
         [](S s) { s.state.history.services[0].day = today - 55; }, ""},
        {"new-growth-under-6", hydroxide,
         [](S s) {
             s.did(hydroxide, 60);
             s.first().new_growth_only = true;
         },
         [](S s) { s.state.history.services[0].day = today - 15; }, ""},  // 280 um/day: 4.2 mm, 5.7 at most
        {"new-growth-under-12", hydroxide,
         [](S s) {
             s.did(hydroxide, 90);
             s.first().new_growth_only = true;
         },
         [](S s) { s.state.history.services[0].day = today - 30; }, ""},  // 8.4 mm, 11.4 at most
        {"retouch-of-what", hydroxide, {}, [](S s) { s.first().new_growth_only = true; }, ""},
        {"colour-after-straightening", permanent, [](S s) { s.did(hydroxide, 14); },
         [](S s) { s.state.history.services[0].day = today - 13; }, ""},
        {"straightening-after-colour", hydroxide, [](S s) { s.did(lightening, 14); },
         [](S s) { s.state.history.services[0].day = today - 13; }, ""},
        {"straightener-and-colour-today", hydroxide, [](S s) { s.also(semi_permanent); },
         [](S s) { s.also(permanent); }, ""},
        {"perm-and-dye", thioglycolate_perm, [](S s) { s.did(gloss, 7); },
         [](S s) { s.state.history.services[0].day = today - 6; }, ""},
        {"dyed-lately", permanent, [](S s) { s.did(permanent, 90); },
         [](S s) { s.state.history.services[0].day = today - 89; }, ""},
        // State of the hair.
        {"elasticity-failed", demi_permanent, [](S s) { set_grade(s.state, "elasticity", "ends", 2); },
         [](S s) { set_grade(s.state, "elasticity", "ends", 1); }, "demi-permanent colour, ends"},
        {"elasticity-weak", hydroxide, [](S s) { set_grade(s.state, "elasticity", "", 3); },
         [](S s) { set_grade(s.state, "elasticity", "", 2); }, "hydroxide straightener, roots"},
        {"breakage-heavy", lightening, [](S s) { set_grade(s.state, "breakage", "mid-shaft", 2); },
         [](S s) { set_grade(s.state, "breakage", "mid-shaft", 1); }, "lightening, mid-shaft"},
        {"breakage-some", permanent, [](S s) { set_grade(s.state, "breakage", "ends", 3); },
         [](S s) { set_grade(s.state, "breakage", "ends", 2); }, "permanent colour, ends"},
        {"breakage-growing", permanent, {}, [](S s) { s.worse("short_share", ""); }, ""},
        {"gummy-hair", permanent, [](S s) { set_grade(s.state, "porosity", "ends", 1); },
         [](S s) { set_grade(s.state, "porosity", "ends", 0); }, "permanent colour, ends"},
        {"porous-straightening", hydroxide, [](S s) { set_grade(s.state, "porosity", "ends", 3); },
         [](S s) { set_grade(s.state, "porosity", "ends", 2); }, "hydroxide straightener, ends"},
        {"porous-colour", demi_permanent, [](S s) { set_grade(s.state, "porosity", "ends", 3); },
         [](S s) { set_grade(s.state, "porosity", "ends", 2); }, "demi-permanent colour, ends"},
        {"fine-hair-strength", hydroxide, [](S s) { s.state.texture = Texture::fine; },
         [](S s) { s.first().strength = Strength::regular; }, ""},
        {"super-strength", hydroxide, [](S s) { s.first().strength = Strength::regular; },
         [](S s) { s.first().strength = Strength::super; }, ""},
        {"mild-rather-than-strong", hydroxide, {}, [](S s) { s.first().strength = Strength::regular; }, ""},
        {"coloured-hair-strength", hydroxide, [](S s) { s.did(permanent, 90); },
         [](S s) { s.first().strength = Strength::regular; }, ""},
        {"leave-some-curl", thioglycolate_perm, {}, [](S s) { s.first().kind = thioglycolate_straightener; }, ""},
        {"treatment-reaction-before", bond_building, {}, [](S s) { s.answers().treatment_reaction = true; }, ""},
        {"strand-test-failed", protein, {}, [](S s) { s.first().strand_test = TestResult::failed; }, ""},
        {"strand-test-missing", permanent, {}, [](S s) { s.first().strand_tested = false; }, ""},
        {"longer-than-directed", semi_permanent, [](S s) { s.first().minutes = 20; },
         [](S s) { s.first().minutes = 21; }, ""},
        {"chemistry-on-thin-edges", hydroxide, [](S s) { set_grade(s.state, "edges", "left temple", 2); },
         [](S s) { set_grade(s.state, "edges", "left temple", 1); }, "hydroxide straightener, left temple"},
        {"chemistry-while-edges-recede",
         hydroxide,
         {},
         [](S s) { s.worse("edge_coverage", "right temple"); },
         "hydroxide straightener, right temple"},
        // Colour.
        {"even-out-fresh-fine", hydroxide, [](S s) { s.answers().uneven_colour = true; },
         [](S s) { s.state.texture = Texture::fine; }, ""},
        {"even-out-straightened", demi_permanent, [](S s) { s.answers().uneven_colour = true; },
         [](S s) { s.did(hydroxide, 60); }, ""},
        {"even-out-porous", gloss, [](S s) { s.answers().uneven_colour = true; },
         [](S s) { set_grade(s.state, "porosity", "ends", 2); }, "gloss, ends"},
        {"permanent-on-straightened", permanent, {}, [](S s) { s.did(hydroxide, 60); }, "permanent colour, ends"},
        {"lightening-fine", lightening, {}, [](S s) { s.state.texture = Texture::fine; }, ""},
        {"dark-on-lightened", semi_permanent, {}, [](S s) { s.did(lightening, 60); }, ""},
        // The person.
        {"pregnancy", semi_permanent, {}, [](S s) { s.answers().pregnant_or_breastfeeding = true; }, ""},
        {"medication", hydroxide, {}, [](S s) { s.answers().takes_medication = true; }, ""},
        {"child-straightener", hydroxide, [](S s) { s.state.age_years = 18; }, [](S s) { s.state.age_years = 17; }, ""},
        {"child-tight-style", protective_style, [](S s) { s.state.age_years = 12; },
         [](S s) { s.first().tight = true; }, ""},
        {"home-straightening", hydroxide, {}, [](S s) { s.first().at_home = true; }, ""},
        {"home-formaldehyde", smoothing, [](S s) { s.first().at_home = true; },
         [](S s) { s.first().releases_formaldehyde = true; }, ""},
        {"formaldehyde", smoothing, {}, [](S s) { s.first().releases_formaldehyde = true; }, ""},
        {"data-sheet", permanent, {}, [](S s) { s.first().data_sheet = false; }, ""},
        // Heat.
        {"wet-iron", heat_styling, {}, [](S s) { s.first().hair_is_wet = true; }, ""},
        {"wet-iron-at-home", {}, [](S s) { s.iron(150, 1, false); }, [](S s) { s.iron(150, 1, true); }, ""},
        {"iron-over-220", heat_styling, [](S s) { s.first().temperature_c = 220; },
         [](S s) { s.first().temperature_c = 221; }, ""},
        {"iron-over-200", heat_styling, [](S s) { s.first().temperature_c = 200; },
         [](S s) { s.first().temperature_c = 201; }, ""},
        {"iron-over-185", heat_styling, [](S s) { s.first().temperature_c = 185; },
         [](S s) { s.first().temperature_c = 186; }, ""},
        {"iron-on-weak-hair", heat_styling,
         [](S s) {
             s.did(lightening, 60);
             s.first().temperature_c = 150;
         },
         [](S s) { s.first().temperature_c = 151; }, "heat styling, ends"},
        {"iron-on-treated-hair", heat_styling,
         [](S s) {
             s.did(hydroxide, 60);
             s.first().temperature_c = 170;
         },
         [](S s) { s.first().temperature_c = 171; }, "heat styling, mid-shaft"},
        {"slow-passes", heat_styling, [](S s) { s.first().passes = 2; }, [](S s) { s.first().passes = 3; }, ""},
        {"no-protectant", heat_styling, {}, [](S s) { s.first().heat_protectant = false; }, ""},
        {"daily-heat", {}, [](S s) { s.iron(150, 1, false); }, [](S s) { s.iron(150, 2, false); }, ""},
        {"daily-heat-hot", {}, [](S s) { s.iron(185, 1, false); }, [](S s) { s.iron(186, 1, false); }, ""},
        // Styles.
        {"tight-style-after-straightening", protective_style, [](S s) { s.did(hydroxide, 13); },
         [](S s) { s.first().tight = true; }, ""},
        {"straightening-and-style-today", protective_style, [](S s) { s.also(hydroxide); },
         [](S s) { s.first().adds_hair = true; }, ""},
        {"tight-style-on-straightened", protective_style, [](S s) { s.did(hydroxide, 90); },
         [](S s) { s.first().tight = true; }, ""},
        {"pulling-on-thin-edges", protective_style, [](S s) { set_grade(s.state, "edges", "left temple", 1); },
         [](S s) { s.first().tight = true; }, "protective style, left temple"},
        {"pulling-on-open-edges", protective_style, [](S s) { set_grade(s.state, "edges", "nape", 2); },
         [](S s) { s.first().adds_hair = true; }, "protective style, nape"},
        {"style-hurts", {}, {}, [](S s) { s.state.daily.style_hurts = true; }, ""},
        {"style-left-long",
         {},
         [](S s) { s.state.daily.style_weeks = 13; },
         [](S s) { s.state.daily.style_weeks = 14; },
         ""},
        {"daily-pull-on-straightened",
         {},
         [](S s) { s.did(hydroxide, 90); },
         [](S s) { s.state.daily.tight_styles = true; },
         ""},
        {"tight-headwear", {}, {}, [](S s) { s.state.daily.tight_headwear = true; }, ""},
        // Signs for a doctor.
        {"emergency-reaction", {}, {}, [](S s) { s.answers().swelling_or_breathing = true; }, ""},
        {"doctor-inflamed-margin", {}, {}, [](S s) { s.answers().scalp_pustules = true; }, ""},
        {"doctor-smooth-skin", {}, {}, [](S s) { s.answers().smooth_edges = true; }, ""},
        {"doctor-sudden-loss", {}, {}, [](S s) { s.answers().patchy_loss = true; }, ""},
        {"doctor-pull-test",
         {},
         [](S s) { s.state.pull_test_hairs = 2; },
         [](S s) { s.state.pull_test_hairs = 3; },
         ""},
        {"doctor-comb-count", {}, [](S s) { s.state.comb_count = 78; }, [](S s) { s.state.comb_count = 79; }, ""},
        {"doctor-loss-goes-on", {}, {}, [](S s) { s.answers().loss_goes_on = true; }, ""},
        {"doctor-child",
         {},
         [](S s) { s.state.age_years = 9; },
         [](S s) { set_grade(s.state, "edges", "nape", 2); },
         "nape"},
        {"doctor-edges-worse", {}, {}, [](S s) { s.worse("edge_coverage", "left temple"); }, "left temple"},
    };
    return all;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(cases_of_rules)

BOOST_AUTO_TEST_CASE(every_rule_speaks_after_one_change_and_not_before) {
    const Rules& rules = *built_in_rules();
    for (const Case& one : cases()) {
        BOOST_TEST_CONTEXT(one.rule) {
            BOOST_REQUIRE(rules.find(one.rule));
            Scene scene;
            if (one.planned) scene.also(*one.planned);
            if (one.before) one.before(scene);
            const Advice before = advise(rules, scene.state, scene.plan);
            BOOST_CHECK(!find(before, one.rule));
            BOOST_CHECK(!find(before, one.rule, FindingSort::check_first));
            one.change(scene);
            const Advice after = advise(rules, scene.state, scene.plan);
            const Finding* finding = find(after, one.rule);
            BOOST_REQUIRE(finding);
            BOOST_CHECK(!finding->source.empty() && !finding->remedy.empty());
            if (rules.find(one.rule)->level == RuleLevel::stop) BOOST_CHECK(after.stopped);
            bool named = one.where.empty();
            for (const Place& place : finding->where) named = named || phrase_of(place) == one.where;
            BOOST_CHECK_MESSAGE(named, "names " << phrase_of(finding->where[0]));
        }
    }
}

BOOST_AUTO_TEST_CASE(every_rule_has_its_case) {
    std::map<std::string, int> seen;
    for (const Case& one : cases()) ++seen[one.rule];
    for (const Rule& rule : built_in_rules()->rules) BOOST_CHECK_MESSAGE(seen[rule.id] == 1, rule.id);
}

// What a kind does not have is not asked of it; where it is told all the same, it stops.
BOOST_AUTO_TEST_CASE(a_kind_is_asked_for_no_test_minutes_or_fumes_that_it_does_not_have) {
    for (const auto& [rule, kinds] :
         {std::pair<const char*, std::vector<Kind>>{
              "patch-test-reacted",
              {gloss, semi_permanent, demi_permanent, permanent, lightening, henna, metallic_dye}},
          {"strand-test-failed",
           {hydroxide, hydroxide_lye, hydroxide_no_lye, thioglycolate_straightener, thioglycolate_perm, smoothing,
            gloss, semi_permanent, demi_permanent, permanent, lightening, henna, metallic_dye}},
          {"home-formaldehyde", {smoothing}},
          {"formaldehyde", {smoothing}}})
        for (int k = 0; k < kind_count; ++k) {
            Scene scene;
            PlannedService bare;
            bare.kind = static_cast<Kind>(k);
            scene.plan.services = {bare};
            const bool asked = std::find(kinds.begin(), kinds.end(), bare.kind) != kinds.end();
            const Advice advice = advise(*built_in_rules(), scene.state, scene.plan);
            BOOST_CHECK_MESSAGE((find(advice, rule, FindingSort::check_first) != nullptr) == asked,
                                rule << " of " << word_of(bare.kind));
            PlannedService& told = scene.first();
            told.patch_test = told.strand_test = TestResult::failed;
            told.at_home = told.releases_formaldehyde = true;
            BOOST_CHECK_MESSAGE(find(advise(*built_in_rules(), scene.state, scene.plan), rule),
                                rule << " told of " << word_of(bare.kind));
        }
    for (int k = 0; k < kind_count; ++k) {
        Scene scene;
        PlannedService bare;
        bare.kind = static_cast<Kind>(k);
        scene.plan.services = {bare};
        const bool worn = bare.kind == cut || bare.kind == heat_styling || bare.kind == protective_style;
        BOOST_CHECK_MESSAGE((find(advise(*built_in_rules(), scene.state, scene.plan), "longer-than-directed",
                                  FindingSort::check_first) != nullptr) == !worn,
                            word_of(bare.kind));
        scene.first().minutes = 30;
        scene.first().most_minutes = 20;
        BOOST_CHECK(find(advise(*built_in_rules(), scene.state, scene.plan), "longer-than-directed"));
    }
}

// Of what is known, a question that is opened again is asked again.
BOOST_AUTO_TEST_CASE(a_rule_whose_fact_is_unknown_asks_for_it) {
    Scene scene;
    scene.also(permanent);
    for (const auto& [rule, question, forget] :
         {std::tuple<const char*, const char*, std::function<void(Scene&)>>{
              "pregnancy", "pregnant", [](S s) { s.answers().pregnant_or_breastfeeding.reset(); }},
          {"medication", "medicines", [](S s) { s.answers().takes_medication.reset(); }},
          {"patch-test-missing", "patch-tested", [](S s) { s.first().patch_tested.reset(); }},
          {"elasticity-failed", "Stretch a wet strand",
           [](S s) { std::erase_if(s.state.grades, [](const Graded& g) { return g.quality == "elasticity"; }); }},
          {"permanent-on-straightened", "chemical straightener",
           [](S s) { s.state.history.complete_since.reset(); }}}) {
        Scene unsure = scene;
        BOOST_CHECK(!find(advise(*built_in_rules(), unsure.state, unsure.plan), rule, FindingSort::check_first));
        forget(unsure);
        const Advice advice = advise(*built_in_rules(), unsure.state, unsure.plan);
        const Finding* finding = find(advice, rule, FindingSort::check_first);
        BOOST_REQUIRE_MESSAGE(finding, rule);
        const std::string sentence = sentence_of(*finding);
        BOOST_CHECK(sentence.starts_with("Check first: "));
        BOOST_CHECK_MESSAGE(sentence.find(question) != std::string::npos, sentence);
    }
}

BOOST_AUTO_TEST_SUITE_END()
