// What the engine costs: run with --benchmark_filter=NAME for one of them. "peak_mb" is the largest resident set of the
// whole process so far, so that it means something for one benchmark run alone.

#include <benchmark/benchmark.h>
#include <sys/resource.h>

#include <chrono>
#include <string>

#include "bench/stored_process.hpp"
#include "strategy/simulate.hpp"
#include "support/scenario.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/gain.hpp"

namespace yardworth::test {
namespace {

double peak_mb() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024.0;  // Linux counts in kilobytes
}

// The scenario's course with one of its members.
struct Scenario {
  explicit Scenario(const std::string& member = "weekend-16-man")
      : player(scenario_member(member)), baseline(baseline_of(player)) {}

  const Hole& hole(int number) const { return course.holes[static_cast<std::size_t>(number - 1)]; }
  PreparedHole prepare(int number, const Mesh& mesh) const {
    return {hole(number), course.firmness, middle_tee, player, baseline, mesh};
  }

  Course course = scenario_course();
  Player player;
  Baseline baseline;
};

// Whole rounds -------------------------------------------------------------------------------------------------------

void gain_of_round(benchmark::State& state, const char* member, PolicyChoice policy, int threads) {
  const Scenario scenario(member);
  GainRequest request;
  request.tee = middle_tee;
  request.change = {20.0, 6.0};
  request.policy = policy;
  request.threads = threads;
  for (auto _ : state) {
    benchmark::DoNotOptimize(compute_gain(scenario.course, scenario.player, scenario.baseline, request));
  }
  state.counters["peak_mb"] = peak_mb();
}

// The first round of a process takes a tenth longer than those that follow; so long that it does not stand alone.
constexpr double rounds_seconds = 3.0;

BENCHMARK_CAPTURE(gain_of_round, both_plans_1_thread, "weekend-16-man", PolicyChoice::both, 1)
    ->Unit(benchmark::kMillisecond)
    ->MinTime(rounds_seconds)
    ->UseRealTime();
BENCHMARK_CAPTURE(gain_of_round, both_plans_2_threads, "weekend-16-man", PolicyChoice::both, 2)
    ->Unit(benchmark::kMillisecond)
    ->MinTime(rounds_seconds)
    ->UseRealTime();
BENCHMARK_CAPTURE(gain_of_round, habit_1_thread, "weekend-16-man", PolicyChoice::habit, 1)
    ->Unit(benchmark::kMillisecond)
    ->MinTime(rounds_seconds)
    ->UseRealTime();

// Every member of the scenario, before and after, with both policies on two threads.
void gain_of_member(benchmark::State& state) {
  const char* member = scenario_members[static_cast<std::size_t>(state.range(0))];
  state.SetLabel(member);
  gain_of_round(state, member, PolicyChoice::both, 2);
}
BENCHMARK(gain_of_member)
    ->DenseRange(0, static_cast<int>(scenario_members.size()) - 1)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();

// One hole, one policy
// -------------------------------------------------------------------------------------------------

constexpr int long_hole = 3;   // a par 5 with a dogleg
constexpr int short_hole = 6;  // a par 3

void habit_of_hole(benchmark::State& state) {
  const Scenario scenario;
  const Mesh mesh;
  const PreparedHole hole = scenario.prepare(static_cast<int>(state.range(0)), mesh);
  for (auto _ : state) benchmark::DoNotOptimize(habit_value(hole.model));
}
BENCHMARK(habit_of_hole)->Arg(long_hole)->Arg(short_hole)->Unit(benchmark::kMillisecond);

void count_search(benchmark::State& state, const BestPolicy& best) {
  state.counters["states"] = best.considered;
  state.counters["sweeps"] = best.sweeps;
  state.counters["sampled_swings"] = static_cast<double>(best.sampled_swings);
  state.counters["strokes"] = best.exact.at_tee;
}

void search_hole(benchmark::State& state, const Scenario& scenario, int number, const Mesh& mesh,
                 const PolicyIterationOptions& options) {
  const PreparedHole hole = scenario.prepare(number, mesh);
  BestPolicy best;
  for (auto _ : state) {
    best = best_policy(hole.model, options);
    benchmark::DoNotOptimize(best);
  }
  count_search(state, best);
}

void best_of_hole(benchmark::State& state) {
  search_hole(state, Scenario(), static_cast<int>(state.range(0)), Mesh(), {});
}
BENCHMARK(best_of_hole)->Arg(long_hole)->Arg(short_hole)->Unit(benchmark::kMillisecond);

void prepare_hole(benchmark::State& state) {
  const Scenario scenario;
  const Mesh mesh;
  for (auto _ : state) {
    const PreparedHole hole = scenario.prepare(long_hole, mesh);
    benchmark::DoNotOptimize(hole.model.state_count());
  }
}
BENCHMARK(prepare_hole)->Unit(benchmark::kMillisecond);

// The parts ----------------------------------------------------------------------------------------------------------

void look_up_lies(benchmark::State& state) {
  const Scenario scenario;
  const HoleMap map(scenario.hole(long_hole), scenario.course.firmness);
  RandomEngine engine(1);
  std::vector<Point> points;
  for (int i = 0; i < 4096; ++i) {
    const double along = static_cast<double>(engine() % 5200) / 10.0;
    points.push_back(map.line().to_plane({static_cast<double>(engine() % 1200) / 10.0 - 60.0, along}));
  }
  for (auto _ : state) {
    for (const Point point : points) benchmark::DoNotOptimize(map.ground_at(point));
  }
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(points.size()));
}
BENCHMARK(look_up_lies);

// Shots drawn, struck and brought to rest; items per second are shots per second of one core.
void sample_shots(benchmark::State& state) {
  const Scenario scenario;
  const Mesh mesh;
  const PreparedHole hole = scenario.prepare(long_hole, mesh);
  const Swing& swing = hole.model.swings(Lie::tee).front();
  RandomEngine engine(1);
  for (auto _ : state) {
    const Strike strike = draw_strike(swing, engine);
    benchmark::DoNotOptimize(come_to_rest(hole.map, hole.model.tee(), along_heading(strike.direction_rad),
                                          strike.carry_yd, strike.carry_yd * swing.roll_share));
  }
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(sample_shots);

void play_holes(benchmark::State& state) {
  const Scenario scenario;
  const Mesh mesh;
  const PreparedHole hole = scenario.prepare(long_hole, mesh);
  const ActionAt habit = habit_at(hole.model);
  RandomEngine engine(1);
  for (auto _ : state) benchmark::DoNotOptimize(play_hole(hole.model, habit, engine));
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(play_holes);

// Growth -------------------------------------------------------------------------------------------------------------

// Tenths of a yard between rings; the arcs in the default proportion.
void best_by_grid_spacing(benchmark::State& state) {
  DiscretisationOptions discretisation;
  const double factor = static_cast<double>(state.range(0)) / 10.0 / discretisation.ring_yd;
  discretisation.ring_yd *= factor;
  discretisation.arc_yd *= factor;
  search_hole(state, Scenario(), long_hole, Mesh(discretisation), {});
}
BENCHMARK(best_by_grid_spacing)->Arg(180)->Arg(90)->Arg(45)->Unit(benchmark::kMillisecond);

void best_by_clubs(benchmark::State& state) {
  Scenario scenario;
  const auto wanted = static_cast<std::size_t>(state.range(0));
  const std::vector<Club> all = scenario.player.clubs;
  scenario.player.clubs.clear();
  for (std::size_t i = 0; i < wanted; ++i) {
    scenario.player.clubs.push_back(all[i * (all.size() - 1) / (wanted - 1)]);
  }
  search_hole(state, scenario, long_hole, Mesh(), {});
}
BENCHMARK(best_by_clubs)->Arg(3)->Arg(6)->Arg(12)->Unit(benchmark::kMillisecond);

// Direction spreads that aims are searched beyond the reference and the hole.
void best_by_aims(benchmark::State& state) {
  PolicyIterationOptions options;
  options.aim_reach_sd = static_cast<int>(state.range(0));
  search_hole(state, Scenario(), long_hole, Mesh(), options);
}
BENCHMARK(best_by_aims)->Arg(1)->Arg(2)->Arg(4)->Arg(8)->Unit(benchmark::kMillisecond);

void best_complete(benchmark::State& state) { search_hole(state, Scenario(), long_hole, Mesh(), complete_search()); }
BENCHMARK(best_complete)->Unit(benchmark::kMillisecond);

// The reference ------------------------------------------------------------------------------------------------------

// The same hole written down in full and solved by value iteration (stored_process.hpp), as closely as the search goes;
// "times_faster" is its time over that of find_best_policy in this run, the evaluation of the habit that it starts from
// included. Memory is what each has added to the largest resident set: the search comes first.
void stored_value_iteration(benchmark::State& state) {
  using Clock = std::chrono::steady_clock;
  const auto seconds_since = [](Clock::time_point begin) {
    return std::chrono::duration<double>(Clock::now() - begin).count();
  };
  const Scenario scenario;
  const Mesh mesh;
  const PreparedHole hole = scenario.prepare(static_cast<int>(state.range(0)), mesh);
  const PolicyIterationOptions options;
  const double before_mb = peak_mb();
  BestPolicy best = best_policy(hole.model);
  const double search_mb = peak_mb() - before_mb;
  constexpr int searches = 20;
  const auto search_begin = Clock::now();
  for (int i = 0; i < searches; ++i) best = best_policy(hole.model);
  const double search_s = seconds_since(search_begin) / searches;
  for (auto _ : state) {
    const auto begin = Clock::now();
    const bench::StoredProcess process(hole.model, options.aim_reach_sd);
    const double written_s = seconds_since(begin);
    const auto solution = process.solve(options.tolerance);
    const double all_s = seconds_since(begin);
    state.counters["states"] = static_cast<double>(process.states());
    state.counters["actions"] = static_cast<double>(process.actions());
    state.counters["transitions"] = static_cast<double>(process.transitions());
    state.counters["process_mb"] = process.megabytes();
    state.counters["added_mb"] = peak_mb() - before_mb - search_mb;
    state.counters["search_mb"] = search_mb;
    state.counters["sweeps"] = solution.sweeps;
    state.counters["weighed"] = static_cast<double>(solution.weighed);
    state.counters["strokes"] = solution.at_tee;
    state.counters["search_above"] = best.exact.at_tee - solution.at_tee;
    state.counters["search_ms"] = search_s * 1e3;
    state.counters["times_faster"] = all_s / search_s;
    state.counters["times_faster_solving_alone"] = (all_s - written_s) / search_s;
  }
}
BENCHMARK(stored_value_iteration)->Arg(short_hole)->Arg(14)->Iterations(1)->Unit(benchmark::kSecond);

// Strike and flight
// ---------------------------------------------------------------------------------------------------

void flights(benchmark::State& state) {
  const TypicalClub driver = *typical_club("driver");
  FlightConditions conditions;
  conditions.wind.speed_mps = static_cast<double>(state.range(0));
  Delivery delivery = typical_delivery(driver, from_mph(95.0));
  for (auto _ : state) {
    delivery.club_speed_mps += 1e-9;
    benchmark::DoNotOptimize(fly(delivery, driver.head, conditions));
  }
  state.counters["flights_per_second"] =
      benchmark::Counter(static_cast<double>(state.iterations()), benchmark::Counter::kIsRate);
}
BENCHMARK(flights)->Arg(0)->Arg(5)->Unit(benchmark::kMicrosecond);

void losses_of_delivery(benchmark::State& state) {
  const TypicalClub driver = *typical_club("driver");
  const Delivery delivery{from_mph(94.0), radians(-1.0), radians(17.0), radians(-4.0), radians(-1.0)};
  for (auto _ : state) benchmark::DoNotOptimize(losses_of(delivery, driver.head, {}, attainable(driver)));
}
BENCHMARK(losses_of_delivery)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace yardworth::test
