// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QImage>

#include <functional>

class QLabel;
class QTextBrowser;

/// Shows the working beside the page, stays open while the reading changes; copies it as text or as a
/// picture, prints it and keeps it as a PDF for a class. What leaves the window is always dark on light.

namespace wickbook::ui {

struct Tokens;

class WorkingDialog : public QDialog {
    Q_OBJECT

public:
    /// The working in the colours of what it is shown on.
    using Words = std::function<QString(const Tokens&)>;

    explicit WorkingDialog(QWidget* parent = nullptr);
    void showWorking(const Words& words);
    [[nodiscard]] QString plainText() const;

    /// As on paper, at twice the screen's size.
    [[nodiscard]] QImage picture() const;
    /// Writes the PDF; why not, as a sentence, or empty.
    [[nodiscard]] QString writePdf(const QString& path) const;

public slots:
    void copyText();
    void copyPicture();

protected:
    void changeEvent(QEvent* event) override;

private:
    void print();
    void savePdf();
    void say(const QString& sentence);

    Words words_;
    QTextBrowser* text_ = nullptr;
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
