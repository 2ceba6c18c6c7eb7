#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Setfolio authors
# SPDX-License-Identifier: MIT
set -euo pipefail

# Checks ledgers with the shell lines of FORMAT.md, word for word, so with nothing of ours: sha256sum computes the chain.
# They must pass every ledger in the tree and find one altered byte in each line of one.
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"

sed -n '/^## The chain$/,/^## /{ /^    /p }' "$root/core/ledger/FORMAT.md" | sed -n '/previous=/,/done/p' >check.sh
grep -q sha256sum check.sh

check() { # FILE: what the lines say of it, nothing if all is well
    cp "$1" match.setfolio
    bash check.sh
}

checked=0
while IFS= read -r -d '' ledger; do
    said=$(check "$ledger")
    if [[ -n $said ]]; then
        echo "$ledger: $said"
        exit 1
    fi
    checked=$((checked + 1))
done < <(find "$root/tests/data" "$root/resources/demo" -name '*.setfolio' -print0)
((checked > 0))

ledger=$root/tests/data/ledger/every-kind.setfolio
lines=$(wc -l <"$ledger")
for ((line = 1; line <= lines; line++)); do
    sed "${line}s/\"time\":\"2026/\"time\":\"2027/" "$ledger" >altered
    if [[ $(check altered) != "altered: {\"seq\":$line,"* ]]; then
        echo "an altered byte in line $line was not found"
        exit 1
    fi
done
echo "$checked ledgers are whole; an altered byte was found in each of $lines lines"
