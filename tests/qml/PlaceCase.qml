// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest

/// A test case over one place. Under the sanitizers, beside another test, an answer may take its time: what is true soon
/// is waited for, never hoped for.
TestCase {
    id: place
    when: windowShown
    width: 1200
    height: 800
    visible: true

    /// What is looked through: the page or part under test.
    property Item subject: null

    function soon(fits, what) {
        tryVerify(fits, 30000, what);
    }
    function soonIs(object, property, value) {
        tryCompare(object, property, value, 30000);
    }
    /// Presses an item where it stands once all is laid out.
    function press(item) {
        soon(() => item.visible && item.enabled && item.width > 0);
        waitForRendering(item, 100);
        mouseClick(item);
    }
    function pressNamed(name) {
        soon(() => findNamed(name) !== null && findNamed(name).enabled, name);
        press(findNamed(name));
    }

    /// In the page, or in a sheet above it.
    function findNamed(name) {
        const fits = item => item.objectName === name && item.visible;
        return findBy(subject, fits) ?? findBy(subject.Window.window.contentItem, fits);
    }
    function named(name) {
        soon(() => findNamed(name) !== null, name);
        return findNamed(name);
    }
    /// By what a screen reader says.
    function findSpoken(name) {
        return findBy(subject, item => item.Accessible && item.visible && item.Accessible.name === name);
    }
    function spoken(name) {
        soon(() => findSpoken(name) !== null, name);
        return findSpoken(name);
    }
    function findText(text) {
        return findBy(subject, item => item instanceof Text && item.visible && item.text === text);
    }
    function findBy(item, fits) {
        if (fits(item))
            return item;
        for (let at = 0; at < item.children.length; ++at) {
            const found = findBy(item.children[at], fits);
            if (found !== null)
                return found;
        }
        return null;
    }
}
