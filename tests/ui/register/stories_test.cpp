// SPDX-License-Identifier: GPL-3.0-or-later
// What happens to a register in the trade, and how the page puts it right: a deputy's readings, a wick that
// was ice. A week in the wrong month is in register_move_test.cpp.
#include "tests/ui/register/register_case.h"
#include "ui/register/register_model.h"

#include <QComboBox>
#include <QLabel>
#include <QListWidget>

#include <cmath>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;

class RegisterStories : public test::RegisterPageCase {
protected:
    QString lastRevision() {
        auto& list = part<QListWidget>("revisions");
        return list.item(list.count() - 1)->text();
    }
    void save(const QString& why) {
        type("why", why);
        QTest::keyClick(&part<QLineEdit>("why"), Qt::Key_Return);
    }
};

// Saturation vapour pressure by the formulas of Sonntag (1990), hPa, worked out here by themselves.
double overWater(double celsius) {
    const double k = celsius + 273.15;
    return std::exp(-6096.9385 / k + 16.635794 - 2.711193e-2 * k + 1.673952e-5 * k * k +
                    2.433502 * std::log(k));
}
double overIce(double celsius) {
    const double k = celsius + 273.15;
    return std::exp(-6024.5282 / k + 24.7219 + 1.0613868e-2 * k - 1.3198825e-5 * k * k -
                    0.49382577 * std::log(k));
}

TEST_F(RegisterStories, TheWickWasIceFoundOutLater) {
    record::Observation frost = reading(day(2025, 1, 10), 9h, "-4.0", "-5.0");
    frost.wick = record::WickState::Water;
    frost.pressure = units::Decimal{1000, 0};
    write(frost);
    page_->showHour({day(2025, 1, 10), 9h});
    const auto humidity = [this] {
        return page_->findChild<RegisterModel*>()
            ->report()
            .readings.front()
            .reading.derivation->relativeHumidity->percent();
    };
    const auto coefficient = [this] {
        return page_->findChild<RegisterModel*>()
            ->report()
            .readings.front()
            .reading.derivation->coefficient->perKelvin;
    };
    const double asWater = humidity();
    // e = e_s(wet) − A p (dry − wet), of saturation over water at the dry bulb (WMO-No. 8, annex 4.B, the
    // enhancement factor of well under 1 % left out of both).
    EXPECT_NEAR(asWater, 100 * (overWater(-5) - coefficient() * 1000 * 1) / overWater(-4), 0.5);
    key(Qt::Key_Return);
    auto& wick = part<QComboBox>("wick");
    wick.setCurrentIndex(wick.findData(static_cast<int>(record::WickState::Ice)));
    save(QStringLiteral("ice on the muslin at noon"));
    const double asIce = humidity();
    EXPECT_NEAR(asIce, 100 * (overIce(-5) - coefficient() * 1000 * 1) / overWater(-4), 0.5);
    EXPECT_LT(asIce, asWater - 1);
    EXPECT_TRUE(lastRevision().contains(QStringLiteral("wick ice, was water")))
        << lastRevision().toStdString();
    EXPECT_TRUE(lastRevision().contains(QStringLiteral("why: ice on the muslin at noon")));
    EXPECT_EQ(at(day(2025, 1, 10), 9h).values.origin, record::Origin::Corrected);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(humidity(), asWater);
    EXPECT_EQ(at(day(2025, 1, 10), 9h).revisionCount, 3);
}

TEST_F(RegisterStories, ADeputysReadingsStayTheDeputysWhoeverCorrectsThem) {
    record::Observation deputys = reading(day(2025, 5, 6), 9h, "14.0", "12.0");
    deputys.observer = "EW";
    store::ObservationChange change;
    change.values = deputys;
    change.author = {"EW", ""};
    ASSERT_TRUE(session_->write(change).has_value());
    session_->setObserver(QStringLiteral("AB")); // back from the holiday
    page_->showHour({day(2025, 5, 6), 9h});
    EXPECT_EQ(cell(RegisterModel::Initials), QStringLiteral("EW"));
    key(Qt::Key_Return);
    type("wet", QStringLiteral("12.5"));
    save(QStringLiteral("EW says 12.5"));
    EXPECT_EQ(cell(RegisterModel::Initials), QStringLiteral("EW"));
    key(Qt::Key_S);
    const auto history = session_->book().history(at(day(2025, 5, 6), 9h).id()).value();
    ASSERT_EQ(history.size(), 3U);
    EXPECT_EQ(history[0].stamp.author.who, "EW");
    EXPECT_EQ(history[1].stamp.author.who, "AB");
    EXPECT_EQ(history[1].stamp.author.why, "EW says 12.5");
    EXPECT_EQ(history[2].values.observer, "EW");
    EXPECT_EQ(history[2].stamp.author.why, "judged sound");
    EXPECT_TRUE(lastRevision().contains(QStringLiteral("AB"))) << "the history does not say who judged";
    EXPECT_TRUE(lastRevision().contains(QStringLiteral("judged sound, was")));
}

} // namespace

} // namespace wickbook::ui
