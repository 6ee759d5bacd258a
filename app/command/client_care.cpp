// `kempt client profile|daily|answers`: what a client told. Without anything to set they show what stands.
#include "command/client_care.h"

#include <cmath>

#include "command/options.h"
#include "command/records_json.h"
#include "domain/clock.h"
#include "domain/service_words.h"
#include "domain/words.h"
#include "work/care_json.h"
#include "work/face_keep.h"
#include "work/keep_care.h"
#include "work/open_book.h"
#include "work/report_language.h"

namespace kempt::command {

namespace {

QDate day_of(const Arguments& arguments) {
    return arguments.has(q("date")) ? arguments.day(q("date")) : Clock().today();
}

QStringList lines_or(const QStringList& lines, const char* none) {
    return lines.isEmpty() ? QStringList{q(none)} : lines;
}

// ---- profile
// What she wishes of what leaves the book: her face in its pictures, the language of her report.
Status wishes(Book& book, Id client, const Arguments& arguments, Answer& answer) {
    if (arguments.has(q("face"))) {
        const QString word = arguments.text(q("face"));
        const work::FaceWish wish = word == u"hidden"  ? work::FaceWish::hidden
                                    : word == u"shown" ? work::FaceWish::shown
                                                       : work::FaceWish::not_asked;
        if (const Status kept = work::keep_face_wish(book, client, wish); !kept) return kept.error();
    }
    if (arguments.has(q("report-language"))) {
        const auto language = speech::language_of(arguments.text(q("report-language")));
        const Status kept =
            language ? work::keep_report_language(book, client, *language) : work::forget_report_language(book, client);
        if (!kept) return kept.error();
    }
    const auto wish = work::face_wish_of(book, client);
    if (!wish) return wish.error();
    const auto language = work::report_language_of(book, client);
    if (!language) return language.error();
    answer.json["face"] = *wish == work::FaceWish::hidden  ? q("hidden")
                          : *wish == work::FaceWish::shown ? q("shown")
                                                           : q("unknown");
    answer.json["report_language"] =
        language.value() ? QJsonValue(speech::code_of(**language)) : QJsonValue(QJsonValue::Null);
    if (*wish == work::FaceWish::hidden) answer.lines.append(q("does not want her face seen"));
    if (*wish == work::FaceWish::shown) answer.lines.append(q("agrees that her face is seen"));
    if (language.value()) answer.lines.append(q("report in %1").arg(speech::code_of(**language)));
    return Done{};
}

Result<Answer> profile(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    auto profile = work::profile_of(**book, arguments.id(q("client")));
    if (!profile) return profile.error();
    const ClientProfile before = profile.value();
    // A figure goes with the day on which it was told.
    const auto number = [&](const char* name, std::optional<double>& to, std::optional<QDate>& on) {
        if (!arguments.has(q(name))) return;
        to = arguments.number_or_none(q(name));
        on = to ? std::optional(day_of(arguments)) : std::nullopt;
    };
    if (arguments.has(q("born"))) profile->born = arguments.day_or_none(q("born"));
    number("age", profile->age_years, profile->age_on);
    number("length-mm", profile->length_mm, profile->length_on);
    if (arguments.has(q("texture")))
        profile->texture = arguments.is_none(q("texture")) ? QString() : arguments.text(q("texture"));
    if (arguments.has(q("hair-group"))) {
        const QString group = arguments.text(q("hair-group"));
        profile->hair_group = group == u"unknown" ? QString() : group;
    }
    if (arguments.has(q("history"))) {
        const QString history = arguments.text(q("history"));
        const QDate from = QDate::fromString(history, Qt::ISODate);
        if (!from.isValid() && history != u"whole" && history != u"unknown")
            return usage_error(
                q("'%1' after '--history' must be whole, unknown or a date like 2026-03-14.").arg(history));
        profile->whole_history = history == u"whole";
        profile->history_from = from.isValid() ? std::optional(from) : std::nullopt;
        profile->history_told_on = history == u"unknown" ? std::nullopt : std::optional(day_of(arguments));
    }
    if (!(profile.value() == before))
        if (const Status kept = work::set_profile(**book, profile.value()); !kept) return said_wrong(kept.error());
    Answer answer{work::json_of_profile(profile.value()), details_of(profile.value()), {}};
    if (const Status told = wishes(**book, profile->client, arguments, answer); !told) return told.error();
    answer.lines = lines_or(answer.lines, "Nothing is known of her yet.");
    return answer;
}

// ---- daily life
// "flat iron,180,3,dry; dryer,,4": name, degrees, times a week, wet or dry; parts may be left empty; "none": no heat.
Result<QVector<HeatTool>> heat_from(const QString& words) {
    QVector<HeatTool> tools;
    if (words.trimmed() == u"none") return tools;
    for (const QString& part : words.split(u';', Qt::SkipEmptyParts)) {
        const QStringList fields = part.split(u',');
        const auto field = [&](int i) { return i < fields.size() ? fields[i].trimmed() : QString(); };
        HeatTool tool;
        tool.name = field(0);
        bool hot = true, often = false;
        if (!field(1).isEmpty()) tool.temperature_c = field(1).toDouble(&hot);
        tool.times_a_week = field(2).toDouble(&often);
        const QString wet = field(3);
        if (tool.name.isEmpty() || !hot || !often || fields.size() > 4 ||
            (!wet.isEmpty() && wet != u"wet" && wet != u"dry"))
            return usage_error(
                q("'%1' after '--heat' must be like \"flat iron,180,3,dry\": name, degrees C, times a week, "
                  "wet or dry.")
                    .arg(part.trimmed()));
        if (!wet.isEmpty()) tool.on_wet_hair = wet == u"wet";
        tools.append(tool);
    }
    return tools;
}

Status take(const Arguments& arguments, DailyLife& life) {
    const auto number = [&](const char* name, std::optional<double>& to) {
        if (arguments.has(q(name))) to = arguments.number_or_none(q(name));
    };
    number("minutes-a-day", life.minutes_a_day);
    number("swims-a-week", life.swims_a_week);
    number("washes-a-week", life.washes_a_week);
    number("style-weeks", life.style_weeks);
    take_flag(arguments, "hard-water", life.hard_water);
    take_flag(arguments, "covers-hair", life.covers_hair);
    take_flag(arguments, "tight-headwear", life.tight_headwear);
    take_flag(arguments, "covers-at-night", life.covers_at_night);
    take_flag(arguments, "tight-styles", life.tight_styles);
    take_flag(arguments, "style-hurts", life.style_hurts);
    take_flag(arguments, "added-hair", life.added_hair);
    if (!arguments.has(q("heat"))) return Done{};
    auto heat = heat_from(arguments.text(q("heat")));
    if (!heat) return heat.error();
    life.heat = std::move(heat).value();
    return Done{};
}

Result<Answer> daily(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id client = arguments.id(q("client"));
    const QDate date = day_of(arguments);
    const auto newest = work::daily_life_of(**book, client, date);
    if (!newest) return newest.error();
    // What she told before and did not take back goes on, while it still counts.
    DailyLife before = work::fresh_life(*newest, date).value_or(DailyLife());
    before.client = client;
    DailyLife life = before;
    if (const Status good = take(arguments, life); !good) return good.error();
    if (life == before) {
        DailyLife stands = newest->value_or(before);
        const QStringList lines = lines_or(details_of(stands), "Nothing is known of her days yet.");
        return Answer{work::json_of_daily_life(stands), lines, {}};
    }
    life.id = 0;
    life.date = date;
    const auto kept = work::set_daily_life(**book, life);
    if (!kept) return said_wrong(kept.error());
    return Answer{work::json_of_daily_life(kept.value()), details_of(kept.value()), {}};
}

// ---- answers
Status add_answers(const Arguments& arguments, const char* option, int value, QVector<ClientAnswer>& to) {
    for (const QString& word : arguments.text(q(option)).split(u',', Qt::SkipEmptyParts)) {
        const QString name = word.trimmed().replace(u'-', u'_');
        const Question* question = find_question(name);
        if (!question || question->sort != AnswerSort::yes_or_no) {
            QStringList known;
            for (const Question& one : questions())
                if (one.sort == AnswerSort::yes_or_no) known.append(one.name);
            return usage_error(
                q("'%1' after '--%2' must be one of: %3.").arg(name, q(option), known.join(QStringLiteral(", "))));
        }
        for (const ClientAnswer& other : to)
            if (other.question == name && other.value != value)
                return usage_error(q("'%1' cannot be answered with yes and no.").arg(name));
        to.append({0, arguments.id(q("client")), day_of(arguments), name, value});
    }
    return Done{};
}

Status add_count(const Arguments& arguments, const char* option, const char* question, QVector<ClientAnswer>& to) {
    if (!arguments.has(q(option))) return Done{};
    const double hairs = arguments.number(q(option));
    if (hairs != std::floor(hairs) || hairs < 0 || hairs > 1000)
        return usage_error(q("'--%1' must be a number of hairs from 0 to 1000.").arg(q(option)));
    to.append({0, arguments.id(q("client")), day_of(arguments), q(question), static_cast<int>(hairs)});
    return Done{};
}

Result<Answer> answers(const Arguments& arguments, const Progress&) {
    QVector<ClientAnswer> given;
    for (const Status& status : {add_answers(arguments, "yes", 1, given), add_answers(arguments, "no", 0, given),
                                 add_count(arguments, "pull-test-hairs", "pull_test_hairs", given),
                                 add_count(arguments, "comb-count", "comb_count", given)})
        if (!status) return status.error();
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    if (!given.isEmpty())
        if (const auto kept = work::set_answers(**book, given); !kept) return said_wrong(kept.error());
    const auto current = work::answers_of(**book, arguments.id(q("client")), day_of(arguments));
    if (!current) return current.error();
    return Answer{{{"answers", answers_json(current.value())}},
                  lines_or(answer_lines(current.value()), "Nothing was asked yet."),
                  {}};
}

Result<Answer> forget(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("answer"));
    if (const Status status = work::erase_answer(**book, id); !status) return status.error();
    return Answer{{{"erased", id}}, {q("Erased answer %1.").arg(id)}, {}};
}

Option date_option(const char* help) {
    return may("date", Type::day, "DAY", help);
}

}  // namespace

QJsonArray answers_json(const QVector<work::CurrentAnswer>& answers) {
    QJsonArray array;
    for (const work::CurrentAnswer& current : answers) {
        QJsonObject object = work::json_of_answer(current.answer);
        object["counts"] = current.fresh;
        array.append(object);
    }
    return array;
}

QStringList answer_lines(const QVector<work::CurrentAnswer>& answers) {
    QStringList lines;
    for (const work::CurrentAnswer& current : answers) {
        const ClientAnswer& answer = current.answer;
        lines.append(q("%1  %2  %3: %4%5")
                         .arg(answer.id)
                         .arg(answer.date.toString(Qt::ISODate), QString(answer.question).replace(u'_', u' '),
                              work::words_of(answer), current.fresh ? QString() : q(" (too old to count: ask again)")));
    }
    return lines;
}

QVector<Verb> care_verbs() {
    return {
        {q("profile"),
         q("Age, length, texture, hair group, how far back the record is complete, her wishes of what leaves the book; "
           "shows, or sets what is given."),
         {book_taken()},
         {client_option(), may_none("born", Type::day, "DAY", "birthday, where she told it"),
          may_none("age", Type::number, "YEARS", "else the age that she told"),
          may_none("length-mm", Type::number, "MM", "longest hair, stretched straight"),
          may_none("texture", Type::text, "TEXTURE", "of single hairs", hair_textures()),
          may("hair-group", Type::text, "GROUP", "as studies of growth name it",
              hair_groups() + QStringList{q("unknown")}),
          may("face", Type::text, "WISH", "in pictures that leave: unknown hides the eyes that are found",
              {q("hidden"), q("shown"), q("unknown")}),
          may("report-language", Type::text, "LANGUAGE", "of her report; none: not chosen",
              {q("en"), q("es"), q("none")}),
          may("history", Type::text, "DAY", "every service since then is in the record; or whole, unknown"),
          date_option("day of age, length and history (today)")},
         profile},
        {q("daily"),
         q("What the hair goes through from day to day; shows, or sets what is given."),
         {book_taken()},
         {client_option(), date_option("day on which she told it (today)"),
          may_none("minutes-a-day", Type::number, "MIN", "she has for her hair"),
          may("heat", Type::text, "LIST",
              "\"flat iron,180,3,dry; dryer,,4\": name, C, times a week, wet or dry; or none"),
          may_none("washes-a-week", Type::number, "N", "how often it is washed"),
          may_none("swims-a-week", Type::number, "N", "how often she swims"),
          may_none("hard-water", Type::text, "YES", "at home", yes_or_no()),
          may_none("covers-hair", Type::text, "YES", "by day", yes_or_no()),
          may_none("tight-headwear", Type::text, "YES", "presses on the hairline", yes_or_no()),
          may_none("covers-at-night", Type::text, "YES", "a smooth cover at night", yes_or_no()),
          may_none("tight-styles", Type::text, "YES", "braids, buns, tails, weaves or locks that pull", yes_or_no()),
          may_none("style-hurts", Type::text, "YES", "while it is put in or afterwards", yes_or_no()),
          may_none("added-hair", Type::text, "YES", "in braids, locks or weaves", yes_or_no()),
          may_none("style-weeks", Type::number, "N", "how long one style stays in")},
         daily},
        {q("answers"),
         q("To the questions before a service; shows, or keeps what is given. --yes and --no take names with commas."),
         {book_taken()},
         {client_option(), date_option("day on which she was asked (today)"),
          may("yes", Type::text, "LIST", "questions answered with yes"),
          may("no", Type::text, "LIST", "questions answered with no"),
          may("pull-test-hairs", Type::number, "N", "hairs that one gentle pull brought"),
          may("comb-count", Type::number, "N", "hairs of a 60 second combing")},
         answers},
        {q("forget"),
         q("One answer that was written down wrongly."),
         {book_taken()},
         {needed("answer", Type::id, "N", "number of the answer")},
         forget}};
}

}  // namespace kempt::command
