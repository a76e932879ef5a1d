#include <doctest/doctest.h>
#include <fmt/format.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "bag/equal_speed.hpp"
#include "bag/estimate.hpp"
#include "bag/mixture.hpp"
#include "support/drawn_log.hpp"

// The same numbers by R (Debian: r-base-core), an independent implementation. Where it is not installed the check is
// skipped, and says so.

namespace yardworth {
namespace {

bool has_r() { return std::system("Rscript --version >/dev/null 2>&1") == 0; }

std::string r_vector(const std::vector<double>& values) {
  std::string text;
  for (const double value : values) text += fmt::format("{}{:.17g}", text.empty() ? "c(" : ",", value);
  return text + ")";
}

// What a script of R prints, as names with numbers.
std::map<std::string, double> numbers_of_r(const std::string& script) {
  const std::string path = (std::filesystem::temp_directory_path() / "yardworth-check.R").string();
  std::ofstream(path) << "tell <- function(name, value) cat(name, sprintf('%.15g', value), '\n')\n" << script;
  std::string text;
  FILE* pipe = popen(("Rscript --vanilla " + path).c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::array<char, 256> buffer{};
  while (std::fgets(buffer.data(), buffer.size(), pipe) != nullptr) text += buffer.data();
  REQUIRE(pclose(pipe) == 0);
  std::filesystem::remove(path);
  std::map<std::string, double> numbers;
  std::istringstream stream(text);
  std::string name;
  for (double value = 0.0; stream >> name >> value;) numbers[name] = value;
  return numbers;
}

constexpr double agreed = 1e-6;

void check_same(double ours, double of_r) { CHECK(std::abs(ours - of_r) <= agreed * std::max(1.0, std::abs(of_r))); }

// The penalised likelihood that the fit climbs, and the one with tails cut, as R writes them.
const char* const likelihood_in_r = R"R(
k <- 1.0529775655
cut4 <- 1 - 2 * pt(-4 / sqrt(0.6), 5)
cut3 <- 1 - 2 * pt(-3 / sqrt(0.6), 5)
lik <- function(p, low, cut) {
  c <- p[1]; v <- p[2]; m <- p[3]; d <- p[4]; q <- p[5]
  s <- k * d * sqrt(0.6)
  z <- (y - c) / v
  off <- t - m
  solid <- dnorm(z) / v * dt(off / s, 5) / s
  poor <- (y >= 0.3 * low & y <= 0.9 * low) / (0.6 * low) * dt(off / (1.75 * s), 5) / (1.75 * s)
  if (cut) {
    solid <- solid * (abs(z) <= 4) / (1 - 2 * pnorm(-4)) * (abs(off) <= 4 * k * d) / cut4
    poor <- poor * (abs(off) <= 3 * 1.75 * k * d) / cut3
  }
  sum(log(0.999 * ((1 - q) * solid + q * poor) + 0.001 / 420 / pi))
}
penalised <- function(p, low) {
  first <- c(max(mad(y), 0.02 * median(y)), max(mad(t), 0.02))
  ratio <- first / p[c(2, 4)]
  lik(p, low, FALSE) - sum(1 / length(y) * (ratio^2 - 2 * log(ratio)))
}
)R";

}  // namespace

TEST_CASE("R has the same medians, intervals of Welch, and quantiles") {
  if (!has_r()) {
    MESSAGE("skipped: Rscript (Debian: r-base-core) is not installed");
    return;
  }
  const std::vector<double> x = {196.0, 204.5, 188.2, 210.0, 201.3, 179.9, 120.0};
  const std::vector<double> y = {214.0, 209.5, 222.2, 190.1, 231.3};
  const auto r = numbers_of_r(fmt::format(R"R(
x <- {}
y <- {}
w <- t.test(y, x, var.equal = FALSE, conf.level = 0.9)
tell('low', w$conf.int[1]); tell('high', w$conf.int[2]); tell('freedom', w$parameter)
tell('median', median(x)); tell('mad', mad(x))
s <- sd(x) * sqrt(6 / qchisq(c(0.95, 0.05), 6))
tell('spread_low', s[1]); tell('spread_high', s[2])
tell('share_low', qbeta(0.05, 2.5, 18.5)); tell('share_high', qbeta(0.95, 2.5, 18.5))
)R",
                                          r_vector(x), r_vector(y)));
  const auto mean = [](const std::vector<double>& values) {
    return *mean_estimate(values, std::vector<double>(values.size(), 1.0));
  };
  const Estimate change = difference(mean(y), mean(x));
  check_same(change.low, r.at("low"));
  check_same(change.high, r.at("high"));
  check_same(change.freedom, r.at("freedom"));
  check_same(median(x), r.at("median"));
  check_same(median_deviation(x), r.at("mad"));
  const Estimate spread = spread_estimate(mean(x).standard_error * std::sqrt(7.0), 6.0);
  check_same(spread.low, r.at("spread_low"));
  check_same(spread.high, r.at("spread_high"));
  check_same(share_estimate(2.0, 20.0).low, r.at("share_low"));
  check_same(share_estimate(2.0, 20.0).high, r.at("share_high"));
}

TEST_CASE("R has the same likelihood of a fit, and finds nothing likelier near it") {
  if (!has_r()) {
    MESSAGE("skipped: Rscript (Debian: r-base-core) is not installed");
    return;
  }
  RandomEngine engine(31);
  const Mixture truth{196.0, 17.0, radians(1.0), radians(6.1), 0.12};
  const Swing swing = test::swing_of(truth);
  std::vector<StruckShot> shots;
  std::vector<double> carries, directions;
  for (int i = 0; i < 80; ++i) {
    const Strike strike = draw_strike(swing, engine);
    shots.push_back({strike.carry_yd, strike.direction_rad + truth.direction_mean_rad, true});
    carries.push_back(shots.back().carry_yd);
    directions.push_back(shots.back().direction_rad);
  }
  const MixtureFit fit = fit_mixture(shots);
  const Mixture& m = fit.mixture;
  const auto r = numbers_of_r(fmt::format(
      "y <- {}\nt <- {}\n{}p <- {}\n"
      "tell('likelihood', lik(p, p[1], TRUE))\n"
      "ours <- penalised(p, p[1])\n"
      "best <- optim(p, function(x) -penalised(x, p[1]), method = 'BFGS', control = list(parscale = abs(p) + 1e-3, "
      "reltol = 1e-14, maxit = 1000))\n"
      "tell('better', -best$value - ours)\ntell('carry', best$par[1])\ntell('spread', best$par[2])\n"
      "tell('poor', best$par[5])\n",
      r_vector(carries), r_vector(directions), likelihood_in_r,
      r_vector({m.carry_yd, m.carry_sd_yd, m.direction_mean_rad, m.direction_sd_rad, m.poor_strike})));
  check_same(fit.log_likelihood, r.at("likelihood"));
  CHECK(r.at("better") < agreed);
  CHECK(m.carry_yd == doctest::Approx(r.at("carry")).epsilon(1e-4));
  CHECK(m.carry_sd_yd == doctest::Approx(r.at("spread")).epsilon(1e-3));
  CHECK(m.poor_strike == doctest::Approx(r.at("poor")).epsilon(1e-3));
}

TEST_CASE("R has the same change at equal club head speed") {
  if (!has_r()) {
    MESSAGE("skipped: Rscript (Debian: r-base-core) is not installed");
    return;
  }
  const std::vector<double> speeds = {41.0, 42.5, 40.2, 43.1, 41.7, 42.0, 40.9,
                                      43.5, 44.0, 42.9, 43.8, 44.4, 42.2, 45.1};
  const std::vector<double> carries = {193, 202, 185, 205, 201, 196, 190, 219, 216, 214, 210, 228, 205, 224};
  constexpr std::size_t first = 7;
  std::vector<Shot> shots(speeds.size());
  std::vector<const Shot*> before, after;
  for (std::size_t i = 0; i < shots.size(); ++i) {
    shots[i].club_speed_mps = speeds[i];
    shots[i].carry_yd = carries[i];
    (i < first ? before : after).push_back(&shots[i]);
  }
  const std::vector<double> whole(first, 1.0);
  const Estimate change = *change_at_equal_speed({before, whole}, {after, whole});
  const auto r = numbers_of_r(fmt::format(R"R(
v <- {}
y <- {}
g <- rep(c(0, 1), each = 7)
s2 <- c(var(y[g == 0]), var(y[g == 1]))
for (i in 1:200) {{
  fit <- lm(y ~ g + v, weights = 1 / s2[g + 1])
  xx <- tapply(v, g, function(a) sum((a - mean(a))^2))
  h <- xx / s2 / sum(xx / s2)
  s2 <- as.numeric(tapply(resid(fit)^2, g, sum) / (6 - h))
}}
fit <- lm(y ~ g + v, weights = 1 / s2[g + 1])
tell('change', coef(fit)['g'])
tell('error', sqrt(vcov(fit)['g', 'g']) / summary(fit)$sigma)
)R",
                                          r_vector(speeds), r_vector(carries)));
  check_same(change.value, r.at("change"));
  check_same(change.standard_error, r.at("error"));
}

}  // namespace yardworth
