// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSet>
#include <QStringList>
#include <QTranslator>

/// A language that nobody speaks, to find what is wrong before somebody has to: every text comes out with
/// accents, a third longer, between ⟦ and ⟧. What stands on the screen without these was never given to be
/// translated.

namespace wickbook::test {

class PseudoLanguage : public QTranslator {
public:
    /// known: a catalogue of a real language, to see whether it has every text that is asked for.
    explicit PseudoLanguage(const QString& known);

    QString translate(const char* context, const char* source, const char* disambiguation,
                      int n) const override;
    [[nodiscard]] bool isEmpty() const override { return false; }
    /// "context: text" for each of ours that was asked for and that the real language's catalogue lacks.
    [[nodiscard]] QStringList unknown() const;

private:
    QTranslator known_;
    bool hasKnown_ = false;
    mutable QSet<QString> unknown_;
};

} // namespace wickbook::test
