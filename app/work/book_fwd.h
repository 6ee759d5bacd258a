// Use cases take the book by reference; only their sources see its stores.
#pragma once

namespace kempt {
class Book;
}
