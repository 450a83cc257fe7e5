// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

// A field whose text is shown to nobody, nor learnt by a keyboard.
Field {
    echoMode: TextInput.Password
    inputMethodHints: Qt.ImhHiddenText | Qt.ImhSensitiveData | Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
    Accessible.passwordEdit: true
}
