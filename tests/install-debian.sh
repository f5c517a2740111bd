#!/usr/bin/env bash
# Installs those of the named Debian packages that are missing. Where it may not or cannot, it says what is missing and
# ends with 1.
#   tests/install-debian.sh postgresql redis-server chromium
set -euo pipefail

is_there() {
  case $1 in
  postgresql) compgen -G '/usr/lib/postgresql/*/bin/postgres' >/dev/null ;;
  *) command -v "$1" >/dev/null ;;
  esac
}
missing() {
  for package in "$@"; do is_there "$package" || echo "$package"; done
}

wanted=$(missing "$@")
[ -n "$wanted" ] || exit 0

if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
  folder=$(mktemp -d)
  trap 'rm -rf "$folder"; [ "${linked:-no}" = no ] || rm -f /usr/sbin/policy-rc.d' EXIT
  # Without their own services: whoever wants one starts it.
  printf '#!/bin/sh\nexit 101\n' >"$folder/no-services" && chmod -R a+rx "$folder"
  [ -e /usr/sbin/policy-rc.d ] || { ln -sf "$folder/no-services" /usr/sbin/policy-rc.d && linked=yes; }
  export DEBIAN_FRONTEND=noninteractive
  for pause in 5 20 0; do
    apt-get update -qq >>"$folder/log" 2>&1 &&
      apt-get install -y -qq --no-install-recommends -o Acquire::Retries=3 -o DPkg::Lock::Timeout=120 $wanted \
        >>"$folder/log" 2>&1 && break
    sleep "$pause"
  done
fi

wanted=$(missing "$@" | xargs)
[ -n "$wanted" ] || exit 0
[ ! -s "${folder:-}/log" ] || tail -20 "$folder/log" >&2
echo "Missing: $wanted. As root: apt-get install $wanted" >&2
exit 1
