#include "command/commands.h"
#include "command/options.h"
#include "work/open_book.h"
#include "work/print_card.h"

namespace kempt::command {

namespace {

Result<Answer> print(const Arguments& arguments, const Progress&) {
    work::PrintCardOptions options;
    options.kind = arguments.text(q("kind")) == u"sheet" ? card::Kind::sheet : card::Kind::card;
    options.ground = arguments.text(q("ground")) == u"blue" ? card::Ground::blue : card::Ground::white;
    if (arguments.has(q("ground")) && options.kind != card::Kind::sheet)
        return usage_error(q("Option '--ground' goes with '--kind sheet'."));
    options.paper = arguments.text(q("paper")) == u"letter" ? card::Paper::letter : card::Paper::a4;
    options.png = arguments.has(q("png"));
    options.px_per_mm = arguments.number(q("px-per-mm"), options.px_per_mm);
    options.printer_scale = arguments.number(q("printer-scale"), 1);
    if (!(options.printer_scale >= 0.9 && options.printer_scale <= 1.1))
        return usage_error(q("'--printer-scale' must lie between 0.9 and 1.1."));
    options.path = arguments.text(q("out"));
    if (arguments.has(q("px-per-mm")) && !options.png) return usage_error(q("Option '--px-per-mm' goes with '--png'."));
    if (options.png && !(options.px_per_mm >= 4 && options.px_per_mm <= 60))
        return usage_error(q("'--px-per-mm' must lie between 4 and 60."));
    if (const Status status = work::print_card(options); !status) return status.error();
    const QString kind = arguments.text(q("kind"));
    return Answer{
        {{"kind", kind}, {"file", options.path}, {"format", options.png ? q("png") : q("pdf")}},
        {q("Wrote the gauge %1 to %2. Print at 100 % and measure the 50 mm check line.").arg(kind, options.path)},
        {}};
}

Result<Answer> correct(const Arguments& arguments, const Progress&) {
    const auto scale = work::printer_scale_from(arguments.number(q("check-line")));
    if (!scale) return scale.error();
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    if (const Status status = work::set_printer_scale(**book, scale.value()); !status) return status.error();
    return Answer{{{"printer_scale", scale.value()}},
                  {q("Kept: this printer's cards are %1 % of their size.").arg(100 * scale.value(), 0, 'f', 1)},
                  {}};
}

}  // namespace

// `kempt card --kind ...` prints; with a book and --check-line it keeps the printer's correction.
Command card_command() {
    const auto run = [](const Arguments& arguments, const Progress& progress) -> Result<Answer> {
        if (arguments.has(q("check-line"))) {
            if (arguments.book().isEmpty()) return usage_error(q("BOOK is missing: the correction is kept in a book."));
            return correct(arguments, progress);
        }
        if (!arguments.book().isEmpty()) return usage_error(q("Option '--check-line' is missing."));
        if (!arguments.has(q("kind"))) return usage_error(q("Option '--kind' is missing."));
        if (!arguments.has(q("out"))) return usage_error(q("Option '--out' is missing."));
        return print(arguments, progress);
    };
    return {q("card"),
            q("print the gauge card or sheet; keep a printer's correction"),
            true,
            {{q(""),
              q("PDF at 1:1, or PNG. With BOOK and --check-line: keep the measured length of the 50 mm check line."),
              {{q("BOOK"), false, true}},
              {may("kind", Type::text, "KIND", "what to print", {q("card"), q("sheet")}),
               may("paper", Type::text, "PAPER", "page of the PDF, and of the sheet (a4)", {q("letter"), q("a4")}),
               may("ground", Type::text, "GROUND", "of the sheet: white, or blue for the ends of grey hair (white)",
                   {q("white"), q("blue")}),
               flag("png", "PNG instead of PDF"), may("px-per-mm", Type::number, "N", "scale of the PNG, 4 to 60 (12)"),
               may("printer-scale", Type::number, "S", "length of an earlier print's check line / 50 mm (1)"),
               may("out", Type::text, "FILE", "where to write"),
               may("check-line", Type::number, "MM", "what the ruler shows, 45 to 55")},
              run}}};
}

}  // namespace kempt::command
