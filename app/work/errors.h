// Errors that several use cases give.
#pragma once

#include <QString>
#include <exception>
#include <new>

#include "core/progress.h"
#include "core/result.h"

namespace kempt::work {

[[nodiscard]] Error stopped(const std::string& kept = "Nothing was changed.");
[[nodiscard]] Error invalid(const std::string& code, const std::string& what, const std::string& remedy = "");
[[nodiscard]] Error missing(const std::string& code, const std::string& what, const std::string& remedy = "");
[[nodiscard]] Error disk(const QString& path, const QString& why);

// What the libraries throw becomes an error here, so that no exception crosses a use case. R is a Result.
[[nodiscard]] Error thrown(const char* what);
[[nodiscard]] Error out_of_memory();
template <class Call>
[[nodiscard]] auto guarded(Call call) -> decltype(call()) {
    try {
        return call();
    } catch (const std::bad_alloc&) {
        return out_of_memory();
    } catch (const std::exception& error) {
        return thrown(error.what());
    }
}

// A progress for one part of a longer piece of work: its 0..1 becomes from..to of the whole.
[[nodiscard]] Progress part_of(const Progress& whole, double from, double to);

// Writes a file whole or not at all, making its folder when missing. Errors: io.
[[nodiscard]] Status write_file(const QString& path, const QByteArray& bytes);

}  // namespace kempt::work
