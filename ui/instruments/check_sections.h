// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/dated_section.h"

/// What is done between readings: wick and water, both bulbs in one bath, a sensor over salts, another
/// instrument beside the station's. Lists of facts, changed by undo commands.

namespace wickbook::ui {

class WickSection : public DatedSection {
    Q_OBJECT
public:
    explicit WickSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;
};

class PairCheckSection : public DatedSection {
    Q_OBJECT
public:
    explicit PairCheckSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;

private:
    void takeOver(const record::Uuid& id);
};

class SaltCheckSection : public DatedSection {
    Q_OBJECT
public:
    explicit SaltCheckSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;
};

class SideBySideSection : public DatedSection {
    Q_OBJECT
public:
    explicit SideBySideSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;

private:
    void openReadings(const record::Uuid& id);
};

} // namespace wickbook::ui
