// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What goes to a terminal is never obeyed by it: while one stands, everything written to a stream is shown as `shown`
/// (text/shown.h) has it.

#include <ostream>
#include <streambuf>
#include <string>

namespace crownring::ctl {

class ShownOutput final : public std::streambuf {
public:
    /// Until it goes, `stream` writes through it.
    explicit ShownOutput(std::ostream& stream);
    ~ShownOutput() override;
    ShownOutput(const ShownOutput&) = delete;
    ShownOutput& operator=(const ShownOutput&) = delete;

protected:
    int_type overflow(int_type letter) override;
    std::streamsize xsputn(const char* text, std::streamsize count) override;
    int sync() override;

private:
    void pass();

    std::ostream& m_stream;
    std::streambuf* m_to;
    std::string m_pending; ///< a letter of several bytes may come in pieces, a line never ends in one
};

}
