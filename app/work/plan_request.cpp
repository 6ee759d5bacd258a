// The request of a plan, read from JSON.
#include <QJsonArray>
#include <QJsonDocument>
#include <cmath>

#include "domain/words.h"
#include "work/errors.h"
#include "work/plan_json.h"

namespace kempt::work {

namespace {

// The first wrong member is kept; reading goes on with nothing, so that the code stays a plain list.
class Reader {
  public:
    Reader(const QJsonObject& object, const QString& where, std::optional<Error>& problem)
        : object_(object), where_(where), problem_(problem) {}
    ~Reader() {
        for (const QString& key : object_.keys())
            if (!known_.contains(key)) fail(key, QStringLiteral("is not known here"));
    }
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;

    void read(const char* name, std::optional<bool>& into) {
        const QJsonValue value = take(name);
        if (value.isBool())
            into = value.toBool();
        else if (!value.isNull())
            fail(QString::fromLatin1(name), QStringLiteral("is neither true nor false"));
    }
    void read(const char* name, bool& into) {
        std::optional<bool> value;
        read(name, value);
        into = value.value_or(into);
    }
    void read(const char* name, std::optional<double>& into) {
        const QJsonValue value = take(name);
        if (value.isDouble())
            into = value.toDouble();
        else if (!value.isNull())
            fail(QString::fromLatin1(name), QStringLiteral("is no number"));
    }
    void read(const char* name, double& into) {
        std::optional<double> value;
        read(name, value);
        into = value.value_or(into);
    }
    // Whole numbers of a few at the most: hands, passes, grades.
    void read(const char* name, std::optional<int>& into) {
        std::optional<double> value;
        read(name, value);
        if (value && (std::floor(*value) != *value || std::abs(*value) > 1000))
            fail(QString::fromLatin1(name), QStringLiteral("is no whole number of a few"));
        else if (value)
            into = static_cast<int>(*value);
    }
    void read(const char* name, int& into) {
        std::optional<int> value;
        read(name, value);
        into = value.value_or(into);
    }
    QString word(const char* name) {
        const QJsonValue value = take(name);
        if (!value.isNull() && !value.isString()) fail(QString::fromLatin1(name), QStringLiteral("is no text"));
        return value.toString();
    }
    void read(const char* name, std::string& into) { into = word(name).toStdString(); }
    void read(const char* name, std::optional<QDate>& into) {
        const QString text = word(name);
        if (text.isEmpty()) return;
        const QDate day = QDate::fromString(text, Qt::ISODate);
        if (!day.isValid()) return fail(QString::fromLatin1(name), QStringLiteral("is no day like 2026-03-14"));
        into = day;
    }
    void read(const char* name, std::optional<care::TestResult>& into) {
        const QString text = word(name);
        if (text == u"passed")
            into = care::TestResult::passed;
        else if (text == u"failed")
            into = care::TestResult::failed;
        else if (!text.isEmpty())
            fail(QString::fromLatin1(name), QStringLiteral("is neither \"passed\" nor \"failed\""));
    }
    void read(const char* name, std::optional<care::Strength>& into) {
        const QString text = word(name);
        if (text.isEmpty()) return;
        for (const care::Strength strength : {care::Strength::mild, care::Strength::regular, care::Strength::super})
            if (text.toStdString() == word_of(strength)) into = strength;
        if (!into) fail(QString::fromLatin1(name), QStringLiteral("is not \"mild\", \"regular\" or \"super\""));
    }
    // A section by another name would not be found in the record, and what was done there would not be heeded.
    void read_sections(const char* name, std::vector<std::string>& into) {
        for (const QJsonValue& value : list(name)) {
            const QString word = value.toString().trimmed().toLower();
            const auto view = view_from_word(word);
            const QString section = view ? word_of(*view) : word;
            if (!head_sections().contains(section))
                return fail(QString::fromLatin1(name), QStringLiteral("names '%1', which is no section of the head: %2")
                                                           .arg(word, head_sections().join(QStringLiteral(", "))));
            into.push_back(section.toStdString());
        }
    }
    QJsonArray list(const char* name) {
        const QJsonValue value = take(name);
        if (!value.isNull() && !value.isArray()) fail(QString::fromLatin1(name), QStringLiteral("is no list"));
        return value.toArray();
    }
    std::optional<QJsonObject> object(const char* name) {
        const QJsonValue value = take(name);
        if (value.isNull()) return std::nullopt;
        return object(value, QString::fromLatin1(name));
    }
    QJsonObject object(const QJsonValue& value, const QString& name) {
        if (!value.isObject()) fail(name, QStringLiteral("is no object"));
        return value.toObject();
    }
    void fail(const QString& name, const QString& what) {
        if (problem_) return;
        problem_ =
            invalid("plan-member", QStringLiteral("In the plan, \"%1%2\" %3.").arg(where_, name, what).toStdString(),
                    "Correct the file and try again.");
    }

  private:
    // null when it is left out
    QJsonValue take(const char* name) {
        known_.append(QString::fromLatin1(name));
        const QJsonValue value = object_.value(QString::fromLatin1(name));
        return value.isUndefined() ? QJsonValue(QJsonValue::Null) : value;
    }

    QJsonObject object_;
    QString where_;
    std::optional<Error>& problem_;
    QStringList known_;
};

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
