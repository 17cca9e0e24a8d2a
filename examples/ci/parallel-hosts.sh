#!/usr/bin/env bash
# All plans below a folder that every machine sees under one name, judged by several machines:
#   parallel-hosts.sh PARTS FOLDER RULES [options of GNU parallel, such as --sshlogin :,host-a,host-b]
# Writes all.ndjson and tells what it comes to; the status is that of one check of all.
set -euo pipefail

parts=$1
folder=$(cd "$2" && pwd)
rules=$(cd "$3" && pwd)
shift 3
day=${DAY:-$(date -u +%F)}

# What each machine prints comes back whole, one machine after the other. A machine that fails leaves a gap that merge tells.
parallel --will-cite --halt never "$@" \
  planish check --as-of "$day" --shard "{}/$parts" --rules "$rules" --format ndjson "$folder" \
  ::: $(seq "$parts") >parts.ndjson || true

planish merge --quiet --summary --force --output ndjson=all.ndjson parts.ndjson
