#include <unistd.h>

#include <QCoreApplication>
#include <QGuiApplication>
#include <QJsonDocument>
#include <cstdio>
#include <exception>
#include <memory>

#include "command/command.h"
#include "command/quiet.h"

namespace kempt::command {

namespace {

enum Exit { done = 0, failed = 1, wrong_usage = 2 };

void print(std::FILE* to, const QByteArray& bytes) {
    std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), to);
}

// One line, whatever the sentence holds.
int complain(const QString& sentence, Exit status) {
    print(stderr, "kempt: " + sentence.simplified().toUtf8() + '\n');
    return status;
}

const Verb* find_verb(const Command& command, const QStringList& words) {
    if (command.verbs.size() == 1 && command.verbs.front().name.isEmpty()) return &command.verbs.front();
    for (const Verb& verb : command.verbs)
        if (!words.isEmpty() && verb.name == words.front()) return &verb;
    return nullptr;
}

QString verbs_of(const Command& command) {
    QStringList names;
    for (const Verb& verb : command.verbs) names.append(verb.name);
    return names.join(QStringLiteral(", "));
}

// Steps are shown to a person at a terminal and to nobody else.
Progress progress_on_terminal() {
    if (isatty(STDERR_FILENO) == 0) return {};
    return [](double fraction, std::string_view step) {
        std::fprintf(stderr, "\r\033[K%3.0f %% %.*s", 100 * fraction, static_cast<int>(step.size()), step.data());
        if (fraction >= 1) std::fprintf(stderr, "\r\033[K");
        return Go::on;
    };
}

int show(const Answer& answer, bool as_json) {
    if (as_json)
        print(stdout, QJsonDocument(answer.json).toJson());
    else
        for (const QString& line : answer.lines) print(stdout, line.toUtf8() + '\n');
    if (std::fflush(stdout) != 0) return complain(QStringLiteral("The output could not be written."), failed);
    return answer.failure.isEmpty() ? done : complain(answer.failure, failed);
}

constexpr qsizetype longest_usage = 200;  // characters: about two lines of a terminal

int run_command(const Command& command, QStringList words) {
    const Verb* verb = find_verb(command, words);
    if (!verb)
        return complain(QStringLiteral("kempt %1 takes one of: %2.").arg(command.name, verbs_of(command)), wrong_usage);
    if (!verb->name.isEmpty()) words.removeFirst();
    const QVector<Option> options =
        verb->options +
        QVector<Option>{{QStringLiteral("json"), Type::flag, {}, QStringLiteral("one JSON object"), false, {}}};
    const auto arguments = Arguments::parse(words, verb->taken, options);
    // A usage of several lines would hide what was wrong.
    QString usage = QStringLiteral(" Usage: ") + usage_of(command, *verb);
    if (usage.size() > longest_usage) usage = QStringLiteral(" kempt help %1 lists what it takes.").arg(command.name);
    if (!arguments) return complain(QString::fromStdString(arguments.error().what) + usage, wrong_usage);
    const auto answer = verb->run(arguments.value(), progress_on_terminal());
    if (answer) return show(answer.value(), arguments->has(QStringLiteral("json")));
    const Error& error = answer.error();
    if (error.code == "usage") return complain(QString::fromStdString(error.what) + usage, wrong_usage);
    return complain(QString::fromStdString(error.sentence()), failed);
}

bool asks_for_help(const QStringList& words) {
    return words.contains(QStringLiteral("--help")) || words.contains(QStringLiteral("-h"));
}

}  // namespace

int run(int argc, char** argv) {
    try {
        quiet_libraries();
        const QString name = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString();
        const Command* command = find_command(name == u"--version" ? QStringLiteral("version") : name);
        // Painting text needs a QGuiApplication; everything else starts without one, and faster.
        std::unique_ptr<QCoreApplication> application;
        if (command && command->paints) {
            if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
            application = std::make_unique<QGuiApplication>(argc, argv);
        } else {
            application = std::make_unique<QCoreApplication>(argc, argv);
        }
        QCoreApplication::setApplicationName(QStringLiteral("kempt"));
        const QStringList words = QCoreApplication::arguments().mid(2);
        if (name.isEmpty())
            return complain(QStringLiteral("Say what to do; kempt help lists the commands."), wrong_usage);
        if (name == u"--help" || name == u"-h") return show({{}, help_of_all(), {}}, false);
        if (!command)
            return complain(QStringLiteral("There is no command '%1'; kempt help lists them.").arg(name), wrong_usage);
        if (asks_for_help(words)) return show({{}, help_of(*command), {}}, false);
        return run_command(*command, words);
    } catch (const std::exception& thrown) {
        return complain(QStringLiteral("The work broke off unexpectedly (%1). Nothing half done was kept.")
                            .arg(QString::fromUtf8(thrown.what())),
                        failed);
    } catch (...) {
        return complain(QStringLiteral("The work broke off unexpectedly. Nothing half done was kept."), failed);
    }
}

}  // namespace kempt::command
