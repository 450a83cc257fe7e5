// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/shown_output.h"

#include "text/shown.h"

namespace crownring::ctl {

ShownOutput::ShownOutput(std::ostream& stream) : m_stream(stream), m_to(stream.rdbuf(this)) {}

ShownOutput::~ShownOutput() {
    sync();
    m_stream.rdbuf(m_to);
}

ShownOutput::int_type ShownOutput::overflow(int_type letter) {
    if (traits_type::eq_int_type(letter, traits_type::eof()))
        return traits_type::not_eof(letter);
    const char one = traits_type::to_char_type(letter);
    return xsputn(&one, 1) == 1 ? letter : traits_type::eof();
}

std::streamsize ShownOutput::xsputn(const char* text, std::streamsize count) {
    m_pending.append(text, static_cast<std::size_t>(count));
    if (m_pending.ends_with('\n'))
        pass();
    return count;
}

int ShownOutput::sync() {
    pass();
    return m_to->pubsync();
}

void ShownOutput::pass() {
    const auto text = shown(m_pending);
    m_pending.clear();
    m_to->sputn(text.data(), static_cast<std::streamsize>(text.size()));
}

}
