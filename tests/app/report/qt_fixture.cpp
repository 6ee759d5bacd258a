// One QGuiApplication for the whole executable, without a display.
#include <QGuiApplication>
#include <boost/test/unit_test.hpp>
#include <memory>

namespace {

struct QtFixture {
    QtFixture() {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        app = std::make_unique<QGuiApplication>(count, arguments);
    }
    int count = 1;
    char name[12] = "test_report";
    char* arguments[2] = {name, nullptr};
    std::unique_ptr<QGuiApplication> app;
};

}  // namespace

BOOST_TEST_GLOBAL_FIXTURE(QtFixture);
