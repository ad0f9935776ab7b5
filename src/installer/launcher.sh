#!/bin/sh
# Starts the program with its own Java, wherever its folder stands and whatever links lead here.
case $0 in
    */*) here=$0 ;;
    *) here=./$0 ;;
esac
while [ -L "$here" ]; do
    to=$(command -p readlink "$here")
    case $to in
        /*) here=$to ;;
        *) here=${here%/*}/$to ;;
    esac
done
exec "${here%/*}/../lib/runtime/bin/java" @options@ -m throwline/throwline.app.Throwline @arguments@ "$@"
