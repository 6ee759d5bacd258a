#include "bench/ends/cases.h"

namespace bench {

EndsCase ends_case(uint64_t person, uint64_t day, uint64_t shot, const EndsOptions& options) {
    render::Rng hair_rng(person * 7919 + 11), day_rng(day * 104729 + 13), shot_rng(shot * 15485863 + 17);
    EndsCase out;
    out.view = options.view >= 0 ? options.view : shot_rng.chance(0.25) ? 1 : 0;
    render::SheetOptions sheet;
    sheet.hair_colour = options.hair_colour;
    sheet.ground = options.ground;
    sheet.tilt_max_deg = options.tilt_max_deg;
    sheet.phone_strength = options.phone_strength;
    sheet.card = out.view == 0;
    sheet.quarter_turns = false;
    sheet.table_mm = 4;
    sheet.px_per_mm = options.px_per_mm > 0 ? options.px_per_mm
                      : out.view == 0       ? shot_rng.uniform(10, 15)
                                            : shot_rng.uniform(8.3, 9.3);
    out.scene = render::sheet_scene(person * 31 + 5, shot * 37 + 7, sheet);
    out.hair = render::random_hem(hair_rng);
    out.lie = render::random_lie(day_rng);
    if (out.view == 0) render::aim_at_hem(out.scene, out.hair, out.lie, sheet.px_per_mm, shot_rng);
    return out;
}

EndsShot take_ends(const EndsCase& c, uint64_t hand) {
    EndsShot out;
    const double reach = c.view == 0 ? 80 + c.hair.cut_mm : c.lie.v_mm + 12;
    const render::Coat coat = render::lay_hem(c.hair, c.lie, c.scene.hair, reach);
    render::SheetShot shot = render::take_sheet(c.scene, coat, strand_taper);
    out.photo = std::move(shot.photo);
    out.truth = render::hem_truth(c.scene, c.hair, c.lie, shot.cover);
    out.cover = std::move(shot.cover);
    render::Rng rng(hand);
    for (const render::V2& p : render::hem_region_px(c.scene, c.hair, c.lie, rng)) out.region_px.emplace_back(p.x, p.y);
    return out;
}

}  // namespace bench
