// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/envelope/unrolled_envelope.h"

#include "screen/envelope/envelope_node.h"

#include <QKeyEvent>
#include <QQuickWindow>

#include <algorithm>

namespace crownring::screen {

namespace {

/// How far beside the outermost panels a finger may come down.
constexpr double slop = 8;

std::optional<PanelStep> stepOf(const QKeyEvent& key) {
    if (key.modifiers() & ~(Qt::KeypadModifier | Qt::ControlModifier))
        return std::nullopt;
    const bool far = key.modifiers().testFlag(Qt::ControlModifier);
    switch (key.key()) {
    case Qt::Key_Left:
        return far ? PanelStep::FirstGore : PanelStep::Left;
    case Qt::Key_Right:
        return far ? PanelStep::LastGore : PanelStep::Right;
    case Qt::Key_Up:
        return far ? PanelStep::Crown : PanelStep::ToCrown;
    case Qt::Key_Down:
        return far ? PanelStep::Mouth : PanelStep::ToMouth;
    case Qt::Key_Home:
        return PanelStep::FirstGore;
    case Qt::Key_End:
        return PanelStep::LastGore;
    case Qt::Key_PageUp:
        return PanelStep::Crown;
    case Qt::Key_PageDown:
        return PanelStep::Mouth;
    default:
        return std::nullopt;
    }
}

}

UnrolledEnvelope::UnrolledEnvelope(QQuickItem* parent) : QQuickItem(parent) {
    setFlag(ItemHasContents);
    setAcceptedMouseButtons(Qt::LeftButton);
    setActiveFocusOnTab(true);
    fit();
}

UnrolledEnvelope::~UnrolledEnvelope() = default;

// --- its shape

template <class T>
void UnrolledEnvelope::shape(T& have, T next) {
    if (have == next)
        return;
    have = next;
    fit();
}

void UnrolledEnvelope::setGores(int gores) { shape(m_grid.gores, std::clamp(gores, 0, mostGores)); }
void UnrolledEnvelope::setRows(int rows) { shape(m_grid.rows, std::clamp(rows, 0, mostRows)); }
void UnrolledEnvelope::setLeastPanel(double least) { shape(m_least, std::max(least, 1.0)); }
void UnrolledEnvelope::setMostPanel(double most) { shape(m_most, most); }
void UnrolledEnvelope::setVentHeight(double height) { shape(m_grid.vent, std::max(height, 0.0)); }
void UnrolledEnvelope::setRoomWidth(double width) { shape(m_room, QSizeF(width, m_room.height())); }
void UnrolledEnvelope::setRoomHeight(double height) { shape(m_room, QSizeF(m_room.width(), height)); }

void UnrolledEnvelope::fit() {
    m_grid.panel = QSizeF(panelLength(m_room.width(), m_grid.gores, m_least, m_most),
                          panelLength(m_room.height() - m_grid.vent, m_grid.rows, m_least, m_most));
    setImplicitSize(m_grid.size().width(), m_grid.size().height());
    readMarks();
    redrawAll();
    emit gridChanged();
    if (!m_grid.holds(m_chosen))
        choose(Panel{});
    emit chosenAreaChanged();
}

void UnrolledEnvelope::setTones(const QList<QColor>& tones) {
    if (tones == m_toneList)
        return;
    m_toneList = tones;
    m_tones = MapTones::of(tones);
    redrawAll();
    emit tonesChanged();
}

void UnrolledEnvelope::redrawAll() {
    m_anew = true;
    update();
}

// --- what is shown

void UnrolledEnvelope::setPanels(PanelModel* panels) {
    if (panels == m_panels)
        return;
    if (m_panels != nullptr)
        m_panels->disconnect(this);
    m_panels = panels;
    if (panels != nullptr) {
        connect(panels, &PanelModel::shown, this, &UnrolledEnvelope::readMarks);
        connect(panels, &QObject::destroyed, this, &UnrolledEnvelope::readMarks);
    }
    emit panelsChanged();
    readMarks();
}

void UnrolledEnvelope::readMarks() {
    m_markOf.assign(m_grid.empty() ? 0 : static_cast<std::size_t>(m_grid.gores * m_grid.rows), -1);
    m_asked = 0;
    m_outside = 0;
    int number = 0;
    if (m_panels != nullptr)
        for (const auto& mark : m_panels->marks()) {
            if (m_grid.holds({mark.gore, mark.row})) {
                m_markOf[m_grid.number({mark.gore, mark.row})] = number;
                m_asked += mark.asked ? 1 : 0;
            } else {
                ++m_outside;
            }
            ++number;
        }
    update();
    emit marksChanged();
    emit chosenTextChanged();
}

const PanelMark* UnrolledEnvelope::markAt(Panel at) const {
    if (m_panels == nullptr || !m_grid.holds(at))
        return nullptr;
    const auto number = m_markOf[m_grid.number(at)];
    // While the model is changing its rows, its marks may be fewer than those last read.
    return number < 0 || number >= std::ssize(m_panels->marks()) ? nullptr
                                                                 : &m_panels->marks()[static_cast<std::size_t>(number)];
}

QString UnrolledEnvelope::textOf(Panel at) const {
    if (!m_grid.holds(at))
        return {};
    const auto* mark = markAt(at);
    const auto says = mark == nullptr ? QStringList(tr("not read")) : sayings(*mark);
    return tr("gore %1, row %2: %3").arg(at.gore).arg(at.row).arg(says.join(tr(", ")));
}

QStringList UnrolledEnvelope::sayings(const PanelMark& mark) {
    auto says = figureSayings(mark);
    if (mark.asked)
        says += tr("a reading is asked for");
    if (mark.repaired)
        says += tr("repaired");
    if (mark.defect)
        says += tr("an open defect");
    if (!mark.lotName.isEmpty())
        says += tr("lot %1").arg(mark.lotName);
    return says;
}

QStringList UnrolledEnvelope::figureSayings(const PanelMark& mark) {
    const auto figure = mark.says.isEmpty() ? mark.text : mark.says;
    QStringList says;
    switch (mark.reading) {
    case panel::Reading::None:
        return {tr("not read")};
    case panel::Reading::Forecast:
        says += tr("expected %1").arg(figure);
        if (mark.expectedBelow())
            says += tr("expected beyond its limit");
        if (mark.count > 0)
            says += tr("readings taken there: %1").arg(mark.count);
        return says;
    case panel::Reading::Fails:
        says = {figure, tr("fails its limit")};
        break;
    default:
        says = {figure};
    }
    if (mark.count > 1)
        says += tr("the latest of %1 readings").arg(mark.count);
    return says;
}

QString UnrolledEnvelope::chosenText() const { return textOf(m_chosen); }

QRectF UnrolledEnvelope::chosenArea() const { return m_grid.holds(m_chosen) ? m_grid.area(m_chosen) : QRectF(); }

// --- choosing

void UnrolledEnvelope::choose(Panel at) {
    if (at == m_chosen)
        return;
    m_chosen = at;
    update();
    emit chosenChanged();
    emit chosenAreaChanged();
    emit chosenTextChanged();
}

void UnrolledEnvelope::choose(int gore, int row) {
    const Panel at{gore, row};
    choose(m_grid.holds(at) ? at : Panel{});
}

bool UnrolledEnvelope::chooseNextAsked() {
    if (m_asked == 0 || m_panels == nullptr)
        return false;
    const auto& marks = m_panels->marks();
    const auto wanted = [this](const PanelMark& mark) { return mark.asked && m_grid.holds({mark.gore, mark.row}); };
    auto from = std::find_if(marks.begin(), marks.end(), [this](const PanelMark& mark) {
        return Panel{mark.gore, mark.row} == m_chosen;
    });
    if (from != marks.end())
        ++from;
    auto next = std::find_if(from, marks.end(), wanted);
    if (next == marks.end())
        next = std::find_if(marks.begin(), marks.end(), wanted);
    choose(next->gore, next->row);
    return true;
}

void UnrolledEnvelope::step(PanelStep step) { choose(m_grid.moved(m_chosen, step)); }

void UnrolledEnvelope::mousePressEvent(QMouseEvent* event) {
    m_pressed = m_grid.at(event->position(), slop);
    event->setAccepted(m_pressed.has_value());
}

void UnrolledEnvelope::mouseReleaseEvent(QMouseEvent* event) {
    const auto pressed = std::exchange(m_pressed, std::nullopt);
    if (!pressed || m_grid.at(event->position(), slop) != pressed)
        return;
    forceActiveFocus(Qt::MouseFocusReason);
    choose(*pressed);
    emit tapped(pressed->gore, pressed->row);
}

// Two quick taps are two taps.
void UnrolledEnvelope::mouseDoubleClickEvent(QMouseEvent* event) { mousePressEvent(event); }

void UnrolledEnvelope::mouseUngrabEvent() { m_pressed.reset(); }

void UnrolledEnvelope::keyPressEvent(QKeyEvent* event) {
    event->setAccepted(false);
    if (!m_grid.holds(m_chosen))
        return;
    if (const auto move = stepOf(*event)) {
        step(*move);
        event->accept();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space) {
        event->accept();
        if (!event->isAutoRepeat())
            emit tapped(m_chosen.gore, m_chosen.row);
    }
}

void UnrolledEnvelope::focusInEvent(QFocusEvent* event) {
    QQuickItem::focusInEvent(event);
    update();
    if (event->reason() == Qt::MouseFocusReason || m_grid.holds(m_chosen))
        return;
    // The keyboard needs a place to begin: what the plan asks for, else the crown, where fabric ages first.
    if (!chooseNextAsked())
        choose(1, m_grid.rows);
}

void UnrolledEnvelope::focusOutEvent(QFocusEvent* event) {
    QQuickItem::focusOutEvent(event);
    update();
}

// --- drawing

void UnrolledEnvelope::itemChange(ItemChange change, const ItemChangeData& data) {
    // Images are made for one window and one density of the screen.
    if (change == ItemSceneChange || change == ItemDevicePixelRatioHasChanged)
        redrawAll();
    QQuickItem::itemChange(change, data);
}

QSGNode* UnrolledEnvelope::updatePaintNode(QSGNode* old, UpdatePaintNodeData*) {
    auto* node = static_cast<EnvelopeNode*>(old);
    if (m_grid.empty()) {
        delete node;
        return nullptr;
    }
    if (node == nullptr || std::exchange(m_anew, false)) {
        delete node;
        node = new EnvelopeNode(*window(), m_grid, m_tones);
        m_anew = false;
    }
    for (int row = 1; row <= m_grid.rows; ++row)
        for (int gore = 1; gore <= m_grid.gores; ++gore)
            node->show({gore, row}, markAt({gore, row}));
    node->frame(m_grid.holds(m_chosen) ? std::optional(m_chosen) : std::nullopt, hasActiveFocus());
    node->draw();
    return node;
}

}
