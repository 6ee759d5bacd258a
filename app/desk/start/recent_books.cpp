#include "desk/start/recent_books.h"

#include <QFileInfo>
#include <QSettings>

namespace kempt::desk {
namespace {

constexpr int most = 6;  // what fits the start page without scrolling
constexpr auto key = "books/recent";

}  // namespace

QStringList recent_books() {
    return QSettings().value(key).toStringList();
}

void remember_book(const QString& path) {
    const QString whole = QFileInfo(path).absoluteFilePath();
    QStringList books = recent_books();
    books.removeAll(whole);
    books.prepend(whole);
    QSettings().setValue(key, QStringList(books.mid(0, most)));
}

void forget_book(const QString& path) {
    QStringList books = recent_books();
    books.removeAll(path);
    QSettings().setValue(key, books);
}

}  // namespace kempt::desk
