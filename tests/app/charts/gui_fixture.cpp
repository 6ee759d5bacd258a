// Fonts need an application; one for the whole test programme, without a display.
#include <QGuiApplication>
#include <boost/test/unit_test.hpp>
#include <memory>

namespace {

struct Gui {
    Gui() {
        if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
        application = std::make_unique<QGuiApplication>(count, arguments);
    }
    int count = 1;
    char name[12] = "test_charts";
    char* arguments[2] = {name, nullptr};
    std::unique_ptr<QGuiApplication> application;
};

}  // namespace

BOOST_TEST_GLOBAL_FIXTURE(Gui);
