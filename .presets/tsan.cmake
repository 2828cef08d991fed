# cmake -C .presets/tsan.cmake -S . -B .build/tsan
set(CMAKE_GENERATOR Ninja CACHE INTERNAL "")
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CINDER_SANITIZE "thread" CACHE STRING "")
