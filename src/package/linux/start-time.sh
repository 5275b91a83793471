#!/usr/bin/env bash
# Prints how long a start takes, in ms, until the window is up: start-time.sh COMMAND..., for example
#   src/package/linux/start-time.sh java -jar target/startwater.jar
#   src/package/linux/start-time.sh target/image/startwater/bin/startwater
# Needs xvfb, xauth and x11-utils. Runs five times on an empty data folder; the first start after a build is the slowest.
set -euo pipefail
if [ -z "${INSIDE:-}" ]; then
    INSIDE=1 exec xvfb-run -a -s '-screen 0 1280x800x24' "$0" "$@"
fi
for _ in 1 2 3 4 5; do
    folder=$(mktemp -d)
    from=$(date +%s%N)
    "$@" --data "$folder" >/dev/null 2>&1 &
    tutor=$!
    until xwininfo -root -tree 2>/dev/null | grep -q '"Startwater'; do
        kill -0 "$tutor" 2>/dev/null || { echo "It ended before its window was up."; exit 1; }
        sleep 0.01
    done
    echo "$((($(date +%s%N) - from) / 1000000)) ms"
    kill "$tutor" 2>/dev/null || true
    wait "$tutor" 2>/dev/null || true
    rm -rf "$folder"
done
