#include "desk/plan/answering.h"

#include <QHash>
#include <QObject>
#include <algorithm>

#include "care/facts.h"
#include "desk/plan/plan_words.h"
#include "domain/words.h"
#include "work/keep_care.h"

namespace kempt::desk {
namespace {

using Habit = std::optional<bool> DailyLife::*;
using HabitNumber = std::optional<double> DailyLife::*;

Habit habit_of(const QString& name) {
    static const QHash<QString, Habit> all{
        {"hard_water", &DailyLife::hard_water},           {"covers_hair", &DailyLife::covers_hair},
        {"tight_headwear", &DailyLife::tight_headwear},   {"covers_at_night", &DailyLife::covers_at_night},
        {"wears_tight_styles", &DailyLife::tight_styles}, {"style_hurts", &DailyLife::style_hurts},
        {"wears_added_hair", &DailyLife::added_hair}};
    return all.value(name, nullptr);
}

HabitNumber habit_number_of(const QString& name) {
    static const QHash<QString, HabitNumber> all{{"minutes_a_day", &DailyLife::minutes_a_day},
                                                 {"swims_a_week", &DailyLife::swims_a_week},
                                                 {"washes_a_week", &DailyLife::washes_a_week},
                                                 {"style_weeks", &DailyLife::style_weeks}};
    return all.value(name, nullptr);
}

std::optional<PlanField> field_of(const QString& name) {
    static const QHash<QString, PlanField> all{{"strength", PlanField::strength},
                                               {"minutes_share", PlanField::minutes},
                                               {"temperature_c", PlanField::temperature},
                                               {"passes", PlanField::passes},
                                               {"at_home", PlanField::at_home},
                                               {"touches_scalp", PlanField::scalp},
                                               {"releases_formaldehyde", PlanField::formaldehyde},
                                               {"data_sheet", PlanField::data_sheet},
                                               {"hair_is_wet", PlanField::wet},
                                               {"heat_protectant", PlanField::protectant},
                                               {"strand_tested", PlanField::strand_test},
                                               {"strand_test_failed", PlanField::strand_test},
                                               {"patch_tested", PlanField::patch_test},
                                               {"patch_test_failed", PlanField::patch_test},
                                               {"patch_test_hours", PlanField::patch_test},
                                               {"tight", PlanField::tight},
                                               {"adds_hair", PlanField::adds_hair}};
    const auto found = all.find(name);
    return found == all.end() ? std::nullopt : std::optional(*found);
}

Answering answering_of(const care::Fact& fact, const QString& sentence) {
    Answering out{AnswerBy::elsewhere, qs(fact.name), sentence, {}};
    if (const Question* question = find_question(out.name))
        out.by = question->sort == AnswerSort::count ? AnswerBy::count : AnswerBy::yes_no;
    else if (habit_of(out.name) != nullptr)
        out.by = AnswerBy::habit;
    else if (habit_number_of(out.name) != nullptr)
        out.by = AnswerBy::habit_number;
    else if (out.name == u"age_years")
        out.by = AnswerBy::age;
    else if (out.name == u"length_mm")
        out.by = AnswerBy::length;
    else if (out.name == u"texture")
        out.by = AnswerBy::texture;
    else if (const auto field = field_of(out.name)) {
        out.by = AnswerBy::field;
        out.field = field;
    } else if (fact.takes_family) {
        out.by = AnswerBy::record;
    } else if (grade_qualities().contains(out.name)) {
        out.by = AnswerBy::grade;
    }
    return out;
}

QHash<QString, Answering> every_sentence() {
    QHash<QString, Answering> all;
    for (const care::Fact& fact : care::facts()) {
        if (fact.question.empty()) continue;
        if (!fact.takes_family) {
            const QString sentence = QString::fromStdString(care::question_of(fact, nullptr));
            if (!all.contains(sentence)) all.insert(sentence, answering_of(fact, sentence));
            continue;
        }
        for (const care::Family& family : care::families()) {
            const QString sentence = QString::fromStdString(care::question_of(fact, &family));
            all.insert(sentence, answering_of(fact, sentence));
        }
    }
    return all;
}

Status keep_habit(Book& book, Id client, QDate today, const QString& name, const std::optional<double>& value) {
    const auto told = work::daily_life_of(book, client, today);
    if (!told) return told.error();
    DailyLife life = work::fresh_life(*told, today).value_or(DailyLife{});
    life.id = 0;
    life.client = client;
    life.date = today;
    if (const Habit habit = habit_of(name))
        life.*habit = value ? std::optional(*value != 0) : std::nullopt;
    else
        life.*habit_number_of(name) = value;
    if (const auto kept = work::set_daily_life(book, life); !kept) return kept.error();
    return Done{};
}

Status keep_profile(Book& book, Id client, QDate today, const Answering& answering,
                    const std::optional<double>& value) {
    auto profile = work::profile_of(book, client);
    if (!profile) return profile.error();
    profile->client = client;
    if (answering.by == AnswerBy::age) {
        profile->age_years = value;
        profile->age_on = value ? std::optional(today) : std::nullopt;
    } else if (answering.by == AnswerBy::length) {
        profile->length_mm = value;
        profile->length_on = value ? std::optional(today) : std::nullopt;
    } else {
        profile->texture = value ? hair_textures().value(static_cast<int>(*value)) : QString();
    }
    return work::set_profile(book, *profile);
}

Status keep_told(Book& book, Id client, QDate today, const QString& name, const std::optional<double>& value) {
    if (value) {
        const auto kept = work::correct_answer(book, {0, client, today, name, static_cast<int>(*value)});
        return kept ? Status(Done{}) : Status(kept.error());
    }
    const auto all = work::list_answers(book, client);
    if (!all) return all.error();
    for (const ClientAnswer& one : *all)
        if (one.question == name && still_counts(one, today))
            if (const Status erased = work::erase_answer(book, one.id); !erased) return erased;
    return Done{};
}

const work::CurrentAnswer* told(const QString& name, const PlanData& data) {
    const auto found = std::find_if(data.answers.begin(), data.answers.end(), [&](const work::CurrentAnswer& one) {
        return one.answer.question == name && one.fresh;
    });
    return found == data.answers.end() ? nullptr : &*found;
}

}  // namespace

std::optional<Answering> answering_of(const QString& sentence) {
    static const QHash<QString, Answering> all = every_sentence();
    const auto found = all.find(sentence);
    return found == all.end() ? std::nullopt : std::optional(*found);
}

std::optional<Answering> answering_of_fact(const QString& name) {
    const care::Fact* fact = care::find_fact(name.toStdString());
    if (fact == nullptr || fact->takes_family) return std::nullopt;
    return answering_of(*fact, QString::fromStdString(care::question_of(*fact, nullptr)));
}

std::optional<double> known_answer(const Answering& answering, const PlanData& data) {
    const auto yes = [](const std::optional<bool>& value) {
        return value ? std::optional(*value ? 1.0 : 0.0) : std::nullopt;
    };
    const std::optional<DailyLife> life = work::fresh_life(data.life, data.today);
    switch (answering.by) {
        case AnswerBy::yes_no:
        case AnswerBy::count:
            if (const work::CurrentAnswer* one = told(answering.name, data)) return one->answer.value;
            return std::nullopt;
        case AnswerBy::habit:
            return life ? yes((*life).*habit_of(answering.name)) : std::nullopt;
        case AnswerBy::habit_number:
            return life ? (*life).*habit_number_of(answering.name) : std::nullopt;
        case AnswerBy::age:
            return data.state.age_years;
        case AnswerBy::length:
            return data.state.length_mm;
        case AnswerBy::texture:
            return data.state.texture ? std::optional(static_cast<double>(*data.state.texture)) : std::nullopt;
        case AnswerBy::field:
        case AnswerBy::record:
        case AnswerBy::grade:
        case AnswerBy::elsewhere:
            break;
    }
    return std::nullopt;
}

std::optional<QDate> kept_for_good(const Answering& answering, const PlanData& data) {
    const Question* question = find_question(answering.name);
    const work::CurrentAnswer* one = told(answering.name, data);
    if (question == nullptr || question->lasting != Lasting::yes_for_good || one == nullptr) return std::nullopt;
    if (one->answer.value == 0 || one->answer.date == data.today) return std::nullopt;
    return one->answer.date;
}

Status keep_answer(Book& book, Id client, QDate today, const Answering& answering, const std::optional<double>& value) {
    switch (answering.by) {
        case AnswerBy::yes_no:
        case AnswerBy::count:
            return keep_told(book, client, today, answering.name, value);
        case AnswerBy::habit:
        case AnswerBy::habit_number:
            return keep_habit(book, client, today, answering.name, value);
        case AnswerBy::age:
        case AnswerBy::length:
        case AnswerBy::texture:
            return keep_profile(book, client, today, answering, value);
        case AnswerBy::field:
        case AnswerBy::record:
        case AnswerBy::grade:
        case AnswerBy::elsewhere:
            break;
    }
    return Done{};
}

AnswerRange range_of(const Answering& answering) {
    if (answering.by == AnswerBy::age) return {120, QObject::tr("years")};
    if (answering.name == u"pull_test_hairs") return {60, QObject::tr("hairs")};
    if (answering.name == u"comb_count") return {500, QObject::tr("hairs")};
    if (answering.name == u"minutes_a_day") return {600, QObject::tr("min a day")};
    if (answering.name == u"style_weeks") return {104, QObject::tr("weeks")};
    return {21, QObject::tr("times a week")};
}

}  // namespace kempt::desk
