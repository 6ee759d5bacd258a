// ICC profiles made with lcms2, and HEIC files made with libheif.
#include <lcms2.h>
#include <libheif/heif.h>

#include <boost/test/unit_test.hpp>
#include <memory>

#include "app/intake/pictures.h"

namespace kempt::test {
namespace {

QByteArray bytes_of(cmsHPROFILE profile) {
    BOOST_REQUIRE(profile != nullptr);
    cmsUInt32Number size = 0;
    BOOST_REQUIRE(cmsSaveProfileToMem(profile, nullptr, &size));
    QByteArray bytes(static_cast<qsizetype>(size), '\0');
    BOOST_REQUIRE(cmsSaveProfileToMem(profile, bytes.data(), &size));
    cmsCloseProfile(profile);
    return bytes;
}

// CIELAB on the connection space's 16 bits (ICC.1:2010, 6.3.4.2): L* 0..100 to 0..65535, a* and b* 0 at 32896.
cmsInt32Number lab_of_cmyk(const cmsUInt16Number in[], cmsUInt16Number out[], void*) {
    const double c = in[0] / 65535.0, m = in[1] / 65535.0, y = in[2] / 65535.0, k = in[3] / 65535.0;
    out[0] = static_cast<cmsUInt16Number>(65535 * (1 - k) * (1 - (c + m + y) / 3));
    out[1] = out[2] = 32896;
    return 1;
}

cmsInt32Number lab_of_rgb(const cmsUInt16Number in[], cmsUInt16Number out[], void*) {
    out[0] = static_cast<cmsUInt16Number>((in[0] + in[1] + in[2]) / 3);
    out[1] = static_cast<cmsUInt16Number>(32896 + (in[0] - in[1]) / 8);
    out[2] = 32896;
    return 1;
}

QByteArray table_profile(cmsColorSpaceSignature space, cmsUInt32Number channels, cmsSAMPLER16 sampler) {
    cmsHPROFILE profile = cmsCreateProfilePlaceholder(nullptr);
    cmsSetProfileVersion(profile, 4.3);
    cmsSetDeviceClass(profile, channels == 4 ? cmsSigOutputClass : cmsSigInputClass);
    cmsSetColorSpace(profile, space);
    cmsSetPCS(profile, cmsSigLabData);
    cmsPipeline* pipeline = cmsPipelineAlloc(nullptr, channels, 3);
    cmsStage* table = cmsStageAllocCLut16bit(nullptr, 9, channels, 3, nullptr);
    BOOST_REQUIRE(cmsStageSampleCLut16bit(table, sampler, nullptr, 0));
    // lutAToBType (ICC.1:2010, 10.10) keeps a table only between curves, here straight ones
    cmsPipelineInsertStage(pipeline, cmsAT_END, cmsStageAllocToneCurves(nullptr, channels, nullptr));
    cmsPipelineInsertStage(pipeline, cmsAT_END, table);
    cmsPipelineInsertStage(pipeline, cmsAT_END, cmsStageAllocToneCurves(nullptr, 3, nullptr));
    BOOST_REQUIRE(cmsWriteTag(profile, cmsSigAToB0Tag, pipeline));
    cmsPipelineFree(pipeline);
    BOOST_REQUIRE(cmsWriteTag(profile, cmsSigMediaWhitePointTag, cmsD50_XYZ()));
    return bytes_of(profile);
}

}  // namespace

QByteArray icc_srgb() {
    return bytes_of(cmsCreate_sRGBProfile());
}

QByteArray icc_display_p3() {
    // SMPTE EG 432-1 primaries with D65 white, and the curve of IEC 61966-2-1.
    const cmsCIExyY white{0.3127, 0.3290, 1};
    const cmsCIExyYTRIPLE primaries{{0.680, 0.320, 1}, {0.265, 0.690, 1}, {0.150, 0.060, 1}};
    const cmsFloat64Number curve[5] = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};
    cmsToneCurve* tone = cmsBuildParametricToneCurve(nullptr, 4, curve);
    cmsToneCurve* tones[3] = {tone, tone, tone};
    const QByteArray bytes = bytes_of(cmsCreateRGBProfile(&white, &primaries, tones));
    cmsFreeToneCurve(tone);
    return bytes;
}

QByteArray icc_grey(double gamma) {
    cmsToneCurve* tone = cmsBuildGamma(nullptr, gamma);
    const QByteArray bytes = bytes_of(cmsCreateGrayProfile(cmsD50_xyY(), tone));
    cmsFreeToneCurve(tone);
    return bytes;
}

QByteArray icc_rgb_by_table() {
    return table_profile(cmsSigRgbData, 3, lab_of_rgb);
}
QByteArray icc_cmyk() {
    return table_profile(cmsSigCmykData, 4, lab_of_cmyk);
}

std::optional<QByteArray> heic_file(const cv::Mat& rgb, const HeicOptions& options) {
    const std::unique_ptr<heif_context, decltype(&heif_context_free)> context(heif_context_alloc(), heif_context_free);
    heif_encoder* raw_encoder = nullptr;
    if (heif_context_get_encoder_for_format(context.get(), heif_compression_HEVC, &raw_encoder).code != heif_error_Ok)
        return std::nullopt;
    const std::unique_ptr<heif_encoder, decltype(&heif_encoder_release)> encoder(raw_encoder, heif_encoder_release);
    heif_encoder_set_lossy_quality(raw_encoder, 95);
    heif_encoder_set_parameter_string(raw_encoder, "chroma", "444");

    heif_image* raw = nullptr;
    const int bits = options.ten_bits ? 10 : 8;
    const heif_chroma chroma = options.ten_bits ? heif_chroma_interleaved_RRGGBB_LE : heif_chroma_interleaved_RGB;
    BOOST_REQUIRE(heif_image_create(rgb.cols, rgb.rows, heif_colorspace_RGB, chroma, &raw).code == heif_error_Ok);
    const std::unique_ptr<heif_image, decltype(&heif_image_release)> image(raw, heif_image_release);
    BOOST_REQUIRE(heif_image_add_plane(raw, heif_channel_interleaved, rgb.cols, rgb.rows, bits).code == heif_error_Ok);
    int stride = 0;
    uint8_t* plane = heif_image_get_plane(raw, heif_channel_interleaved, &stride);
    cv::Mat view(rgb.rows, rgb.cols, options.ten_bits ? CV_16UC3 : CV_8UC3, plane, static_cast<std::size_t>(stride));
    rgb.convertTo(view, view.depth(), options.ten_bits ? 1023.0 / 255 : 1.0);
    if (!options.icc.isEmpty())
        heif_image_set_raw_color_profile(raw, "prof", options.icc.constData(),
                                         static_cast<std::size_t>(options.icc.size()));
    heif_encoding_options* settings = heif_encoding_options_alloc();
    settings->image_orientation = static_cast<heif_orientation>(options.turn);
    heif_color_profile_nclx* nclx = nullptr;
    if (options.p3) {
        nclx = heif_nclx_color_profile_alloc();
        heif_nclx_color_profile_set_color_primaries(nclx, heif_color_primaries_SMPTE_EG_432_1);
        heif_nclx_color_profile_set_transfer_characteristics(nclx, heif_transfer_characteristic_IEC_61966_2_1);
        heif_nclx_color_profile_set_matrix_coefficients(nclx, heif_matrix_coefficients_ITU_R_BT_601_6);
        nclx->full_range_flag = 1;
        heif_image_set_nclx_color_profile(raw, nclx);
        settings->output_nclx_profile = nclx;
        settings->macOS_compatibility_workaround_no_nclx_profile = 0;
    }
    heif_image_handle* handle = nullptr;
    const heif_error encoded = heif_context_encode_image(context.get(), raw, raw_encoder, settings, &handle);
    BOOST_REQUIRE_MESSAGE(encoded.code == heif_error_Ok, encoded.message);
    heif_encoding_options_free(settings);
    heif_nclx_color_profile_free(nclx);
    if (!options.exif.isEmpty())
        heif_context_add_exif_metadata(context.get(), handle, options.exif.constData(),
                                       static_cast<int>(options.exif.size()));
    heif_image_handle_release(handle);

    QByteArray bytes;
    heif_writer writer{};
    writer.writer_api_version = 1;
    writer.write = [](heif_context*, const void* data, size_t size, void* user) {
        static_cast<QByteArray*>(user)->append(static_cast<const char*>(data), static_cast<qsizetype>(size));
        return heif_error{heif_error_Ok, heif_suberror_Unspecified, "ok"};
    };
    BOOST_REQUIRE(heif_context_write(context.get(), &writer, &bytes).code == heif_error_Ok);
    return bytes;
}

}  // namespace kempt::test
