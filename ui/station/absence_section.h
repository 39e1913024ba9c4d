// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/dated_section.h"

namespace wickbook::ui {

/// "Absences" on the Station page: planned ahead, with a deputy or without.
class AbsenceSection : public DatedSection {
    Q_OBJECT

public:
    explicit AbsenceSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;

private:
    [[nodiscard]] std::optional<record::Absence> find(const record::Uuid& id) const;
    [[nodiscard]] QString spanWords(const record::Absence& absence) const;
};

/// "Exposure diary" on the Station page: what happened to the screen and around it.
class DiarySection : public DatedSection {
    Q_OBJECT

public:
    explicit DiarySection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void ask(const std::optional<record::Uuid>& id) override;
    void takeBack(const record::Uuid& id) override;

private:
    [[nodiscard]] std::optional<record::DiaryEntry> find(const record::Uuid& id) const;
};

} // namespace wickbook::ui
