#include "intake/jpeg_reader.h"

#include <algorithm>
#include <csetjmp>
#include <cstdio>
#include <cstdlib>
#include <vector>
// jpeglib.h needs <cstdio>, and the numbers in jerror.h depend on jpeglib.h
#include <jpeglib.h>

#include <jerror.h>

#include "intake/errors.h"
#include "intake/upright.h"

namespace kempt::intake {
namespace {

// A progressive file of a camera has about ten scans; one of thousands is made to keep the reader busy.
constexpr int most_scans = 500;

const QString& format_name() {
    static const QString name = QStringLiteral("JPEG");
    return name;
}

}  // namespace

// libjpeg reports errors by a call that must not return. longjmp leaves it, so every call into libjpeg is made inside
// guarded(), and nothing with a destructor lives between setjmp and the library.
struct JpegReader::State {
    jpeg_decompress_struct jpeg{};
    jpeg_error_mgr errors{};
    jpeg_progress_mgr progress{};
    std::jmp_buf back{};
    int code = 0;
    char message[JMSG_LENGTH_MAX] = {};
    bool created = false;

    static State& of(j_common_ptr info) { return *static_cast<State*>(info->client_data); }

    [[noreturn]] static void leave(j_common_ptr info) {
        State& state = of(info);
        state.code = info->err->msg_code;
        info->err->format_message(info, state.message);
        std::longjmp(state.back, 1);
    }

    // Warnings that mean lost pixels end the reading: a value measured on them would be wrong without a sign.
    static void warn(j_common_ptr info, int level) {
        if (level >= 0) return;
        ++info->err->num_warnings;
        switch (info->err->msg_code) {
            case JWRN_JPEG_EOF:
            case JWRN_HIT_MARKER:
            case JWRN_HUFF_BAD_CODE:
            case JWRN_ARITH_BAD_CODE:
            case JWRN_MUST_RESYNC:
            case JWRN_BOGUS_PROGRESSION:
                leave(info);
            default:
                break;
        }
    }

    static void quiet(j_common_ptr) {}

    static void watch(j_common_ptr info) {
        if (!info->is_decompressor || reinterpret_cast<j_decompress_ptr>(info)->input_scan_number <= most_scans) return;
        info->err->msg_code = JWRN_BOGUS_PROGRESSION;
        leave(info);
    }

    template <class Work>
    bool guarded(const Work& work) {
        if (setjmp(back) != 0) return false;
        work();
        return true;
    }

    [[nodiscard]] Error error() const {
        switch (code) {
            case JWRN_JPEG_EOF:
            case JWRN_HIT_MARKER:
                return truncated(format_name());
            case JERR_OUT_OF_MEMORY:
                return out_of_memory();
            case JERR_BAD_PRECISION:
            case JERR_SOF_UNSUPPORTED:
            case JERR_ARITH_NOTIMPL:
            case JERR_CONVERSION_NOTIMPL:
                return unsupported(QStringLiteral("photo-jpeg-kind"),
                                   QStringLiteral("The photo is of a kind of JPEG that Kempt does not read (%1).")
                                       .arg(QString::fromLatin1(message)),
                                   QStringLiteral("Save it as an ordinary JPEG or as PNG."));
            default:
                return damaged(format_name(), QString::fromLatin1(message));
        }
    }
};

JpegReader::JpegReader() : state_(std::make_unique<State>()) {}

JpegReader::~JpegReader() {
    if (state_->created) jpeg_destroy_decompress(&state_->jpeg);
}

Result<JpegHead> JpegReader::open(const QByteArray& bytes) {
    State& state = *state_;
    jpeg_decompress_struct& jpeg = state.jpeg;
    jpeg.err = jpeg_std_error(&state.errors);
    state.errors.error_exit = State::leave;
    state.errors.emit_message = State::warn;
    state.errors.output_message = State::quiet;
    state.progress.progress_monitor = State::watch;
    jpeg.client_data = &state;

    JOCTET* profile = nullptr;
    unsigned int profile_size = 0;
    const bool read = state.guarded([&] {
        jpeg_create_decompress(&jpeg);
        state.created = true;
        jpeg.progress = &state.progress;
        jpeg_save_markers(&jpeg, JPEG_APP0 + 1, 0xffff);
        jpeg_save_markers(&jpeg, JPEG_APP0 + 2, 0xffff);
        jpeg_mem_src(&jpeg, reinterpret_cast<const unsigned char*>(bytes.constData()),
                     static_cast<unsigned long>(bytes.size()));
        jpeg_read_header(&jpeg, TRUE);
        jpeg_read_icc_profile(&jpeg, &profile, &profile_size);
    });
    JpegHead head;
    if (profile) head.icc = QByteArray(reinterpret_cast<const char*>(profile), static_cast<qsizetype>(profile_size));
    std::free(profile);
    if (!read) return state.error();

    head.stored = QSize(static_cast<int>(jpeg.image_width), static_cast<int>(jpeg.image_height));
    head.grey = jpeg.jpeg_color_space == JCS_GRAYSCALE;
    head.cmyk = jpeg.jpeg_color_space == JCS_CMYK || jpeg.jpeg_color_space == JCS_YCCK;
    head.inverted = head.cmyk && jpeg.saw_Adobe_marker;
    for (const jpeg_marker_struct* marker = jpeg.marker_list; marker; marker = marker->next) {
        const QByteArray data = QByteArray::fromRawData(reinterpret_cast<const char*>(marker->data),
                                                        static_cast<qsizetype>(marker->data_length));
        if (marker->marker != JPEG_APP0 + 1 || !data.startsWith(QByteArray("Exif\0\0", 6))) continue;
        head.exif = QByteArray(data.constData(), data.size());
        break;
    }
    return head;
}

Result<cv::Mat> JpegReader::pixels(int orientation) {
    State& state = *state_;
    jpeg_decompress_struct& jpeg = state.jpeg;
    const bool cmyk = jpeg.jpeg_color_space == JCS_CMYK || jpeg.jpeg_color_space == JCS_YCCK;
    const int type = cmyk ? CV_8UC4 : CV_8UC3;
    const QSize stored(static_cast<int>(jpeg.image_width), static_cast<int>(jpeg.image_height));
    const QSize size = upright_size(stored, orientation);
    cv::Mat upright(size.height(), size.width(), type);
    const bool as_stored = orientation <= 1 || orientation > 8;
    cv::Mat strip;
    if (!as_stored) strip.create(std::min(strip_rows, stored.height()), stored.width(), type);

    jpeg.out_color_space = cmyk ? JCS_CMYK : JCS_RGB;
    if (!state.guarded([&] { jpeg_start_decompress(&jpeg); })) return state.error();
    std::vector<JSAMPROW> rows;
    for (int first = 0; first < stored.height();) {
        const int count = std::min(strip_rows, stored.height() - first);
        rows.clear();
        for (int row = 0; row < count; ++row) rows.push_back(as_stored ? upright.ptr(first + row) : strip.ptr(row));
        const bool read = state.guarded([&] {
            for (int done = 0; done < count;)
                done += static_cast<int>(
                    jpeg_read_scanlines(&jpeg, rows.data() + done, static_cast<JDIMENSION>(count - done)));
        });
        if (!read) return state.error();
        if (!as_stored) lay_strip(strip.rowRange(0, count), first, stored, orientation, upright);
        first += count;
    }
    // Reads on to the end marker: its absence shows a file that was cut.
    if (!state.guarded([&] { jpeg_finish_decompress(&jpeg); })) return state.error();
    return upright;
}

}  // namespace kempt::intake
