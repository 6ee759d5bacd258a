#define BOOST_TEST_MODULE kempt
#include <boost/test/unit_test.hpp>
