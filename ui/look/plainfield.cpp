// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/look/plainfield.h"

#include "core/record/shown.h"

#include <QLineEdit>
#include <QValidator>

namespace setfolio {

namespace {

/// Asked by the field about every text that it is given.
class PlainWords : public QValidator {
public:
    using QValidator::QValidator;

    State validate(QString& text, int& cursor) const override {
        const QString plain = asTaken(text);
        if (plain != text) {
            cursor = static_cast<int>(asTaken(text.left(cursor)).size());
            text = plain;
        }
        return Acceptable;
    }
};

} // namespace

void takePlainWords(QLineEdit& field) {
    field.setValidator(new PlainWords(&field));
}

} // namespace setfolio
