#include "work/plan_draft.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "book/client_store.h"
#include "book/setting_store.h"
#include "work/errors.h"
#include "work/plan_json.h"

namespace kempt::work {

namespace {

QString key_of(Id client) {
    return QStringLiteral("plan-of-client-%1").arg(client);
}

QString text(std::string_view words) {
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

// Members of values that are not set are left out.
class Writer {
  public:
    template <class T>
    void put(const char* name, const std::optional<T>& value) {
        if (value) put(name, *value);
    }
    void put(const char* name, bool value) { json[QLatin1String(name)] = value; }
    void put(const char* name, double value) { json[QLatin1String(name)] = value; }
    void put(const char* name, int value) { json[QLatin1String(name)] = value; }
    void put(const char* name, care::Strength value) { json[QLatin1String(name)] = text(word_of(value)); }
    void put(const char* name, care::TestResult value) {
        json[QLatin1String(name)] =
            value == care::TestResult::passed ? QStringLiteral("passed") : QStringLiteral("failed");
    }
    void put(const char* name, const std::vector<std::string>& words) {
        QJsonArray list;
        for (const std::string& word : words) list.append(QString::fromStdString(word));
        json[QLatin1String(name)] = list;
    }
    QJsonObject json;
};

QJsonObject json_of(const care::Setting& setting) {
    Writer out;
    out.put("strand_minutes", setting.strand_minutes);
    out.put("most_minutes", setting.most_minutes);
    out.put("hands", setting.hands);
    out.put("roots_minutes", setting.roots_minutes);
    out.put("ends_minutes", setting.ends_minutes);
    out.put("ends_porosity", setting.ends_porosity);
    QJsonArray sections;
    for (const care::SectionMinutes& section : setting.sections)
        sections.append(QJsonObject{{"name", QString::fromStdString(section.name)},
                                    {"roots", section.roots},
                                    {"mid_shaft", section.mid_shaft},
                                    {"ends", section.ends}});
    out.json["sections"] = sections;
    return out.json;
}

// As request_from_json reads it.
QJsonObject json_of(const PlannedItem& item) {
    const care::PlannedService& s = item.service;
    Writer out;
    out.json["kind"] = text(word_of(s.kind));
    out.put("from_mm", s.from_mm);
    out.put("to_mm", s.to_mm);
    out.put("new_growth_only", s.new_growth_only);
    out.put("sections", s.sections);
    out.put("strength", s.strength);
    out.put("minutes", s.minutes);
    out.put("most_minutes", s.most_minutes);
    out.put("temperature_c", s.temperature_c);
    out.put("passes", s.passes);
    out.put("at_home", s.at_home);
    out.put("touches_scalp", s.touches_scalp);
    out.put("releases_formaldehyde", s.releases_formaldehyde);
    out.put("data_sheet", s.data_sheet);
    out.put("hair_is_wet", s.hair_is_wet);
    out.put("heat_protectant", s.heat_protectant);
    out.put("strand_tested", s.strand_tested);
    out.put("strand_test", s.strand_test);
    out.put("patch_tested", s.patch_tested);
    out.put("patch_test", s.patch_test);
    out.put("patch_test_hours", s.patch_test_hours);
    out.put("tight", s.tight);
    out.put("adds_hair", s.adds_hair);
    if (item.setting) out.json["timeline"] = json_of(*item.setting);
    return out.json;
}

}  // namespace

Result<std::optional<PlanDraft>> plan_draft_of(Book& book, Id client) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    const auto kept = store::get_setting(book, key_of(client));
    if (!kept) return kept.error();
    if (!kept.value()) return std::optional<PlanDraft>();
    const QJsonObject json = QJsonDocument::fromJson(kept.value()->toUtf8()).object();
    PlanDraft draft;
    draft.day = QDate::fromString(json["day"].toString(), Qt::ISODate);
    const auto request = request_from_json(QJsonDocument(json["request"].toObject()).toJson());
    if (!request || !draft.day.isValid()) return std::optional<PlanDraft>();
    const QJsonArray rounds = json["in_rounds"].toArray();
    for (std::size_t i = 0; i < request->services.size(); ++i)
        draft.items.push_back({request->services[i], rounds.at(static_cast<int>(i)).toBool()});
    return std::optional(draft);
}

Status keep_plan_draft(Book& book, Id client, const PlanDraft& draft) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    if (draft.items.empty()) return forget_plan_draft(book, client);
    if (!draft.day.isValid())
        return invalid("date-missing", "The day of what is planned is no date.", "Give it as YYYY-MM-DD.");
    QJsonArray services, rounds;
    for (const DraftItem& one : draft.items) {
        services.append(json_of(one.item));
        rounds.append(one.in_rounds);
    }
    const QJsonObject json{{"day", draft.day.toString(Qt::ISODate)},
                           {"in_rounds", rounds},
                           {"request", QJsonObject{{"services", services}}}};
    return store::put_setting(book, key_of(client),
                              QString::fromUtf8(QJsonDocument(json).toJson(QJsonDocument::Compact)));
}

Status forget_plan_draft(Book& book, Id client) {
    return store::erase_setting(book, key_of(client));
}

}  // namespace kempt::work
