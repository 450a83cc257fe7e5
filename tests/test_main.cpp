// SPDX-License-Identifier: GPL-3.0-or-later
#include "test_class.h"

#include <cstdio>
#include <map>
#include <string>
#include <string_view>

namespace {

/// All that is registered, by name; made when the first comes.
std::map<std::string, crownring::test::Run, std::less<>>& registered() {
    static std::map<std::string, crownring::test::Run, std::less<>> runs;
    return runs;
}

std::string nameOf(std::string_view file) {
    file.remove_prefix(file.rfind('/') + 1);
    return std::string(file.substr(0, file.rfind("_test.cpp")));
}

}

crownring::test::Registered::Registered(const char* file, Run run) {
    if (!registered().emplace(nameOf(file), run).second) {
        std::fprintf(stderr, "two tests are called %s\n", nameOf(file).c_str());
        std::abort();
    }
}

int main(int count, char** arguments) {
    const auto found = count > 1 ? registered().find(std::string_view(arguments[1])) : registered().end();
    if (found == registered().end()) {
        for (const auto& [name, run] : registered())
            std::puts(name.c_str());
        return count > 1 ? 2 : 0;
    }
    // The test is a program of its own to whoever reads its arguments.
    arguments[1] = arguments[0];
    return found->second(count - 1, arguments + 1);
}
