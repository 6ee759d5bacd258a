#include "work/open_book.h"

#include "book/book.h"
#include "book/setting_store.h"
#include "work/errors.h"

namespace kempt::work {

namespace {
const QString printer_key = QStringLiteral("printer-correction");

Result<std::shared_ptr<Book>> shared(Result<Book> opened) {
    if (!opened) return opened.error();
    return std::make_shared<Book>(std::move(opened).value());
}
}  // namespace

Result<std::shared_ptr<Book>> open_book(const QString& path) {
    return shared(Book::open(path));
}

Result<std::shared_ptr<Book>> create_book(const QString& path) {
    return shared(Book::create(path));
}

Result<double> printer_scale_of(Book& book) {
    const auto setting = store::get_setting(book, printer_key);
    if (!setting) return setting.error();
    if (!setting.value()) return 1.0;
    bool number = false;
    const double scale = setting.value()->toDouble(&number);
    if (!number || !(scale >= 0.9 && scale <= 1.1))
        return invalid("bad-printer-scale", "The printer correction kept in the book is not between 0.9 and 1.1.",
                       "Measure the check line of the card and store it again.");
    return scale;
}

Status set_printer_scale(Book& book, double scale) {
    if (!(scale >= 0.9 && scale <= 1.1))
        return invalid("bad-printer-scale", "The printer correction must lie between 0.9 and 1.1.",
                       "Measure the 50 mm check line of the card again.");
    return store::put_setting(book, printer_key, QString::number(scale, 'g', 8));
}

}  // namespace kempt::work
