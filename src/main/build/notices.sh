#!/bin/sh
# Compiles and runs Notices.java with the libraries of the packaged tool.
# Arguments: the folder of the application (bin, lib), the folder of its classes.
set -eu

compiled=$(mktemp -d)
trap 'rm -rf "$compiled"' EXIT
"$JAVA_HOME/bin/javac" -encoding UTF-8 -Xlint:all -Werror -proc:none -cp "$1/lib/*" -d "$compiled" src/main/build/*.java
"$JAVA_HOME/bin/java" -Dfile.encoding=UTF-8 -XX:TieredStopAtLevel=1 -cp "$compiled:$1/lib/*" Notices . "$@"
