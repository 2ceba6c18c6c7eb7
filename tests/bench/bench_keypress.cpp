// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// From a key press in a real table window until its entry is on the disk and everything it changed is painted, beside
/// the bare cost of the same: an append and fdatasync of the same bytes, and a bare repaint of the same area. Bare
/// means a window without layout, children or state that draws, for every call of QPainter the table window made for
/// this key (and for every item of the sheet that had to be drawn again), one line, box, ring or text of the same place
/// and size, with one pen, from a list that lies ready. Nothing is judged, folded, written up, composed or compared.
#include "tests/bench/drawncalls.h"
#include "tests/bench/timings.h"
#include "tests/support/randommatch.h"
#include "ui/sheet/hit.h"
#include "ui/table/sheetview.h"
#include "ui/table/tablewindow.h"

#include <QApplication>
#include <QFile>
#include <QHashSeed>
#include <QTemporaryDir>
#include <QTest>

#include <unistd.h>

using namespace setfolio;
using namespace setfolio::testing;
using bench::DrawnCalls;

namespace {

constexpr QSize windowSize(1366, 768);
constexpr double frame = 1000.0 / 60;

struct Costs {
    bench::Timings key;
    bench::Timings sync;
    bench::Timings repaint;
    bench::Timings bare; ///< both together
    // all keys together
    double bytes = 0;
    double pixels = 0;
    std::array<double, 4> calls{}; ///< by DrawnCall::Kind
};

/// Adds up where a window is painted.
class PaintWatch : public QObject {
public:
    explicit PaintWatch(const QWidget& window) : m_window(window) {}
    QRegion region;

    bool eventFilter(QObject* object, QEvent* event) override {
        if (event->type() != QEvent::Paint)
            return false;
        const auto* widget = qobject_cast<QWidget*>(object);
        if (widget && widget->window() == &m_window)
            region += static_cast<QPaintEvent*>(event)->region().translated(widget->mapTo(&m_window, QPoint()));
        return false;
    }

private:
    const QWidget& m_window;
};

/// A set in play at the table, and a bare window and file beside it.
class Play {
public:
    Play(const RandomMatch& match, Costs& costs);
    /// Keys until the set is won.
    void play(std::mt19937& random);

private:
    [[nodiscard]] Phase phase() const { return phaseOf(m_window->file().state()); }
    void press(Qt::Key key);
    void pressBare(const Page& before);
    [[nodiscard]] DrawnCalls drawnFor(const Page& before) const;
    void addSheet(DrawnCalls& calls, const Page& before) const;

    QTemporaryDir m_folder;
    QFile m_bareFile;
    std::unique_ptr<TableWindow> m_window;
    std::unique_ptr<PaintWatch> m_watch;
    bench::BareWindow m_bare;
    SheetView* m_sheet = nullptr;
    Costs& m_costs;
};

MatchFile fileOf(const RandomMatch& match, const QString& path) {
    auto file = MatchFile::create(path);
    if (!file)
        qFatal("no match file");
    for (const Recorded& recorded : match.match().entries())
        if (!file->record(recorded.entry, recorded.time, recorded.overruled))
            qFatal("not recorded");
    return std::move(*file);
}

Play::Play(const RandomMatch& match, Costs& costs)
    : m_bareFile(m_folder.filePath(QStringLiteral("bare"))),
      m_bare(windowSize),
      m_costs(costs) {
    if (!m_bareFile.open(QIODevice::WriteOnly | QIODevice::Append | QIODevice::Unbuffered))
        qFatal("cannot write");
    const Clock clock{[] { return QDateTime::currentDateTimeUtc(); }, [] { return QTime::currentTime(); }};
    m_window = std::make_unique<TableWindow>(fileOf(match, m_folder.filePath(QStringLiteral("match.setfolio"))), clock,
                                             SheetFonts::load().value());
    m_window->setWindowState(Qt::WindowNoState);
    m_window->resize(windowSize);
    m_window->show();
    m_window->activateWindow();
    if (!QTest::qWaitForWindowExposed(m_window.get()))
        qFatal("the window does not come up");
    m_sheet = m_window->findChild<SheetView*>();
    m_watch = std::make_unique<PaintWatch>(*m_window);
    qApp->installEventFilter(m_watch.get());
    QTest::qWait(300);
}

void Play::play(std::mt19937& random) {
    while (phase() == Phase::ReadyToServe || phase() == Phase::Rally) {
        if (phase() == Phase::ReadyToServe)
            press(Qt::Key_Space);
        else
            press(random() % 2 == 0 ? Qt::Key_Left : Qt::Key_Right);
    }
}

void Play::press(Qt::Key key) {
    const Page before = m_sheet->pages()[static_cast<std::size_t>(m_sheet->shownPage())];
    const std::size_t recorded = m_window->file().ledger().entries().size();
    std::optional<double> taken;
    m_watch->region = {};
    const auto start = std::chrono::steady_clock::now();
    const auto connection =
        QObject::connect(m_window.get(), &TableWindow::painted, [&](EntryNumber) { taken = bench::since(start); });
    QTest::keyPress(m_window->windowHandle(), key);
    while (!taken && bench::since(start) < 5000)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    QObject::disconnect(connection);
    if (!taken || m_window->file().ledger().entries().size() != recorded + 1)
        qFatal("a key was not recorded and painted");
    QTest::keyRelease(m_window->windowHandle(), key);
    m_costs.key.push_back(*taken);
    pressBare(before);
}

void Play::pressBare(const Page& before) {
    const auto entries = m_window->file().ledger().entries();
    const QByteArray line = ledgerLine(entries.back(), firstDigest());
    m_costs.sync.push_back(bench::once([&] {
        if (m_bareFile.write(line) != line.size() || ::fdatasync(m_bareFile.handle()) != 0)
            qFatal("cannot write");
    }));
    const DrawnCalls calls = drawnFor(before);
    const QRegion region = m_watch->region;
    m_costs.repaint.push_back(bench::once([&] { m_bare.draw(calls, region); }));
    m_costs.bytes += static_cast<double>(line.size());
    for (const QRect& part : region)
        m_costs.pixels += part.width() * part.height();
    for (const bench::DrawnCall& call : calls)
        ++m_costs.calls[static_cast<std::size_t>(call.kind)];
    m_costs.bare.push_back(m_costs.sync.back() + m_costs.repaint.back());
}

DrawnCalls Play::drawnFor(const Page& before) const {
    DrawnCalls calls;
    const QRegion region = m_watch->region;
    bench::NotingDevice device(windowSize, calls);
    m_window->render(&device, region.boundingRect().topLeft(), region, QWidget::DrawChildren);
    addSheet(calls, before);
    return calls;
}

/// The items that lie where the page has changed; all of the live band when all of it was painted.
void Play::addSheet(DrawnCalls& calls, const Page& before) const {
    const Page& page = m_sheet->pages()[static_cast<std::size_t>(m_sheet->shownPage())];
    const QRectF band(page.live.x() - 1.5, page.live.y() + 18, liveArea.width() + 3, 134);
    const double scale = std::min(m_sheet->width() / band.width(), m_sheet->height() / band.height());
    const QPoint corner = m_sheet->mapTo(m_window.get(), QPoint());
    const bool whole = (QRegion(m_sheet->rect().translated(corner)) - m_watch->region).isEmpty();
    const std::vector<QRectF> changed = whole ? std::vector<QRectF>{band} : changedRects(before, page);
    for (const Item& item : page.items) {
        const QRectF box = boundingBox(item);
        if (std::ranges::none_of(changed, [&](const QRectF& rect) { return rect.intersects(box); }))
            continue;
        constexpr std::array kinds{bench::DrawnCall::Kind::Text, bench::DrawnCall::Kind::Line,
                                   bench::DrawnCall::Kind::Box, bench::DrawnCall::Kind::Ring,
                                   bench::DrawnCall::Kind::Box};
        const QRectF where((box.topLeft() - band.topLeft()) * scale + corner, box.size() * scale);
        bench::DrawnCall call{kinds[item.shape.index()], where, {}};
        if (const auto* text = std::get_if<TextShape>(&item.shape)) {
            QFont font(QStringLiteral("Inter"));
            font.setPixelSize(std::max(1, qRound(text->em() * scale)));
            call = bench::textCall(text->shaped->text, font, where.bottomLeft());
        }
        calls.push_back(call);
    }
}

/// How much the table window draws for a key.
void printWork(const Costs& costs) {
    const double keys = static_cast<double>(costs.key.size());
    std::printf("for a key: %.0f bytes, %.0f pixels, %.1f lines, %.1f boxes, %.1f rings, %.1f texts\n",
                costs.bytes / keys, costs.pixels / keys, costs.calls[0] / keys, costs.calls[1] / keys,
                costs.calls[2] / keys, costs.calls[3] / keys);
}

void printAll(const Costs& costs) {
    bench::print("bare append and fdatasync of the same bytes", costs.sync);
    bench::print("bare repaint of the same area", costs.repaint);
    bench::print("bare, both", costs.bare);
    bench::print("key press to synced and painted", costs.key);
    bench::compare("  that is", costs.key, costs.bare);
    std::printf("  p99 %.3f ms beside one frame of %.2f ms: %.2f of it\n", bench::percentile(costs.key, 0.99), frame,
                bench::percentile(costs.key, 0.99) / frame);
}

} // namespace

int main(int count, char** words) {
    QHashSeed::setDeterministicGlobalSeed();
    const QApplication application(count, words);
    std::mt19937 random(11);
    Costs costs;
    for (const int setsBefore : {0, 1, 2, 1, 2, 0}) {
        RandomMatch match(static_cast<std::uint32_t>(random()));
        for (int set = 0; set < setsBefore; ++set)
            match.playSet();
        match.playSet(1);
        Play(match, costs).play(random);
    }
    std::printf("platform %s\n", qPrintable(QGuiApplication::platformName()));
    printWork(costs);
    printAll(costs);
    return 0;
}
