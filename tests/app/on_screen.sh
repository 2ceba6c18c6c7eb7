#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
# Runs a command on a virtual screen of 1366 x 768 with a bus for assistive technology, both its own.
set -euo pipefail
if [[ ${1:-} != --inside ]]; then
    exec dbus-run-session -- "$0" --inside "$@"
fi
shift
display_file=$(mktemp)
Xvfb -displayfd 3 -screen 0 1366x768x24 -nolisten tcp 3>"$display_file" 2>/dev/null &
trap 'kill $(jobs -p) 2>/dev/null; rm -f "$display_file"' EXIT
until [[ -s $display_file ]]; do sleep 0.05; done
DISPLAY=:$(<"$display_file")
export DISPLAY QT_LINUX_ACCESSIBILITY_ALWAYS_ON=1 QT_QPA_PLATFORM=xcb
openbox 2>/dev/null &
/usr/libexec/at-spi-bus-launcher --launch-immediately 2>/dev/null &
sleep 0.5
"$@"
