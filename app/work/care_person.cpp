// The client herself, her days and her answers as the care rules ask for them.
#include <map>

#include "domain/words.h"
#include "work/care_freshness.h"
#include "work/care_parts.h"
#include "work/care_put.h"
#include "work/keep_care.h"

namespace kempt::work {

namespace {

// Whole and part years between two days, a birthday to the next being one year.
double years_between(QDate from, QDate to) {
    int whole = to.year() - from.year();
    if (from.addYears(whole) > to) --whole;
    const QDate birthday = from.addYears(whole);
    return whole +
           static_cast<double>(birthday.daysTo(to)) / static_cast<double>(birthday.daysTo(from.addYears(whole + 1)));
}

std::optional<double> age_of(const ClientProfile& profile, QDate today) {
    if (profile.born && *profile.born <= today) return years_between(*profile.born, today);
    // Who says "15" may be nearly 16: the least that she can be by now.
    if (profile.age_years && *profile.age_on <= today)
        return *profile.age_years + years_between(*profile.age_on, today);
    return std::nullopt;
}

std::optional<care::Texture> texture_of(const QString& word) {
    for (const auto texture : {care::Texture::fine, care::Texture::medium, care::Texture::coarse})
        if (word.toStdString() == care::word_of(texture)) return texture;
    return std::nullopt;
}

care::HairGroup group_of(const QString& word) {
    if (word == u"african") return care::HairGroup::african;
    if (word == u"asian") return care::HairGroup::asian;
    if (word == u"caucasian") return care::HairGroup::caucasian;
    return care::HairGroup::unknown;
}

// The rules mean tools that touch the hair; wet hair is what a dryer is for.
std::optional<bool> on_wet_hair(const HeatTool& tool) {
    return is_dryer(tool.name) ? std::optional(false) : tool.on_wet_hair;
}

care::DailyLife daily_of(const DailyLife& told) {
    care::DailyLife daily;
    daily.minutes_a_day = told.minutes_a_day;
    if (told.heat) {
        daily.heat.emplace();
        for (const HeatTool& tool : *told.heat)
            daily.heat->push_back({tool.name.toStdString(), tool.temperature_c, tool.times_a_week, on_wet_hair(tool)});
    }
    daily.swims_a_week = told.swims_a_week;
    daily.washes_a_week = told.washes_a_week;
    daily.hard_water = told.hard_water;
    daily.covers_hair = told.covers_hair;
    daily.tight_headwear = told.tight_headwear;
    daily.covers_at_night = told.covers_at_night;
    daily.tight_styles = told.tight_styles;
    daily.style_hurts = told.style_hurts;
    daily.added_hair = told.added_hair;
    daily.style_weeks = told.style_weeks;
    return daily;
}

using YesOrNo = std::optional<bool> care::Answers::*;
using Count = std::optional<double> care::ClientState::*;

const std::map<QString, Count>& count_members() {
    static const std::map<QString, Count> members = {
        {QStringLiteral("pull_test_hairs"), &care::ClientState::pull_test_hairs},
        {QStringLiteral("comb_count"), &care::ClientState::comb_count},
    };
    return members;
}

void take(const ClientAnswer& answer, care::ClientState& state) {
    if (const auto member = answer_members().find(answer.question); member != answer_members().end())
        state.answers.*(member->second) = answer.value != 0;
    else if (const auto count = count_members().find(answer.question); count != count_members().end())
        state.*(count->second) = answer.value;
}

}  // namespace

const std::map<QString, YesOrNo>& answer_members() {
    using A = care::Answers;
    static const std::map<QString, YesOrNo> members = {
        {QStringLiteral("pregnant_or_breastfeeding"), &A::pregnant_or_breastfeeding},
        {QStringLiteral("takes_medication"), &A::takes_medication},
        {QStringLiteral("scratched_scalp"), &A::scratched_scalp},
        {QStringLiteral("washed_scalp"), &A::washed_scalp},
        {QStringLiteral("scalp_wound"), &A::scalp_wound},
        {QStringLiteral("scalp_pain"), &A::scalp_pain},
        {QStringLiteral("scalp_pustules"), &A::scalp_pustules},
        {QStringLiteral("tingling_with_thinning"), &A::tingling_with_thinning},
        {QStringLiteral("face_rash"), &A::face_rash},
        {QStringLiteral("sudden_loss"), &A::sudden_loss},
        {QStringLiteral("patchy_loss"), &A::patchy_loss},
        {QStringLiteral("smooth_edges"), &A::smooth_edges},
        {QStringLiteral("eyebrow_loss"), &A::eyebrow_loss},
        {QStringLiteral("loss_goes_on"), &A::loss_goes_on},
        {QStringLiteral("swelling_or_breathing"), &A::swelling_or_breathing},
        {QStringLiteral("dye_reaction"), &A::dye_reaction},
        {QStringLiteral("black_henna_reaction"), &A::black_henna_reaction},
        {QStringLiteral("straightener_burn"), &A::straightener_burn},
        {QStringLiteral("treatment_reaction"), &A::treatment_reaction},
        {QStringLiteral("uneven_colour"), &A::uneven_colour},
    };
    return members;
}

void put_profile(const ClientProfile& profile, QDate today, care::ClientState& state) {
    state.age_years = age_of(profile, today);
    state.texture = texture_of(profile.texture);
    state.group = group_of(profile.hair_group);
}

void put_daily(const std::optional<DailyLife>& told, QDate today, care::ClientState& state) {
    if (told && told->date.daysTo(today) <= daily_life_days) state.daily = daily_of(*told);
}

Status add_person(Book& book, Id client, QDate today, care::ClientState& state) {
    const auto profile = profile_of(book, client);
    if (!profile) return profile.error();
    put_profile(profile.value(), today, state);
    const auto life = daily_life_of(book, client, today);
    if (!life) return life.error();
    put_daily(life.value(), today, state);
    const auto answers = answers_of(book, client, today);
    if (!answers) return answers.error();
    for (const CurrentAnswer& current : answers.value())
        if (current.fresh) take(current.answer, state);
    return Done{};
}

}  // namespace kempt::work
