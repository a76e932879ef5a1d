#pragma once

#include <cstddef>
#include <functional>
#include <vector>

namespace yardworth {

// Does work(i) for every piece i of so many sizes, on so many threads (0: as many as there are cores). The largest
// piece is taken up first, and whoever is done takes the next, so that at the end nobody waits long for another. What a
// piece does must not depend on others. What a piece throws is thrown on once the pieces begun are over; the rest may
// then be left undone. Built without oneTBB (YARDWORTH_TBB), pieces are done one after the other whatever threads says.
void work_in_parallel(int threads, const std::vector<double>& sizes, const std::function<void(std::size_t)>& work);

// The same for count pieces that are all alike.
void work_in_parallel(int threads, std::size_t count, const std::function<void(std::size_t)>& work);

}  // namespace yardworth
