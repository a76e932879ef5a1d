# Follows the recipe "How to add a hazard kind" of DEVELOPERS.md in a copy of the source tree: a kind that does not exist,
# a marsh, on a ground of its own that costs a stroke and a drop and that nothing rolls on. Shows on the way that tables
# which lack a row, or have one twice or out of order, do not compile. Builds the command there and shows that the kind is
# read, lies on the map and costs what its row says, and is reported under its name. A marsh that costs what a penalty
# area costs must come to the same numbers as a penalty area: that is the second road.
#
# -DSOURCE_DIR -DCXX_COMPILER -DGENERATOR
execute_process(COMMAND mktemp -d OUTPUT_VARIABLE room OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)

function(fail words)
  file(REMOVE_RECURSE ${room})
  message(FATAL_ERROR "${words}")
endfunction()

# Runs a command; what it prints is in `out`.
function(step)
  execute_process(COMMAND ${ARGV} RESULT_VARIABLE result OUTPUT_VARIABLE printed ERROR_VARIABLE errors)
  if(result)
    fail("failed with ${result}: ${ARGV}\n${printed}${errors}")
  endif()
  set(out "${printed}" PARENT_SCOPE)
endfunction()

# Puts `text` in the place of an anchor that has to be there once.
function(replace_once file anchor text)
  file(READ ${room}/tree/${file} content)
  string(FIND "${content}" "${anchor}" first)
  string(FIND "${content}" "${anchor}" last REVERSE)
  if(first EQUAL -1 OR NOT first EQUAL last)
    fail("${file} does not have exactly one \"${anchor}\": the recipe in DEVELOPERS.md and this test no longer fit it")
  endif()
  string(REPLACE "${anchor}" "${text}" content "${content}")
  file(WRITE ${room}/tree/${file} "${content}")
endfunction()

# Whether what asks both tables compiles, with the one warning that is always an error.
function(expect_tables_to_compile wanted when)
  execute_process(
    COMMAND ${CXX_COMPILER} -std=c++20 -fsyntax-only -Werror=switch -I${room}/tree/include -I${room}/tree/src
            ${room}/tree/src/course/course.cpp
    RESULT_VARIABLE result OUTPUT_QUIET ERROR_VARIABLE errors)
  if(wanted AND result)
    fail("${when}: the tables should compile, and\n${errors}")
  elseif(NOT wanted AND NOT result)
    fail("${when}: the tables should not compile, and do")
  endif()
endfunction()

function(expect what text pattern)
  if(NOT text MATCHES "${pattern}")
    fail("${what}: expected ${pattern}, and it is\n${text}")
  endif()
endfunction()

foreach(part IN ITEMS src include courses cmake CMakeLists.txt CMakePresets.json LICENSE)
  if(EXISTS ${SOURCE_DIR}/${part})
    file(COPY ${SOURCE_DIR}/${part} DESTINATION ${room}/tree)
  endif()
endforeach()

expect_tables_to_compile(TRUE "before the first step")

# Step 1 of the recipe: the kind and its row; here on a ground that there is.
set(kind_row "    case HazardKind::marsh:
      return {\"marsh\", \"marshes\", Ground::penalty_area, 25.0, to_the_end_of_the_hole};\n")
set(first_kind "    case HazardKind::bunker:\n")
replace_once(include/yardworth/course.hpp "enum class HazardKind { " "enum class HazardKind { marsh, ")
expect_tables_to_compile(FALSE "a kind without a row")
replace_once(src/course/hazard_kind.hpp "${first_kind}" "${kind_row}${first_kind}")
expect_tables_to_compile(TRUE "a kind with a row")
replace_once(src/course/hazard_kind.hpp "${first_kind}" "${kind_row}${first_kind}")
expect_tables_to_compile(FALSE "a kind with two rows")
replace_once(src/course/hazard_kind.hpp "${kind_row}${kind_row}" "${kind_row}")

# Step 2: a ground of its own, before out of bounds in the order, and its row at the same place.
set(ground_row "    {Ground::marsh, \"marsh\", Penalty::drop, std::nullopt, 0.0, true, true, true},\n")
set(place "    {Ground::out_of_bounds, ")
replace_once(include/yardworth/course.hpp "enum class Ground : std::uint8_t { green, "
             "enum class Ground : std::uint8_t { green, marsh, ")
expect_tables_to_compile(FALSE "a ground without a row")
replace_once(src/course/ground.hpp "    {Ground::penalty_area, " "${ground_row}    {Ground::penalty_area, ")
expect_tables_to_compile(FALSE "a ground with a row out of order")
replace_once(src/course/ground.hpp "${ground_row}" "")
replace_once(src/course/ground.hpp "${place}" "${ground_row}${place}")
replace_once(src/course/hazard_kind.hpp "\"marshes\", Ground::penalty_area" "\"marshes\", Ground::marsh")
expect_tables_to_compile(TRUE "a ground with a row")
replace_once(src/course/ground.hpp "${place}" "${ground_row}${place}")
expect_tables_to_compile(FALSE "a ground with two rows")
replace_once(src/course/ground.hpp "${ground_row}${ground_row}" "${ground_row}")

# Nothing is run that the compiler has to be quick for, so it is not asked to be.
set(launcher)
find_program(ccache ccache)
if(ccache)
  set(launcher -DCMAKE_CXX_COMPILER_LAUNCHER=${ccache})
  set(ENV{CCACHE_BASEDIR} ${room})
  set(ENV{CCACHE_NOHASHDIR} 1)
endif()
step(${CMAKE_COMMAND} -S ${room}/tree -B ${room}/tree/build -G ${GENERATOR} -DCMAKE_CXX_COMPILER=${CXX_COMPILER}
     -DCMAKE_BUILD_TYPE=None -DCMAKE_CXX_FLAGS=-O0 -DYARDWORTH_TESTS=OFF -DYARDWORTH_WARNINGS_AS_ERRORS=ON
     -DYARDWORTH_QUICK_BUILD=ON -DYARDWORTH_ROOMS_TOGETHER=ON ${launcher})
step(${CMAKE_COMMAND} --build ${room}/tree/build --target yardworth_command --parallel 2)
set(command ${room}/tree/build/yardworth)

# Nine holes, of which the first has the hazard across and along it.
function(write_course kind)
  set(holes "  - {number: 1, par: 4, length: {only: 300}, hazards: [{kind: ${kind}, side: across, from: 200, to: 230},
      {kind: ${kind}, side: left, from: 100, to: 300}, {kind: bunker, side: right, from: 150, to: 190}]}\n")
  foreach(number RANGE 2 9)
    string(APPEND holes "  - {number: ${number}, par: 3, length: {only: 100}}\n")
  endforeach()
  file(WRITE ${room}/${kind}.yaml
       "format: yardworth/course/1\nname: Nine holes\ntees: [{name: only}]\nholes:\n${holes}")
endfunction()

foreach(kind IN ITEMS marsh penalty_area)
  write_course(${kind})
  step(${command} strategy --course ${room}/${kind}.yaml --hole 1 --driver +20 --irons +6 --format json)
  set(strategy_${kind} "${out}")
  step(${command} gain --course ${room}/${kind}.yaml --driver +20 --irons +6 --plan habit --format json)
  set(gain_${kind} "${out}")
endforeach()

step(${command} check ${room}/marsh.yaml)
expect("what the command understood" "${out}" "; 2 marshes, 1 bunker; ")
step(${command} strategy --course ${room}/marsh.yaml --hole 1)
expect("the strategy in words" "${out}" "marsh left at 100-300")
expect("the strategy in words" "${out}" "marsh, dropped")
string(JSON penalty GET "${gain_marsh}" holes 0 penalty_probability before)
if(NOT penalty GREATER 0.001)
  fail("the tee shots find the marsh and pay nothing: penalty_probability ${penalty}")
endif()
expect("the hazards in JSON" "${strategy_marsh}" "\"marsh left at 100-300\"")
expect("where tee shots finish in JSON" "${strategy_marsh}" "\"finish\": \"marsh\"")
foreach(report IN ITEMS strategy gain)
  string(REPLACE "marsh" "penalty area" renamed "${${report}_marsh}")
  if(NOT renamed STREQUAL "${${report}_penalty_area}")
    fail("${report} of a marsh is not that of a penalty area:\n${renamed}\n${${report}_penalty_area}")
  endif()
endforeach()
file(REMOVE_RECURSE ${room})
