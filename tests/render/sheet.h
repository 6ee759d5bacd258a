// Photos of hair that lies on the printed gauge sheet: a hem of thousands of strands or a few loose ones, the gauge
// card beside them, the table around. World: the sheet's millimetres, x to the right, y down, origin at the page's top
// left corner, z from the paper up towards the camera.
#pragma once

#include <cstdint>
#include <vector>

#include "card/card_layout.h"
#include "close_up.h"
#include "scene.h"
#include "strands.h"

namespace render {

struct SheetOptions {
    kempt::card::Paper paper = kempt::card::Paper::letter;
    kempt::card::Ground ground = kempt::card::Ground::white;
    int hair_colour = -1;  // -1: any
    double px_per_mm = 0;  // at the middle of the sheet; 0: 10-14 (a whole sheet is then 7-14 megapixels)
    double tilt_max_deg = 12;
    double phone_strength = 0.7;
    bool card = true;    // the gauge card lies between the two lower markers
    V2 card_mm{-1, -1};  // its middle; below 0: there
    bool quarter_turns = true;
    double creases = 0.2;  // chance of each of up to two
    double lint = 1;       // fibres and specks, about 15 of them at 1; 0: none
    double table_mm = 8;   // seen around the sheet
};

// The sheet that the guide tells a stylist to take for ends: the blue one for grey hair, with or without dark strands.
// KEMPT_SHEET=white in the environment: the white one for all, to compare the two.
[[nodiscard]] kempt::card::Ground ground_for_ends(int hair_colour);

// All of a photo but the strands. person_seed gives hair, paper and table; shot_seed light, phone, camera and where
// the card lies. strand_seed and lie_seed are there for whoever makes the strands.
struct SheetScene {
    kempt::card::Paper paper = kempt::card::Paper::letter;
    kempt::card::Ground ground = kempt::card::Ground::white;
    V2 size_mm;                    // of the page
    cv::Rect2d blue_mm;            // the printed area; empty on the white sheet
    Rgb blue{0.05f, 0.12f, 0.5f};  // its reflectance relative to the bare paper's
    double blue_mottle = 0.02;     // relative SD about it
    HairLook hair;
    int hair_colour = 0;
    Lighting light;  // its gradients are about the middle of the page
    Phone phone;
    Camera camera;
    CardPicture card;                      // not present(): none
    Rgb white{0.85f, 0.86f, 0.87f};        // reflectance of bare paper
    float ink = 0.035f;                    // of printed black
    double grain = 0.008, mottle = 0.008;  // relative SD about
    struct Crease {
        V2 through;
        double angle, depth, width_mm;
    };
    std::vector<Crease> creases;
    Coat lint;  // never part of the truth
    Rgb table{0.3f, 0.25f, 0.2f};
    uint32_t paper_seed = 1;
    uint64_t strand_seed = 1, lie_seed = 2, noise_seed = 3;
};
[[nodiscard]] SheetScene sheet_scene(uint64_t person_seed, uint64_t shot_seed, const SheetOptions& options = {});

struct SheetShot {
    Shot photo;                // width, height, rgb; its truth is empty. jpeg_of(shot.photo, ...)
    std::vector<float> cover;  // share of each pixel hidden by the coat's strands (not by lint)
    std::vector<std::vector<V2>> strands_mm, strands_px;  // of the coat, in its order: paper mm below, pixels as seen
    std::vector<double> lengths_mm;                       // of strands_mm, along the paper
    double px_per_mm = 0, tilt_deg = 0;
};
// Strands are drawn from the lowest to the highest, each with the exact share of a pixel that it hides; two that share
// a pixel hide it as if they lay independently. taper: width at the tip as a share of that at the root, over the last
// fifth. One thread.
[[nodiscard]] SheetShot take_sheet(const SheetScene& scene, const Coat& coat, double taper = 0.6);
// The same before the phone, for those who want linear light.
[[nodiscard]] Rendered sheet_light(const SheetScene& scene, const Coat& coat, double taper = 0.6);

// ---- loose strands

struct LooseStrand {  // what a hair keeps when it is thrown down anew
    double length_mm = 150, radius_mm = 0.035;
    Rgb albedo;
    Shape shape = Shape::straight;
    double wave_mm = 15, wave_amplitude_mm = 1.5;  // wavy
    double coil_mm = 8, coil_pitch_mm = 6;         // coiled: curve diameter, advance of a turn
    double wander = 0.012;                         // SD of the curvature, 1/mm
};
struct LooseOptions {
    int count = 40;
    double length_mm = 200, spread = 0.25;  // median and SD of the log of unbroken strands, clamped to 50-350 mm
    double short_share = 0.2;               // of the strands are broken ones of 5-49 mm
    Shape shape = Shape::straight;
    double curl_mm = 0;                                // wave length or curve diameter; 0: any usual one
    double width_mean_mm = 0.07, width_sd_mm = 0.012;  // Wolfram 2003: 60-80 um typical
};
[[nodiscard]] std::vector<LooseStrand> loose_strands(Rng& rng, const HairLook& hair, const LooseOptions& options);

struct Lie {
    V2 from{8, 32}, to{207, 238};  // they lie inside this rectangle (clear of a Letter sheet's markers and card)
    double apart_mm = 0;           // > 0: no strand comes closer to another where that can be had
    double lift_mm = 0.12;         // mean height above the paper
};
// The rectangle of a scene's sheet that is free of markers and card.
[[nodiscard]] Lie free_lie(const SheetScene& scene);
// Thrown down at random: where and how they bend comes from rng, their lengths (along the paper, to 0.01 mm) stay. A
// strand too long for the rectangle bends back into it. Points 0.4 mm apart or closer.
[[nodiscard]] Coat throw_down(Rng& rng, const std::vector<LooseStrand>& strands, const Lie& lie);

}  // namespace render
