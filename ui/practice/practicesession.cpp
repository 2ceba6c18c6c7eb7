// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/practice/practicesession.h"

#include "core/record/writeup.h"
#include "ui/practice/storyband.h"
#include "ui/print/preview.h"
#include "ui/table/tablewindow.h"

namespace setfolio {

namespace {

SetRecord firstSet(const MatchRecord& record) {
    return record.sets.empty() ? SetRecord{} : record.sets.front();
}

} // namespace

PracticeSession::PracticeSession(TableWindow& window, Story story, Pace pace, ShowComparison show)
    : QObject(&window),
      m_window(window),
      m_reader(new StoryReader(std::move(story), pace, this)),
      m_show(std::move(show)) {
    connect(m_reader, &StoryReader::changed, this, &PracticeSession::showTime);
    connect(&window, &TableWindow::rebuilt, this, &PracticeSession::showBand);
    showBand();
    showTime();
}

/// The times that she writes down are the story's; the machine's clock has nothing to do with them.
void PracticeSession::showTime() {
    m_window.setTimeOfDay([now = timeOfDayAfter(m_reader->story(), m_reader->told())] { return now; });
}

void PracticeSession::showBand() {
    auto* band = new StoryBand(*m_reader);
    m_window.putOverSheet(*band);
    band->setLook(m_window.look());
    connect(&m_window, &TableWindow::lookChanged, band, &StoryBand::setLook);
    connect(band, &StoryBand::comparisonAsked, this,
            [this] { m_show(&m_window, compared(), rightAfter(m_reader->story(), m_reader->told())); });
}

Compared PracticeSession::compared() const {
    const std::vector<Recorded> right = rightAfter(m_reader->story(), m_reader->told());
    return {firstSet(writeUp(right)), firstSet(m_window.file().record()), m_window.file().state()};
}

ShowComparison comparisonShown(const SheetFonts& fonts) {
    return [fonts](QWidget* parent, const Compared& compared, const std::vector<Recorded>& right) {
        ComparisonDialog dialog(compared, parent);
        QObject::connect(&dialog, &ComparisonDialog::rightSheetAsked, &dialog, [&] {
            PreviewOptions options;
            Preview({writeUp(right), right}, fonts, options, &dialog).exec();
        });
        QObject::connect(&dialog, &ComparisonDialog::printAsked, &dialog, [&] {
            if (auto* table = qobject_cast<TableWindow*>(parent))
                table->perform(TableCommand::Print);
        });
        dialog.exec();
    };
}

} // namespace setfolio
