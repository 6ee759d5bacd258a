#include "intake/intake.h"

#include <QCryptographicHash>
#include <exception>
#include <functional>
#include <future>
#include <memory>
#include <new>
#include <optional>

#include "intake/errors.h"
#include "intake/heic_reader.h"
#include "intake/jpeg_reader.h"
#include "intake/layout.h"
#include "intake/loaded.h"
#include "intake/qt_reader.h"
#include "intake/sniff.h"
#include "intake/upright.h"

namespace kempt::intake {
namespace {

Header header_of(Format format, QSize stored, const ExifFacts& exif) {
    Header header;
    header.format = name_of(format);
    header.size = upright_size(stored, exif.orientation);
    header.orientation = exif.orientation;
    header.taken = exif.taken;
    header.camera = exif.camera;
    return header;
}

std::optional<Error> over_limit(QSize size, const Limits& limits) {
    if (qint64(size.width()) * size.height() <= limits.pixels) return std::nullopt;
    return too_many_pixels(size.width(), size.height(), limits.pixels);
}

// A file opened as far as its header; the pixels come when asked for.
struct Opened {
    Header header;
    ExifFacts exif;
    std::function<Result<Loaded>(QStringList& notes)> load;
    bool turned_by_reader = false;
};

Result<Opened> open_jpeg(const QByteArray& bytes) {
    const auto reader = std::make_shared<JpegReader>();
    Result<JpegHead> head = reader->open(bytes);
    if (!head) return head.error();
    Opened opened;
    opened.exif = facts_from_exif(head->exif);
    opened.header = header_of(Format::jpeg, head->stored, opened.exif);
    opened.turned_by_reader = true;
    opened.load = [reader, head = std::move(head.value()),
                   turn = opened.exif.orientation](QStringList&) -> Result<Loaded> {
        Result<cv::Mat> pixels = reader->pixels(turn);
        if (!pixels) return pixels.error();
        Loaded loaded;
        loaded.pixels = std::move(pixels.value());
        loaded.ink = head.cmyk ? (head.inverted ? Ink::cmyk_inverted : Ink::cmyk) : head.grey ? Ink::grey : Ink::rgb;
        loaded.profile = Profile::from_icc(head.icc);
        return loaded;
    };
    return opened;
}

Result<Opened> open_heic(const QByteArray& bytes) {
    const auto reader = std::make_shared<HeicReader>();
    const Result<HeicHead> head = reader->open(bytes);
    if (!head) return head.error();
    Opened opened;
    opened.exif = facts_from_exif(head->exif);
    opened.exif.orientation = 1;  // the container's own turning counts, and libheif has done it
    opened.header = header_of(Format::heic, head->upright, opened.exif);
    opened.turned_by_reader = true;
    opened.load = [reader](QStringList& notes) { return reader->pixels(notes); };
    return opened;
}

Result<Opened> open_with_layout(const QByteArray& bytes, Format format) {
    const Result<Layout> layout = format == Format::png    ? png_layout(bytes)
                                  : format == Format::webp ? webp_layout(bytes)
                                                           : tiff_layout(bytes);
    if (!layout) return layout.error();
    Opened opened;
    opened.exif = layout->exif;
    opened.header = header_of(format, layout->stored, layout->exif);
    opened.load = [&bytes, format, layout = layout.value()](QStringList& notes) -> Result<Loaded> {
        if (format == Format::png && !png_sums_agree(bytes))
            return damaged(QStringLiteral("PNG"), QStringLiteral("check sums disagree"));
        if (layout.pages > 1) notes.append(QStringLiteral("page 1 of %1").arg(layout.pages));
        return read_with_qt(bytes, format, layout);
    };
    return opened;
}

Result<Opened> open(const QByteArray& bytes, const Limits& limits) {
    if (bytes.size() > limits.bytes) return too_many_bytes(bytes.size(), limits.bytes);
    const Result<Format> format = sniff(bytes);
    if (!format) return format.error();
    Result<Opened> opened = *format == Format::jpeg   ? open_jpeg(bytes)
                            : *format == Format::heic ? open_heic(bytes)
                                                      : open_with_layout(bytes, *format);
    if (!opened) return opened;
    if (auto error = over_limit(opened->header.size, limits)) return *error;
    return opened;
}

Result<Decoded> decode_opened(const QByteArray& bytes, const Opened& opened, CheckSum check_sum) {
    // 6 MB take 30 ms, a third of the time of their pixels: done beside them (on the same thread where there is no
    // other).
    std::future<QString> sum;
    if (check_sum == CheckSum::wanted)
        sum = std::async(std::launch::async | std::launch::deferred, [&bytes] {
            return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
        });
    Decoded decoded;
    decoded.header = opened.header;
    Result<Loaded> loaded = opened.load(decoded.notes);
    if (!loaded) return loaded.error();
    Profile profile = loaded->profile;
    if (!profile.valid() && opened.exif.adobe_rgb && loaded->ink == Ink::rgb) {
        profile = Profile::adobe_rgb();
        decoded.notes.append(QStringLiteral("no colour profile in the file, taken as Adobe RGB as its EXIF says"));
    }
    cv::Mat& pixels = loaded->pixels;
    decoded.photo.colour = take_profile(pixels, loaded->ink, profile, decoded.notes);
    if (!loaded->alpha.empty()) {
        lay_over_white(pixels, loaded->alpha, decoded.photo.colour);
        decoded.notes.append(QStringLiteral("alpha laid over white"));
    }
    decoded.photo.pixels = opened.turned_by_reader ? pixels : turned_upright(pixels, opened.header.orientation);
    if (sum.valid()) decoded.sha256 = sum.get();
    return decoded;
}

// No exception leaves this room.
template <class Value, class Work>
Result<Value> caught(const Work& work) {
    try {
        return work();
    } catch (const std::bad_alloc&) {
        return out_of_memory();
    } catch (const cv::Exception& error) {
        if (error.code == cv::Error::StsNoMem) return out_of_memory();
        return damaged(QString(), QString::fromStdString(error.err));
    } catch (const std::exception& error) {
        return damaged(QString(), QString::fromUtf8(error.what()));
    }
}

}  // namespace

Result<Header> read_header(const QByteArray& bytes, const Limits& limits) {
    return caught<Header>([&]() -> Result<Header> {
        const Result<Opened> opened = open(bytes, limits);
        if (!opened) return opened.error();
        return opened->header;
    });
}

Result<Decoded> decode(const QByteArray& bytes, const Limits& limits, CheckSum check_sum) {
    return caught<Decoded>([&]() -> Result<Decoded> {
        const Result<Opened> opened = open(bytes, limits);
        if (!opened) return opened.error();
        return decode_opened(bytes, opened.value(), check_sum);
    });
}

}  // namespace kempt::intake
