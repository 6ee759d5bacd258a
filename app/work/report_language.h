// The language in which a client reads her report. Kept among the book's settings, erased with the client.
#pragma once

#include <optional>

#include "core/result.h"
#include "domain/records.h"
#include "speech/language.h"
#include "work/book_fwd.h"

namespace kempt::work {

// Nothing while nobody has chosen one for her. Errors: io.
[[nodiscard]] Result<std::optional<speech::Language>> report_language_of(Book& book, Id client);
// Errors: not_found (client), io.
[[nodiscard]] Status keep_report_language(Book& book, Id client, speech::Language language);

// As if nobody had chosen one.
[[nodiscard]] Status forget_report_language(Book& book, Id client);

// "report-language-of-client-": the setting's name, before the client's number.
[[nodiscard]] QString report_language_key();

}  // namespace kempt::work
