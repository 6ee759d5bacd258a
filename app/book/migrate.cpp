#include "book/migrate.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "book/dialect.h"
#include "book/files.h"

// Resources of a static library are linked in only when somebody asks for them, from outside any namespace.
static void load_schema() {
    Q_INIT_RESOURCE(book_schema);
}

namespace kempt::sql {

namespace {

// Statements end at a semicolon outside quotes and comments.
QStringList statements_of(const QString& text) {
    QStringList list;
    QString now;
    bool quoted = false;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        if (!quoted && c == '-' && i + 1 < text.size() && text[i + 1] == '-') {
            while (i < text.size() && text[i] != '\n') ++i;
            now += '\n';
            continue;
        }
        if (c == '\'') quoted = !quoted;
        if (!quoted && c == ';') {
            list << now.trimmed();
            now.clear();
        } else {
            now += c;
        }
    }
    list << now.trimmed();
    list.removeAll(QString());
    return list;
}

Status apply(Connection& connection, const Step& step) {
    for (const QString& statement : statements_of(dialect::spelled(step.text)))
        if (auto done = change(connection, statement); !done) return done.error();
    auto noted = change(connection, "INSERT INTO schema_step (version, name, kempt) VALUES (?, ?, ?)",
                        values(step.version, step.name, KEMPT_VERSION));
    if (!noted) return noted.error();
    return dialect::stamp(connection, step.version);
}

Status apply_all(Connection& connection, const QVector<Step>& steps) {
    // Asked again inside the transaction: another window may have done it meanwhile.
    auto version = dialect::version(connection);
    if (!version) return version.error();
    for (const Step& step : steps) {
        if (step.version <= *version) continue;
        if (Status done = apply(connection, step); !done) {
            Error error = done.error();
            error.what = "The book could not be brought to version " + std::to_string(step.version) + ". " + error.what;
            return error;
        }
    }
    auto problems = dialect::link_problems(connection);
    if (!problems) return problems.error();
    if (!problems->isEmpty())
        return Error{ErrorKind::damaged, "book-damaged",
                     "The book could not be brought up to date: " + problems->first().toStdString(), nothing_changed,
                     "Bring back the latest backup."};
    return Done{};
}

}  // namespace

const QVector<Step>& shipped_steps() {
    static const QVector<Step> steps = [] {
        load_schema();
        QVector<Step> list;
        const QDir folder(":/kempt/book/schema");
        for (const QString& name : folder.entryList({"*.sql"}, QDir::Files, QDir::Name)) {
            QFile file(folder.filePath(name));
            if (!file.open(QIODevice::ReadOnly)) continue;
            list.append({name.left(3).toInt(), QFileInfo(name).completeBaseName(), QString::fromUtf8(file.readAll())});
        }
        return list;
    }();
    return steps;
}

Result<QString> bring_up_to_date(Connection& connection, const QVector<Step>& steps) {
    auto version = dialect::version(connection);
    if (!version) return version.error();
    if (steps.isEmpty() || *version >= steps.last().version) return QString();

    QString copy;
    if (*version > 0) {
        copy = files::free_name(connection.path + QStringLiteral(".version-%1").arg(*version));
        Status copied = dialect::copy_into(connection, copy);
        if (copied) copied = files::sync(copy);
        if (!copied) {
            QFile::remove(copy);
            Error error = copied.error();
            error.what = "The older book needs an upgrade, and a copy could not be kept beside it first. " + error.what;
            error.kept = nothing_changed;
            return error;
        }
    }
    // Steps that rebuild a table would otherwise erase by cascade what points at it.
    if (Status off = dialect::enforce_links(connection, false); !off) return off.error();
    Status done = Done{};
    if (auto begun = change(connection, dialect::begin_writing()); !begun)
        done = begun.error();
    else {
        done = apply_all(connection, steps);
        if (done) {
            if (auto committed = change(connection, "COMMIT"); !committed) done = committed.error();
        }
        if (!done) (void)change(connection, "ROLLBACK");
    }
    if (Status on = dialect::enforce_links(connection, true); !on && done) done = on.error();
    if (!done) {
        Error error = done.error();
        error.kept = nothing_changed;
        if (!copy.isEmpty()) QFile::remove(copy);  // the book itself still is what the copy holds
        return error;
    }
    (void)dialect::clear_log(connection);  // so that the file's own header tells the version; later when others read
    return copy;
}

}  // namespace kempt::sql
