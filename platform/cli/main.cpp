#include <exception>
#include <iostream>
#include <string>
#include <vector>

#include "cli/commands.h"

int main(int argc, char** argv) {
    try {
        const cinder::SystemClock clock;
        const std::vector<std::string> words(argv + 1, argv + argc);
        return static_cast<int>(cinder::cli::run(words, clock, std::cout, std::cerr));
    } catch (const std::exception& fault) {
        // Out of memory, or a temporary folder that cannot be made; nothing of ours throws.
        std::cerr << "bellman: " << fault.what() << "\n";
        return 1;
    }
}
