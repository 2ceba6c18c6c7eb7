// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/damagedmatch.h"

#include "core/ledger/ledger.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/openwords.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

namespace setfolio {

namespace {

/// A box that takes every text as it stands: a file name may hold what looks like markup.
void makePlain(QMessageBox& box, const QString& text, QMessageBox::Icon icon = QMessageBox::Warning) {
    box.setTextFormat(Qt::PlainText);
    box.setIcon(icon);
    box.setText(text);
}

QString saveGoodPartOf(const QString& path, QWidget* parent) {
    const QFileInfo file(path);
    const QString proposed = file.absoluteDir().filePath(goodPartName(file.fileName()));
    const QString to = QFileDialog::getSaveFileName(parent, saveGoodPartTitle(), proposed, matchFilesFilter(), nullptr,
                                                    QFileDialog::DontConfirmOverwrite);
    if (to.isEmpty())
        return {};
    const auto saved = saveGoodPart(path, to);
    if (saved)
        return to;
    tell(sentence(saved.error()), parent);
    return {};
}

} // namespace

bool hasGoodPart(const LedgerError& error) {
    using enum LedgerError::Code;
    switch (error.code) {
    case BrokenLine:
    case UnknownKind:
    case WrongSequence:
    case WrongDigest:
    case WrongSeal:
    case SavedAnew:
    case TooLong:
        return error.line > 1;
    case CannotOpen:
    case CannotCreate:
    case CannotWrite:
    case ReadOnly:
    case NotALedger:
    case NewerVersion:
    case Unrecordable:
    case ChangedOutside:
        return false;
    }
    return false;
}

void tell(const QString& text, QWidget* parent) {
    QMessageBox box(parent);
    makePlain(box, text);
    box.exec();
}

void tellDone(const QString& text, QWidget* parent) {
    QMessageBox box(parent);
    makePlain(box, text, QMessageBox::Information);
    box.exec();
}

QString tellOfDamage(const LedgerError& error, QWidget* parent) {
    if (!hasGoodPart(error)) {
        tell(sentence(error), parent);
        return {};
    }
    QMessageBox box(parent);
    makePlain(box, sentence(error));
    box.setInformativeText(fileStaysAsItIs());
    QPushButton* save = box.addButton(saveGoodPartWord(), QMessageBox::AcceptRole);
    box.addButton(QMessageBox::Close);
    box.exec();
    return box.clickedButton() == save ? saveGoodPartOf(error.path, parent) : QString();
}

} // namespace setfolio
