// A fraction goes out, an answer comes back. Work asks between steps and stops at once when told to.
#pragma once

#include <functional>
#include <string_view>

namespace kempt {

enum class Go { on, stop };

// fraction in 0..1; step is a short phrase for the person ("reading photo 3 of 12").
using Progress = std::function<Go(double fraction, std::string_view step)>;

inline Go tell(const Progress& progress, double fraction, std::string_view step) {
    return progress ? progress(fraction, step) : Go::on;
}

}  // namespace kempt
