#!/bin/sh
# Runs ffmpeg or ffprobe so that it gives way to other work, and ends when the process that started it ends, even by
# SIGKILL (Linux only).
# First call: ask the kernel for SIGKILL at the parent's death, then start anew. Second call: if the parent died
# before that was asked for, stop; else become the program. Nothing is put together into a command line.
if [ "$1" != armed ]; then
  exec setpriv --pdeathsig KILL -- "$0" armed "$@"
fi
shift
[ "$PPID" = "$REPSLATE_PARENT_PID" ] || exit 143
# People who use the machine, and the studio's own answers, come first.
if command -v nice >/dev/null 2>&1; then
  exec nice -n 10 "$REPSLATE_GUARDED_PROGRAM" "$@"
fi
exec "$REPSLATE_GUARDED_PROGRAM" "$@"
