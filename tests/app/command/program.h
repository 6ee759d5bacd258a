// Runs the built `kempt` as a script would.
#pragma once

#include <QCoreApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QStringList>
#include <QTemporaryDir>
#include <boost/test/unit_test.hpp>

#include "app/work/card_photo.h"
#include "app/work/temporary_book.h"
#include "domain/marks_json.h"

namespace kempt::tests {

struct Ran {
    int exit = -1;
    QByteArray out, err;
    [[nodiscard]] QJsonObject json() const {
        QJsonParseError problem;
        const QJsonDocument document = QJsonDocument::fromJson(out, &problem);
        BOOST_REQUIRE_MESSAGE(problem.error == QJsonParseError::NoError && document.isObject(), out.toStdString());
        return document.object();
    }
};

// A folder to work in; paths in the arguments are relative to it.
struct Program {
    QTemporaryDir folder;

    Program() { application(); }

    [[nodiscard]] Ran run(const QStringList& arguments,
                          const QProcessEnvironment& environment = QProcessEnvironment::systemEnvironment()) const {
        QProcess process;
        process.setWorkingDirectory(folder.path());
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(KEMPT_PROGRAM), arguments);
        BOOST_REQUIRE(process.waitForFinished(120000));
        BOOST_REQUIRE(process.exitStatus() == QProcess::NormalExit);
        return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
    }

    // Must succeed: nothing on stderr.
    [[nodiscard]] Ran done(const QStringList& arguments) const {
        const Ran ran = run(arguments);
        BOOST_TEST(ran.exit == 0, arguments.join(u' ').toStdString() + ": " + ran.err.toStdString());
        BOOST_TEST(ran.err.toStdString() == "");
        return ran;
    }
    [[nodiscard]] QJsonObject json(QStringList arguments) const {
        arguments.append(QStringLiteral("--json"));
        return done(arguments).json();
    }

    // Must fail with this exit status, one line on stderr and nothing on stdout.
    void fails(int exit, const QStringList& arguments, const char* word) const {
        const Ran ran = run(arguments);
        const std::string call = arguments.join(u' ').toStdString() + ": " + ran.err.toStdString();
        BOOST_TEST(ran.exit == exit, call);
        BOOST_TEST(ran.out.toStdString() == "");
        BOOST_TEST(ran.err.count('\n') == 1, call);
        BOOST_TEST(ran.err.startsWith("kempt: "), call);
        BOOST_TEST(ran.err.contains(word), call);
    }

    void write(const QString& name, const QByteArray& bytes) const {
        QFile file(folder.filePath(name));
        BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
        BOOST_REQUIRE_EQUAL(file.write(bytes), bytes.size());
    }
    void write_photo(const QString& name, const CardPhoto& what) const {
        write(name + QStringLiteral(".jpg"), photo_bytes_of(what));
        write(name + QStringLiteral(".json"), QJsonDocument(json_of_marks(marks_for(what))).toJson());
    }
    [[nodiscard]] QByteArray read(const QString& name) const {
        QFile file(folder.filePath(name));
        BOOST_REQUIRE_MESSAGE(file.open(QIODevice::ReadOnly), name.toStdString());
        return file.readAll();
    }
};

inline QStringList words(const char* line) {
    return QString::fromUtf8(line).split(u' ');
}

}  // namespace kempt::tests
