#!/usr/bin/env bash
# Packs planish, installs the pack in an empty folder without network, and runs it on an example from the pack.
set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

cd "$root"
npm pack --silent --pack-destination "$work" >/dev/null
tarball=$(echo "$work"/planish-*.tgz)
content=$(tar -tzf "$tarball")
for file in bin/planish.js bin/start.js bin/package.json bin/planish.1 bin/built-in-packs.json bin/built-in-cases.json bin/planish.bundle.cjs bin/planish.bundle.check.cjs bin/planish.bundle.steel.cjs bin/planish.bundle.licenses.txt \
  LICENSE README.md package.json schemas/plan.schema.json schemas/report.d.ts; do
  grep -qx "package/$file" <<<"$content" || { echo "the package lacks $file"; exit 1; }
done
if grep -E '^package/(src|tests|\.)' <<<"$content"; then
  echo 'the package holds files that only developers need'
  exit 1
fi

mkdir "$work/shop"
cd "$work/shop"
echo '{ "private": true }' >package.json
npm install --silent --offline --no-audit --no-fund "$tarball"
npx --no-install planish --version

example=$(grep -rlE --include='*.yaml' '^parts:' node_modules/planish/examples | sort | head -n 1 || true)
[ -n "$example" ] || { echo 'the package holds no example plan'; exit 1; }
status=0
npx --no-install planish check "$example" || status=$?
# 0 cleared, 1 stopped or held: both are judged.
[ "$status" -le 1 ] || { echo "planish check $example left status $status"; exit 1; }
