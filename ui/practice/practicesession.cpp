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
      m_band(new StoryBand(*m_reader)),
      m_show(std::move(show)) {
    window.putOverSheet(*m_band);
    m_band->setLook(window.look());
    connect(&window, &TableWindow::lookChanged, m_band, &StoryBand::setLook);
    connect(m_band, &StoryBand::comparisonAsked, this,
            [this] { m_show(&m_window, compared(), writeUp(rightAfter(m_reader->story(), m_reader->told()))); });
}

Compared PracticeSession::compared() const {
    const std::vector<Recorded> right = rightAfter(m_reader->story(), m_reader->told());
    return {firstSet(writeUp(right)), firstSet(m_window.file().record()), m_window.file().state()};
}

ShowComparison comparisonShown(const SheetFonts& fonts) {
    return [fonts](QWidget* parent, const Compared& compared, const MatchRecord& right) {
        ComparisonDialog dialog(compared, parent);
        QObject::connect(&dialog, &ComparisonDialog::rightSheetAsked, &dialog, [&] {
            PreviewOptions options;
            Preview(right, fonts, options, &dialog).exec();
        });
        dialog.exec();
    };
}

} // namespace setfolio
