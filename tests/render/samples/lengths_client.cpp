#include "lengths_client.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <vector>

#include "render/hem.h"
#include "render/panel_tone.h"
#include "render/sheet.h"

namespace samples {

namespace {

using namespace render;

constexpr int visits = 3;
const char* const dates[visits] = {"2026-04-08", "2026-06-10", "2026-08-19"};
constexpr uint64_t person = 41;
constexpr int brown = 2;
constexpr int quality = 62;  // of the JPEGs: all samples together stay below 10 MB

std::string list(const std::vector<V2>& points) {
    std::string out = "[";
    char text[64];
    for (size_t i = 0; i < points.size(); ++i) {
        std::snprintf(text, sizeof text, "%s[%.1f, %.1f]", i ? ", " : "", points[i].x, points[i].y);
        out += text;
    }
    return out + "]";
}

// Writes one photo with marks and truth; returns its line of the scenario.
std::string put(const std::string& out, const std::string& base, const char* view, const Shot& shot,
                const std::string& taken, const std::string& marks, const std::string& truth) {
    write_file(out + "/" + base + ".jpg", jpeg_of(shot, quality, false, taken));
    put_text(out + "/" + base + ".marks.json", std::string("{\"view\": \"") + view + "\",\n " + marks + "}\n");
    put_text(out + "/" + base + ".truth.json", "{" + truth + "}\n");
    std::printf("%s %dx%d %s\n", base.c_str(), shot.width, shot.height, truth.c_str());
    return "        {\"file\": \"" + base + ".jpg\", \"view\": \"" + view + "\", \"marks\": \"" + base +
           ".marks.json\"}";
}

Phone calm(Phone phone, uint64_t) {
    phone.display_p3 = false;
    phone.noise_shot = 1.5e-4;
    phone.noise_read = 1.2e-3;
    phone.blur_px = 0.55;
    return phone;
}

// Lengths: her own dark brown grows out above an older, lighter colour; shine comes back with care.
std::string lengths(const std::string& out, int visit, int shot, const std::string& taken, const CardPicture& card) {
    const double gloss[visits] = {0.16, 0.27, 0.42}, rough[visits] = {10, 8.5, 7}, line_mm[visits] = {14, 36, 60};
    PanelOptions options;
    options.hair_colour = brown;
    options.gloss = gloss[visit];
    options.roughness_deg = rough[visit];
    options.radius_mm = 95;
    options.length_mm = 110;
    options.px_per_mm = 11;
    options.tilt_max_deg = 6;
    options.phone_strength = 0.35;
    options.card_place = CardPlace::right;
    const uint64_t day = person * 1000 + static_cast<uint64_t>(visit) * 10;
    Panel panel = render::panel(person, day + static_cast<uint64_t>(shot), card, options);
    Rng chair(person + 3), again(day + 9);
    panel.scene.light = set_up_again(panel_light(chair), again, 1.5);
    panel.scene.phone = calm(panel.scene.phone, day);
    panel.streaks_per_cm2 = 2;
    TonePanel tone{panel, {}};
    TonePlan plan;
    plan.root = {17, 4, 7};
    plan.length_mm = 110;
    plan.changes.push_back({line_mm[visit], 3, {26, 9, 15}});
    set_plan(tone, plan);
    const PanelShot taken_shot = take(tone.panel);
    const ToneTruth truth = tone_truth(tone, taken_shot.truth);
    char text[400];
    std::snprintf(text, sizeof text,
                  "\"gloss\": %.2f, \"shine_width\": %.2f, \"alignment\": %.3f, \"tone_spread\": %.2f, \"line_at_mm\": "
                  "%.1f, \"line_step\": %.2f, \"px_per_mm\": %.2f",
                  taken_shot.truth.gloss, taken_shot.truth.width_mm, taken_shot.truth.alignment, truth.spread,
                  truth.lines.empty() ? 0 : truth.lines[0].at_mm, truth.lines.empty() ? 0 : truth.lines[0].step,
                  taken_shot.truth.px_per_mm);
    const std::string base = "marisol/0" + std::to_string(visit + 1) + "-lengths-" + std::to_string(shot);
    return put(out, base, "lengths", taken_shot.shot, taken,
               "\"shine_region\": " + list(taken_shot.truth.region_px) + ",\n \"strand_line\": " + list(truth.line_px),
               text);
}

// Ends: shredded at the first visit, cut at the second.
std::string ends(const std::string& out, int visit, int shot, const std::string& taken) {
    HemHair hair;
    hair.seed = person + 5;
    hair.width_mm = 76;
    hair.ends = visit == 0 ? Ends::shredded : Ends::blunt;
    hair.own_sd_mm = visit == 0 ? 5 : visit == 1 ? 0.7 : 1.1;
    hair.lock_sd_mm = visit == 0 ? 3.2 : visit == 1 ? 0.4 : 0.7;
    hair.thinned_share = visit == 0 ? 0.45 : visit == 1 ? 0.05 : 0.1;
    SheetOptions options;
    options.hair_colour = brown;
    options.px_per_mm = 8;
    options.tilt_max_deg = 6;
    options.phone_strength = 0.35;
    options.quarter_turns = false;
    const uint64_t day = person * 2000 + static_cast<uint64_t>(visit) * 10 + static_cast<uint64_t>(shot);
    SheetScene scene = sheet_scene(person, day, options);
    scene.phone = calm(scene.phone, day);
    Rng rng(day + 1);
    HemLie lie = random_lie(rng);
    aim_at_hem(scene, hair, lie, 10, rng);
    const SheetShot taken_shot = take_sheet(scene, lay_hem(hair, lie, scene.hair));
    const HemTruth truth = hem_truth(scene, hair, lie, taken_shot.cover);
    char text[300];
    std::snprintf(text, sizeof text,
                  "\"hem_unevenness\": %.2f, \"see_through\": %.1f, \"flyaway\": %.2f, \"px_per_mm\": %.2f",
                  truth.hem_unevenness, truth.see_through, truth.flyaway, taken_shot.px_per_mm);
    const std::string base = "marisol/0" + std::to_string(visit + 1) + "-ends-" + std::to_string(shot);
    std::vector<V2> region = hem_region_px(scene, hair, lie, rng);
    for (V2& corner : region)
        corner = {clamp(corner.x, 0, taken_shot.photo.width), clamp(corner.y, 0, taken_shot.photo.height)};
    return put(out, base, "ends", taken_shot.photo, taken, "\"sheet\": \"hem\", \"region\": " + list(region), text);
}

std::string loose(const std::string& out, int visit, bool one_strand, const std::string& taken) {
    SheetOptions options;
    options.hair_colour = brown;
    options.px_per_mm = 10;
    options.tilt_max_deg = 5;
    options.phone_strength = 0.35;
    options.quarter_turns = false;
    options.creases = 0;
    options.lint = 0.3;
    options.table_mm = 4;
    const uint64_t day = person * 3000 + static_cast<uint64_t>(visit) * 10 + (one_strand ? 7 : 0);
    SheetScene scene = sheet_scene(person, day, options);
    scene.phone = calm(scene.phone, day);
    Rng rng(day + 1);
    LooseOptions what;
    what.count = one_strand ? 3 : visit == 0 ? 34 : 21;
    what.short_share = one_strand ? 0 : visit == 0 ? 0.47 : 0.2;
    what.length_mm = 190;
    what.shape = Shape::wavy;
    Lie lie = free_lie(scene);
    if (one_strand) lie.apart_mm = 12;
    const std::vector<LooseStrand> strands = loose_strands(rng, scene.hair, what);
    const SheetShot shot = take_sheet(scene, throw_down(rng, strands, lie));
    std::vector<double> lengths = shot.lengths_mm;
    std::sort(lengths.begin(), lengths.end());
    const auto brief = std::count_if(lengths.begin(), lengths.end(), [](double mm) { return mm < 50; });
    char text[300];
    std::snprintf(text, sizeof text,
                  "\"strands\": %zu, \"strand_median\": %.1f, \"short_share\": %.1f, \"px_per_mm\": %.2f",
                  lengths.size(), lengths[lengths.size() / 2],
                  100 * static_cast<double>(brief) / static_cast<double>(lengths.size()), shot.px_per_mm);
    const std::string base = "marisol/0" + std::to_string(visit + 1) + (one_strand ? "-strand" : "-comb-out");
    return put(out, base, "ends", shot.photo, taken,
               std::string("\"sheet\": \"") + (one_strand ? "strand" : "combings") + "\"", text);
}

}  // namespace

void put_text(const std::string& path, const std::string& text) {
    write_file(path, std::vector<uint8_t>(text.begin(), text.end()));
}

std::string lengths_client(const std::string& out, const CardPicture& card) {
    std::filesystem::create_directories(out + "/marisol");
    std::string json =
        "    {\n      \"name\": \"Marisol Quint\",\n      \"note\": \"Wants her lengths back after years of colour and "
        "hot irons.\",\n      \"since\": \"2026-04-08\",\n      \"photo_consent\": true,\n      \"visits\": [\n";
    const int shine[visits] = {1, 2, 3}, breakage[visits] = {1, 2, 3}, porosity[visits] = {1, 1, 2};
    for (int visit = 0; visit < visits; ++visit) {
        std::string day = dates[visit];
        std::replace(day.begin(), day.end(), '-', ':');
        int minute = 10;
        const auto taken = [&] { return day + " 14:" + std::to_string(minute++) + ":00"; };
        json += std::string("      {\"date\": \"") + dates[visit] + "\", \"hair\": {\"styled\": true}, \"photos\": [\n";
        for (int shot = 1; shot <= 2; ++shot) json += lengths(out, visit, shot, taken(), card) + ",\n";
        for (int shot = 1; shot <= 2; ++shot) json += (shot > 1 ? ",\n" : "") + ends(out, visit, shot, taken());
        if (visit != 1) json += ",\n" + loose(out, visit, false, taken());
        if (visit == 0) json += ",\n" + loose(out, visit, true, taken());
        char text[300];
        std::snprintf(
            text, sizeof text,
            "],\n       \"grades\": [{\"zone\": \"mid-shaft\", \"quality\": \"shine\", \"value\": %d}, "
            "{\"zone\": \"ends\", \"quality\": \"breakage\", \"value\": %d}, {\"zone\": \"ends\", \"quality\": "
            "\"porosity\", \"value\": %d}]}%s\n",
            shine[visit], breakage[visit], porosity[visit], visit + 1 < visits ? "," : "");
        json += text;
    }
    json +=
        "      ],\n      \"record\": \"marisol/record.json\",\n"
        "      \"targets\": [{\"view\": \"lengths\", \"reading\": \"shine_contrast\", \"value\": 0.8},\n"
        "                  {\"view\": \"ends\", \"reading\": \"hem_unevenness\", \"value\": 0.3}]\n    }";
    return json;
}

}  // namespace samples
