# Installs the build into a new folder outside the tree, copies the consumer beside it, and configures, builds and runs
# the consumer there. Fails where any step does.
execute_process(COMMAND mktemp -d OUTPUT_VARIABLE room OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
file(COPY ${CONSUMER_DIR}/CMakeLists.txt ${CONSUMER_DIR}/consumer.cpp DESTINATION ${room}/consumer)

set(failed FALSE)
function(step)
  if(NOT failed)
    execute_process(COMMAND ${ARGV} RESULT_VARIABLE result)
    if(result)
      message(SEND_ERROR "failed with ${result}: ${ARGV}")
      set(failed TRUE PARENT_SCOPE)
    endif()
  endif()
endfunction()

step(${CMAKE_COMMAND} --install ${BUILD_DIR} --prefix ${room}/prefix)
step(${CMAKE_COMMAND} -S ${room}/consumer -B ${room}/build -G ${GENERATOR} -DCMAKE_PREFIX_PATH=${room}/prefix
     -DCMAKE_CXX_COMPILER=${CXX_COMPILER})
step(${CMAKE_COMMAND} --build ${room}/build)
step(${room}/prefix/bin/yardworth gain --driver +20 --irons +6)
# Completions and manual pages lie where shells and man look for them.
foreach(page IN ITEMS bash-completion/completions/yardworth zsh/site-functions/_yardworth
                      fish/vendor_completions.d/yardworth.fish man/man1/yardworth.1 man/man1/yardworth-gain.1)
  if(NOT EXISTS ${room}/prefix/share/${page})
    message(SEND_ERROR "not installed: share/${page}")
  endif()
endforeach()
# A release is hardened and stripped.
if(BUILD_TYPE STREQUAL Release)
  execute_process(COMMAND readelf --wide --headers --dynamic --symbols ${room}/prefix/bin/yardworth
                  OUTPUT_VARIABLE elf COMMAND_ERROR_IS_FATAL ANY)
  foreach(mark IN ITEMS "GNU_RELRO" "BIND_NOW" "Position-Independent|DYN" "__stack_chk_fail" "_chk@GLIBC")
    if(NOT elf MATCHES "${mark}")
      message(SEND_ERROR "the installed program is not hardened: readelf shows no ${mark}")
    endif()
  endforeach()
  if(elf MATCHES "\\.symtab")
    message(SEND_ERROR "the installed program is not stripped")
  endif()
endif()
step(${room}/prefix/bin/yardworth gain --driver +20 --irons +6 --format json --output ${room}/gain.json)
if(NOT failed)
  file(READ ${room}/gain.json answer)
  string(JSON saved GET "${answer}" round strokes_saved)
  step(${room}/build/consumer ${saved})
endif()
file(REMOVE_RECURSE ${room})
