#!/usr/bin/env bash
# Makes the program's class data beside its jars: class-data.sh LIB, where LIB holds app/ and runtime/. The archive is good
# for this place only, since Java 17 compares the path of each jar; elsewhere the program starts without it.
set -euo pipefail
lib=$1
app=$lib/app
path=$(sed -n 's/^app\.classpath=//p' "$app/startwater.cfg" | sed "s|\$APPDIR|$app|" | paste -sd:)
"$lib/runtime/bin/java" -Xshare:dump -XX:SharedClassListFile="$app/startwater.classes" \
    -XX:SharedArchiveFile="$app/startwater.jsa" -XX:+UseSerialGC -Xlog:disable -Xlog:all=off -cp "$path" >/dev/null 2>&1 || true
