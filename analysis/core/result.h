// A value or an error. Errors are values with a kind (for code), a stable code (for scripts) and three sentences
// for the person: what happened, what was kept, what to do.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace kempt {

enum class ErrorKind {
    invalid,      // the caller's input makes no sense (wrong option, marks that cross themselves)
    not_found,    // the named thing is not there
    unsupported,  // a file or feature that Kempt does not read
    damaged,      // a file or book whose content is broken
    too_large,    // over a stated limit
    refused,      // the quality gate or a method refuses to give a number
    cancelled,    // the person asked to stop
    io,           // disk or system said no
    busy,         // somebody else holds it
    version       // written by a newer Kempt
};

struct Error {
    ErrorKind kind = ErrorKind::invalid;
    std::string code;    // kebab-case, stable: "photo-truncated"
    std::string what;    // what happened, a full sentence
    std::string kept;    // what was kept; may be empty when nothing was at stake
    std::string remedy;  // what to do

    // The three sentences in one line.
    [[nodiscard]] std::string sentence() const {
        std::string text = what;
        for (const std::string& part : {kept, remedy})
            if (!part.empty()) text += " " + part;
        return text;
    }
};

// Holds a T or an Error. value() and error() may be called only after ok() was asked.
template <class T>
class [[nodiscard]] Result {
  public:
    Result(T value) : state_(std::move(value)) {}      // NOLINT: implicit on purpose
    Result(Error error) : state_(std::move(error)) {}  // NOLINT: implicit on purpose
    [[nodiscard]] bool ok() const { return std::holds_alternative<T>(state_); }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] T& value() & { return std::get<T>(state_); }
    [[nodiscard]] const T& value() const& { return std::get<T>(state_); }
    [[nodiscard]] T&& value() && { return std::get<T>(std::move(state_)); }
    [[nodiscard]] const Error& error() const { return std::get<Error>(state_); }
    T* operator->() { return &std::get<T>(state_); }
    const T* operator->() const { return &std::get<T>(state_); }
    T& operator*() & { return std::get<T>(state_); }
    const T& operator*() const& { return std::get<T>(state_); }

  private:
    std::variant<T, Error> state_;
};

// For work that gives nothing back.
struct Done {};
using Status = Result<Done>;

}  // namespace kempt
