// A fresh book in a folder that goes away with the test.
#pragma once

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>
#include <boost/test/unit_test.hpp>

#include "book/book.h"
#include "work/keep_records.h"
#include "work/open_book.h"

namespace kempt::tests {

inline QCoreApplication& application() {
    static int argc = 1;
    static char name[] = "test";
    static char* argv[] = {name, nullptr};
    static QCoreApplication application(argc, argv);
    return application;
}

struct TemporaryBook {
    QTemporaryDir folder;
    QString path;
    std::shared_ptr<Book> book;
    Client client;
    Visit visit;

    TemporaryBook() {
        application();
        path = folder.filePath(QStringLiteral("test.kempt"));
        auto made = work::create_book(path);
        BOOST_REQUIRE_MESSAGE(made.ok(), (made.ok() ? "" : made.error().sentence()));
        book = made.value();
        Client ada;
        ada.name = QStringLiteral("Ada Lindqvist");
        ada.since = QDate(2026, 1, 12);
        ada.photo_consent = true;
        client = required(work::add_client(*book, ada));
        visit = add_visit(QDate(2026, 1, 12));
    }

    Visit add_visit(QDate date, HairState hair = {}) {
        Visit to_add;
        to_add.client = client.id;
        to_add.date = date;
        to_add.hair = hair;
        return required(work::add_visit(*book, to_add));
    }

    QString write(const QString& name, const QByteArray& bytes) const {
        QFile file(folder.filePath(name));
        BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
        BOOST_REQUIRE_EQUAL(file.write(bytes), bytes.size());
        return file.fileName();
    }

    template <class T>
    static T required(Result<T> result) {
        BOOST_REQUIRE_MESSAGE(result.ok(), (result.ok() ? "" : result.error().sentence()));
        return std::move(result).value();
    }
};

}  // namespace kempt::tests
