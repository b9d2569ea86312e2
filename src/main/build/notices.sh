#!/bin/sh
# Compiles and runs Notices.java with the libraries of the packaged tool; then what is to be put into its jar is complete.
# Arguments: the folder of the application (bin, lib), the folder of its classes.
set -eu

compiled=$(mktemp -d)
trap 'rm -rf "$compiled"' EXIT
"$JAVA_HOME/bin/javac" -encoding UTF-8 -Xlint:all -Werror -proc:none -cp "$1/lib/*" -d "$compiled" src/main/build/*.java
"$JAVA_HOME/bin/java" -Dfile.encoding=UTF-8 -XX:TieredStopAtLevel=1 -cp "$compiled:$1/lib/*" Notices . "$@"
# a jar keeps the rights of its files: the same, whatever the umask of who builds
chmod -R u=rwX,go=rX "$2"
