#pragma once

#include <stdexcept>

namespace yardworth {

// A hole that cannot be finished with these clubs; what() is a sentence for the golfer.
class CannotFinish : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

}  // namespace yardworth
