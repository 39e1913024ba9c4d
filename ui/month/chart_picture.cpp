// SPDX-License-Identifier: GPL-3.0-or-later
// The charts in sight as a picture: a file at print size, or the clipboard.
#include "ui/month/chart_panel.h"
#include "ui/print/month_figure.h"
#include "ui/print/month_files.h"
#include "ui/text/time_words.h"

#include <QBuffer>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QGuiApplication>

namespace wickbook::ui {

QString ChartPanel::spanWords() const {
    const record::StationDate first = dateAt(from_);
    const record::StationDate last = dateAt(to_ - std::chrono::seconds{1});
    //: %1 the first and %2 the last day of a chart
    return tr("%1 to %2").arg(longDateWords(locale_, first), longDateWords(locale_, last));
}

ChartFigure ChartPanel::figure() const {
    return ChartFigure{kFigureSize,
                       QStringLiteral("%1 · %2").arg(stationHeading(session_.station()), spanWords())};
}

QString ChartPanel::savePicture(const QString& path) {
    const bool svg = path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive);
    if (!svg && !path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive)) {
        return tr("A picture is PNG or SVG: let the name end in .png or .svg.");
    }
    QBuffer buffer;
    buffer.open(QIODevice::ReadWrite);
    ChartFigure made = figure();
    made.place(stage_->forPaper(locale_));
    const bool drawn =
        svg ? made.writeSvg(buffer, spanWords(), kindChoice_->currentText()) : made.writePng(buffer);
    buffer.close();
    if (!drawn) {
        return tr("The picture could not be drawn; make the window smaller or close other programs, then try "
                  "again.");
    }
    if (const auto written = writeWholeFile(path, buffer.data()); !written) {
        return written.error().sentence;
    }
    return tr("The chart was written to %1.").arg(QDir::toNativeSeparators(path));
}

void ChartPanel::copyPicture() {
    ChartFigure made = figure();
    made.place(stage_->forPaper(locale_));
    QGuiApplication::clipboard()->setImage(made.image());
    emit said(tr("The chart is on the clipboard as a picture."));
}

void ChartPanel::askForPicture() {
    QString chosen;
    QString path =
        QFileDialog::getSaveFileName(this, tr("The chart as a picture"), QStringLiteral("chart.png"),
                                     tr("PNG at print size (*.png);;SVG (*.svg)"), &chosen);
    if (path.isEmpty()) {
        return;
    }
    if (!path.contains(QLatin1Char('.'))) {
        path += chosen.contains(QLatin1String("svg")) ? QStringLiteral(".svg") : QStringLiteral(".png");
    }
    emit said(savePicture(path));
}

} // namespace wickbook::ui
