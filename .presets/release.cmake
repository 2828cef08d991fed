# cmake -C .presets/release.cmake -S . -B .build/release
set(CMAKE_GENERATOR Ninja CACHE INTERNAL "")
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CINDER_SANITIZE "" CACHE STRING "")
