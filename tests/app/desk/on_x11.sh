#!/usr/bin/env bash
# on_x11.sh PROGRAM ARGS...: runs it on a real X display of its own (Xvfb). Its exit status; 77: there is no Xvfb here.
# Not xvfb-run: that one needs xauth besides, which the package list leaves out.
set -u
command -v Xvfb >/dev/null || { echo "skipped: no Xvfb"; exit 77; }
work=$(mktemp -d) || exit 1
server=
trap 'kill $server 2>/dev/null; wait 2>/dev/null; rm -rf "$work"' EXIT
exec 8>"$work/number"
Xvfb -displayfd 8 -screen 0 1280x800x24 -nolisten tcp >/dev/null 2>&1 &
server=$!
for _ in {1..100}; do [ -s "$work/number" ] && break; sleep 0.1; done
[ -s "$work/number" ] || { echo "Xvfb did not start"; exit 1; }
export DISPLAY=:$(cat "$work/number") QT_QPA_PLATFORM=xcb
"$@"
