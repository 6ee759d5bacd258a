// Which ends of lines belong together: decided jointly for all the ends around a crossing, by how well place,
// direction, curvature and darkness of the two agree and whether something dark lies between them.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/ends.h"
#include "combings/work.h"

namespace kempt::combings {

struct JoinOptions {
    double reach_px = 16;       // farther ends are not looked at ...
    double long_reach_px = 45;  // ... unless they face each other almost in line
    double free_cost = 5;       // of an end left alone where paper follows ...
    double torn_cost = 10;      // ... and where the line seems to go on
    double whole_px = 24;       // a shorter line's ends cost less
    double blank_cost = 0.45;   // for each pixel of paper between two ends
    double doubt_cost = 3;      // a join is doubtful when another way to join costs less than this more
};

struct Join {
    int a = -1, b = -1;  // ends
    double cost = 0;
    double blank_px = 0;  // paper on the way
    double gap_px = 0;
    bool doubtful = false;
};

// At most one join an end, never both ends of one line or a closed ring.
[[nodiscard]] std::vector<Join> join_ends(const std::vector<LineEnd>& ends, const Darkness& darkness,
                                          const JoinOptions& options, Work& work);

// The ends again, each seen with the lines that are joined on behind it: a short piece between two crossings says
// little about its direction.
[[nodiscard]] std::vector<LineEnd> seen_with_joins(const std::vector<Line>& lines, const std::vector<LineEnd>& ends,
                                                   const std::vector<Join>& joins, const Bends& usual,
                                                   const Darkness& darkness);

// Cost of a join; above `limit` the costly parts are not worked out.
[[nodiscard]] Join weigh(const std::vector<LineEnd>& ends, int a, int b, const Darkness& darkness,
                         const JoinOptions& options, double limit);

// Only the part that place, direction, curvature and tone make up, at any distance.
[[nodiscard]] double disagreement(const LineEnd& e, const LineEnd& f);

}  // namespace kempt::combings
