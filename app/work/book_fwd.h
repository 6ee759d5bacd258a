// Use cases take the book by reference; only their sources see its stores.
#pragma once

namespace kempt::book {
class Book;
}
namespace kempt::work {
using book::Book;
}
