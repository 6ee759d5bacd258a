// Invented clients for the tests of the report; every figure is made up.
#pragma once

#include "report/report_model.h"

namespace kempt::report::example {

// Six visits, two views, two targets, services, grades, a refused photo.
[[nodiscard]] Model six_visits();
// Any number of visits, one a month; every list grows with it.
[[nodiscard]] Model many_visits(int visits);
// A client who was only just added.
[[nodiscard]] Model nothing_yet();
// A drawn stand-in for a photo of an edge: scalp and strands, more of them with cover 0..1.
[[nodiscard]] QImage edge_picture(int width, int height, double cover);

}  // namespace kempt::report::example
