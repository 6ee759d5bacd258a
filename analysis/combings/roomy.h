// Vectors of megabytes that are filled once and dropped. The first touch of each page costs more than the work on what
// stands in it (measured: 10 microseconds a page of 4 kB on a virtual machine, a sixth of the tracing), so that large
// ones are asked for in pages of 2 MB where the system has them to give.
#pragma once

#include <cstddef>
#include <cstdlib>
#include <new>
#include <type_traits>
#include <utility>
#include <vector>

#include <sys/mman.h>

namespace kempt::combings {

template <class T>
struct RoomyAllocator {
    using value_type = T;
    static constexpr size_t page = size_t{2} << 20, large = page / 2;
    RoomyAllocator() = default;
    template <class U>
    explicit RoomyAllocator(const RoomyAllocator<U>&) {}
    T* allocate(size_t n) {
        if (n > (~size_t{0} - page) / sizeof(T)) throw std::bad_alloc();
        const size_t bytes = n * sizeof(T);
        void* at = bytes < large ? std::malloc(bytes) : std::aligned_alloc(page, (bytes + page - 1) / page * page);
        if (at == nullptr) throw std::bad_alloc();
#ifdef MADV_HUGEPAGE
        if (bytes >= large)
            (void)madvise(at, (bytes + page - 1) / page * page, MADV_HUGEPAGE);  // a wish: small will do
#endif
        return static_cast<T*>(at);
    }
    void deallocate(T* at, size_t) {
        std::free(at);
    }
    // resize() leaves plain values as they are in memory: whoever asks for room fills it.
    template <class U, class... From>
    void construct(U* at, From&&... from) {
        if constexpr (sizeof...(From) == 0 && std::is_trivially_destructible_v<U>)
            ::new (static_cast<void*>(at)) U;
        else
            ::new (static_cast<void*>(at)) U(std::forward<From>(from)...);
    }
    template <class U>
    bool operator==(const RoomyAllocator<U>&) const {
        return true;
    }
};
template <class T>
using Roomy = std::vector<T, RoomyAllocator<T>>;

}  // namespace kempt::combings
