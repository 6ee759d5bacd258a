// Kinds of service and their families.
#include <boost/test/unit_test.hpp>

#include "care/words.h"

using namespace kempt::care;

BOOST_AUTO_TEST_SUITE(words)

BOOST_AUTO_TEST_CASE(every_kind_is_found_again_by_its_word) {
    for (int i = 0; i < kind_count; ++i) {
        const Kind kind = static_cast<Kind>(i);
        BOOST_REQUIRE(kind_from_word(word_of(kind)));
        BOOST_CHECK(*kind_from_word(word_of(kind)) == kind);
    }
    BOOST_CHECK(!kind_from_word("relaxer of the moon"));
}

BOOST_AUTO_TEST_CASE(hydroxide_and_thioglycolate_share_no_kind) {
    const Family *hydroxide = find_family("hydroxide"), *thio = find_family("thioglycolate");
    BOOST_REQUIRE(hydroxide && thio);
    for (const Kind kind : hydroxide->kinds) BOOST_CHECK(!belongs(*thio, kind));
    for (const Kind kind : thio->kinds) BOOST_CHECK(belongs(*find_family("texture"), kind));
    BOOST_CHECK(!find_family("moonlight"));
}

BOOST_AUTO_TEST_SUITE_END()
