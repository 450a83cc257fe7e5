// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads the open questions of the record. Why an entry cannot be read stands in no table; who has the journal says it.

#include "store/queries/service_reader.h"

#include <vector>

namespace crownring {

class QuestionReader {
public:
    explicit QuestionReader(const Connection& connection);

    /// By stamp; then the corrections that are left out, what is only stated, and what flew while out of service.
    [[nodiscard]] std::vector<Question> all();
    /// Those about entries that cannot be read.
    [[nodiscard]] std::vector<Question> unreadable();
    /// Those about items that were entered more than once.
    [[nodiscard]] std::vector<Question> enteredAgain();

private:
    void readIdle(std::vector<Question>& questions);
    void readStated(std::vector<Question>& questions);

    Statement m_all, m_unreadable, m_again, m_idle, m_stated;
    ServiceReader m_service;
};

}
