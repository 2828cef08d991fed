# cmake -C .presets/debug.cmake -S . -B .build/debug
set(CMAKE_GENERATOR Ninja CACHE INTERNAL "")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CINDER_SANITIZE "" CACHE STRING "")
