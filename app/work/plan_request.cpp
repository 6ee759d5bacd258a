// The request of a plan, read from JSON.
#include <QJsonArray>
#include <QJsonDocument>
#include <cmath>

#include "domain/words.h"
#include "work/errors.h"
#include "work/plan_json.h"
#include "work/plan_reader.h"

namespace kempt::work {

namespace {

care::Setting setting_of(const QJsonObject& json, const QString& where, std::optional<Error>& problem) {
    care::Setting setting;
    Reader reader(json, where, problem);
    reader.read("strand_minutes", setting.strand_minutes);
    reader.read("most_minutes", setting.most_minutes);
    reader.read("hands", setting.hands);
    reader.read("roots_minutes", setting.roots_minutes);
    reader.read("ends_minutes", setting.ends_minutes);
    reader.read("ends_porosity", setting.ends_porosity);
    for (const QJsonValue& value : reader.list("sections")) {
        care::SectionMinutes section;
        Reader within(reader.object(value, QStringLiteral("sections")), where + QStringLiteral("sections."), problem);
        within.read("name", section.name);
        within.read("roots", section.roots);
        within.read("mid_shaft", section.mid_shaft);
        within.read("ends", section.ends);
        setting.sections.push_back(section);
    }
    return setting;
}

PlannedItem item_of(const QJsonObject& json, const QString& where, std::optional<Error>& problem) {
    PlannedItem item;
    care::PlannedService& service = item.service;
    Reader reader(json, where, problem);
    const QString word = reader.word("kind");
    if (const auto kind = care::kind_from_word(word.toStdString()))
        service.kind = *kind;
    else
        reader.fail(QStringLiteral("kind"), QStringLiteral("is no known kind of service: '%1'").arg(word));
    reader.read("from_mm", service.from_mm);
    reader.read("to_mm", service.to_mm);
    reader.read("new_growth_only", service.new_growth_only);
    reader.read_sections("sections", service.sections);
    reader.read("strength", service.strength);
    reader.read("minutes", service.minutes);
    reader.read("most_minutes", service.most_minutes);
    reader.read("temperature_c", service.temperature_c);
    reader.read("passes", service.passes);
    reader.read("strand_tested", service.strand_tested);
    reader.read("strand_test", service.strand_test);
    reader.read("patch_tested", service.patch_tested);
    reader.read("patch_test", service.patch_test);
    reader.read("patch_test_hours", service.patch_test_hours);
    reader.read("at_home", service.at_home);
    reader.read("touches_scalp", service.touches_scalp);
    reader.read("releases_formaldehyde", service.releases_formaldehyde);
    reader.read("data_sheet", service.data_sheet);
    reader.read("hair_is_wet", service.hair_is_wet);
    reader.read("heat_protectant", service.heat_protectant);
    reader.read("tight", service.tight);
    reader.read("adds_hair", service.adds_hair);
    if (const auto timeline = reader.object("timeline"))
        item.setting = setting_of(*timeline, where + QStringLiteral("timeline."), problem);
    // A result says that there was a test.
    if (service.strand_test) service.strand_tested = true;
    if (service.patch_test) service.patch_tested = true;
    return item;
}

}  // namespace

Result<PlanRequest> request_from_json(const QByteArray& json) {
    QJsonParseError parsing;
    const QJsonDocument document = QJsonDocument::fromJson(json, &parsing);
    if (parsing.error != QJsonParseError::NoError || !document.isObject())
        return invalid("plan-no-json",
                       QStringLiteral("The plan is no JSON object (%1).").arg(parsing.errorString()).toStdString(),
                       "Correct the file and try again.");
    PlanRequest request;
    std::optional<Error> problem;
    {
        Reader reader(document.object(), QString(), problem);
        reader.read("photographed", request.photographed);
        reader.read("dye_day", request.dye_day);
        for (const QJsonValue& value : reader.list("services"))
            request.services.push_back(
                item_of(reader.object(value, QStringLiteral("services")), QStringLiteral("services."), problem));
    }
    if (problem) return *problem;
    return request;
}

}  // namespace kempt::work
