#!/usr/bin/env bash
# Makes the application image target/image/startwater and, where dpkg-deb and fakeroot are there, target/image/startwater_*.deb.
# Called by "mvn package -Pimage" with the version; needs a JDK 17 with jlink and jpackage.
set -euo pipefail
version=$1
cd "$(dirname "$0")/../../.."
here=src/package
out=target/image
input=$out/input
rm -rf "$out"
mkdir -p "$input" "$out/resources"

cp target/startwater.jar "$input/"
# The jars without a platform in their name are empty; the launcher's class path stays short without them.
find target/lib -name '*.jar' ! -regex '.*/javafx-[a-z]+-[0-9.]+\.jar' -exec cp {} "$input/" \;
cp LICENSE target/image-licences/THIRD-PARTY.txt src/main/resources/startwater/app/font/LICENSE-SourceSansPro.md "$input/"

# java.sql and jdk.jfr are asked for by class files of the libraries; java.net.http and jdk.crypto.ec send results over HTTPS;
# jdk.zipfs lists the lessons and drills in the jar.
jlink --add-modules java.base,java.desktop,java.sql,java.net.http,jdk.crypto.ec,jdk.jfr,jdk.localedata,jdk.unsupported,jdk.zipfs \
    --include-locales=en,es --strip-debug --no-header-files --no-man-pages --compress=0 --output "$out/runtime"
# The class data of the JDK itself: jlink leaves them out, and every start would read all its classes anew.
"$out/runtime/bin/java" -Xshare:dump >/dev/null

cp "$here/linux/postinst" "$here/linux/startwater.desktop" "$out/resources/"
java "$here/Icon.java" 256 "$out/startwater.png"

jpackage --type app-image --name startwater --app-version "$version" --input "$input" --dest "$out" \
    --main-jar startwater.jar --main-class startwater.app.Main --runtime-image "$out/runtime" --icon "$out/startwater.png" \
    --java-options '-XX:SharedArchiveFile=$APPDIR/startwater.jsa' --java-options -Xshare:auto \
    --java-options -XX:+UseSerialGC

# The program's own class data: from the list of classes that a start in a window loads. Without a display the list is
# that of the terminal, and the window starts a little slower.
app=$out/startwater/lib/app
list=$app/startwater.classes
cp "$here/linux/class-data.sh" "$app/"
started() { "$@" env JAVA_TOOL_OPTIONS="-XX:DumpLoadedClassList=$PWD/$list" "$out/startwater/bin/startwater" \
    --data "$out/trained" >/dev/null 2>&1 </dev/null || true; }
if command -v xvfb-run >/dev/null; then
    started xvfb-run -a -s '-screen 0 1280x800x24' timeout 10
else
    started
fi
"$here/linux/class-data.sh" "$out/startwater/lib"

if command -v dpkg-deb >/dev/null && command -v fakeroot >/dev/null; then
    rm -f "$app/startwater.jsa"
    jpackage --type deb --app-image "$out/startwater" --name startwater --app-version "$version" --dest "$out" \
        --linux-package-name startwater --linux-deb-maintainer nobody@startwater.invalid --linux-menu-group Education \
        --linux-app-category education --linux-shortcut --license-file LICENSE --resource-dir "$out/resources" \
        --description 'A tutor for starting a small recirculating fish system, on computed fish' \
        --file-associations "$here/linux/hand-out.properties" --file-associations "$here/linux/drill.properties"
    "$here/linux/class-data.sh" "$out/startwater/lib"
fi
rm -rf "$out/input" "$out/runtime" "$out/resources" "$out/trained" "$out/startwater.png"
du -sh "$out"/* | sed 's/^/image: /'
