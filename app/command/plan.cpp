#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QSet>
#include <algorithm>
#include <cmath>

#include "command/commands.h"
#include "command/options.h"
#include "command/plan_file.h"
#include "domain/clock.h"
#include "domain/words.h"
#include "work/care_state_json.h"
#include "work/keep_records.h"
#include "work/open_book.h"
#include "work/plan_json.h"
#include "work/plan_words.h"

namespace kempt::command {

namespace {

// Options that say something of the planned service, by the member of the request that they become.
struct Said {
    Option option;
    const char* member;
    bool timeline = false;
};

const QVector<Said>& all_said() {
    const QStringList yes_no{q("yes"), q("no")}, test{q("passed"), q("failed"), q("none")};
    static const QVector<Said> said{
        {may("from-mm", Type::number, "MM", "where it begins, from the scalp (0)"), "from_mm"},
        {may("to-mm", Type::number, "MM", "where it ends (the ends)"), "to_mm"},
        {flag("new-growth", "a retouch: from the scalp to the line of demarcation"), "new_growth_only"},
        {may("sections", Type::text, "A,B", "head sections, with commas (the whole head)"), "sections"},
        {may("strength", Type::text, "S", "of the product", {q("mild"), q("regular"), q("super")}), "strength"},
        {may("minutes", Type::number, "N", "planned"), "minutes"},
        {may("most-minutes", Type::number, "N", "the most that the maker's directions allow"), "most_minutes"},
        {may("temperature-c", Type::number, "C", "of the iron, degrees Celsius"), "temperature_c"},
        {may("passes", Type::number, "N", "of the iron"), "passes"},
        {may("strand-test", Type::text, "R", "its result", test), "strand_test"},
        {may("patch-test", Type::text, "R", "its result, with this product", test), "patch_test"},
        {may("patch-test-hours", Type::number, "N", "since it was put on"), "patch_test_hours"},
        {may("at-home", Type::text, "A", "done at home", yes_no), "at_home"},
        {may("touches-scalp", Type::text, "A", "the product reaches the scalp", yes_no), "touches_scalp"},
        {may("formaldehyde", Type::text, "A", "the product releases it", yes_no), "releases_formaldehyde"},
        {may("data-sheet", Type::text, "A", "the safety data sheet is at hand", yes_no), "data_sheet"},
        {may("wet", Type::text, "A", "the hair is wet", yes_no), "hair_is_wet"},
        {may("protectant", Type::text, "A", "a heat protectant is used", yes_no), "heat_protectant"},
        {may("tight", Type::text, "A", "the style pulls", yes_no), "tight"},
        {may("adds-hair", Type::text, "A", "the style adds hair", yes_no), "adds_hair"},
        {may("strand-minutes", Type::number, "N", "that a strand of the mid-shaft needed"), "strand_minutes", true},
        {may("roots-minutes", Type::number, "N", "that a strand at the roots needed"), "roots_minutes", true},
        {may("ends-minutes", Type::number, "N", "that a strand at the ends needed"), "ends_minutes", true},
        {may("hands", Type::number, "N", "people who apply it (1)"), "hands", true},
        {may("apply", Type::text, "LIST", "minutes to apply: 'nape=0.5/1/0.5,crown=...', roots/mid-shaft/ends"),
         "sections", true}};
    return said;
}

QJsonArray listed(const QString& text) {
    QJsonArray list;
    for (const QString& one : text.split(u',', Qt::SkipEmptyParts)) list.append(one.trimmed());
    return list;
}

// "nape=0.5/1/0.5"
Result<QJsonArray> minutes_to_apply(const QString& text) {
    QJsonArray sections;
    for (const QString& one : text.split(u',', Qt::SkipEmptyParts)) {
        const QStringList sides = one.split(u'='), minutes = sides.last().split(u'/');
        if (sides.size() != 2 || minutes.size() != 3)
            return usage_error(q("'%1' after '--apply' is not like nape=0.5/1/0.5.").arg(one));
        QJsonObject section{{"name", sides.first().trimmed()}};
        const char* parts[] = {"roots", "mid_shaft", "ends"};
        for (int i = 0; i < 3; ++i) {
            bool number = false;
            const double value = minutes[i].toDouble(&number);
            if (!number || !std::isfinite(value) || value < 0)
                return usage_error(q("'%1' after '--apply' is not like nape=0.5/1/0.5.").arg(one));
            section[QLatin1String(parts[i])] = value;
        }
        sections.append(section);
    }
    return sections;
}

Status add_said(const Arguments& arguments, const Said& said, QJsonObject& service, QJsonObject& timeline) {
    const QString& name = said.option.name;
    if (!arguments.has(name)) return Done{};
    QJsonObject& into = said.timeline ? timeline : service;
    const QString member = QLatin1String(said.member), text = arguments.text(name);
    if (name == u"apply") {
        const auto sections = minutes_to_apply(text);
        if (!sections) return sections.error();
        into[member] = sections.value();
    } else if (name == u"sections") {
        into[member] = listed(text);
    } else if (name == u"strand-test" || name == u"patch-test") {
        if (text == u"none")
            into[name == u"strand-test" ? "strand_tested" : "patch_tested"] = false;
        else
            into[member] = text;
    } else if (said.option.type == Type::number) {
        into[member] = arguments.number(name);
    } else if (said.option.type == Type::flag || said.option.choices.contains(q("yes"))) {
        into[member] = text == u"yes";
    } else {
        into[member] = text;
    }
    return Done{};
}

// An order of work is for the sections that the service goes on, each once, by the names of the record. What is wrong
// with it, if anything.
std::optional<QString> fault_of(work::PlannedItem& item) {
    if (!item.setting) return std::nullopt;
    const std::vector<std::string>& planned = item.service.sections;
    QSet<QString> seen;
    for (care::SectionMinutes& section : item.setting->sections) {
        const QString given = QString::fromStdString(section.name).simplified().toLower();
        const qsizetype end = given.indexOf(u", ");  // "nape, first half"
        const QString head = given.left(end).trimmed(), half = end < 0 ? QString() : given.mid(end);
        const auto view = view_from_word(head);
        const QString name = view ? word_of(*view) : head;
        if (!head_sections().contains(name))
            return q("The order of work names '%1', which is no section of the head: %2.")
                .arg(head, head_sections().join(q(", ")));
        if (!planned.empty() && std::find(planned.begin(), planned.end(), name.toStdString()) == planned.end())
            return q("The order of work names '%1', on which the service does not go.").arg(name);
        // A whole section and a half of it are the same hair twice, too.
        if (seen.contains(name + half) || seen.contains(name) || (half.isEmpty() && seen.contains(name + u'/')))
            return q("The order of work names '%1' twice.").arg(name + half);
        seen.insert(name + half);
        if (!half.isEmpty()) seen.insert(name + u'/');
        for (const double minutes : {section.roots, section.mid_shaft, section.ends})
            if (!std::isfinite(minutes) || minutes < 0)
                return q("The minutes of '%1' in the order of work are no time.").arg(name);
        section.name = (name + half).toStdString();
    }
    // Hair that the service goes on and the order leaves out would be done in no time at all.
    if (!item.setting->sections.empty())
        for (const std::string& section : planned) {
            const QString name = QString::fromStdString(section);
            if (!seen.contains(name) && !seen.contains(name + u'/'))
                return q("The service goes on '%1', which the order of work leaves out.").arg(name);
        }
    return std::nullopt;
}

// From the options; the same reader as for a file checks it.
Result<work::PlanRequest> request_of(const Arguments& arguments) {
    if (arguments.has(q("request"))) {
        for (const Said& said : all_said())
            if (arguments.has(said.option.name) || arguments.has(q("service")))
                return usage_error(q("Say the services in the file or as options, not both."));
        return plan_from_file(arguments.text(q("request")));
    }
    QJsonObject service, timeline;
    for (const Said& said : all_said()) {
        if (arguments.has(said.option.name) && !arguments.has(q("service")))
            return usage_error(q("Option '--%1' goes with '--service'.").arg(said.option.name));
        if (const Status status = add_said(arguments, said, service, timeline); !status) return status.error();
    }
    if (!arguments.has(q("service"))) return work::PlanRequest{};
    service["kind"] = arguments.text(q("service"));
    if (!timeline.isEmpty()) service["timeline"] = timeline;
    auto request = work::request_from_json(QJsonDocument(QJsonObject{{"services", QJsonArray{service}}}).toJson());
    if (!request) return usage_error(QString::fromStdString(request.error().what));
    for (work::PlannedItem& item : request->services)
        if (const auto fault = fault_of(item)) return usage_error(*fault);
    // Numbers that cannot be, whatever is known of the client.
    care::Plan wanted;
    for (const work::PlannedItem& item : request->services) wanted.services.push_back(item.service);
    if (const Status possible = care::checked(care::ClientState(), wanted); !possible)
        return usage_error(QString::fromStdString(possible.error().what));
    return request;
}

// The file whole, when it is one and no larger than these are.
Result<QByteArray> small_file(const QString& path, const char* what) {
    constexpr qint64 most = 1 << 20;  // a plan or a state is a few kilobytes
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > most)
        return Error{ErrorKind::io, "plan-unread", q("The %1 '%2' could not be read.").arg(q(what), path).toStdString(),
                     "", "Give a JSON file below 1 MiB."};
    return file.readAll();
}

Answer answer_of(const work::CarePlan& planned, const care::ClientState& state, const QString& who) {
    Answer answer;
    answer.json = work::json_of_plan(planned);
    answer.json["state"] = work::json_of_state(state);
    answer.lines.append(q("%1, %2").arg(who, work::text_of(planned.today)));
    answer.lines += work::lines_of(planned);
    return answer;
}

// Without a book: what is known of the client is in the file.
Result<Answer> plan_of_state(const Arguments& arguments, work::PlanRequest request, const Progress& progress) {
    if (!arguments.rest().isEmpty() || arguments.has(q("client")))
        return usage_error(q("A plan is made from a book and a client, or from a state, not from both."));
    const auto bytes = small_file(arguments.text(q("state")), "state");
    if (!bytes) return bytes.error();
    auto state = work::state_from_json(*bytes, work::care_day(Clock().today()));
    if (!state) return state.error();
    if (arguments.has(q("today"))) state->today = work::care_day(arguments.day(q("today")));
    if (arguments.has(q("dye-day"))) request.dye_day = arguments.day(q("dye-day"));
    const auto planned = work::plan_care(*state, request, progress);
    if (!planned) return planned.error();
    return answer_of(*planned, *state, q("A client of no book"));
}

Result<Answer> plan(const Arguments& arguments, const Progress& progress) {
    auto request = request_of(arguments);
    if (!request) return request.error();
    if (arguments.has(q("state"))) return plan_of_state(arguments, std::move(*request), progress);
    if (arguments.rest().isEmpty() || !arguments.has(q("client")))
        return usage_error(q("Say the book and the client, or a state without them."));
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::PlanOptions options{arguments.id(q("client")),
                              arguments.has(q("today")) ? arguments.day(q("today")) : Clock().today(),
                              std::move(*request)};
    if (arguments.has(q("dye-day"))) options.request.dye_day = arguments.day(q("dye-day"));
    const auto client = work::client_of(**book, options.client);
    if (!client) return client.error();
    const auto state = work::care_state(**book, options.client, options.today);
    if (!state) return state.error();
    const auto whole = work::completed(**book, options);
    if (!whole) return whole.error();
    const auto planned = work::plan_care(*state, *whole, progress);
    if (!planned) return planned.error();
    Answer answer = answer_of(*planned, *state, client->name.simplified());
    answer.json["client"] = QJsonObject{{"id", client->id}, {"name", client->name}};
    return answer;
}

}  // namespace

Result<work::PlanRequest> plan_from_file(const QString& path) {
    const auto bytes = small_file(path, "plan");
    if (!bytes) return bytes.error();
    auto request = work::request_from_json(*bytes);
    if (!request) return request.error();
    for (work::PlannedItem& item : request->services)
        if (const auto fault = fault_of(item))
            return Error{ErrorKind::invalid, "plan-member", fault->toStdString(), "",
                         "Correct the file and try again."};
    return request;
}

Command plan_command() {
    QVector<Option> options{may("client", Type::id, "N", "number of the client"),
                            may("service", Type::text, "KIND", "what is planned (nothing)", service_kinds())};
    for (const Said& said : all_said()) options.append(said.option);
    options += {may("state", Type::text, "FILE.json",
                    "what is known of the client, in place of book and client: as"
                    " \"state\" of --json"),
                may("request", Type::text, "FILE.json", "planned services as JSON, for more than one"),
                may("dye-day", Type::day, "DAY", "of a dye that is planned, for its patch test"),
                may("today", Type::day, "DAY", "the day of the plan (today)")};
    return {q("plan"),
            q("what speaks against a service, what to check first, in which order and when"),
            false,
            {{q(""),
              q("Says what speaks against a service and what to check first; nothing clears one."),
              {{q("BOOK"), false, true}},
              options,
              plan}}};
}

}  // namespace kempt::command
