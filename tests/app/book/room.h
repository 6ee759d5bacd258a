// A folder of its own for each test, an application object for Qt's database drivers, and a book worth looking at.
#pragma once

#include <QByteArray>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <boost/test/unit_test.hpp>
#include <string>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::test {

struct Room {
    QTemporaryDir folder;
    [[nodiscard]] QString path(const QString& name) const { return folder.filePath(name); }
};

// The value, or the test ends with the error's sentence.
template <class T>
T must(Result<T> result) {
    if (!result) BOOST_FAIL("unexpected error: " + result.error().sentence());
    return std::move(result).value();
}
// The error, or the test ends.
template <class T>
Error must_fail(Result<T> result) {
    if (result) BOOST_FAIL("an error was expected");
    return result.error();
}

QByteArray content_of(const QString& path);
void write_content(const QString& path, const QByteArray& content);
QByteArray noise(int size, unsigned seed);  // bytes that no other file holds

PhotoRecord sample_photo(Id visit, View view = View::left_temple, int shot = 1);
Marks sample_marks(Id photo);
QVector<ReadingRecord> sample_readings(Id photo, Id marks, const QString& photo_sha256, double coverage = 62.5);

Service sample_service(Id client, std::optional<Id> visit);  // every field is set
ClientProfile sample_profile(Id client);
DailyLife sample_daily_life(Id client);

// One record of every kind; the same on every call.
struct Filled {
    Id client = 0, visit = 0, photo = 0, marks = 0, run = 0, grade = 0, service = 0, target = 0, daily = 0, answer = 0;
    QByteArray bytes;
};
Filled fill(Book& book);

// Every row of every table as text, photo bytes as their SHA-256: two books that hold the same give the same.
QStringList listing(Book& book);
// The statements that made the tables, so that an upgraded book can be held against a fresh one.
QStringList schema_of(Book& book);

// Runs body in a child process and gives its exit code; -1 when a signal ended it.
int in_child(const std::function<int()>& body);

}  // namespace kempt::test

// Records compare by every member.
namespace kempt {
bool operator==(const Client& a, const Client& b);
bool operator==(const Visit& a, const Visit& b);
bool operator==(const PhotoRecord& a, const PhotoRecord& b);
bool operator==(const Marks& a, const Marks& b);
bool operator==(const ReadingRecord& a, const ReadingRecord& b);
bool operator==(const Grade& a, const Grade& b);
bool operator==(const Target& a, const Target& b);
}  // namespace kempt
