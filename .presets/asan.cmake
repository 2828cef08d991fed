# cmake -C .presets/asan.cmake -S . -B .build/asan
set(CMAKE_GENERATOR Ninja CACHE INTERNAL "")
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CINDER_SANITIZE "address,undefined" CACHE STRING "")
