// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/dated/dated_section.h"

namespace wickbook::ui {

/// "What differs from when": the station's periods as they were entered, the newest first, each with what it
/// names. Changing or taking one back tells first what it would do to the register.
class PeriodSection : public DatedSection {
    Q_OBJECT

public:
    explicit PeriodSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

    /// Keeps a new or changed period in the book; the sentence when it could not be.
    QString keep(const record::PeriodChange& change, const QString& why);
    /// Asks for what differs; none: a new period.
    void ask(const std::optional<record::Uuid>& id) override;
    /// "Of 1,240 readings 310 would have another humidity or dew point." after: none takes the period back.
    [[nodiscard]] QString previewWords(const record::Uuid& id,
                                       const std::optional<record::PeriodChange>& after) const;

protected:
    [[nodiscard]] std::vector<Line> lines() const override;
    [[nodiscard]] QString empty() const override;
    void takeBack(const record::Uuid& id) override;

private:
    [[nodiscard]] std::optional<record::PeriodChange> find(const record::Uuid& id) const;
    [[nodiscard]] QString sinceWords(const record::PeriodChange& change) const;
    [[nodiscard]] QStringList differences(const record::PeriodChange& change) const;
};

/// "52.05° N, 6.20° W".
QString positionWords(const QLocale& locale, const record::Position& position);

} // namespace wickbook::ui
