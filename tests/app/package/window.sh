#!/usr/bin/env bash
# window.sh PROGRAM BOOK: the window opens on a real X display (Xvfb), shows the book, and is still there after a while.
# 77: there is no Xvfb here.
set -u
program=$1 book=$2
command -v Xvfb >/dev/null || { echo "skipped: no Xvfb"; exit 77; }
work=$(mktemp -d) || exit 1
trap 'kill "${window:-}" "${server:-}" 2>/dev/null; wait 2>/dev/null; rm -rf "$work"' EXIT
cp "$book" "$work/book.kempt"
exec 8>"$work/number"
Xvfb -displayfd 8 -screen 0 1280x800x24 -nolisten tcp >/dev/null 2>&1 &
server=$!
for _ in {1..100}; do [ -s "$work/number" ] && break; sleep 0.1; done
[ -s "$work/number" ] || { echo "Xvfb did not start"; exit 1; }
export DISPLAY=:$(cat "$work/number") HOME=$work XDG_CONFIG_HOME=$work XDG_RUNTIME_DIR=$work QT_QPA_PLATFORM=xcb
"$program" "$work/book.kempt" >"$work/log" 2>&1 &
window=$!
for _ in {1..100}; do # the book is open once its write-ahead file stands beside it
    kill -0 "$window" 2>/dev/null || { echo "the window went away:"; cat "$work/log"; exit 1; }
    [ -e "$work/book.kempt-wal" ] && { sleep 1; kill -0 "$window" && exit 0; exit 1; }
    sleep 0.1
done
echo "the window did not open the book:"
cat "$work/log"
exit 1
