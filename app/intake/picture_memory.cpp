#include "intake/picture_memory.h"

#include <malloc.h>
#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>
#include <cstdlib>
#include <mutex>
#include <opencv2/core.hpp>
#include <vector>

namespace kempt::intake {
namespace {

#ifdef MADV_HUGEPAGE

constexpr size_t large_page = size_t{2} << 20;  // of x86-64 and of most arm64 systems
constexpr size_t least_bytes = large_page / 2;  // below, the rounding up would cost more than the faults
// Blocks that were given back and wait for the next picture: the system clears each page that it hands out, at some
// 1.5 GB/s on a slow machine. As much as one photo of 12 megapixels needs.
constexpr size_t kept_bytes = size_t{40} << 20;

// OpenCV's own way to lay out a picture, with the bytes of large ones from mmap. The block begins at a large page and
// its size is rounded up to whole ones.
class LargePages final : public cv::MatAllocator {
  public:
    explicit LargePages(cv::MatAllocator* usual) : usual_(usual) {}

    cv::UMatData* allocate(int dims, const int* sizes, int type, void* data, size_t* step, cv::AccessFlag flags,
                           cv::UMatUsageFlags usage) const override {
        const auto as_usual = [&] { return usual_->allocate(dims, sizes, type, data, step, flags, usage); };
        size_t total = CV_ELEM_SIZE(type);
        for (int i = 0; i < dims; ++i) total *= static_cast<size_t>(sizes[i]);
        if (data || total < least_bytes) return as_usual();
        uchar* bytes = kept(rounded(total));
        if (!bytes) bytes = mapped(total);
        if (!bytes) return as_usual();
        size_t part = CV_ELEM_SIZE(type);
        for (int i = dims - 1; i >= 0; --i) {
            if (step) step[i] = part;
            part *= static_cast<size_t>(sizes[i]);
        }
        auto* block = new cv::UMatData(this);
        block->data = block->origdata = bytes;
        block->size = total;
        return block;
    }

    bool allocate(cv::UMatData* block, cv::AccessFlag, cv::UMatUsageFlags) const override { return block != nullptr; }

    void deallocate(cv::UMatData* block) const override {
        if (!block) return;
        give_back(block->origdata, rounded(block->size));
        block->origdata = nullptr;
        delete block;
    }

  private:
    static size_t rounded(size_t bytes) { return (bytes + large_page - 1) / large_page * large_page; }

    static uchar* mapped(size_t bytes) {
        const size_t size = rounded(bytes);
        void* whole = mmap(nullptr, size + large_page, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
        if (whole == MAP_FAILED) return nullptr;
        auto* first = static_cast<uchar*>(whole);
        const size_t before = (large_page - reinterpret_cast<std::uintptr_t>(first) % large_page) % large_page;
        if (before) munmap(first, before);
        if (before < large_page) munmap(first + before + size, large_page - before);
        madvise(first + before, size, MADV_HUGEPAGE);
        return first + before;
    }

    // A kept block of just that size, or nullptr.
    uchar* kept(size_t size) const {
        const std::lock_guard lock(mutex_);
        for (size_t i = blocks_.size(); i-- > 0;)
            if (blocks_[i].size == size) {
                uchar* const bytes = blocks_[i].bytes;
                blocks_.erase(blocks_.begin() + static_cast<std::ptrdiff_t>(i));
                waiting_ -= size;
                return bytes;
            }
        return nullptr;
    }

    void give_back(uchar* bytes, size_t size) const {
        if (size > kept_bytes) {
            munmap(bytes, size);
            return;
        }
        const std::lock_guard lock(mutex_);
        blocks_.push_back({bytes, size});
        for (waiting_ += size; waiting_ > kept_bytes; blocks_.erase(blocks_.begin())) {  // the oldest goes
            munmap(blocks_.front().bytes, blocks_.front().size);
            waiting_ -= blocks_.front().size;
        }
    }

    struct Block {
        uchar* bytes;
        size_t size;
    };
    cv::MatAllocator* usual_;
    mutable std::mutex mutex_;
    mutable std::vector<Block> blocks_;
    mutable size_t waiting_ = 0;
};

#endif

#ifdef M_MMAP_THRESHOLD

constexpr int heap_ahead = 128 << 20;  // addresses alone: pages come when they are written to

// Lets the heap grow that far at once, so that its pages can be asked for as large ones before there are any.
void wish_large_pages_for_the_heap() {
#ifdef MADV_HUGEPAGE
    mallopt(M_TOP_PAD, heap_ahead);
    const auto from = reinterpret_cast<std::uintptr_t>(sbrk(0));
    void* volatile grown = std::malloc(size_t{4} << 20);  // volatile: the compiler would leave the pair out
    std::free(grown);
    const auto to = reinterpret_cast<std::uintptr_t>(sbrk(0));
    const std::uintptr_t first = (from + large_page - 1) / large_page * large_page;
    if (to > first) madvise(reinterpret_cast<void*>(first), to - first, MADV_HUGEPAGE);
#endif
}

#endif

}  // namespace

void use_large_pages() {
#ifdef M_MMAP_THRESHOLD
    // Smaller ones come from glibc's heap and stay in it for the next: by its own measure each one above 128 kB to 32
    // MB is a mapping of its own, whose pages are made and cleared anew (5500 page faults in reading the ends, so
    // 1000).
    mallopt(M_MMAP_THRESHOLD, 32 << 20);  // the most that glibc takes
    mallopt(M_TRIM_THRESHOLD, heap_ahead);
    wish_large_pages_for_the_heap();
    mallopt(M_TOP_PAD, 4 << 20);
#endif
#ifdef MADV_HUGEPAGE
    // Never destroyed: pictures in static places may outlive main.
    static auto* pages = new LargePages(cv::Mat::getStdAllocator());
    cv::Mat::setDefaultAllocator(pages);
#endif
}

}  // namespace kempt::intake
