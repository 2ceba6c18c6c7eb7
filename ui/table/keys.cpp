// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/keys.h"

#include "ui/wording/fill.h"

#include <QCoreApplication>

#include <algorithm>

namespace setfolio {

namespace {

using Code = KeyConflict::Code;

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

ChangedKeys& inForce() {
    static ChangedKeys keys;
    return keys;
}

bool isDigit(QKeyCombination key) {
    return key.key() >= Qt::Key_0 && key.key() <= Qt::Key_9 && key.keyboardModifiers() == Qt::NoModifier;
}

/// The way through a window, its menus and its lists, and a practice match.
bool isReserved(QKeyCombination key) {
    constexpr std::array keys{Qt::Key_Escape, Qt::Key_Tab, Qt::Key_Backtab, Qt::Key_Up, Qt::Key_Down,
                              Qt::Key_F4,     Qt::Key_F5,  Qt::Key_F9,      Qt::Key_F10};
    return key.keyboardModifiers().testFlag(Qt::AltModifier) || std::ranges::count(keys, key.key()) > 0;
}

std::optional<TableCommand> commandCalled(const QString& id) {
    const auto commands = allCommands();
    const auto found = std::ranges::find(commands, id, &CommandInfo::id);
    return found == commands.end() ? std::nullopt : std::optional(found->command);
}

} // namespace

const ChangedKeys& changedKeys() {
    return inForce();
}

void setChangedKeys(const ChangedKeys& changed) {
    inForce() = changed;
}

QList<QKeySequence> keysOf(TableCommand command) {
    return keysOf(command, inForce());
}

QList<QKeySequence> keysOf(TableCommand command, const ChangedKeys& changed) {
    QList<QKeySequence> keys = infoOf(command).keys;
    const auto own = changed.find(command);
    if (own == changed.end())
        return keys;
    if (!keys.isEmpty())
        keys.removeFirst();
    if (!own->second.isEmpty())
        keys.prepend(own->second);
    return keys;
}

std::optional<KeyConflict> conflictOf(TableCommand command, const QKeySequence& key, const ChangedKeys& changed) {
    if (key.isEmpty())
        return {};
    const QList<QKeySequence>& builtIn = infoOf(command).keys;
    if (isDigit(key[0]))
        return KeyConflict{Code::Digit};
    if (isReserved(key[0]) && !builtIn.contains(key))
        return KeyConflict{Code::Reserved};
    for (const CommandInfo& info : allCommands())
        if (info.command != command && keysOf(info.command, changed).contains(key))
            return KeyConflict{Code::Taken, info.command};
    return {};
}

QString sentence(const KeyConflict& conflict, const QKeySequence& key) {
    const QString cap = capOf(key);
    switch (conflict.code) {
    case Code::Taken:
        return fill(Table::tr("%1 is the key of “%2”: choose another one, or change that one first."),
                    {cap, nameOf(conflict.owner).remove(u'…')});
    case Code::Digit:
        return fill(Table::tr("Shirt numbers are typed with %1: choose another key."), {cap});
    case Code::Reserved:
        return fill(Table::tr("The window needs %1 to find one’s way in it: choose another key."), {cap});
    }
    return {};
}

QMap<QString, QString> writtenKeys(const ChangedKeys& changed) {
    QMap<QString, QString> written;
    for (const auto& [command, key] : changed)
        written.insert(infoOf(command).id, key.toString(QKeySequence::PortableText));
    return written;
}

ChangedKeys readKeys(const QMap<QString, QString>& written) {
    ChangedKeys read;
    for (auto line = written.begin(); line != written.end(); ++line)
        if (const auto command = commandCalled(line.key()))
            read.insert_or_assign(*command, QKeySequence(line.value(), QKeySequence::PortableText));
    for (auto own = read.begin(); own != read.end();) {
        const bool bad = own->second.count() > 1 || own->second[0].key() == Qt::Key_unknown ||
                         conflictOf(own->first, own->second, read).has_value();
        own = bad && !own->second.isEmpty() ? read.erase(own) : std::next(own);
    }
    return read;
}

} // namespace setfolio
