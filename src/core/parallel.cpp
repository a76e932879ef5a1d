#include "core/parallel.hpp"

#ifdef YARDWORTH_TBB
#include <tbb/info.h>
#include <tbb/parallel_for.h>
#include <tbb/task_arena.h>
#endif

#include <algorithm>
#include <atomic>
#include <numeric>

namespace yardworth {
namespace {

// Does take() on each of the threads at a time.
#ifdef YARDWORTH_TBB
void on_threads(int threads, const std::function<void()>& take) {
  // oneTBB complains about more threads than there are cores.
  const int cores = tbb::info::default_concurrency();
  const int workers = threads > 0 ? std::min(threads, cores) : cores;
  tbb::task_arena arena(workers);
  arena.execute([&] {
    tbb::parallel_for(
        0, workers, [&](int) { take(); }, tbb::simple_partitioner());
  });
}
#else
void on_threads(int, const std::function<void()>& take) { take(); }
#endif

}  // namespace

void work_in_parallel(int threads, const std::vector<double>& sizes, const std::function<void(std::size_t)>& work) {
  std::vector<std::size_t> order(sizes.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return sizes[a] > sizes[b]; });
  std::atomic<std::size_t> next{0};
  on_threads(threads, [&] {
    for (std::size_t i = next++; i < order.size(); i = next++) work(order[i]);
  });
}

void work_in_parallel(int threads, std::size_t count, const std::function<void(std::size_t)>& work) {
  work_in_parallel(threads, std::vector<double>(count, 1.0), work);
}

}  // namespace yardworth
