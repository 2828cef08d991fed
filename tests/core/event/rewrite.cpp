/// Reads the named events and prints each as the app writes it, one JSON list for a validator.

#include <fstream>
#include <iostream>
#include <sstream>

#include "event/json.h"

int main(int argc, char** argv) {
    std::cout << "[";
    for (int i = 1; i < argc; ++i) {
        const std::ifstream file(argv[i], std::ios::binary);
        std::stringstream text;
        text << file.rdbuf();
        const auto event = cinder::event::parse(text.str());
        if (!event) {
            for (const auto& fault : event.error())
                std::cerr << argv[i] << ": " << cinder::event::describe(fault) << "\n";
            return 1;
        }
        std::cout << (i > 1 ? "," : "") << cinder::event::write(*event);
    }
    std::cout << "]\n";
    return 0;
}
