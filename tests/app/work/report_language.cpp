// The language that a client reads: kept in the book without a table of its own, gone with her.
#include "work/report_language.h"

#include "app/work/temporary_book.h"
#include "book/setting_store.h"
#include "work/keep_records.h"

using namespace kempt;
using speech::Language;
using tests::TemporaryBook;

BOOST_AUTO_TEST_SUITE(report_language)

BOOST_AUTO_TEST_CASE(each_client_has_her_own_and_none_before_one_was_chosen) {
    TemporaryBook in;
    Client other;
    other.name = QStringLiteral("Marisol Vera");
    other.since = QDate(2026, 2, 2);
    other = TemporaryBook::required(work::add_client(*in.book, other));
    BOOST_TEST(!TemporaryBook::required(work::report_language_of(*in.book, other.id)).has_value());
    BOOST_TEST(work::keep_report_language(*in.book, other.id, Language::spanish).ok());
    BOOST_TEST((TemporaryBook::required(work::report_language_of(*in.book, other.id)) == Language::spanish));
    BOOST_TEST(!TemporaryBook::required(work::report_language_of(*in.book, in.client.id)).has_value());
    BOOST_TEST(work::keep_report_language(*in.book, other.id, Language::english).ok());
    BOOST_TEST((TemporaryBook::required(work::report_language_of(*in.book, other.id)) == Language::english));
    BOOST_TEST(work::forget_report_language(*in.book, other.id).ok());
    BOOST_TEST(!TemporaryBook::required(work::report_language_of(*in.book, other.id)).has_value());
    const Status nobody = work::keep_report_language(*in.book, 4711, Language::spanish);
    BOOST_REQUIRE(!nobody.ok());
    BOOST_TEST((nobody.error().kind == ErrorKind::not_found));
}

BOOST_AUTO_TEST_CASE(nothing_of_it_stays_when_the_client_is_erased) {
    TemporaryBook in;
    BOOST_TEST(work::keep_report_language(*in.book, in.client.id, Language::spanish).ok());
    BOOST_TEST(work::erase_client(*in.book, in.client.id).ok());
    const auto settings = TemporaryBook::required(store::list_settings(*in.book));
    for (auto it = settings.keyBegin(); it != settings.keyEnd(); ++it)
        BOOST_TEST(!it->startsWith(work::report_language_key()), it->toStdString());
}

BOOST_AUTO_TEST_SUITE_END()
