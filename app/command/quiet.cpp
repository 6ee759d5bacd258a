#include "command/quiet.h"

#include <QString>
#include <QtGlobal>
#include <cstdio>
#include <opencv2/core.hpp>
#include <opencv2/core/utils/logger.hpp>

namespace kempt::command {

void quiet_libraries() {
    if (qEnvironmentVariableIsSet("KEMPT_DEBUG")) return;
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
        if (type == QtFatalMsg) std::fprintf(stderr, "kempt: %s\n", qUtf8Printable(text));  // Qt ends the program
    });
    cv::utils::logging::setLogLevel(cv::utils::logging::LOG_LEVEL_SILENT);
    cv::redirectError([](int, const char*, const char*, const char*, int, void*) { return 0; });
}

}  // namespace kempt::command
