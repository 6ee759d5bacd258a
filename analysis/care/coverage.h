// Which hair a planned service is put on, and which it stays off.
#pragma once

#include <string>
#include <vector>

#include "care/history.h"

namespace kempt::care {

struct Stretch {
    Part part = Part::roots;
    Span span;
};

struct Coverage {
    std::vector<Stretch> put_on;    // from roots to ends, none empty
    std::vector<Stretch> keep_off;  // of the planned hair: straightened or permed already, or perhaps so
    // The record does not reach back far enough to say what the rest has been through: find the line by eye first.
    bool unsure = false;
};

// A straightener or perm is never put on hair that has been through one, not even perhaps; of a retouch only the new
// growth that is surely there is covered. Other services go where they are planned. Without a length the ends cannot
// be told from the mid-shaft and are left out (the mid-shaft then reaches on).
[[nodiscard]] Coverage coverage_of(const PlannedService& service, const ClientState& state);

}  // namespace kempt::care
