#include "write_photo.h"

#include <cstdio>
#include <cstdlib>

#include <jpeglib.h>
#include <lcms2.h>

#include "card/card_layout.h"
#include "colour/colour.h"

namespace render {

namespace {
std::vector<uint8_t> display_p3_profile() {
    cmsCIExyY white{0.3127, 0.3290, 1};
    cmsCIExyYTRIPLE primaries{{0.680, 0.320, 1}, {0.265, 0.690, 1}, {0.150, 0.060, 1}};  // SMPTE EG 432-1
    cmsFloat64Number srgb[5] = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};
    cmsToneCurve* curve = cmsBuildParametricToneCurve(nullptr, 4, srgb);
    cmsToneCurve* curves[3] = {curve, curve, curve};
    cmsHPROFILE profile = cmsCreateRGBProfile(&white, &primaries, curves);
    cmsUInt32Number size = 0;
    cmsSaveProfileToMem(profile, nullptr, &size);
    std::vector<uint8_t> bytes(size);
    cmsSaveProfileToMem(profile, bytes.data(), &size);
    cmsCloseProfile(profile);
    cmsFreeToneCurve(curve);
    return bytes;
}

// A little-endian TIFF block with one EXIF directory holding DateTimeOriginal.
std::vector<uint8_t> exif_block(const std::string& taken) {
    std::vector<uint8_t> b = {'E', 'x', 'i', 'f', 0, 0, 'I', 'I', 42, 0, 8, 0, 0, 0};
    auto put16 = [&](int v) { b.push_back(static_cast<uint8_t>(v & 255)), b.push_back(static_cast<uint8_t>(v >> 8)); };
    auto put32 = [&](int v) { put16(v & 65535), put16(v >> 16); };
    put16(1);  // IFD0: pointer to the EXIF directory
    put16(0x8769), put16(4), put32(1), put32(26), put32(0);
    put16(1);  // EXIF directory at 26
    put16(0x9003), put16(2), put32(20), put32(44), put32(0);
    for (size_t i = 0; i < 20; ++i) b.push_back(i < taken.size() ? static_cast<uint8_t>(taken[i]) : 0);
    return b;
}
}  // namespace

std::vector<uint8_t> jpeg_of(const Shot& shot, int quality, bool display_p3, const std::string& taken,
                             bool half_chroma) {
    jpeg_compress_struct c;
    jpeg_error_mgr errors;
    c.err = jpeg_std_error(&errors);
    jpeg_create_compress(&c);
    unsigned char* out = nullptr;
    unsigned long size = 0;
    jpeg_mem_dest(&c, &out, &size);
    c.image_width = static_cast<JDIMENSION>(shot.width);
    c.image_height = static_cast<JDIMENSION>(shot.height);
    c.input_components = 3;
    c.in_color_space = JCS_RGB;
    jpeg_set_defaults(&c);
    jpeg_set_quality(&c, quality, TRUE);
    if (!half_chroma) c.comp_info[0].h_samp_factor = c.comp_info[0].v_samp_factor = 1;
    c.optimize_coding = TRUE;
    jpeg_start_compress(&c, TRUE);
    if (!taken.empty()) {
        const auto block = exif_block(taken);
        jpeg_write_marker(&c, JPEG_APP0 + 1, block.data(), static_cast<unsigned>(block.size()));
    }
    if (display_p3) {
        const auto profile = display_p3_profile();
        jpeg_write_icc_profile(&c, profile.data(), static_cast<unsigned>(profile.size()));
    }
    while (c.next_scanline < c.image_height) {
        auto* row = const_cast<uint8_t*>(shot.rgb.data()) +
                    static_cast<size_t>(3) * c.next_scanline * static_cast<size_t>(shot.width);
        jpeg_write_scanlines(&c, &row, 1);
    }
    jpeg_finish_compress(&c);
    std::vector<uint8_t> bytes(out, out + size);
    jpeg_destroy_compress(&c);
    std::free(out);
    return bytes;
}

void write_file(const std::string& path, const std::vector<uint8_t>& bytes) {
    if (FILE* f = std::fopen(path.c_str(), "wb")) {
        std::fwrite(bytes.data(), 1, bytes.size(), f);
        std::fclose(f);
    }
}

CardPicture printed_card() {
    CardPicture card;
    card.px_per_mm = 30;
    const cv::Mat face = kempt::card::draw(kempt::card::Kind::card, kempt::card::Paper::letter, card.px_per_mm);
    card.width = face.cols;
    card.height = face.rows;
    for (int y = 0; y < face.rows; ++y)
        for (int x = 0; x < face.cols; ++x)
            card.reflectance.push_back(
                static_cast<float>(kempt::colour::linear_from_srgb(face.at<uchar>(y, x) / 255.0)));
    return card;
}

}  // namespace render
