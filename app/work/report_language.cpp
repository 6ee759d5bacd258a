#include "work/report_language.h"

#include "book/client_store.h"
#include "book/setting_store.h"

namespace kempt::work {

QString report_language_key() {
    return QStringLiteral("report-language-of-client-");
}

Result<std::optional<speech::Language>> report_language_of(Book& book, Id client) {
    const auto kept = store::get_setting(book, report_language_key() + QString::number(client));
    if (!kept) return kept.error();
    return speech::language_of(kept->value_or(QString()));
}

Status keep_report_language(Book& book, Id client, speech::Language language) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    return store::put_setting(book, report_language_key() + QString::number(client), speech::code_of(language));
}

Status forget_report_language(Book& book, Id client) {
    return store::erase_setting(book, report_language_key() + QString::number(client));
}

}  // namespace kempt::work
