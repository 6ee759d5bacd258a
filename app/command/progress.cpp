#include "command/commands.h"
#include "command/options.h"
#include "domain/measure_units.h"
#include "domain/words.h"
#include "work/open_book.h"
#include "work/progress_json.h"
#include "work/progress_of.h"

namespace kempt::command {

namespace {

QStringList lines_of(const work::Series& series) {
    QStringList lines{q("%1, %2").arg(word_of(series.view), title_of_reading(series.reading))};
    for (const work::VisitPoint& visit : series.visits) {
        const QString what = visit.mean
                                 ? q("%1, %2").arg(with_interval(*visit.mean, visit.low, visit.high, series.unit),
                                                   counted(static_cast<qsizetype>(visit.shots.size()), "shot"))
                                 : visit.not_comparable.join(u' ');
        lines.append(q("  %1  %2").arg(visit.date.toString(Qt::ISODate), what));
    }
    if (const work::PairVerdict* pair = series.first_to_last())
        lines.append(q("  First to last: %1. %2")
                         .arg(work::word_of(pair->judgement.verdict), QString::fromStdString(pair->judgement.reason)));
    lines.append(q("  ") + series.trend_text);
    if (series.target) {
        if (series.target->share) lines.append(q("  Way to the target: %1").arg(whole_percent(*series.target->share)));
        lines.append(q("  ") + series.target->forecast_text);
    }
    return lines;
}

Result<Answer> progress(const Arguments& arguments, const Progress& tell_on) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::ProgressOptions options;
    options.client = arguments.id(q("client"));
    if (arguments.has(q("view"))) options.view = arguments.view(q("view"));
    if (arguments.has(q("reading"))) options.reading = arguments.text(q("reading"));
    const auto compared = work::progress_of(**book, options, tell_on);
    if (!compared) return compared.error();
    Answer answer;
    answer.json = work::json_of_progress(compared.value());
    for (const work::Series& series : compared->series) answer.lines += lines_of(series);
    if (compared->series.empty()) answer.lines.append(q("No photo of this client has been measured yet."));
    return answer;
}

}  // namespace

Command progress_command() {
    return {q("progress"),
            q("what the visits say: verdicts, trend, way to the target"),
            false,
            {{q(""),
              q("Improved or worse only beyond the smallest change that the repeat shots can show."),
              {book_taken()},
              {client_option(), may("view", Type::view, "VIEW", "this view only"),
               may("reading", Type::text, "READING", "this reading only", all_reading_names())},
              progress}}};
}

}  // namespace kempt::command
