// The sections of the report in their order; each adds its blocks, or nothing where there is nothing to say.
#pragma once

#include "report/blocks.h"
#include "report/report_model.h"

namespace kempt::report {

struct Context {
    const Model& model;
    const Options& options;
    double width = 0;        // of the text, units
    double page_height = 0;  // of the text, units
    const speech::Speech& say = options.speech;
};

void add_title(Blocks& blocks, const Context& context);
void add_in_short(Blocks& blocks, const Context& context);
void add_pictures(Blocks& blocks, const Context& context);
void add_readings(Blocks& blocks, const Context& context);
void add_charts(Blocks& blocks, const Context& context);
void add_targets(Blocks& blocks, const Context& context);
void add_services(Blocks& blocks, const Context& context);
void add_hair(Blocks& blocks, const Context& context);
void add_planned(Blocks& blocks, const Context& context);
void add_grades(Blocks& blocks, const Context& context);
void add_next(Blocks& blocks, const Context& context);
void add_left_out(Blocks& blocks, const Context& context);
void add_method(Blocks& blocks, const Context& context);
void add_cautions(Blocks& blocks, const Context& context);
void add_history(Blocks& blocks, const Context& context);

}  // namespace kempt::report
