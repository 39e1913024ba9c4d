// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/dated_section.h"

/// The thermometers, what hangs where, their corrections, and how the pair is exposed: each a list of facts,
/// changed by undo commands after a look at the months it changes.

namespace wickbook::ui {

class ThermometerSection : public DatedSection {
    Q_OBJECT
public:
    explicit ThermometerSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;
};

class FittingSection : public DatedSection {
    Q_OBJECT
public:
    explicit FittingSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;
};

class CorrectionSection : public DatedSection {
    Q_OBJECT
public:
    explicit CorrectionSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;
};

class CoefficientSection : public DatedSection {
    Q_OBJECT
public:
    explicit CoefficientSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    /// Only the periods that say something of exposure, coefficient or mean pressure.
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;
};

/// Asks whether a fact is really to be taken back, with the months that would change. True: yes.
bool reallyTakeBack(Session& session, const QLocale& locale, const QString& what,
                    const record::StationFacts& after, QWidget* parent);

} // namespace wickbook::ui
