// Makes sample-images/: photos, marks and truth of four invented clients, and the scenario that ties them together.
// What was done to their hair and what they told (*/record.json) is written by hand.
//   make_samples FOLDER [lengths]     only the photos of lengths, ends and comb-outs, no scenario
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <string>

#include "lengths_client.h"
#include "render/strands.h"
#include "render/write_photo.h"

namespace {

using namespace render;
using samples::put_text;

struct Site {  // one view of one client
    const char* view;
    const char* file_part;
    uint64_t person;
    double px_per_mm;
    int shots;
    double density[6], edge_share[6];
};

struct Person {
    const char* name;
    const char* folder;
    const char* note;
    int skin, hair;
    Shape shape;
    double coil_mm, length_mm;
    std::vector<std::string> dates;
    std::vector<Site> sites;
    std::string extra;  // record, targets
    int quality;
};

std::string points(const std::vector<V2>& list, int every, Rng& rng, double jitter_px) {
    std::string out = "[";
    char text[64];
    for (size_t i = 0; i < list.size(); i += static_cast<size_t>(every)) {
        std::snprintf(text, sizeof text, "%s[%.1f, %.1f]", i ? ", " : "", list[i].x + rng.normal(0, jitter_px),
                      list[i].y + rng.normal(0, jitter_px));
        out += text;
    }
    return out + "]";
}

// Writes photo, marks and truth; returns the scenario's line for it.
std::string put(const std::string& folder, const std::string& base, const char* view, const Scene& scene,
                const std::string& taken, int quality, bool with_marks) {
    Shot shot = take(scene);
    write_file(folder + "/" + base + ".jpg", jpeg_of(shot, quality, scene.phone.display_p3, taken));
    Rng rng(scene.noise_seed + 5);
    char text[900];
    std::string marks = std::string("{\"view\": \"") + view +
                        "\",\n \"edge_line\": " + points(shot.truth.edge_px, 5, rng, 0.12 * scene.camera.px_per_mm);
    std::snprintf(text, sizeof text, ",\n \"hair_side\": [%.1f, %.1f]}\n", shot.truth.hair_side_px.x,
                  shot.truth.hair_side_px.y);
    if (with_marks) put_text(folder + "/" + base + ".marks.json", marks + text);
    const Truth& t = shot.truth;
    double roots = 0;
    int places = 0;
    for (double x = scene.x_from; x < scene.x_to; x += 0.5)
        for (double d = 0.25; d < 10; d += 0.5) roots += roots_per_mm2(scene.growth, x, d), ++places;
    std::snprintf(
        text, sizeof text,
        "{\"edge_coverage\": %.2f, \"edge_strands\": %.2f, \"fill_depth\": %.2f, \"bare_length\": %.2f, "
        "\"length_density\": %.3f, \"roots_per_cm2\": %.1f,\n"
        " \"line_length_mm\": %.2f, \"px_per_mm\": %.3f, \"tilt_deg\": %.2f, \"skin\": \"%s\", \"hair\": \"%s\"}\n",
        t.edge_coverage, t.edge_strands, t.fill_depth, t.bare_length, t.length_density, 100 * roots / places,
        t.length_mm, t.px_per_mm, t.tilt_deg, skin_names[scene.skin_class], hair_names[scene.hair_colour]);
    put_text(folder + "/" + base + ".truth.json", text);
    std::printf("%s %dx%d cover %.1f strands %.1f bare %.1f of %.1f\n", base.c_str(), shot.width, shot.height,
                t.edge_coverage, t.edge_strands, t.bare_length, t.length_mm);
    std::fflush(stdout);
    std::string line = "        {\"file\": \"" + base + ".jpg\", \"view\": \"" + view + "\"";
    if (with_marks) line += ", \"marks\": \"" + base + ".marks.json\"";
    return line + "}";
}

Scene scene_of(const Person& p, const Site& site, size_t visit, int shot, const CardPicture& card) {
    CloseUpOptions options;
    options.skin_class = p.skin;
    options.hair_colour = p.hair;
    options.px_per_mm = site.px_per_mm;
    options.tilt_max_deg = 11;
    options.phone_strength = 0.45;
    options.quarter_turns = false;
    options.field_mm_x = 93;
    options.field_mm_y = 69;
    Scene s = close_up(site.person, site.person * 1000 + visit * 10 + static_cast<uint64_t>(shot), card, options);
    Rng look(site.person + 77);
    s.skin.freckles = 0;
    s.skin.sheen = 0.06;
    s.hair.second_share = 0;
    Growth g;
    g.shape = p.shape;
    g.coil_mm = p.coil_mm;
    g.length_mean_mm = p.length_mm;
    g.length_sd_mm = 0.3 * p.length_mm;
    g.short_share = 0.15;
    g.direction_deg = look.normal(0, 10);
    g.direction_spread_deg = 11;
    g.lift_mm = 0.5;
    g.clump = 0.6;
    g.full_depth_mm = 9;
    g.density = site.density[visit];
    g.edge_share = site.edge_share[visit];
    s.growth = g;
    s.growth.patches.push_back({look.uniform(-18, 18), 3, 9, std::min(1.0, 0.15 + 1.2 * site.edge_share[visit])});
    s.phone.noise_shot = 1.5e-4;
    s.phone.noise_read = 1.2e-3;
    s.phone.blur_px = 0.55;
    s.light.shadow_edge = false;
    s.camera.turn_deg = clamp(s.camera.turn_deg, -2.5, 2.5);
    s.card.turn_deg = clamp(s.card.turn_deg, -2, 2);
    s.camera.bulge_radius_mm = 130;
    s.camera.aim_mm.y = -7;
    return s;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) return 2;
    const std::string out = argv[1];
    const CardPicture card = printed_card();
    const std::string lengths = samples::lengths_client(out, card);
    if (argc > 2) return 0;
    std::vector<Person> people;
    people.push_back(
        {"Imani Castell",
         "imani",
         "Edges thinned by years of tight styles; wears them loose since February.",
         4,
         0,
         Shape::coiled,
         6,
         26,
         {"2026-03-03", "2026-04-14", "2026-05-26", "2026-07-07", "2026-08-18", "2026-09-29"},
         {{"left temple",
           "left-temple",
           11,
           20.6,
           3,
           {0.26, 0.34, 0.46, 0.58, 0.70, 0.82},
           {0.10, 0.16, 0.24, 0.32, 0.42, 0.52}},
          {"right temple",
           "right-temple",
           12,
           13.6,
           2,
           {0.36, 0.44, 0.54, 0.66, 0.76, 0.86},
           {0.14, 0.2, 0.28, 0.36, 0.46, 0.55}},
          {"nape", "nape", 13, 13.6, 2, {0.4, 0.4, 0.41, 0.4, 0.39, 0.4}, {0.2, 0.2, 0.2, 0.2, 0.2, 0.2}}},
         "      \"record\": \"imani/record.json\",\n"
         "      \"targets\": [{\"view\": \"left temple\", \"reading\": \"edge_coverage\", \"value\": 50},\n"
         "                  {\"view\": \"right temple\", \"reading\": \"edge_coverage\", \"value\": 50},\n"
         "                  {\"view\": \"nape\", \"reading\": \"edge_coverage\", \"value\": 30}]\n",
         73});
    people.push_back(
        {"Freya Holm",
         "freya",
         "Asked whether a new lotion does anything at the front.",
         1,
         2,
         Shape::straight,
         5,
         45,
         {"2026-05-05", "2026-06-16", "2026-07-28", "2026-09-08"},
         {{"front hairline", "front", 21, 13.6, 2, {0.62, 0.62, 0.62, 0.62}, {0.2, 0.2, 0.2, 0.2}}},
         "      \"record\": \"freya/record.json\",\n"
         "      \"targets\": [{\"view\": \"front hairline\", \"reading\": \"edge_coverage\", \"value\": 50}]\n",
         70});
    std::string json =
        "{\n  \"salon\": \"The Quiet Chair\",\n  \"today\": \"2026-10-06\",\n  \"printer_scale\": 1.0,\n  \"clients\": "
        "[\n";
    for (const Person& p : people) {
        std::filesystem::create_directories(out + "/" + p.folder);
        json += std::string("    {\n      \"name\": \"") + p.name + "\",\n      \"note\": \"" + p.note +
                "\",\n      \"since\": \"" + p.dates[0] + "\",\n      \"photo_consent\": true,\n      \"visits\": [\n";
        for (size_t v = 0; v < p.dates.size(); ++v) {
            json += "      {\"date\": \"" + p.dates[v] + "\", \"hair\": {}, \"photos\": [\n";
            bool first = true;
            int minute = 10;
            for (const Site& site : p.sites)
                for (int k = 1; k <= site.shots; ++k, ++minute) {
                    std::string taken = p.dates[v];
                    std::replace(taken.begin(), taken.end(), '-', ':');
                    taken += " 10:" + std::to_string(minute) + ":00";
                    const std::string base = std::string(p.folder) + "/0" + std::to_string(v + 1) + "-" +
                                             site.file_part + "-" + std::to_string(k);
                    json += (first ? "" : ",\n") +
                            put(out, base, site.view, scene_of(p, site, v, k, card), taken, p.quality, true);
                    first = false;
                }
            json += "],\n       \"grades\": [";
            if (p.folder == std::string("imani")) {
                const int temple[] = {1, 1, 2, 2, 3, 3};
                json += "{\"zone\": \"left temple\", \"quality\": \"edges\", \"value\": " + std::to_string(temple[v]) +
                        "}, {\"zone\": \"nape\", \"quality\": \"edges\", \"value\": 1}, {\"zone\": \"ends\", "
                        "\"quality\": \"breakage\", \"value\": 2}";
            } else {
                json += "{\"zone\": \"front hairline\", \"quality\": \"edges\", \"value\": 2}";
            }
            json += v + 1 < p.dates.size() ? "]},\n" : "]}\n";
        }
        json += "      ],\n" + p.extra + "    },\n";
    }
    json += lengths + ",\n";
    // The last client's photos must be refused: out of focus, no card, from too far away, steeply tilted, overexposed.
    std::filesystem::create_directories(out + "/noor");
    Person third{"Noor Abadi",
                 "noor",
                 "First try with the phone: every shot has something wrong with it.",
                 5,
                 0,
                 Shape::wavy,
                 5,
                 40,
                 {"2026-09-22"},
                 {{"front hairline", "front", 31, 13.6, 1, {0.7}, {0.3}}},
                 "",
                 70};
    json +=
        "    {\n      \"name\": \"Noor Abadi\",\n      \"note\": \"First try with the phone: every shot has something "
        "wrong with it.\",\n      \"since\": \"2026-09-22\",\n"
        "      \"photo_consent\": false,\n      \"visits\": [\n      {\"date\": \"2026-09-22\", \"hair\": {}, "
        "\"photos\": [\n";
    const char* wrong[] = {"out-of-focus", "no-card", "too-far", "tilted", "overexposed"};
    for (int k = 0; k < 5; ++k) {
        Scene s = scene_of(third, third.sites[0], 0, k, card);
        if (k == 0) s.phone.blur_px = 6;
        if (k == 1) s.card = {};
        if (k == 2) {
            s.camera.px_per_mm = 3.4;
            s.camera.width = 440;
            s.camera.height = 330;
        }
        if (k == 3) {
            s.camera.tilt_deg = 48;
            s.camera.tilt_axis_deg = 0;
            s.camera.height = s.camera.height * 5 / 6;
            s.camera.focal_px *= 1.6;
        }
        if (k == 4) {
            s.phone.exposure = 3.2;
            s.light.key_share = 0.4;
            s.skin = random_skin(*std::make_unique<Rng>(9), 0);
            s.skin_class = 0;
        }
        json += (k ? ",\n" : "") + put(out, std::string("noor/01-") + wrong[k], "front hairline", s,
                                       "2026:09:22 11:0" + std::to_string(k) + ":00", 70, true);
    }
    json +=
        "],\n       \"grades\": []}\n      ],\n      \"record\": \"noor/record.json\", \"targets\": []\n    }\n  "
        "]\n}\n";
    put_text(out + "/scenario.json", json);
    return 0;
}
