# SPDX-License-Identifier: GPL-3.0-or-later
# That the linter of Qt ends with an error on what it only warns of, called as the target all_qmllint calls it. Each planted
# offence has a twin without it, so that a failure is that of the offence and not of a path.
#   cmake -DQMLLINT=… -DIMPORTS=… -DFOLDER=… -DSETTINGS=… -P qmllint_catches.cmake
file(COPY ${SETTINGS} DESTINATION ${FOLDER})
function(lint name text status words)
    set(file ${FOLDER}/${name}.qml)
    file(WRITE ${file} "${text}")
    set(imports "")
    foreach(import IN LISTS IMPORTS)
        list(APPEND imports -I ${import})
    endforeach()
    execute_process(COMMAND ${QMLLINT} --bare ${imports} ${file} RESULT_VARIABLE found OUTPUT_VARIABLE said ERROR_VARIABLE said)
    if(status STREQUAL clean AND NOT found EQUAL 0)
        message(SEND_ERROR "${name}: clean, and yet ${found}:\n${said}")
    elseif(status STREQUAL caught AND (found EQUAL 0 OR NOT said MATCHES "${words}"))
        message(SEND_ERROR "${name}: not caught (${found}):\n${said}")
    endif()
endfunction()

function(pair name good bad words)
    lint(${name}Good "${good}" clean "")
    lint(${name}Bad "${bad}" caught "${words}")
endfunction()

pair(Tone
    "import QtQuick\nimport Crownring.Theme\nRectangle { color: Theme.paper }\n"
    "import QtQuick\nimport Crownring.Theme\nRectangle { color: Theme.papper }\n"
    "papper")
# A model from C++ is known with all that it inherits only when its module names what it depends on.
pair(Model
    "import QtQml\nimport Crownring.Desk\nQtObject { id: top; required property DueModel rows; property int n: top.rows.rowCount() }\n"
    "import QtQml\nimport Crownring.Desk\nQtObject { id: top; required property DueModel rows; property int n: top.rows.rowsCount() }\n"
    "rowsCount")
