// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

/// No book: three doors. Start a station, open a book, look around in the sample station; under them the
/// books opened before. A sentence stands here when a book could not be opened.

namespace wickbook::ui {

class FirstStartPage : public QWidget {
    Q_OBJECT

public:
    explicit FirstStartPage(QWidget* parent = nullptr);
    void showRecent(const QStringList& books);
    void showSentence(const QString& sentence);
    /// Under the sentence: the way to what can be saved of a damaged book.
    void offerSalvage(bool offered);
    [[nodiscard]] QString sentence() const;

signals:
    void startWanted();
    void openWanted();
    void sampleWanted();
    void bookWanted(const QString& path);
    void salvageWanted();

private:
    QPushButton* door(const QString& word, const QString& explained, const QString& name);

    QVBoxLayout* doors_ = nullptr;
    QVBoxLayout* recent_ = nullptr;
    QLabel* sentence_ = nullptr;
    QPushButton* salvage_ = nullptr;
};

} // namespace wickbook::ui
