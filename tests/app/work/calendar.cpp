// iCalendar against the text of RFC 5545: its examples in sections 3.1, 3.3.11 and 3.6.1 are quoted from memory (no
// Debian package carries the text), and read back by a reader of its own where one is installed (python3-icalendar).
#include "work/calendar.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <boost/test/unit_test.hpp>
#include <random>

using namespace kempt;
using namespace kempt::work;

namespace {

// As a reader does it: "CRLF immediately followed by a single linear white-space character" is taken out (3.1).
QByteArray unfolded(QByteArray bytes) {
    return bytes.replace("\r\n ", "").replace("\r\n\t", "");
}

// 3.3.11 backwards.
QString unescaped(const QByteArray& bytes) {
    QString out;
    const QString text = QString::fromUtf8(bytes);
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i] != u'\\') {
            out += text[i];
            continue;
        }
        BOOST_REQUIRE(++i < text.size());
        BOOST_TEST((QStringLiteral("\\;,nN").contains(text[i])));
        out += text[i] == u'n' || text[i] == u'N' ? QChar(u'\n') : text[i];
    }
    return out;
}

QByteArray value_of(const QByteArray& calendar, const QByteArray& name) {
    for (const QByteArray& line : unfolded(calendar).split('\n'))
        if (line.startsWith(name + ':')) return line.mid(name.size() + 1).chopped(1);
    BOOST_ERROR("no " << name.toStdString());
    return {};
}

const QDateTime stamp(QDate(2007, 4, 23), QTime(12, 34, 32), Qt::UTC);

}  // namespace

BOOST_AUTO_TEST_SUITE(calendar)

// 3.6.1: "a multi-day event scheduled from June 28th, 2007 to July 8th, 2007 inclusively. Note that the DTEND property
// is set to July 9th, 2007, since the DTEND property specifies the non-inclusive end of the event."
BOOST_AUTO_TEST_CASE(the_rfc_s_event_of_several_days_comes_out_as_the_rfc_prints_it) {
    const QByteArray bytes =
        calendar_bytes({{QStringLiteral("20070423T123432Z-541111@example.com"), QDate(2007, 6, 28), QDate(2007, 7, 8),
                         QStringLiteral("Festival International de Jazz de Montreal"), QString()}},
                       stamp);
    for (const char* line : {"BEGIN:VEVENT", "UID:20070423T123432Z-541111@example.com", "DTSTAMP:20070423T123432Z",
                             "DTSTART;VALUE=DATE:20070628", "DTEND;VALUE=DATE:20070709",
                             "SUMMARY:Festival International de Jazz de Montreal", "TRANSP:TRANSPARENT", "END:VEVENT"})
        BOOST_TEST(bytes.contains(QByteArray(line) + "\r\n"), line);
    // 3.6 and 3.7: one calendar object with PRODID and VERSION, both required.
    BOOST_TEST(bytes.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:"));
    BOOST_TEST(bytes.endsWith("END:VCALENDAR\r\n"));
}

// 3.3.11: "Project XYZ Final Review / Conference Room - 3B / Come Prepared." is written with \n between the lines.
BOOST_AUTO_TEST_CASE(text_is_escaped_as_the_rfc_s_example) {
    BOOST_TEST(escaped_text(QStringLiteral("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")) ==
               QByteArray(R"(Project XYZ Final Review\nConference Room - 3B\nCome Prepared.)"));
    BOOST_TEST(escaped_text(QStringLiteral("a;b,c\\d:\"e\"")) == QByteArray(R"(a\;b\,c\\d:"e")"));
    BOOST_TEST(escaped_text(QStringLiteral("a\r\nb\rc\x01\x7f")) == QByteArray(R"(a\nb\nc)"));
}

// 3.1: no line longer than 75 octets, and a reader gets back what was written.
BOOST_AUTO_TEST_CASE(long_lines_are_folded_and_unfold_again) {
    BOOST_TEST(folded_line("DESCRIPTION:This is a long description that exists on a long line.") ==
               QByteArray("DESCRIPTION:This is a long description that exists on a long line.\r\n"));  // 69 octets
    const QString letters[] = {QStringLiteral("x"), QStringLiteral("é"), QStringLiteral("頭"), QStringLiteral("🌿"),
                               QStringLiteral("á́")};
    for (const QString& letter : letters)
        for (int count = 60; count < 240; ++count) {
            const QByteArray line = "SUMMARY:" + letter.repeated(count).toUtf8();
            const QByteArray folded = folded_line(line);
            BOOST_REQUIRE(folded.endsWith("\r\n"));
            for (const QByteArray& piece : folded.chopped(2).split('\n')) {
                const QByteArray text = piece.endsWith('\r') ? piece.chopped(1) : piece;
                if (text.size() > 75) BOOST_ERROR(text.size() << " octets");
                if (QString::fromUtf8(text).contains(QChar::ReplacementCharacter)) BOOST_ERROR("a torn character");
            }
            if (unfolded(folded) != line + "\r\n") BOOST_ERROR("does not unfold");
        }
    BOOST_TEST(folded_line(QByteArray(75, 'x')).count("\r\n") == 1);
    BOOST_TEST(folded_line(QByteArray(76, 'x')) == QByteArray(75, 'x') + "\r\n x\r\n");
}

BOOST_AUTO_TEST_CASE(names_and_sentences_come_back_as_they_were) {
    const QString name =
        QStringLiteral("Núñez, Ada; \"the\\younger\" 頭髪頭髪頭髪頭髪頭髪頭髪頭髪頭髪頭髪頭髪頭髪頭髪頭髪");
    const QString text =
        QStringLiteral("First line.\nSecond, with a very long ending that goes on; and on, \\ and on.");
    const QByteArray bytes =
        calendar_bytes({{QStringLiteral("a"), QDate(2026, 1, 31), QDate(2026, 1, 31), name, text}}, stamp);
    BOOST_TEST((unescaped(value_of(bytes, "SUMMARY")) == name));
    BOOST_TEST((unescaped(value_of(bytes, "DESCRIPTION")) == text));
    BOOST_TEST(value_of(bytes, "DTEND;VALUE=DATE") == QByteArray("20260201"));
    BOOST_TEST(bytes.count('\n') == bytes.count("\r\n"));
}

// A general library for RFC 5545, written elsewhere, reads what we write; and finds the same days and words.
BOOST_AUTO_TEST_CASE(another_reader_gets_back_every_event_as_it_was) {
    QProcess reader;
    reader.start(QStringLiteral("/usr/bin/python3"), {"-c", "import icalendar; print(icalendar.__version__)"});
    if (!reader.waitForFinished(20000) || reader.exitCode() != 0) {
        BOOST_TEST_MESSAGE("skipped: no other reader of calendars is installed (python3-icalendar)");
        std::puts("skipped: no other reader of calendars is installed (python3-icalendar)");
        return;
    }
    std::mt19937 random(5545);
    // No backslash: that reader (4.0.3) undoes the escapes in the wrong order, so that one before a comma is lost.
    const QString letters = QStringLiteral("ab c,;:\"'\n=éß頭髪–á́ 0N");
    const auto words = [&](int most) {
        QString text;
        for (int n = static_cast<int>(random() % static_cast<unsigned>(most)); n >= 0; --n)
            text += letters[static_cast<qsizetype>(random() % static_cast<unsigned>(letters.size()))];
        return QStringLiteral("x") + text + QStringLiteral("x");  // readers may trim the ends
    };
    QVector<CalendarEvent> events;
    for (int n = 0; n < 200; ++n) {
        const QDate from = QDate(2024, 1, 1).addDays(static_cast<int>(random() % 2000));
        events.append({QStringLiteral("uid-%1").arg(n), from, from.addDays(static_cast<int>(random() % 40)), words(200),
                       words(400)});
    }
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.ics"));
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(calendar_bytes(events, stamp));
    file.close();
    reader.start(QStringLiteral("/usr/bin/python3"),
                 {"-c",
                  "import icalendar, json, sys\n"
                  "calendar = icalendar.Calendar.from_ical(open(sys.argv[1], 'rb').read())\n"
                  "print(json.dumps({'version': str(calendar['VERSION']), 'events': [\n"
                  "  [str(e['UID']), e['DTSTART'].dt.isoformat(), e['DTEND'].dt.isoformat(), str(e['SUMMARY']),\n"
                  "   str(e['DESCRIPTION']), e['DTSTAMP'].dt.isoformat()] for e in calendar.walk('VEVENT')]}))",
                  path});
    BOOST_REQUIRE(reader.waitForFinished(60000));
    BOOST_REQUIRE_MESSAGE(reader.exitCode() == 0, reader.readAllStandardError().toStdString());
    const QJsonObject seen = QJsonDocument::fromJson(reader.readAllStandardOutput()).object();
    BOOST_TEST((seen["version"] == "2.0"));
    const QJsonArray read = seen["events"].toArray();
    BOOST_REQUIRE(read.size() == events.size());
    for (qsizetype n = 0; n < events.size(); ++n) {
        const QJsonArray one = read[n].toArray();
        BOOST_TEST((one[0] == events[n].uid));
        BOOST_TEST((one[1] == events[n].from.toString(Qt::ISODate)));
        BOOST_TEST((one[2] == events[n].to.addDays(1).toString(Qt::ISODate)));
        BOOST_TEST((one[3] == events[n].summary), n);
        BOOST_TEST((one[4] == events[n].description), n);
        BOOST_TEST((one[5] == "2007-04-23T12:34:32+00:00"));
    }
}

BOOST_AUTO_TEST_CASE(days_that_are_none_make_no_event) {
    const QByteArray bytes =
        calendar_bytes({{QStringLiteral("a"), QDate(), QDate(2026, 1, 1), QStringLiteral("x"), {}},
                        {QStringLiteral("b"), QDate(2026, 1, 2), QDate(2026, 1, 1), QStringLiteral("x"), {}}},
                       stamp);
    BOOST_TEST(!bytes.contains("VEVENT"));
}

BOOST_AUTO_TEST_SUITE_END()
