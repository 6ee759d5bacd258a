// Options that several commands share.
#pragma once

#include <optional>

#include "command/arguments.h"

namespace kempt::command {

inline QString q(const char* words) {
    return QString::fromUtf8(words);
}

// "1 visit", "2 visits"
inline QString counted(qsizetype count, const char* one) {
    return QString::number(count) + u' ' + q(one) + (count == 1 ? QString() : q("s"));
}

inline Option needed(const char* name, Type type, const char* value, const char* help,
                     const QStringList& choices = {}) {
    return {q(name), type, q(value), q(help), true, choices};
}
inline Option may(const char* name, Type type, const char* value, const char* help, const QStringList& choices = {}) {
    return {q(name), type, q(value), q(help), false, choices};
}
// The same, and "none" takes back what was written down.
inline Option may_none(const char* name, Type type, const char* value, const char* help,
                       const QStringList& choices = {}) {
    return {q(name), type, q(value), q(help), false, choices, true};
}
inline Option flag(const char* name, const char* help) {
    return {q(name), Type::flag, {}, q(help), false, {}};
}
inline QStringList yes_or_no() {
    return {q("yes"), q("no")};
}
// Sets what an option of yes_or_no() says; not given, nothing; "none" where the option takes it: not known.
inline void take_flag(const Arguments& arguments, const char* name, std::optional<bool>& to) {
    if (!arguments.has(q(name))) return;
    to = arguments.is_none(q(name)) ? std::nullopt : std::optional(arguments.text(q(name)) == u"yes");
}
inline Taken book_taken() {
    return {q("BOOK"), false, false};
}
inline Option client_option() {
    return needed("client", Type::id, "N", "number of the client");
}
inline Option visit_option() {
    return needed("visit", Type::id, "N", "number of the visit");
}

}  // namespace kempt::command
