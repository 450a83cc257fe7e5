// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/question.h"
#include "test_class.h"
#include "words/question_text.h"

#include <QtTest>

#include <set>

namespace question_test {

using namespace crownring;

class QuestionTest : public QObject {
    Q_OBJECT
private slots:
    void everyKindHasItsOwnNameAndASentenceWithAMend() {
        std::set<std::string_view> names;
        std::set<std::string> sentences;
        for (int i = 0; i < questionKindCount; ++i) {
            const auto kind = static_cast<Question::Kind>(i);
            names.insert(questionName(kind));
            const auto sentence = words::questionText({kind, "B1", {}, ""}).toStdString();
            QVERIFY(sentence.starts_with("B1 "));
            sentences.insert(sentence);
        }
        QCOMPARE(int(names.size()), questionKindCount);
        QCOMPARE(int(sentences.size()), questionKindCount);
        QVERIFY(!names.contains(""));
        QCOMPARE(questionName(Question::Kind::CorrectionIdle), std::string_view("correction-idle"));
    }

    void theDetailMakesItConcrete() {
        QVERIFY(words::questionText({Question::Kind::RemovedNotFitted, "B1", {}, "QE-ABC"}).endsWith("(QE-ABC)"));
    }
};

CROWNRING_TEST(QuestionTest)

}

#include "question_test.moc"
