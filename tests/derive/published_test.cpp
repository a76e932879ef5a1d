#include "derive/published.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "support/sanitized.hpp"
#include "support/scenario.hpp"

namespace yardworth {
namespace {

// The sources stand with each fact in src/derive/published.cpp and in what is printed. Without simulated scores the
// sanitizers have seen all of the code but them.
TEST_CASE("the golfers and tables compiled in against everything published") {
  const std::vector<PublishedCheck> checks = check_published(test::sanitized ? 0 : published_twenties);
  CHECK(checks.size() > 100);
  for (const PublishedCheck& check : checks) {
    if (!check.holds()) {
      std::printf("%s, %s: published %.3f computed %.3f difference %+.3f allowed %.3f (%s)\n", check.topic.c_str(),
                  check.fact.c_str(), check.published, check.computed, check.difference(), check.allowed,
                  check.source.c_str());
    }
    CHECK_MESSAGE(check.holds(), check.topic << ", " << check.fact);
  }
  // At most a third of the cells of the tour table may be given to the fit.
  const auto of_table = [](const PublishedCheck& check) { return check.topic.find("Strokes to hole out") == 0; };
  const auto cells = std::count_if(checks.begin(), checks.end(), of_table);
  const auto fitted =
      std::count_if(checks.begin(), checks.end(), [&](const auto& check) { return of_table(check) && check.fitted; });
  CHECK(3 * fitted <= cells);
  // The record in the documents knows every fact, and says how many hold. Its last digits may differ where sums do.
  const std::string record = test::text_of("docs/validation.md");
  for (const PublishedCheck& check : checks)
    CHECK_MESSAGE(record.find("| " + check.fact + " |") != std::string::npos, check.fact);
  if (!test::sanitized) {
    const std::string written = write_validation(checks);
    const auto sentence = [](const std::string& text) {
      return text.substr(text.find("Of "), text.find("hold.") - text.find("Of "));
    };
    CHECK(sentence(written) == sentence(record));
  }
}

}  // namespace
}  // namespace yardworth
