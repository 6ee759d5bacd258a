#include "command/command.h"

#include <algorithm>

#include "command/commands.h"
#include "command/options.h"

namespace kempt::command {

namespace {

QString option_usage(const Option& option) {
    QString words = QStringLiteral("--") + option.name;
    if (option.type != Type::flag)
        words += u' ' + (option.choices.isEmpty() ? option.value : option.choices.join(u'|')) +
                 (option.or_none ? QStringLiteral("|none") : QString());
    return option.required ? words : u'[' + words + u']';
}

QString padded(const QString& words, int width) {
    return words.leftJustified(width, u' ') + u' ';
}

}  // namespace

const QVector<Command>& all_commands() {
    static const QVector<Command> commands{
        card_command(),   measure_command(), demo_command(),    client_command(), visit_command(),    photo_command(),
        marks_command(),  grade_command(),   service_command(), target_command(), progress_command(), plan_command(),
        due_command(),    compare_command(), report_command(),  check_command(),  backup_command(),   restore_command(),
        export_command(), desk_command(),    help_command(),    version_command()};
    return commands;
}

const Command* find_command(const QString& name) {
    for (const Command& command : all_commands())
        if (command.name == name) return &command;
    return nullptr;
}

QString usage_of(const Command& command, const Verb& verb) {
    QStringList words{QStringLiteral("kempt"), command.name};
    if (!verb.name.isEmpty()) words.append(verb.name);
    for (const Taken& taken : verb.taken) {
        const QString name = taken.name + (taken.many ? QStringLiteral("...") : QString());
        words.append(taken.optional ? u'[' + name + u']' : name);
    }
    for (const Option& option : verb.options) words.append(option_usage(option));
    return words.join(u' ');
}

QStringList help_of(const Command& command) {
    QStringList lines{command.summary};
    for (const Verb& verb : command.verbs) {
        lines.append(QString());
        lines.append(usage_of(command, verb));
        if (!verb.summary.isEmpty()) lines.append(QStringLiteral("  ") + verb.summary);
        for (const Option& option : verb.options)
            lines.append(QStringLiteral("  ") + padded(QStringLiteral("--") + option.name, 18) + option.help);
    }
    return lines;
}

QStringList help_of_all() {
    QStringList lines{QStringLiteral("kempt COMMAND ...   dated, calibrated photographs of recovering hair"),
                      QString()};
    for (const Command& command : all_commands())
        lines.append(QStringLiteral("  ") + padded(command.name, 10) + command.summary);
    lines.append(QString());
    lines.append(
        QStringLiteral("kempt help COMMAND tells more. Exit status: 0 done, 1 could not be done, 2 wrong usage."));
    return lines;
}

Error said_wrong(const Error& error) {
    // The others of this kind lie between the value and what the book holds.
    static const QStringList codes{q("number-impossible"), q("not-a-number"),    q("word-unknown"),
                                   q("unknown-kind"),      q("unknown-zone"),    q("grade-value"),
                                   q("target-value"),      q("service-stretch"), q("day-to-come")};
    if (error.kind != ErrorKind::invalid || !codes.contains(QString::fromStdString(error.code))) return error;
    return usage_error(QString::fromStdString(error.what + " " + error.remedy));
}

Error usage_error(const QString& what) {
    return {ErrorKind::invalid, "usage", what.toStdString(), "", ""};
}

}  // namespace kempt::command
