#!/usr/bin/env bash
# The server's tests on Debian's PostgreSQL and Redis, each started for this run alone on loopback and in a folder
# of its own. What is missing is installed where apt-get may; where it may not, that is said, and nothing is run: a
# failure in CI.
#   tests/server/with-services.sh [what vitest takes: a folder, -t 'a name']
set -euo pipefail
cd "$(dirname "$0")/../.."

if ! tests/install-debian.sh postgresql redis-server; then
  echo "Not run: the server's tests on Debian's services." >&2
  [ "${CI:-}" = true ] && exit 1 || exit 0
fi

free_port() { node -e "const s = require('node:net').createServer().listen(0, '127.0.0.1', () => { console.log(s.address().port); s.close(); })"; }
bin=$(ls -d /usr/lib/postgresql/*/bin | sort -V | tail -1)
folder=$(mktemp -d)
as_postgres=()
if [ "$(id -u)" = 0 ]; then
  chown postgres "$folder"
  as_postgres=(runuser -u postgres --)
fi
stop() {
  [ -z "${redis:-}" ] || kill "$redis" 2>/dev/null || true
  (cd / && "${as_postgres[@]}" "$bin/pg_ctl" -D "$folder/postgres" -m immediate stop >/dev/null 2>&1) || true
  rm -rf "$folder"
}
trap stop EXIT

postgres_port=$(free_port)
(
  cd /
  "${as_postgres[@]}" "$bin/initdb" -D "$folder/postgres" -U drumline --auth=trust --encoding=UTF8 --locale=C >/dev/null
  "${as_postgres[@]}" "$bin/pg_ctl" -D "$folder/postgres" -w -l "$folder/postgres.log" -o "-c listen_addresses=127.0.0.1 \
    -c port=$postgres_port -c unix_socket_directories='' -c fsync=off -c max_connections=200" start >/dev/null
)
redis_port=$(free_port)
redis-server --bind 127.0.0.1 --port "$redis_port" --save '' --appendonly no --dir / >/dev/null &
redis=$!

# start.db.spec.ts is about the embedded database.
echo "PostgreSQL: $("$bin/postgres" --version). Redis: $(redis-server --version | cut -d' ' -f3)."
DATABASE_URL="postgres://drumline@127.0.0.1:$postgres_port/postgres" REDIS_URL="redis://127.0.0.1:$redis_port" \
  npx vitest run --project server --exclude apps/server/src/start.db.spec.ts "$@"
