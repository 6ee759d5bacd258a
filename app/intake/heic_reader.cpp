#include "intake/heic_reader.h"

#include <libheif/heif.h>

#include <algorithm>
#include <limits>

#include "intake/byte_reader.h"
#include "intake/errors.h"

namespace kempt::intake {
namespace {

template <auto Free>
struct FreeBy {
    template <class T>
    void operator()(T* thing) const {
        Free(thing);
    }
};
using Context = std::unique_ptr<heif_context, FreeBy<heif_context_free>>;
using Handle = std::unique_ptr<heif_image_handle, FreeBy<heif_image_handle_release>>;
using Image = std::unique_ptr<heif_image, FreeBy<heif_image_release>>;
using Options = std::unique_ptr<heif_decoding_options, FreeBy<heif_decoding_options_free>>;
using Nclx = std::unique_ptr<heif_color_profile_nclx, FreeBy<heif_nclx_color_profile_free>>;

Error error_of(const heif_error& error) {
    const QString format = QStringLiteral("HEIC");
    if (error.code == heif_error_Memory_allocation_error) return out_of_memory();
    if (error.subcode == heif_suberror_End_of_data) return truncated(format);
    if (error.code == heif_error_Unsupported_filetype || error.code == heif_error_Unsupported_feature)
        return unsupported(QStringLiteral("photo-heic-kind"),
                           QStringLiteral("The photo is of a kind of HEIC that cannot be read here (%1).")
                               .arg(QString::fromUtf8(error.message)),
                           QStringLiteral("Let the phone save or send it as JPEG."));
    return damaged(format, QString::fromUtf8(error.message));
}

QByteArray exif_of(const heif_image_handle* handle) {
    heif_item_id id = 0;
    if (heif_image_handle_get_list_of_metadata_block_IDs(handle, "Exif", &id, 1) < 1) return {};
    const std::size_t size = heif_image_handle_get_metadata_size(handle, id);
    if (size < 8 || size > 64u * 1024 * 1024) return {};
    QByteArray block(static_cast<qsizetype>(size), Qt::Uninitialized);
    if (heif_image_handle_get_metadata(handle, id, block.data()).code != heif_error_Ok) return {};
    // ISO/IEC 23008-12, annex A.2.1: the first four bytes say how far behind them the TIFF header begins.
    const qint64 start = qint64(ByteReader(block, true).u32(0)) + 4;
    return start < block.size() ? block.mid(start) : QByteArray();
}

struct Colours {
    Profile profile;
    bool hdr = false;
};

// Code points of ITU-T H.273, tables 2 and 3.
Colours colours_from_nclx(const heif_color_profile_nclx& nclx, QStringList& notes) {
    double gamma = 0;  // the sRGB curve, also for the television curves: viewers show such photos so (common practice)
    switch (nclx.transfer_characteristics) {
        case heif_transfer_characteristic_ITU_R_BT_2100_0_PQ:
        case heif_transfer_characteristic_ITU_R_BT_2100_0_HLG:
            return {Profile(), true};
        case heif_transfer_characteristic_linear:
            gamma = 1;
            break;
        case heif_transfer_characteristic_ITU_R_BT_470_6_System_M:
            gamma = 2.2;
            break;
        case heif_transfer_characteristic_ITU_R_BT_470_6_System_B_G:
            gamma = 2.8;
            break;
        default:
            break;
    }
    const char* name = "primaries of the HEIC file";
    switch (nclx.color_primaries) {
        case heif_color_primaries_unspecified:
            notes.append(QStringLiteral("no colour profile in the file, taken as sRGB"));
            return {Profile::srgb(), false};
        case heif_color_primaries_ITU_R_BT_709_5:
            name = "sRGB";
            break;
        case heif_color_primaries_SMPTE_EG_432_1:
            name = "Display P3";
            break;
        case heif_color_primaries_ITU_R_BT_2020_2_and_2100_0:
            name = "BT.2020 primaries";
            break;
        default:
            break;
    }
    return {Profile::from_primaries({nclx.color_primary_white_x, nclx.color_primary_white_y},
                                    {nclx.color_primary_red_x, nclx.color_primary_red_y},
                                    {nclx.color_primary_green_x, nclx.color_primary_green_y},
                                    {nclx.color_primary_blue_x, nclx.color_primary_blue_y}, gamma, name),
            false};
}

Colours colours_of(const heif_image_handle* handle, QStringList& notes) {
    const std::size_t size = heif_image_handle_get_raw_color_profile_size(handle);
    if (size > 0 && size <= 64u * 1024 * 1024) {
        QByteArray icc(static_cast<qsizetype>(size), Qt::Uninitialized);
        if (heif_image_handle_get_raw_color_profile(handle, icc.data()).code == heif_error_Ok) {
            const Profile profile = Profile::from_icc(icc);
            if (profile.valid()) return {profile, false};
        }
    }
    heif_color_profile_nclx* raw = nullptr;
    if (heif_image_handle_get_nclx_color_profile(handle, &raw).code != heif_error_Ok || !raw) return {};
    const Nclx nclx(raw);
    return colours_from_nclx(*nclx, notes);
}

// libheif keeps 10 and 12 bits at the low end of 16; here the whole range is used.
void spread_to_16_bits(cv::Mat& picture, int bits) {
    const double scale = 65535.0 / ((1 << bits) - 1);
    picture.convertTo(picture, -1, scale);
}

}  // namespace

struct HeicReader::State {
    Context context;
    Handle handle;
};

HeicReader::HeicReader() : state_(std::make_unique<State>()) {}
HeicReader::~HeicReader() = default;

Result<HeicHead> HeicReader::open(const QByteArray& bytes) {
    State& state = *state_;
    state.context.reset(heif_context_alloc());
    if (!state.context) return out_of_memory();
    // Wider than any photo within the limits of this room, which are checked by the caller.
    heif_context_set_maximum_image_size_limit(state.context.get(), std::numeric_limits<int>::max());
    heif_error error = heif_context_read_from_memory_without_copy(state.context.get(), bytes.constData(),
                                                                  static_cast<std::size_t>(bytes.size()), nullptr);
    if (error.code != heif_error_Ok) return error_of(error);
    heif_image_handle* handle = nullptr;
    error = heif_context_get_primary_image_handle(state.context.get(), &handle);
    state.handle.reset(handle);
    if (error.code != heif_error_Ok) return error_of(error);
    HeicHead head;
    head.upright = QSize(heif_image_handle_get_width(handle), heif_image_handle_get_height(handle));
    if (head.upright.isEmpty()) return damaged(QStringLiteral("HEIC"), QStringLiteral("impossible size"));
    head.exif = exif_of(handle);
    return head;
}

Result<Loaded> HeicReader::pixels(QStringList& notes) {
    const heif_image_handle* handle = state_->handle.get();
    const Colours colours = colours_of(handle, notes);
    if (colours.hdr)
        return unsupported(
            QStringLiteral("photo-hdr"),
            QStringLiteral("The photo is stored with an HDR tone curve, which cannot be measured from."),
            QStringLiteral("Switch HDR off in the camera's settings, or let the phone save it as JPEG."));
    const bool deep = heif_image_handle_get_luma_bits_per_pixel(handle) > 8;
    const bool alpha = heif_image_handle_has_alpha_channel(handle) != 0;
    const heif_chroma chroma = deep ? (alpha ? heif_chroma_interleaved_RRGGBBAA_LE : heif_chroma_interleaved_RRGGBB_LE)
                                    : (alpha ? heif_chroma_interleaved_RGBA : heif_chroma_interleaved_RGB);
    const Options options(heif_decoding_options_alloc());
    if (!options) return out_of_memory();
    options->strict_decoding = 1;
    heif_image* raw = nullptr;
    const heif_error error = heif_decode_image(handle, &raw, heif_colorspace_RGB, chroma, options.get());
    const Image image(raw);
    if (error.code != heif_error_Ok) return error_of(error);

    int stride = 0;
    const uint8_t* plane = heif_image_get_plane_readonly(image.get(), heif_channel_interleaved, &stride);
    const int width = heif_image_get_width(image.get(), heif_channel_interleaved);
    const int height = heif_image_get_height(image.get(), heif_channel_interleaved);
    if (!plane || width <= 0 || height <= 0 || width != heif_image_handle_get_width(handle) ||
        height != heif_image_handle_get_height(handle))
        return damaged(QStringLiteral("HEIC"), QStringLiteral("no picture in it"));
    // Only read from; cv::Mat has no constant view.
    const cv::Mat all(height, width, CV_MAKETYPE(deep ? CV_16U : CV_8U, alpha ? 4 : 3), const_cast<uint8_t*>(plane),
                      static_cast<std::size_t>(stride));
    Loaded loaded;
    loaded.profile = colours.profile;
    const int depth_bits = heif_image_get_bits_per_pixel_range(image.get(), heif_channel_interleaved);
    if (alpha) {
        loaded.pixels.create(height, width, CV_MAKETYPE(all.depth(), 3));
        loaded.alpha.create(height, width, CV_MAKETYPE(all.depth(), 1));
        const int from_to[] = {0, 0, 1, 1, 2, 2}, opacity[] = {3, 0};
        cv::mixChannels(&all, 1, &loaded.pixels, 1, from_to, 3);
        cv::mixChannels(&all, 1, &loaded.alpha, 1, opacity, 1);
    } else {
        loaded.pixels = all.clone();
    }
    if (deep && depth_bits > 8 && depth_bits < 16) {
        spread_to_16_bits(loaded.pixels, depth_bits);
        if (alpha) spread_to_16_bits(loaded.alpha, depth_bits);
    }
    keep_alpha_if_any(loaded);
    return loaded;
}

}  // namespace kempt::intake
